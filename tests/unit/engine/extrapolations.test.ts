import { describe, expect, test } from 'vitest';
import { applyAcceptances } from '../../../src/engine/acceptance.ts';
import { gatherExtrapolations } from '../../../src/engine/extrapolations.ts';
import { loadRulebook } from '../../../src/index.ts';
import type { Diagnostic } from '../../../src/kernel/diagnostic.ts';
import { Place } from '../../../src/kernel/place.ts';
import type { Acceptance } from '../../../src/spec/index.ts';

const outside = (i: number): Diagnostic => ({ code: `range/topic.f${i}`, severity: 'warning', message: `f${i} lies outside`, values: [`topic.f${i}`] });
const clamped: Diagnostic = { code: 'range/table', severity: 'note', message: 'the end of the table', values: ['topic.t'] };
const refused: Diagnostic = { code: 'range/topic.g', severity: 'error', message: 'refused', values: ['topic.g'] };

test('a few are said one by one', () => {
  const findings = [refused, clamped, ...Array.from({ length: 8 }, (_, i) => outside(i))];
  expect(gatherExtrapolations(findings)).toEqual(findings);
});

test('many are said together, and none of their values is lost; errors, notes and other rules stay', () => {
  const other: Diagnostic = { code: 'wall/least', severity: 'warning', message: 'thin' };
  const gathered = gatherExtrapolations([refused, ...Array.from({ length: 30 }, (_, i) => outside(i)), clamped, other]);
  expect(gathered.map(({ code }) => code)).toEqual(['range/topic.g', 'range/table', 'wall/least', 'range/many']);
  expect(gathered.at(-1)?.severity).toBe('warning');
  expect(gathered.at(-1)?.values).toHaveLength(30);
  expect(gathered.at(-1)?.message).toContain('30 figures');
});

describe('what follows from a broken limit', () => {
  const limit: Diagnostic = { code: 'sleeve/fill-least', severity: 'warning', message: 'low', on: ['sleeve.fill', 'sleeve.fill-least'] };
  const on = (i: number, ids: string[]): Diagnostic => ({ ...outside(i), on: ids });

  test('is one note that names the figures and the cause; another extrapolation stays a warning', () => {
    const other = on(3, ['sleeve.fill', 'part.wall-least']);
    const gathered = gatherExtrapolations([limit, on(1, ['sleeve.fill']), on(2, ['sleeve.fill']), other]);
    expect(gathered.map(({ code, severity }) => [code, severity])).toEqual([
      ['sleeve/fill-least', 'warning'],
      ['range/topic.f3', 'warning'],
      ['range/follows', 'note'],
    ]);
    const [, , echo] = gathered;
    expect(echo?.values).toEqual(['topic.f1', 'topic.f2']);
    expect(echo?.gathers).toEqual(['range/topic.f1', 'range/topic.f2']);
    expect(echo?.message).toBe('2 figures lie outside the range of the formula, because sleeve.fill breaks a limit of its own: topic.f1, topic.f2');
  });

  test('needs a limit that is more than a note', () => {
    const findings = [{ ...limit, severity: 'note' } as const, on(1, ['sleeve.fill'])];
    expect(gatherExtrapolations(findings)).toEqual(findings);
  });

  test('an acceptance of what is gathered is used, and all of them accept the one finding', async () => {
    const at = new Place({ name: 'a.part.yaml', text: '' }, '', () => [0, 0]);
    const entry = (code: string): Acceptance => ({ code, reason: `known of ${code}`, at, codeAt: at });
    const gathered = gatherExtrapolations([limit, on(1, ['sleeve.fill']), on(2, ['sleeve.fill'])]);
    const known = { rulebook: await loadRulebook(), others: [] };
    const [one, both] = [[entry('range/topic.f1')], [entry('range/topic.f1'), entry('range/topic.f2')]];
    expect(applyAcceptances(one, gathered, known).map(({ code, accepted }) => [code, accepted])).toEqual([
      ['sleeve/fill-least', undefined],
      ['range/follows', undefined],
    ]);
    expect(applyAcceptances(both, gathered, known).find(({ code }) => code === 'range/follows')?.accepted?.reason).toBe(
      'known of range/topic.f1; known of range/topic.f2',
    );
  });
});
