import { defineFormula } from '../../kernel/formula.ts';
import { DEPTH, DIAMETER } from './line-inputs.ts';

/** Pitch in the middle of what two rules of thumb allow together. */
export const linePitch = defineFormula({
  id: 'cooling.pitch',
  title: 'Pitch of the lines',
  symbol: 'w',
  inputs: {
    diameter: DIAMETER,
    depth: DEPTH,
    diameter_least: { symbol: 'a_1', unit: '1', meaning: 'pitch over diameter, least', range: [1.5, 3] },
    diameter_greatest: { symbol: 'a_2', unit: '1', meaning: 'pitch over diameter, greatest', range: [3, 8] },
    depth_least: { symbol: 'b_1', unit: '1', meaning: 'pitch over depth, least', range: [0.5, 1.6] },
    depth_greatest: { symbol: 'b_2', unit: '1', meaning: 'pitch over depth, greatest', range: [1.6, 4] },
  },
  unit: 'mm',
  equation: '(max(a_1 * D, b_1 * z) + min(a_2 * D, b_2 * z)) / 2',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the middle of two windows; a closer pitch evens the surface out, a wider one leaves steel for pins and screws',
  compute: (x) =>
    (Math.max(x.diameter_least * x.diameter, x.depth_least * x.depth) + Math.min(x.diameter_greatest * x.diameter, x.depth_greatest * x.depth)) / 2,
});

/** The closest pitch that two rules of thumb allow together. */
export const closestPitch = defineFormula({
  id: 'cooling.closest-pitch',
  title: 'Closest pitch of the lines',
  symbol: 'w',
  inputs: {
    diameter: DIAMETER,
    depth: DEPTH,
    diameter_least: { symbol: 'a_1', unit: '1', meaning: 'pitch over diameter, least', range: [1.5, 3] },
    depth_least: { symbol: 'b_1', unit: '1', meaning: 'pitch over depth, least', range: [0.5, 1.6] },
  },
  unit: 'mm',
  equation: 'max(a_1 * D, b_1 * z)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the low end of two windows; it leaves little steel for pins and screws',
  compute: (x) => Math.max(x.diameter_least * x.diameter, x.depth_least * x.depth),
});

/** Width or height of the face that the lines serve: cavities and runner, and as much steel around them as the lines lie deep, for heat spreads. */
export const lineField = defineFormula({
  id: 'cooling.field',
  title: 'Field that the lines serve',
  symbol: 'B',
  inputs: {
    block: { symbol: 'W', unit: 'mm', meaning: 'die block along this side', range: [100, 4000] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel from the field to the edge of the block', range: [20, 400] },
    depth: DEPTH,
    rest: { symbol: 'x', unit: 'mm', meaning: 'block that carries no metal', range: [0, 400], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'W - 2 * s - x + 2 * z',
  requires: [{ text: 'a block wider than the steel around the field', holds: (x) => x.block > 2 * x.steel + x.rest }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the block is estimated, the spread of the heat is a rule of thumb; slides and pins take room from it',
  compute: ({ block, steel, rest, depth }) => block - 2 * steel - rest + 2 * depth,
});

/** Distance from line to line when the lines that the heat asks for are spread over the field. */
export const laidPitch = defineFormula({
  id: 'cooling.laid-pitch',
  title: 'Pitch of the lines as laid',
  symbol: 'w_l',
  inputs: {
    pitch: { symbol: 'w', unit: 'mm', meaning: 'pitch of a full row', range: [10, 100] },
    field: { symbol: 'A', unit: 'mm', meaning: 'width of the field across the lines', range: [10, 3000] },
    lines: { symbol: 'N', unit: '1', meaning: 'lines laid in the half', range: [1, 200] },
  },
  unit: 'mm',
  equation: 'max(w, A / N)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'evenly spread; lines are led to where the heat is, under thick spots, gate and runner',
  compute: ({ pitch, field, lines }) => Math.max(pitch, field / lines),
});

/** Lines of a pitch that fit side by side under the field in one die half. */
export const linesThatFit = defineFormula({
  id: 'cooling.lines-fit',
  title: 'Lines that fit in one die half',
  symbol: 'N',
  inputs: {
    field: { symbol: 'B', unit: 'mm', meaning: 'field across the lines', range: [5, 3000] },
    pitch: { symbol: 'w', unit: 'mm', meaning: 'pitch of the lines', range: [10, 100] },
    depth: { symbol: 'H', unit: 'mm', meaning: 'depth of the casting along the die opening', range: [0, 600], domain: 'not-negative', default: 0 },
  },
  unit: '1',
  equation: 'max(1, floor(B / w)) + 2 * floor(H / w)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'a planning rule: one row of straight lines under the field, and one more along each long side for every pitch of the depth; ejector pins, screws and cores stand in their way',
  compute: ({ field, pitch, depth }) => Math.max(1, Math.floor(field / pitch)) + 2 * Math.floor(depth / pitch),
});
