import { defineFormula } from '../kernel/formula.ts';

/** Metal pressure that a hydraulic pressure gives in front of the plunger. */
export const metalPressure = defineFormula({
  id: 'machine.metal-pressure',
  title: 'Metal pressure from hydraulic pressure',
  symbol: 'p_m',
  inputs: {
    hydraulic_pressure: {
      symbol: 'p_h',
      unit: 'MPa',
      meaning: 'hydraulic pressure on the shot cylinder, intensified where there is an intensifier',
      range: [3, 80],
    },
    cylinder_diameter: { symbol: 'd_h', unit: 'mm', meaning: 'diameter of the shot cylinder', range: [40, 500] },
    plunger_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'MPa',
  equation: 'p_h * d_h^2 / d_p^2',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'source',
  accuracy: 'exact without friction and rod-side pressure; reaches the casting only while biscuit, runner and gate are liquid',
  compute: (x) => (x.hydraulic_pressure * x.cylinder_diameter ** 2) / x.plunger_diameter ** 2,
});

/** Rate to plan with between the least and the greatest usual in the trade. */
export const meanRate = defineFormula({
  id: 'machine.mean-rate',
  title: 'Shots an hour assumed',
  symbol: 'r',
  inputs: {
    least_rate: { symbol: 'r_1', unit: '1/h', meaning: 'least shots an hour usual in the trade', range: [1, 1000] },
    greatest_rate: { symbol: 'r_2', unit: '1/h', meaning: 'greatest shots an hour usual in the trade', range: [1, 5000] },
  },
  unit: '1/h',
  equation: 'sqrt(r_1 * r_2)',
  requires: [{ text: 'least_rate <= greatest_rate', holds: (x) => x.least_rate <= x.greatest_rate }],
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a stand-in until the cycle is worked out: the geometric mean is as many times above the least as below the greatest rate',
  compute: ({ least_rate, greatest_rate }) => Math.sqrt(least_rate * greatest_rate),
});
