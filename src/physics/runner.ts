import { defineFormula } from '../kernel/formula.ts';

const RADIANS = Math.PI / 180;

const SECTION = {
  width_least: { symbol: 'r_1', unit: '1', meaning: 'width over depth of the trapezoid, low end', range: [1.5, 3] },
  width_greatest: { symbol: 'r_2', unit: '1', meaning: 'width over depth of the trapezoid, high end', range: [1.6, 4] },
  wall_draft: { symbol: 'a', unit: 'deg', meaning: 'draft of the side walls of the runner', range: [5, 20], domain: 'not-negative' },
} as const;

interface SectionNumbers {
  readonly width_least: number;
  readonly width_greatest: number;
  readonly wall_draft: number;
}

const meanRatio = (x: SectionNumbers): number => (x.width_least + x.width_greatest) / 2;
/** A trapezoid as wide as deep times the ratio, at its open side, has this times the depth squared. */
const shape = (x: SectionNumbers): number => meanRatio(x) - Math.tan(x.wall_draft * RADIANS);
const OPEN_SECTION = { text: 'side walls that do not meet', holds: (x: SectionNumbers) => x.wall_draft < 45 && shape(x) > 0 };

/** Area of the runner of one cavity where it enters the gate: the middle of the usual multiples of the gate area. */
export const runnerArea = defineFormula({
  id: 'runner.area',
  title: 'Runner area at the gate',
  symbol: 'A_r',
  inputs: {
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [1, 20000] },
    ratio_least: { symbol: 'k_1', unit: '1', meaning: 'runner area over gate area, low end', range: [1, 2] },
    ratio_greatest: { symbol: 'k_2', unit: '1', meaning: 'runner area over gate area, high end', range: [1, 2] },
  },
  unit: 'mm2',
  equation: 'A_g * (k_1 + k_2) / 2',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'at the gate entry only; towards biscuit or sprue the area grows by 10 to 30 % a stage',
  compute: (x) => (x.gate_area * (x.ratio_least + x.ratio_greatest)) / 2,
});

/** Depth of a trapezoidal runner of a given area, its width the middle of the usual multiples of the depth. */
export const runnerDepth = defineFormula({
  id: 'runner.depth',
  title: 'Runner depth',
  symbol: 'd_r',
  inputs: { area: { symbol: 'A_r', unit: 'mm2', meaning: 'runner area', range: [1, 30000] }, ...SECTION },
  unit: 'mm',
  equation: 'sqrt(A_r / ((r_1 + r_2) / 2 - tan(a * pi / 180)))',
  requires: [OPEN_SECTION],
  outside: 'extrapolate',
  source: ['KB-GATING runner'],
  status: 'derived',
  accuracy: 'exact geometry without the floor radius; a fan gate flattens towards the gate, to 2 to 4 times the gate thickness',
  compute: (x) => Math.sqrt(x.area / shape(x)),
});

/** Width of the runner at the parting plane. */
export const runnerWidth = defineFormula({
  id: 'runner.width',
  title: 'Runner width',
  symbol: 'w_r',
  inputs: {
    depth: { symbol: 'd_r', unit: 'mm', meaning: 'runner depth', range: [0.5, 60] },
    width_least: SECTION.width_least,
    width_greatest: SECTION.width_greatest,
  },
  unit: 'mm',
  equation: 'd_r * (r_1 + r_2) / 2',
  outside: 'extrapolate',
  source: ['KB-GATING runner'],
  status: 'derived',
  accuracy: 'exact for the ratio taken',
  compute: (x) => (x.depth * (x.width_least + x.width_greatest)) / 2,
});

