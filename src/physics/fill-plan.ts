import { defineFormula } from '../kernel/formula.ts';

/** Metal temperature at the gate: what the furnace or pot holds, less what the way to the gate takes. */
export const gateTemperature = defineFormula({
  id: 'fill.gate-temperature',
  title: 'Metal temperature at the gate',
  symbol: 'T_i',
  inputs: {
    holding_temperature: { symbol: 'T_h', unit: 'degC', meaning: 'temperature of the holding furnace or pot', range: [400, 1050], domain: 'any' },
    loss: { symbol: 'dT', unit: 'K', meaning: 'temperature lost on the way to the gate', range: [5, 60], domain: 'not-negative' },
  },
  unit: 'degC',
  equation: 'T_h - dT',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'as good as the loss: 20 to 50 K from ladle and sleeve, less with a fuller sleeve; measure it where it matters',
  compute: ({ holding_temperature, loss }) => holding_temperature - loss,
});

/** Solids allowed at the end of fill: a position between the tabled ends, by the demand on the surface. */
export const solidsAllowed = defineFormula({
  id: 'fill.solids',
  title: 'Solids allowed at the end of fill',
  symbol: 'S',
  inputs: {
    least: { symbol: 'S_1', unit: '%', meaning: 'solids allowed for the best finish', range: [0, 30], domain: 'not-negative' },
    greatest: { symbol: 'S_2', unit: '%', meaning: 'solids allowed where the surface does not matter', range: [0, 60], domain: 'not-negative' },
    position: { symbol: 'p', unit: '1', meaning: 'position between the two, 0 for the best finish, 1 for no demand', range: [0, 1], domain: 'not-negative' },
  },
  unit: '%',
  equation: 'S_1 + p * (S_2 - S_1)',
  requires: [{ text: 'least <= greatest', holds: (x) => x.least <= x.greatest }],
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'the two ends are remembered figures; the position between them is a planning choice and moves the longest time by a third',
  compute: (x) => x.least + x.position * (x.greatest - x.least),
});

/**
 * The fill time to plan with: a stated share of the way from the recommended to the longest time, and never nearer to
 * the longest than the margin leaves. No mean of two rules: one is what a good casting likes, the other what still fills.
 */
export const plannedFillTime = defineFormula({
  id: 'fill.time',
  title: 'Planned fill time',
  symbol: 't',
  inputs: {
    recommended: { symbol: 't_rec', unit: 'ms', meaning: 'recommended fill time', range: [2, 300] },
    longest: { symbol: 't_max', unit: 'ms', meaning: 'longest fill time', range: [2, 500] },
    share: { symbol: 'w', unit: '1', meaning: 'share of the way from the recommended to the longest time', range: [0, 1], domain: 'not-negative' },
    ceiling: { symbol: 'c', unit: '1', meaning: 'greatest share of the longest time that is planned', range: [0.5, 1] },
  },
  unit: 'ms',
  equation: 'min(t_rec + w * (t_max - t_rec), c * t_max)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning choice between two limits that lie two to three times apart; the die trial decides',
  compute: (x) => Math.min(x.recommended + x.share * (x.longest - x.recommended), x.ceiling * x.longest),
});
