import { defineFormula } from '../kernel/formula.ts';

const DEGREES = 180 / Math.PI;

/** Area of the runner of one of several equal gates. */
export const runnerEachArea = defineFormula({
  id: 'runner.each-area',
  title: 'Runner area at one gate',
  symbol: 'A_1',
  inputs: {
    area: { symbol: 'A_r', unit: 'mm2', meaning: 'runner area at the gates of one cavity', range: [0.5, 30000] },
    gates: { symbol: 'n_g', unit: '1', meaning: 'gates of the cavity', range: [1, 12] },
  },
  unit: 'mm2',
  equation: 'A_r / n_g',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for gates that feed equal volumes',
  compute: ({ area, gates }) => area / gates,
});

/** Area at the end of a tangential runner, which must not run out to nothing. */
export const taperEnd = defineFormula({
  id: 'runner.taper-end',
  title: 'Area at the end of a tangential runner',
  symbol: 'A_e',
  inputs: {
    start: { symbol: 'A_r', unit: 'mm2', meaning: 'area of the runner where the gate begins', range: [0.5, 30000] },
    end_share: { symbol: 'q_e', unit: '1', meaning: 'finite end over the area at the start', range: [0.05, 0.3] },
  },
  unit: 'mm2',
  equation: 'q_e * A_r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the share taken',
  compute: ({ start, end_share }) => end_share * start,
});

/** Area of a runner before a stage: the area falls towards the gate. */
export const stageArea = defineFormula({
  id: 'runner.stage-area',
  title: 'Runner area one stage towards the feeder',
  symbol: 'A_1',
  inputs: {
    area: { symbol: 'A_2', unit: 'mm2', meaning: 'area of the next stage towards the gate', range: [0.5, 30000] },
    fall: { symbol: 'f', unit: '%', meaning: 'fall of the area in the stage', range: [5, 40], domain: 'not-negative' },
  },
  unit: 'mm2',
  equation: 'A_2 / (1 - f / 100)',
  requires: [{ text: 'a fall below 100 %', holds: ({ fall }) => fall < 100 }],
  outside: 'extrapolate',
  source: ['KB-GATING runner'],
  status: 'derived',
  accuracy: 'exact for the fall taken; 10 to 30 % a stage are published',
  compute: ({ area, fall }) => area / (1 - fall / 100),
});

