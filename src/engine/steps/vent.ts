import type { Traced } from '../../kernel/traced.ts';
import { chokedVelocity, frictionLength, ventArea, ventWidth } from '../../physics/vent.ts';
import { ventAreaPlanned, ventGasVolume, ventGateShare, ventNumber, ventWidthAvailable } from '../../physics/vent-plan.ts';
import { choose } from '../choose.ts';
import type { Ledger } from '../ledger.ts';
import type { Cell } from '../plan.ts';
import { assumeMiddle } from '../planned.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';

/**
 * Gas to expel, the area that plain vents would need, the kind of venting that follows from it and from the quality
 * asked, and the area and width of that kind. The gas balance over the stroke is not part of it.
 */
export const ventStep: Step = {
  id: 'vent',
  title: 'Vents',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    attempt('vent.gas-volume', 'Gas to expel', () => gas(ledger));
    attempt('vent.choked-velocity', 'Gas velocity in a plain vent', () => plainVelocity(ledger));
    attempt('vent.plain-area', 'Area and width of plain vents', () => plain(ledger));
    attempt('vent.kind', 'Kind of venting', () => choose(ledger, 'vent.kind'));
    attempt('vent.area', 'Vent area', () => area(ledger));
    attempt('vent.width', 'Vent width', () => width(ledger));
    attempt('vent.gate-share', 'Vent area over gate area', () => {
      ledger.apply(ventGateShare, { vent_area: ledger.value('vent.area'), gate_area: ledger.value('gate.area') });
      ledger.look('vent/geometry', 'gate_share_least', {}, 'vent.gate-share-least');
      ledger.look('vent/geometry', 'gate_share_greatest', {}, 'vent.gate-share-greatest');
    });
    attempt('vent.vacuum', 'Vacuum', () => vacuum(ledger));
  },
  show,
};

/**
 * Counted at the moment when the metal reaches the gate: the slow shot has driven the air of the sleeve out by then, and the metal
 * that of the runner, at no more than the flow of the fill. What an early fast shot would ask for stands beside.
 */
function gas(ledger: Ledger): void {
  const cold = ledger.text('machine.chamber') === 'cold';
  const note = cold
    ? 'counted when the metal fills the section of the sleeve; its air has left through the die in the slow shot by then'
    : 'hot chamber: gooseneck and nozzle stand full of metal';
  const sleeve_air = ledger.assume('vent.sleeve-air', 0, 'cm3', { note, status: cold ? 'practice' : 'derived', source: cold ? ['BAR-MEIR'] : [] });
  const die = {
    part_volume: ledger.value('part.volume'),
    overflow_volume: ledger.value('overflow.volume'),
    runner_volume: ledger.value('runner.volume'),
    cavities: ledger.value('machine.cavities'),
  };
  const runner_volume = ledger.assume('vent.runner-gas', 0, 'cm3', {
    note: 'the metal fills the runner before it reaches the gate, at no more than the flow of the fill; the same vents have passed its gas by then',
    status: 'derived',
    source: [],
  });
  ledger.apply(ventGasVolume, { ...die, runner_volume, sleeve_air });
  ledger.apply(ventGasVolume, { ...die, sleeve_air }, { id: 'vent.die-gas-volume' });
  if (cold) ledger.apply(ventGasVolume, { ...die, sleeve_air: ledger.value('sleeve.air-volume') }, { id: 'vent.all-gas-volume' });
}

function plainVelocity(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const depth = assumeMiddle(
    ledger,
    'vent.depth',
    ledger.look('vent/depth', 'least', { family }, 'vent.depth-least'),
    ledger.look('vent/depth', 'greatest', { family }, 'vent.depth-greatest'),
  );
  const land = assumeMiddle(
    ledger,
    'vent.land',
    ledger.look('vent/geometry', 'land_least', {}, 'vent.land-least'),
    ledger.look('vent/geometry', 'land_greatest', {}, 'vent.land-greatest'),
  );
  const friction_length = ledger.apply(frictionLength, { depth, land, friction: ledger.look('vent/planned', 'friction', {}, 'vent.friction') });
  ledger.apply(chokedVelocity, { gas_temperature: ledger.look('vent/planned', 'gas_temperature', {}, 'vent.gas-temperature'), friction_length });
}

