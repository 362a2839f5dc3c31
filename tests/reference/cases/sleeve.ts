import type { Case } from '../case.ts';

const EXAMPLE = 'derived, worked by hand: sleeve 70 x 400 mm, cavity 500, overflows 60, runner 150 cm3, biscuit 25 mm, 50 ms';
const WORKSHEET = 'worksheet "Die Casting Calculation" (DC-WORKSHEET): d = sqrt(4 shot / (pi stroke 0.75 x 2.5)) in cm and g, so 75 % fill';
const ENERGY = 'derived, worked by hand from the energy approach that Bar-Meir describes (BAR-MEIR), sleeve of 100 mm';
const MOMENTUM = 'derived, worked by hand from the momentum approach that Bar-Meir describes (BAR-MEIR)';
const LINEAR = 'from memory: linear rule of the trade 22.8 (100 - F)/100 sqrt(d), in/s and in';

/** The tables take g = 9.81 m/s2, which adds 0.0002 at most to half a unit of the third digit. */
const SPEED_DIGIT = 0.0007;

/** Fill %, depth over diameter, critical speed by energy and by momentum for 100 mm. */
const TABLE = [
  [20, 0.2541, 0.988, 1.371],
  [30, 0.3402, 0.835, 1.024],
  [40, 0.4211, 0.698, 0.795],
  [50, 0.5, 0.572, 0.622],
  [60, 0.5789, 0.454, 0.479],
  [70, 0.6598, 0.343, 0.354],
  [80, 0.7459, 0.235, 0.239],
] as const;

/** Diameter; critical speed by momentum for 30, 40, 50, 60 and 70 % fill. */
const BY_DIAMETER = [
  [50, [0.724, 0.562, 0.44, 0.339, 0.25]],
  [60, [0.793, 0.616, 0.482, 0.371, 0.274]],
  [80, [0.915, 0.711, 0.556, 0.428, 0.317]],
  [100, [1.024, 0.795, 0.622, 0.479, 0.354]],
  [120, [1.121, 0.871, 0.681, 0.524, 0.388]],
  [140, [1.211, 0.941, 0.736, 0.567, 0.419]],
] as const;

const POURED = { length: 400, volume: 806.2, diameter: 70 };
const RUNNER = { ...POURED, runner_volume: 150 };

