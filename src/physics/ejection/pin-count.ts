import { defineFormula } from '../../kernel/formula.ts';

/** A quotient that is whole but for the last bits is that whole number. */
const SLACK = 1e-9;

/** Distance from pin to pin at which the casting does not bend between them. */
export const pinSpacing = defineFormula({
  id: 'ejection.pin-spacing',
  title: 'Distance from pin to pin',
  symbol: 's',
  inputs: {
    wall: { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.5, 25] },
    ratio: { symbol: 'r', unit: '1', meaning: 'distance over wall', range: [5, 60] },
    least: { symbol: 's_0', unit: 'mm', meaning: 'least distance', range: [5, 40] },
    greatest: { symbol: 's_1', unit: 'mm', meaning: 'greatest distance', range: [40, 200] },
  },
  unit: 'mm',
  equation: 'max(s_0, min(s_1, r * t))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'planning rule of ours: a thin hot wall bends between pins that stand far apart',
  compute: (x) => Math.max(x.least, Math.min(x.greatest, x.ratio * x.wall)),
});

/** Pins along the outline of the casting. */
export const pinsByOutline = defineFormula({
  id: 'ejection.pins-by-outline',
  title: 'Pins along the outline',
  symbol: 'n_u',
  inputs: {
    outline: { symbol: 'U', unit: 'mm', meaning: 'outline of the casting at the parting plane', range: [20, 10000] },
    spacing: { symbol: 's', unit: 'mm', meaning: 'distance from pin to pin', range: [5, 200] },
  },
  unit: '1',
  equation: 'ceil(U / s)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'pins stand where there is a rim, boss or rib to push on, so the real distances differ',
  compute: ({ outline, spacing }) => Math.ceil((outline / spacing) * (1 - SLACK)),
});

/** Pins over the area of the casting. */
export const pinsByArea = defineFormula({
  id: 'ejection.pins-by-area',
  title: 'Pins over the area',
  symbol: 'n_a',
  inputs: {
    area: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the casting', range: [0.5, 20000] },
    spacing: { symbol: 's', unit: 'mm', meaning: 'distance from pin to pin', range: [5, 200] },
    field: { symbol: 'q', unit: '1', meaning: 'area to a pin over the square of the distance', range: [1, 10] },
  },
  unit: '1',
  equation: 'ceil(100 * A_p / (q * s^2))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'planning rule of ours for wide castings, whose middle needs pins too',
  compute: ({ area, spacing, field }) => Math.ceil(((100 * area) / (field * spacing ** 2)) * (1 - SLACK)),
});

/** Pins that carry the force without marking the casting. */
export const pinsByForce = defineFormula({
  id: 'ejection.pins-by-force',
  title: 'Pins for the force',
  symbol: 'n_f',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force of one casting', range: [0, 3000], domain: 'not-negative' },
    pressure: { symbol: 'p_a', unit: 'MPa', meaning: 'pressure allowed on the casting', range: [10, 120] },
    diameter: { symbol: 'd', unit: 'mm', meaning: 'pin diameter', range: [0.5, 40] },
  },
  unit: '1',
  equation: 'ceil(4000 * F / (pi * d^2 * p_a))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for pins that share the force evenly; the pressure allowed is remembered',
  compute: ({ force, pressure, diameter }) => Math.ceil(((4000 * force) / (Math.PI * diameter ** 2 * pressure)) * (1 - SLACK)),
});

/** All pins of a die: under the castings, their overflows, the runner and the feeder. */
export const pinTotal = defineFormula({
  id: 'ejection.pin-total',
  title: 'Ejector pins of the die',
  symbol: 'N',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    casting: { symbol: 'n_c', unit: '1', meaning: 'pins under one casting, or under all of a set', range: [1, 2000] },
    overflows: { symbol: 'n_o', unit: '1', meaning: 'overflows of one cavity, or of a set', range: [0, 500], domain: 'not-negative' },
    overflow_pins: { symbol: 'k_o', unit: '1', meaning: 'pins on one overflow', range: [0, 2], domain: 'not-negative' },
    runner_pins: { symbol: 'k_r', unit: '1', meaning: 'pins on the runner of one cavity, or of a set', range: [0, 500], domain: 'not-negative' },
    feeder_pins: { symbol: 'k_f', unit: '1', meaning: 'pins on biscuit or sprue', range: [0, 6], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'n * (n_c + n_o * k_o + k_r) + k_f',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a count for the price and the room of the die; the die maker places the pins',
  compute: (x) => x.cavities * (x.casting + x.overflows * x.overflow_pins + x.runner_pins) + x.feeder_pins,
});
