import { type Case, INCH } from '../case.ts';

const LINEAR = 'vendor page that quotes the NADCA linear tolerances for aluminium (AL-PART-TOLERANCES)';
const PIN = 'derived, worked by hand: right triangle of pin, opening travel and slide stroke';
const RIB = 'Chinese die-casting design manual, table 2-22, rounded coefficients (CN-MANUAL)';
const EXPANSION = 'derived, worked by hand with the expansions per degree Fahrenheit of the NADCA FAQ, alloy properties (NADCA-FAQ), and 12e-6 for steel';

export const cases: readonly Case[] = [
  {
    formula: 'hole.core-mouth',
    inputs: { diameter: 44, stock: 0.5 },
    expected: 43,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: half a millimetre a side',
  },
  {
    formula: 'hole.stock-foot',
    inputs: { stock: 0.5, taper: 1.4 },
    expected: 1.2,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 0.5 mm and half of 1.4 mm',
  },
  {
    formula: 'tolerance.linear',
    inputs: { dimension: 127, base: 0.25, step: 0.025 },
    expected: 0.35,
    tolerance: { absolute: 1e-9 },
    from: `${LINEAR}, standard, metric`,
  },
  {
    formula: 'tolerance.linear',
    inputs: { dimension: 5 * INCH, base: 0.01 * INCH, step: 0.001 * INCH },
    expected: 0.014 * INCH,
    tolerance: { absolute: 1e-9 },
    from: `${LINEAR}, standard, inch`,
  },
  {
    formula: 'tolerance.linear',
    inputs: { dimension: 5 * INCH, base: 0.002 * INCH, step: 0.001 * INCH },
    expected: 0.006 * INCH,
    tolerance: { absolute: 1e-9 },
    from: `${LINEAR}, precision`,
  },
  // The British table counts steps of 25 mm; the step is stretched to 25.4 mm.
  {
    formula: 'tolerance.linear',
    inputs: { dimension: 100, base: 0.08, step: (0.03 * INCH) / 25 },
    expected: 0.17,
    tolerance: { absolute: 0.005 },
    from: 'British casters’ table, critical zinc dimension of 100 mm: 0.08 + 3 x 0.03 (TSW-TOLERANCES)',
  },
  {
    formula: 'tolerance.linear',
    inputs: { dimension: 20, base: 0.25, step: 0.025 },
    expected: 0.25,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: no step below one inch',
  },

  {
    formula: 'shrink.cavity-dimension',
    inputs: { dimension: 100, allowance: 0.6 },
    expected: 100.6,
    tolerance: { absolute: 0.005 },
    from: "die caster's FAQ, 0.006 in an inch (EMPIRE-FAQ, vendor)",
  },
  {
    formula: 'shrink.cavity-dimension',
    inputs: { dimension: 99.45, allowance: 0.55 },
    expected: 100,
    tolerance: { absolute: 0.01 },
    from: 'vendor page on A380 shrinkage: mould 100 mm, part 99.45 mm (YIGU-SHRINKAGE)',
  },
  {
    formula: 'shrink.from-contraction',
    inputs: { alloy_expansion: 12.1 * 1.8, steel_expansion: 12, eject_temperature: 300, die_temperature: 200 },
    expected: 0.39,
    tolerance: { absolute: 0.005 },
    from: EXPANSION,
  },
  {
    formula: 'shrink.from-contraction',
    inputs: { alloy_expansion: 12.1 * 1.8, steel_expansion: 12, eject_temperature: 400, die_temperature: 220 },
    expected: 0.59,
    tolerance: { absolute: 0.005 },
    from: EXPANSION,
  },
  {
    formula: 'shrink.from-contraction',
    inputs: { alloy_expansion: 15 * 1.8, steel_expansion: 12, eject_temperature: 350, die_temperature: 220 },
    expected: 0.65,
    tolerance: { absolute: 0.005 },
    from: EXPANSION,
  },
  {
    formula: 'shrink.from-contraction',
    inputs: { alloy_expansion: 15.2 * 1.8, steel_expansion: 12, eject_temperature: 200, die_temperature: 160 },
    expected: 0.32,
    tolerance: { absolute: 0.005 },
    from: EXPANSION,
  },

  {
    formula: 'slide.stroke',
    inputs: { depth: 15, boss: 0, clearance: 5 },
    expected: 20,
    tolerance: { absolute: 1e-9 },
    from: 'toolmaker’s page on slides: undercut 15, margin 5 to 10, stroke 20 to 25 mm (CASTING-PARTS-CORE, vendor)',
  },
  {
    formula: 'slide.stroke',
    inputs: { depth: 15, boss: 0, clearance: 10 },
    expected: 25,
    tolerance: { absolute: 1e-9 },
    from: 'toolmaker’s page on slides: undercut 15, margin 5 to 10, stroke 20 to 25 mm (CASTING-PARTS-CORE, vendor)',
  },
  {
    formula: 'slide.stroke',
    inputs: { depth: 9, boss: 4, clearance: 8 },
    expected: 21,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 9 + 4 + 8',
  },
  ...(
    [
      [18, 92.3],
      [20, 82.4],
      [22, 74.3],
      [25, 64.3],
    ] as const
  ).map(([angle, expected]) => ({ formula: 'slide.pin-engagement', inputs: { stroke: 30, angle }, expected, tolerance: { absolute: 0.05 }, from: PIN })),
  ...(
    [
      [18, 97.1],
      [20, 87.7],
      [22, 80.1],
      [25, 71.0],
    ] as const
  ).map(([angle, expected]) => ({ formula: 'slide.pin-length', inputs: { stroke: 30, angle }, expected, tolerance: { absolute: 0.05 }, from: PIN })),

  // Tolerances: half a unit of the last digit of both coefficients, times width and height.
  ...(
    [
      [4, 15, 3, 0.527 * 4 - 0.055 * 15],
      [4, 25, 2.5, 0.522 * 4 - 0.046 * 25],
      [5, 35, 2, 0.518 * 5 - 0.036 * 35],
      [6, 50, 1.5, 0.513 * 6 - 0.027 * 50],
    ] as const
  ).map(([root_width, height, draft, expected]) => ({
    formula: 'rib.tip-radius',
    inputs: { root_width, height, draft },
    expected,
    tolerance: { absolute: 0.0005 * (root_width + height) },
    from: RIB,
  })),
  {
    formula: 'rib.tip-radius',
    inputs: { root_width: 4, height: 15, draft: 3 },
    expected: 1.279,
    tolerance: { absolute: 0.0005 },
    from: 'derived, worked by hand: (2 x 0.99863 - 15 x 0.05234) / (1 - 0.05234)',
  },
  {
    formula: 'rib.tip-radius',
    inputs: { root_width: 4, height: 15, draft: 0 },
    expected: 2,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: a rib without draft ends in a full round of half its width',
  },

  {
    formula: 'fillet.least-radius',
    inputs: { wall_a: 3, wall_b: 5 },
    expected: 4,
    tolerance: { absolute: 1e-12 },
    from: 'Chinese course text on die-casting part design, chapter 9 (CN-COURSE-PARTS)',
  },
  {
    formula: 'thread.cored-depth',
    inputs: { thread_length: 12, pitch: 1 },
    expected: 15,
    tolerance: { absolute: 1e-12 },
    from: 'caster’s rule of three pitches under an M6 x 1 thread (INDIANALUCAST-KB, vendor)',
  },
  {
    formula: 'thread.end-diameter',
    inputs: { diameter: 6.8, taper: 1.18, thread_length: 16, depth: 22 },
    expected: 5.942,
    tolerance: { absolute: 0.001 },
    from: 'derived, worked by hand: 16 of 22 mm of an even taper, 6.8 - 0.858',
  },
  {
    formula: 'thread.end-diameter',
    inputs: { diameter: 5, taper: 0.8, thread_length: 12, depth: 10 },
    expected: 4.2,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: the thread is longer than the hole, so the bottom counts',
  },
  {
    formula: 'thread.minor-diameter',
    inputs: { size: 8, pitch: 1.25 },
    expected: 6.647,
    tolerance: { absolute: 0.0005 },
    from: 'derived, worked by hand: height of the triangle 0.8660 x 1.25 = 1.0825, ten eighths of it off 8 mm; 6.647 mm is also the tabled minor diameter of M8 (memory)',
  },
];
