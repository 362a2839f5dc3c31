import { defineFormula } from '../kernel/formula.ts';

/** What slides take at the ends of the die along an axis; the low end is at the left or below. */
const SLIDES = {
  low: { symbol: 'r_1', unit: 'mm', meaning: 'room of the slides at the low end', range: [0, 1500], domain: 'not-negative', default: 0 },
  room: { symbol: 'r', unit: 'mm', meaning: 'room of the slides at both ends', range: [0, 3000], domain: 'not-negative', default: 0 },
  overhang: { symbol: 'o', unit: 'mm', meaning: 'of that, what hangs out of the die', range: [0, 3000], domain: 'not-negative', default: 0 },
} as const;
const PART_OF_BOTH = {
  text: 'no more room at one end than at both',
  holds: (x: { readonly low: number; readonly room: number }) => x.low <= x.room + 1e-9,
};

/** Middle of the castings in the die, from the middle of the die face towards its high end: to the right, or up. */
export const castingsInDie = defineFormula({
  id: 'clamp.castings-in-die',
  title: 'Middle of the castings, off the middle of the die',
  symbol: 'y_d',
  inputs: {
    size: { symbol: 'W', unit: 'mm', meaning: 'die along this axis', range: [100, 4000] },
    field: { symbol: 'B', unit: 'mm', meaning: 'field of the castings', range: [5, 3500] },
    side: { symbol: 's', unit: 'mm', meaning: 'steel at the low end, with what feeds there', range: [10, 1500] },
    ...SLIDES,
  },
  unit: 'mm',
  equation: 's + B / 2 - W / 2 + (r > 0 ? r_1 * (1 - o / r) : 0)',
  requires: [PART_OF_BOTH],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the layout of the die; what hangs out is shared as the rooms are',
  compute: (x) => x.side + x.field / 2 - x.size / 2 + (x.room > 0 ? x.low * (1 - x.overhang / x.room) : 0),
});

/** The same across, where the steel at both sides is the same and only the slides make the die one-sided. */
export const castingsAcross = defineFormula({
  id: 'clamp.castings-across',
  title: 'Middle of the castings across, off the middle of the die',
  symbol: 'x_d',
  inputs: {
    ...SLIDES,
  },
  unit: 'mm',
  equation: 'r > 0 ? (r_1 - r / 2) * (1 - o / r) : 0',
  requires: [PART_OF_BOTH],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the layout of the die',
  compute: (x) => (x.room > 0 ? (x.low - x.room / 2) * (1 - x.overhang / x.room) : 0),
});

/** A point of the die face on the platen, when the die hangs so that it comes as near the middle as the room between the bars allows. */
export const onPlaten = defineFormula({
  id: 'clamp.on-platen',
  title: 'Off the middle of the platen',
  symbol: 'y_0',
  inputs: {
    offset: { symbol: 'y_d', unit: 'mm', meaning: 'off the middle of the die', range: [-1500, 1500], domain: 'any' },
    bars: { symbol: 'a', unit: 'mm', meaning: 'clear distance between the tie bars', range: [150, 3000] },
    size: { symbol: 'W', unit: 'mm', meaning: 'die along this axis', range: [100, 4000] },
  },
  unit: 'mm',
  equation: 'sign(y_d) * max(0, abs(y_d) - max(0, a - W) / 2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a die that hangs as it is best; the places where the machine can shoot may forbid it',
  compute: ({ offset, bars, size }) => Math.sign(offset) * Math.max(0, Math.abs(offset) - Math.max(0, bars - size) / 2),
});

/** Projected area of the runner of all castings. */
export const runnerArea = defineFormula({
  id: 'clamp.runner-area',
  title: 'Projected area of the runner',
  symbol: 'A_r',
  inputs: {
    casting_area: { symbol: 'A_1', unit: 'cm2', meaning: 'projected area of one casting', range: [0.5, 20000] },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of castings', range: [1, 64] },
    share: { symbol: 's_r', unit: '%', meaning: 'runner, share of the castings', range: [0, 400], domain: 'not-negative' },
  },
  unit: 'cm2',
  equation: 'n * A_1 * s_r / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share',
  compute: (x) => (x.cavities * x.casting_area * x.share) / 100,
});

/** Middle of the runner below the middle of the castings: half way from the biscuit to the castings' edge. */
export const runnerDistance = defineFormula({
  id: 'clamp.runner-distance',
  title: 'Middle of the runner, below the middle of the castings',
  symbol: 'y_r',
  inputs: {
    distance: { symbol: 'y', unit: 'mm', meaning: 'distance of the feeder from the middle of the castings', range: [0, 2000], domain: 'not-negative' },
    field: { symbol: 'B', unit: 'mm', meaning: 'height of the field of the castings', range: [5, 3500] },
  },
  unit: 'mm',
  equation: 'y > 0 ? (y + min(B / 2, y)) / 2 : 0',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the runner lies between biscuit and castings; branches between rows lie nearer to the middle, so it is rather too far',
  compute: ({ distance, field }) => (distance > 0 ? (distance + Math.min(field / 2, distance)) / 2 : 0),
});

