import { defineFormula } from '../../kernel/formula.ts';

const TRAVEL = [0, 2000] as const;
const SPEED = [0.05, 8] as const;

const GATE = { symbol: 'x_gate', unit: 'mm', meaning: 'plunger travel when the metal is at the gate', range: TRAVEL, domain: 'not-negative' } as const;
const CHANGE_OVER = { symbol: 'x_c', unit: 'mm', meaning: 'plunger travel at change-over', range: TRAVEL, domain: 'not-negative' } as const;
const SLOW = { symbol: 'v_s', unit: 'm/s', meaning: 'slow-shot speed', range: [0.1, 1.5], domain: 'not-negative' } as const;
const FAST = { symbol: 'v_f', unit: 'm/s', meaning: 'plunger speed of the fast shot', range: [0.5, 8] } as const;
const ACCELERATION = { symbol: 'a', unit: 'm/s2', meaning: 'acceleration to the fast speed', range: [50, 400] } as const;

/** Constant acceleration between two speeds over a way. */
export const acceleration = defineFormula({
  id: 'slow-shot.acceleration',
  title: 'Acceleration of the plunger',
  symbol: 'a',
  inputs: {
    speed_from: { symbol: 'v_1', unit: 'm/s', meaning: 'speed at the beginning', range: [0, 1.5], domain: 'not-negative', default: 0 },
    speed_to: { symbol: 'v_2', unit: 'm/s', meaning: 'speed at the end', range: [0.1, 8], domain: 'not-negative' },
    travel_from: { symbol: 'x_1', unit: 'mm', meaning: 'travel at the beginning', range: [0, 1000], domain: 'not-negative', default: 0 },
    travel_to: { symbol: 'x_2', unit: 'mm', meaning: 'travel at the end', range: [1, 2000] },
  },
  unit: 'm/s2',
  equation: '500 * (v_2^2 - v_1^2) / (x_2 - x_1)',
  requires: [
    { text: 'travel_to > travel_from', holds: (x) => x.travel_to > x.travel_from },
    { text: 'speed_to >= speed_from', holds: (x) => x.speed_to >= x.speed_from },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a constant acceleration',
  compute: (x) => (500 * (x.speed_to ** 2 - x.speed_from ** 2)) / (x.travel_to - x.travel_from),
});

/** Acceleration planned for the fast shot: what the way to the gate needs, inside what machines give. */
export const fastAcceleration = defineFormula({
  id: 'slow-shot.fast-acceleration',
  title: 'Acceleration to the fast shot',
  symbol: 'a',
  inputs: {
    needed: { symbol: 'a_n', unit: 'm/s2', meaning: 'acceleration that the way from sleeve full to gate needs', range: [0, 1000], domain: 'not-negative' },
    usual: { symbol: 'a_u', unit: 'm/s2', meaning: 'usual acceleration', range: [50, 250] },
    greatest: { symbol: 'a_m', unit: 'm/s2', meaning: 'greatest acceleration of the range', range: [250, 500] },
  },
  unit: 'm/s2',
  equation: 'min(a_m, max(a_u, a_n))',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'the range follows from 30 to 80 mm of stroke to reach 4 m/s; the machine at hand is measured',
  compute: (x) => Math.min(x.greatest, Math.max(x.usual, x.needed)),
});

/** Plunger speed at the moment when the metal is at the gate. */
export const speedAtGate = defineFormula({
  id: 'slow-shot.gate-speed',
  title: 'Plunger speed when the metal is at the gate',
  symbol: 'v_g',
  inputs: { gate_travel: GATE, change_over: CHANGE_OVER, slow_speed: SLOW, fast_speed: FAST, acceleration: ACCELERATION },
  unit: 'm/s',
  equation: 'min(v_f, sqrt(v_s^2 + a * max(0, x_gate - x_c) / 500))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a constant acceleration',
  compute: (x) => Math.min(x.fast_speed, Math.sqrt(x.slow_speed ** 2 + (x.acceleration * Math.max(0, x.gate_travel - x.change_over)) / 500)),
});

/** Time of a way on which the speed changes evenly or not at all. */
export const phaseTime = defineFormula({
  id: 'slow-shot.phase-time',
  title: 'Time of a phase of the shot',
  symbol: 't',
  inputs: {
    travel_from: { symbol: 'x_1', unit: 'mm', meaning: 'travel at the beginning', range: [0, 1000], domain: 'not-negative', default: 0 },
    travel_to: { symbol: 'x_2', unit: 'mm', meaning: 'travel at the end', range: TRAVEL, domain: 'not-negative' },
    speed_from: { symbol: 'v_1', unit: 'm/s', meaning: 'speed at the beginning', range: [0, 8], domain: 'not-negative', default: 0 },
    speed_to: { symbol: 'v_2', unit: 'm/s', meaning: 'speed at the end', range: SPEED },
  },
  unit: 'ms',
  equation: '2 * (x_2 - x_1) / (v_1 + v_2)',
  requires: [{ text: 'travel_to >= travel_from', holds: (x) => x.travel_to >= x.travel_from }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a constant acceleration',
  compute: (x) => (2 * (x.travel_to - x.travel_from)) / (x.speed_from + x.speed_to),
});

/** Time of the whole slow shot. */
export const slowShotTime = defineFormula({
  id: 'slow-shot.time',
  title: 'Time of the slow shot',
  symbol: 't_s',
  inputs: {
    start: { symbol: 't_1', unit: 'ms', meaning: 'until the pour hole is closed', range: [50, 5000], domain: 'not-negative' },
    ramp: { symbol: 't_2', unit: 'ms', meaning: 'until the slow speed is reached', range: [0, 2000], domain: 'not-negative' },
    steady: { symbol: 't_3', unit: 'ms', meaning: 'at the slow speed, until change-over', range: [0, 5000], domain: 'not-negative' },
  },
  unit: 's',
  equation: '(t_1 + t_2 + t_3) / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the profile planned',
  compute: (x) => (x.start + x.ramp + x.steady) / 1000,
});

/** Time from metal at the gate to cavities full, with the rest of the acceleration and the braking. */
export const fillDuration = defineFormula({
  id: 'slow-shot.fill-duration',
  title: 'Fill time with this profile',
  symbol: 't_f',
  inputs: {
    gate_travel: { symbol: 'x_gate', unit: 'mm', meaning: 'plunger travel when the metal is at the gate', range: TRAVEL, domain: 'not-negative' },
    fast_travel: { symbol: 'x_v', unit: 'mm', meaning: 'plunger travel when the fast speed is reached', range: TRAVEL, domain: 'not-negative' },
    brake_travel: { symbol: 'x_b', unit: 'mm', meaning: 'plunger travel when braking begins', range: [1, 2000] },
    gate_speed: { symbol: 'v_g', unit: 'm/s', meaning: 'plunger speed when the metal is at the gate', range: [0.1, 8] },
    fast_speed: FAST,
    brake_time: { symbol: 't_b', unit: 'ms', meaning: 'time of braking', range: [0, 50], domain: 'not-negative' },
  },
  unit: 'ms',
  equation: '2 * (x_v - x_gate) / (v_g + v_f) + (x_b - x_v) / v_f + t_b',
  requires: [
    { text: 'brake_travel >= fast_travel', holds: (x) => x.brake_travel >= x.fast_travel },
    {
      text: 'fast_travel >= gate_travel, or a gate_speed that is the fast_speed',
      holds: (x) => x.fast_travel >= x.gate_travel || x.gate_speed === x.fast_speed,
    },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for constant accelerations; the pressure line of the machine may not allow them',
  compute: (x) => (2 * (x.fast_travel - x.gate_travel)) / (x.gate_speed + x.fast_speed) + (x.brake_travel - x.fast_travel) / x.fast_speed + x.brake_time,
});
