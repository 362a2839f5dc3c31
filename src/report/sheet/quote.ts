import type { RootContent } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { paragraph, strong } from '../markdown/nodes.ts';
import type { Line, PlanTable } from './form.ts';
import { rowsOf, rowsTable } from './lines.ts';
import { legend, planRows } from './parts.ts';
import { linesFor } from './sets.ts';

/** What the price rests on. */
export const QUOTE_LINES: readonly Line[] = [
  {
    title: 'Part',
    pieces: [
      { id: 'part.mass' },
      { id: 'part.envelope-x', label: 'x' },
      { id: 'part.envelope-y', label: 'y' },
      { id: 'part.envelope-z', label: 'z' },
      { id: 'quality.use', label: 'use' },
      { id: 'quality.finish', label: 'finish' },
    ],
  },
  {
    title: 'Quantities',
    pieces: [
      { id: 'production.per-year', label: 'a year' },
      { id: 'production.life', label: 'over the life' },
    ],
  },
  {
    title: 'Machine and die',
    pieces: [
      { id: 'machine.model' },
      { id: 'machine.locking-force' },
      { id: 'machine.cavities', label: 'cavities' },
      { id: 'parting.core-pulls', label: 'core pulls' },
      { id: 'die.mass', label: 'mass of the die' },
    ],
  },
  {
    title: 'Cycle',
    pieces: [{ id: 'cycle.time' }, { id: 'cycle.shots', label: 'shots' }, { id: 'cycle.good-parts', label: 'good parts' }],
  },
  {
    title: 'Machine hours a year',
    pieces: [{ id: 'cycle.hours' }, { id: 'production.hours-per-year', label: 'of' }],
  },
  {
    title: 'Metal',
    pieces: [
      { id: 'shot.mass', label: 'shot' },
      { id: 'metal.yield', label: 'yield' },
      { id: 'metal.new-per-part', label: 'new metal for a good part' },
      { id: 'metal.returns', label: 'returns' },
    ],
  },
  {
    title: 'Die life',
    pieces: [
      { id: 'die.shots-needed', label: 'shots needed' },
      { id: 'die.life', label: 'a set lasts' },
      { id: 'die.sets', label: 'sets' },
    ],
  },
  {
    title: 'After the shot',
    pieces: [
      { id: 'finish.trimming' },
      { id: 'finish.press-model', label: 'press' },
      { id: 'finish.press' },
      { id: 'finish.press-drive', label: 'drive' },
      { id: 'finish.cooling', label: 'cooling' },
      { id: 'finish.heat-treatment', label: 'heat treatment' },
      { id: 'finish.impregnation', label: 'impregnation' },
    ],
  },
  { title: 'Faces to machine', each: { id: 'machining.stock', most: 6, inline: true }, pieces: [{ id: 'machining.stock', label: 'stock' }] },
  {
    title: 'Holes not used as cast',
    each: { id: 'hole.making', except: ['cored as cast'], most: 6, inline: true },
    pieces: [{ id: 'hole.count' }, { id: 'hole.making' }, { id: 'hole.thread', label: 'thread' }],
  },
  {
    title: 'Tolerances not as usual',
    each: { id: 'tolerance.verdict', except: ['holds', 'not asked'], most: 6 },
    pieces: [
      { id: 'dimension.nominal' },
      { id: 'dimension.tolerance', label: 'asked plus-minus' },
      { id: 'tolerance.plus-standard', label: 'usual die holds' },
      { id: 'tolerance.verdict', label: 'verdict' },
    ],
  },
  {
    title: 'Tolerances of holes',
    each: { id: 'tolerance.hole-verdict', except: ['holds', 'not asked'], most: 6 },
    pieces: [
      { id: 'hole.diameter' },
      { id: 'hole.tolerance', label: 'asked plus-minus' },
      { id: 'tolerance.hole-standard', label: 'usual die holds' },
      { id: 'tolerance.hole-verdict', label: 'verdict' },
    ],
  },
];

