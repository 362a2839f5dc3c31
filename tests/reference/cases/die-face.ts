import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';
const EXACT = { relative: 1e-9 };

/** The face of the die, its inserts and its mass. */
export const cases: readonly Case[] = [
  { formula: 'die.field', inputs: { cavities: 3, side: 24, steel: 54 }, expected: 180, tolerance: EXACT, from: `${HAND}: 72 + 108` },
  { formula: 'die.field', inputs: { cavities: 2, side: 100, steel: 60, room: 40 }, expected: 300, tolerance: EXACT, from: `${HAND}: 200 + 100` },
  {
    formula: 'die.feeder-strip',
    inputs: { allowance: 125, diameter: 55, margin: 35 },
    expected: 125,
    tolerance: EXACT,
    from: 'from memory: textbook rule of 125 mm, which a plunger of 55 mm just fills',
  },
  { formula: 'die.feeder-strip', inputs: { allowance: 125, diameter: 130, margin: 35 }, expected: 200, tolerance: EXACT, from: `${HAND}: 130 + 70` },
  { formula: 'die.size-by-steel', inputs: { field: 238, one: 120, other: 120 }, expected: 478, tolerance: EXACT, from: `${HAND}: sum` },
  { formula: 'die.slide-room', inputs: { stroke: 39, lock: 40 }, expected: 79, tolerance: EXACT, from: `${HAND}: sum` },
  {
    formula: 'die.size',
    inputs: { least: 415, usual: 478, room: 143, bars: 680, clearance: 10 },
    expected: 621,
    tolerance: EXACT,
    from: `${HAND}: there is room for all of it`,
  },
  {
    formula: 'die.size',
    inputs: { least: 264, usual: 320, room: 164, bars: 420, clearance: 10 },
    expected: 410,
    tolerance: EXACT,
    from: `${HAND}: the bars end it`,
  },
  {
    formula: 'die.size',
    inputs: { least: 415, usual: 478, bars: 400, clearance: 10 },
    expected: 415,
    tolerance: EXACT,
    from: `${HAND}: it cannot be smaller, fit or not`,
  },
  { formula: 'die.overhang', inputs: { least: 264, room: 164, size: 410 }, expected: 18, tolerance: EXACT, from: `${HAND}: 428 in 410` },
  { formula: 'die.overhang', inputs: { least: 415, room: 143, size: 621 }, expected: 0, tolerance: { absolute: 1e-12 }, from: `${HAND}: 558 in 621` },
  {
    formula: 'die.steel-side',
    inputs: { size: 410, field: 118, room: 164, overhang: 18 },
    expected: 73,
    tolerance: EXACT,
    from: `${HAND}: 146 mm left for two sides, the least steel again`,
  },
  {
    formula: 'die.steel-above',
    inputs: { size: 577, field: 142, room: 72, overhang: 0, feeder: 243 },
    expected: 120,
    tolerance: EXACT,
    from: `${HAND}: 577 - 142 - 72 - 243`,
  },
  {
    formula: 'die.edge-usual',
    inputs: { area: 50, small: 50, common: 75 },
    expected: 62.5,
    tolerance: EXACT,
    from: `${HAND}: half way from 50 mm of small dies to the common 75 mm`,
  },
  {
    formula: 'die.insert-edge',
    inputs: { steel: 120, edge: 75, frame: 45 },
    expected: 75,
    tolerance: EXACT,
    from: `${HAND}: the usual steel is there`,
  },
  {
    formula: 'die.insert-edge',
    inputs: { steel: 80, edge: 75, frame: 45 },
    expected: 50,
    tolerance: EXACT,
    from: `${HAND}: two thirds of 75 mm`,
  },
  { formula: 'die.insert-size', inputs: { field: 238, edge: 75 }, expected: 388, tolerance: EXACT, from: `${HAND}: sum` },
  { formula: 'die.insert-each', inputs: { whole: 388, number: 2 }, expected: 194, tolerance: EXACT, from: `${HAND}: half` },
  {
    formula: 'die.steel-below',
    inputs: { depth: 46, ratio: 1.5, least: 50, line_depth: 20, line_diameter: 10 },
    expected: 69,
    tolerance: EXACT,
    from: `${HAND}: 1.5 x 46`,
  },
  {
    formula: 'die.steel-below',
    inputs: { depth: 12, ratio: 1.5, least: 50 },
    expected: 50,
    tolerance: EXACT,
    from: `${HAND}: the least for flat parts`,
  },
  {
    formula: 'die.steel-below',
    inputs: { depth: 12, ratio: 1.5, least: 30, line_depth: 25, line_diameter: 11 },
    expected: 36,
    tolerance: EXACT,
    from: `${HAND}: the line asks for more`,
  },
  {
    formula: 'die.mass',
    inputs: { width: 500, breadth: 600, height: 700, density: 7.8, share: 0.9 },
    expected: 1474.2,
    tolerance: { absolute: 0.1 },
    from: `${HAND}: 210 dm3 of envelope, 189 dm3 of steel`,
  },
];
