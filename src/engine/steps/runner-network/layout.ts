import { Traced } from '../../../kernel/traced.ts';
import { runnerDepth, runnerWidth } from '../../../physics/runner.ts';
import { approach, branchLength, halfField, meanWay, runLength } from '../../../physics/runner-lengths.ts';
import { mainRatio, parentArea, stageArea, taperEnd } from '../../../physics/runner-network.ts';
import { segmentEndWidth, segmentProjected, segmentSpeed, segmentVolume } from '../../../physics/runner-runs.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { GATE_RUN } from './feed.ts';
import { partAtOnce, type Split, splitsOf } from './splits.ts';
import { fileSprue } from './sprue.ts';

/** The run that begins at biscuit or sprue. */
const MAIN_RUN = 'main runner';
/** The run from a sprue to one of several gates of a single cavity. */
const APPROACH = 'approach';
/** Runs between the splits, after the main runner. */
const BRANCHES = ['branch', 'second branch', 'third branch', 'fourth branch', 'fifth branch'] as const;

/**
 * Lays the runner out from the gates up: each run has the area of what it feeds and a little more, each split a little
 * more than its branches together. Then lengths by the layout of the cavities, volumes and speeds.
 */
export function workLayout(ledger: Ledger): void {
  const splits = splitsOf(ledger.value('die.columns').value, ledger.value('die.rows').value);
  const nodes = nodesOf(ledger, splits);
  const names = [MAIN_RUN, ...BRANCHES].slice(0, nodes.length);
  const gates = ledger.value('gate.count');
  // One cavity with several gates at a sprue: a run to each gate from its foot, thinner than one main runner for all.
  const parts = splits.length === 0 && gates.value > 1 && ledger.text('machine.chamber') === 'hot';
  const cavityRun = parts ? APPROACH : splits.length === 0 ? MAIN_RUN : 'cavity run';
  workWays(ledger);
  ledger.put(
    Traced.choice('runner.widest-split', Math.max(1, ...splits.map((split) => split.branches)), '1', {
      note: splits.length === 0 ? 'one cavity: no split between cavities' : 'splits into two and three wherever the count allows',
      status: 'derived',
      parents: [ledger.value('die.columns'), ledger.value('die.rows')],
    }),
  );
  const one = Traced.choice(`runner.segment-branches[${cavityRun}]`, 1, '1', { note: 'each to a gate of its own', status: 'derived', parents: [gates] });
  runAbove(ledger, cavityRun, GATE_RUN, parts ? one : gates.as(`runner.segment-branches[${cavityRun}]`));
  if (parts) runAbove(ledger, MAIN_RUN, cavityRun, gates.as(`runner.segment-branches[${MAIN_RUN}]`));
  let below = cavityRun;
  for (const [level, node] of [...nodes.entries()].reverse()) {
    const name = names[level] as string;
    const branches = branchesOf(node);
    const whole = ledger.value('machine.cavities');
    runAbove(
      ledger,
      name,
      below,
      Traced.choice(`runner.segment-branches[${name}]`, branches, '1', { note: 'split between cavities', status: 'derived', parents: [whole] }),
    );
    below = name;
  }
  const runs = [...(parts ? [MAIN_RUN] : names), cavityRun, GATE_RUN].filter((name, i, all) => all.indexOf(name) === i);
  counts(ledger, runs, nodes);
  lengths(ledger, names, cavityRun, nodes);
  for (const run of runs) finish(ledger, run);
  totals(ledger, [...fileSprue(ledger, MAIN_RUN), ...runs]);
}

/** A place where the runner parts: one split, or several drawn as one at the foot of a sprue. */
type Node = readonly Split[];

const branchesOf = (node: Node): number => node.reduce((all, { branches }) => all * branches, 1);

function nodesOf(ledger: Ledger, splits: readonly Split[]): Node[] {
  if (ledger.text('machine.chamber') !== 'hot') return splits.map((split) => [split]);
  return partAtOnce(splits, ledger.look('runner/layout', 'sprue_runs', {}, 'runner.sprue-runs').value);
}

