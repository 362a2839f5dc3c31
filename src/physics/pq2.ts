import { defineFormula } from '../kernel/formula.ts';

/** Pressure on the metal with the plunger standing still, from the hydraulic pressure of the fill phase. */
export const staticPressure = defineFormula({
  id: 'pq2.static-pressure',
  title: 'Static metal pressure in the fill phase',
  symbol: 'P_0',
  inputs: {
    hydraulic_pressure: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure during fill, not intensified', range: [3, 35] },
    cylinder_diameter: { symbol: 'd_h', unit: 'mm', meaning: 'diameter of the shot cylinder', range: [40, 500] },
    rod_diameter: { symbol: 'd_r', unit: 'mm', meaning: 'diameter of a tail rod, 0 without one', range: [0, 300], domain: 'not-negative', default: 0 },
    plunger_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'MPa',
  equation: 'p_h * (d_h^2 - d_r^2) / d_p^2',
  requires: [{ text: 'rod_diameter < cylinder_diameter', holds: (x) => x.rod_diameter < x.cylinder_diameter }],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT'],
  status: 'source',
  accuracy: 'exact without friction and back pressure; the accumulator drops during the shot',
  compute: (x) => (x.hydraulic_pressure * (x.cylinder_diameter ** 2 - x.rod_diameter ** 2)) / x.plunger_diameter ** 2,
});

/** Flow that the plunger would move at its dry-shot speed, without metal. */
export const dryFlow = defineFormula({
  id: 'pq2.dry-flow',
  title: 'Dry-shot flow',
  symbol: 'Q_max',
  inputs: {
    dry_speed: { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed', range: [0.5, 12] },
    plunger_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'l/s',
  equation: 'v_d * pi * d_p^2 / 4000',
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT'],
  status: 'source',
  accuracy: 'exact; the dry-shot speed is measured at the machine, at the hydraulic pressure and valve setting used',
  compute: ({ dry_speed, plunger_diameter }) => (dry_speed * Math.PI * plunger_diameter ** 2) / 4000,
});

const DIE_INPUTS = {
  density: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the liquid metal', range: [1500, 8000] },
  discharge: { symbol: 'C_d', unit: '1', meaning: 'discharge coefficient of runner and gate', range: [0.3, 0.8] },
} as const;

const POSSIBLE_DISCHARGE = { text: 'a discharge coefficient of 1 or less', holds: ({ discharge }: { readonly discharge: number }) => discharge <= 1 };

/** Metal pressure that drives the metal through the gate at a gate velocity. */
export const diePressure = defineFormula({
  id: 'pq2.die-pressure',
  title: 'Metal pressure for a gate velocity',
  symbol: 'P',
  inputs: {
    ...DIE_INPUTS,
    velocity: { symbol: 'v_g', unit: 'm/s', meaning: 'gate velocity', range: [5, 110] },
  },
  unit: 'MPa',
  equation: 'rho * v_g^2 / (2e6 * C_d^2)',
  requires: [POSSIBLE_DISCHARGE],
  outside: 'extrapolate',
  source: ['KB-HPDC-PARAMETERS'],
  status: 'memory',
  accuracy:
    'the square law was read, the form with the discharge coefficient is remembered; the coefficient depends on the runner and may be off by a factor of 2',
  compute: ({ density, velocity, discharge }) => (density * velocity ** 2) / (2e6 * discharge ** 2),
});

/** Flow where the line of the machine, P_0 (1 - (Q/Q_max)^2), meets the line of the die. MPa, l/s and mm2 need no factor. */
export const operatingFlow = defineFormula({
  id: 'pq2.operating-flow',
  title: 'Flow at the operating point',
  symbol: 'Q',
  inputs: {
    static_pressure: { symbol: 'P_0', unit: 'MPa', meaning: 'static metal pressure in the fill phase', range: [2, 200] },
    dry_flow: { symbol: 'Q_max', unit: 'l/s', meaning: 'dry-shot flow', range: [0.5, 500] },
    ...DIE_INPUTS,
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of all cavities', range: [1, 20000] },
  },
  unit: 'l/s',
  where: [{ symbol: 'r', equation: 'rho / (2 * C_d^2 * A_g^2)' }],
  equation: 'sqrt(P_0 / (P_0 / Q_max^2 + r))',
  requires: [POSSIBLE_DISCHARGE],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'memory',
  accuracy: 'exact crossing of the two lines; shows the greatest flow the machine gives, to be read with the discharge coefficient 20 % up and down',
  compute: ({ static_pressure, dry_flow, density, discharge, gate_area }) =>
    Math.sqrt(static_pressure / (static_pressure / dry_flow ** 2 + density / (2 * discharge ** 2 * gate_area ** 2))),
});

/** Plunger area at which the flow through a given gate is greatest; there P = 2/3 P_0 and Q = Q_max / sqrt(3). */
export const bestPlungerArea = defineFormula({
  id: 'pq2.best-plunger-area',
  title: 'Plunger area of the greatest gate velocity',
  symbol: 'A_p',
  inputs: {
    hydraulic_force: { symbol: 'F_h', unit: 'kN', meaning: 'force of the shot cylinder in the fill phase', range: [10, 5000] },
    dry_speed: { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed', range: [0.5, 12] },
    ...DIE_INPUTS,
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of all cavities', range: [1, 20000] },
  },
  unit: 'mm2',
  equation: 'cbrt(4e9 * F_h * C_d^2 * A_g^2 / (rho * v_d^2))',
  requires: [POSSIBLE_DISCHARGE],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'memory',
  accuracy: 'exact for the two lines of the diagram; a flat optimum: 10 % off in diameter costs 2 % of the flow, 20 % off 6 to 10 %',
  compute: (x) => Math.cbrt((4e9 * x.hydraulic_force * x.discharge ** 2 * x.gate_area ** 2) / (x.density * x.dry_speed ** 2)),
});
