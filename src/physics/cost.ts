import { defineFormula } from '../kernel/formula.ts';

/** Money in every formula is a bare number, in the one currency that all of its inputs are in. */
const rate = { symbol: 'C_h', unit: '1', meaning: 'money per hour', range: [0, 1e7], domain: 'not-negative' } as const;
const cavities = { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] } as const;
const reject_share = {
  symbol: 'q',
  unit: '%',
  meaning: 'castings rejected, start-up scrap included',
  range: [0, 50],
  domain: 'not-negative',
  default: 0,
} as const;
const someGood = { text: 'a reject share below 100 %', holds: (x: { readonly reject_share: number }) => x.reject_share < 100 } as const;
const ARITHMETIC = 'exact arithmetic, in the money that goes in';

/** Money for a mass of metal at a price. */
export const byMass = defineFormula({
  id: 'cost.by-mass',
  title: 'Cost of metal',
  symbol: 'c_m',
  inputs: {
    mass: { symbol: 'M', unit: 'kg', meaning: 'mass', range: [0, 10000], domain: 'not-negative' },
    price: { symbol: 'P', unit: '1', meaning: 'money per kilogram', range: [1e-6, 1e7] },
  },
  unit: '1',
  equation: 'M * P',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: ARITHMETIC,
  compute: ({ mass, price }) => mass * price,
});

/** What the metal lost in the furnace has cost, less what its dross fetches. */
export const meltLossCost = defineFormula({
  id: 'cost.melt-loss',
  title: 'Cost of the metal lost in melting',
  symbol: 'c_l',
  inputs: {
    melted: { symbol: 'M_m', unit: 'kg', meaning: 'metal melted', range: [0.001, 10000] },
    loss: { symbol: 'l', unit: '%', meaning: 'metal lost, of what goes in', range: [0, 50], domain: 'not-negative' },
    price: { symbol: 'P', unit: '1', meaning: 'money per kilogram of ingot', range: [1e-6, 1e7] },
    dross_price: { symbol: 'P_d', unit: '1', meaning: 'money that the dross of a lost kilogram fetches', range: [0, 1e7], domain: 'not-negative', default: 0 },
  },
  unit: '1',
  equation: 'M_m * l / 100 * (P - P_d)',
  outside: 'extrapolate',
  source: ['AFS-MELT-COST'],
  status: 'source',
  accuracy: ARITHMETIC,
  compute: (x) => ((x.melted * x.loss) / 100) * (x.price - x.dross_price),
});

