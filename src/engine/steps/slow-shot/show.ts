import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, type Step, tableBlock, textBlock, titleOf, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { shotFigure, waveFigure } from './figures.ts';

const POSITIONS: readonly (readonly [ValueId, string])[] = [
  ['slow-shot.travel-hole-closed', 'no metal can splash out any more'],
  ['slow-shot.travel-ramp-end', 'the wave fills the section in front of the plunger'],
  ['sleeve.travel-when-full', 'the air is out of the sleeve'],
  ['slow-shot.change-over', 'the fast shot begins'],
  ['sleeve.travel-at-gate', 'the runner is full'],
  ['slow-shot.travel-fast', 'the planned fill rate is there'],
  ['slow-shot.travel-brake', 'the plunger is slowed against the pressure spike'],
  ['slow-shot.travel-filled', 'castings and overflows are full'],
  ['slow-shot.travel-end', 'all metal is solid; what is left of the sleeve is the biscuit'],
];

/** Phase, where it ends, the speed there, the acceleration and the time. */
const SEQUENCE: readonly (readonly [string, ValueId | undefined, ValueId, ValueId, ValueId | undefined, ValueId])[] = [
  ['Start', undefined, 'slow-shot.travel-hole-closed', 'slow-shot.hole-speed', 'slow-shot.first-acceleration', 'slow-shot.time-start'],
  ['Ramp', 'slow-shot.travel-hole-closed', 'slow-shot.travel-ramp-end', 'slow-shot.speed', 'slow-shot.second-acceleration', 'slow-shot.time-ramp'],
  ['Slow shot', 'slow-shot.travel-ramp-end', 'slow-shot.change-over', 'slow-shot.speed', undefined, 'slow-shot.time-steady'],
  ['Change-over', 'slow-shot.change-over', 'slow-shot.travel-fast', 'sleeve.fast-speed', 'slow-shot.fast-acceleration', 'slow-shot.time-change'],
  ['Fast shot', 'slow-shot.travel-fast', 'slow-shot.travel-brake', 'sleeve.fast-speed', undefined, 'slow-shot.time-fast'],
  ['Braking', 'slow-shot.travel-brake', 'slow-shot.travel-filled', 'slow-shot.speed', undefined, 'slow-shot.time-brake'],
];

export const show: Step['show'] = (ledger) => {
  const speeds = valuesBlock(ledger, [
    'sleeve.critical-speed-energy',
    'sleeve.critical-speed-momentum',
    'slow-shot.balance-difference',
    'slow-shot.linear-speed',
    'slow-shot.speed',
    'slow-shot.window-least',
    'slow-shot.window-greatest',
  ]);
  if (speeds.length === 0) return [];
  return [
    textBlock(
      'Below the critical speed the wave runs ahead of the plunger, comes back from the die end and closes over air; above it the crest is thrown back from the roof of the sleeve. The energy balance takes no loss in the wave; the momentum balance takes that of a jump and lies higher. The plan takes the lower: a plunger that gathers speed on ramps raises the metal first and drives a smaller jump, which loses little, and of the two mistakes a thin layer of air that can still leave is better than a crest that rolls over it.',
    ),
    ...speeds,
    ...valuesBlock(ledger, ['slow-shot.ladle-time', 'fill.temperature-loss', 'slow-shot.loss-by-fill', 'fill.gate-temperature']),
    ...colder(ledger),
    ...positions(ledger),
    ...valuesBlock(ledger, [
      'slow-shot.hole-ratio',
      'slow-shot.ramp-share',
      'sleeve.travel-when-full',
      'sleeve.travel-at-gate',
      'slow-shot.acceleration-needed',
      'slow-shot.fast-acceleration',
      'sleeve.change-over',
      'slow-shot.change-over',
      'slow-shot.brake-distance',
      'slow-shot.travel-end',
      'slow-shot.time',
      'slow-shot.fill-duration',
    ]),
    ...wave(ledger),
    ...shotFigure(ledger),
    ...waveFigure(ledger),
  ];
};

/** The fill was planned before the sleeve was known. */
function colder(ledger: Ledger): Block[] {
  const [planned, likely] = [ledger.values.get('fill.temperature-loss'), ledger.values.get('slow-shot.loss-by-fill')];
  if (planned === undefined || likely === undefined || likely.value <= planned.value) return [];
  return [
    textBlock(
      'A sleeve filled so may take ',
      { value: 'slow-shot.loss-by-fill' },
      ' where the fill was planned with ',
      { value: 'fill.temperature-loss' },
      ': little metal in a large sleeve cools more on the way. Hold the metal hotter by the difference, or pin fill.temperature-loss and plan the fill with it.',
    ),
  ];
}

function positions(ledger: Ledger): Block[] {
  const rows = POSITIONS.filter(([id]) => ledger.values.has(id)).map(([id, what]): Cell[] => [titleOf(id), { value: id }, what]);
  const sequence = SEQUENCE.filter((phase) => ledger.values.has(phase[5])).map(([name, from, to, speed, rate, time]): Cell[] => [
    name,
    from === undefined ? 'start' : cell(ledger, from),
    cell(ledger, to),
    cell(ledger, speed),
    rate === undefined ? '–' : cell(ledger, rate),
    cell(ledger, time),
  ]);
  return [
    ...tableBlock('Positions, as plunger travel from the start', ['Position', 'Travel', 'What it means'], rows),
    ...tableBlock('Sequence of the shot', ['Phase', 'From', 'To', 'Speed at its end', 'Acceleration', 'Time'], sequence),
    ...(ledger.values.has('slow-shot.change-over')
      ? [
          textBlock(
            'At the machine the change-over is set within ± ',
            { value: 'slow-shot.change-over-window' },
            ' of the plan, at most ± ',
            { value: 'slow-shot.change-over-greatest' },
            '; the dose of the ladle moves the metal as much. It is not set before the sleeve is full.',
          ),
        ]
      : []),
  ];
}

function wave(ledger: Ledger): Block[] {
  if (!ledger.decisions.has('slow-shot.wave')) {
    return [textBlock('The wave itself was not computed; the option --wave of the plan command runs it for this profile.')];
  }
  return [
    textBlock(
      'Wave in the sleeve: ',
      { decision: 'slow-shot.wave' },
      '. It is an estimate: shallow water without friction, cooling or air pressure; a crest that curls over is not in it.',
    ),
    ...valuesBlock(ledger, ['slow-shot.wave-trapped', 'slow-shot.wave-share', 'slow-shot.wave-closing', 'slow-shot.wave-head']),
  ];
}
