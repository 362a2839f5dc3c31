import type { Case } from '../case.ts';

const EXAMPLE = 'derived, worked by hand: 14 MPa, cylinder 140, plunger 70 mm, dry speed 5 m/s, 2500 kg/m3, C_d 0.5, gate 222 mm2, cavity 500 cm3';
const circle = (diameter: number): number => (Math.PI * diameter ** 2) / 4;

/** What is varied; plunger, static pressure and dry speed; flow, pressure and fill time at the crossing, as tabled by hand. */
const CROSSINGS = [
  ['as given', 70, 56, 5, 14.887, 22.48, 33.6],
  ['plunger 50 mm', 50, 109.76, 5, 9.407, 8.98, 53.2],
  ['plunger 60 mm', 60, 76.222, 5, 12.564, 16.02, 39.8],
  ['best plunger', 83.98, 38.91, 5, 15.99, 25.94, 31.3],
  ['plunger 100 mm', 100, 27.44, 5, 15.169, 23.35, 33.0],
  ['10 MPa', 70, 40, 4.226, 12.581, 16.06, 39.7],
  ['16 MPa', 70, 64, 5.345, 15.914, 25.7, 31.4],
  ['throttled to half', 70, 56, 2.5, 8.903, 8.04, 56.2],
  ['gate 100 mm2', 70, 56, 5, 9.273, 43.0, 53.9],
] as const;

const dry = (plunger: number, speed: number): number => (speed * circle(plunger)) / 1000;
/** The sleeve of 70 x 400 mm with 806.2 cm3 of metal of one density, biscuit 25 mm, and other plungers in its place. */
const SLEEVE = { liquid_volume: 806.2, biscuit_volume: 96.21, density: 2.5, liquid_density: 2.5, thickness: 25, length: 400 };

