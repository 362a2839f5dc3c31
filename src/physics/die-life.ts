import { defineFormula } from '../kernel/formula.ts';

/** Shots that the parts over the life of the product ask for. */
export const shotsNeeded = defineFormula({
  id: 'die.shots-needed',
  title: 'Shots over the life of the part',
  symbol: 'S',
  inputs: {
    parts: { symbol: 'N', unit: '1', meaning: 'parts over the life', range: [100, 1e8] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
    reject_share: { symbol: 'r', unit: '%', meaning: 'castings rejected', range: [0, 50], domain: 'not-negative' },
  },
  unit: '1',
  equation: 'N / (n * (1 - r / 100))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; warm-up shots after each start come on top',
  requires: [{ text: 'some parts are good', holds: ({ reject_share }) => reject_share < 100 }],
  compute: (x) => x.parts / (x.cavities * (1 - x.reject_share / 100)),
});

/** Sets of cavity inserts that wear out over the life of the part. */
export const sets = defineFormula({
  id: 'die.sets',
  title: 'Sets of cavity inserts over the life of the part',
  symbol: 'n_s',
  inputs: {
    shots: { symbol: 'S', unit: '1', meaning: 'shots over the life of the part', range: [100, 1e8] },
    life: { symbol: 'L_d', unit: '1', meaning: 'shots that a set lasts', range: [500, 5e6] },
  },
  unit: '1',
  equation: 'ceil(S / L_d)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the die life, which scatters by a factor of two to four',
  compute: ({ shots, life }) => Math.ceil(shots / life),
});

/** Stress in a surface that is heated by a swing and held by the cold steel below it in both directions. */
export const thermalStress = defineFormula({
  id: 'die.thermal-stress',
  title: 'Stress of the die surface from its temperature swing',
  symbol: 'sigma',
  inputs: {
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus of the hot steel", range: [50, 330] },
    expansion: { symbol: 'alpha', unit: 'um/(m.K)', meaning: 'expansion', range: [4, 20] },
    swing: { symbol: 'dT', unit: 'K', meaning: 'swing of the surface temperature in a shot', range: [1, 900] },
    poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio", range: [0.2, 0.4] },
  },
  unit: 'MPa',
  equation: 'E_s * alpha * dT / (1000 * (1 - nu))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'elastic, a surface held fully in both directions: the upper bound of a smooth face; edges and corners see more. Above yield it is a measure of strain, no stress',
  compute: (x) => (x.modulus * x.expansion * x.swing) / (1000 * (1 - x.poisson)),
});

/** Thermal stress of the surface against the yield strength of the hot steel. */
export const heatCheckIndex = defineFormula({
  id: 'die.heat-check-index',
  title: 'Heat-check index',
  symbol: 'k_h',
  inputs: {
    stress: { symbol: 'sigma', unit: 'MPa', meaning: 'stress of the die surface from its temperature swing', range: [10, 3000] },
    hot_yield: { symbol: 's_y', unit: 'MPa', meaning: 'yield strength of the steel at the peak temperature', range: [50, 2000] },
  },
  unit: '1',
  equation: 'sigma / s_y',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'compares dies and settings; no law from it to shots was found',
  compute: ({ stress, hot_yield }) => stress / hot_yield,
});

/** Temperature swing at which the index reaches a given figure. */
export const swingForIndex = defineFormula({
  id: 'die.swing-for-index',
  title: 'Temperature swing for a heat-check index',
  symbol: 'dT_n',
  inputs: {
    index: { symbol: 'k_h', unit: '1', meaning: 'heat-check index', range: [0.1, 3] },
    hot_yield: { symbol: 's_y', unit: 'MPa', meaning: 'yield strength of the steel at the peak temperature', range: [50, 2000] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus of the hot steel", range: [50, 330] },
    expansion: { symbol: 'alpha', unit: 'um/(m.K)', meaning: 'expansion', range: [4, 20] },
    poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio", range: [0.2, 0.4] },
  },
  unit: 'K',
  equation: '1000 * k_h * s_y * (1 - nu) / (E_s * alpha)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'with the steel as it is at the planned peak; a lower swing has a lower peak and a little more to spare',
  compute: (x) => (1000 * x.index * x.hot_yield * (1 - x.poisson)) / (x.modulus * x.expansion),
});

/** Temperature to which a die is brought before the first shot: no hotter than its surface will be while it runs. */
export const preheat = defineFormula({
  id: 'die.preheat',
  title: 'Preheat of the die',
  symbol: 'T_p',
  inputs: {
    least: { symbol: 'T_1', unit: 'degC', meaning: 'usual preheat, least', range: [50, 500], domain: 'any' },
    greatest: { symbol: 'T_2', unit: 'degC', meaning: 'usual preheat, greatest', range: [50, 600], domain: 'any' },
    running: { symbol: 'T_m', unit: 'degC', meaning: 'die surface before the shot, as planned', range: [80, 500], domain: 'any' },
  },
  unit: 'degC',
  equation: 'max(T_1, min((T_1 + T_2) / 2, T_m))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the middle of a remembered range, capped at the running temperature',
  compute: (x) => Math.max(x.least, Math.min((x.least + x.greatest) / 2, x.running)),
});
