import { defineFormula } from '../kernel/formula.ts';

const cosine = (symbol: string, axis: string) =>
  ({ symbol, unit: '1', meaning: `direction cosine of the direction to ${axis}`, range: [-1, 1], domain: 'any' }) as const;
const side = (symbol: string, axis: string) => ({ symbol, unit: 'mm', meaning: `envelope along ${axis}`, range: [1, 3000] }) as const;

/** Size of the envelope along any direction: that of the box turned so that the direction is an axis. */
export const boxExtent = defineFormula({
  id: 'parting.extent',
  title: 'Size of the envelope along a direction',
  symbol: 'E',
  inputs: {
    envelope_x: side('e_x', 'x'),
    envelope_y: side('e_y', 'y'),
    envelope_z: side('e_z', 'z'),
    cosine_x: cosine('c_x', 'x'),
    cosine_y: cosine('c_y', 'y'),
    cosine_z: cosine('c_z', 'z'),
  },
  unit: 'mm',
  equation: 'e_x * abs(c_x) + e_y * abs(c_y) + e_z * abs(c_z)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the box, an upper bound for the part inside it',
  compute: (x) => x.envelope_x * Math.abs(x.cosine_x) + x.envelope_y * Math.abs(x.cosine_y) + x.envelope_z * Math.abs(x.cosine_z),
});

const ACROSS = {
  side_a: { symbol: 'a', unit: 'mm', meaning: 'longer envelope side across the die opening', range: [1, 3000] },
  side_b: { symbol: 'b', unit: 'mm', meaning: 'shorter envelope side across the die opening', range: [1, 3000] },
} as const;

/** Area of the envelope seen along the die opening: no part inside it can project more. */
export const boxArea = defineFormula({
  id: 'parting.box-area',
  title: 'Area of the envelope across the die opening',
  symbol: 'A_b',
  inputs: ACROSS,
  unit: 'cm2',
  equation: 'a * b / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'upper bound of the projected area; real castings fill 40 to 90 % of it',
  compute: ({ side_a, side_b }) => (side_a * side_b) / 100,
});

/** Perimeter of the envelope across the die opening, the stand-in for the length of the parting line. */
export const boxPerimeter = defineFormula({
  id: 'parting.box-perimeter',
  title: 'Perimeter of the envelope across the die opening',
  symbol: 'P_b',
  inputs: ACROSS,
  unit: 'mm',
  equation: '2 * (a + b)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a rectangular outline in one plane; a round part has 0.79 of it, a stepped parting line has more',
  compute: ({ side_a, side_b }) => 2 * (side_a + side_b),
});
