import { defineFormula } from '../kernel/formula.ts';

/** Greatest wall over least wall of a part. */
export const wallRatio = defineFormula({
  id: 'wall.ratio',
  title: 'Ratio of greatest to least wall',
  symbol: 'r',
  inputs: {
    greatest: { symbol: 't_2', unit: 'mm', meaning: 'greatest wall', range: [0.5, 30] },
    least: { symbol: 't_1', unit: 'mm', meaning: 'least wall', range: [0.3, 13] },
  },
  unit: '1',
  equation: 't_2 / t_1',
  requires: [{ text: 'least <= greatest', holds: ({ greatest, least }) => least <= greatest }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the rules that judge it mean walls that meet',
  compute: ({ greatest, least }) => greatest / least,
});

/** Area of one side of the largest wall of a part, at most: the part seen along the die opening, or half of its surface. */
export const sideArea = defineFormula({
  id: 'wall.side-area',
  title: 'Area of one side of the largest wall, at most',
  symbol: 'A_1',
  inputs: {
    projected: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the part along the die opening', range: [0.5, 20000] },
    surface: { symbol: 'A_s', unit: 'cm2', meaning: 'whole surface of the part, both sides of its walls', range: [1, 100000] },
  },
  unit: 'cm2',
  equation: 'min(A_p, A_s / 2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'an upper bound: a part of several faces has smaller single walls, so the least wall found is on the safe side',
  compute: ({ projected, surface }) => Math.min(projected, surface / 2),
});
