import type { Case } from '../case.ts';

const EXAMPLE = 'derived, worked by hand: 14 MPa, cylinder 140, plunger 70 mm, dry speed 5 m/s, 2500 kg/m3, C_d 0.5, gate 222 mm2';
const PSI = 0.00689475729;

const plunger = (diameter: number): number => (Math.PI * diameter ** 2) / 4;
const DIE = { density: 2500, discharge: 0.5 };

/** What is varied; static pressure, dry-shot flow and gate area; flow, pressure and gate velocity at the crossing. */
const CROSSINGS = [
  ['as given', 56, (5 * plunger(70)) / 1000, 222, 14.887, 22.48, 67.06],
  ['plunger 50 mm', 109.76, (5 * plunger(50)) / 1000, 222, 9.407, 8.98, 42.4],
  ['plunger 60 mm', 76.222, (5 * plunger(60)) / 1000, 222, 12.564, 16.02, 56.6],
  ['best plunger 83.98 mm', 38.91, (5 * plunger(83.98)) / 1000, 222, 15.99, 25.94, 72.03],
  ['plunger 100 mm', 27.44, (5 * plunger(100)) / 1000, 222, 15.169, 23.35, 68.3],
  ['10 MPa', 40, (4.226 * plunger(70)) / 1000, 222, 12.581, 16.06, 56.7],
  ['16 MPa', 64, (5.345 * plunger(70)) / 1000, 222, 15.914, 25.7, 71.7],
  ['throttled to half', 56, (2.5 * plunger(70)) / 1000, 222, 8.903, 8.04, 40.1],
  ['gate 100 mm2', 56, (5 * plunger(70)) / 1000, 100, 9.273, 43.0, 92.7],
] as const;

export const cases: readonly Case[] = [
  {
    formula: 'pq2.static-pressure',
    inputs: { hydraulic_pressure: 14, cylinder_diameter: 140, plunger_diameter: 70 },
    expected: 56,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  {
    formula: 'pq2.static-pressure',
    inputs: { hydraulic_pressure: 14, cylinder_diameter: 140, rod_diameter: 70, plunger_diameter: 70 },
    expected: 42,
    tolerance: { relative: 1e-12 },
    from: 'training hand-out "Generic PQ2 diagram" (PQ2-HANDOUT): a tail rod subtracts; by hand 14 x (19600 - 4900) / 4900',
  },
  {
    formula: 'pq2.static-pressure',
    inputs: { hydraulic_pressure: 14, cylinder_diameter: 140, plunger_diameter: 50 },
    expected: 109.8,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  { formula: 'pq2.dry-flow', inputs: { dry_speed: 5, plunger_diameter: 70 }, expected: 19.24, tolerance: { absolute: 0.005 }, from: EXAMPLE },
  { formula: 'pq2.dry-flow', inputs: { dry_speed: 5, plunger_diameter: 50 }, expected: 9.82, tolerance: { absolute: 0.005 }, from: EXAMPLE },
  // The article rounds the plunger area of 5026.5 mm2 to 5030.
  {
    formula: 'pq2.dry-flow',
    inputs: { dry_speed: 2, plunger_diameter: 80 },
    expected: (5030 * 2) / 1000,
    tolerance: { relative: 0.001 },
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): plunger area 5030 mm2 at 2 m/s',
  },
  ...CROSSINGS.map(([what, static_pressure, dry_flow, gate_area, flow]) => ({
    formula: 'pq2.operating-flow',
    inputs: { static_pressure, dry_flow, ...DIE, gate_area },
    expected: flow,
    tolerance: { absolute: 0.0015 },
    from: `${EXAMPLE}; ${what}`,
  })),
  ...CROSSINGS.map(([what, , , area, flow, , velocity]) => ({
    formula: 'gate.velocity-from-flow',
    inputs: { flow, area },
    expected: velocity,
    tolerance: { absolute: 0.05 },
    from: `${EXAMPLE}; ${what}`,
  })),
  ...CROSSINGS.map(([what, , , area, flow, pressure]) => ({
    formula: 'pq2.die-pressure',
    inputs: { ...DIE, velocity: (1000 * flow) / area },
    expected: pressure,
    tolerance: { absolute: 0.01 },
    from: `${EXAMPLE}; ${what}`,
  })),
  ...(
    [
      [2500, 0.5, 45, 10.125],
      [6100, 0.6, 45, 17.16],
      [6100, 0.65, 45, 14.62],
      [1650, 0.5, 60, 11.88],
    ] as const
  ).map(([density, discharge, velocity, expected]) => ({
    formula: 'pq2.die-pressure',
    inputs: { density, velocity, discharge },
    expected,
    tolerance: { absolute: 0.005 },
    from: 'derived, worked by hand: density v^2 / (2 C_d^2)',
  })),
  {
    formula: 'pq2.die-pressure',
    inputs: { density: 2500, velocity: 45, discharge: 0.5 },
    expected: 1468.5 * PSI,
    tolerance: { relative: 1e-4 },
    from: 'derived, worked by hand in inch units: w / (2 x 386.1) x (v / C_d)^2 = 1468.5 psi, form from memory',
  },
  {
    formula: 'pq2.best-plunger-area',
    inputs: { hydraulic_force: (14 * plunger(140)) / 1000, dry_speed: 5, ...DIE, gate_area: 222 },
    expected: plunger(83.98),
    tolerance: { relative: 2e-4 },
    from: `${EXAMPLE}; best plunger 83.98 mm`,
  },
  {
    formula: 'machine.metal-pressure',
    inputs: { hydraulic_pressure: 14, cylinder_diameter: 140, plunger_diameter: 70 },
    expected: ((14000 * 0.06 * (140 / 70) ** 2) / 600) * 10,
    tolerance: { relative: 1e-9 },
    from: 'chapter "Force Calculations" (FORCE-CHAPTER), F = P A (D/d)^2 in kPa and m2: 3360 kN on 600 cm2',
  },
  {
    formula: 'machine.metal-pressure',
    inputs: { hydraulic_pressure: 16, cylinder_diameter: 150, plunger_diameter: 60 },
    expected: 100,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 16 x 2.5^2',
  },
];
