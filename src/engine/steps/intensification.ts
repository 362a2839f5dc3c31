import type { Traced } from '../../kernel/traced.ts';
import { clampUse } from '../../physics/clamp-use.ts';
import {
  feedTravel,
  gateForTime,
  gateFreeze,
  hydraulicPressure,
  loweredFillPressure,
  loweredPressureLeft,
  scaledLoad,
  staticLockingForce,
} from '../../physics/intensification.ts';
import { staticPressure } from '../../physics/pq2.ts';
import type { Ledger } from '../ledger.ts';
import type { Block, Cell } from '../plan.ts';
import { assumeMiddle } from '../planned.ts';
import { type Step, tableBlock, textBlock, valuesBlock } from '../step.ts';
import { workBiscuitLeft, workFeeding } from './feeding.ts';
import { VERTICAL } from './squeeze.ts';

/**
 * Pressure on the metal after the fill: how high, how soon it must stand before the gate is frozen, how long it is held,
 * in what order gate, runner and biscuit freeze, and how much metal the shrinkage takes.
 */
export const intensificationStep: Step = {
  id: 'intensification',
  title: 'Pressure after the fill',
  work: (ledger) => {
    const attempt = ledger.attempt.bind(ledger);
    const cold = ledger.text('machine.chamber') === 'cold';
    attempt('intensification.fill-pressure', 'Static metal pressure of the fill phase', () => fillPressure(ledger));
    attempt('intensification.lowered-pressure', 'Pressure of the fill phase against the one planned', () => lowered(ledger));
    if (cold) attempt('intensification.hydraulic-pressure', 'Setting of the intensifier', () => setting(ledger));
    attempt('intensification.gate-freeze-least', 'Freezing time of the gate', () => freezing(ledger));
    if (cold) attempt('intensification.rise-needed', 'Rise time', () => rise(ledger));
    if (ledger.text('machine.kind') !== VERTICAL) attempt('intensification.hold', 'Time under pressure', () => hold(ledger));
    attempt('intensification.main-depth', 'Order of freezing', () =>
      ledger.put(ledger.value('runner.segment-depth', 'main runner').as('intensification.main-depth')),
    );
    workFeeding(ledger);
    attempt('intensification.feed-travel', 'Metal to feed', () =>
      ledger.apply(feedTravel, { volume: ledger.value('intensification.feed-volume'), diameter: ledger.value('machine.plunger') }),
    );
    if (cold) attempt('intensification.biscuit-left', 'Biscuit that is left', () => workBiscuitLeft(ledger));
  },
  show,
};

/** What the metal sees before the intensifier acts, and what a hot chamber has at all. */
function fillPressure(ledger: Ledger): void {
  const known = ledger.maybe('pq2.static-pressure');
  if (known !== undefined) {
    ledger.put(known.as('intensification.fill-pressure'));
    return;
  }
  const rod_diameter = ledger.maybe('machine.tail-rod-diameter');
  ledger.apply(
    staticPressure,
    {
      hydraulic_pressure: ledger.value('machine.pressure-fill'),
      cylinder_diameter: ledger.value('machine.cylinder-diameter'),
      ...(rod_diameter === undefined ? {} : { rod_diameter }),
      plunger_diameter: ledger.value('machine.plunger'),
    },
    { id: 'intensification.fill-pressure' },
  );
}

/** Where the fill phase presses harder than planned it is set lower, or the die is locked for it; elsewhere both stay as they are. */
function lowered(ledger: Ledger): void {
  const fill_pressure = ledger.value('intensification.fill-pressure');
  const planned = ledger.value('clamp.pressure-reached');
  ledger.apply(loweredFillPressure, { hydraulic: ledger.value('machine.pressure-fill'), planned, fill_pressure });
  ledger.apply(staticLockingForce, { force: ledger.value('clamp.locking-force'), sizing: ledger.value('clamp.sizing-pressure'), fill_pressure });
  const dry_flow = ledger.maybe('pq2.dry-flow');
  if (dry_flow !== undefined) ledger.apply(loweredPressureLeft, { planned, fill_pressure, flow: ledger.value('shot.flow'), dry_flow });
  standing(ledger);
}

/** What stands on the metal where the fill phase presses harder than planned and cannot be set lower; elsewhere what is planned. */
function standing(ledger: Ledger): void {
  const stands = cannotBeLowered(ledger);
  const why = 'the fill phase presses harder than the class asks for and cannot be set lower';
  const [pressure, force] = stands
    ? [ledger.value('intensification.fill-pressure'), ledger.value('intensification.static-force')]
    : [ledger.value('clamp.sizing-pressure'), ledger.value('clamp.locking-force')];
  ledger.put(pressure.as('intensification.standing-pressure', stands ? why : 'as planned'));
  const needed = ledger.put(force.as('intensification.standing-force', stands ? why : 'as planned'));
  const rated = ledger.value('machine.locking-force');
  ledger.apply(clampUse, { needed, rated }, { id: 'intensification.standing-use' });
  ledger.apply(scaledLoad, { load: ledger.value('clamp.tie-bar-load'), force: needed, planned: ledger.value('clamp.locking-force') });
}

