import { defineFormula } from '../kernel/formula.ts';

/** Share that a part of the cycle has in the whole. */
export const cycleShare = defineFormula({
  id: 'cycle.share',
  title: 'Share of the cycle',
  symbol: 's',
  inputs: {
    part: { symbol: 't', unit: 's', meaning: 'time of the part', range: [0, 200], domain: 'not-negative' },
    whole: { symbol: 't_e', unit: 's', meaning: 'sum of the elements', range: [2, 600] },
  },
  unit: '%',
  equation: '100 * t / t_e',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ part, whole }) => (100 * part) / whole,
});

/** How many more castings an hour a shorter cycle gives. */
export const cycleGain = defineFormula({
  id: 'cycle.gain',
  title: 'More castings an hour for time saved',
  symbol: 'g',
  inputs: {
    time: { symbol: 't_c', unit: 's', meaning: 'cycle time before', range: [3, 600] },
    saved: { symbol: 'd', unit: 's', meaning: 'time saved', range: [0.1, 2.5], default: 1 },
  },
  unit: '%',
  equation: '100 * d / (t_c - d)',
  requires: [{ text: 'less saved than the cycle takes', holds: ({ time, saved }) => saved < time }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact where the element saved lies on the way of the cycle',
  compute: ({ time, saved }) => (100 * saved) / (time - saved),
});

/** Cooling time of a textbook, the form that goes with the wall. */
export const textbookCooling = defineFormula({
  id: 'cycle.textbook-cooling',
  title: 'Cooling time by a textbook, with the wall',
  symbol: 't_k',
  inputs: {
    constant: { symbol: 'b', unit: 's/mm', meaning: 'cooling time over wall, of the family', range: [0.2, 0.8] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'greatest wall', range: [0.5, 15] },
    surface_ratio: { symbol: 'k', unit: '1', meaning: 'cavity surface over projected area, 1 for a flat part', range: [1, 10], default: 1 },
  },
  unit: 's',
  equation: 'b * h * sqrt(k)',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered in two forms, with the wall and with its square; physics is on the side of the square, so this is the short end',
  compute: ({ constant, wall, surface_ratio }) => constant * wall * Math.sqrt(surface_ratio),
});

/** Cycle by a textbook: the sum of its rules. */
export const textbookCycle = defineFormula({
  id: 'cycle.textbook',
  title: 'Cycle by a textbook, cross-check',
  symbol: 't_b',
  inputs: {
    ladle: { symbol: 't_l', unit: 's', meaning: 'ladling, cold chamber', range: [0, 60], domain: 'not-negative', default: 0 },
    fill: { symbol: 't_f', unit: 's', meaning: 'filling', range: [0.001, 1] },
    cooling: { symbol: 't_k', unit: 's', meaning: 'cooling', range: [0.2, 100] },
    extraction: { symbol: 't_x', unit: 's', meaning: 'taking the shot out', range: [1, 30] },
    lubrication: { symbol: 't_s', unit: 's', meaning: 'spraying once', range: [1, 30] },
    interval: { symbol: 'n', unit: '1', meaning: 'shots from one spraying to the next', range: [1, 10] },
    dry_cycle: { symbol: 't_d', unit: 's', meaning: 'dry cycle of the machine', range: [0.5, 40] },
  },
  unit: 's',
  equation: 't_l + t_f + t_k + t_x + t_s / n + t_d',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'a check value: rules remembered from a textbook on design for manufacture, added up as it does; no slow shot, no blow-off, no waits',
  compute: (x) => x.ladle + x.fill + x.cooling + x.extraction + x.lubrication / x.interval + x.dry_cycle,
});
