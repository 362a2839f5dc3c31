import { defineFormula } from '../kernel/formula.ts';

const parts = { symbol: 'N', unit: '1', meaning: 'castings tested', range: [1, 1e8] } as const;
const leaking = { symbol: 'p_l', unit: '%', meaning: 'share that leaks after machining', range: [0, 100], domain: 'not-negative' } as const;
const still = { symbol: 'p_s', unit: '%', meaning: 'share of the impregnated castings that still leaks', range: [0, 100], domain: 'not-negative' } as const;
const cost = { symbol: 'c_p', unit: '1', meaning: 'money that a machined casting has cost', range: [0.01, 10000] } as const;
const days = { symbol: 'd', unit: '1', meaning: 'working days', range: [1, 366] } as const;

/** Castings that fail the leak test. */
export const leakers = defineFormula({
  id: 'finish.leakers',
  title: 'Castings that leak',
  symbol: 'N_l',
  inputs: { parts, leaking },
  unit: '1',
  equation: 'N * p_l / 100',
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: 'as good as the share that leaks, which only the part itself shows',
  compute: (x) => (x.parts * x.leaking) / 100,
});

/** Castings that leak after impregnation too, or all that leak where none is impregnated. */
export const leakersLeft = defineFormula({
  id: 'finish.leakers-left',
  title: 'Castings lost for leaks',
  symbol: 'N_s',
  inputs: { leakers: { symbol: 'N_l', unit: '1', meaning: 'castings that leak', range: [0, 1e8], domain: 'not-negative' }, still },
  unit: '1',
  equation: 'N_l * p_s / 100',
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: 'as good as the share that still leaks',
  compute: (x) => (x.leakers * x.still) / 100,
});

/** What it costs to scrap every casting that leaks. */
export const scrapCost = defineFormula({
  id: 'finish.scrap-cost',
  title: 'Cost of scrapping what leaks',
  symbol: 'C_s',
  inputs: { parts: { ...parts, meaning: 'castings tested a day', range: [1, 1e6] }, leaking, part_cost: cost, days },
  unit: '1',
  equation: 'd * N * p_l / 100 * c_p',
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: 'exact arithmetic, in the money that goes in; metal that is remelted is not credited',
  compute: (x) => ((x.days * x.parts * x.leaking) / 100) * x.part_cost,
});

/** What it costs to impregnate what leaks, and to scrap what still leaks. */
export const impregnationCost = defineFormula({
  id: 'finish.impregnation-cost',
  title: 'Cost of impregnating what leaks',
  symbol: 'C_i',
  inputs: {
    parts: { ...parts, meaning: 'castings tested a day', range: [1, 1e6] },
    leaking,
    price: { symbol: 'c_i', unit: '1', meaning: 'money for impregnating one casting', range: [0, 1000], domain: 'not-negative' },
    shipping: { symbol: 'c_d', unit: '1', meaning: 'money a day for sending them there and back', range: [0, 10000], domain: 'not-negative', default: 0 },
    still,
    part_cost: cost,
    days,
  },
  unit: '1',
  where: [{ symbol: 'N_l', equation: 'N * p_l / 100' }],
  equation: 'd * (N_l * c_i + c_d + N_l * p_s / 100 * c_p)',
  outside: 'extrapolate',
  source: ['GODFREY-WING-COST'],
  status: 'derived',
  accuracy: 'exact arithmetic, in the money that goes in; the leak test itself is paid either way',
  compute: (x) => {
    const leak = (x.parts * x.leaking) / 100;
    return x.days * (leak * x.price + x.shipping + ((leak * x.still) / 100) * x.part_cost);
  },
});
