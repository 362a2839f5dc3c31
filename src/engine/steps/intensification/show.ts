import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { tableBlock, textBlock, valuesBlock } from '../../step.ts';
import { cannotBeLowered, pressesHarder } from './fill-phase.ts';

export function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('intensification.gate-freeze-least') && !ledger.values.has('intensification.feed-volume')) return [];
  const cold = ledger.texts.get('machine.chamber') === 'cold';
  const held = ledger.values.has('intensification.standing-force') && cannotBeLowered(ledger);
  return [
    ...(held
      ? [
          textBlock(
            'The fill phase by itself presses harder than the class of the part asks for, and set lower it would no longer drive the gates. Nothing is left for an intensifier to add; the die is locked, and its plates are reckoned, for the pressure of the fill phase.',
          ),
        ]
      : []),
    textBlock(
      cold
        ? `${held ? 'Pressure' : 'When the cavity is full the machine raises the metal pressure. It'} reaches the casting only while gate, runner and the core of the biscuit are liquid, so it must stand before the gate is frozen. The freezing time is a published range for one gate carried over by the square of the thickness; the heat solution of the gate stands in the section on solidification.`
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
