import { defineFormula } from '../kernel/formula.ts';

/** Handbook form: a constant of the family times the wall squared, from the full cavity to ejection. */
export const handbookTime = defineFormula({
  id: 'cooling.handbook-time',
  title: 'Cooling time by the handbook form',
  symbol: 't_b',
  inputs: {
    beta: { symbol: 'beta', unit: 's/mm2', meaning: 'constant of the family', range: [0.2, 0.8] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'wall', range: [0.5, 20] },
  },
  unit: 's',
  equation: 'beta * h^2',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered constants; the square of the wall holds where conduction governs, thin walls go nearer with the wall itself',
  compute: ({ beta, wall }) => beta * wall ** 2,
});

/** Wall that cools as a disc does: twice the volume over the surface, both faces and the rim. */
export const discWall = defineFormula({
  id: 'cooling.disc-wall',
  title: 'Wall that a disc counts as',
  symbol: 'h_e',
  inputs: {
    thickness: { symbol: 'b', unit: 'mm', meaning: 'thickness of the disc', range: [2, 150] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the disc', range: [15, 250] },
  },
  unit: 'mm',
  equation: 'b * D / (D + 2 * b)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'equal volume over surface (the modulus of founders); the middle of a short cylinder freezes a little sooner than that of such a wall',
  compute: ({ thickness, diameter }) => (thickness * diameter) / (diameter + 2 * thickness),
});

/** Wall that cools as a bar of a rectangular section does: twice the section over its perimeter. */
export const barWall = defineFormula({
  id: 'cooling.bar-wall',
  title: 'Wall that a bar counts as',
  symbol: 'h_e',
  inputs: {
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the section', range: [1, 80] },
    width: { symbol: 'w', unit: 'mm', meaning: 'width of the section', range: [1, 200] },
  },
  unit: 'mm',
  equation: 'd * w / (d + w)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'equal section over perimeter; the slope of the sides is left out',
  compute: ({ depth, width }) => (depth * width) / (depth + width),
});

/** Wall of the sprue of a hot chamber at its foot, where it is a shell between its bush and the spreader. */
export const sprueShell = defineFormula({
  id: 'cooling.sprue-shell',
  title: 'Wall of the sprue around its spreader',
  symbol: 'h_s',
  inputs: {
    foot: { symbol: 'A_f', unit: 'cm2', meaning: 'circle that the foot covers, spreader included', range: [0.5, 200] },
    area: { symbol: 'A_m', unit: 'mm2', meaning: 'area of the metal at the foot', range: [5, 10000] },
  },
  unit: 'mm',
  equation: 'sqrt(100 * A_f / pi) - sqrt((100 * A_f - A_m) / pi)',
  requires: [{ text: 'a foot no smaller than the metal in it', holds: ({ foot, area }) => 100 * foot >= area }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a round foot; towards the nozzle the spreader must follow, or the sprue is thicker there and takes longer',
  compute: ({ foot, area }) => Math.sqrt((100 * foot) / Math.PI) - Math.sqrt((100 * foot - area) / Math.PI),
});

/** Freezing time between two faces that take heat at different paces: the fronts, each with the root of time, meet off the middle. */
export const betweenFaces = defineFormula({
  id: 'cooling.between-faces',
  title: 'Time to freeze between two unlike faces',
  symbol: 't_s',
  inputs: {
    first: { symbol: 't_1', unit: 's', meaning: 'time if both faces were as the first', range: [0.2, 200] },
    second: { symbol: 't_2', unit: 's', meaning: 'time if both faces were as the second', range: [0.2, 200] },
  },
  unit: 's',
  equation: '(2 / (1 / sqrt(t_1) + 1 / sqrt(t_2)))^2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact where both fronts go with the root of time; a few per cent off where the interface holds the heat back',
  compute: ({ first, second }) => (2 / (1 / Math.sqrt(first) + 1 / Math.sqrt(second))) ** 2,
});

const SECTION = (symbol: string, meaning: string) => ({ symbol, unit: 's', meaning, range: [0, 300], domain: 'not-negative', default: 0 }) as const;

/** Time from the full cavity to the opening of the die: the slowest section sets it, and the pressure must be off. */
export const dwell = defineFormula({
  id: 'cooling.dwell',
  title: 'Time from full cavity to die opening',
  symbol: 't_d',
  inputs: {
    casting: { symbol: 't_w', unit: 's', meaning: 'wall at its ejection temperature', range: [0.1, 300] },
    thick: SECTION('t_t', 'thickest wall solid'),
    runner: SECTION('t_r', 'runner solid'),
    biscuit: SECTION('t_b', 'biscuit solid'),
    overflow: SECTION('t_o', 'overflows solid'),
    hold: SECTION('t_p', 'time under pressure'),
  },
  unit: 's',
  equation: 'max(t_w, t_t, t_r, t_b, t_o, t_p)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the slowest time in it; a plant adds a second or two of its own for what it has been burnt by',
  compute: (x) => Math.max(x.casting, x.thick, x.runner, x.biscuit, x.overflow, x.hold),
});

/** Wall that would be solid in a given time, by the square law from one that takes longer. */
export const wallForTime = defineFormula({
  id: 'cooling.wall-for-time',
  title: 'Wall that is solid in a given time',
  symbol: 'h_n',
  inputs: {
    wall: { symbol: 'h', unit: 'mm', meaning: 'wall', range: [0.5, 60] },
    time: { symbol: 't_h', unit: 's', meaning: 'time until it is solid', range: [0.1, 300] },
    wanted: { symbol: 't_n', unit: 's', meaning: 'time wanted', range: [0.1, 300] },
  },
  unit: 'mm',
  equation: 'h * sqrt(t_n / t_h)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'for walls of some millimetres; thin ones go nearer with the wall itself',
  compute: ({ wall, time, wanted }) => wall * Math.sqrt(wanted / time),
});
