import { describe, expect, test } from 'vitest';
import { stalePlan, staleText } from '../../../../src/engine/check/stale.ts';
import type { Difference } from '../../../../src/engine/compare/plans.ts';

const SOURCE = { name: 'plan.json', text: 'first\nsecond' };
const said = (differences: readonly Difference[]): string | undefined => stalePlan(SOURCE, differences, 'renew')?.message;
const value = (id: string, before: number | undefined, after: number | undefined, unit = 'mm'): Difference => {
  const side = (of: number | undefined) => (of === undefined ? undefined : { value: of, unit });
  const [old, fresh] = [side(before), side(after)];
  return { kind: 'value', id, ...(old === undefined ? {} : { before: old }), ...(fresh === undefined ? {} : { after: fresh }) };
};

describe('a committed plan', () => {
  test('that differs in nothing is fresh', () => expect(stalePlan(SOURCE, [], 'renew')).toBeUndefined());

  test('that differs is an error over the whole file, with the command that renews it', () => {
    const found = stalePlan(SOURCE, [value('gate.area', 10, 12, 'mm2')], 'diewright plan a.part.yaml');
    expect(found).toMatchObject({
      code: 'check/stale-plan',
      severity: 'error',
      fix: 'look at what has changed, and renew it with: diewright plan a.part.yaml',
    });
    expect(found?.at?.position()).toEqual({ line: 1, column: 1, endLine: 2, endColumn: 7 });
    expect(found?.at?.source.name).toBe('plan.json');
  });

  test('one of each kind, counted by kind in one order, whatever the order given', () => {
    const each: readonly Difference[] = [
      { kind: 'entry', id: 'cautions' },
      { kind: 'place', id: 'a.small' },
      { kind: 'text', id: 'alloy.family', before: 'aluminium', after: 'zinc' },
      value('gate.area', 10, 12, 'mm2'),
      { kind: 'finding', id: 'wall/least', change: 'new', severity: 'error', message: 'the wall is thin' },
      { kind: 'decision', id: 'machine.kind', before: 'cold-chamber', after: 'hot-chamber' },
    ];
    expect(said(each)).toBe(
      'the plan is stale: 1 decision, 1 finding, 1 value, 1 word, 1 place in the file and 1 other entry differ; ' +
        'cautions; a.small; alloy.family was aluminium, is zinc; gate.area was 10 mm2, is 12 mm2; ' +
        'new error wall/least (the wall is thin); machine.kind was cold-chamber, is hot-chamber',
    );
  });

  test('two of a kind are in the plural, one alone "differs", two kinds are joined with "and"', () => {
    expect(said([value('a', 1, 2)])).toBe('the plan is stale: 1 value differs; a was 1 mm, is 2 mm');
    expect(said([value('a', 1, 2), value('b', 3, 4)])).toBe('the plan is stale: 2 values differ; a was 1 mm, is 2 mm; b was 3 mm, is 4 mm');
    expect(said([value('a', 1, 2), { kind: 'entry', id: 'x' }])).toMatch(/^the plan is stale: 1 value and 1 other entry differ; /);
  });

  test('with the same decisions and values says that they hold', () => {
    expect(said([{ kind: 'entry', id: 'cautions' }])).toMatch(/^the plan is stale, though its decisions and values hold: 1 other entry differs; /);
    expect(said([{ kind: 'decision', id: 'a', before: 'x', after: 'y' }])).toMatch(/^the plan is stale: /);
    expect(said([{ kind: 'entry', id: 'x' }, value('a', 1, 2)])).toMatch(/^the plan is stale: /);
  });

  test('eight differences are told, the others counted', () => {
    const many = (count: number) => Array.from({ length: count }, (_, i) => value(`v${i + 1}`, 1, 2));
    expect(said(many(8))).toMatch(/; v8 was 1 mm, is 2 mm$/);
    expect(said(many(9))).toMatch(/; v8 was 1 mm, is 2 mm; and 1 more$/);
    expect(said(many(11))).toMatch(/; and 3 more$/);
  });

  test.each([
    ['that came', value('a', undefined, 2), 'a is new, 2 mm'],
    ['that went', value('a', 2, undefined), 'a is gone, was 2 mm'],
    ['that moved by less than is printed', value('a', 1.00000001, 1.00000002), 'a was 1.00000001 mm, is 1.00000002 mm'],
    ['that moved by less than is printed, without a unit', value('a', 1.00000001, 1.00000002, '1'), 'a was 1.00000001, is 1.00000002'],
    ['of another unit', { kind: 'value', id: 'a', before: { value: 1, unit: 'mm' }, after: { value: 1, unit: 'm' } } as const, 'a was 1 mm, is 1 m'],
    ['that became a word', { kind: 'decision', id: 'a', before: { value: 1, unit: '1' }, after: 'none' } as const, 'a was 1, is none'],
    ['that stays word for word', { kind: 'text', id: 'a', before: 'x', after: 'x' } as const, 'a was x, is x'],
    ['with an escape in it', { kind: 'text', id: 'a', before: 'x', after: '\u001b[31m' } as const, expect.not.stringContaining('\u001b')],
  ])('a figure %s', (_, difference, told) => expect(said([difference])?.split('; ')[1]).toEqual(told));

  test('long messages of findings are cut', () => {
    const message = 'x'.repeat(200);
    const told = said([{ kind: 'finding', id: 'a/b', change: 'gone', severity: 'note', message }]) as string;
    expect(told).toContain('gone note a/b (xxx');
    expect(told.match(/x+/)?.[0].length).toBeLessThan(95);
  });
});

describe('a plan in Markdown', () => {
  const between = (before: string, after: string): string | undefined => staleText(SOURCE, before, after, 'renew')?.message.split('stale, ')[1];

  test('the same text is fresh', () => expect(staleText(SOURCE, 'a\nb', 'a\nb', 'renew')).toBeUndefined());

  test.each([
    ['a line changed', 'a\nb\nc', 'a\nB\nc', '1 line is no longer in a fresh one and 1 new; line 2 was "b", is "B"'],
    ['two lines changed', 'a\nb\nc', 'A\nb\nC', '2 lines are no longer in a fresh one and 2 new; line 1 was "a", is "A"'],
    ['a line put in', 'a\nc', 'a\nb\nc', '0 lines are no longer in a fresh one and 1 new; line 2 was "c", is "b"'],
    ['a line taken out', 'a\nb\nc', 'a\nc', '1 line is no longer in a fresh one and 0 new; line 2 was "b", is "c"'],
    ['the same line, once less', 'a\na\nb', 'a\nb', '1 line is no longer in a fresh one and 0 new; line 2 was "a", is "b"'],
    ['the same line, once more', 'a\nb', 'a\na\nb', '0 lines are no longer in a fresh one and 1 new; line 2 was "b", is "a"'],
    ['lines in another order', 'a\nb', 'b\na', '0 lines are no longer in a fresh one and 0 new; line 1 was "a", is "b"'],
    ['more at the end', 'a\nb', 'a\nb\nc', '0 lines are no longer in a fresh one and 1 new; line 3 was nothing, is "c"'],
    ['less at the end', 'a\nb\nc', 'a\nb', '1 line is no longer in a fresh one and 0 new; line 3 was "c", is nothing'],
  ])('%s', (_, before, after, told) => expect(between(before, after)).toBe(told));

  test('is an error of the file, with the command that renews it', () => {
    expect(staleText(SOURCE, 'a', 'b', 'diewright plan x')).toMatchObject({
      code: 'check/stale-plan',
      severity: 'error',
      fix: 'look at what has changed, and renew it with: diewright plan x',
    });
  });
});