function plain(ledger: Ledger): void {
  const needed = ledger.apply(
    ventArea,
    { gas_volume: ledger.value('vent.gas-volume'), time: ledger.value('fill.time'), velocity: ledger.value('vent.choked-velocity') },
    { id: 'vent.plain-area' },
  );
  ledger.apply(ventWidth, { area: needed, depth: ledger.value('vent.depth') }, { id: 'vent.plain-width' });
  const share = ledger.look('vent/planned', 'line_share', {}, 'vent.line-share');
  ledger.apply(ventWidthAvailable, { parting_line: ledger.value('overflow.parting-line'), gate_width: ledger.value('gate.width'), share });
}

/** Plain vents are sized with their own depth and land, chill vents and vacuum valves with the figure of their kind. */
function area(ledger: Ledger): Traced<'mm2'> {
  const kind = ledger.text('vent.kind');
  const velocity =
    kind === 'plain'
      ? ledger.put(ledger.value('vent.choked-velocity').as('vent.velocity', 'that of the plain vent'))
      : ledger.look('vent/velocity', 'velocity', { kind: kind === 'vacuum' ? 'valve' : 'chill' }, 'vent.velocity');
  const time = ledger.value('fill.time');
  const sizing = { gas_volume: ledger.value('vent.gas-volume'), time, velocity };
  // A valve is a passage that is bought and that draws on the whole die; its area is held against the evacuation, not made a little larger.
  const all = ledger.maybe('vent.all-gas-volume');
  if (kind === 'vacuum') {
    if (all !== undefined) ledger.apply(ventArea, { ...sizing, gas_volume: all }, { id: 'vent.all-gas-area' });
    return ledger.apply(ventArea, { ...sizing, gas_volume: ledger.value('vent.die-gas-volume') });
  }
  const choked = ledger.apply(ventArea, sizing, { id: 'vent.choked-area' });
  const multiple = ledger.look('vent/residual', 'multiple', { use: ledger.text('quality.use') }, 'vent.area-multiple');
  // Printed beside the area planned, so it has the same reserve.
  if (all !== undefined) {
    const all_choked = ledger.apply(ventArea, { ...sizing, gas_volume: all }, { id: 'vent.all-gas-choked' });
    ledger.apply(ventAreaPlanned, { choked: all_choked, multiple }, { id: 'vent.all-gas-area' });
  }
  return ledger.apply(ventAreaPlanned, { choked, multiple }, { id: 'vent.area' });
}

/** Width follows from the depth of plain vents or the gap of a chill vent; a vacuum valve has its own passage. */
function width(ledger: Ledger): void {
  const kind = ledger.text('vent.kind');
  const vents = ledger.value('vent.area');
  if (kind === 'plain') {
    const total = ledger.apply(ventWidth, { area: vents, depth: ledger.value('vent.depth') });
    ledger.apply(ventNumber, { width: total, each: ledger.look('vent/geometry', 'width_greatest', {}, 'vent.each-width') });
    ledger.look('vent/geometry', 'relief_least', {}, 'vent.relief-least');
    ledger.look('vent/geometry', 'relief_greatest', {}, 'vent.relief-greatest');
  } else if (kind === 'chill') {
    const remark = ledger.alloy.family === 'aluminium' ? undefined : 'published for aluminium, no figure of the family';
    const least = ledger.look('vent/geometry', 'chill_gap_least', {}, 'vent.chill-gap-least');
    const greatest = ledger.look('vent/geometry', 'chill_gap_greatest', {}, 'vent.chill-gap-greatest');
    ledger.apply(ventWidth, { area: vents, depth: assumeMiddle(ledger, 'vent.chill-gap', least, greatest, remark) });
  }
}

