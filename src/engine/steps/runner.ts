import { runnerArea, runnerDepth, runnerHandbookVolume, runnerVolume, runnerWidth } from '../../physics/runner.ts';
import type { Ledger } from '../ledger.ts';
import type { Block } from '../plan.ts';
import { textBlock, valuesBlock } from '../step.ts';

/** Runner of one cavity: area at the gate, section, and what usual shares would make its volume. Part of the gate section. */
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
  attempt('runner.share-volume', 'Runner volume by its usual share', () => shareVolume(ledger));
  attempt('runner.handbook-volume', 'Runner volume by the wall', () =>
    ledger.apply(runnerHandbookVolume, { part_volume: ledger.value('part.volume'), wall: ledger.value('part.wall-nominal') }),
  );
  attempt('runner.course', 'Course of the runner', () => {
    ledger.look('runner/section', 'thickness_ratio_least', {}, 'runner.thickness-ratio-least');
    ledger.look('runner/section', 'thickness_ratio_greatest', {}, 'runner.thickness-ratio-greatest');
    ledger.look('runner/section', 'area_step_least', {}, 'runner.step-least');
    ledger.look('runner/section', 'area_step_greatest', {}, 'runner.step-greatest');
    ledger.look('runner/section', 'bend_ratio', {}, 'runner.bend-ratio');
    ledger.look('runner/section', 'fan_spread_greatest', {}, 'runner.fan-spread');
  });
}

/** By the usual share of the casting's projected area; for small castings and many cavities that is far too little. */
function shareVolume(ledger: Ledger): void {
  ledger.apply(
    runnerVolume,
    {
      casting_area: ledger.value('part.projected-area'),
      area_share: ledger.look('clamp/area-share', 'runner_used', {}, 'runner.usual-share'),
      depth: ledger.value('runner.depth'),
      width_least: ledger.value('runner.width-ratio-least'),
      width_greatest: ledger.value('runner.width-ratio-greatest'),
      wall_draft: ledger.value('runner.wall-draft'),
    },
    { id: 'runner.share-volume' },
  );
}

export function showRunner(ledger: Ledger): Block[] {
  const values = valuesBlock(ledger, [
    'runner.area',
    'runner.depth',
    'runner.width',
    'runner.volume',
    'runner.area-share',
    'runner.share-volume',
    'runner.usual-share',
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
    ...(isDeep(ledger)
      ? [
          textBlock(
            'Where it meets the gate a published rule has the runner ',
            { value: 'runner.thickness-ratio-least' },
            ' to ',
            { value: 'runner.thickness-ratio-greatest' },
            ' times as deep as the gate is thick. The section above is that of the run before it; a fan, or the run that tapers along the gate, comes down to that and keeps the area by its width.',
          ),
        ]
      : []),
  ];
}

/** Whether the run is deeper than a published rule has it at the gate. */
function isDeep(ledger: Ledger): boolean {
  const [depth, thickness, ratio] = (['runner.depth', 'gate.thickness', 'runner.thickness-ratio-greatest'] as const).map((id) => ledger.maybe(id)?.value);
  return depth !== undefined && thickness !== undefined && ratio !== undefined && depth > ratio * thickness;
}
