import { defineFormula } from '../kernel/formula.ts';

/** Linear tolerance of a dimension within one die part: a base for the first inch and a step for every further one. */
export const linearTolerance = defineFormula({
  id: 'tolerance.linear',
  title: 'Linear tolerance, plus and minus',
  symbol: 'T',
  inputs: {
    dimension: { symbol: 'X', unit: 'mm', meaning: 'nominal dimension', range: [1, 1000] },
    base: { symbol: 'T_0', unit: 'mm', meaning: 'tolerance of a dimension up to 25.4 mm', range: [0.02, 0.5] },
    step: { symbol: 'T_1', unit: 'mm', meaning: 'tolerance added for every further 25.4 mm', range: [0, 0.15], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'T_0 + T_1 * max(0, X - 25.4) / 25.4',
  outside: 'extrapolate',
  source: ['AL-PART-TOLERANCES'],
  status: 'source',
  accuracy: 'exact form of the published rule; its inch and metric constants differ by 2 %; parting line and moving die parts add to it',
  compute: ({ dimension, base, step }) => base + (step * Math.max(0, dimension - 25.4)) / 25.4,
});
