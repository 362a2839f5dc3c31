import { Traced } from '../../kernel/traced.ts';
import { runnerDepth, runnerWidth } from '../../physics/runner.ts';
import { approach } from '../../physics/runner-lengths.ts';
import { mainRatio, stageArea } from '../../physics/runner-network.ts';
import { segmentProjected, segmentSpeed, segmentVolume } from '../../physics/runner-runs.ts';
import type { Ledger } from '../ledger.ts';
import { assumeMiddle } from '../planned.ts';
import { sumOf } from '../sum.ts';
import type { CastingSet } from '../case.ts';

const MAIN_RUN = 'main runner';
const runOf = (part: string): string => `run to ${part}`;

/**
 * The runner of castings of several parts: a main run to the middle of the field, or a sprue there, and from it a run to each casting
 * whose area is in proportion to what it feeds, so that the metal goes at one speed to all of them.
 */
export function workSetRunner(ledger: Ledger, set: CastingSet): void {
  ledger.attempt('runner.network-volume', 'Runner, run by run', () => {
    assumeMiddle(ledger, 'runner.step', ledger.value('runner.step-least'), ledger.value('runner.step-greatest'));
    const least = ledger.look('runner/section', 'branch_loss_least', {}, 'runner.branch-loss-least');
    const loss = assumeMiddle(ledger, 'runner.branch-loss', least, ledger.look('runner/section', 'branch_loss_greatest', {}, 'runner.branch-loss-greatest'));
    const branches = ledger.value('set.branches');
    const main = ledger.apply(stageArea, { area: branches, fall: loss }, { id: 'runner.segment-area', item: MAIN_RUN, note: 'all runs to the castings, and what is lost at the splits' });
    ledger.put(Traced.choice(`runner.segment-count[${MAIN_RUN}]`, 1, '1', { note: 'one for the shot', status: 'derived' }));
    ledger.put(mainLength(ledger, set));
    const runs = set.members.map((member) => {
      const item = runOf(member.id);
      ledger.put(ledger.value('set.runner-area', member.id).as(`runner.segment-area[${item}]`, 'that of the runner at its gates'));
      ledger.put(member.count.as(`runner.segment-count[${item}]`));
      const ways = set.layout.castings.filter((casting) => casting.member === member.id).map(wayTo);
      const mean = ways.reduce((sum, way) => sum + way, 0) / ways.length;
      const length = ledger.put(Traced.choice(`set.run-length[${member.id}]`, mean, 'mm', { note: 'along the rows and across them, by the layout; mean of its castings', status: 'practice' }));
      ledger.put(length.as(`runner.segment-length[${item}]`));
      ledger.setText('runner.segment-feeds', `gate of ${member.id}`, { item });
      return item;
    });
    ledger.setText('runner.segment-feeds', `split into the runs to the castings`, { item: MAIN_RUN });
    for (const run of [MAIN_RUN, ...runs]) finish(ledger, run);
    ledger.put(main.as('runner.main-area'));
    ledger.apply(mainRatio, { main, gate_area: ledger.value('gate.area'), cavities: ledger.value('machine.cavities') });
    ledger.lookIfAny('runner/ratio', 'main_ratio_greatest', { family: ledger.alloy.family }, 'runner.main-ratio-greatest');
    const all = [MAIN_RUN, ...runs];
    ledger.put(sumOf('runner.network-volume', 'Runner of the shot, run by run', 'cm3', all.map((run) => ledger.value('runner.segment-volume', run))));
    ledger.put(sumOf('runner.network-area', 'Projected area of the runner of the shot, run by run', 'cm2', all.map((run) => ledger.value('runner.segment-projected', run))));
  });
}

/** From biscuit to the middle of the field; a sprue in the middle of it, or before a single casting, is a foot only. */
function mainLength(ledger: Ledger, { layout }: CastingSet): Traced<'mm'> {
  const id = `runner.segment-length[${MAIN_RUN}]`;
  const steel = ledger.value('die.steel-around');
  if (ledger.text('machine.chamber') === 'hot') {
    ledger.put(steel.as('runner.approach', 'hot chamber: one width of steel between sprue and castings'));
    if (layout.amid) return Traced.choice(id, 0, 'mm', { note: 'the sprue stands in the middle of the castings', status: 'practice' });
    return sumOf(id, 'Way of the main runner', 'mm', [steel, ledger.put(halfUp(layout))]);
  }
  const way = ledger.apply(approach, { steel, allowance: ledger.value('die.feeder-allowance'), diameter: ledger.value('clamp.feeder-diameter') });
  return sumOf(id, 'Way of the main runner', 'mm', [way, ledger.put(halfUp(layout))]);
}

/** To the middle between the lowest and the highest row; nothing where there is one row. */
function halfUp({ castings, height }: CastingSet['layout']): Traced<'mm'> {
  const rows = new Set(castings.map(({ y }) => y.toFixed(6))).size;
  return Traced.choice('runner.half-field', rows > 1 ? height / 2 : 0, 'mm', { note: rows > 1 ? 'from the lowest row to the middle' : 'one row', status: 'practice' });
}

/** From the middle of the field to the edge of a casting, along the rows and across them. */
function wayTo({ x, y, width, height }: CastingSet['layout']['castings'][number]): number {
  return Math.max(0, Math.abs(x) - width / 2) + Math.max(0, Math.abs(y) - height / 2) + 0.25 * Math.min(width, height);
}

function finish(ledger: Ledger, run: string): void {
  const area = ledger.value('runner.segment-area', run);
  const shape = {
    width_least: ledger.value('runner.width-ratio-least'),
    width_greatest: ledger.value('runner.width-ratio-greatest'),
    wall_draft: ledger.value('runner.wall-draft'),
  };
  const depth = ledger.apply(runnerDepth, { area, ...shape }, { id: 'runner.segment-depth', item: run });
  const width = ledger.apply(runnerWidth, { depth, ...shape }, { id: 'runner.segment-width', item: run });
  const end = ledger.put(area.as(`runner.segment-end[${run}]`));
  const end_width = ledger.put(width.as(`runner.segment-end-width[${run}]`));
  const [count, length] = [ledger.value('runner.segment-count', run), ledger.value('runner.segment-length', run)];
  ledger.apply(segmentProjected, { count, width, end_width, length }, { item: run });
  ledger.apply(segmentVolume, { count, start_area: area, end_area: end, length }, { item: run });
}

/** Speed of the metal at the start of each run: that of the flow to the castings that it feeds. */
export function workSetSpeeds(ledger: Ledger, set: CastingSet): void {
  const speed = (run: string, flow: Traced<'l/s'>): void => {
    ledger.apply(segmentSpeed, { flow, count: ledger.value('runner.segment-count', run), area: ledger.value('runner.segment-area', run) }, { item: run });
  };
  speed(MAIN_RUN, ledger.value('shot.flow'));
  for (const { id } of set.members) speed(runOf(id), ledger.value('set.flow', id));
}