/** Pressure centre of the shot in the die, upright from its middle: castings, runner and biscuit. */
export const pressureInDie = defineFormula({
  id: 'clamp.pressure-in-die',
  title: 'Pressure centre, above the middle of the die',
  symbol: 'e_d',
  inputs: {
    castings_offset: {
      symbol: 'y_d',
      unit: 'mm',
      meaning: 'middle of the castings, above the middle of the die',
      range: [-1000, 1000],
      domain: 'any',
      default: 0,
    },
    feeder_diameter: {
      symbol: 'd',
      unit: 'mm',
      meaning: 'biscuit or sprue diameter at the parting plane',
      range: [0, 250],
      domain: 'not-negative',
      default: 0,
    },
    distance: {
      symbol: 'y',
      unit: 'mm',
      meaning: 'distance of the feeder from the middle of the castings',
      range: [0, 2000],
      domain: 'not-negative',
      default: 0,
    },
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of the whole shot', range: [1, 30000] },
    runner_area: { symbol: 'A_r', unit: 'cm2', meaning: 'projected area of the runner', range: [0, 10000], domain: 'not-negative', default: 0 },
    runner_distance: {
      symbol: 'y_r',
      unit: 'mm',
      meaning: 'middle of the runner below that of the castings',
      range: [0, 2000],
      domain: 'not-negative',
      default: 0,
    },
    centre: {
      symbol: 'c',
      unit: 'mm',
      meaning: 'pressure centre of castings of several parts, above their middle',
      range: [-2000, 2000],
      domain: 'any',
      default: 0,
    },
    castings: { symbol: 'A_c', unit: 'cm2', meaning: 'projected area of these castings', range: [0, 20000], domain: 'not-negative', default: 0 },
  },
  unit: 'mm',
  equation: 'y_d + (c * A_c - pi * d^2 / 400 * y - A_r * y_r) / A',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'first moments of castings, runner and biscuit; castings of one part are taken to press in the middle of their field',
  compute: (x) =>
    x.castings_offset + (x.centre * x.castings - ((Math.PI * x.feeder_diameter ** 2) / 400) * x.distance - x.runner_area * x.runner_distance) / x.area,
});

/** Pressure centre of castings of several parts across, where the shot axis of the machine stands in the middle. */
export const pressureAcross = defineFormula({
  id: 'set.offset',
  title: 'Pressure centre of the shot, off the middle across',
  symbol: 'e_x',
  inputs: {
    castings_offset: {
      symbol: 'x_0',
      unit: 'mm',
      meaning: 'middle of the castings, off the middle of the platen',
      range: [-1000, 1000],
      domain: 'any',
      default: 0,
    },
    centre: { symbol: 'c', unit: 'mm', meaning: 'pressure centre of the castings, off their middle', range: [-2000, 2000], domain: 'any' },
    castings: { symbol: 'A_c', unit: 'cm2', meaning: 'projected area of all castings', range: [0.5, 20000] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of the whole shot', range: [1, 30000] },
  },
  unit: 'mm',
  equation: 'x_0 + c * A_c / A',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'first moment of the areas; runner and biscuit are taken to lie about the middle',
  compute: (x) => x.castings_offset + (x.centre * x.castings) / x.area,
});

/** How far below the middle of the platen the biscuit stands, in a die that hangs so: the place where the machine must shoot. */
export const feederBelow = defineFormula({
  id: 'clamp.feeder-below',
  title: 'Biscuit below the middle of the platen',
  symbol: 'y_f',
  inputs: {
    distance: { symbol: 'y', unit: 'mm', meaning: 'distance of the feeder from the middle of the castings', range: [0, 2000], domain: 'not-negative' },
    castings_offset: { symbol: 'y_d', unit: 'mm', meaning: 'middle of the castings, above the middle of the die', range: [-1000, 1000], domain: 'any' },
    in_die: { symbol: 'e_d', unit: 'mm', meaning: 'pressure centre, above the middle of the die', range: [-1500, 1500], domain: 'any' },
    offset: { symbol: 'e_0', unit: 'mm', meaning: 'pressure centre, above the middle of the platen', range: [-1500, 1500], domain: 'any' },
  },
  unit: 'mm',
  equation: 'y - y_d + e_d - e_0',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'machines shoot in the middle and at a few places below it: take the nearest one, and reckon the offset anew',
  compute: (x) => x.distance - x.castings_offset + x.in_die - x.offset,
});
