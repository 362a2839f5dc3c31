import type { Ledger } from '../ledger.ts';
import { cell, type Step, tableBlock, textBlock, textCell, valuesBlock } from '../step.ts';
import { feederOf } from '../steps/feeder-of.ts';
import type { ValueId } from '../vocabulary/index.ts';

/** Runs to castings of several parts, which differ. */
export const runnerSection: Pick<Step, 'id' | 'title' | 'show'> = {
  id: 'runner-network',
  title: 'Runner layout',
  show: (ledger) => {
    const items = ledger.items('runner.segment-length');
    const runs = ['main runner', ...items.filter((run) => run.startsWith('run to')), ...items.filter((run) => run.startsWith('gate run'))];
    if (!ledger.values.has('runner.network-volume')) return [];
    return [
      textBlock(
        `${mainWay(ledger)} A run has the area for the metal that goes through it, so that it moves at about one speed in all of them; before the die is drawn, lengths are good to a third. Fan or run along the gate, and its section, stand in the plan of each part. Volumes are those of the whole shot.`,
      ),
      ...tableBlock(
        'Runs, from the feeder to the gates',
        ['Run', 'Number', 'Feeds', 'Area', 'Depth', 'Width', 'Length', 'Speed', 'Volume of all', 'Projected area of all'],
        runs.map((run) => [
          ledger.values.get(`runner.segment-length[${run}]`)?.value === 0 ? `${run} (split at the foot of the sprue)` : run,
          cell(ledger, 'runner.segment-count', run),
          textCell(ledger, 'runner.segment-feeds', run),
          ...(['area', 'depth', 'width', 'length', 'speed', 'volume', 'projected'] as const).map((what) => cell(ledger, `runner.segment-${what}`, run)),
        ]),
      ),
      ...valuesBlock(ledger, [
        ...wayIds(ledger),
        'runner.branch-loss',
        'set.branches',
        'runner.main-area',
        'runner.main-ratio',
        'runner.main-ratio-greatest',
        'runner.network-area',
        'runner.network-volume',
      ]),
    ];
  },
};

/** What the length of the main run is made of, where it has one. */
function wayIds(ledger: Ledger): ValueId[] {
  const half = ledger.maybe('runner.half-field');
  if (half === undefined) return [];
  return half.value > 0 ? ['runner.approach', 'runner.half-field', 'runner.way-round'] : ['runner.approach'];
}

/** Where the main run ends: one row is met at its edge, several in their middle. */
function mainWay(ledger: Ledger): string {
  const feeder = feederOf(ledger);
  if (ledger.maybe('runner.half-field') === undefined) return `From the foot of the ${feeder}, amid the castings, a run to each.`;
  const to = ledger.value('runner.half-field').value > 0 ? 'to the middle of the castings' : 'to the near edge of the castings, which stand in one row';
  return `From ${feeder} ${to}, and from there a run to each.`;
}