/** Volume of the runner of one cavity from its projected area and depth. The bracket is trapezoid over rectangle. */
export const runnerVolume = defineFormula({
  id: 'runner.volume',
  title: 'Runner volume of one cavity',
  symbol: 'V_r',
  inputs: {
    casting_area: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the casting', range: [0.5, 20000] },
    area_share: { symbol: 's_r', unit: '%', meaning: 'projected area of the runner as a share of the casting', range: [10, 50] },
    depth: { symbol: 'd_r', unit: 'mm', meaning: 'runner depth', range: [0.5, 60] },
    ...SECTION,
  },
  unit: 'cm3',
  equation: 'A_p * s_r / 100 * d_r / 10 * (1 - tan(a * pi / 180) / ((r_1 + r_2) / 2))',
  requires: [OPEN_SECTION],
  outside: 'extrapolate',
  source: ['IDEALHARD-TONNAGE', 'KB-GATING runner'],
  status: 'derived',
  accuracy:
    'an estimate before the runner is drawn, easily off by half: the area share is a range of one to two, and the runner deepens towards biscuit or sprue',
  compute: (x) => (((x.casting_area * x.area_share) / 100) * x.depth * (1 - Math.tan(x.wall_draft * RADIANS) / meanRatio(x))) / 10,
});

/** Projected area of a runner that is laid out, as the share of the casting that the locking force counts. */
export const runnerLayoutShare = defineFormula({
  id: 'runner.layout-share',
  title: 'Projected area of the runner by its layout, share of the casting',
  symbol: 's_r',
  inputs: {
    area: { symbol: 'A_r', unit: 'cm2', meaning: 'projected area of the runner of one cavity', range: [0, 5000], domain: 'not-negative' },
    casting_area: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the casting', range: [0.5, 20000] },
  },
  unit: '%',
  equation: '100 * A_r / A_p',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the layout: before the die is drawn, to a third',
  compute: ({ area, casting_area }) => (100 * area) / casting_area,
});

/** Share of one cavity in the runner of the shot. */
export const runnerEachVolume = defineFormula({
  id: 'runner.each-volume',
  title: 'Runner of the shot, share of one cavity',
  symbol: 'V_r',
  inputs: {
    volume: { symbol: 'V_R', unit: 'cm3', meaning: 'runner of the shot, run by run', range: [0, 20000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
  },
  unit: 'cm3',
  equation: 'V_R / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the layout: before the die is drawn, to a third',
  compute: ({ volume, cavities }) => volume / cavities,
});

/** The same of its projected area. */
export const runnerEachProjected = defineFormula({
  id: 'runner.each-projected',
  title: 'Projected area of the runner of the shot, share of one cavity',
  symbol: 'A_r',
  inputs: {
    area: { symbol: 'A_R', unit: 'cm2', meaning: 'projected area of the runner of the shot', range: [0, 20000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
  },
  unit: 'cm2',
  equation: 'A_R / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the layout: before the die is drawn, to a third',
  compute: ({ area, cavities }) => area / cavities,
});

/** Volume of all runners of the shot. */
export const runnerTotalVolume = defineFormula({
  id: 'runner.total-volume',
  title: 'Runner volume of the shot',
  symbol: 'V_R',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    volume: { symbol: 'V_r', unit: 'cm3', meaning: 'runner volume of one cavity', range: [0, 5000], domain: 'not-negative' },
  },
  unit: 'cm3',
  equation: 'n * V_r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'counts a runner of its own for every cavity; a shared main runner saves some of it',
  compute: ({ cavities, volume }) => cavities * volume,
});

/** Runner and biscuit of one cavity by the wall, after a textbook: a check on the estimate from the area. */
export const runnerHandbookVolume = defineFormula({
  id: 'runner.handbook-volume',
  title: 'Runner with biscuit of one cavity, by the wall',
  symbol: 'V_f',
  inputs: {
    part_volume: { symbol: 'V_p', unit: 'cm3', meaning: 'volume of the casting', range: [0.1, 50000] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'mean wall', range: [0.5, 10] },
  },
  unit: 'cm3',
  equation: 'V_p / h',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered fit of a textbook over many dies; the millimetre of the wall is carried by the constant 1 mm',
  compute: ({ part_volume, wall }) => part_volume / wall,
});