/** The same where a processor takes the dross, keeps a toll and gives metal back. */
export const meltLossTolled = defineFormula({
  id: 'cost.melt-loss-tolled',
  title: 'Cost of the metal lost in melting, dross tolled',
  symbol: 'c_l',
  inputs: {
    melted: { symbol: 'M_m', unit: 'kg', meaning: 'metal melted', range: [0.001, 10000] },
    loss: { symbol: 'l', unit: '%', meaning: 'metal lost, of what goes in', range: [0, 50], domain: 'not-negative' },
    price: { symbol: 'P', unit: '1', meaning: 'money per kilogram of ingot', range: [1e-6, 1e7] },
    toll: { symbol: 'C_t', unit: '1', meaning: 'toll for each kilogram, freight both ways included', range: [0, 1e7], domain: 'not-negative' },
    recovery: { symbol: 'R', unit: '%', meaning: 'share of the dross that comes back as metal', range: [0, 100], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'M_m * l / 100 * (P + C_t - R / 100 * P)',
  outside: 'extrapolate',
  source: ['AFS-MELT-COST'],
  status: 'source',
  accuracy: ARITHMETIC,
  compute: (x) => ((x.melted * x.loss) / 100) * (x.price + x.toll - (x.recovery / 100) * x.price),
});

/** What is lost on returns that are sold below the price of ingot instead of melted again. */
export const returnsCost = defineFormula({
  id: 'cost.returns',
  title: 'Loss on returns that are sold',
  symbol: 'c_r',
  inputs: {
    returns: { symbol: 'M_r', unit: 'kg', meaning: 'returns of a good casting', range: [0, 500], domain: 'not-negative' },
    price: { symbol: 'P', unit: '1', meaning: 'money per kilogram of ingot', range: [1e-6, 1e7] },
    sold: { symbol: 'v', unit: '%', meaning: 'what returns fetch, of the price of ingot', range: [0, 100], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'M_r * P * (1 - v / 100)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: ARITHMETIC,
  compute: (x) => x.returns * x.price * (1 - x.sold / 100),
});

/** Energy for all metal that goes through the furnace for a casting. */
export const meltingCost = defineFormula({
  id: 'cost.melting',
  title: 'Energy for melting and holding',
  symbol: 'c_e',
  inputs: {
    melted: { symbol: 'M_m', unit: 'kg', meaning: 'metal melted for a good casting', range: [0.001, 500] },
    energy: { symbol: 'e_m', unit: 'kWh/kg', meaning: 'energy for each kilogram melted', range: [0.01, 10] },
    price: { symbol: 'P_e', unit: '1', meaning: 'money per kWh', range: [0, 1e5], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'M_m * e_m * P_e',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: ARITHMETIC,
  compute: (x) => x.melted * x.energy * x.price,
});

/** Machine time that a shot takes, stops and waits included. */
export const machineTime = defineFormula({
  id: 'cost.machine-time',
  title: 'Machine time paid for each shot',
  symbol: 't_m',
  inputs: {
    cycle: { symbol: 't_c', unit: 's', meaning: 'cycle time', range: [0.5, 600] },
    efficiency: { symbol: 'eta', unit: '%', meaning: 'pieces reached of those that the cycle would make', range: [10, 100] },
  },
  unit: 's',
  equation: 't_c / (eta / 100)',
  requires: [{ text: 'an efficiency of 100 % or less', holds: ({ efficiency }) => efficiency <= 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the efficiency, which the plant counts',
  compute: ({ cycle, efficiency }) => cycle / (efficiency / 100),
});

/** Machine time of a casting in money. */
export const machineCost = defineFormula({
  id: 'cost.machine',
  title: 'Machine cost of a casting',
  symbol: 'c_d',
  inputs: { rate, time: { symbol: 't_m', unit: 's', meaning: 'machine time for each shot', range: [0.5, 6000] }, cavities, reject_share },
  unit: '1',
  equation: 'C_h * t_m / 3600 / n / (1 - q / 100)',
  requires: [someGood],
  outside: 'extrapolate',
  source: ['BASILIUS-CAVITATION'],
  status: 'source',
  accuracy: `${ARITHMETIC}; good castings carry the rejects`,
  compute: (x) => (x.rate * x.time) / 3600 / x.cavities / (1 - x.reject_share / 100),
});

/** Trimming of a casting in money: a stroke for each shot and handling of each casting. */
export const trimmingCost = defineFormula({
  id: 'cost.trimming',
  title: 'Trimming cost of a casting',
  symbol: 'c_t',
  inputs: {
    rate,
    cycle: { symbol: 't_p', unit: 's', meaning: 'time for each shot', range: [0, 600], domain: 'not-negative' },
    each: { symbol: 't_e', unit: 's', meaning: 'time added for each casting', range: [0, 600], domain: 'not-negative', default: 0 },
    cavities,
    reject_share,
  },
  unit: '1',
  equation: 'C_h * (t_p / n + t_e) / 3600 / (1 - q / 100)',
  requires: [someGood],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: `${ARITHMETIC}; rejects are trimmed before they are found`,
  compute: (x) => (x.rate * (x.cycle / x.cavities + x.each)) / 3600 / (1 - x.reject_share / 100),
});

/** Machining of a casting in money. */
export const machiningCost = defineFormula({
  id: 'cost.machining',
  title: 'Machining cost of a casting',
  symbol: 'c_f',
  inputs: {
    rate,
    features: { symbol: 'f', unit: '1', meaning: 'faces, holes, threads and dimensions machined', range: [1, 500] },
    feature: { symbol: 't_f', unit: 's', meaning: 'time for each', range: [0, 3600], domain: 'not-negative' },
    handling: { symbol: 't_h', unit: 's', meaning: 'time to load and unload', range: [0, 3600], domain: 'not-negative', default: 0 },
  },
  unit: '1',
  equation: 'C_h * (t_h + f * t_f) / 3600',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'one time for every feature is a rule of ours for a first figure; a bore to 0.02 mm and a spot face are not alike',
  compute: (x) => (x.rate * (x.handling + x.features * x.feature)) / 3600,
});

/** Impregnation spread over all castings, since only those that leak are impregnated. */
export const sealingCost = defineFormula({
  id: 'cost.impregnation',
  title: 'Impregnation cost of a casting',
  symbol: 'c_i',
  inputs: {
    price: { symbol: 'P_i', unit: '1', meaning: 'money for impregnating one casting', range: [0, 1e7], domain: 'not-negative' },
    leaking: { symbol: 'p_i', unit: '%', meaning: 'castings impregnated: those that leak after machining, or all', range: [0, 100], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'P_i * p_i / 100',
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: `${ARITHMETIC}; freight to the shop that impregnates comes on top`,
  compute: ({ price, leaking }) => (price * leaking) / 100,
});

/** Castings that leak in spite of it, or all that leak where none is impregnated, are lost with all that was spent on them. */
export const leakersCost = defineFormula({
  id: 'cost.leakers',
  title: 'Cost of castings that still leak',
  symbol: 'c_s',
  inputs: {
    spent: { symbol: 'c', unit: '1', meaning: 'money spent on a casting so far', range: [0, 1e8], domain: 'not-negative' },
    leaking: { symbol: 'p_l', unit: '%', meaning: 'castings that leak after machining', range: [0, 50], domain: 'not-negative' },
    still: {
      symbol: 'p_s',
      unit: '%',
      meaning: 'share of them that is lost: what impregnation does not save, or all',
      range: [0, 100],
      domain: 'not-negative',
    },
  },
  unit: '1',
  where: [{ symbol: 'x_l', equation: 'p_l / 100 * p_s / 100' }],
  equation: 'c * x_l / (1 - x_l)',
  requires: [{ text: 'some castings that hold tight', holds: (x) => x.leaking * x.still < 10000 }],
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: `${ARITHMETIC}; their metal is remelted and not credited here`,
  compute: (x) => {
    const lost = ((x.leaking / 100) * x.still) / 100;
    return (x.spent * lost) / (1 - lost);
  },
});
