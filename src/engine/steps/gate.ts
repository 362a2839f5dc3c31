import type { FormulaArguments } from '../../kernel/apply.ts';
import { formatQuantity } from '../../kernel/format.ts';
import { Traced } from '../../kernel/traced.ts';
import { atomisationIndex, flowVolume, gateArea, gateFlow, gateWidth, leastAtomisedVelocity } from '../../physics/gate.ts';
import { drivenGateVelocity, flowMass, gateCount, greatestGateWidth, plannedThickness, plannedVelocity } from '../../physics/gate-plan.ts';
import { overflowGateArea, overflowGateThickness, overflowGateWidth } from '../../physics/overflow-plan.ts';
import { diePressure } from '../../physics/pq2.ts';
import { workSetGates } from '../die-set/gates.ts';
import type { FirstPlan, Ledger } from '../ledger.ts';
import type { Cell } from '../plan.ts';
import { assumeUsual, orPinned } from '../planned.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';
import { showRunner, workRunner } from './runner.ts';

const VERTICAL = 'cold-chamber-vertical-shot';

/** Gate, overflow gates and runner of one cavity, and the metal pressure that the gate velocity asks for. */
export const gateStep: Step = {
  id: 'gate',
  title: 'Gate and runner',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    attempt('gate.velocity', 'Gate velocity', () => velocity(ledger));
    attempt('gate.flow-volume', 'Flow volume', () => flow(ledger));
    attempt('gate.area', 'Gate area', () =>
      ledger.apply(gateArea, { volume: ledger.value('gate.flow-volume'), velocity: ledger.value('gate.velocity'), time: ledger.value('fill.time') }),
    );
    const { set } = ledger.given;
    if (set === undefined) {
      attempt('gate.thickness', 'Gate thickness', () => thickness(ledger));
      attempt('gate.width', 'Gate width', () => width(ledger));
    } else workSetGates(ledger, set, gateStep.work);
    if (isAtomisedFlowWanted(ledger)) attempt('gate.atomisation-index', 'Atomised flow', () => atomisation(ledger));
    attempt('overflow.gate-area', 'Overflow gates', () => overflowGates(ledger));
    attempt('gate.die-pressure', 'Metal pressure for the gate velocity', () => pressure(ledger));
    workRunner(ledger);
  },
  show,
};

/** Structural parts under vacuum and vertical shots are filled with an attached stream. */
function isAtomisedFlowWanted(ledger: Ledger): boolean {
  return ledger.texts.get('quality.use') !== 'structural' && ledger.texts.get('machine.kind') !== VERTICAL;
}

/** The metal of a vertical shot is filled like a structural part: slow enough to push the gas ahead of it. */
function useOf(ledger: Ledger): string {
  return ledger.text('machine.kind') === VERTICAL ? 'structural' : ledger.text('quality.use');
}

function velocity(ledger: Ledger): void {
  orPinned(ledger, 'gate.velocity', () => {
    const axes = { family: ledger.alloy.family, use: useOf(ledger) };
    const least = ledger.look('gate/velocity', 'least', axes, 'gate.velocity-least');
    ledger.look('gate/velocity', 'greatest', axes, 'gate.velocity-greatest');
    const usual = {
      least: ledger.look('gate/velocity', 'usual_least', axes, 'gate.velocity-usual-least'),
      greatest: ledger.look('gate/velocity', 'usual_greatest', axes, 'gate.velocity-usual-greatest'),
      position: ledger.look('gate/velocity-position', 'position', { wall: ledger.value('fill.wall') }, 'gate.velocity-position'),
    };
    const first = ledger.given.first?.velocity;
    ledger.setText('gate.velocity-rule', first === undefined ? 'wall' : 'machine');
    return first === undefined ? ledger.apply(plannedVelocity, usual) : loweredVelocity(ledger, usual, least, first);
  });
  ledger.look('gate/wall-velocity', 'least', { wall: ledger.value('fill.wall') }, 'gate.wall-velocity-least');
  ledger.look('gate/wall-velocity', 'greatest', { wall: ledger.value('fill.wall') }, 'gate.wall-velocity-greatest');
}

