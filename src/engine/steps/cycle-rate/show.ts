import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, type Step, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';

/** The rate in words, and its low and high end; one that has no ends stands in the first. */
const RATES: readonly (readonly [string, ValueId, ValueId?])[] = [
  ['Planned cycle', 'cycle.shots'],
  ['Assumed for the machine hours', 'machine.rate'],
  ['Assumed for the count of cavities', 'machine.mean-rate'],
  ['Machines of this size', 'machine.size-rate-least', 'machine.size-rate-greatest'],
  ['Alloy family', 'machine.shots-least', 'machine.shots-greatest'],
];

export const show: Step['show'] = (ledger) => {
  if (!ledger.values.has('cycle.time')) return [];
  return [
    ...tableBlock(
      'Cycle time',
      ['', 'Time'],
      [
        ['Sum of the elements', cell(ledger, 'cycle.elements-time')],
        ['Shortest cycle that the cooling lines hold', cell(ledger, 'cooling.cycle-least')],
        ['Planned', cell(ledger, 'cycle.time')],
        ['Set by', textCell(ledger, 'cycle.limited-by')],
      ],
    ),
    ...valuesBlock(ledger, ['cycle.wait', 'cycle.shots', 'cycle.gross-parts', 'cavities.reject-share', 'cycle.good-parts', 'cycle.gain']),
    ...tableBlock(
      'Shots an hour, while the machine runs',
      ['', 'Shots, or least', 'Greatest'],
      RATES.filter(([, id]) => ledger.values.has(id)).map(([label, id, end]): Cell[] => [label, cell(ledger, id), end === undefined ? '–' : cell(ledger, end)]),
    ),
    ...hours(ledger),
    ...startUp(ledger),
  ];
};

function hours(ledger: Ledger): Block[] {
  if (!ledger.values.has('cycle.hours')) return [];
  return [
    textBlock(
      'Hours a year with the planned cycle, beside the hours that were reckoned with when the machine was chosen. The count of cavities stays as it was taken; the least count with the planned cycle stands beside it. The hours are those to book on the machine: the share of them that makes shots leaves room for changing dies, maintenance and long stops. The cost reckons with fewer, those in which the machine runs and now and then stops for a moment.',
    ),
    ...valuesBlock(ledger, [
      'production.per-year',
      'cavities.use-share',
      'cycle.shots-year',
      'cycle.hours',
      'cycle.rate-ratio',
      'production.hours-per-year',
      'cycle.longest',
      'machine.cavities',
      'cycle.cavities-needed',
    ]),
  ];
}

function startUp(ledger: Ledger): Block[] {
  if (!ledger.values.has('cycle.start-up-share')) return [];
  return [
    textBlock(
      'The first shots warm the die and are scrap, at the start of a run and after every stop in which the die cools. They are part of the reject share, not added to it. Runs and stops are assumptions until the foundry gives its own.',
    ),
    ...valuesBlock(ledger, ['cycle.runs', 'cycle.start-shots', 'cycle.stop-interval', 'cycle.stop-shots', 'cycle.start-up-shots', 'cycle.start-up-share']),
  ];
}
