import { defineFormula } from '../../kernel/formula.ts';

const RATE = { symbol: 'P', unit: 'kW', meaning: 'heat rate that the lines must take', range: [0.01, 500] } as const;
const SURFACE = { symbol: 'T_s', unit: 'degC', meaning: 'mean temperature of the die surface', range: [100, 700], domain: 'any' } as const;
const CONDUCTANCE = { symbol: 'UA', unit: 'W/K', meaning: 'conductance from die surface to coolant', range: [0.1, 5000] } as const;

/** Coolant temperature at which the lines take just the heat that the balance leaves them. */
export const coolantTemperature = defineFormula({
  id: 'cooling.coolant-temperature',
  title: 'Coolant temperature that holds the die',
  symbol: 'T_c',
  inputs: {
    surface: SURFACE,
    rate: RATE,
    conductance: CONDUCTANCE,
    least: { symbol: 'T_0', unit: 'degC', meaning: 'coldest that the coolant is run', range: [0, 300], domain: 'any', default: 0 },
  },
  unit: 'degC',
  equation: 'max(T_0, T_s - 1000 * P / UA)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the heat balance; the unit is set to it at the first shots and then to the die',
  compute: (x) => Math.max(x.least, x.surface - (1000 * x.rate) / x.conductance),
});

/** Coolant temperature for lines that must heat the die. */
export const heatingTemperature = defineFormula({
  id: 'cooling.heating-temperature',
  title: 'Temperature of a coolant that heats the die',
  symbol: 'T_c',
  inputs: { surface: SURFACE, above: { symbol: 'dT_c', unit: 'K', meaning: 'coolant above the die', range: [5, 100] } },
  unit: 'degC',
  equation: 'T_s + dT_c',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum',
  compute: ({ surface, above }) => surface + above,
});

/**
 * Shortest cycle at which the lines of one part of the die hold its temperature. The mean of the surface lies the less above
 * the one before the shot the longer the cycle is, by the root of the time, and so do the lines take less.
 */
export const cycleLeast = defineFormula({
  id: 'cooling.cycle-least',
  title: 'Shortest cycle that the lines hold',
  symbol: 't_l',
  inputs: {
    heat: { symbol: 'E_q', unit: 'kJ', meaning: 'heat of a shot that the lines of this part take', range: [0.1, 50000] },
    conductance: { symbol: 'UA', unit: 'W/K', meaning: 'conductance of the lines of this part', range: [0.1, 5000] },
    before: { symbol: 'T_d', unit: 'degC', meaning: 'die surface temperature before the shot', range: [100, 450], domain: 'any' },
    coolant: { symbol: 'T_c', unit: 'degC', meaning: 'coolant at its coldest', range: [10, 300], domain: 'any' },
    excess: {
      symbol: 'dT_s',
      unit: 'K',
      meaning: 'mean over the cycle above that before the shot, at the cycle of the elements',
      range: [0, 250],
      domain: 'not-negative',
      default: 0,
    },
    elements: { symbol: 't_e', unit: 's', meaning: 'cycle of the elements', range: [3, 300] },
  },
  unit: 's',
  where: [{ symbol: 'a_t', equation: 'dT_s * sqrt(t_e)' }],
  equation: '((sqrt(a_t^2 + 4000 * (T_d - T_c) * E_q / UA) - a_t) / (2 * (T_d - T_c)))^2',
  requires: [{ text: 'a die that is hotter before the shot than the coolant', holds: (x) => x.before > x.coolant }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the heat balance; spray and surroundings are taken to keep their share at another cycle',
  compute: (x) => {
    const root = x.excess * Math.sqrt(x.elements);
    const span = x.before - x.coolant;
    return ((Math.sqrt(root ** 2 + (4000 * span * x.heat) / x.conductance) - root) / (2 * span)) ** 2;
  },
});

/** Heat of one line when whole lines, each taking no more than the steel lets through, share the heat of a die half. */
export const sharedHeat = defineFormula({
  id: 'cooling.shared-heat',
  title: 'Heat of one line, shared evenly',
  symbol: 'q_n',
  inputs: {
    rate: { symbol: 'P', unit: 'kW', meaning: 'heat rate of the die half', range: [0.01, 500] },
    most: { symbol: 'q_m', unit: 'W', meaning: 'heat of one line, the steel alone in its way', range: [10, 20000] },
  },
  unit: 'W',
  equation: '1000 * P / ceil(1000 * P / q_m)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a bound from above: with the film in the way there are rather more lines',
  compute: ({ rate, most }) => (1000 * rate) / Math.ceil((1000 * rate) / most),
});

/** Flow of all circuits together. */
export const pumpFlow = defineFormula({
  id: 'cooling.pump-flow',
  title: 'Flow of the cooling unit',
  symbol: 'Q_p',
  inputs: {
    flow: { symbol: 'Q', unit: 'l/min', meaning: 'flow of one circuit', range: [0.1, 400] },
    length: { symbol: 'L_t', unit: 'm', meaning: 'length of all lines', range: [0.02, 200] },
    each: { symbol: 'L', unit: 'm', meaning: 'length of one line, which is one circuit', range: [0.01, 5] },
  },
  unit: 'l/min',
  equation: 'Q * L_t / L',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'every line a circuit of its own; lines joined in series need less flow and heat up more',
  compute: ({ flow, length, each }) => (flow * length) / each,
});

/** Of the pressure of a cooling unit, what is left for a circuit in the die; the rest goes into hoses and couplings. */
export const dieShare = defineFormula({
  id: 'cooling.die-share',
  title: 'Pressure of the unit left for a circuit',
  symbol: 'p_c',
  inputs: {
    pressure: { symbol: 'p_u', unit: 'bar', meaning: 'pressure that the unit drives with', range: [0.1, 40] },
    share: { symbol: 's', unit: '%', meaning: 'share left for the die', range: [1, 100] },
  },
  unit: 'bar',
  equation: 'p_u * s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the share, a planning figure; long thin hoses take more',
  compute: ({ pressure, share }) => (pressure * share) / 100,
});
