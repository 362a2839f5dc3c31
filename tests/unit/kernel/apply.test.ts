import { describe, expect, it } from 'vitest';
import { checkNumbers, isPossible, Refusal } from '../../../src/kernel/apply.ts';
import { defineFormula, equationOf, type Formula, fillIn, otherwiseOf, substitute } from '../../../src/kernel/formula.ts';

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
