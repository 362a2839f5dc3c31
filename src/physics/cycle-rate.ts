import { defineFormula } from '../kernel/formula.ts';

const CYCLE = { symbol: 't_c', unit: 's', meaning: 'cycle time', range: [2, 600] } as const;
const CAVITIES = { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] } as const;
const REJECTS = { symbol: 'q', unit: '%', meaning: 'share of the castings rejected', range: [0, 40], domain: 'not-negative' } as const;
const SOME_GOOD = { text: 'a reject share below 100 %', holds: ({ reject_share }: { readonly reject_share: number }) => reject_share < 100 };

/** Cycle time: what the elements take, or what the cooling lines need to carry the heat away. */
export const cycleTime = defineFormula({
  id: 'cycle.time',
  title: 'Cycle time',
  symbol: 't_c',
  inputs: {
    elements: { symbol: 't_e', unit: 's', meaning: 'sum of the elements', range: [2, 300] },
    cooling: {
      symbol: 't_k',
      unit: 's',
      meaning: 'shortest cycle at which the cooling lines hold the die temperature',
      range: [0, 600],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 's',
  equation: 'max(t_e, t_k)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the elements, most of which are rules of thumb; stops are not in it',
  compute: ({ elements, cooling }) => Math.max(elements, cooling),
});

/** Time that the machine waits for the die beyond the elements. */
export const cycleWait = defineFormula({
  id: 'cycle.wait',
  title: 'Wait for the die to cool',
  symbol: 't_w',
  inputs: {
    time: CYCLE,
    elements: { symbol: 't_e', unit: 's', meaning: 'sum of the elements', range: [2, 600] },
  },
  unit: 's',
  equation: 'max(0, t_c - t_e)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the shortest cycle of the cooling lines',
  compute: ({ time, elements }) => Math.max(0, time - elements),
});

/** Shots an hour while the machine runs. */
export const shotsPerHour = defineFormula({
  id: 'cycle.shots',
  title: 'Shots an hour',
  symbol: 'r',
  inputs: { time: CYCLE },
  unit: '1/h',
  equation: '3600 / t_c',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'while the machine runs; stops are not in it',
  compute: ({ time }) => 3600 / time,
});

/** Castings an hour, good and bad together. */
export const grossParts = defineFormula({
  id: 'cycle.gross-parts',
  title: 'Castings an hour',
  symbol: 'N_h',
  inputs: { shots: { symbol: 'r', unit: '1/h', meaning: 'shots an hour', range: [5, 2000] }, cavities: CAVITIES },
  unit: '1/h',
  equation: 'r * n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the rate given',
  compute: ({ shots, cavities }) => shots * cavities,
});

/** Good castings an hour. */
export const goodParts = defineFormula({
  id: 'cycle.good-parts',
  title: 'Good castings an hour',
  symbol: 'N_g',
  inputs: { gross: { symbol: 'N_h', unit: '1/h', meaning: 'castings an hour', range: [5, 20000] }, reject_share: REJECTS },
  unit: '1/h',
  equation: 'N_h * (1 - q / 100)',
  requires: [SOME_GOOD],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the reject share',
  compute: ({ gross, reject_share }) => gross * (1 - reject_share / 100),
});

/** The longest cycle with which one die makes the yearly volume in the hours there are. */
export const longestCycle = defineFormula({
  id: 'cycle.longest',
  title: 'Longest cycle that makes the yearly volume',
  symbol: 't_n',
  inputs: {
    hours: { symbol: 'H', unit: 'h', meaning: 'hours a year', range: [100, 8760] },
    cavities: CAVITIES,
    use_share: { symbol: 's', unit: '%', meaning: 'share of the hours in which the machine makes shots', range: [30, 100] },
    reject_share: REJECTS,
    parts: { symbol: 'N', unit: '1', meaning: 'good castings a year', range: [1, 1e8] },
  },
  unit: 's',
  equation: '3600 * H * n * s / 100 * (1 - q / 100) / N',
  requires: [SOME_GOOD],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the shares given',
  compute: (x) => ((3600 * x.hours * x.cavities * x.use_share) / 100) * ((1 - x.reject_share / 100) / x.parts),
});

/** Shots a year for the yearly volume, rejects in. */
export const shotsYear = defineFormula({
  id: 'cycle.shots-year',
  title: 'Shots a year',
  symbol: 'Z',
  inputs: { parts: { symbol: 'N', unit: '1', meaning: 'good castings a year', range: [1, 1e8] }, cavities: CAVITIES, reject_share: REJECTS },
  unit: '1',
  equation: 'N / (n * (1 - q / 100))',
  requires: [SOME_GOOD],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the reject share',
  compute: ({ parts, cavities, reject_share }) => parts / (cavities * (1 - reject_share / 100)),
});

/** Shots a year that warm the die after starts and stops, and are scrap. */
export const startUpShots = defineFormula({
  id: 'cycle.start-up-shots',
  title: 'Shots a year that warm the die',
  symbol: 'Z_w',
  inputs: {
    runs: { symbol: 'm', unit: '1', meaning: 'runs a year, each with a die from the preheater', range: [0.5, 365] },
    after_start: { symbol: 'z_1', unit: '1', meaning: 'scrap shots at the start of a run', range: [1, 60] },
    hours: { symbol: 'H', unit: 'h', meaning: 'machine hours a year', range: [1, 8760] },
    interval: { symbol: 'h', unit: 'h', meaning: 'hours from one stop in which the die cools to the next', range: [1, 100] },
    after_stop: { symbol: 'z_2', unit: '1', meaning: 'scrap shots after such a stop', range: [1, 30] },
  },
  unit: '1',
  equation: 'm * z_1 + H / h * z_2',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'an estimate of the order: runs and stops are those of the foundry, and heated dies need fewer shots',
  compute: (x) => x.runs * x.after_start + (x.hours / x.interval) * x.after_stop,
});

/** Share of the shots that warm the die. */
export const startUpShare = defineFormula({
  id: 'cycle.start-up-share',
  title: 'Start-up loss',
  symbol: 's_w',
  inputs: {
    warming: { symbol: 'Z_w', unit: '1', meaning: 'shots a year that warm the die', range: [1, 50000] },
    shots: { symbol: 'Z', unit: '1', meaning: 'shots a year', range: [100, 1e7] },
  },
  unit: '%',
  equation: '100 * Z_w / Z',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the count of runs and stops',
  compute: ({ warming, shots }) => (100 * warming) / shots,
});

/** Planned rate over the rate that was assumed before the cycle was known. */
export const rateRatio = defineFormula({
  id: 'cycle.rate-ratio',
  title: 'Planned rate over the rate assumed',
  symbol: 'k',
  inputs: {
    shots: { symbol: 'r', unit: '1/h', meaning: 'shots an hour of the planned cycle', range: [5, 2000] },
    assumed: { symbol: 'r_m', unit: '1/h', meaning: 'shots an hour assumed for the machine', range: [5, 2000] },
  },
  unit: '%',
  equation: '100 * r / r_m',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ shots, assumed }) => (100 * shots) / assumed,
});
