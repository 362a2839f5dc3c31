import { defineFormula } from '../../kernel/formula.ts';

const TRAVEL = [0, 2000] as const;

const FULL = { symbol: 'x_full', unit: 'mm', meaning: 'plunger travel when the sleeve is full', range: [20, 1500], domain: 'not-negative' } as const;
const HOLE = { symbol: 'x_h', unit: 'mm', meaning: 'plunger travel when the pour hole is closed', range: [20, 400], domain: 'not-negative' } as const;
const GATE = { symbol: 'x_gate', unit: 'mm', meaning: 'plunger travel when the metal is at the gate', range: TRAVEL, domain: 'not-negative' } as const;
const CHANGE_OVER = { symbol: 'x_c', unit: 'mm', meaning: 'plunger travel at change-over', range: TRAVEL, domain: 'not-negative' } as const;
const SLOW = { symbol: 'v_s', unit: 'm/s', meaning: 'slow-shot speed', range: [0.1, 1.5], domain: 'not-negative' } as const;
const FAST = { symbol: 'v_f', unit: 'm/s', meaning: 'plunger speed of the fast shot', range: [0.5, 8] } as const;
const ACCELERATION = { symbol: 'a', unit: 'm/s2', meaning: 'acceleration to the fast speed', range: [50, 400] } as const;
const FASTER = { text: 'fast_speed >= slow_speed', holds: (x: { fast_speed: number; slow_speed: number }) => x.fast_speed >= x.slow_speed };

/** Plunger travel that closes a pour hole which begins at the plunger's start face. */
export const travelHoleClosed = defineFormula({
  id: 'slow-shot.travel-hole-closed',
  title: 'Plunger travel when the pour hole is closed',
  symbol: 'x_h',
  inputs: {
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] },
    ratio: { symbol: 'k', unit: '1', meaning: 'length of the pour hole over the plunger diameter', range: [0.5, 2] },
  },
  unit: 'mm',
  equation: 'k * D',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the hole of the sleeve at hand is measured, not estimated',
  compute: ({ diameter, ratio }) => ratio * diameter,
});

/** Speed at which the plunger closes the pour hole: no faster than keeps the metal in, nor than the slow shot. */
export const holeSpeed = defineFormula({
  id: 'slow-shot.hole-speed',
  title: 'Plunger speed when the pour hole is closed',
  symbol: 'v_h',
  inputs: {
    limit: { symbol: 'v_1', unit: 'm/s', meaning: 'greatest speed at the open pour hole', range: [0.1, 0.5] },
    speed: SLOW,
  },
  unit: 'm/s',
  equation: 'min(v_1, v_s)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a rule of thumb against metal that splashes out of the hole',
  compute: ({ limit, speed }) => Math.min(limit, speed),
});

/** Plunger travel at which the slow speed is reached: a share of the way from the closed pour hole to the full sleeve. */
export const travelRampEnd = defineFormula({
  id: 'slow-shot.travel-ramp-end',
  title: 'Plunger travel when the slow speed is reached',
  symbol: 'x_r',
  inputs: {
    hole_travel: HOLE,
    full_travel: FULL,
    share: { symbol: 's', unit: '1', meaning: 'share of the way from pour hole closed to sleeve full', range: [0.05, 1] },
  },
  unit: 'mm',
  equation: 'x_h + s * max(0, x_full - x_h)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'from the wave solution: with a quarter of the way less than 5 % of the air stays behind for fills of 30 to 70 % and pour holes at a quarter to half of the travel',
  compute: (x) => x.hole_travel + x.share * Math.max(0, x.full_travel - x.hole_travel),
});

/** Plunger travel at change-over: early enough for the fast speed at the gate, but not before the air is out. */
export const plannedChangeOver = defineFormula({
  id: 'slow-shot.change-over',
  title: 'Plunger travel at change-over, planned',
  symbol: 'x_c',
  inputs: {
    full_travel: FULL,
    wanted: { symbol: 'x_co', unit: 'mm', meaning: 'change-over that gives the fast speed at the gate', range: TRAVEL, domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'max(x_full, x_co)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'before the sleeve is full the fast shot would blow its air through the metal; set at the machine within 10 to 30 mm of this',
  compute: (x) => Math.max(x.full_travel, x.wanted),
});

/** Plunger travel at which the fast speed is reached. */
export const travelFast = defineFormula({
  id: 'slow-shot.travel-fast',
  title: 'Plunger travel when the fast speed is reached',
  symbol: 'x_v',
  inputs: { change_over: CHANGE_OVER, slow_speed: SLOW, fast_speed: FAST, acceleration: ACCELERATION },
  unit: 'mm',
  equation: 'x_c + 500 * (v_f^2 - v_s^2) / a',
  requires: [FASTER],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact for a constant acceleration',
  compute: (x) => x.change_over + (500 * (x.fast_speed ** 2 - x.slow_speed ** 2)) / x.acceleration,
});

/** Plunger travel when the cavities are full. */
export const travelFilled = defineFormula({
  id: 'slow-shot.travel-filled',
  title: 'Plunger travel when the cavities are full',
  symbol: 'x_f',
  inputs: {
    gate_travel: GATE,
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of one casting', range: [0.1, 100000] },
    overflows: { symbol: 'V_o', unit: 'cm3', meaning: 'volume of its overflows', range: [0, 10000], domain: 'not-negative', default: 0 },
    shrink: {
      symbol: 's',
      unit: '%',
      meaning: 'shrink allowance, by which the die is larger than the casting',
      range: [0, 2],
      domain: 'not-negative',
      default: 0,
    },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] },
  },
  unit: 'mm',
  equation: 'x_gate + 4000 * n * (V + V_o) * (1 + s / 100)^3 / (pi * D^2)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy:
    'exact volume balance, as good as the poured volume: cavities are full when their own volume has gone in. What freezes meanwhile shrinks and lets about one per cent more in; the rest of the liquid follows while the casting is fed',
  compute: (x) => x.gate_travel + (4000 * x.cavities * (x.volume + x.overflows) * (1 + x.shrink / 100) ** 3) / (Math.PI * x.diameter ** 2),
});

/** Plunger travel at which braking begins. */
export const travelBrake = defineFormula({
  id: 'slow-shot.travel-brake',
  title: 'Plunger travel when braking begins',
  symbol: 'x_b',
  inputs: {
    filled_travel: { symbol: 'x_f', unit: 'mm', meaning: 'plunger travel when the cavities are full', range: [40, 2000] },
    distance: { symbol: 's_b', unit: 'mm', meaning: 'braking distance', range: [1, 40], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'x_f - s_b',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => x.filled_travel - x.distance,
});

/** Plunger travel at the end: what is left of the sleeve is the biscuit. */
export const travelEnd = defineFormula({
  id: 'slow-shot.travel-end',
  title: 'Plunger travel at the end, metal pressed together',
  symbol: 'x_end',
  inputs: {
    length: { symbol: 'L', unit: 'mm', meaning: 'active length, plunger start face to parting plane', range: [100, 2000] },
    biscuit: { symbol: 'b', unit: 'mm', meaning: 'biscuit thickness', range: [5, 90] },
  },
  unit: 'mm',
  equation: 'L - b',
  requires: [{ text: 'biscuit < length', holds: (x) => x.biscuit < x.length }],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact; the dose of the ladle moves the biscuit by several millimetres',
  compute: ({ length, biscuit }) => length - biscuit,
});
