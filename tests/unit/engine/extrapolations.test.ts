import { expect, test } from 'vitest';
import { gatherExtrapolations } from '../../../src/engine/extrapolations.ts';
import type { Diagnostic } from '../../../src/kernel/diagnostic.ts';

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
