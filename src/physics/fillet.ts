import { defineFormula } from '../kernel/formula.ts';

/** Least inside radius where two walls meet: the mean of the two walls. */
export const leastFilletRadius = defineFormula({
  id: 'fillet.least-radius',
  title: 'Least inside fillet radius',
  symbol: 'R',
  inputs: {
    wall_a: { symbol: 'A', unit: 'mm', meaning: 'one of the walls that meet', range: [0.5, 13] },
    wall_b: { symbol: 'B', unit: 'mm', meaning: 'the other wall', range: [0.5, 13] },
  },
  unit: 'mm',
  equation: '(A + B) / 2',
  outside: 'extrapolate',
  source: ['CN-COURSE-PARTS'],
  status: 'source',
  accuracy: 'rule of thumb of a course text; a larger fillet adds mass and porosity at the root; none where the feature ends on the parting line',
  compute: ({ wall_a, wall_b }) => (wall_a + wall_b) / 2,
});