/** As `fill-pressure-held` and `fill-pressure-lock` among the limits of this topic have it. */
function cannotBeLowered(ledger: Ledger): boolean {
  const [left, needed] = [ledger.maybe('intensification.lowered-left'), ledger.maybe('pq2.pressure')];
  const planned = ledger.value('clamp.pressure-reached');
  return left !== undefined && needed !== undefined && left.value < needed.value && ledger.value('intensification.fill-pressure').value > 1.02 * planned.value;
}

function pressesHarder(ledger: Ledger): boolean {
  return (ledger.maybe('intensification.fill-pressure')?.value ?? 0) > (ledger.maybe('clamp.pressure-reached')?.value ?? Infinity);
}

/** Nothing is left to be set where the fill phase by itself presses harder. */
function setting(ledger: Ledger): void {
  if (!cannotBeLowered(ledger)) {
    const metal_pressure = ledger.put(ledger.value('clamp.pressure-reached').as('intensification.set-pressure'));
    const [cylinder_diameter, plunger_diameter] = [ledger.value('machine.cylinder-diameter'), ledger.value('machine.plunger')];
    ledger.apply(hydraulicPressure, { metal_pressure, cylinder_diameter, plunger_diameter });
  }
  ledger.look('sleeve/intensification', 'pressure_least', {}, 'intensification.pressure-least');
  ledger.look('sleeve/intensification', 'pressure_greatest', {}, 'intensification.pressure-greatest');
}

/** Published for one gate in aluminium; thickness and family carry it over. */
function freezing(ledger: Ledger): void {
  const reference = ledger.look('sleeve/intensification', 'gate_reference', {}, 'intensification.gate-reference');
  const constant = ledger.look('cooling/handbook-constant', 'constant', { family: ledger.alloy.family }, 'intensification.constant');
  const reference_constant = ledger.look('cooling/handbook-constant', 'constant', { family: 'aluminium' }, 'intensification.constant-aluminium');
  for (const end of ['least', 'greatest'] as const) {
    const time = ledger.look('sleeve/intensification', `gate_freeze_${end}`, {}, `intensification.reference-${end}`);
    ledger.apply(
      gateFreeze,
      { time, reference, thickness: ledger.value('gate.thickness'), constant, reference_constant },
      { id: `intensification.gate-freeze-${end}` },
    );
  }
}

function rise(ledger: Ledger): void {
  const freeze = ledger.value('intensification.gate-freeze-least');
  ledger.put(freeze.as('intensification.rise-needed', 'the pressure must stand before the gate is frozen, at the low end of its freezing time'));
  const thickness = ledger.value('gate.thickness');
  ledger.put(gateWall(ledger).as('intensification.gate-wall'));
  const least = ledger.look('sleeve/intensification', 'rise_least', {}, 'intensification.rise-least');
  const greatest = ledger.look('sleeve/intensification', 'rise_greatest', {}, 'intensification.rise-greatest');
  ledger.apply(gateForTime, { thickness, freeze, time: least }, { id: 'intensification.gate-for-fast' });
  ledger.apply(gateForTime, { thickness, freeze, time: greatest }, { id: 'intensification.gate-for-slow' });
}

/** In a die of several parts the thinnest gate need not be that of the thickest wall. */
function gateWall(ledger: Ledger): Traced<'mm'> {
  const [first, ...others] = ledger.items('set.gate-thickness').filter((part) => ledger.maybe('set.wall', part) !== undefined);
  if (first === undefined) return ledger.value('part.wall-nominal');
  const gate = (part: string): number => ledger.value('set.gate-thickness', part).value;
  return ledger.value(
    'set.wall',
    others.reduce((thinnest, part) => (gate(part) < gate(thinnest) ? part : thinnest), first),
  );
}

function hold(ledger: Ledger): void {
  const axes = { family: ledger.alloy.family, wall: ledger.value('part.wall-nominal') };
  const least = ledger.look('intensification/hold', 'least', axes, 'intensification.hold-least');
  const greatest = ledger.look('intensification/hold', 'greatest', axes, 'intensification.hold-greatest');
  ledger.look('sleeve/intensification', 'hold_greatest', {}, 'intensification.hold-published');
  assumeMiddle(
    ledger,
    'intensification.hold',
    least,
    greatest,
    `${ledger.text('machine.chamber') === 'cold' ? 'the biscuit' : 'the sprue'} sets it, the casting takes pressure only until its gate is frozen`,
  );
}

