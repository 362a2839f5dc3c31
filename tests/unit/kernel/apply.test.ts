import { describe, expect, it } from 'vitest';
import { applyFormula, checkNumbers, isPossible, Refusal } from '../../../src/kernel/apply.ts';
import { defineFormula, equationOf, type Formula, fillIn, otherwiseOf, substitute } from '../../../src/kernel/formula.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import type { Unit } from '../../../src/kernel/units.ts';

const made = (outside: 'refuse' | 'clamp' | 'extrapolate'): Formula =>
  defineFormula({
    id: 'made.up',
    title: 'Made-up sum',
    symbol: 'y',
    inputs: {
      length: { symbol: 'L', unit: 'mm', meaning: 'a length', range: [10, 20] },
      rest: { symbol: 'r', unit: 'mm', meaning: 'a rest', range: [0, 5], domain: 'not-negative', default: 2 },
      shift: {
        symbol: 's',
        unit: 'mm',
        meaning: 'a shift',
        range: [-5, 5],
        domain: 'any',
        otherwise: { equation: 'L / 10', compute: (x) => (x['length'] as number) / 10 },
      },
      lit: { symbol: 'q', unit: '1', meaning: 'whether it counts', range: [0, 1], domain: 'not-negative', logical: true, default: 1 },
    },
    unit: 'mm',
    where: [{ symbol: 'w', equation: 'L + r' }],
    equation: 'w + s * q',
    outside,
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: (x) => x.length + x.rest + x.shift * x.lit,
  }) as unknown as Formula;
const SOUND = { length: 15, rest: 2, shift: -1, lit: 1 };

describe('what an input can be', () => {
  const input = { symbol: 'x', unit: 'mm', meaning: 'x', range: [1, 2] } as const;
  it.each([
    [undefined, 0, false],
    [undefined, 1e-9, true],
    ['positive', -1, false],
    ['positive', 0, false],
    ['not-negative', 0, true],
    ['not-negative', -1e-9, false],
    ['any', -5, true],
    ['any', Number.NaN, false],
    ['any', Number.POSITIVE_INFINITY, false],
    ['positive', Number.POSITIVE_INFINITY, false],
  ] as const)('%s: %s is possible: %s', (domain, value, possible) => {
    expect(isPossible(domain === undefined ? input : { ...input, domain }, value)).toBe(possible);
  });
  it('is one or nothing for a yes or no', () => {
    expect([0, 1, 0.5, 2, -1].map((value) => isPossible({ ...input, logical: true }, value))).toEqual([true, true, false, false, false]);
  });
});

describe('the range of a formula', () => {
  it('takes both its ends', () => {
    for (const length of [10, 20]) expect(checkNumbers(made('refuse'), { ...SOUND, length })).toMatchObject({ verdict: 'inside', warnings: [] });
  });
  it('is refused, clamped or left behind as the formula says, above and below', () => {
    expect(() => checkNumbers(made('refuse'), { ...SOUND, length: 20.1 })).toThrow('length = 20.1 mm lies outside 10 to 20 mm');
    expect(() => checkNumbers(made('refuse'), { ...SOUND, length: 9.9 })).toThrow(Refusal);
    for (const [length, nearest] of [
      [25, 20],
      [5, 10],
    ] as const) {
      const clamped = checkNumbers(made('clamp'), { ...SOUND, length });
      expect([clamped.numbers['length'], clamped.verdict, clamped.warnings.length]).toEqual([nearest, 'clamped', 1]);
      const beyond = checkNumbers(made('extrapolate'), { ...SOUND, length });
      expect([beyond.numbers['length'], beyond.verdict, beyond.warnings.length]).toEqual([length, 'extrapolated', 1]);
    }
    expect(checkNumbers(made('extrapolate'), { ...SOUND, length: 25, rest: 9 }).warnings).toHaveLength(2);
  });
  it('does not help against what cannot be', () => {
    expect(() => checkNumbers(made('clamp'), { ...SOUND, length: -1 })).toThrow('must be above 0');
    expect(() => checkNumbers(made('clamp'), { ...SOUND, rest: -1 })).toThrow('must be a number of 0 or more');
    expect(() => checkNumbers(made('clamp'), { ...SOUND, lit: 0.5 })).toThrow('must be true or false');
  });
});

