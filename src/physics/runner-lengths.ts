import { defineFormula } from '../kernel/formula.ts';

/** Way from biscuit or sprue to the cavity. */
export const approach = defineFormula({
  id: 'runner.approach',
  title: 'Way from the biscuit to the cavity',
  symbol: 'L_a',
  inputs: {
    steel: { symbol: 's', unit: 'mm', meaning: 'steel beside the cavity', range: [20, 300] },
    allowance: { symbol: 'x_f', unit: 'mm', meaning: 'width of the die kept for the biscuit', range: [20, 400] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the biscuit', range: [20, 250], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 's + max(0, x_f / 2 - D / 2)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'the layout that the die block is estimated with: biscuit in the middle of its strip, one width of steel to the cavity; drawn dies differ by a third',
  compute: (x) => x.steel + Math.max(0, x.allowance / 2 - x.diameter / 2),
});

/** Half the extent of the cavities across a row: the main runner of a field of several rows ends in its middle. */
export const halfField = defineFormula({
  id: 'runner.half-field',
  title: 'Half the extent of the rows of cavities',
  symbol: 'L_h',
  inputs: {
    side: { symbol: 'b', unit: 'mm', meaning: 'size of a cavity across the rows', range: [2, 2000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel between cavities', range: [20, 300] },
    rows: { symbol: 'n', unit: '1', meaning: 'rows of cavities', range: [1, 16] },
  },
  unit: 'mm',
  equation: '(n * b + (n - 1) * s) / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for rows of equal spacing',
  compute: (x) => (x.rows * x.side + (x.rows - 1) * x.steel) / 2,
});

/** Length of a branch from a split to the outermost of the groups it feeds. */
export const branchLength = defineFormula({
  id: 'runner.branch-length',
  title: 'Length of a branch',
  symbol: 'L_b',
  inputs: {
    side: { symbol: 'a', unit: 'mm', meaning: 'size of a cavity along the row', range: [2, 2000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel between cavities', range: [20, 300] },
    cavities: { symbol: 'c', unit: '1', meaning: 'cavities in the row that the split shares out', range: [2, 16] },
    branches: { symbol: 'n', unit: '1', meaning: 'branches of the split', range: [2, 16] },
    edge: {
      symbol: 'k',
      unit: '1',
      meaning: '1 for the last split, whose branches end at the edge of a cavity; else 0',
      range: [0, 1],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 'mm',
  equation: '(a + s) * c / n * (n - 1) / 2 - k * a / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a row of equal spacing with the split in its middle; inner branches of three are drawn as long as the outer ones',
  requires: [{ text: 'no more branches than cavities in the row', holds: (x) => x.branches <= x.cavities }],
  compute: (x) => (((x.side + x.steel) * x.cavities) / x.branches) * ((x.branches - 1) / 2) - (x.edge * x.side) / 2,
});

/** Mean way, along one direction, from a split in the middle of several groups to each of them, where every group has a run of its own. */
export const meanWay = defineFormula({
  id: 'runner.mean-way',
  title: 'Mean way to the groups that a split feeds one by one',
  symbol: 'L_m',
  inputs: {
    side: { symbol: 'a', unit: 'mm', meaning: 'size of a cavity along the row', range: [2, 2000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel between cavities', range: [20, 300] },
    cavities: { symbol: 'c', unit: '1', meaning: 'cavities in the row that the split shares out', range: [1, 16] },
    branches: { symbol: 'n', unit: '1', meaning: 'groups in the row, each with a run of its own', range: [1, 16] },
    edge: {
      symbol: 'k',
      unit: '1',
      meaning: '1 where the runs end at the edges of cavities, 0 where they end between them',
      range: [0, 1],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 'mm',
  equation: '(a + s) * c / n * (n^2 - mod(n, 2)) / (4 * n) - k * (n - mod(n, 2)) / n * a / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'exact for a row of equal spacing with the split in its middle; the ways of inner and outer groups differ, and drawn runs are bent to even them out',
  requires: [{ text: 'no more branches than cavities in the row', holds: (x) => x.branches <= x.cavities }],
  compute: (x) => {
    const odd = x.branches % 2;
    return (
      (((x.side + x.steel) * x.cavities) / x.branches) * ((x.branches ** 2 - odd) / (4 * x.branches)) - (x.edge * (x.branches - odd) * x.side) / x.branches / 2
    );
  },
});

/** How much further, along one direction, the outermost of several groups is than the nearest. */
export const waySpread = defineFormula({
  id: 'runner.way-spread',
  title: 'Difference of the ways to the nearest and the outermost group',
  symbol: 'dL',
  inputs: meanWay.inputs,
  unit: 'mm',
  equation: 'max(0, (a + s) * c / n * (n - 1 - (1 - mod(n, 2))) / 2 - k * mod(n, 2) * a / 2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a row of equal spacing with the split in its middle, before any way is bent to even them out',
  compute: (x) => {
    const odd = x.branches % 2;
    return Math.max(0, (((x.side + x.steel) * x.cavities) / x.branches) * ((x.branches - 1 - (1 - odd)) / 2) - (x.edge * odd * x.side) / 2);
  },
});

/** Time by which the metal comes later to the gate with the longer way. */
export const wayLag = defineFormula({
  id: 'runner.way-lag',
  title: 'Later arrival at the outermost gates',
  symbol: 't_l',
  inputs: {
    difference: { symbol: 'dL', unit: 'mm', meaning: 'difference of the ways', range: [0, 3000], domain: 'not-negative' },
    speed: { symbol: 'v_r', unit: 'm/s', meaning: 'speed of the metal in the runs', range: [1, 100] },
  },
  unit: 'ms',
  equation: 'dL / v_r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'at the speed of the fill; a slower approach of the plunger makes it longer',
  compute: ({ difference, speed }) => difference / speed,
});

/** Length of a run between two nodes. */
export const runLength = defineFormula({
  id: 'runner.run-length',
  title: 'Length of a run',
  symbol: 'L',
  inputs: {
    distance: { symbol: 'L_1', unit: 'mm', meaning: 'distance from node to node', range: [0, 3000], domain: 'not-negative' },
    added: { symbol: 'L_2', unit: 'mm', meaning: 'further distance to the gate', range: [0, 2000], domain: 'not-negative', default: 0 },
    taken: { symbol: 'L_3', unit: 'mm', meaning: 'length that the fan takes of it', range: [0, 1000], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  // Below a micrometre there is no run: what a fan leaves of a way that it takes whole is the rounding of the computer.
  equation: 'L_1 + L_2 - L_3 < 0.001 ? 0 : L_1 + L_2 - L_3',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum',
  compute: (x) => {
    const left = x.distance + x.added - x.taken;
    return left < 0.001 ? 0 : left;
  },
});
