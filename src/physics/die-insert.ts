import { defineFormula } from '../kernel/formula.ts';

/** Steel from the cavity to the edge of its insert, where the die has room for it. */
export const edgeUsual = defineFormula({
  id: 'die.edge-usual',
  title: 'Cavity to insert edge, usual',
  symbol: 'e_u',
  inputs: {
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of one cavity', range: [1, 5000] },
    small: { symbol: 'e_0', unit: 'mm', meaning: 'cavity to insert edge, small dies', range: [20, 100] },
    common: { symbol: 'e_1', unit: 'mm', meaning: 'cavity to insert edge, common', range: [30, 150] },
  },
  unit: 'mm',
  equation: 'e_0 + (e_1 - e_0) * min(1, A / 100)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'two rules of thumb joined by a straight line up to 100 cm2, as for the steel around the cavity; no rule of a standard was found',
  compute: ({ area, small, common }) => small + (common - small) * Math.min(1, area / 100),
});

/** Steel from the cavity to the edge of the insert; the rest is the holder around it. */
export const insertEdge = defineFormula({
  id: 'die.insert-edge',
  title: 'Cavity to insert edge',
  symbol: 'e_i',
  inputs: {
    steel: { symbol: 't', unit: 'mm', meaning: 'steel beside the cavities, the narrower side', range: [20, 500] },
    edge: { symbol: 'e_u', unit: 'mm', meaning: 'cavity to insert edge, usual', range: [20, 150] },
    frame: { symbol: 'f', unit: 'mm', meaning: 'holder around the insert, least', range: [15, 250] },
  },
  unit: 'mm',
  equation: 'min(e_u, t * e_u / (e_u + f))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule of ours: where the tie bars leave too little, insert and holder give way in proportion',
  compute: (x) => Math.min(x.edge, (x.steel * x.edge) / (x.edge + x.frame)),
});

/** Size of the insert across. */
export const insertSize = defineFormula({
  id: 'die.insert-size',
  title: 'Size of the insert',
  symbol: 'W_i',
  inputs: {
    field: { symbol: 'F', unit: 'mm', meaning: 'extent of the cavities', range: [2, 3000] },
    edge: { symbol: 'e_i', unit: 'mm', meaning: 'cavity to insert edge', range: [10, 200] },
  },
  unit: 'mm',
  equation: 'F + 2 * e_i',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum',
  compute: (x) => x.field + 2 * x.edge,
});

/** One of the inserts that share the field of cavities. */
export const insertEach = defineFormula({
  id: 'die.insert-each',
  title: 'Size of one insert',
  symbol: 'W_1',
  inputs: {
    whole: { symbol: 'W_i', unit: 'mm', meaning: 'size of the inserts together', range: [20, 3000] },
    number: { symbol: 'n', unit: '1', meaning: 'inserts in the row', range: [1, 16] },
  },
  unit: 'mm',
  equation: 'W_i / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for inserts of one size that touch each other',
  compute: ({ whole, number }) => whole / number,
});

/** Steel between the bottom of the cavity and the back of the insert. */
export const steelBelow = defineFormula({
  id: 'die.steel-below',
  title: 'Steel below the cavity',
  symbol: 'b',
  inputs: {
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the cavity', range: [1, 600] },
    ratio: { symbol: 'k', unit: '1', meaning: 'steel below the cavity over its depth', range: [0.5, 4] },
    least: { symbol: 'b_0', unit: 'mm', meaning: 'steel below the cavity to aim at, of any depth', range: [10, 150] },
    line_depth: { symbol: 'z', unit: 'mm', meaning: 'cooling line, surface to centre', range: [0, 100], domain: 'not-negative', default: 0 },
    line_diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter of the cooling line', range: [0, 40], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'max(b_0, k * h, z + d)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'rules of thumb; the last term leaves half a diameter of steel behind the line',
  compute: (x) => Math.max(x.least, x.ratio * x.depth, x.line_depth + x.line_diameter),
});
