import { defineFormula } from '../kernel/formula.ts';

/** All metal of one shot. */
export const shotVolume = defineFormula({
  id: 'shot.volume',
  title: 'Volume of all metal of one shot',
  symbol: 'V_s',
  inputs: {
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    part_volume: { symbol: 'V_p', unit: 'cm3', meaning: 'volume of one casting', range: [0.1, 50000] },
    overflow_volume: { symbol: 'V_o', unit: 'cm3', meaning: 'volume of the overflows of one cavity', range: [0, 10000], domain: 'not-negative' },
    runner_volume: { symbol: 'V_r', unit: 'cm3', meaning: 'volume of the runner, all branches', range: [0, 20000], domain: 'not-negative' },
    biscuit_volume: { symbol: 'V_b', unit: 'cm3', meaning: 'volume of the biscuit, or of the sprue', range: [0, 10000], domain: 'not-negative' },
  },
  unit: 'cm3',
  equation: 'n * (V_p + V_o) + V_r + V_b',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum',
  compute: (x) => x.cavities * (x.part_volume + x.overflow_volume) + x.runner_volume + x.biscuit_volume,
});

/** Mass of all metal of one shot. */
export const shotMass = defineFormula({
  id: 'shot.mass',
  title: 'Mass of all metal of one shot',
  symbol: 'm_s',
  inputs: {
    volume: { symbol: 'V_s', unit: 'cm3', meaning: 'volume of all metal of one shot', range: [0.1, 200000] },
    density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the metal at the state in which the volume is counted', range: [1.5, 11] },
  },
  unit: 'kg',
  equation: 'V_s * rho / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; a cavity filled with liquid and fed under pressure ends between the liquid and the solid density',
  compute: ({ volume, density }) => (volume * density) / 1000,
});