/** The velocity that the machine can drive, in place of the one that the wall asks for, which stays in the plan beside it. */
function loweredVelocity(
  ledger: Ledger,
  usual: FormulaArguments<typeof plannedVelocity.inputs>,
  least: Traced<'m/s'>,
  { value, machine, plunger }: NonNullable<FirstPlan['velocity']>,
): Traced<'m/s'> {
  const byWall = ledger.apply(plannedVelocity, usual, { id: 'gate.velocity-by-wall' });
  const driven = ledger.put(
    Traced.choice('gate.machine-velocity', value, 'm/s', {
      note: `crossing of a first plan at ${formatQuantity(byWall.value, 'm/s')}, on ${machine} with the ${formatQuantity(plunger, 'mm')} plunger: no machine of the plant drove that plan`,
      status: 'derived',
      parents: [byWall],
    }),
  );
  const reserve = ledger.look('pq2/planned', 'reserve', {}, 'gate.machine-reserve');
  return ledger.apply(drivenGateVelocity, { driven, reserve, least }, { id: 'gate.velocity' });
}

function flow(ledger: Ledger): void {
  const { family, id } = ledger.alloy;
  const mass = ledger.apply(flowMass, { part_mass: ledger.value('part.mass'), overflow_mass: ledger.value('overflow.mass') });
  const density = orPinned(ledger, 'gate.liquid-density', () => {
    // The three zinc-aluminium alloys are too far apart for one figure of the family.
    const own = family === 'zinc-aluminium' ? ledger.lookIfAny('gate/liquid-density-za', 'density', { alloy: id }, 'gate.liquid-density') : undefined;
    return own ?? ledger.look('gate/liquid-density', 'density', { family }, 'gate.liquid-density');
  });
  const volume = ledger.apply(flowVolume, { mass, density }, { note: 'liquid metal takes more room than the solid casting of the same mass' });
  ledger.attempt('gate.flow', 'Flow into one cavity', () => ledger.apply(gateFlow, { volume, time: ledger.value('fill.time') }));
}

/** A share of the wall inside the range of the family; a vertical shot feeds through a gate nearly as thick as the wall. */
function thickness(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const wall = ledger.put(
    ledger.value('part.wall-nominal').as('gate.wall', 'the nominal wall; the wall where the gate stands is not known before the gate is placed'),
  );
  const vertical = ledger.text('machine.kind') === VERTICAL;
  orPinned(ledger, 'gate.thickness', () => {
    const greatest_share = ledger.look('gate/planned', 'wall_share_greatest', { family }, 'gate.wall-share-greatest');
    const share = vertical
      ? ledger.put(greatest_share.as('gate.wall-share', 'vertical shot: the thickest gate that still trims'))
      : ledger.look('gate/planned', useOf(ledger) === 'structural' ? 'wall_share_structural' : 'wall_share', { family }, 'gate.wall-share');
    const [table, axes, ends] = vertical
      ? (['squeeze/process', {}, ['gate_least', 'gate_greatest']] as const)
      : (['gate/thickness', { family }, ['least', 'greatest']] as const);
    const least = ledger.look(table, ends[0], axes, 'gate.thickness-least');
    const greatest = ledger.look(table, ends[1], axes, 'gate.thickness-greatest');
    return ledger.apply(plannedThickness, { wall, share, greatest_share, least, greatest });
  });
  ledger.look('gate/wall-share', 'land_least', {}, 'gate.land-least');
  ledger.look('gate/wall-share', 'land_usual', {}, 'gate.land-usual');
  ledger.look('gate/wall-share', 'land_greatest', {}, 'gate.land-greatest');
}

function width(ledger: Ledger): void {
  const total = ledger.apply(gateWidth, { area: ledger.value('gate.area'), thickness: ledger.value('gate.thickness') });
  ledger.apply(gateCount, { width: total, side: ledger.value('part.side-a') });
  const share = ledger.look('gate/planned', 'line_share', { family: ledger.alloy.family }, 'gate.line-share');
  ledger.apply(greatestGateWidth, { parting_line: ledger.value('overflow.parting-line'), share });
}

function atomisation(ledger: Ledger): void {
  const density = ledger.value('gate.liquid-density').in('kg/m3');
  const gate = { thickness: ledger.value('gate.thickness'), density };
  ledger.apply(atomisationIndex, { velocity: ledger.value('gate.velocity'), ...gate });
  const index = ledger.look('gate/atomisation', 'index', { level: 'usual' }, 'gate.atomisation-wanted');
  ledger.apply(leastAtomisedVelocity, { index, ...gate });
}