export const cases: readonly Case[] = [
  { formula: 'sleeve.fill', inputs: { volume: 806.2, diameter: 70, length: 400 }, expected: 52.37, tolerance: { absolute: 0.005 }, from: EXAMPLE },
  ...(
    [
      [60, 780.7, 69.0],
      [80, 835.7, 41.6],
      [90, 869.0, 34.2],
    ] as const
  ).map(([diameter, volume, expected]) => ({
    formula: 'sleeve.fill',
    inputs: { volume, diameter, length: 400 },
    expected,
    tolerance: { absolute: 0.055 },
    from: `${EXAMPLE}; other diameters, biscuit of the same thickness`,
  })),
  { formula: 'sleeve.fill', inputs: { volume: 650 / 2.5, diameter: 42.0, length: 250 }, expected: 75, tolerance: { relative: 0.0025 }, from: WORKSHEET },
  { formula: 'sleeve.fill', inputs: { volume: 1300 / 2.5, diameter: 54.2, length: 300 }, expected: 75, tolerance: { relative: 0.0025 }, from: WORKSHEET },
  { formula: 'sleeve.length-for-fill', inputs: { volume: 806.2, diameter: 70, fill: 50 }, expected: 419.0, tolerance: { absolute: 0.05 }, from: EXAMPLE },
  { formula: 'sleeve.length-for-fill', inputs: { volume: 260, diameter: 42.0, fill: 75 }, expected: 250, tolerance: { relative: 0.0025 }, from: WORKSHEET },

  // The depth over the diameter is (1 - cos(theta / 2)) / 2; four digits of it are printed.
  ...TABLE.map(([fill, depth]) => ({
    formula: 'sleeve.segment-angle',
    inputs: { fill },
    expected: 2 * Math.acos(1 - 2 * depth),
    tolerance: { absolute: 3e-4 },
    from: 'derived, worked by hand: depth of a circular segment by its area',
  })),
  { formula: 'sleeve.segment-angle', inputs: { fill: 50 }, expected: Math.PI, tolerance: { absolute: 1e-12 }, from: 'limiting case: half full is half a turn' },
  { formula: 'sleeve.segment-angle', inputs: { fill: 0 }, expected: 0, tolerance: { absolute: 1e-12 }, from: 'limiting case: empty' },
  { formula: 'sleeve.segment-angle', inputs: { fill: 100 }, expected: 2 * Math.PI, tolerance: { absolute: 1e-12 }, from: 'limiting case: full' },

  ...TABLE.map(([fill, , expected]) => ({
    formula: 'sleeve.critical-speed-energy',
    inputs: { diameter: 100, fill },
    expected,
    tolerance: { absolute: SPEED_DIGIT },
    from: ENERGY,
  })),
  ...TABLE.map(([fill, , , expected]) => ({
    formula: 'sleeve.critical-speed-momentum',
    inputs: { diameter: 100, fill },
    expected,
    tolerance: { absolute: SPEED_DIGIT },
    from: MOMENTUM,
  })),
  ...BY_DIAMETER.flatMap(([diameter, speeds]) =>
    speeds.map((expected, i) => ({
      formula: 'sleeve.critical-speed-momentum',
      inputs: { diameter, fill: 30 + 10 * i },
      expected,
      tolerance: { absolute: SPEED_DIGIT },
      from: MOMENTUM,
    })),
  ),
  ...[40, 50, 60, 70, 80].map((fill) => ({
    formula: 'sleeve.critical-speed-energy',
    inputs: { diameter: 100, fill },
    expected: 22.8 * 0.0254 * (1 - fill / 100) * Math.sqrt(100 / 25.4),
    tolerance: { relative: 0.025 },
    from: LINEAR,
  })),
  {
    formula: 'sleeve.critical-speed-energy',
    inputs: { diameter: 101.6, fill: 50 },
    expected: 0.579,
    tolerance: { relative: 0.01 },
    from: `${LINEAR}: 4 in plunger, 22.8 in/s`,
  },
  { formula: 'sleeve.critical-speed-energy', inputs: { diameter: 70, fill: 52.37 }, expected: 0.455, tolerance: { absolute: 0.0005 }, from: EXAMPLE },
  { formula: 'sleeve.critical-speed-momentum', inputs: { diameter: 70, fill: 52.37 }, expected: 0.49, tolerance: { absolute: 0.0005 }, from: EXAMPLE },
  // Half full: V^2 = 2 g (D/2) (1/2)/(3/2) = g D/3, and by momentum g D (1/2 - 1/(3 pi)).
  {
    formula: 'sleeve.critical-speed-energy',
    inputs: { diameter: 100, fill: 50 },
    expected: Math.sqrt(0.980665 / 3),
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: half full, V^2 = g D / 3',
  },
  {
    formula: 'sleeve.critical-speed-momentum',
    inputs: { diameter: 100, fill: 50 },
    expected: Math.sqrt(0.980665 * (0.5 - 1 / (3 * Math.PI))),
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: half full, centroid of a half circle 4 R / (3 pi) deep',
  },

  { formula: 'sleeve.travel-when-full', inputs: POURED, expected: 190.5, tolerance: { absolute: 0.05 }, from: EXAMPLE },
  { formula: 'sleeve.travel-at-gate', inputs: RUNNER, expected: 229.5, tolerance: { absolute: 0.05 }, from: EXAMPLE },
  {
    formula: 'sleeve.change-over',
    inputs: { ...RUNNER, fast_speed: 2.91, slow_speed: 0.458, acceleration: 150 },
    expected: 202.0,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  ...(
    [
      [60, 3.961],
      [70, 2.91],
      [80, 2.228],
      [90, 1.761],
    ] as const
  ).map(([diameter, expected]) => ({
    formula: 'sleeve.fast-speed',
    inputs: { flow: 560 / 50, diameter },
    expected,
    tolerance: { absolute: 0.0005 },
    from: EXAMPLE,
  })),
  {
    formula: 'sleeve.fast-speed',
    inputs: { flow: (45.3 * 222) / 1000, diameter: 80 },
    expected: 2,
    tolerance: { absolute: 0.005 },
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): plunger 80 mm, gate 222 mm2, 45.3 m/s at 2 m/s',
  },
  { formula: 'sleeve.biscuit-volume', inputs: { diameter: 70, thickness: 25 }, expected: 96.2, tolerance: { absolute: 0.05 }, from: EXAMPLE },
  {
    formula: 'sleeve.biscuit-volume',
    inputs: { diameter: 70, thickness: 6.37 },
    expected: 24.5,
    tolerance: { absolute: 0.05 },
    from: 'derived, worked by hand: 4.9 % shrinkage of 500 cm3 is 6.37 mm of a 70 mm plunger',
  },
];
