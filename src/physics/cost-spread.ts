import { defineFormula } from '../kernel/formula.ts';

const cavities = { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] } as const;
const money = (symbol: string, meaning: string) => ({ symbol, unit: '1', meaning, range: [0, 1e11], domain: 'not-negative' }) as const;

/** Dies of the whole life, spread over its good parts. */
export const diePerPart = defineFormula({
  id: 'cost.die-per-part',
  title: 'Die cost of a good part',
  symbol: 'c_k',
  inputs: {
    die: money('C_n', 'first die'),
    set: { ...money('C_s', 'further set of inserts'), default: 0 },
    sets: { symbol: 'n_s', unit: '1', meaning: 'sets of inserts over the life, the first one included', range: [1, 1000], default: 1 },
    parts: { symbol: 'N_g', unit: '1', meaning: 'good parts that pay for them', range: [1, 1e9] },
  },
  unit: '1',
  equation: '(C_n + (n_s - 1) * C_s) / N_g',
  requires: [{ text: 'one set or more', holds: ({ sets }) => sets >= 1 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; interest, storage and repairs are left out',
  compute: (x) => (x.die + (x.sets - 1) * x.set) / x.parts,
});

/** Good parts that one set of inserts makes. */
export const partsOfLife = defineFormula({
  id: 'cost.parts-of-life',
  title: 'Good parts that a set of inserts makes',
  symbol: 'N_l',
  inputs: {
    life: { symbol: 'L_d', unit: '1', meaning: 'shots that a set lasts', range: [500, 5e6] },
    cavities,
    reject_share: { symbol: 'q', unit: '%', meaning: 'castings rejected', range: [0, 50], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'L_d * n * (1 - q / 100)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the die life, which scatters by a factor of two to four',
  compute: (x) => x.life * x.cavities * (1 - x.reject_share / 100),
});

/** Good parts of some years of production. */
export const partsOfYears = defineFormula({
  id: 'cost.parts-of-years',
  title: 'Good parts of some years',
  symbol: 'N_g',
  inputs: {
    parts: { symbol: 'N_y', unit: '1', meaning: 'good parts of a year', range: [1, 1e8] },
    years: { symbol: 'y', unit: '1', meaning: 'years', range: [0.5, 30] },
  },
  unit: '1',
  equation: 'N_y * y',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a volume that stays as it is',
  compute: ({ parts, years }) => parts * years,
});
