import { defineFormula } from '../kernel/formula.ts';

const CYCLE = { symbol: 't_z', unit: 's', meaning: 'cycle', range: [2, 600] } as const;

/** Heat of a temperature fall of the metal. */
export const sensibleHeat = defineFormula({
  id: 'heat.sensible',
  title: 'Heat of a fall in temperature',
  symbol: 'q_c',
  inputs: {
    specific_heat: { symbol: 'c', unit: 'J/(kg.K)', meaning: 'specific heat', range: [100, 1500] },
    from: { symbol: 'T_1', unit: 'degC', meaning: 'temperature before', range: [150, 1050], domain: 'any' },
    to: { symbol: 'T_2', unit: 'degC', meaning: 'temperature after', range: [100, 1000], domain: 'any' },
  },
  unit: 'kJ/kg',
  equation: 'c * (T_1 - T_2) / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a specific heat that does not change with temperature; it rises by some tens of per cent up to the solidus',
  compute: (x) => (x.specific_heat * (x.from - x.to)) / 1000,
});

/** Temperature at which thick metal leaves the die: somewhere between its solidus and the ejection temperature of the casting. */
export const leavingTemperature = defineFormula({
  id: 'heat.leaving-temperature',
  title: 'Temperature at which thick metal leaves the die',
  symbol: 'T_o',
  inputs: {
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'ejection temperature of the casting', range: [150, 700], domain: 'any' },
    solidus: { symbol: 'T_S', unit: 'degC', meaning: 'solidus', range: [180, 910], domain: 'any' },
    share: { symbol: 'x', unit: '%', meaning: 'share of the way up to the solidus', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'degC',
  equation: 'T_e + (T_S - T_e) * x / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule: a biscuit opens the die when it has just frozen; half the way moves the heat of a shot by about two per cent',
  compute: (x) => x.eject_temperature + ((x.solidus - x.eject_temperature) * x.share) / 100,
});

/** Heat that a mass of metal gives off. */
export const heatOfMass = defineFormula({
  id: 'heat.of-mass',
  title: 'Heat of a mass of metal',
  symbol: 'E_m',
  inputs: {
    mass: { symbol: 'm', unit: 'kg', meaning: 'mass', range: [0.0005, 150] },
    per_mass: { symbol: 'q', unit: 'kJ/kg', meaning: 'heat given off per mass', range: [10, 1200] },
    count: { symbol: 'n', unit: '1', meaning: 'how often in the shot', range: [1, 64], default: 1 },
  },
  unit: 'kJ',
  equation: 'n * m * q',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ mass, per_mass, count }) => count * mass * per_mass,
});

/** A share of a heat. */
export const heatShare = defineFormula({
  id: 'heat.share',
  title: 'Share of a heat',
  symbol: 'E_x',
  inputs: {
    heat: { symbol: 'E_q', unit: 'kJ', meaning: 'heat of a shot', range: [0.1, 150000] },
    share: { symbol: 'x', unit: '%', meaning: 'share', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'kJ',
  equation: 'E_q * x / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share',
  compute: ({ heat, share }) => (heat * share) / 100,
});

/** Heat of a shot over the cycle. */
export const heatRate = defineFormula({
  id: 'heat.rate',
  title: 'Heat rate',
  symbol: 'P',
  inputs: {
    heat: { symbol: 'E_q', unit: 'kJ', meaning: 'heat of a shot', range: [0.1, 150000] },
    cycle: CYCLE,
  },
  unit: 'kW',
  equation: 'E_q / t_z',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact mean over the cycle',
  compute: ({ heat, cycle }) => heat / cycle,
});

/** A share of a heat rate. */
export const rateShare = defineFormula({
  id: 'heat.rate-share',
  title: 'Share of a heat rate',
  symbol: 'P_x',
  inputs: {
    rate: { symbol: 'P', unit: 'kW', meaning: 'heat rate', range: [0.01, 1000] },
    share: { symbol: 'x', unit: '%', meaning: 'share', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'kW',
  equation: 'P * x / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share',
  compute: ({ rate, share }) => (rate * share) / 100,
});

/** What the lines must take when spray and surroundings have taken theirs. */
export const linesShare = defineFormula({
  id: 'heat.share-lines',
  title: 'Share of the cooling lines',
  symbol: 'x_l',
  inputs: {
    spray: { symbol: 'x_1', unit: '%', meaning: 'share of the spray', range: [0, 95], domain: 'not-negative' },
    surroundings: { symbol: 'x_2', unit: '%', meaning: 'share of the surroundings', range: [0, 95], domain: 'not-negative' },
  },
  unit: '%',
  equation: '100 - x_1 - x_2',
  requires: [{ text: 'shares that leave something to the lines', holds: (x) => x.spray + x.surroundings < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the shares are rules of thumb',
  compute: ({ spray, surroundings }) => 100 - spray - surroundings,
});

/** Heat of a shot that goes into the die. */
export const heatToDie = defineFormula({
  id: 'heat.die',
  title: 'Heat of a shot to the die',
  symbol: 'E_d',
  inputs: {
    heat: { symbol: 'E_q', unit: 'kJ', meaning: 'heat of a shot', range: [0.1, 150000] },
    tip: { symbol: 'E_t', unit: 'kJ', meaning: 'heat that plunger tip and sleeve take', range: [0, 50000], domain: 'not-negative' },
  },
  unit: 'kJ',
  equation: 'E_q - E_t',
  requires: [{ text: 'a tip that takes less than the whole', holds: (x) => x.tip < x.heat }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the share of the tip is a rule of thumb',
  compute: ({ heat, tip }) => heat - tip,
});

/** Heat that a die lacks where spray and surroundings could take more than the shots bring. */
export const heatMissing = defineFormula({
  id: 'heat.missing',
  title: 'Heat that the lines must bring',
  symbol: 'P_m',
  inputs: {
    losses: { symbol: 'P_l', unit: 'kW', meaning: 'what spray and surroundings could take', range: [0.01, 1000] },
    rate: { symbol: 'P', unit: 'kW', meaning: 'heat rate of the die', range: [0.01, 1000] },
  },
  unit: 'kW',
  equation: 'P_l - P',
  requires: [{ text: 'losses above the heat rate', holds: (x) => x.losses > x.rate }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the estimate of the losses, a factor of two',
  compute: ({ losses, rate }) => losses - rate,
});