function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('intensification.gate-freeze-least') && !ledger.values.has('intensification.feed-volume')) return [];
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  const held = ledger.values.has('intensification.standing-force') && cannotBeLowered(ledger);
  return [
    ...(held
      ? [
          textBlock(
            'The fill phase by itself presses harder than the class of the part asks for, and set lower it would no longer drive the gates. Nothing is left for an intensifier to add; the die is locked, and its plates are reckoned, for the pressure of the fill phase. ',
          ),
        ]
      : []),
    textBlock(
      cold
        ? 'When the cavity is full the machine raises the metal pressure. It reaches the casting only while gate, runner and the core of the biscuit are liquid, so it must stand before the gate is frozen. The freezing time is a published range for one gate carried over by the square of the thickness; the heat solution of the gate stands in the section on solidification.'
        : 'A hot chamber has no intensifier: the static pressure of the fill phase presses after, through nozzle, sprue and gate, until the gate is frozen. It makes gas pores smaller and feeds the shrinkage that falls in that time; what freezes later is fed by nothing. How long the gate stays open is in the section on solidification, by the heat solution.',
    ),
    ...valuesBlock(ledger, [
      'clamp.pressure-reached',
      'machine.metal-pressure',
      ...(cold && !held ? (['intensification.hydraulic-pressure', 'machine.pressure-intensified'] as const) : []),
      'intensification.fill-pressure',
      ...(pressesHarder(ledger)
        ? ([
            'intensification.lowered-pressure',
            'intensification.lowered-left',
            'intensification.static-force',
            ...(held ? (['intensification.standing-use', 'intensification.standing-load'] as const) : []),
          ] as const)
        : []),
      ...(cold
        ? (['intensification.rise-needed', 'intensification.gate-for-slow', 'intensification.gate-freeze-greatest'] as const)
        : (['cooling.gate-time'] as const)),
      'intensification.hold',
    ]),
    ...(cold ? pressed(ledger) : []),
    ...tableBlock(
      'Windows',
      ['', 'Least', 'Greatest'],
      [
        ...window(ledger, 'Intensified metal pressure, published', 'intensification.pressure'),
        // A range for gates in aluminium that the rise of the pressure is planned with; a hot chamber has no rise.
        ...(cold ? window(ledger, 'Time until the gate is frozen', 'intensification.gate-freeze') : []),
        ...window(ledger, 'Time in which machines build the pressure', 'intensification.rise'),
        ...window(ledger, 'Time under pressure, by the wall', 'intensification.hold'),
      ],
    ),
    ...tableBlock('Order of freezing: what is thinner freezes first', ['', 'Thickness'], thicknesses(ledger, cold)),
    ...valuesBlock(ledger, [
      'porosity.shrinkage',
      'intensification.feed-volume',
      'intensification.feed-travel',
      ...(cold
        ? (['intensification.biscuit-full', 'intensification.follow-travel', 'intensification.biscuit-left', 'intensification.biscuit-least'] as const)
        : []),
    ]),
    ...followed(ledger),
  ];
}

/** The casting takes pressure for seconds, the biscuit is liquid for longer. */
function pressed(ledger: Ledger): Block[] {
  const [hold, biscuit] = [ledger.values.get('intensification.hold'), ledger.values.get('cooling.biscuit-time')];
  if (hold === undefined || biscuit === undefined || hold.value >= biscuit.value || !ledger.values.has('cooling.dwell')) return [];
  return [
    textBlock(
      'The time under pressure is that of the casting. Keep the plunger pressed on the biscuit until that is solid too, ',
      { value: 'cooling.biscuit-time' },
      ' of the ',
      { value: 'cooling.dwell' },
      ' that the die stays shut; let go while it is liquid inside, it bleeds or bulges, tears off when the die opens, and can burst.',
    ),
  ];
}

/** Why the plunger goes further than the feeding of the castings asks for. */
function followed(ledger: Ledger): Block[] {
  if (!ledger.values.has('intensification.follow-travel') || !ledger.values.has('intensification.feed-travel')) return [];
  return [
    textBlock(
      'The plunger follows by ',
      { value: 'intensification.follow-travel' },
      ' from full cavities to the end, as long as gate and biscuit let it: ',
      { value: 'intensification.feed-travel' },
      ' feed what castings and overflows lose in freezing, the rest goes into the denser metal of all that cools, runner and biscuit with it.',
    ),
  ];
}

function window(ledger: Ledger, label: string, topic: string): Cell[][] {
  const [least, greatest] = [`${topic}-least`, `${topic}-greatest`];
  return ledger.values.has(least) && ledger.values.has(greatest) ? [[label, { value: least }, { value: greatest }]] : [];
}

/** Compared by thickness only: the gate must freeze first, the biscuit last. */
function thicknesses(ledger: Ledger, cold: boolean): Cell[][] {
  // A sprue amid the castings is split at its foot: no main runner is there to freeze, and the thickest run stands in its place.
  const split = ledger.maybe('runner.segment-length', 'main runner')?.value === 0;
  const rows: (readonly [string, string])[] = [
    ['Gate', 'gate.thickness'],
    ['Wall of the part, nominal', 'part.wall-nominal'],
    ['Runner at the gate', 'runner.segment-depth[gate run]'],
    split ? ['Thickest run of the runner', 'cooling.runner-depth'] : ['Main runner', 'intensification.main-depth'],
    ...(cold ? [['Biscuit', 'sleeve.biscuit-thickness'] as const] : []),
  ];
  return rows.filter(([, id]) => ledger.values.has(id)).map(([label, id]) => [label, { value: id }]);
}
