import { defineFormula } from '../kernel/formula.ts';

const shot_mass = {
  symbol: 'M_s',
  unit: 'kg',
  meaning: 'metal of a shot that falls to one casting, with runner, overflows and biscuit',
  range: [0.001, 250],
} as const;
const part_mass = { symbol: 'M_p', unit: 'kg', meaning: 'mass of the trimmed casting', range: [0.0005, 200] } as const;
const scrap = { symbol: 's', unit: '%', meaning: 'castings rejected and melted again', range: [0, 40], domain: 'not-negative' } as const;
const loss = { symbol: 'l', unit: '%', meaning: 'metal lost each time it is melted, of what goes in', range: [0, 20], domain: 'not-negative' } as const;
const someGood = { text: 'a scrap share below 100 %', holds: (x: { readonly scrap: number }) => x.scrap < 100 } as const;
const someLeft = { text: 'a loss below 100 %', holds: (x: { readonly loss: number }) => x.loss < 100 } as const;
const BALANCE =
  'exact balance of a shop that melts all its returns and rejects again, once it runs steadily; as good as the loss, which differs much between furnaces';

/** Metal of the shot that falls to each of its castings. */
export const shotPerPart = defineFormula({
  id: 'metal.shot-per-part',
  title: 'Metal cast for one casting',
  symbol: 'M_s',
  inputs: {
    shot: { symbol: 'M_t', unit: 'kg', meaning: 'all metal of one shot', range: [0.001, 500] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
  },
  unit: 'kg',
  equation: 'M_t / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ shot, cavities }) => shot / cavities,
});

/** Share of the metal cast that is casting; the rest is returns. */
export const metalYield = defineFormula({
  id: 'metal.yield',
  title: 'Yield of the shot',
  symbol: 'y',
  inputs: { part_mass: { ...part_mass, range: [0.0005, 500] }, shot_mass: { ...shot_mass, range: [0.001, 1000] } },
  unit: '%',
  equation: '100 * M_p / M_s',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => (100 * x.part_mass) / x.shot_mass,
});

/** Loss from what went into the furnace and what came out of it. */
export const meltLoss = defineFormula({
  id: 'metal.melt-loss',
  title: 'Metal lost in melting',
  symbol: 'l',
  inputs: {
    charged: { symbol: 'M_i', unit: 'kg', meaning: 'metal charged', range: [0.001, 1e7] },
    poured: { symbol: 'M_o', unit: 'kg', meaning: 'metal that came out', range: [0.0001, 1e7] },
  },
  unit: '%',
  equation: '100 * (M_i - M_o) / M_i',
  requires: [{ text: 'no more poured than charged', holds: (x) => x.poured <= x.charged }],
  outside: 'extrapolate',
  source: ['AFS-MELT-COST'],
  status: 'source',
  accuracy: 'exact once the level in the furnace is the same before and after',
  compute: (x) => (100 * (x.charged - x.poured)) / x.charged,
});

/** Ingot that one good casting takes, while returns and rejects are melted again. */
export const newPerPart = defineFormula({
  id: 'metal.new-per-part',
  title: 'New metal for a good casting',
  symbol: 'M_n',
  inputs: { part_mass, shot_mass, scrap, loss },
  unit: 'kg',
  equation: 'M_p + M_s / (1 - s / 100) * (l / 100) / (1 - l / 100)',
  requires: [someGood, someLeft],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: BALANCE,
  compute: (x) => x.part_mass + ((x.shot_mass / (1 - x.scrap / 100)) * (x.loss / 100)) / (1 - x.loss / 100),
});

/** What melting loses, of the mass of the casting: the way in which the trade charges it. */
export const lossShare = defineFormula({
  id: 'metal.loss-share',
  title: 'Metal lost in melting, of the net mass',
  symbol: 'l_n',
  inputs: { new_metal: { symbol: 'M_n', unit: 'kg', meaning: 'new metal for a good casting', range: [0.0005, 400] }, part_mass },
  unit: '%',
  equation: '100 * (M_n - M_p) / M_p',
  outside: 'extrapolate',
  source: ['APOGEE-HPDC-COST', 'IZA-ECONOMICS'],
  status: 'derived',
  accuracy: 'exact; buyers and casters agree on 5 to 6 % for aluminium and about 5 % for zinc',
  compute: (x) => (100 * (x.new_metal - x.part_mass)) / x.part_mass,
});

/** Metal that goes through the furnace for one good casting, rejects and losses included. */
export const meltedPerPart = defineFormula({
  id: 'metal.melted-per-part',
  title: 'Metal melted for a good casting',
  symbol: 'M_m',
  inputs: { shot_mass, scrap, loss },
  unit: 'kg',
  equation: 'M_s / (1 - s / 100) / (1 - l / 100)',
  requires: [someGood, someLeft],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: BALANCE,
  compute: (x) => x.shot_mass / (1 - x.scrap / 100) / (1 - x.loss / 100),
});

/** Runner, overflows, biscuit and rejects that come back for one good casting. */
export const returnsPerPart = defineFormula({
  id: 'metal.returns-per-part',
  title: 'Returns of a good casting',
  symbol: 'M_r',
  inputs: { part_mass, shot_mass, scrap },
  unit: 'kg',
  equation: 'M_s / (1 - s / 100) - M_p',
  requires: [someGood, { text: 'a shot that weighs as much as its castings', holds: (x) => x.shot_mass >= x.part_mass }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact balance; metal spilt and flash swept up are part of it',
  compute: (x) => x.shot_mass / (1 - x.scrap / 100) - x.part_mass,
});

/** Heat of a kilogram from room temperature to the furnace: solid, latent and liquid part. */
export const meltingHeat = defineFormula({
  id: 'metal.melting-heat',
  title: 'Heat of the molten metal',
  symbol: 'q_m',
  inputs: {
    holding: { symbol: 'T_h', unit: 'degC', meaning: 'holding temperature', range: [250, 1150], domain: 'any' },
    liquidus: { symbol: 'T_L', unit: 'degC', meaning: 'liquidus', range: [180, 1000], domain: 'any' },
    room: { symbol: 'T_r', unit: 'degC', meaning: 'temperature of ingot and returns as charged', range: [0, 150], domain: 'any', default: 20 },
    cp_liquid: { symbol: 'c_l', unit: 'J/(kg.K)', meaning: 'specific heat of the liquid', range: [100, 1500] },
    cp_solid: { symbol: 'c_s', unit: 'J/(kg.K)', meaning: 'specific heat of the solid', range: [100, 1200] },
    latent: { symbol: 'L_f', unit: 'kJ/kg', meaning: 'latent heat of fusion', range: [20, 700] },
  },
  unit: 'kJ/kg',
  equation: 'c_s * (T_L - T_r) / 1000 + L_f + c_l * (T_h - T_L) / 1000',
  requires: [
    { text: 'holding >= liquidus', holds: (x) => x.holding >= x.liquidus },
    { text: 'liquidus above the temperature as charged', holds: (x) => x.liquidus > x.room },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact balance; the specific heat of the solid rises with temperature, which is left out here and makes it some 10 % low',
  compute: (x) => (x.cp_solid * (x.liquidus - x.room)) / 1000 + x.latent + (x.cp_liquid * (x.holding - x.liquidus)) / 1000,
});

/** Energy that melting and holding take, from the heat of the metal and what a furnace brings into it. */
export const meltingEnergy = defineFormula({
  id: 'metal.melting-energy',
  title: 'Energy for melting and holding',
  symbol: 'e_m',
  inputs: {
    heat: { symbol: 'q_m', unit: 'kJ/kg', meaning: 'heat of the molten metal', range: [30, 2000] },
    efficiency: { symbol: 'eta', unit: '%', meaning: 'share of the energy that is heat of poured metal', range: [5, 100] },
  },
  unit: 'kWh/kg',
  equation: 'q_m / 3600 / (eta / 100)',
  requires: [{ text: 'an efficiency of 100 % or less', holds: ({ efficiency }) => efficiency <= 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the efficiency: melting furnaces and weeks of holding differ by a factor of three',
  compute: ({ heat, efficiency }) => heat / 3600 / (efficiency / 100),
});

/** Energy for all metal that goes through the furnace for a casting; also for each kilogram of it. */
export const energyPerKg = defineFormula({
  id: 'metal.energy-per-kg',
  title: 'Energy for a kilogram of good castings',
  symbol: 'e_g',
  inputs: {
    melted: { symbol: 'M_m', unit: 'kg', meaning: 'metal melted for a good casting', range: [0.001, 500] },
    energy: { symbol: 'e_m', unit: 'kWh/kg', meaning: 'energy for each kilogram melted', range: [0.01, 10] },
    part_mass,
  },
  unit: 'kWh/kg',
  equation: 'M_m * e_m / M_p',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'melting and holding only: the machine, its hydraulics and the tempering units are in the hourly rate',
  compute: (x) => (x.melted * x.energy) / x.part_mass,
});
