import { defineFormula } from '../kernel/formula.ts';

const efficiency = { symbol: 'eta_s', unit: '%', meaning: 'share of the spray that stays on the die', range: [5, 100] } as const;
const dilution = { symbol: 'N', unit: '1', meaning: 'parts of water to one of concentrate', range: [1, 200], domain: 'not-negative' } as const;

/** Heat that water takes on its way from the tank to steam. */
export const evaporationHeat = defineFormula({
  id: 'lubricant.evaporation-heat',
  title: 'Heat taken by spray water that boils',
  symbol: 'h_w',
  inputs: {
    temperature: { symbol: 'T_w', unit: 'degC', meaning: 'water as it is sprayed', range: [5, 80], domain: 'any' },
    specific_heat: { symbol: 'c_w', unit: 'J/(kg.K)', meaning: 'specific heat of water', range: [4100, 4250] },
    latent_heat: { symbol: 'L_w', unit: 'kJ/kg', meaning: 'heat of evaporation of water at 100 degC', range: [2200, 2300] },
  },
  unit: 'kJ/kg',
  equation: 'c_w * (100 - T_w) / 1000 + L_w',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'within 1 %; water that runs off without boiling takes an eighth of it at most',
  compute: (x) => (x.specific_heat * (100 - x.temperature)) / 1000 + x.latent_heat,
});

/** Water that must boil off at each spraying to take the spray's share of the heat. */
export const boiledWater = defineFormula({
  id: 'lubricant.boiled-water',
  title: 'Water that must boil to take the heat of the spray',
  symbol: 'V_b',
  inputs: {
    heat: { symbol: 'Q', unit: 'kJ', meaning: 'heat of a shot', range: [1, 100000] },
    less: { symbol: 'Q_t', unit: 'kJ', meaning: 'of it to plunger tip and sleeve, not to the die', range: [0, 10000], domain: 'not-negative', default: 0 },
    share: { symbol: 'q', unit: '%', meaning: 'share of it that the spray is to take', range: [0, 100], domain: 'not-negative' },
    evaporation_heat: { symbol: 'h_w', unit: 'kJ/kg', meaning: 'heat taken by water that boils', range: [2200, 2700] },
    interval: { symbol: 'k', unit: '1', meaning: 'shots from one spraying to the next', range: [1, 10], default: 1 },
  },
  unit: 'ml',
  equation: '1000 * k * (Q - Q_t) * q / 100 / h_w',
  requires: [{ text: 'Q > Q_t', holds: (x) => x.heat > x.less }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'heat balance with water of 1 kg/l; what the water that runs off carries away, at most an eighth of the heat by mass, is left out',
  compute: (x) => (1000 * x.interval * (x.heat - x.less) * x.share) / 100 / x.evaporation_heat,
});

/** Spray that carries that much water to the die and leaves it there. */
export const coolingSpray = defineFormula({
  id: 'lubricant.cooling-spray',
  title: 'Spray for the cooling',
  symbol: 'V_k',
  inputs: { boiled: { symbol: 'V_b', unit: 'ml', meaning: 'water that must boil', range: [0.01, 20000] }, efficiency, dilution },
  unit: 'ml',
  equation: '100 * V_b / eta_s * (1 + N) / N',
  requires: [{ text: 'a spray with water in it', holds: (x) => x.dilution >= 1 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a least figure: all water that stays on the die is taken to boil',
  compute: (x) => ((100 * x.boiled) / x.efficiency) * ((1 + x.dilution) / x.dilution),
});

/** Share of the sprayed water that must boil. */
export const boiledShare = defineFormula({
  id: 'lubricant.boiled-share',
  title: 'Share of the sprayed water that must boil',
  symbol: 'p_b',
  inputs: {
    boiled: { symbol: 'V_b', unit: 'ml', meaning: 'water that must boil', range: [0.01, 20000] },
    spray: { symbol: 'V_s', unit: 'ml', meaning: 'diluted spray', range: [0.1, 50000] },
    dilution,
  },
  unit: '%',
  equation: '100 * V_b / (V_s * N / (1 + N))',
  requires: [{ text: 'a spray with water in it', holds: (x) => x.dilution >= 1 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the heat that the spray is to take',
  compute: (x) => (100 * x.boiled) / ((x.spray * x.dilution) / (1 + x.dilution)),
});