/** The lines of the cost, each with its share. */
export const QUOTE_COST: readonly Line[] = [
  { title: 'Metal in the part', pieces: [{ id: 'cost.metal' }], within: [{ id: 'cost.share', item: 'metal' }] },
  { title: 'Metal lost in melting', pieces: [{ id: 'cost.melt-loss' }], within: [{ id: 'cost.share', item: 'metal lost' }] },
  { title: 'Returns that are sold', pieces: [{ id: 'cost.returns' }], within: [{ id: 'cost.share', item: 'returns' }] },
  { title: 'Energy of melting and holding', pieces: [{ id: 'cost.melting' }], within: [{ id: 'cost.share', item: 'energy' }] },
  { title: 'Die casting machine', pieces: [{ id: 'cost.machine' }], within: [{ id: 'cost.share', item: 'machine' }] },
  { title: 'Trimming', pieces: [{ id: 'cost.trimming' }], within: [{ id: 'cost.share', item: 'trimming' }] },
  { title: 'Machining', pieces: [{ id: 'cost.machining' }], within: [{ id: 'cost.share', item: 'machining' }] },
  { title: 'Impregnation', pieces: [{ id: 'cost.impregnation' }], within: [{ id: 'cost.share', item: 'impregnation' }] },
  { title: 'Castings lost for leaks', pieces: [{ id: 'cost.leakers' }], within: [{ id: 'cost.share', item: 'leaking castings' }] },
  { title: 'Die and further sets', pieces: [{ id: 'cost.die-per-part' }], within: [{ id: 'cost.share', item: 'die' }] },
  { title: 'Trim die', pieces: [{ id: 'cost.trim-die-per-part' }], within: [{ id: 'cost.share', item: 'trim die' }] },
  { title: 'A good part without its dies', pieces: [{ id: 'cost.without-die' }] },
  { title: 'A good part', pieces: [{ id: 'cost.per-part' }], within: [{ id: 'cost.share', item: 'total' }] },
  {
    title: 'Dies, if paid for apart',
    pieces: [
      { id: 'cost.die', label: 'die' },
      { id: 'cost.die-low', to: 'cost.die-high', label: 'between' },
      { id: 'cost.set', label: 'a further set' },
      { id: 'cost.trim-die', label: 'trim die' },
    ],
  },
];

/** What moves the price if it turns out otherwise. */
export const QUOTE_ASSUMPTIONS: readonly Line[] = [
  { title: 'Rejects', pieces: [{ id: 'cavities.reject-share' }] },
  { title: 'Pieces reached of those the cycle would make', pieces: [{ id: 'cost.efficiency' }] },
  { title: 'Hours in which the machine makes shots', pieces: [{ id: 'cavities.use-share' }] },
  {
    title: 'Time that the die stays shut',
    pieces: [{ id: 'cooling.dwell' }],
    within: [{ id: 'cooling.ejection-time-fast', to: 'cooling.ejection-time-slow', label: 'nominal wall ready after' }],
  },
  { title: 'Runs a year', pieces: [{ id: 'cycle.runs' }, { id: 'cycle.start-shots', label: 'scrap shots at each start' }] },
  {
    title: 'Metal lost at each melting',
    pieces: [{ id: 'metal.melt-loss' }],
    within: [{ id: 'metal.melt-loss-least', to: 'metal.melt-loss-greatest' }],
  },
  {
    title: 'Sets over the life',
    pieces: [{ id: 'die.sets' }],
    within: [{ id: 'die.sets-least', to: 'die.sets-greatest' }],
  },
];

/** What an estimator adds, from the section on cost. */
export const LEFT_OUT: PlanTable = { section: 'cost', title: 'Not in this cost' };

export function quoteBody(plan: Plan): RootContent[] {
  const facts = rowsOf(plan, linesFor(plan, 'quote', QUOTE_LINES));
  const cost = rowsOf(plan, linesFor(plan, 'quote', QUOTE_COST, false));
  const assumed = rowsOf(plan, linesFor(plan, 'quote', QUOTE_ASSUMPTIONS, false));
  const currency = plan.texts.get('cost.currency');
  const date = plan.texts.get('cost.date');
  const priced = currency === undefined ? 'Cost' : `Cost in ${currency}${date === undefined ? '' : `, prices of ${date}`}`;
  return [
    rowsTable(facts, { title: 'For the quote', planned: 'Planned' }),
    ...(cost.length === 0
      ? [paragraph('No cost is worked out: the plan has no prices for it.')]
      : [
          rowsTable(cost, { title: priced, planned: 'Amount', within: 'Share' }),
          ...(plan.plant.invented ? [paragraph(strong('Plant and prices are invented: no figure of money on this sheet can be quoted.'))] : []),
        ]),
    rowsTable(assumed, { title: 'Assumed, and moves the price', planned: 'Planned', within: 'Range' }),
    ...legend([...facts, ...cost, ...assumed]),
    ...leftOut(plan),
  ];
}

function leftOut(plan: Plan): RootContent[] {
  const named = planRows(plan, LEFT_OUT).map(([what]) => what ?? '');
  return named.length === 0 ? [] : [paragraph(strong('Not in the cost'), `: ${named.join('; ')}.`)];
}
