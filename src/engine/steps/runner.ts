import { Traced } from '../../kernel/traced.ts';
import { runnerArea, runnerDepth, runnerHandbookVolume, runnerLayoutShare, runnerVolume, runnerWidth } from '../../physics/runner.ts';
import type { Ledger } from '../ledger.ts';
import type { Block } from '../plan.ts';
import { textBlock, valuesBlock } from '../step.ts';

/** Runner of one cavity: area at the gate, section, and a volume from its share of the projected area. Part of the gate section. */
export function workRunner(ledger: Ledger): void {
  const attempt = ledger.attempt.bind(ledger);
  attempt('runner.area', 'Runner section', () => {
    const family = ledger.alloy.family;
    const area = ledger.apply(runnerArea, {
      gate_area: ledger.value('gate.area'),
      ratio_least: ledger.look('runner/ratio', 'gate_ratio_least', { family }, 'runner.gate-ratio-least'),
      ratio_greatest: ledger.look('runner/ratio', 'gate_ratio_greatest', { family }, 'runner.gate-ratio-greatest'),
    });
    const width_least = ledger.look('runner/section', 'width_ratio_least', {}, 'runner.width-ratio-least');
    const width_greatest = ledger.look('runner/section', 'width_ratio_greatest', {}, 'runner.width-ratio-greatest');
    const wall_draft = ledger.look('runner/section', 'wall_draft', {}, 'runner.wall-draft');
    const depth = ledger.apply(runnerDepth, { area, width_least, width_greatest, wall_draft });
    ledger.apply(runnerWidth, { depth, width_least, width_greatest });
  });
  attempt('runner.volume', 'Runner volume', () => volume(ledger));
  attempt('runner.handbook-volume', 'Runner volume by the wall', () =>
    ledger.apply(runnerHandbookVolume, { part_volume: ledger.value('part.volume'), wall: ledger.value('part.wall-nominal') }),
  );
  attempt('runner.course', 'Course of the runner', () => {
    ledger.look('runner/section', 'thickness_ratio_least', {}, 'runner.thickness-ratio-least');
    ledger.look('runner/section', 'area_step_least', {}, 'runner.step-least');
    ledger.look('runner/section', 'area_step_greatest', {}, 'runner.step-greatest');
    ledger.look('runner/section', 'bend_ratio', {}, 'runner.bend-ratio');
    ledger.look('runner/section', 'fan_spread_greatest', {}, 'runner.fan-spread');
  });
}

/**
 * By the usual share of the casting's projected area, until a first plan has laid it out; for small castings and many
 * cavities the usual share is far too little.
 */
function volume(ledger: Ledger): void {
  const laidOut = ledger.given.first?.runner;
  const casting_area = ledger.value('part.projected-area');
  const byShare = {
    casting_area,
    area_share: ledger.look('clamp/area-share', 'runner_used', {}, laidOut === undefined ? 'runner.area-share' : 'runner.usual-share'),
    depth: ledger.value('runner.depth'),
    width_least: ledger.value('runner.width-ratio-least'),
    width_greatest: ledger.value('runner.width-ratio-greatest'),
    wall_draft: ledger.value('runner.wall-draft'),
  };
  if (laidOut === undefined) {
    ledger.apply(runnerVolume, byShare);
    return;
  }
  const usual = ledger.apply(runnerVolume, byShare, { id: 'runner.share-volume' });
  const { cavities, machine } = laidOut;
  const from = {
    note: `run by run in a first plan of ${cavities} ${cavities === 1 ? 'cavity' : 'cavities'} on ${machine}`,
    status: 'derived',
    parents: [usual],
  } as const;
  const area = ledger.put(Traced.choice('runner.layout-area', laidOut.area, 'cm2', from));
  ledger.apply(runnerLayoutShare, { area, casting_area }, { id: 'runner.area-share' });
  ledger.put(ledger.put(Traced.choice('runner.layout-volume', laidOut.volume, 'cm3', from)).as('runner.volume'));
}

export function showRunner(ledger: Ledger): Block[] {
  const values = valuesBlock(ledger, [
    'runner.area',
    'runner.depth',
    'runner.width',
    'runner.share-volume',
    'runner.area-share',
    'runner.volume',
    'runner.handbook-volume',
  ]);
  if (values.length === 0) return [];
  const origin = ledger.texts.get('machine.kind') === 'hot-chamber' ? 'sprue' : 'biscuit';
  return [
    textBlock(`Runner: a trapezoid. Its area never grows from ${origin} to gate and falls from stage to stage, so that the stream stays closed.`),
    ...values,
    ...(ledger.values.has('runner.step-least')
      ? [
          textBlock(
            'Fall of area a stage ',
            { value: 'runner.step-least' },
            ' to ',
            { value: 'runner.step-greatest' },
            '; bend radius at least ',
            { value: 'runner.bend-ratio' },
            ' times the depth; fan gate spread at most ',
            { value: 'runner.fan-spread' },
            '.',
          ),
        ]
      : []),
  ];
}
