import { defineFormula } from '../kernel/formula.ts';

/** Part of the dry cycle that one movement takes. */
export const dryPart = defineFormula({
  id: 'cycle.dry-part',
  title: 'Movement of the machine, part of the dry cycle',
  symbol: 't',
  inputs: {
    dry_cycle: { symbol: 't_d', unit: 's', meaning: 'cycle of the machine without metal', range: [0.5, 40] },
    share: { symbol: 's', unit: '%', meaning: 'share of the movement', range: [1, 80] },
  },
  unit: 's',
  equation: 't_d * s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the dry cycle is that of the machine at its own stroke; a shorter opening takes less, a heavy die more',
  compute: ({ dry_cycle, share }) => (dry_cycle * share) / 100,
});

/** Side of the rectangle around all castings of the shot and their feeder. */
export const shotSide = defineFormula({
  id: 'cycle.shot-side',
  title: 'Side of the whole shot',
  symbol: 'L',
  inputs: {
    block: { symbol: 'b', unit: 'mm', meaning: 'side of the die block', range: [150, 2500] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel from the outer cavity to the edge of the block', range: [20, 300] },
  },
  unit: 'mm',
  equation: 'b - 2 * s',
  requires: [{ text: 'a block wider than the steel at its edges', holds: ({ block, steel }) => block > 2 * steel }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the layout planned; overflows reach a little further',
  compute: ({ block, steel }) => block - 2 * steel,
});

const WIDTH = { symbol: 'W', unit: 'mm', meaning: 'width of the rectangle around the whole shot', range: [20, 2000] } as const;
const LENGTH = { symbol: 'L', unit: 'mm', meaning: 'length of the rectangle around the whole shot', range: [20, 2000] } as const;
const PULLS = { symbol: 'n_s', unit: '1', meaning: 'core pulls of the die, those of all cavities', range: [0, 8], domain: 'not-negative', default: 0 } as const;

/** Time to grip the shot and take it out of the die, by its size. */
export const extractionTime = defineFormula({
  id: 'cycle.extraction',
  title: 'Time to take the shot out',
  symbol: 't_x',
  inputs: { width: WIDTH, length: LENGTH },
  unit: 's',
  equation: 'W + L > 250 ? 1 + 0.008 * (W + L) : 3',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered with medium confidence from a textbook on design for manufacture; by hand or robot, nothing else in it',
  compute: ({ width, length }) => (width + length > 250 ? 1 + 0.008 * (width + length) : 3),
});

/** Time of one spraying of the die by the area of the shot, and a second for each core pull. */
export const sprayRule = defineFormula({
  id: 'cycle.spray-rule',
  title: 'Time of one spraying by the size of the shot',
  symbol: 't_s',
  inputs: { width: WIDTH, length: LENGTH, core_pulls: PULLS },
  unit: 's',
  equation: '(W + L > 250 ? 1.5 + 0.006 * (W + L) : 3) + n_s',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered with low confidence from a textbook on design for manufacture; hand-held spray guns of its time, no cooling of the die by the spray',
  compute: ({ width, length, core_pulls }) => (width + length > 250 ? 1.5 + 0.006 * (width + length) : 3) + core_pulls,
});

/** The other form of the spraying time that is remembered: by the size class, the cavities and the core pulls. */
export const sprayOther = defineFormula({
  id: 'cycle.spray-other',
  title: 'Time of one spraying by cavities, cross-check',
  symbol: 't_o',
  inputs: {
    base: { symbol: 't_1', unit: 's', meaning: 'one cavity of the size class', range: [1, 10] },
    each: { symbol: 'd', unit: 's', meaning: 'each further cavity', range: [0.5, 5] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 16] },
    core_pulls: PULLS,
  },
  unit: 's',
  equation: 't_1 + d * (n - 1) + n_s',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered with low confidence; the size classes are not defined in what is remembered',
  compute: ({ base, each, cavities, core_pulls }) => base + each * (cavities - 1) + core_pulls,
});

/** Time of one spraying to plan with: by the rule, and no shorter than the trade sprays on machines of the size. */
export const sprayEach = defineFormula({
  id: 'cycle.spray-each',
  title: 'Time of one spraying, planned',
  symbol: 't_1',
  inputs: {
    rule: { symbol: 't_s', unit: 's', meaning: 'time by the size of the shot', range: [1, 30] },
    least: { symbol: 't_m', unit: 's', meaning: 'least of the trade for the size of the machine', range: [0.3, 20] },
  },
  unit: 's',
  equation: 'max(t_s, t_m)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule; spray maps of the trial replace it',
  compute: ({ rule, least }) => Math.max(rule, least),
});

/** What an action that is not done at every shot costs each shot. */
export const perShot = defineFormula({
  id: 'cycle.per-shot',
  title: 'Time for each shot of an action that is not done every time',
  symbol: 't',
  inputs: {
    each: { symbol: 't_1', unit: 's', meaning: 'time when it is done', range: [0.1, 60] },
    interval: { symbol: 'n', unit: '1', meaning: 'shots from one time to the next', range: [1, 10] },
  },
  unit: 's',
  equation: 't_1 / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'an average: the shot at which it is done takes longer, the others less',
  compute: ({ each, interval }) => each / interval,
});

/** Time of one hydraulic core from one end of its stroke to the other, with valve and switch. */
export const corePull = defineFormula({
  id: 'cycle.core-pull',
  title: 'Time of a hydraulic core, one way',
  symbol: 't',
  inputs: {
    stroke: { symbol: 's', unit: 'mm', meaning: 'stroke of the core', range: [3, 500] },
    speed: { symbol: 'v', unit: 'mm/s', meaning: 'speed of the core', range: [10, 300] },
    switching: { symbol: 't_v', unit: 's', meaning: 'time of valve and limit switch', range: [0, 3], domain: 'not-negative' },
  },
  unit: 's',
  equation: 's / v + t_v',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'constant speed; as good as the speed, which the core circuit of the machine and the size of the cylinder set',
  compute: ({ stroke, speed, switching }) => stroke / speed + switching,
});

/** Time to place the inserts of a shot in the open die. */
export const insertLoading = defineFormula({
  id: 'cycle.insert-loading',
  title: 'Time to place the inserts',
  symbol: 't_i',
  inputs: {
    reach: { symbol: 't_r', unit: 's', meaning: 'reaching into the die and leaving it, once a shot', range: [0.5, 20] },
    each: { symbol: 't_1', unit: 's', meaning: 'placing one insert', range: [0.5, 20] },
    inserts: { symbol: 'n_i', unit: '1', meaning: 'inserts of one casting', range: [1, 50] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 16] },
  },
  unit: 's',
  equation: 't_r + t_1 * n_i * n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'one after the other; a gripper that holds all of them places them at once',
  compute: ({ reach, each, inserts, cavities }) => reach + each * inserts * cavities,
});

