import { defineFormula } from '../kernel/formula.ts';

const poured = { symbol: 'q_p', unit: 'kg/h', meaning: 'metal poured an hour', range: [0.1, 50_000] } as const;
const melted = { symbol: 'q_m', unit: 'kg/h', meaning: 'metal melted an hour', range: [0.1, 60_000] } as const;
const FULL_HOUR = 'exact at the planned cycle without a stop: what a furnace must give while the machine runs, more than the mean of a shift';

/** Metal that a machine takes out of its furnace in an hour without a stop. */
export const pouredRate = defineFormula({
  id: 'furnace.poured',
  title: 'Metal poured an hour',
  symbol: 'q_p',
  inputs: {
    shot: { symbol: 'm_s', unit: 'kg', meaning: 'all metal of one shot', range: [0.001, 500] },
    shots: { symbol: 'r', unit: '1/h', meaning: 'shots an hour', range: [1, 4000] },
  },
  unit: 'kg/h',
  equation: 'm_s * r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: FULL_HOUR,
  compute: ({ shot, shots }) => shot * shots,
});

/** Metal that must be charged so that this much can be poured. */
export const meltedRate = defineFormula({
  id: 'furnace.melted',
  title: 'Metal melted an hour',
  symbol: 'q_m',
  inputs: { poured, loss: { symbol: 'l', unit: '%', meaning: 'metal lost each time it is melted, of what goes in', range: [0, 20], domain: 'not-negative' } },
  unit: 'kg/h',
  equation: 'q_p / (1 - l / 100)',
  requires: [{ text: 'a loss below 100 %', holds: ({ loss }) => loss < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: FULL_HOUR,
  compute: ({ poured: rate, loss }) => rate / (1 - loss / 100),
});

/** Runners, overflows, biscuits and rejects of an hour: all that is poured and leaves in no good casting. */
export const returnedRate = defineFormula({
  id: 'furnace.returned',
  title: 'Returns an hour',
  symbol: 'q_r',
  inputs: {
    poured,
    good: { symbol: 'n_g', unit: '1/h', meaning: 'good castings an hour', range: [1, 100_000] },
    part_mass: { symbol: 'M_p', unit: 'kg', meaning: 'mass of the trimmed casting', range: [0.0005, 200] },
  },
  unit: 'kg/h',
  equation: 'max(q_p - n_g * M_p, 0)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: FULL_HOUR,
  compute: (x) => Math.max(x.poured - x.good * x.part_mass, 0),
});

/** New metal of an hour in a shop that melts its returns again. */
export const newRate = defineFormula({
  id: 'furnace.new-metal',
  title: 'New metal an hour',
  symbol: 'q_n',
  inputs: {
    melted,
    returned: {
      symbol: 'q_r',
      unit: 'kg/h',
      meaning: 'returns melted again an hour; 0 where they are sold',
      range: [0, 50_000],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 'kg/h',
  equation: 'max(q_m - q_r, 0)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: `${FULL_HOUR}; the balance of a shop that runs steadily`,
  compute: (x) => Math.max(x.melted - x.returned, 0),
});

/** How long a furnace that is full pours without new metal. */
export const holdTime = defineFormula({
  id: 'furnace.hold',
  title: 'Pouring from a full furnace',
  symbol: 't_h',
  inputs: {
    capacity: { symbol: 'C', unit: 'kg', meaning: 'metal in the full furnace', range: [5, 200_000] },
    usable: { symbol: 'u', unit: '%', meaning: 'share that is poured before it is filled up again', range: [10, 100] },
    poured,
  },
  unit: 'h',
  equation: 'C * u / 100 / q_p',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the usable share',
  compute: (x) => (x.capacity * x.usable) / 100 / x.poured,
});

/** How much of what a furnace melts the part takes. */
export const meltUse = defineFormula({
  id: 'furnace.melt-use',
  title: 'Use of the melting furnace',
  symbol: 'u_m',
  inputs: { melted, rate: { symbol: 'q_f', unit: 'kg/h', meaning: 'metal that the furnace melts an hour', range: [1, 60_000] } },
  unit: '%',
  equation: '100 * q_m / q_f',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'for this part alone; what other machines take from the same furnace comes on top',
  compute: (x) => (100 * x.melted) / x.rate,
});
