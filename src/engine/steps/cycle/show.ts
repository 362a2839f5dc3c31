import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, type Step, tableBlock, textBlock, titleOf, valuesBlock } from '../../step.ts';
import type { ValueId } from '../../vocabulary/index.ts';
import { cycleFigure } from './figure.ts';
import { onPath } from './path.ts';

/** Element in words, planned, and the ends of its range in the trade. */
const COMPARED: readonly (readonly [string, ValueId, ValueId, ValueId])[] = [
  ['Ladle and pour', 'cycle.ladle', 'cycle.ladle-least', 'cycle.ladle-greatest'],
  ['Rest, slow shot and fill', 'cycle.inject', 'cycle.inject-least', 'cycle.inject-greatest'],
  ['Die shut after the fill', 'cycle.dwell', 'cycle.dwell-least', 'cycle.dwell-greatest'],
  ['Opening', 'cycle.open', 'cycle.open-least', 'cycle.open-greatest'],
  ['Ejecting', 'cycle.eject', 'cycle.eject-least', 'cycle.eject-greatest'],
  ['Shot leaves the die', 'cycle.extract', 'cycle.extract-least', 'cycle.extract-greatest'],
  ['One spraying', 'cycle.spray-each', 'cycle.spray-least', 'cycle.spray-greatest'],
  ['Blowing off once', 'cycle.blow-each', 'cycle.blow-least', 'cycle.blow-greatest'],
  ['Closing and locking', 'cycle.shut', 'cycle.close-least', 'cycle.close-greatest'],
];

/** Ladling and the rest in the sleeve are part of it; a hot chamber has neither. */
const FILLED = 'From the ladle to full cavities';
const FILLED_HOT = 'From the start of the shot to full cavities';

const PARTS: readonly (readonly [string, ValueId, ValueId, ValueId?, ValueId?])[] = [
  ['Die shut after the fill', 'cycle.dwell', 'cycle.share-dwell', 'cycle.trade-dwell-least', 'cycle.trade-dwell-greatest'],
  ['Spray and blowing off', 'cycle.part-spray', 'cycle.share-spray', 'cycle.trade-spray-least', 'cycle.trade-spray-greatest'],
  [FILLED, 'cycle.part-metal', 'cycle.share-metal'],
  ['Movements of machine and cores', 'cycle.part-machine', 'cycle.share-machine'],
  ['Taking out, inserts, waits', 'cycle.part-handling', 'cycle.share-handling'],
];

export const show: Step['show'] = (ledger) => {
  const elements = ledger.texts.has('machine.chamber') ? onPath(ledger).filter(({ id }) => ledger.values.has(id)) : [];
  if (elements.length === 0) return [];
  return [
    textBlock(
      'The elements follow each other on one machine with what feeds and serves it. The movements of the machine are its dry cycle, split; hydraulic cores, taking out, spray and blowing off wait for the open die. An element that is not done at every shot counts with its average.',
    ),
    ...decided(ledger),
    ...tableBlock(
      'Elements in their order',
      ['Element', 'Time'],
      elements.map(({ id }): Cell[] => [titleOf(id), { value: id }]),
    ),
    ...dosed(ledger),
    ...valuesBlock(ledger, ['cycle.elements-time', 'cycle.open-time', 'cycle.spray-each', 'cycle.spray-interval']),
    ...cycleFigure(ledger),
    ...beside(ledger),
    ...compared(ledger),
    ...shares(ledger),
    ...checks(ledger),
  ];
};

function decided(ledger: Ledger): Block[] {
  const removal = ledger.decisions.has('cycle.removal') ? [textBlock('How the shot leaves the die: ', { decision: 'cycle.removal' }, '.')] : [];
  const path = ledger.decisions.has('cycle.path') ? [textBlock('How the elements follow each other: ', { decision: 'cycle.path' }, '.')] : [];
  const governs = ledger.decisions.has('cycle.governs') ? [textBlock('Largest part of the cycle: ', { decision: 'cycle.governs' }, '.')] : [];
  return [...path, ...removal, ...governs];
}

