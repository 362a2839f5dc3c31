import { describe, expect, it } from 'vitest';
import { EACH } from './alloys.ts';
import { ALLOY_FIGURES, agrees, COPIED, PAIRS } from './alloys-copy/index.ts';

describe('stored figures equal the published tables, typed a second time', () => {
  it.each(EACH.map(([id]) => id))('%s', (id) => {
    const off = PAIRS.filter((pair) => pair.alloy === id && !agrees(pair));
    expect(off.map(({ kind, name, stored, typed }) => ({ kind, name, stored, typed }))).toEqual([]);
  });
  it('covers every alloy, and no other', () => expect([...COPIED].sort()).toEqual(EACH.map(([id]) => id).sort()));
  it('notices a change of 5 % of every figure', () => {
    const changed = ALLOY_FIGURES.filter(({ value }) => value !== 0);
    expect(changed.filter(({ value, noticed }) => ![0.95, 1.05].every((factor) => noticed(value * factor))).map(({ name }) => name)).toEqual([]);
    expect(changed.length).toBeGreaterThan(1200);
  });
  it('notices a zero that is none', () => {
    expect(ALLOY_FIGURES.filter(({ value, noticed }) => value === 0 && !noticed(0.01)).map(({ name }) => name)).toEqual([]);
  });
  it('28 alloys have ratings', () => expect(new Set(PAIRS.filter(({ kind }) => kind === 'rating').map(({ alloy }) => alloy)).size).toBe(28));
});
