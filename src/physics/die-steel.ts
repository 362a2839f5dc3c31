import { defineFormula } from '../kernel/formula.ts';

/** Steel between cavities and to the edge of the die block, growing with the cavity's area. */
export const steelAround = defineFormula({
  id: 'die.steel-around',
  title: 'Steel between cavities and to the die edge',
  symbol: 's',
  inputs: {
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of one cavity', range: [1, 5000] },
    small: { symbol: 's_0', unit: 'mm', meaning: 'steel around a very small cavity', range: [20, 80] },
    common: { symbol: 's_1', unit: 'mm', meaning: 'steel around a common cavity, before the growth with its area', range: [50, 120] },
    growth: { symbol: 'g', unit: 'mm', meaning: 'added for each 100 cm2 of cavity', range: [0, 10], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 's_0 + (s_1 - s_0) * min(1, A / 100) + g * A / 100',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy:
    'a textbook rule (75 mm plus 5 mm for each 100 cm2) from 100 cm2 on, led down to the 50 mm of small dies at no area; die makers go closer with small zinc cavities',
  compute: ({ area, small, common, growth }) => small + (common - small) * Math.min(1, area / 100) + (growth * area) / 100,
});