/** The time of a ladle is counted, for no plant file says how fast its furnace doses. */
function dosed(ledger: Ledger): Block[] {
  const ladle = ledger.values.get('cycle.ladle');
  if (ladle === undefined || ladle.kind === 'pinned' || ledger.texts.get('furnace.holding-kind') !== 'dosing') return [];
  return [
    textBlock(
      `The furnace that holds the metal, ${ledger.texts.get('furnace.holding') ?? ''}, doses straight into the sleeve, and the `,
      { value: 'cycle.ladle' },
      ' are those of a ladle that is dipped, carried and tilted. Pin cycle.ladle with the mass of the shot over the dosing rate of the furnace, and a second for the start.',
    ),
  ];
}

function beside(ledger: Ledger): Block[] {
  const values = valuesBlock(ledger, ['cycle.hold', 'cycle.recovery', 'cycle.dip']);
  if (values.length === 0) return [];
  return [
    textBlock(
      ledger.texts.get('machine.chamber') === 'hot'
        ? 'Beside the way of the cycle: the pressure stands on the metal in the first part of the dwell, then the plunger goes back and the gooseneck fills again. Trimming and cooling of the shot before run beside too.'
        : 'Beside the way of the cycle: the pressure stands on the metal in the first part of the dwell; the plunger follows the biscuit out, goes back and is lubricated while the die is open. Trimming and cooling of the shot before run beside too.',
    ),
    ...values,
  ];
}

function compared(ledger: Ledger): Block[] {
  const rows = COMPARED.filter(([, id, least]) => ledger.values.has(id) && ledger.values.has(least));
  return tableBlock(
    'Planned, and the range of the trade for machines of this size',
    ['Element', 'Planned', 'Least', 'Greatest'],
    rows.map(([label, ...ids]): Cell[] => [label, ...ids.map((id) => cell(ledger, id))]),
  );
}

function shares(ledger: Ledger): Block[] {
  const published = ledger.values.has('cycle.trade-dwell-least');
  const rows = PARTS.filter(([, , share]) => ledger.values.has(share)).map(([label, id, share, least, greatest]): Cell[] => [
    label === FILLED && ledger.text('machine.chamber') === 'hot' ? FILLED_HOT : label,
    cell(ledger, id),
    cell(ledger, share),
    ...(published ? [least, greatest].map((end): Cell => (end === undefined ? '–' : cell(ledger, end))) : []),
  ]);
  return [
    ...tableBlock(
      'Parts of the cycle',
      published ? ['Part', 'Time', 'Share', 'Published share, least', 'Published share, greatest'] : ['Part', 'Time', 'Share'],
      rows,
    ),
    ...(published && rows.length > 0
      ? [
          textBlock(
            'The published shares are those of a trade page, for high volumes. They do not agree with the ranges of the elements above, in whose middles the die stays shut for about a quarter of the cycle; what a page counts as cooling is not said.',
          ),
        ]
      : []),
  ];
}

function checks(ledger: Ledger): Block[] {
  const values = valuesBlock(ledger, [
    ...((ledger.maybe('cycle.core-pulls')?.value ?? 0) > 0 ? (['cycle.core-pulls'] as const) : []),
    'cycle.spray-rule',
    'cycle.spray-other',
    'cycle.textbook-least',
    'cycle.textbook-greatest',
    'cycle.typical-least',
    'cycle.typical-greatest',
    'cycle.structural-least',
    'cycle.structural-greatest',
    'cycle.measured',
  ]);
  if (values.length === 0) return [];
  return [
    textBlock(
      'Beside the plan, for comparison only: the spraying time by two remembered rules, the cycle as a textbook adds it up, and what was published of whole cycles. The textbook has no slow shot, no blowing off and no waits; its cooling time is remembered in two forms, and both sums stand here.',
    ),
    ...values,
  ];
}
