import { defineFormula } from '../kernel/formula.ts';

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
