import { defineFormula } from '../kernel/formula.ts';

/** Width of the die block for cavities in a row. */
export const blockWidth = defineFormula({
  id: 'die.block-width',
  title: 'Die block width',
  symbol: 'W',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities in the row', range: [1, 16] },
    envelope: { symbol: 'w', unit: 'mm', meaning: 'size of the casting along the row', range: [2, 2000] },
    steel_between: { symbol: 's_b', unit: 'mm', meaning: 'steel between two cavities', range: [0, 300], domain: 'not-negative' },
    steel_to_edge: { symbol: 's_e', unit: 'mm', meaning: 'steel from the outer cavity to the edge of the block', range: [20, 400] },
    extra: { symbol: 'x', unit: 'mm', meaning: 'width added for biscuit, sprue or slides', range: [0, 800], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'n * w + (n - 1) * s_b + 2 * s_e + x',
  requires: [{ text: 'one cavity or more', holds: ({ cavities }) => cavities >= 1 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum; the steel widths are rules of thumb',
  compute: (x) => x.cavities * x.envelope + (x.cavities - 1) * x.steel_between + 2 * x.steel_to_edge + x.extra,
});

/** Opening stroke that frees a casting of a given depth and leaves room to take it out. */
export const openingStroke = defineFormula({
  id: 'die.opening-stroke',
  title: 'Opening stroke needed',
  symbol: 'S_o',
  inputs: {
    depth: { symbol: 'D', unit: 'mm', meaning: 'depth of the casting along the die opening', range: [1, 600] },
  },
  unit: 'mm',
  equation: '2 * D + 120',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered rule of a textbook, not read; a take-out robot may need more',
  compute: ({ depth }) => 2 * depth + 120,
});