/** What every layout needs: the falls of area, and the way from the feeder to the cavity. */
function workWays(ledger: Ledger): void {
  assumeMiddle(ledger, 'runner.step', ledger.value('runner.step-least'), ledger.value('runner.step-greatest'));
  const least = ledger.look('runner/section', 'branch_loss_least', {}, 'runner.branch-loss-least');
  assumeMiddle(ledger, 'runner.branch-loss', least, ledger.look('runner/section', 'branch_loss_greatest', {}, 'runner.branch-loss-greatest'));
  const steel = ledger.value('die.steel-around');
  if (ledger.text('machine.chamber') === 'hot') ledger.put(steel.as('runner.approach', 'hot chamber: one width of steel between sprue and cavity'));
  else ledger.apply(approach, { steel, allowance: ledger.value('die.feeder-allowance'), diameter: ledger.value('clamp.feeder-diameter') });
}

/** Area and section of the run that feeds the runs named `below`, as many as `count` says. */
function runAbove(ledger: Ledger, run: string, below: string, count: Traced<'1'>): void {
  const branches = ledger.put(count);
  const area = ledger.value('runner.segment-area', below);
  const filed = { id: 'runner.segment-area', item: run } as const;
  const own =
    branches.value > 1
      ? ledger.apply(parentArea, { branches, area, loss: ledger.value('runner.branch-loss') }, filed)
      : ledger.apply(stageArea, { area, fall: ledger.value('runner.step') }, filed);
  ledger.setText('runner.segment-feeds', branches.value > 1 ? `split into ${below}${below.endsWith('ch') ? 'es' : 's'}` : below, { item: run });
  const shape = {
    width_least: ledger.value('runner.width-ratio-least'),
    width_greatest: ledger.value('runner.width-ratio-greatest'),
    wall_draft: ledger.value('runner.wall-draft'),
  };
  const depth = ledger.apply(runnerDepth, { area: own, ...shape }, { id: 'runner.segment-depth', item: run });
  ledger.apply(runnerWidth, { depth, ...shape }, { id: 'runner.segment-width', item: run });
}

/** How many of each run the shot has, from the feeder down. */
function counts(ledger: Ledger, runs: readonly string[], nodes: readonly Node[]): void {
  const cavities = ledger.value('machine.cavities');
  const gates = ledger.value('gate.count');
  let count = 1;
  for (const [level, run] of runs.entries()) {
    const all = run === GATE_RUN || run === APPROACH ? cavities.value * gates.value : count;
    ledger.put(Traced.choice(`runner.segment-count[${run}]`, all, '1', { note: 'by the splits before it', status: 'derived', parents: [cavities, gates] }));
    count *= branchesOf(nodes[level] ?? []);
  }
  ledger.setText('runner.segment-feeds', ledger.text('runner.gate-feed') === 'fan' ? 'gate, as a fan' : 'gate, along it', { item: GATE_RUN });
}

/**
 * Lengths by the layout; a fan takes its own off the last run. Several cavities are fed from their middle: a cold
 * chamber leads its main runner there, in a hot chamber the sprue stands there.
 */
function lengths(ledger: Ledger, names: readonly string[], cavityRun: string, nodes: readonly Node[]): void {
  const steel = ledger.value('die.steel-around');
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
  if (ledger.text('machine.chamber') === 'hot') put(MAIN_RUN, { distance: way, taken: way });
  else put(MAIN_RUN, { distance: way, added: ledger.apply(halfField, { side: ledger.value('part.side-b'), steel, rows: ledger.value('die.rows') }) });
  for (const [level, node] of nodes.entries()) {
    const run = names[level + 1] ?? cavityRun;
    const [distance, added] = waysOf(ledger, node, { above: names[level] as string, run, last: run === cavityRun });
    put(run, { distance, ...(added === undefined ? {} : { added }), ...(run === cavityRun ? taken : {}) });
  }
}

