import { defineFormula } from '../kernel/formula.ts';

const ABSOLUTE_ZERO = 273.15;

/** Volume that trapped gas keeps in the casting under the metal pressure: ideal gas. */
export const trappedGasVolume = defineFormula({
  id: 'porosity.gas-volume',
  title: 'Volume of trapped gas under metal pressure',
  symbol: 'V_t',
  inputs: {
    gas_volume: { symbol: 'V_g', unit: 'cm3', meaning: 'gas in cavity, runner and sleeve before the shot', range: [0.1, 200000] },
    gas_pressure: { symbol: 'p_g', unit: 'mbar', meaning: 'absolute pressure of that gas', range: [10, 1100] },
    gas_temperature: { symbol: 'T_g', unit: 'degC', meaning: 'temperature of that gas', range: [0, 500], domain: 'any' },
    metal_pressure: { symbol: 'p_m', unit: 'MPa', meaning: 'metal pressure, intensified', range: [5, 150] },
    metal_temperature: { symbol: 'T_m', unit: 'degC', meaning: 'temperature of the metal when the pressure acts', range: [200, 1000], domain: 'any' },
    trapped: { symbol: 'x', unit: '%', meaning: 'share of the gas that stays in the metal', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'cm3',
  equation: 'x / 100 * V_g * p_g / (10000 * p_m) * (T_m + 273.15) / (T_g + 273.15)',
  requires: [
    { text: 'temperatures above absolute zero', holds: (x) => x.gas_temperature > -ABSOLUTE_ZERO && x.metal_temperature > -ABSOLUTE_ZERO },
    { text: 'a trapped share of 100 % or less', holds: ({ trapped }) => trapped <= 100 },
  ],
  outside: 'extrapolate',
  source: ['KB-VACUUM'],
  status: 'derived',
  accuracy:
    'ideal gas; air so dense takes up more, by an estimate a fifth at 70 MPa. The share trapped is a guess, and lubricant vapour and hydrogen come on top; the source takes the gas at constant temperature',
  compute: (x) =>
    (((x.trapped / 100) * x.gas_volume * x.gas_pressure) / (10000 * x.metal_pressure)) *
    ((x.metal_temperature + ABSOLUTE_ZERO) / (x.gas_temperature + ABSOLUTE_ZERO)),
});
