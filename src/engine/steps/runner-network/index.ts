import { runnerEachProjected, runnerEachVolume, runnerLayoutShare } from '../../../physics/runner.ts';
import { wayLag, waySpread } from '../../../physics/runner-lengths.ts';
import { networkRatio } from '../../../physics/runner-network.ts';
import { workSetRunner, workSetSpeeds } from '../../die-set/runner.ts';
import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, type Step, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { sumOf } from '../../sum.ts';
import type { RunnerWay } from '../die/way.ts';
import { feederOf } from '../feeder-of.ts';
import { fileGateRun, workFeed, workGates } from './feed.ts';
import { workLayout, workRuns, workSpeeds } from './layout.ts';

/**
 * The runner run by run, from biscuit or sprue to the gates: areas, sections and volumes, splits for cavities and gates, fan
 * or runner along the gate. The machine search runs it for each trial, since clamp and shot count what is laid out here.
 */
export function workRunnerLayout(ledger: Ledger): void {
  const { set } = ledger.given;
  if (set === undefined) workAlikeRunner(ledger);
  else workSetRunner(ledger, set);
  ledger.attempt('runner.volume', 'Runner volume', () => fileVolume(ledger));
}

function workAlikeRunner(ledger: Ledger): void {
  ledger.attempt('gate.each-area', 'Gates for equal fill time', () => workGates(ledger));
  ledger.attempt('runner.gate-feed', 'How the gate is fed', () => fileGateRun(ledger));
  const runs = ledger.attempt('runner.network-volume', 'Runner, run by run', () => workRuns(ledger));
  if (runs === undefined) return;
  ledger.attempt('runner.gate-feed', 'How the gate is fed', () => workFeed(ledger, runs));
  ledger.attempt('runner.network-volume', 'Runner, run by run', () => workLayout(ledger, runs));
}

/** What the layout comes to for one cavity; the usual share stands in where it cannot be laid out. */
function fileVolume(ledger: Ledger): void {
  const volume = ledger.maybe('runner.network-volume');
  const area = ledger.maybe('runner.network-area');
  if (volume === undefined || area === undefined) {
    ledger.put(ledger.value('runner.usual-share').as('runner.area-share', 'the usual share, as the runner cannot be laid out'));
    ledger.put(ledger.value('runner.share-volume').as('runner.volume', 'by the usual share, as the runner cannot be laid out'));
    return;
  }
  const cavities = ledger.value('machine.cavities');
  const each = ledger.apply(runnerEachProjected, { area, cavities }, { id: 'runner.layout-area' });
  ledger.apply(runnerLayoutShare, { area: each, casting_area: ledger.value('part.projected-area') }, { id: 'runner.area-share' });
  ledger.apply(runnerEachVolume, { volume, cavities }, { id: 'runner.volume' });
}

/** Speeds in the runs, and the runner against the one that the shot is counted with. */
export const runnerNetworkStep: Step = {
  id: 'runner-network',
  title: 'Runner layout',
  work: (ledger) => {
    const { set } = ledger.given;
    ledger.attempt('runner.segment-speed', 'Speed in the runner', () => (set === undefined ? workSpeeds(ledger, runsOf(ledger)) : workSetSpeeds(ledger, set)));
    ledger.attempt('runner.way-lag', 'Ways that differ', () => fileLag(ledger));
    ledger.attempt('runner.network-ratio', 'Runner laid out', () =>
      ledger.apply(networkRatio, { network: ledger.value('runner.network-volume'), planned: ledger.value('runner.total-volume') }),
    );
    ledger.attempt('runner.with-biscuit', 'Runner with its biscuit', () => fileForRule(ledger));
  },
  show,
};

/** What the textbook rule is held against: the rule counts the biscuit, so what is compared counts it too. A hot chamber has none. */
function fileForRule(ledger: Ledger): void {
  const feeder = [ledger.value('runner.total-volume'), ledger.value('sleeve.biscuit-volume')];
  const volume = ledger.put(sumOf('runner.all-with-biscuit', 'Runner and biscuit of the shot', 'cm3', feeder));
  ledger.apply(runnerEachVolume, { volume, cavities: ledger.value('machine.cavities') }, { id: 'runner.with-biscuit' });
  // A run along the gate is as long as the gate.
  const runs = runsOf(ledger).filter((run) => !run.startsWith('gate run'));
  const volumeOf = (run: string): number => ledger.value('runner.segment-volume', run).value;
  const [first = ''] = runs;
  const largest = runs.reduce((most, run) => (volumeOf(run) > volumeOf(most) ? run : most), first);
  const planned = ledger.value('runner.volume');
  ledger.setText('runner.volume-by', planned.kind === 'pinned' ? 'pinned' : largest === '' ? 'share' : 'layout');
  ledger.setText('runner.largest-run', largest === '' ? 'none' : largest);
  if (largest !== '') ledger.put(ledger.value('runner.segment-volume', largest).as('runner.largest-volume', `of the run with the most metal: ${largest}`));
}

