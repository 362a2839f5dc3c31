import { gateArea } from '../../physics/gate.ts';
import { largestGate, squeezeFillTime, superheat } from '../../physics/squeeze.ts';
import type { Ledger } from '../ledger.ts';
import type { Cell } from '../plan.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';
import type { ValueId } from '../vocabulary/index.ts';

/** The kind of machine that this section is about; other plans have no such section. */
export const VERTICAL = 'cold-chamber-vertical-shot';

/** Figures of squeeze casting: name of the table column, and the value that it is filed as. */
const FIGURES = [
  ['gate_velocity', 'squeeze.gate-velocity-greatest'],
  ['pressure_least', 'squeeze.pressure-least'],
  ['pressure_greatest', 'squeeze.pressure-greatest'],
  ['metal_pressure_least', 'squeeze.metal-pressure-least'],
  ['metal_pressure_greatest', 'squeeze.metal-pressure-greatest'],
  ['hold_least', 'squeeze.hold-least'],
  ['hold_greatest', 'squeeze.hold-greatest'],
  ['gate_least', 'squeeze.gate-least'],
  ['gate_greatest', 'squeeze.gate-greatest'],
  ['superheat_least', 'squeeze.superheat-least'],
  ['superheat_greatest', 'squeeze.superheat-greatest'],
  ['die_least', 'squeeze.die-least'],
  ['die_greatest', 'squeeze.die-greatest'],
  ['section_least', 'squeeze.section-least'],
  ['section_usual', 'squeeze.section-usual'],
  ['cycle_factor_least', 'squeeze.cycle-least'],
  ['cycle_factor_greatest', 'squeeze.cycle-greatest'],
] as const satisfies readonly (readonly [string, ValueId])[];

/**
 * Vertical shot: the planned shot held against squeeze casting, the time under pressure, and what a fill at the velocity
 * of squeeze casting would take. Nothing for any other kind of machine.
 */
export const squeezeStep: Step = {
  id: 'squeeze',
  title: 'Vertical shot',
  work: (ledger) => {
    if (ledger.texts.get('machine.kind') !== VERTICAL) return;
    for (const [column, id] of FIGURES) ledger.look('squeeze/process', column, {}, id);
    ledger.attempt('squeeze.pressure', 'Pressure held', () => pressure(ledger));
    ledger.attempt('squeeze.superheat', 'Superheat', () =>
      ledger.apply(superheat, { gate_temperature: ledger.value('fill.gate-temperature'), liquidus: ledger.value('alloy.liquidus') }),
    );
    ledger.attempt('squeeze.shortest-time', 'Squeeze fill', () => slowFill(ledger));
  },
  show,
};

/** The gate stays open while the pressure acts, so the pressure is held until the part is solid. */
function pressure(ledger: Ledger): void {
  ledger.put(ledger.value('clamp.pressure-reached').as('squeeze.pressure', 'the pressure that the clamp is sized on, held until the part is solid'));
  const least = ledger.value('squeeze.hold-least');
  ledger.assume('squeeze.hold', least.value, least.unit, {
    note: 'low end of the published range: the walls of a die casting are solid well before; longer for thick sections',
    status: 'practice',
    parents: [least],
  });
}

/** What the velocity of squeeze casting would mean for gate and fill time; the plan itself fills faster. */
function slowFill(ledger: Ledger): void {
  const volume = ledger.value('gate.flow-volume');
  const velocity = ledger.value('squeeze.gate-velocity-greatest');
  ledger.apply(gateArea, { volume, velocity, time: ledger.value('fill.time') }, { id: 'squeeze.gate-area' });
  const area = ledger.apply(largestGate, {
    width: ledger.value('gate.greatest-width'),
    thickness: ledger.value('squeeze.gate-greatest'),
    wall: ledger.value('gate.wall'),
  });
  ledger.apply(squeezeFillTime, { volume, area, velocity }, { id: 'squeeze.shortest-time' });
}

function show(ledger: Ledger): ReturnType<Step['show']> {
  if (!ledger.values.has('squeeze.gate-velocity-greatest')) return [];
  const row = (label: string, planned: string, least: string, greatest: string): Cell[] => [
    label,
    ...[planned, least, greatest].map((id): Cell => (ledger.values.has(id) ? { value: id } : '–')),
  ];
  return [
    textBlock(
      'The metal is poured into an upright sleeve, which may be filled nearly full, and goes through a gate nearly as thick as the wall. The gate stays open under pressure, so that the shrinkage is fed and the part can be heat treated and welded.',
    ),
    ...valuesBlock(ledger, ['squeeze.pressure', 'squeeze.hold', 'squeeze.superheat']),
    ...tableBlock(
      'Planned, and the range of squeeze casting',
      ['', 'Planned', 'Least', 'Greatest'],
      [
        row('Gate velocity', 'gate.velocity', '', 'squeeze.gate-velocity-greatest'),
        row('Metal pressure', 'squeeze.pressure', 'squeeze.pressure-least', 'squeeze.pressure-greatest'),
        row('Metal pressure usual with a vertical shot', 'squeeze.pressure', 'squeeze.metal-pressure-least', 'squeeze.metal-pressure-greatest'),
        row('Time under pressure', 'squeeze.hold', 'squeeze.hold-least', 'squeeze.hold-greatest'),
        row('Gate thickness', 'gate.thickness', 'squeeze.gate-least', 'squeeze.gate-greatest'),
        row('Superheat at the gate', 'squeeze.superheat', 'squeeze.superheat-least', 'squeeze.superheat-greatest'),
        row('Die surface', 'fill.die-temperature', 'squeeze.die-least', 'squeeze.die-greatest'),
        row('Thinnest wall; least section, two figures', 'fill.wall', 'squeeze.section-least', 'squeeze.section-usual'),
        row('Cycle over that of ordinary die casting', '', 'squeeze.cycle-least', 'squeeze.cycle-greatest'),
      ],
    ),
    textBlock(
      'The plan fills at the velocity of structural parts. What filling at the velocity of squeeze casting would take stands below: gates and times of another order, with a hotter, coated die. The longest fill time of the fill section does not hold for it.',
    ),
    ...valuesBlock(ledger, ['squeeze.gate-area', 'squeeze.largest-gate', 'squeeze.shortest-time']),
  ];
}
