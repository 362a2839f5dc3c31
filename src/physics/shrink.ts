import { defineFormula } from '../kernel/formula.ts';

/** Size that the cold die must have for a dimension of the cold casting. */
export const cavityDimension = defineFormula({
  id: 'shrink.cavity-dimension',
  title: 'Cavity dimension',
  symbol: 'X_c',
  inputs: {
    dimension: { symbol: 'X', unit: 'mm', meaning: 'dimension of the casting at room temperature', range: [0.5, 3000] },
    allowance: { symbol: 's', unit: '%', meaning: 'linear shrink allowance', range: [0, 1.5], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'X * (1 + s / 100)',
  outside: 'extrapolate',
  source: ['EMPIRE-FAQ'],
  status: 'source',
  accuracy: 'as good as the allowance: held dimensions shrink about half as much as free ones; dividing by 1 - s instead differs by 0.004 % at 0.6 %',
  compute: ({ dimension, allowance }) => dimension * (1 + allowance / 100),
});

/** What the cavity is larger than the casting: the figure that the die maker adds to each dimension. */
export const shrinkAdded = defineFormula({
  id: 'shrink.added',
  title: 'Shrink added to a dimension',
  symbol: 'd_X',
  inputs: {
    dimension: { symbol: 'X', unit: 'mm', meaning: 'dimension of the casting at room temperature', range: [0.5, 3000] },
    allowance: { symbol: 's', unit: '%', meaning: 'linear shrink allowance', range: [0, 1.5], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'X * s / 100',
  outside: 'extrapolate',
  source: ['EMPIRE-FAQ'],
  status: 'source',
  accuracy: 'as good as the allowance',
  compute: ({ dimension, allowance }) => (dimension * allowance) / 100,
});

/** Shrink allowance from physics: contraction of the alloy after ejection less the growth of the die when warm. */
export const shrinkFromContraction = defineFormula({
  id: 'shrink.from-contraction',
  title: 'Shrink allowance from contraction',
  symbol: 's',
  inputs: {
    alloy_expansion: { symbol: 'a_a', unit: 'um/(m.K)', meaning: 'linear expansion of the alloy', range: [15, 35] },
    steel_expansion: { symbol: 'a_s', unit: 'um/(m.K)', meaning: 'linear expansion of the cavity steel', range: [9, 15] },
    eject_temperature: { symbol: 'T_e', unit: 'degC', meaning: 'temperature of the casting when it leaves the die', range: [150, 600], domain: 'any' },
    die_temperature: { symbol: 'T_d', unit: 'degC', meaning: 'temperature of the cavity steel when the casting leaves', range: [100, 400], domain: 'any' },
    room_temperature: {
      symbol: 'T_r',
      unit: 'degC',
      meaning: 'temperature at which casting and die are measured',
      range: [15, 30],
      domain: 'any',
      default: 20,
    },
  },
  unit: '%',
  equation: '(a_a * (T_e - T_r) - a_s * (T_d - T_r)) / 10000',
  requires: [
    {
      text: 'eject_temperature >= die_temperature >= room_temperature',
      holds: ({ eject_temperature, die_temperature, room_temperature }) => eject_temperature >= die_temperature && die_temperature >= room_temperature,
    },
    {
      text: 'an alloy that contracts more than the die has grown',
      holds: (x) => x.alloy_expansion * (x.eject_temperature - x.room_temperature) > x.steel_expansion * (x.die_temperature - x.room_temperature),
    },
  ],
  outside: 'extrapolate',
  source: ['HOOK-STABILITY'],
  status: 'derived',
  accuracy: 'free contraction only: brackets the usual 0.6 % for aluminium, falls below it for zinc (0.32 %); metal held on a core gives about half',
  compute: (x) => (x.alloy_expansion * (x.eject_temperature - x.room_temperature) - x.steel_expansion * (x.die_temperature - x.room_temperature)) / 10000,
});