function vacuum(ledger: Ledger): void {
  const { value: level } = choose(ledger, 'vent.vacuum');
  if (level === 'none') return;
  ledger.look('vent/vacuum', 'least', { class: level }, 'vent.vacuum-pressure-least');
  ledger.look('vent/vacuum', 'greatest', { class: level }, 'vent.vacuum-pressure');
}

function show(ledger: Ledger): ReturnType<Step['show']> {
  const kind = ledger.texts.get('vent.kind');
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  // Plain vents were looked at for the other kinds too; under vacuum they decide nothing.
  const plain = ['vent.depth', 'vent.land', 'vent.choked-velocity', 'vent.plain-width', 'vent.width-available'] as const;
  const values = valuesBlock(ledger, [
    kind === 'vacuum' ? 'vent.die-gas-volume' : 'vent.gas-volume',
    ...(kind === 'vacuum' ? [] : plain),
    ...(kind === 'plain' ? [] : (['vent.velocity'] as const)),
    // With no more than the choked area planned, the two are the same figure.
    ...(ledger.values.get('vent.area-multiple')?.value === 1 ? [] : (['vent.choked-area', 'vent.area-multiple'] as const)),
    'vent.area',
    'vent.chill-gap',
    'vent.width',
    'vent.number',
    'vent.gate-share',
  ]);
  if (values.length === 0) return [];
  const window = (label: string, least: string, greatest: string): Cell[][] =>
    ledger.values.has(least) && ledger.values.has(greatest) ? [[label, { value: least }, { value: greatest }]] : [];
  return [
    textBlock(
      kind === 'vacuum'
        ? 'Per cavity. The valve is sized to draw off the gas of cavity, overflows and runner within the fill time, choked; how long it takes before the fast shot stands with the gas in the cavity.'
        : 'Per cavity. Counted is the gas in cavity and overflows, which must leave within the fill time with the vent choked. The gas of the runner leaves before, while the metal fills the runner at no more than that flow.',
      ...(ledger.values.has('vent.all-gas-area')
        ? [
            ' The air of the sleeve has the time of the slow shot to leave through the same vents. If the fast shot begins too early, or the slow shot folds the air in, it comes on top: all of it, with that of the runner, within the fill time would ask for ',
            { value: 'vent.all-gas-area' },
            '.',
          ]
        : []),
    ),
    ...(ledger.decisions.has('vent.kind') ? [textBlock('Venting: ', { decision: 'vent.kind' }, '.')] : []),
    ...(ledger.decisions.has('vent.vacuum') ? [textBlock('Vacuum: ', { decision: 'vent.vacuum' }, '.')] : []),
    ...values,
    ...tableBlock(
      'Windows',
      ['', 'Least', 'Greatest'],
      [
        ...(kind === 'vacuum' ? [] : window('Depth of a plain vent', 'vent.depth-least', 'vent.depth-greatest')),
        ...window('Depth behind the land, to the edge of the die', 'vent.relief-least', 'vent.relief-greatest'),
        ...window('Vent area over gate area, trade rule', 'vent.gate-share-least', 'vent.gate-share-greatest'),
        ...window('Cavity pressure under vacuum', 'vent.vacuum-pressure-least', 'vent.vacuum-pressure'),
      ],
    ),
    ...(kind === 'chill'
      ? [
          textBlock(
            'The smallest gap of a chill vent sets what it passes: too large a gap spits metal, too small a one strangles the air; no single gap is right for all dies. One block can serve several overflows, or several cavities that fill at the same time, with the widths added up.',
          ),
        ]
      : []),
    ...(kind === 'vacuum'
      ? [
          textBlock(
            `${cold ? 'Vacuum starts when the plunger covers the pour hole. ' : ''}A valve passes more gas but must close before the metal comes; a vacuum chill block passes less and cannot be late. Vents are needed with vacuum too: vapour of the release agent presses more than a vacuum can draw.`,
          ),
        ]
      : []),
    textBlock(
      ledger.values.has('overflow.each')
        ? 'Vents stand behind the overflows, at the end of each flow segment.'
        : 'Vents stand at the end of each flow segment, where the metal arrives last.',
    ),
  ];
}
