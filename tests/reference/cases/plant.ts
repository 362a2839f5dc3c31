import type { Case } from '../case.ts';

const RATES = 'NADCA FAQ data (NADCA-FAQ), least and greatest shots an hour; the geometric mean is worked by hand and is a choice of ours';

/** Heat by hand: liquid specific heats from memory; the latent heat of A380 is the older handbook figure. */
const HEATS = [
  ['A380', 660, 595, 540, 385, 1100, 963, 389, 662.7],
  // The balance was struck with the liquidus of A380 (595), not with the 590 degC of the 380.0 data (765.4 kJ/kg).
  ['380.0', 660, 595, 540, 385, 1100, 870, 510, 764.2],
  ['380.0 with its own liquidus', 660, 590, 540, 385, 1100, 870, 510, 77 + 510 + 0.87 * 205],
  ['Zamak 3', 425, 387, 381, 300, 505, 419, 110, 165.6],
  ['AZ91D', 650, 595, 470, 430, 1350, 1050, 373, 620.5],
  ['C85800', 950, 900, 870, 500, 450, 380, 170, 344.5],
] as const;

export const cases: readonly Case[] = [
  ...(
    [
      ['machine.reserve-clamp', { use: 77.4 }, 22.6],
      ['machine.reserve-speed', { speed: 2.79, available: 3.3 }, 15.4545454545],
      ['machine.reserve-stroke', { needed: 60, stroke: 450 }, 86.6666666667],
      ['machine.reserve-fill', { fill: 52.5, least: 30, greatest: 75 }, 100],
      ['machine.reserve-fill', { fill: 45, least: 30, greatest: 75 }, 66.6666666667],
      ['machine.reserve-fill', { fill: 25, least: 30, greatest: 75 }, -22.2222222222],
      ['machine.reserve-window', { use: 39.7 }, 60.3],
    ] as const
  ).map(([formula, inputs, expected]) => ({ formula, inputs, expected, tolerance: { absolute: 1e-9 }, from: 'derived, by hand' })),
  {
    formula: 'machine.mean-rate',
    inputs: { least_rate: 40, greatest_rate: 200 },
    expected: 89.44,
    tolerance: { absolute: 0.005 },
    from: `${RATES}: aluminium, sqrt(8000)`,
  },
  {
    formula: 'machine.mean-rate',
    inputs: { least_rate: 200, greatest_rate: 550 },
    expected: 331.7,
    tolerance: { absolute: 0.05 },
    from: `${RATES}: zinc, sqrt(110000)`,
  },
  {
    formula: 'machine.hours-needed',
    inputs: { parts: 171000, cavities: 2, rate: 60, use_share: 75, reject_share: 5 },
    expected: 2000,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 90 parts an hour, 85.5 of them good',
  },

  // 4000 h at 60 shots an hour, 80 % in use, 5 % rejected: 182,400 good parts a year from one cavity.
  ...(
    [
      [182400, 1],
      [182401, 2],
      [364800, 2],
      [600000, 4],
    ] as const
  ).map(([parts_per_year, expected]) => ({
    formula: 'cavities.demand',
    inputs: { parts_per_year, hours_per_year: 4000, shots_per_hour: 60, use_share: 80, reject_share: 5 },
    expected,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: 182,400 good parts a year from one cavity',
  })),
  // n >= L K t_c / t_m: 50,000 parts, K = 1/0.9, 90 s each, 1,000,000 s at hand: 5.0 cavities.
  {
    formula: 'cavities.demand',
    inputs: { parts_per_year: 50000, hours_per_year: 1e6 / 3600, shots_per_hour: 40, use_share: 100, reject_share: 10 },
    expected: 5,
    tolerance: { absolute: 1e-12 },
    from: 'page on mould cavities (ZHILIAN-CAVITIES, vendor), form n = L K t_c / t_m; numbers by hand',
  },

  {
    formula: 'die.opening-stroke',
    inputs: { depth: 150 },
    expected: 420,
    tolerance: { absolute: 1e-9 },
    from: 'from memory: textbook rule 2 D + 12 in centimetres, 42 cm for a part 15 cm deep',
  },
  {
    formula: 'die.steel-around',
    inputs: { area: 200, small: 50, common: 75, growth: 5 },
    expected: 85,
    tolerance: { absolute: 1e-9 },
    from: 'from memory: textbook rule, 75 mm and 5 mm for each 100 cm2 of cavity',
  },
  {
    formula: 'die.steel-around',
    inputs: { area: 50, small: 50, common: 75, growth: 5 },
    expected: 65,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: half way from 50 to 75 mm, and 2.5 mm',
  },

  ...HEATS.map(([alloy, gate_temperature, liquidus, solidus, eject_temperature, cp_liquid, cp_solid, latent, expected]) => ({
    formula: 'heat.per-mass',
    inputs: { gate_temperature, liquidus, solidus, eject_temperature, cp_liquid, cp_solid, latent },
    expected,
    tolerance: { absolute: 0.06 },
    from: `derived, worked by hand: ${alloy}, c_l (T_i - T_L) + L + c_s (T_L - T_e)`,
  })),
];
