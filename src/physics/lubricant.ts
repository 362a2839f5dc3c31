import { defineFormula } from '../kernel/formula.ts';

const area = { symbol: 'A', unit: 'cm2', meaning: 'die face that is sprayed, both halves', range: [5, 100000] } as const;
const solids = { symbol: 's', unit: '%', meaning: 'active matter in the concentrate', range: [5, 100] } as const;
const efficiency = { symbol: 'eta_s', unit: '%', meaning: 'share of the spray that stays on the die', range: [5, 100] } as const;
const dilution = { symbol: 'N', unit: '1', meaning: 'parts of water to one of concentrate', range: [0, 200], domain: 'not-negative' } as const;

/** Surface of a casting that is a wall of one thickness: two faces, the edges left out. */
export const surfaceFromWall = defineFormula({
  id: 'lubricant.surface-from-wall',
  title: 'Surface of a casting by its wall',
  symbol: 'A_1',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of the casting', range: [0.1, 100000] },
    wall: { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.3, 30] },
  },
  unit: 'cm2',
  equation: '20 * V / t',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'within some 20 % for thin-walled castings; too much where thick bosses hold a good part of the volume',
  compute: ({ volume, wall }) => (20 * volume) / wall,
});

/** Die face of all cavities. */
export const sprayedArea = defineFormula({
  id: 'lubricant.sprayed-area',
  title: 'Die face that is sprayed',
  symbol: 'A',
  inputs: {
    face: { symbol: 'A_1', unit: 'cm2', meaning: 'surface of one casting', range: [1, 50000] },
    count: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
  },
  unit: 'cm2',
  equation: 'n * A_1',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'runner, overflows and biscuit are left out',
  compute: ({ face, count }) => count * face,
});

/** Concentrate that leaves a film of the thickness wanted. */
export const concentrate = defineFormula({
  id: 'lubricant.concentrate',
  title: 'Concentrate for the film',
  symbol: 'V_c',
  inputs: { area, film: { symbol: 'b', unit: 'um', meaning: 'thickness of the film', range: [0.2, 50] }, solids, efficiency },
  unit: 'ml',
  equation: 'A * b / (s * eta_s)',
  outside: 'extrapolate',
  source: ['AED-SPRAY'],
  status: 'derived',
  accuracy: 'volume balance of the film; how much of the spray stays is known to a factor of two at best',
  compute: (x) => (x.area * x.film) / (x.solids * x.efficiency),
});

/** Diluted spray from its concentrate. */
export const diluted = defineFormula({
  id: 'lubricant.diluted',
  title: 'Diluted spray',
  symbol: 'V_d',
  inputs: { concentrate: { symbol: 'V_c', unit: 'ml', meaning: 'concentrate', range: [0.001, 1000] }, dilution },
  unit: 'ml',
  equation: 'V_c * (1 + N)',
  outside: 'extrapolate',
  source: ['AED-SPRAY'],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => x.concentrate * (1 + x.dilution),
});

/** Spray planned: what the film asks for, or what the cooling asks for, whichever is more. */
export const plannedSpray = defineFormula({
  id: 'lubricant.spray',
  title: 'Diluted spray of one spraying',
  symbol: 'V_s',
  inputs: {
    film: { symbol: 'V_d', unit: 'ml', meaning: 'spray for the film', range: [0.1, 50000] },
    cooling: { symbol: 'V_k', unit: 'ml', meaning: 'spray for the cooling', range: [0, 50000], domain: 'not-negative', default: 0 },
  },
  unit: 'ml',
  equation: 'max(V_d, V_k)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule; the die trial sets the amount, and lance sprays with fixed nozzles often take several times as much',
  compute: ({ film, cooling }) => Math.max(film, cooling),
});

/** Concentrate in a spray. */
export const concentrateUsed = defineFormula({
  id: 'lubricant.concentrate-used',
  title: 'Concentrate in the spray',
  symbol: 'V_u',
  inputs: { spray: { symbol: 'V_s', unit: 'ml', meaning: 'diluted spray', range: [0.1, 50000] }, dilution },
  unit: 'ml',
  equation: 'V_s / (1 + N)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => x.spray / (1 + x.dilution),
});

/** Film that the planned spray leaves. */
export const filmLeft = defineFormula({
  id: 'lubricant.film-left',
  title: 'Film that the spray leaves',
  symbol: 'b_s',
  inputs: { concentrate: { symbol: 'V_u', unit: 'ml', meaning: 'concentrate in the spray', range: [0.001, 1000] }, area, solids, efficiency },
  unit: 'um',
  equation: 'V_u * s * eta_s / A',
  outside: 'extrapolate',
  source: ['AED-SPRAY'],
  status: 'derived',
  accuracy: 'mean over the face; a spray that cools a core leaves several times as much there',
  compute: (x) => (x.concentrate * x.solids * x.efficiency) / x.area,
});

/** What is used up in one hour of running. */
export const hourly = defineFormula({
  id: 'lubricant.hourly',
  title: 'Used in an hour',
  symbol: 'V_h',
  inputs: {
    each: { symbol: 'V_1', unit: 'ml', meaning: 'used at one spraying', range: [0.001, 50000] },
    shots: { symbol: 'n_h', unit: '1/h', meaning: 'shots an hour', range: [1, 2000] },
    interval: { symbol: 'k', unit: '1', meaning: 'shots from one spraying to the next', range: [1, 10], default: 1 },
  },
  unit: 'l',
  equation: 'V_1 * n_h / k / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; without stops and without the blow-out of the lines',
  compute: (x) => (x.each * x.shots) / x.interval / 1000,
});

/** Flow of the spray while it is on. */
export const sprayFlow = defineFormula({
  id: 'lubricant.flow',
  title: 'Flow while spraying',
  symbol: 'q_s',
  inputs: {
    spray: { symbol: 'V_s', unit: 'ml', meaning: 'diluted spray of one spraying', range: [0.1, 50000] },
    time: { symbol: 't_s', unit: 's', meaning: 'time that the spray is on', range: [0.2, 120] },
  },
  unit: 'l/min',
  equation: '60 * V_s / 1000 / t_s',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'mean over the spray time; blowing off counts in neither',
  compute: ({ spray, time }) => (60 * spray) / 1000 / time,
});

/** Water-free lubricant in place of a water-based one. */
export const waterFree = defineFormula({
  id: 'lubricant.water-free',
  title: 'Water-free lubricant instead, at least',
  symbol: 'V_w',
  inputs: {
    spray: { symbol: 'V_s', unit: 'ml', meaning: 'diluted water-based spray', range: [0.1, 50000] },
    ratio: { symbol: 'r_w', unit: '1', meaning: 'water-based spray over water-free lubricant', range: [10, 1000] },
  },
  unit: 'ml',
  equation: 'V_s / r_w',
  outside: 'extrapolate',
  source: ['FTJ-WATER-FREE'],
  status: 'derived',
  accuracy: 'the least that a supplier claims; it takes no heat from the die',
  compute: ({ spray, ratio }) => spray / ratio,
});