function show(ledger: Ledger): readonly Block[] {
  if (!ledger.values.has('runner.network-volume')) return [];
  const fan = ledger.texts.get('runner.gate-feed') === 'fan';
  const column = (id: string, run: string): Cell => cell(ledger, id as Parameters<typeof cell>[1], run);
  return [
    textBlock(
      `From ${feederOf(ledger)} to the gates, laid out by the estimated die block: before the die is drawn, lengths are good to a third. The area falls at every stage and every split, so the metal only ever gets faster. Volumes are those of the whole shot.`,
    ),
    ...wayBlock(ledger),
    textBlock('The gate is fed by: ', { decision: 'runner.gate-feed' }, '.'),
    ...tableBlock(
      'Runs, from the feeder to the gate',
      ['Run', 'Number', 'Feeds', 'Area', 'At its end', 'Depth', 'Width', 'Length', 'Speed', 'Volume of all', 'Projected area of all'],
      runsOf(ledger).map((run) => [
        ledger.values.get(`runner.segment-length[${run}]`)?.value === 0 ? `${run} (split at the foot of the sprue)` : run,
        column('runner.segment-count', run),
        textCell(ledger, 'runner.segment-feeds', run),
        ...['area', 'end', 'depth', 'width', 'length', 'speed', 'volume', 'projected'].map((what) => column(`runner.segment-${what}`, run)),
      ]),
    ),
    ...(ledger.values.has('runner.way-lag')
      ? [
          textBlock(
            'The runs part at the foot of the sprue, each thin enough to freeze about as soon as the castings; their lengths are the mean of ways that differ by ',
            { value: 'runner.way-difference' },
            '. Drawn straight, the outermost cavities begin to fill ',
            { value: 'runner.way-lag' },
            ' later than the nearest: the die maker bends the near runs to even the ways out where the block allows, and the first shots show what is left to correct at the gates.',
          ),
        ]
      : []),
    ...valuesBlock(ledger, [
      'runner.step',
      'runner.branch-loss',
      'runner.main-ratio',
      'runner.main-ratio-greatest',
      'runner.network-area',
      'runner.network-volume',
      ...(ledger.texts.get('machine.chamber') === 'hot' ? [] : (['runner.approach', 'runner.half-field', 'runner.way-round'] as const)),
      ...(isAsPlanned(ledger) ? [] : (['runner.total-volume', 'runner.network-ratio'] as const)),
      ...(fan ? (['runner.fan-length', 'runner.fan-angle'] as const) : (['runner.end-share', 'runner.flow-angle'] as const)),
      'gate.each-area',
      'gate.each-width',
      'gate.area-for-volume',
    ]),
    textBlock(
      fan
        ? 'Towards the gate the fan gets as wide and as shallow as the gate; where they meet they freeze together, and the pressure passes as long as the gate is open.'
        : 'A runner along the gate falls in a straight line to a finite end, so that every part of the gate gets its share at the same speed, and ends in a small round pocket that takes the shock of the first metal.',
    ),
    textBlock(
      'Gates are of equal size until the flow segments are drawn. Then each gate takes the area for the volume of its own segment, overflows included, at the one velocity; so all segments, and all cavities of a die, are full at the same time.',
    ),
  ];
}

/** How the main runner of a cold chamber comes to several castings. */
const WAYS: Readonly<Partial<Record<RunnerWay, string>>> = {
  between: 'The main runner comes up in the gap between the castings and is shared out in their middle.',
  below:
    'A casting or a slide stands in the middle of the row: the main runner ends below it, and the runs go along under the castings, each to a gate at its lower side.',
  round: 'A casting stands between the biscuit and the middle: the main runner goes round the lower castings, on a side that no slide closes.',
};

function wayBlock(ledger: Ledger): Block[] {
  const words = WAYS[ledger.texts.get('die.runner-way') as RunnerWay];
  return words === undefined ? [] : [textBlock(words)];
}

/** Whether the shot counts the runner as it is laid out; then there is nothing to compare. */
function isAsPlanned(ledger: Ledger): boolean {
  const ratio = ledger.maybe('runner.network-ratio')?.value;
  return ratio !== undefined && Math.abs(ratio - 1) < 1e-6;
}

/** How much the ways of runs that part at a sprue differ, along the rows and along the columns together, and how much later the last gate is reached. */
function fileLag(ledger: Ledger): void {
  const ways = ledger.items('runner.way-branches');
  if (ways.length === 0) return;
  const spreads = ways.map((item) => {
    const columns = item.endsWith('columns');
    const edge = item.startsWith('cavity run') ? { edge: ledger.value('runner.at-edge') } : {};
    const steel = ledger.maybe(columns ? 'runner.steel-columns' : 'runner.steel-rows') ?? ledger.value('die.steel-around');
    const row = { side: ledger.value(columns ? 'part.side-a' : 'part.side-b'), steel };
    const shared = { cavities: ledger.value('runner.segment-group', item), branches: ledger.value('runner.way-branches', item) };
    return ledger.apply(waySpread, { ...row, ...shared, ...edge }, { item });
  });
  const difference = ledger.put(sumOf('runner.way-difference', 'Longest way from the sprue less the shortest', 'mm', spreads));
  const run = (ways[0] as string).split(',')[0] as string;
  ledger.apply(wayLag, { difference, speed: ledger.value('runner.segment-speed', run) });
}

/** Runs from the feeder down: filed from the gate up, so the other way round. */
function runsOf(ledger: Ledger): string[] {
  return [...ledger.items('runner.segment-area')].reverse();
}