function overflowGates(ledger: Ledger): void {
  const number = ledger.value('overflow.number');
  if (number.value === 0) return;
  const family = ledger.alloy.family;
  const share = ledger.look('overflow/gate', 'area_share', { family }, 'overflow.gate-share');
  const area = ledger.apply(overflowGateArea, { gate_area: ledger.value('gate.area'), share });
  const least = ledger.look('overflow/gate', 'least', { family }, 'overflow.gate-thickness-least');
  const greatest = ledger.look('overflow/gate', 'greatest', { family }, 'overflow.gate-thickness-greatest');
  const thickness = ledger.apply(overflowGateThickness, {
    least,
    greatest,
    gate_thickness: ledger.value('gate.thickness'),
    gate_share: ledger.look('overflow/gate', 'gate_share', { family }, 'overflow.gate-thickness-share'),
    thickest: ledger.look('overflow/gate', 'thickest', { family }, 'overflow.gate-thickest'),
  });
  ledger.apply(overflowGateWidth, { area, number, thickness });
}

function pressure(ledger: Ledger): Traced<'MPa'> {
  const discharge = orPinned(ledger, 'gate.discharge', () => {
    const usual = ledger.look('gate/discharge', 'used', { family: ledger.alloy.family }, 'gate.discharge-usual');
    return assumeUsual(ledger, 'gate.discharge', usual, 'it depends on the runner more than on the alloy and may be far off');
  });
  return ledger.apply(
    diePressure,
    { density: ledger.value('gate.liquid-density').in('kg/m3'), discharge, velocity: ledger.value('gate.velocity') },
    { id: 'gate.die-pressure' },
  );
}

function show(ledger: Ledger): ReturnType<Step['show']> {
  const values = valuesBlock(ledger, [
    'gate.flow-mass',
    'gate.liquid-density',
    'gate.flow-volume',
    'fill.time',
    'gate.flow',
    'gate.velocity-by-wall',
    'gate.machine-velocity',
    'gate.velocity',
    'gate.area',
    'gate.thickness',
    'gate.width',
    'gate.greatest-width',
    'gate.count',
    'gate.discharge',
    'gate.die-pressure',
    'gate.least-atomised-velocity',
  ]);
  if (values.length === 0) return [];
  const window = (label: string, least: string, greatest: string): Cell[][] =>
    ledger.values.has(least) && ledger.values.has(greatest) ? [[label, { value: least }, { value: greatest }]] : [];
  return [
    textBlock(
      'Per cavity. The flow volume is the mass of casting and overflows at the density of the liquid, which is lower than that of the casting; a vacuum channel that fills comes on top. When the cavity is full, 5 to 10 % less has gone in; the rest follows while the casting shrinks. So the gate is a little on the large side.',
    ),
    ...(ledger.texts.get('machine.kind') === VERTICAL
      ? [
          textBlock(
            'Vertical shot: planned with the velocity of structural parts and a gate nearly as thick as the wall. Filling slower still, as in squeeze casting, is another process with its own times.',
          ),
        ]
      : []),
    ...values,
    ...tableBlock(
      'Windows',
      ['', 'Least', 'Greatest'],
      [
        ...window('Gate velocity', 'gate.velocity-least', 'gate.velocity-greatest'),
        ...window('Gate velocity, usual', 'gate.velocity-usual-least', 'gate.velocity-usual-greatest'),
        // The worksheet's figures fit aluminium and no stream that is planned slow.
        ...(ledger.alloy.family === 'aluminium' && useOf(ledger) !== 'structural'
          ? window('Gate velocity by thinnest wall, an unsigned worksheet', 'gate.wall-velocity-least', 'gate.wall-velocity-greatest')
          : []),
        ...window('Gate thickness', 'gate.thickness-least', 'gate.thickness-greatest'),
        ...window('Gate land', 'gate.land-least', 'gate.land-greatest'),
      ],
    ),
    ...(ledger.values.has('gate.atomisation-index')
      ? [textBlock('The velocity for an atomised stream is advisory: one school wants the stream atomised, another attached.')]
      : []),
    ...showRunner(ledger),
  ];
}
