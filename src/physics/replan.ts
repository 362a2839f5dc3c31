import { defineFormula } from '../kernel/formula.ts';

/**
 * What the cavity of an existing die must grow by for another shrink allowance: positive where steel is to be cut away from
 * what forms the outside, negative where steel is missing. What forms the inside of a casting is the other way round.
 */
export const sizeShift = defineFormula({
  id: 'replan.size-shift',
  title: 'Growth of a cavity dimension for another allowance',
  symbol: 'd_c',
  inputs: {
    dimension: { symbol: 'X', unit: 'mm', meaning: 'dimension of the casting at room temperature', range: [0.5, 3000] },
    before: { symbol: 's_1', unit: '%', meaning: 'linear shrink allowance that the die was cut with', range: [0, 1.5], domain: 'not-negative' },
    after: { symbol: 's_2', unit: '%', meaning: 'linear shrink allowance that is needed', range: [0, 1.5], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'X * (s_2 - s_1) / 100',
  requires: [
    {
      text: 'allowances that are the same, or differ by 0.002 % or more: nobody knows them closer',
      holds: ({ before, after }) => before === after || Math.abs(after - before) >= 0.002,
    },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the difference of the two allowances, each known to a tenth of a per cent at best',
  compute: ({ dimension, before, after }) => (dimension * (after - before)) / 100,
});

/** How much of a tolerance the shift of a size eats, when the die stays as it is. */
export const shiftShare = defineFormula({
  id: 'replan.shift-share',
  title: 'Shift of a size, share of its tolerance',
  symbol: 'k_d',
  inputs: {
    shift: { symbol: 'd_c', unit: 'mm', meaning: 'growth of the cavity dimension, negative where it shrinks', range: [-30, 30], domain: 'any' },
    tolerance: { symbol: 't', unit: 'mm', meaning: 'tolerance to each side', range: [0.01, 10] },
  },
  unit: '%',
  equation: '100 * abs(d_c) / t',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ shift, tolerance }) => (100 * Math.abs(shift)) / tolerance,
});
