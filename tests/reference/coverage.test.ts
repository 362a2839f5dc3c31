import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { formulaById } from '../../src/physics/index.ts';
import { changedFigures } from '../mutation/meets.ts';
import { calc } from '../properties/calc.ts';
import type { Case } from './case.ts';
import { countByOrigin, coverageText, TYPED_PUBLISHED } from './coverage.ts';
import { ERRATA } from './errata.ts';
import { allCases, originOf, PRINTED } from './origin.ts';

let all: readonly Case[];
beforeAll(async () => {
  all = await allCases();
});

describe('the coverage of the references', () => {
  it('is what COVERAGE.md says', () => {
    expect(readFileSync(new URL('./COVERAGE.md', import.meta.url), 'utf8'), 'run npm run docs').toBe(coverageText(all));
  });
  it('has 65 cases of formulas from outside at least', () => {
    const { printed, library } = countByOrigin(all);
    expect(printed + library).toBeGreaterThanOrEqual(65);
  });
  it('misses no published figure of tables and alloys', () => {
    expect(TYPED_PUBLISHED).toBeGreaterThanOrEqual(680);
    expect(
      changedFigures()
        .filter(({ meets }) => meets === 'missed')
        .map(({ name }) => name),
    ).toEqual([]);
  });
  it('calls nothing printed that is remembered', () => {
    expect(all.filter((one) => originOf(one) === 'printed' && /memory|remember|by hand/.test(one.from))).toEqual([]);
  });
  it.each(PRINTED.map((pattern) => [pattern.source, pattern] as const))('%s names cases that there are', (_, pattern) => {
    expect(all.filter((one) => pattern.test(one.from)).length).toBeGreaterThan(0);
  });
});

describe('printed figures that the program does not come to', () => {
  const works = parse(readFileSync(new URL('../../rules/sources.yaml', import.meta.url), 'utf8')) as Record<string, { errata?: string[] }>;
  it.each(ERRATA)('$work: $prints', ({ work, printed, formula, inputs, ours }) => {
    expect(works[work]?.errata, `the errata of ${work}`).toBeDefined();
    expect(formulaById(formula)?.id).toBe(formula);
    expect(Math.abs(calc(formula, inputs) / ours - 1)).toBeLessThan(2e-3);
    expect(Math.abs(ours / printed - 1)).toBeGreaterThan(0.05);
  });
});
