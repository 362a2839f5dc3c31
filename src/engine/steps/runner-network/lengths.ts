import { Traced } from '../../../kernel/traced.ts';
import { approach, branchLength, halfField, meanWay, runLength } from '../../../physics/runner-lengths.ts';
import { wayRound } from '../../../physics/runner-way.ts';
import { halfOf } from '../../half.ts';
import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';
import type { RunnerWay } from '../die/way.ts';
import { APPROACH, GATE_RUN, MAIN_RUN, type Node, type Runs } from './names.ts';
import { branchesOf, type Split } from './splits.ts';

/** The way from the feeder to the cavities, through the strip that the die keeps for it. */
export function fileApproach(ledger: Ledger): void {
  const steel = ledger.value('die.steel-around');
  if (ledger.text('machine.chamber') === 'hot') ledger.put(steel.as('runner.approach', 'hot chamber: one width of steel between sprue and cavity'));
  else ledger.apply(approach, { steel, allowance: ledger.value('die.feeder-strip'), diameter: ledger.value('clamp.feeder-diameter') });
}

/**
 * Lengths by the layout; a fan takes its own off the last run. Several cavities are fed from their middle: a cold chamber leads
 * its main runner there, between the castings or round them; in a hot chamber the sprue stands there. A row whose middle is
 * closed is fed from below.
 */
export function workLengths(ledger: Ledger, { parting, cavityRun, nodes }: Runs): void {
  fileApproach(ledger);
  const way = ledger.value('runner.approach');
  const feed = ledger.maybe('runner.fan-length');
  const taken = feed === undefined ? {} : { taken: feed };
  const put = (run: string, args: { distance: Traced<'mm'>; added?: Traced<'mm'>; taken?: Traced<'mm'> }) =>
    ledger.apply(runLength, args, { id: 'runner.segment-length', item: run });
  ledger.put((feed ?? ledger.value('gate.each-width')).as(`runner.segment-length[${GATE_RUN}]`, feed === undefined ? 'as long as its gate' : 'the fan'));
  if (nodes.length === 0) {
    put(cavityRun, { distance: way, ...taken });
    if (cavityRun === APPROACH) put(MAIN_RUN, { distance: way, taken: way });
    return;
  }
  const to = ledger.text('die.runner-way') as RunnerWay;
  const gaps = { columns: between(ledger, 'columns'), rows: between(ledger, 'rows') };
  if (to === 'from the sprue') put(MAIN_RUN, { distance: way, taken: way });
  else if (to === 'below') put(MAIN_RUN, { distance: way, taken: ledger.value('die.steel-around') });
  else put(MAIN_RUN, { distance: way, added: wayUp(ledger, to, gaps) });
  for (const [level, node] of nodes.entries()) {
    const run = parting[level + 1] ?? cavityRun;
    const [distance, added] = waysOf(ledger, node, { above: parting[level] as string, run, gaps, end: run === cavityRun ? endOf(ledger, to) : undefined });
    put(run, { distance, ...(added === undefined ? {} : { added }), ...(run === cavityRun ? taken : {}) });
  }
}

/** From the lower edge of the castings to the middle of the field, and round the castings that stand there. */
function wayUp(ledger: Ledger, to: RunnerWay, gaps: Gaps): Traced<'mm'> {
  const half = ledger.apply(halfField, { side: ledger.value('part.side-b'), steel: gaps.rows, rows: ledger.value('die.rows') });
  if (to !== 'round') return half;
  const round = ledger.apply(wayRound, {
    side: ledger.value('part.side-a'),
    steel: gaps.columns,
    off: ledger.value('runner.way-off'),
    turns: ledger.value('runner.way-turns'),
  });
  return ledger.put(sumOf('runner.way-up', 'Way of the main runner past the lower castings', 'mm', [half, round]));
}

/** Steel and slides between two columns and between two rows. */
type Gaps = Readonly<Record<Split['along'], Traced<'mm'>>>;

/** Steel between two columns or rows, with the slides that stand there. */
function between(ledger: Ledger, way: Split['along']): Traced<'mm'> {
  const steel = ledger.value('die.steel-around');
  const slides = ledger.value(way === 'columns' ? 'die.gap-width' : 'die.gap-height');
  return slides.value === 0 ? steel : ledger.put(sumOf(`runner.steel-${way}`, 'Steel and slides between', 'mm', [steel, slides]));
}

/** Where the last runs end: at the edge of the casting that they come to, or beside it, with so much more to go in. */
function endOf(ledger: Ledger, to: RunnerWay): 'edge' | Traced<'mm'> {
  const steel = ledger.value('die.steel-around');
  if (to === 'below') return steel.as('runner.way-in', 'from the run below the row to the castings');
  const beside = to === 'round' && ledger.value('die.columns').value === 1 && ledger.value('runner.way-turns').value === 1;
  return beside ? halfOf('runner.way-in', 'from the run beside the column to the castings', steel) : 'edge';
}

/** From a split to what it feeds: all as far as the outermost, or, where splits are drawn as one, the mean way along rows and along columns. */
function waysOf(
  ledger: Ledger,
  node: Node,
  { above, run, gaps, end }: { readonly above: string; readonly run: string; readonly gaps: Gaps; readonly end: 'edge' | Traced<'mm'> | undefined },
): [Traced<'mm'>, Traced<'mm'>?] {
  const wholeOf = (way: Split['along']) => ledger.value(way === 'columns' ? 'die.columns' : 'die.rows');
  const rowOf = (way: Split['along']) => ({ side: ledger.value(way === 'columns' ? 'part.side-a' : 'part.side-b'), steel: gaps[way] });
  const edge =
    end === 'edge'
      ? { edge: ledger.put(Traced.choice('runner.at-edge', 1, '1', { note: 'the last run ends at the edge of its cavity', status: 'derived' })) }
      : {};
  const shared = (id: 'runner.segment-group' | 'runner.way-branches', item: string, way: Split['along'], count: number, note: string) =>
    ledger.put(Traced.choice(`${id}[${item}]`, count, '1', { note, status: 'derived', parents: [wholeOf(way)] }));
  const group = (item: string, { along, cavities }: Split) => shared('runner.segment-group', item, along, cavities, 'shared out by the split before');
  const [first, ...others] = node as readonly [Split, ...Split[]];
  if (others.length === 0) {
    const branches = ledger.value('runner.segment-branches', above);
    const way = ledger.apply(branchLength, { ...rowOf(first.along), cavities: group(run, first), branches, ...edge }, { item: run });
    return end === 'edge' || end === undefined ? [way] : [way, ledger.put(end)];
  }
  const mean = (way: Split['along'], splits: readonly Split[]): Traced<'mm'>[] => {
    const [outer] = splits;
    if (outer === undefined) return [];
    const item = `${run}, along the ${way}`;
    const branches = shared('runner.way-branches', item, way, branchesOf(splits), 'groups that way, each with a run of its own from the sprue');
    const args = { ...rowOf(way), cavities: group(item, outer), branches, ...edge };
    return [ledger.apply(meanWay, args, { id: 'runner.branch-length', item })];
  };
  return (['rows', 'columns'] as const).flatMap((way) =>
    mean(
      way,
      node.filter(({ along }) => along === way),
    ),
  ) as [Traced<'mm'>, Traced<'mm'>?];
}
