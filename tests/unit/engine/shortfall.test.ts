import { expect, test } from 'vitest';
import { shortfall } from '../../../src/engine/shortfall.ts';
import { treeOf } from '../../../src/rulebook/expression.ts';

const of = (text: string, values: Record<string, number | string>) => shortfall(treeOf(text), values);

test.each([
  ['f <= 0.9 * rated', { f: 1000, rated: 1000 }, 1 / 0.9 - 1],
  ['f <= 0.9 * rated', { f: 800, rated: 1000 }, 0],
  ['level >= least', { level: 20, least: 30 }, 0.5],
  ['(w <= x && h <= y) || (w <= y && h <= x)', { w: 600, h: 500, x: 500, y: 500 }, 0.2],
  ['a <= 1.0 && b <= 2.0', { a: 1.5, b: 3 }, 0.5],
  ['a <= 1.0 || b <= 2.0', { a: 1.5, b: 2.2 }, 0.1],
  ['available >= (chamber == "hot" ? least : needed)', { available: 20, chamber: 'hot', least: 30, needed: 60 }, 0.5],
])('%s with %o is missed by %d', (text, values, expected) => {
  expect(of(text, values)).toBeCloseTo(expected, 12);
});

test('words, and bounds that are not above 0, cannot be measured', () => {
  expect(of('kind == "a"', { kind: 'b' })).toBeUndefined();
  expect(of('between < 0.5', { between: 2 })).toBeUndefined();
  expect(of('x <= y', { x: 1, y: 0 })).toBeUndefined();
  expect(of('level >= least', { level: 0, least: 30 })).toBeUndefined();
  // Of what can be measured and what cannot, the measure counts.
  expect(of('kind == "a" && x <= 1.0', { kind: 'b', x: 1.5 })).toBeCloseTo(0.5, 12);
});