describe('what need not be given', () => {
  it('is filled in, and what is given stays', () => {
    const numbers: Record<string, number> = { length: 15 };
    fillIn(made('refuse'), numbers);
    expect(numbers).toEqual({ length: 15, rest: 2, shift: 1.5, lit: 1 });
    const given: Record<string, number> = { length: 15, rest: 0, shift: 0, lit: 0 };
    fillIn(made('refuse'), given);
    expect(given).toEqual({ length: 15, rest: 0, shift: 0, lit: 0 });
  });
  it('is told as people read it', () => {
    const { inputs } = made('refuse');
    expect(Object.values(inputs).map(otherwiseOf)).toEqual([undefined, '2 mm', 'L / 10', 'true']);
    expect(otherwiseOf({ ...(inputs['lit'] as (typeof inputs)[string]), default: 0 })).toBe('false');
  });
});

describe('a formula as text', () => {
  it('puts numbers in the place of symbols, negative ones in brackets', () => {
    expect(substitute(made('refuse'), SOUND, 16)).toEqual(['w = 15 + 2', 'y = w + (-1) * 1 = 16 mm']);
    expect(substitute({ ...made('refuse'), implicit: true }, { ...SOUND, shift: 0 }, 16)).toEqual(['w = 15 + 2', '0 = w + 0 * 1 at y = 16 mm']);
    expect(substitute({ ...made('refuse'), solution: 'time-stepped' }, SOUND, 16)).toEqual([
      'with L = 15 mm, r = 2 mm, s = (-1) mm, q = 1',
      'y = 16 mm by time steps',
    ]);
  });
  it('says how it follows', () => {
    expect(equationOf(made('refuse'))).toBe('y = w + s * q');
    expect(equationOf({ ...made('refuse'), implicit: true })).toBe('y solves 0 = w + s * q');
    expect(equationOf({ ...made('refuse'), solution: 'time-stepped' })).toBe('y by time steps of w + s * q');
  });
});

describe('a formula applied to traced values', () => {
  const traced = (id: string, value: number, unit: Unit = 'mm'): Traced => Traced.assumption(id, value, unit, { note: 'of the test', status: 'practice' });
  const apply = (args: object, formula = made('extrapolate'), options?: { readonly id?: string; readonly note?: string }) =>
    applyFormula(formula, args as Parameters<typeof applyFormula>[1], options);

  it('gives the result with its unit, its parents as they were given, and the weakest status', () => {
    const parents = { length: traced('a.length', 15), rest: traced('a.rest', 3) };
    const { result, warnings } = apply(parents);
    // 15 + 3, and a shift of a tenth of the length.
    expect([result.id, result.value, result.unit, result.status, result.range]).toEqual(['made.up', 19.5, 'mm', 'practice', 'inside']);
    expect(result.parents).toEqual([parents.length, parents.rest]);
    expect(warnings).toEqual([]);
  });
  it('takes another id and a note', () => {
    const { result } = apply({ length: traced('a.length', 15) }, made('extrapolate'), { id: 'made.other', note: 'why' });
    expect([result.id, result.note]).toEqual(['made.other', 'why']);
  });
  it('warns once for each input beyond its range, and reckons with the clamped one', () => {
    expect(apply({ length: traced('a.length', 30) }).warnings).toHaveLength(1);
    expect(apply({ length: traced('a.length', 30) }, made('clamp')).result).toMatchObject({ value: 25, range: 'clamped' });
  });
  it('refuses another unit, and a missing input that must be given', () => {
    expect(() => apply({ length: traced('a.length', 15, 'cm') })).toThrow('made.up: length must be in mm, not cm');
    expect(() => apply({ rest: traced('a.rest', 1) })).toThrow('made.up: length is missing');
  });
  it('refuses a result that is no number, and a broken condition with what it was given; the values go with it', () => {
    const length = traced('a.length', 15);
    const endless: Formula = { ...made('extrapolate'), compute: () => 1 / 0 };
    const bound: Formula = { ...made('extrapolate'), requires: [{ text: 'a rest above 2', holds: (x) => (x['rest'] as number) > 2 }] };
    const refusal = (formula: Formula): Refusal => {
      try {
        apply({ length }, formula);
      } catch (error) {
        return error as Refusal;
      }
      throw new Error('not refused');
    };
    expect(refusal(endless)).toMatchObject({ code: 'range/made.up', message: 'Made-up sum has no finite result for these inputs', values: [length] });
    expect(refusal(bound)).toMatchObject({ code: 'range/made.up', message: 'Made-up sum needs a rest above 2', values: [length] });
    // The shift follows from the length that is used: a tenth of 15.
    expect(refusal(bound).fix).toBe('mend what it was given: length = 15 mm, rest = 2 mm, shift = 1.5 mm, lit = 1');
    const told = { ...bound, requires: [{ text: 'more', holds: () => false, mend: 'take a longer one' }] };
    expect(refusal(told).fix).toBe('take a longer one: length = 15 mm, rest = 2 mm, shift = 1.5 mm, lit = 1');
  });
});
