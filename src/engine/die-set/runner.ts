import { Traced } from '../../kernel/traced.ts';
import { gateEachWidth } from '../../physics/gate-share.ts';
import { runnerDepth, runnerWidth } from '../../physics/runner.ts';
import { approach } from '../../physics/runner-lengths.ts';
import { mainRatio, parentArea, runnerEachArea, stageArea, taperEnd } from '../../physics/runner-network.ts';
import { segmentEndWidth, segmentProjected, segmentSpeed, segmentVolume } from '../../physics/runner-runs.ts';
import type { CastingSet, Member } from '../case.ts';
import { totalOf } from '../combine.ts';
import type { Ledger } from '../ledger.ts';
import { assumeMiddle } from '../planned.ts';
import { fileSprue, SPRUE } from '../steps/runner-network/sprue.ts';
import { sumOf } from '../sum.ts';

const MAIN_RUN = 'main runner';
const runTo = (part: string): string => `run to ${part}`;
const gateRun = (part: string): string => `gate run of ${part}`;

/**
 * The runner of castings of several parts: a main run to the middle of the field, or a sprue there; from it a run to each casting,
 * whose area is in proportion to what it feeds, so that the metal goes at about one speed to all of them; and a run along each gate.
 */
export function workSetRunner(ledger: Ledger, set: CastingSet): void {
  ledger.attempt('runner.network-volume', 'Runner, run by run', () => {
    fileFalls(ledger);
    for (const member of set.members) fileRuns(ledger, set, member);
    fileMain(ledger, set);
    const runs = [MAIN_RUN, ...set.members.flatMap(({ id }) => [runTo(id), gateRun(id)])];
    for (const run of runs) finish(ledger, run);
    const counted = [...fileSprue(ledger, MAIN_RUN), ...runs];
    const all = (id: 'runner.segment-volume' | 'runner.segment-projected') => counted.map((run) => ledger.value(id, run));
    ledger.put(sumOf('runner.network-volume', 'Runner of the shot, run by run', 'cm3', all('runner.segment-volume') as Traced<'cm3'>[]));
    ledger.put(sumOf('runner.network-area', 'Projected area of the runner of the shot', 'cm2', all('runner.segment-projected') as Traced<'cm2'>[]));
  });
}

/** How the area falls from the feeder to the gates. */
function fileFalls(ledger: Ledger): void {
  assumeMiddle(ledger, 'runner.step', ledger.value('runner.step-least'), ledger.value('runner.step-greatest'));
  const least = ledger.look('runner/section', 'branch_loss_least', {}, 'runner.branch-loss-least');
  assumeMiddle(ledger, 'runner.branch-loss', least, ledger.look('runner/section', 'branch_loss_greatest', {}, 'runner.branch-loss-greatest'));
  const end = ledger.look('runner/layout', 'end_least', {}, 'runner.end-least');
  assumeMiddle(ledger, 'runner.end-share', end, ledger.look('runner/layout', 'end_greatest', {}, 'runner.end-greatest'));
}

/** A run to each casting of a part, which parts for the gates of the casting, and a run along each of these. */
function fileRuns(ledger: Ledger, { layout }: CastingSet, { id, count }: Member): void {
  const [run, along] = [runTo(id), gateRun(id)];
  const gates = ledger.value('set.gate-count', id);
  const area = fileGateRuns(ledger, id, count, gates);
  const filed = { id: 'runner.segment-area', item: run } as const;
  if (gates.value > 1) ledger.apply(parentArea, { branches: gates, area, loss: ledger.value('runner.branch-loss') }, filed);
  else ledger.apply(stageArea, { area, fall: ledger.value('runner.step') }, filed);
  ledger.put(count.as(`runner.segment-count[${run}]`));
  const ways = layout.castings.filter(({ member }) => member === id).map(wayTo);
  const note = 'along the rows and across them, by the layout; mean of its castings';
  const mean = ways.reduce((sum, way) => sum + way, 0) / ways.length;
  const length = ledger.put(Traced.choice(`set.run-length[${id}]`, mean, 'mm', { note, status: 'practice' }));
  ledger.put(length.as(`runner.segment-length[${run}]`));
  ledger.setText('runner.segment-feeds', gates.value > 1 ? `split into gate runs of ${id}` : along, { item: run });
}

/** The runs along the gates of all castings of a part: each has its share of the area of one casting, and the length of its gate. */
function fileGateRuns(ledger: Ledger, id: string, count: Traced<'1'>, gates: Traced<'1'>): Traced<'mm2'> {
  const along = gateRun(id);
  const [whole, width] = [ledger.value('set.runner-area', id), ledger.value('set.gate-width', id)];
  ledger.setText('runner.segment-feeds', `gate of ${id}`, { item: along });
  if (gates.value === 1) {
    ledger.put(count.as(`runner.segment-count[${along}]`));
    ledger.put(width.as(`runner.segment-length[${along}]`, 'as long as the gate; a fan takes about as much metal'));
    return ledger.put(whole.as(`runner.segment-area[${along}]`, 'that of the runner at the gate of one casting'));
  }
  ledger.put(totalOf(`runner.segment-count[${along}]`, 'Gates of all its castings', [{ value: gates, count }]));
  ledger.apply(gateEachWidth, { width, gates }, { id: 'runner.segment-length', item: along, note: 'as long as one gate; a fan takes about as much metal' });
  return ledger.apply(runnerEachArea, { area: whole, gates }, { id: 'runner.segment-area', item: along });
}