/** Area of a runner that splits into equal branches, which together have a little less. */
export const parentArea = defineFormula({
  id: 'runner.parent-area',
  title: 'Runner area before a split',
  symbol: 'A_1',
  inputs: {
    branches: { symbol: 'n', unit: '1', meaning: 'branches of the split', range: [2, 12] },
    area: { symbol: 'A_2', unit: 'mm2', meaning: 'mean area of a branch', range: [0.5, 30000] },
    loss: { symbol: 'l', unit: '%', meaning: 'sum of the branches below the parent', range: [1, 20], domain: 'not-negative' },
  },
  unit: 'mm2',
  equation: 'n * A_2 / (1 - l / 100)',
  requires: [{ text: 'a loss below 100 %', holds: ({ loss }) => loss < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'exact for the loss taken; 5 to 10 % are common practice. Branches of unequal cavities are in proportion to what they feed',
  compute: (x) => (x.branches * x.area) / (1 - x.loss / 100),
});

/** Length in which a fan gate spreads from the runner to the gate. */
export const fanLength = defineFormula({
  id: 'runner.fan-length',
  title: 'Length of a fan',
  symbol: 'L_f',
  inputs: {
    gate_width: { symbol: 'w_g', unit: 'mm', meaning: 'width of the gate', range: [1, 2000] },
    runner_width: { symbol: 'w_r', unit: 'mm', meaning: 'width of the runner', range: [1, 300] },
    spread: { symbol: 'a', unit: 'deg', meaning: 'total spread of the fan', range: [10, 90] },
  },
  unit: 'mm',
  equation: 'max(0, w_g - w_r) / (2 * tan(a / 2 * pi / 180))',
  requires: [{ text: 'a spread below 180 degrees', holds: ({ spread }) => spread < 180 }],
  outside: 'extrapolate',
  source: ['KB-GATING runner'],
  status: 'derived',
  accuracy: 'exact for straight flanks',
  compute: (x) => Math.max(0, x.gate_width - x.runner_width) / (2 * Math.tan(x.spread / 2 / DEGREES)),
});

/** Total spread of a fan of a given length. */
export const fanSpread = defineFormula({
  id: 'runner.fan-angle',
  title: 'Spread of the fan',
  symbol: 'a',
  inputs: {
    gate_width: { symbol: 'w_g', unit: 'mm', meaning: 'width of the gate', range: [1, 2000] },
    runner_width: { symbol: 'w_r', unit: 'mm', meaning: 'width of the runner', range: [1, 300] },
    length: { symbol: 'L_f', unit: 'mm', meaning: 'length of the fan', range: [1, 1000] },
  },
  unit: 'deg',
  equation: '2 * atan(max(0, w_g - w_r) / (2 * L_f)) * 180 / pi',
  outside: 'extrapolate',
  source: ['KB-GATING runner'],
  status: 'derived',
  accuracy: 'exact for straight flanks',
  compute: (x) => 2 * Math.atan(Math.max(0, x.gate_width - x.runner_width) / (2 * x.length)) * DEGREES,
});

/** Angle at which the metal leaves a tangential runner through the gate, off the straight way across it. */
export const flowAngle = defineFormula({
  id: 'runner.flow-angle',
  title: 'Flow angle of a tangential runner',
  symbol: 'a_f',
  inputs: {
    runner_area: { symbol: 'A_r', unit: 'mm2', meaning: 'area of the runner where the gate begins', range: [0.5, 30000] },
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'area of the gate that it feeds', range: [0.5, 20000] },
  },
  unit: 'deg',
  equation: 'atan(A_g / A_r) * 180 / pi',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'speed along the runner against speed across the gate, both by continuity; the stream turns a little further in the land',
  compute: ({ runner_area, gate_area }) => Math.atan(gate_area / runner_area) * DEGREES,
});

const END = { symbol: 'q_e', unit: '1', meaning: 'finite end over the area at the start', range: [0.05, 0.3], default: 0.15 } as const;

/** Area along a tangential runner that feeds its gate evenly: it falls in a straight line to a finite end. */
export const taperArea = defineFormula({
  id: 'runner.taper-area',
  title: 'Area along a tangential runner',
  symbol: 'A_x',
  inputs: {
    start: { symbol: 'A_r', unit: 'mm2', meaning: 'area of the runner where the gate begins', range: [0.5, 30000] },
    length: { symbol: 'L', unit: 'mm', meaning: 'length of the gate', range: [1, 2000] },
    position: { symbol: 'x', unit: 'mm', meaning: 'distance from the beginning of the gate', range: [0, 2000], domain: 'not-negative' },
    end_share: END,
  },
  unit: 'mm2',
  equation: 'A_r * ((1 - q_e) * (1 - x / L) + q_e)',
  requires: [{ text: 'a position within the length', holds: ({ position, length }) => position <= length }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'continuity at constant speed along the runner; the finite end is taken out of the area at the start, so that the runner grows nowhere, and the gate velocity rises a little towards the end',
  compute: (x) => x.start * ((1 - x.end_share) * (1 - x.position / x.length) + x.end_share),
});

/** Area at the top of the sprue of a hot chamber, where the nozzle meets it. */
export const sprueArea = defineFormula({
  id: 'runner.sprue-area',
  title: 'Area at the top of the sprue',
  symbol: 'A_n',
  inputs: {
    area: { symbol: 'A_m', unit: 'mm2', meaning: 'runner area at the foot of the sprue', range: [1, 60000] },
    ratio: { symbol: 'k', unit: '1', meaning: 'nozzle bore area over runner area', range: [1, 1.5] },
  },
  unit: 'mm2',
  equation: 'k * A_m',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the area falls from the nozzle to the foot of the sprue; a common rule without a single source',
  compute: ({ area, ratio }) => ratio * area,
});

/** Circle that the foot of a sprue covers in the parting plane: its spreader takes the middle. */
export const sprueFoot = defineFormula({
  id: 'runner.sprue-foot',
  title: 'Foot of the sprue in the parting plane',
  symbol: 'A_f',
  inputs: {
    area: { symbol: 'A_n', unit: 'mm2', meaning: 'area at the top of the sprue', range: [1, 60000] },
    share: { symbol: 'q', unit: '1', meaning: 'foot over the area at the top', range: [1, 4] },
  },
  unit: 'cm2',
  equation: 'q * A_n / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule; sprue bush and spreader are chosen from what the shop has',
  compute: ({ area, share }) => (share * area) / 100,
});

/** Area of the main runner over all gates of the shot. */
export const mainRatio = defineFormula({
  id: 'runner.main-ratio',
  title: 'Main runner area over gate area',
  symbol: 'k_m',
  inputs: {
    main: { symbol: 'A_m', unit: 'mm2', meaning: 'area of the main runner', range: [1, 60000] },
    gate_area: { symbol: 'A_g', unit: 'mm2', meaning: 'gate area of one cavity', range: [0.5, 20000] },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
  },
  unit: '1',
  equation: 'A_m / (n * A_g)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => x.main / (x.cavities * x.gate_area),
});

/** Volume of the runner laid out over the volume that the shot counts. */
export const networkRatio = defineFormula({
  id: 'runner.network-ratio',
  title: 'Runner laid out over runner planned with',
  symbol: 'q_r',
  inputs: {
    network: { symbol: 'V_n', unit: 'cm3', meaning: 'volume of the runner, run by run', range: [0.1, 20000] },
    planned: { symbol: 'V_R', unit: 'cm3', meaning: 'runner volume of the shot, from its share of the projected area', range: [0.1, 20000] },
  },
  unit: '1',
  equation: 'V_n / V_R',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'two estimates made before the runner is drawn; within a factor of two they agree',
  compute: ({ network, planned }) => network / planned,
});