/** From a split to what it feeds: all as far as the outermost, or, where splits are drawn as one, the mean way along rows and along columns. */
function waysOf(
  ledger: Ledger,
  node: Node,
  { above, run, last }: { readonly above: string; readonly run: string; readonly last: boolean },
): [Traced<'mm'>, Traced<'mm'>?] {
  const steel = ledger.value('die.steel-around');
  const wholeOf = (way: Split['along']) => ledger.value(way === 'columns' ? 'die.columns' : 'die.rows');
  const sideOf = (way: Split['along']) => ledger.value(way === 'columns' ? 'part.side-a' : 'part.side-b');
  const edge = last
    ? { edge: ledger.put(Traced.choice('runner.at-edge', 1, '1', { note: 'the last run ends at the edge of its cavity', status: 'derived' })) }
    : {};
  const shared = (id: 'runner.segment-group' | 'runner.way-branches', item: string, way: Split['along'], count: number, note: string) =>
    ledger.put(Traced.choice(`${id}[${item}]`, count, '1', { note, status: 'derived', parents: [wholeOf(way)] }));
  const group = (item: string, { along, cavities }: Split) => shared('runner.segment-group', item, along, cavities, 'shared out by the split before');
  const [first, ...others] = node as readonly [Split, ...Split[]];
  if (others.length === 0) {
    const branches = ledger.value('runner.segment-branches', above);
    return [ledger.apply(branchLength, { side: sideOf(first.along), steel, cavities: group(run, first), branches, ...edge }, { item: run })];
  }
  const mean = (way: Split['along'], splits: readonly Split[]): Traced<'mm'>[] => {
    const [outer] = splits;
    if (outer === undefined) return [];
    const item = `${run}, along the ${way}`;
    const branches = shared('runner.way-branches', item, way, branchesOf(splits), 'groups that way, each with a run of its own from the sprue');
    const args = { side: sideOf(way), steel, cavities: group(item, outer), branches, ...edge };
    return [ledger.apply(meanWay, args, { id: 'runner.branch-length', item })];
  };
  return (['rows', 'columns'] as const).flatMap((way) =>
    mean(
      way,
      node.filter(({ along }) => along === way),
    ),
  ) as [Traced<'mm'>, Traced<'mm'>?];
}

/** Volume of a run; a fan ends with the area of its gate, a runner along the gate with a small part of its own. */
function finish(ledger: Ledger, run: string): void {
  const start_area = ledger.value('runner.segment-area', run);
  const end = { id: 'runner.segment-end', item: run } as const;
  const end_area =
    run !== GATE_RUN
      ? ledger.put(start_area.as(`runner.segment-end[${run}]`))
      : ledger.text('runner.gate-feed') === 'fan'
        ? ledger.put(ledger.value('gate.each-area').as(`runner.segment-end[${run}]`, 'the fan ends with the area of its gate'))
        : ledger.apply(taperEnd, { start: start_area, end_share: ledger.value('runner.end-share') }, end);
  const count = ledger.value('runner.segment-count', run);
  const length = ledger.value('runner.segment-length', run);
  const width = ledger.value('runner.segment-width', run);
  const end_width =
    run === GATE_RUN && ledger.text('runner.gate-feed') === 'fan'
      ? ledger.put(ledger.value('gate.each-width').as(`runner.segment-end-width[${run}]`, 'the fan ends as wide as its gate'))
      : ledger.apply(segmentEndWidth, { width, start_area, end_area }, { item: run });
  ledger.apply(segmentProjected, { count, width, end_width, length }, { item: run });
  ledger.apply(segmentVolume, { count, start_area, end_area, length }, { item: run });
}

/** Speed of the metal at the start of each run, once the flow of the shot is known. */
export function workSpeeds(ledger: Ledger, runs: readonly string[]): void {
  for (const run of runs) {
    const [count, area] = [ledger.value('runner.segment-count', run), ledger.value('runner.segment-area', run)];
    ledger.apply(segmentSpeed, { flow: ledger.value('shot.flow'), count, area }, { item: run });
  }
}

function totals(ledger: Ledger, runs: readonly string[]): void {
  const main = ledger.put(ledger.value('runner.segment-area', MAIN_RUN).as('runner.main-area'));
  ledger.apply(mainRatio, { main, gate_area: ledger.value('gate.area'), cavities: ledger.value('machine.cavities') });
  ledger.lookIfAny('runner/ratio', 'main_ratio_greatest', { family: ledger.alloy.family }, 'runner.main-ratio-greatest');
  const volumes = runs.map((run) => ledger.value('runner.segment-volume', run));
  ledger.put(sumOf('runner.network-volume', 'Runner of the shot, run by run', 'cm3', volumes));
  const areas = runs.map((run) => ledger.value('runner.segment-projected', run));
  ledger.put(sumOf('runner.network-area', 'Projected area of the runner of the shot, run by run', 'cm2', areas));
}
