import { describe, expect, test } from 'vitest';
import { HOUSE_WORDS } from '../../../src/engine/house-words.ts';
import { Place } from '../../../src/kernel/place.ts';
import type { Adjustment } from '../../../src/rulebook/adjust.ts';
import { layHouseRules } from '../../../src/rulebook/house.ts';
import { rulebook } from '../engine/parts.ts';
import { GOOD_LIMIT } from './bad-rules/make.ts';

const source = { name: '../diewright.yaml', text: 'a\nb\nc\n' };
const entry = (rule: string, severity: Adjustment['severity'], line = 1): Adjustment => ({
  rule,
  severity,
  reason: 'so it is here',
  at: new Place(source, 'adjusted[0].rule', () => [2 * (line - 1), 2 * line - 1]),
  file: 'diewright.yaml',
});
const lay = (adjusted: readonly Adjustment[], files: readonly { name: string; text: string }[] = []) =>
  layHouseRules(rulebook(), { adjusted, ...(files.length === 0 ? {} : { folders: [{ name: 'house', files }] }) }, HOUSE_WORDS);

describe('adjustments', () => {
  const { rulebook: made, diagnostics } = lay([entry('clamp/oversized', 'off', 2), entry('vent/room', 'error', 3)]);

  test('a limit that is off is not judged but can still be explained; a re-graded one says what it was', () => {
    expect(diagnostics).toEqual([]);
    expect(made?.limits['clamp/oversized']).toBe(undefined);
    expect(made?.switchedOff?.['clamp/oversized']?.title).toBe(rulebook().limits['clamp/oversized']?.title);
    expect(made?.limits['vent/room']).toMatchObject({ severity: 'error', regraded: { from: 'warning', by: 'diewright.yaml:3' } });
    expect(made?.changes).toMatchObject([
      { id: 'clamp/oversized', change: 'switched off', file: 'diewright.yaml', line: 2, reason: 'so it is here', severity: { from: 'note', to: 'off' } },
      { id: 'vent/room', change: 're-graded', line: 3, severity: { from: 'warning', to: 'error' } },
    ]);
    expect(rulebook().limits['clamp/oversized']).toBeDefined();
  });

  test.each([
    ['a rule that is nearly one', [entry('clamp/oversize', 'off')], 'unknown-rule', 'did you mean "clamp/oversized"'],
    ['a table', [entry('draft/constant', 'off')], 'unknown-rule', 'is a table'],
    ['a decision', [entry('cooling.medium', 'off')], 'unknown-rule', 'is a decision'],
    ['a safety caution', [entry('melt/wet-charge', 'off')], 'caution-kept', 'neither switched off nor re-graded'],
    ['a safety caution made a note', [entry('machine/hydraulic-fire', 'note')], 'caution-kept', 'neither switched off nor re-graded'],
    ['the same rule twice', [entry('vent/room', 'error'), entry('vent/room', 'off', 2)], 'adjusted-twice', 'above already'],
    ['what it is already', [entry('vent/room', 'warning')], 'no-change', 'a warning already'],
    ['a name that every object has', [entry('constructor', 'off')], 'unknown-rule', 'no limit'],
  ] as const)('%s', (_, adjusted, code, says) => {
    const { rulebook: none, diagnostics: found } = lay(adjusted);
    expect(none).toBe(undefined);
    expect(found.map((d) => d.code)).toEqual([`rules/${code}`]);
    expect(found[0]?.message).toContain(says);
    expect(found[0]?.at?.source.name).toBe('../diewright.yaml');
    expect(found[0]?.at?.position()).toMatchObject({ line: adjusted.length, column: 1 });
  });

  test('a rule of a house file has its severity there, even where that file has a fault', () => {
    const sound = { name: 'limits/wall/house.yaml', text: GOOD_LIMIT };
    const replaced = { name: 'limits/vent/room.yaml', text: `reason: ours\n${GOOD_LIMIT}` };
    const found = lay([entry('wall/house', 'off'), entry('vent/room', 'off')], [sound, replaced]).diagnostics;
    expect(found.map((d) => d.code)).toEqual(['rules/adjusted-house', 'rules/adjusted-house']);
    expect(found.map((d) => d.message).join('\n')).toContain('house/limits/vent/room.yaml');
    const broken = { name: 'limits/wall/house.yaml', text: 'title: x\n' };
    const codes = lay([entry('wall/house', 'off')], [broken]).diagnostics.map((d) => d.code);
    expect(codes).toContain('rules/adjusted-house');
    expect(codes).not.toContain('rules/unknown-rule');
  });
});