/** What is left of ladling on the way of the cycle when the ladle dips while the die is open. */
export const pourTime = defineFormula({
  id: 'cycle.pour',
  title: 'Time to pour',
  symbol: 't_p',
  inputs: {
    ladle: { symbol: 't_l', unit: 's', meaning: 'dipping, carrying and pouring together', range: [1, 60] },
    share: { symbol: 's', unit: '%', meaning: 'share of pouring in it', range: [10, 100] },
  },
  unit: 's',
  equation: 't_l * s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share of pouring, which is a guess',
  compute: ({ ladle, share }) => (ladle * share) / 100,
});

/** The rest of ladling, which runs beside the way of the cycle. */
export const dipTime = defineFormula({
  id: 'cycle.dip',
  title: 'Time to dip and carry',
  symbol: 't_d',
  inputs: {
    ladle: { symbol: 't_l', unit: 's', meaning: 'dipping, carrying and pouring together', range: [1, 60] },
    pour: { symbol: 't_p', unit: 's', meaning: 'pouring', range: [0.5, 60] },
  },
  unit: 's',
  equation: 't_l - t_p',
  requires: [{ text: 'pouring that is no longer than ladling', holds: ({ ladle, pour }) => pour <= ladle }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact difference',
  compute: ({ ladle, pour }) => ladle - pour,
});