export const cases: readonly Case[] = [
  ...(
    [
      [10, 14, 100, 4.226],
      [16, 14, 100, 5.345],
      [14, 14, 50, 2.5],
    ] as const
  ).map(([pressure, rated_pressure, throttle, expected]) => ({
    formula: 'pq2.dry-speed',
    inputs: { dry_speed: 5, pressure, rated_pressure, throttle },
    expected,
    tolerance: { absolute: 0.0005 },
    from: `${EXAMPLE}; ${pressure} MPa, valve at ${throttle} %`,
  })),
  {
    formula: 'pq2.gate-area',
    inputs: { cavities: 4, area: 55.5 },
    expected: 222,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 4 x 55.5',
  },
  {
    formula: 'pq2.hydraulic-force',
    inputs: { pressure: 14, cylinder_diameter: 140 },
    expected: 215.5,
    tolerance: { absolute: 0.05 },
    from: 'derived, worked by hand: 14 N/mm2 on 15394 mm2',
  },
  {
    formula: 'pq2.hydraulic-force',
    inputs: { pressure: 14, cylinder_diameter: 140, rod_diameter: 70 },
    expected: 161.6,
    tolerance: { absolute: 0.05 },
    from: 'training hand-out "Generic PQ2 diagram" (PQ2-HANDOUT): a tail rod subtracts; by hand 14 x (15394 - 3848.5)',
  },
  {
    formula: 'pq2.best-plunger-diameter',
    inputs: { area: 5539 },
    expected: 83.98,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}; area of the best plunger`,
  },
  ...(
    [
      [0.5, -20, 0.4],
      [0.5, 20, 0.6],
      [0.95, 20, 1],
    ] as const
  ).map(([discharge, share, expected]) => ({
    formula: 'pq2.spread-discharge',
    inputs: { discharge, share },
    expected,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: a fifth down, a fifth up, never above 1',
  })),
  ...CROSSINGS.map(([what, , , , flow, , time]) => ({
    formula: 'pq2.fill-time',
    inputs: { cavities: 1, volume: 500, flow },
    expected: time,
    tolerance: { absolute: 0.06 },
    from: `${EXAMPLE}; ${what}`,
  })),
  {
    formula: 'pq2.fill-time',
    inputs: { cavities: 1, volume: 500, flow: 10 },
    expected: 50,
    tolerance: { relative: 1e-12 },
    from: 'knowledge-base article on gating (KB-GATING): 500 cm3 at 10 000 cm3/s in 50 ms',
  },
  {
    formula: 'gate.velocity-from-flow',
    inputs: { flow: 2 * 5.03, area: 222 },
    expected: 45.3,
    tolerance: { absolute: 0.05 },
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): plunger of 5030 mm2 at 2 m/s through 222 mm2',
  },
  ...CROSSINGS.map(([what, plunger, static_pressure, speed, flow, pressure]) => ({
    formula: 'pq2.machine-pressure',
    inputs: { static_pressure, dry_flow: dry(plunger, speed), flow },
    expected: pressure,
    tolerance: { absolute: 0.015 },
    from: `${EXAMPLE}; ${what}`,
  })),
  {
    formula: 'pq2.machine-pressure',
    inputs: { static_pressure: 56, dry_flow: 19.24, flow: 25 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: nothing is left beyond the dry flow',
  },
  ...CROSSINGS.map(([what, plunger, static_pressure, speed, flow, pressure]) => ({
    formula: 'pq2.machine-flow',
    inputs: { static_pressure, dry_flow: dry(plunger, speed), pressure },
    expected: flow,
    // A pressure printed to 0.01 MPa moves the flow by up to 0.01 l/s.
    tolerance: { absolute: 0.012 },
    from: `${EXAMPLE}; ${what}`,
  })),
  ...CROSSINGS.map(([what, plunger, static_pressure, speed, flow, pressure]) => ({
    formula: 'pq2.machine-use',
    inputs: { static_pressure, dry_flow: dry(plunger, speed), flow, pressure },
    expected: 100,
    tolerance: { absolute: 0.05 },
    from: `${EXAMPLE}; ${what}: the crossing lies on the line of the machine`,
  })),
  {
    formula: 'pq2.machine-use',
    inputs: { static_pressure: 56, dry_flow: 19.242, flow: 10, pressure: 10.125 },
    expected: 45.09,
    tolerance: { absolute: 0.01 },
    from: 'derived, worked by hand: 10.125/56 + (10/19.242)^2 = 0.1808 + 0.2701',
  },
  // The crossing at 16 MPa, seen from the machine at 14 MPa: 25.70/56 + (15.914/19.242)^2 = 1.1429.
  {
    formula: 'pq2.needed-pressure',
    inputs: { hydraulic_pressure: 14, use: 114.29 },
    expected: 16,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}; 16 MPa`,
  },
  {
    formula: 'pq2.needed-throttle',
    inputs: { throttle: 100, static_pressure: 56, dry_flow: 19.242, flow: 8.903, pressure: 8.04 },
    expected: 50,
    tolerance: { absolute: 0.02 },
    from: `${EXAMPLE}; throttled to half`,
  },
  {
    formula: 'pq2.needed-throttle',
    inputs: { throttle: 50, static_pressure: 56, dry_flow: 9.621, flow: 14.887, pressure: 22.48 },
    expected: 100,
    tolerance: { absolute: 0.05 },
    from: `${EXAMPLE}; from the throttled line back to the open valve`,
  },
  {
    formula: 'pq2.power',
    inputs: { pressure: 37.333, flow: 11.109 },
    expected: 414.7,
    tolerance: { absolute: 0.1 },
    from: 'derived, worked by hand: 0.3849 x 215.5 kN x 5 m/s = 414.7 kW',
  },
  { formula: 'pq2.greatest-power-flow', inputs: { dry_flow: 27.69 }, expected: 15.99, tolerance: { absolute: 0.006 }, from: `${EXAMPLE}; best plunger` },
  {
    formula: 'pq2.greatest-power-flow',
    inputs: { dry_flow: 1 },
    expected: 0.577,
    tolerance: { absolute: 0.0005 },
    from: 'derived, worked by hand: q (1 - q^2) is greatest, 0.385, at q = 0.577',
  },
  {
    formula: 'pq2.greatest-power-pressure',
    inputs: { static_pressure: 38.91 },
    expected: 25.94,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}; best plunger`,
  },
  {
    formula: 'pq2.power-use',
    inputs: { power: 22.48 * 14.887, greatest_power: 414.75 },
    expected: 80.69,
    tolerance: { absolute: 0.01 },
    from: 'derived, worked by hand: 334.66 of 414.75 kW',
  },
  ...(
    [
      ['pq2.least-plunger', 50, 9.407, 8.98],
      ['pq2.least-plunger', 60, 12.564, 16.02],
      ['pq2.least-plunger', 70, 14.887, 22.48],
      ['pq2.greatest-plunger', 100, 15.169, 23.35],
    ] as const
  ).map(([formula, expected, flow, pressure]) => ({
    formula,
    inputs: { force: (14 * circle(140)) / 1000, dry_speed: 5, flow, pressure },
    expected,
    tolerance: { relative: 5e-4 },
    from: `${EXAMPLE}; the crossing with a plunger of ${expected} mm lies on its line`,
  })),
  ...(
    [
      [2500, 0.5, 10.125, 45],
      [6100, 0.6, 17.16, 45],
      [6100, 0.65, 14.62, 45],
      [1650, 0.5, 11.88, 60],
    ] as const
  ).map(([density, discharge, pressure, expected]) => ({
    formula: 'pq2.driven-velocity',
    inputs: { density, discharge, pressure },
    expected,
    tolerance: { absolute: 0.01 },
    from: 'derived, worked by hand: density v^2 / (2 C_d^2), read the other way',
  })),
  {
    formula: 'pq2.flow-margin',
    inputs: { flow: 15, least: 12 },
    expected: 25,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 3 of 12',
  },
  {
    formula: 'pq2.velocity-margin-least',
    inputs: { velocity: 45, least: 30 },
    expected: 50,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 15 of 30',
  },
  {
    formula: 'pq2.velocity-margin-greatest',
    inputs: { velocity: 45, greatest: 60 },
    expected: 25,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 15 of 60',
  },
  {
    formula: 'pq2.machine-margin',
    inputs: { flow: 15, operating_flow: 12 },
    expected: -25,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 3 of 12 short',
  },
  ...(
    [
      [70, 52.37, 0.01],
      [60, 69.0, 0.05],
      [80, 41.6, 0.05],
      [90, 34.2, 0.05],
    ] as const
  ).map(([diameter, expected, absolute]) => ({
    formula: 'pq2.plunger-sleeve-fill',
    inputs: { ...SLEEVE, diameter },
    expected,
    tolerance: { absolute },
    from: 'derived, worked by hand: sleeve 400 mm, 710 cm3 of cavity, overflows and runner, biscuit 25 mm',
  })),
  // A biscuit of 50 cm3 of solid metal at 2.7 takes 54 cm3 of the liquid at 2.5 g/cm3: (500 + 54 x (200 / 50 - 1)) of 2000 cm3.
  {
    formula: 'pq2.plunger-sleeve-fill',
    inputs: {
      liquid_volume: 500,
      biscuit_volume: 50,
      density: 2.7,
      liquid_density: 2.5,
      diameter: Math.sqrt((4 * 5000) / Math.PI),
      thickness: 40,
      length: 400,
    },
    expected: 33.1,
    tolerance: { absolute: 1e-6 },
    from: 'derived, worked by hand: (500 + 54 x 3) / 2000',
  },
];
