import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkNumbers } from '../../src/kernel/apply.ts';
import { fillIn } from '../../src/kernel/formula.ts';
import { FORMULAS, formulaById } from '../../src/physics/index.ts';
import type { Case } from './case.ts';

const topics = readdirSync(new URL('./cases/', import.meta.url))
  .filter((name) => name.endsWith('.ts'))
  .map((name) => name.slice(0, -3))
  .sort();
const all: Case[] = [];
for (const topic of topics) {
  const module = (await import(`./cases/${topic}.ts`)) as { readonly cases: readonly Case[] };
  all.push(...module.cases);
}

/** What the case allows between the formula and the figure. */
function allowance({ expected, tolerance }: Case): number {
  return Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * Math.abs(expected));
}

describe.each([...new Set(all.map((one) => one.formula))].sort())('%s against figures from elsewhere', (id) => {
  const formula = formulaById(id);
  it('is in the catalogue', () => {
    expect(formula?.id).toBe(id);
  });
  it.each(all.filter((one) => one.formula === id))('$from ($expected)', (one) => {
    if (formula === undefined) throw new Error(`no formula ${id}`);
    const known = Object.keys(formula.inputs);
    expect(Object.keys(one.inputs).filter((name) => !known.includes(name))).toEqual([]);
    const numbers: Record<string, number> = { ...one.inputs };
    fillIn(formula, numbers);
    for (const name of known) numbers[name] ??= Number.NaN;
    const { numbers: checked } = checkNumbers(formula, numbers);
    expect(Math.abs(formula.compute(checked) - one.expected)).toBeLessThanOrEqual(allowance(one));
  });
});

describe('the cases', () => {
  it('cover every formula of the catalogue', () => {
    const covered = new Set(all.map((one) => one.formula));
    expect(FORMULAS.map((formula) => formula.id).filter((id) => !covered.has(id))).toEqual([]);
  });
  it('hold every formula that is solved in time steps at three points or more, as no printed equation checks it', () => {
    const stepped = FORMULAS.filter((formula) => formula.solution === 'time-stepped').map((formula) => formula.id);
    expect(stepped.filter((id) => all.filter((one) => one.formula === id).length < 3)).toEqual([]);
  });
  it('can fail: no tolerance is wider than an eighth of the figure', () => {
    const idle = all.filter((one) => !(allowance(one) > 0) || (one.expected !== 0 && allowance(one) > 0.1251 * Math.abs(one.expected)));
    expect(idle).toEqual([]);
  });
  it('name where their figure comes from', () => {
    expect(all.filter((one) => one.from.length < 12)).toEqual([]);
  });
});
