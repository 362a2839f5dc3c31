import { describe, expect, it } from 'vitest';
import { checkNumbers, Refusal } from '../../src/kernel/apply.ts';
import type { Formula } from '../../src/kernel/formula.ts';
import { FORMULAS, formulaById } from '../../src/physics/index.ts';
import { HOLDS_AND_BREAKS, type Numbers } from './conditions.ts';

const conditions = FORMULAS.flatMap((formula) => (formula.requires ?? []).map((condition) => ({ id: formula.id, text: condition.text })));

function conditionOf(id: string, text: string): { readonly holds: (x: Numbers) => boolean } {
  const formula = formulaById(id) as Formula;
  const condition = formula.requires?.find((one) => one.text === text);
  if (condition === undefined) throw new Error(`${id} has no condition "${text}"`);
  return condition;
}

describe('conditions at their boundary', () => {
  it.each(conditions)('$id needs $text', ({ id, text }) => {
    const condition = conditionOf(id, text);
    const points = HOLDS_AND_BREAKS[text];
    if (points === undefined) throw new Error(`give "${text}" points that hold and points that do not, in conditions.ts`);
    expect(points.holds.filter((numbers) => !condition.holds(numbers))).toEqual([]);
    expect(points.breaks.filter((numbers) => condition.holds(numbers))).toEqual([]);
    expect(Math.min(points.holds.length, points.breaks.length)).toBeGreaterThan(0);
  });

  it('has no points for a condition that no formula has', () => {
    const texts = new Set(conditions.map((one) => one.text));
    expect(Object.keys(HOLDS_AND_BREAKS).filter((text) => !texts.has(text))).toEqual([]);
  });

  it('refuses numbers that break one, with the code of the formula and the condition in words', () => {
    const formula = formulaById('clamp.locking-force') as Formula;
    expect(() => checkNumbers(formula, { opening_force: 3600, slide_force: 0, factor: 0.99 })).toThrow(Refusal);
    expect(() => checkNumbers(formula, { opening_force: 3600, slide_force: 0, factor: 0.99 })).toThrow('needs a clamp factor of 1 or more');
    expect(checkNumbers(formula, { opening_force: 3600, slide_force: 0, factor: 1 }).verdict).toBe('extrapolated');
  });
});
