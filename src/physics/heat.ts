import { defineFormula } from '../kernel/formula.ts';

/** Heat that a kilogram of metal gives off in the die, from the gate to ejection: liquid, latent, mushy and solid part. */
export const heatPerMass = defineFormula({
  id: 'heat.per-mass',
  title: 'Heat given off in the die per mass',
  symbol: 'q',
  inputs: {
    gate_temperature: { symbol: 'T_i', unit: 'degC', meaning: 'metal temperature at the gate', range: [380, 1050], domain: 'any' },
    liquidus: { symbol: 'T_L', unit: 'degC', meaning: 'liquidus of the alloy', range: [375, 930], domain: 'any' },
    solidus: { symbol: 'T_S', unit: 'degC', meaning: 'solidus of the alloy', range: [370, 910], domain: 'any' },
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'mean temperature of the casting at ejection', range: [150, 880], domain: 'any' },
    cp_liquid: { symbol: 'c_l', unit: 'J/(kg.K)', meaning: 'specific heat of the liquid', range: [300, 1500] },
    cp_solid: { symbol: 'c_s', unit: 'J/(kg.K)', meaning: 'specific heat of the solid', range: [300, 1200] },
    latent: { symbol: 'L_f', unit: 'kJ/kg', meaning: 'latent heat of fusion', range: [50, 700] },
  },
  unit: 'kJ/kg',
  where: [
    { symbol: 'q_liquid', equation: 'c_l * (T_i - T_L) / 1000' },
    { symbol: 'q_mushy', equation: 'c_s * (T_L - T_S) / 1000' },
    { symbol: 'q_solid', equation: 'c_s * (T_S - T_e) / 1000' },
  ],
  equation: 'q_liquid + L_f + q_mushy + q_solid',
  requires: [
    { text: 'gate_temperature >= liquidus', holds: (x) => x.gate_temperature >= x.liquidus },
    { text: 'liquidus >= solidus', holds: (x) => x.liquidus >= x.solidus },
    { text: 'solidus > eject_temperature', holds: (x) => x.solidus > x.eject_temperature },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact balance; published latent heats of aluminium-silicon alloys spread from 389 to 550 kJ/kg, which moves the result by 15 to 25 %',
  compute: (x) =>
    (x.cp_liquid * (x.gate_temperature - x.liquidus) + x.cp_solid * (x.liquidus - x.solidus) + x.cp_solid * (x.solidus - x.eject_temperature)) / 1000 +
    x.latent,
});
