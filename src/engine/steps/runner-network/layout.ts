import { Traced } from '../../../kernel/traced.ts';
import { runnerDepth, runnerWidth } from '../../../physics/runner.ts';
import { mainRatio, parentArea, stageArea, taperEnd } from '../../../physics/runner-network.ts';
import { segmentEndWidth, segmentProjected, segmentSpeed, segmentVolume } from '../../../physics/runner-runs.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import { sumOf } from '../../sum.ts';
import { workLengths } from './lengths.ts';
import { APPROACH, GATE_RUN, MAIN_RUN, type Node, type Runs } from './names.ts';
import { branchesOf, partAtOnce, type Split, splitsOf } from './splits.ts';
import { fileSprue } from './sprue.ts';

/** Runs between the splits, after the main runner. */
const BRANCHES = ['branch', 'second branch', 'third branch', 'fourth branch', 'fifth branch'] as const;

/**
 * Areas and sections of all runs, from the gates up: each run has the area of what it feeds and a little more, each split a
 * little more than its branches together.
 */
export function workRuns(ledger: Ledger): Runs {
  const splits = splitsOf(ledger.value('die.columns').value, ledger.value('die.rows').value);
  const nodes = nodesOf(ledger, splits);
  const names = [MAIN_RUN, ...BRANCHES].slice(0, nodes.length);
  const gates = ledger.value('gate.count');
  // One cavity with several gates at a sprue: a run to each gate from its foot, thinner than one main runner for all.
  const parts = splits.length === 0 && gates.value > 1 && ledger.text('machine.chamber') === 'hot';
  const cavityRun = parts ? APPROACH : splits.length === 0 ? MAIN_RUN : 'cavity run';
  fileFalls(ledger);
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
  const all = [...(parts ? [MAIN_RUN] : names), cavityRun, GATE_RUN].filter((name, i, list) => list.indexOf(name) === i);
  return { all, parting: names, cavityRun, nodes };
}

/** Counts, lengths by the layout of the cavities, and volumes of all runs. */
export function workLayout(ledger: Ledger, runs: Runs): void {
  counts(ledger, runs.all, runs.nodes);
  workLengths(ledger, runs);
  for (const run of runs.all) finish(ledger, run);
  totals(ledger, [...fileSprue(ledger, MAIN_RUN), ...runs.all]);
}

function nodesOf(ledger: Ledger, splits: readonly Split[]): Node[] {
  if (ledger.text('machine.chamber') !== 'hot') return splits.map((split) => [split]);
  return partAtOnce(splits, ledger.look('runner/layout', 'sprue_runs', {}, 'runner.sprue-runs').value);
}

/** How the area falls from the feeder to the gates. */
function fileFalls(ledger: Ledger): void {
  assumeMiddle(ledger, 'runner.step', ledger.value('runner.step-least'), ledger.value('runner.step-greatest'));
  const least = ledger.look('runner/section', 'branch_loss_least', {}, 'runner.branch-loss-least');
  assumeMiddle(ledger, 'runner.branch-loss', least, ledger.look('runner/section', 'branch_loss_greatest', {}, 'runner.branch-loss-greatest'));
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