/** From the middle of the field to the edge of a casting, along the rows and across them. */
function wayTo({ x, y, width, height }: CastingSet['layout']['castings'][number]): number {
  return Math.max(0, Math.abs(x) - width / 2) + Math.max(0, Math.abs(y) - height / 2);
}

function fileMain(ledger: Ledger, set: CastingSet): void {
  const runs = set.members.map(({ id, count }) => ({ value: ledger.value('runner.segment-area', runTo(id)), count }));
  const branches = ledger.put(totalOf('set.branches', 'Runs to all castings', runs));
  const note = 'all runs to the castings, and what is lost at the splits';
  const main = ledger.apply(stageArea, { area: branches, fall: ledger.value('runner.branch-loss') }, { id: 'runner.segment-area', item: MAIN_RUN, note });
  ledger.put(Traced.choice(`runner.segment-count[${MAIN_RUN}]`, 1, '1', { note: 'one for the shot', status: 'derived' }));
  ledger.put(mainLength(ledger, set));
  ledger.setText('runner.segment-feeds', 'runs to the castings', { item: MAIN_RUN });
  ledger.put(main.as('runner.main-area'));
  ledger.apply(mainRatio, { main, gate_area: ledger.value('gate.area'), cavities: ledger.value('machine.cavities') });
  ledger.lookIfAny('runner/ratio', 'main_ratio_greatest', { family: ledger.alloy.family }, 'runner.main-ratio-greatest');
}

/** From biscuit to the castings of one row, or to the middle of several; a sprue in the middle of them is a foot only. */
function mainLength(ledger: Ledger, { layout }: CastingSet): Traced<'mm'> {
  const id = `runner.segment-length[${MAIN_RUN}]`;
  const steel = ledger.value('die.steel-around');
  const hot = ledger.text('machine.chamber') === 'hot';
  const way = hot
    ? ledger.put(steel.as('runner.approach', 'hot chamber: one width of steel between sprue and castings'))
    : ledger.apply(approach, { steel, allowance: ledger.value('die.feeder-strip'), diameter: ledger.value('clamp.feeder-diameter') });
  if (hot && layout.amid) return Traced.choice(id, 0, 'mm', { note: 'the sprue stands in the middle of the castings', status: 'practice' });
  return sumOf(id, 'Way of the main runner', 'mm', [way, ledger.put(halfUp(layout)), ...roundCastings(layout, steel).map((one) => ledger.put(one))]);
}

/** What the main runner is longer because it goes round the castings that stand between the feeder and the middle of the field. */
function roundCastings({ castings }: CastingSet['layout'], steel: Traced<'mm'>): Traced<'mm'>[] {
  const between = castings.filter(({ x, y, width, height }) => Math.abs(x) < width / 2 - 1e-6 && y - height / 2 < -1e-6);
  if (new Set(castings.map(({ y }) => y.toFixed(6))).size === 1 || between.length === 0) return [];
  const sides = (['left', 'right'] as const).map((side) => Math.max(...between.map(({ x, width }) => width / 2 + (side === 'left' ? -x : x))));
  const way = 2 * (Math.min(...sides) + steel.value / 2);
  const note = 'out to the steel beside the castings that stand below the middle, and back';
  return [Traced.choice('runner.way-round', way, 'mm', { note, status: 'practice', parents: [steel] })];
}

/** To the middle between the lowest and the highest row; nothing where there is one row. */
function halfUp({ castings, height }: CastingSet['layout']): Traced<'mm'> {
  const rows = new Set(castings.map(({ y }) => y.toFixed(6))).size;
  const note = rows > 1 ? 'from the lowest row to the middle' : 'one row';
  return Traced.choice('runner.half-field', rows > 1 ? height / 2 : 0, 'mm', { note, status: 'practice' });
}

function finish(ledger: Ledger, run: string): void {
  const start_area = ledger.value('runner.segment-area', run);
  const shape = {
    width_least: ledger.value('runner.width-ratio-least'),
    width_greatest: ledger.value('runner.width-ratio-greatest'),
    wall_draft: ledger.value('runner.wall-draft'),
  };
  const depth = ledger.apply(runnerDepth, { area: start_area, ...shape }, { id: 'runner.segment-depth', item: run });
  const width = ledger.apply(runnerWidth, { depth, ...shape }, { id: 'runner.segment-width', item: run });
  const end = { id: 'runner.segment-end', item: run } as const;
  const end_area = run.startsWith('gate run')
    ? ledger.apply(taperEnd, { start: start_area, end_share: ledger.value('runner.end-share') }, end)
    : ledger.put(start_area.as(`runner.segment-end[${run}]`));
  const end_width = ledger.apply(segmentEndWidth, { width, start_area, end_area }, { item: run });
  const [count, length] = [ledger.value('runner.segment-count', run), ledger.value('runner.segment-length', run)];
  ledger.apply(segmentProjected, { count, width, end_width, length }, { item: run });
  ledger.apply(segmentVolume, { count, start_area, end_area, length }, { item: run });
}

/** Speed of the metal at the start of each run: that of the flow to the castings that it feeds. */
export function workSetSpeeds(ledger: Ledger, set: CastingSet): void {
  const speed = (run: string, flow: Traced<'l/s'>): void => {
    ledger.apply(segmentSpeed, { flow, count: ledger.value('runner.segment-count', run), area: ledger.value('runner.segment-area', run) }, { item: run });
  };
  for (const run of [SPRUE, MAIN_RUN]) if (ledger.maybe('runner.segment-area', run) !== undefined) speed(run, ledger.value('shot.flow'));
  for (const { id } of set.members) for (const run of [runTo(id), gateRun(id)]) speed(run, ledger.value('set.flow', id));
}
