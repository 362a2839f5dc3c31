import { defineFormula } from '../kernel/formula.ts';

const STATIC = { symbol: 'P_0', unit: 'MPa', meaning: 'static metal pressure in the fill phase', range: [2, 200] } as const;
const DRY_FLOW = { symbol: 'Q_max', unit: 'l/s', meaning: 'dry-shot flow', range: [0.5, 500] } as const;
const FLOW = { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through all gates', range: [0.05, 500] } as const;
const PRESSURE = { symbol: 'P', unit: 'MPa', meaning: 'metal pressure that the gates ask for', range: [0.1, 100] } as const;

/** What the machine has left for the metal at a flow: nothing from the dry flow on. */
export const machinePressure = defineFormula({
  id: 'pq2.machine-pressure',
  title: 'Metal pressure that the machine gives at a flow',
  symbol: 'P_m',
  inputs: { static_pressure: STATIC, dry_flow: DRY_FLOW, flow: FLOW },
  unit: 'MPa',
  equation: 'P_0 * max(0, 1 - (Q / Q_max)^2)',
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'source',
  accuracy: 'the line of the machine, straight over the square of the flow; the accumulator drops a little during the shot',
  compute: (x) => x.static_pressure * Math.max(0, 1 - (x.flow / x.dry_flow) ** 2),
});

/** The greatest flow at which the machine still gives a pressure: the same line, read the other way. */
export const machineFlow = defineFormula({
  id: 'pq2.machine-flow',
  title: 'Greatest flow of the machine at a metal pressure',
  symbol: 'Q_m',
  inputs: { static_pressure: STATIC, dry_flow: DRY_FLOW, pressure: PRESSURE },
  unit: 'l/s',
  equation: 'Q_max * sqrt(max(0, 1 - P / P_0))',
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'source',
  accuracy: 'as the line of the machine; none when the pressure reaches the static one',
  compute: (x) => x.dry_flow * Math.sqrt(Math.max(0, 1 - x.pressure / x.static_pressure)),
});

/**
 * Hydraulic pressure that brings the line of the machine onto a point, as a share of the one planned. Static pressure
 * rises with the hydraulic pressure, dry-shot flow with its root, so the two parts add up.
 */
export const machineUse = defineFormula({
  id: 'pq2.machine-use',
  title: 'Use of the machine at a flow and pressure',
  symbol: 'u',
  inputs: { static_pressure: STATIC, dry_flow: DRY_FLOW, flow: FLOW, pressure: PRESSURE },
  unit: '%',
  equation: '100 * (P / P_0 + (Q / Q_max)^2)',
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'derived',
  accuracy: 'below 100 % the machine has pressure to spare, above it lacks that share of the hydraulic pressure',
  compute: (x) => 100 * (x.pressure / x.static_pressure + (x.flow / x.dry_flow) ** 2),
});

/** Hydraulic pressure in the fill phase at which the line of the machine runs through the point. */
export const neededPressure = defineFormula({
  id: 'pq2.needed-pressure',
  title: 'Hydraulic pressure that reaches the plan',
  symbol: 'p_n',
  inputs: {
    hydraulic_pressure: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure planned for the fill phase', range: [3, 35] },
    use: { symbol: 'u', unit: '%', meaning: 'use of the machine at the planned flow and pressure', range: [1, 10000] },
  },
  unit: 'MPa',
  equation: 'p_h * u / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact when the dry-shot speed follows the root of the hydraulic pressure',
  compute: (x) => (x.hydraulic_pressure * x.use) / 100,
});

/** Valve setting at which the crossing falls on the point: the machine then runs as planned. */
export const neededThrottle = defineFormula({
  id: 'pq2.needed-throttle',
  title: 'Setting of the shot valve for the plan',
  symbol: 'k_n',
  inputs: {
    throttle: { symbol: 'k', unit: '%', meaning: 'setting that the dry-shot flow belongs to', range: [5, 100] },
    static_pressure: STATIC,
    dry_flow: DRY_FLOW,
    flow: FLOW,
    pressure: PRESSURE,
  },
  unit: '%',
  equation: 'k * Q / (Q_max * sqrt(1 - P / P_0))',
  requires: [{ text: 'pressure < static_pressure', holds: (x) => x.pressure < x.static_pressure }],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT'],
  status: 'derived',
  accuracy: 'counted in dry-shot speed; a throttle takes speed and leaves the static pressure',
  compute: (x) => (x.throttle * x.flow) / (x.dry_flow * Math.sqrt(1 - x.pressure / x.static_pressure)),
});

/** Share of the machine's greatest power that the plan takes: above 100 % no plunger reaches it. */
export const powerUse = defineFormula({
  id: 'pq2.power-use',
  title: 'Power of the plan over the greatest power of the machine',
  symbol: 'w',
  inputs: {
    power: { symbol: 'W', unit: 'kW', meaning: 'power on the metal at the planned flow and pressure', range: [0.1, 10000] },
    greatest_power: { symbol: 'W_max', unit: 'kW', meaning: 'greatest power on the metal, the same for every plunger', range: [1, 20000] },
  },
  unit: '%',
  equation: '100 * W / W_max',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the two lines',
  compute: (x) => (100 * x.power) / x.greatest_power,
});

const PLUNGER_INPUTS = {
  force: { symbol: 'F_h', unit: 'kN', meaning: 'force of the shot cylinder in the fill phase', range: [10, 5000] },
  dry_speed: { symbol: 'v_d', unit: 'm/s', meaning: 'dry-shot plunger speed', range: [0.5, 12] },
  flow: FLOW,
  pressure: PRESSURE,
} as const;

interface PlungerNumbers {
  readonly force: number;
  readonly dry_speed: number;
  readonly flow: number;
  readonly pressure: number;
}

/** Power of the point over force times dry-shot speed; a machine gives at most 2 / (3 sqrt(3)) of it. */
const relativePower = (x: PlungerNumbers): number => (x.pressure * x.flow) / (x.force * x.dry_speed);
const ENOUGH_POWER = {
  text: 'a machine with the power for this flow and pressure, whatever the plunger',
  holds: (x: PlungerNumbers): boolean => 1.5 * Math.sqrt(3) * relativePower(x) <= 1,
};

/** Plunger with which flow over dry-shot flow is `ratio`. */
const plungerAt = (x: PlungerNumbers, ratio: number): number => Math.sqrt((4000 * x.flow) / (Math.PI * x.dry_speed * ratio));

/** Smallest plunger with which the machine reaches a flow and pressure: the greater root of u - u^3 = W / (F_h v_d), u = Q/Q_max. */
export const leastPlunger = defineFormula({
  id: 'pq2.least-plunger',
  title: 'Smallest plunger that reaches the plan',
  symbol: 'D_1',
  inputs: PLUNGER_INPUTS,
  unit: 'mm',
  where: [
    { symbol: 'w', equation: 'P * Q / (F_h * v_d)' },
    { symbol: 'u', equation: '2 / sqrt(3) * cos(acos(-1.5 * sqrt(3) * w) / 3)' },
  ],
  equation: 'sqrt(4000 * Q / (pi * v_d * u))',
  requires: [ENOUGH_POWER],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'derived',
  accuracy: 'exact for the line of the machine; a smaller plunger has the pressure but not the flow',
  compute: (x) => plungerAt(x, (2 / Math.sqrt(3)) * Math.cos(Math.acos(-1.5 * Math.sqrt(3) * relativePower(x)) / 3)),
});

/** Largest plunger with which the machine reaches a flow and pressure: the smaller positive root of the same equation. */
export const greatestPlunger = defineFormula({
  id: 'pq2.greatest-plunger',
  title: 'Largest plunger that reaches the plan',
  symbol: 'D_2',
  inputs: PLUNGER_INPUTS,
  unit: 'mm',
  where: [
    { symbol: 'w', equation: 'P * Q / (F_h * v_d)' },
    { symbol: 'u', equation: '2 / sqrt(3) * cos((acos(-1.5 * sqrt(3) * w) - 2 * pi) / 3)' },
  ],
  equation: 'sqrt(4000 * Q / (pi * v_d * u))',
  requires: [ENOUGH_POWER],
  outside: 'extrapolate',
  source: ['PQ2-HANDOUT', 'KB-HPDC-PARAMETERS'],
  status: 'derived',
  accuracy: 'exact for the line of the machine; a larger plunger has the flow but not the pressure',
  compute: (x) => plungerAt(x, (2 / Math.sqrt(3)) * Math.cos((Math.acos(-1.5 * Math.sqrt(3) * relativePower(x)) - 2 * Math.PI) / 3)),
});

/** Gate velocity that a metal pressure drives: the line of the die, read the other way. */
export const drivenVelocity = defineFormula({
  id: 'pq2.driven-velocity',
  title: 'Gate velocity that a metal pressure drives',
  symbol: 'v_g',
  inputs: {
    pressure: { symbol: 'P', unit: 'MPa', meaning: 'metal pressure', range: [0, 200], domain: 'not-negative' },
    density: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the liquid metal', range: [1500, 8000] },
    discharge: { symbol: 'C_d', unit: '1', meaning: 'discharge coefficient of runner and gate', range: [0.3, 0.8] },
  },
  unit: 'm/s',
  equation: 'C_d * sqrt(2e6 * P / rho)',
  requires: [{ text: 'a discharge coefficient of 1 or less', holds: ({ discharge }) => discharge <= 1 }],
  outside: 'extrapolate',
  source: ['KB-HPDC-PARAMETERS'],
  status: 'memory',
  accuracy: 'as the metal pressure for a gate velocity: the coefficient depends on the runner and may be off by a factor of 2',
  compute: (x) => x.discharge * Math.sqrt((2e6 * x.pressure) / x.density),
});
