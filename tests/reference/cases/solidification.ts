import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';
const AL = { density: 2.5, cp_liquid: 1100, cp_solid: 963, latent: 389, liquidus: 595, solidus: 540, conductivity: 96.2 };
const H13 = { die_conductivity: 25, die_density: 7800, die_specific_heat: 460 };
/** A pure metal without superheat that touches the die perfectly: the case that Neumann and Schwarz solved. */
const PURE = { ...AL, density: 2.7, cp_liquid: 963, liquidus: 577, solidus: 577, latent: 420, gate_temperature: 577, die_temperature: 200, ...H13 };

export const cases: readonly Case[] = [
  // The published bound is for all of the heat at once: rho h / 2 dH / (h_i (T_m - T_d)), 2,500 kg/m3, 3 mm.
  ...(
    [
      [5000, 1.49],
      [10000, 0.74],
      [20000, 0.37],
    ] as const
  ).map(([coefficient, expected]) => ({
    formula: 'cooling.interface-time',
    inputs: { wall: 3, density: 2.5, heat: 744, interface: coefficient, metal_temperature: 595, die_temperature: 220 },
    expected,
    tolerance: { absolute: 0.005 },
    from: `facts on solidification: aluminium, 3 mm, at ${coefficient} W/(m2.K), printed to two decimals; the heat is the one that its first figure asks for`,
  })),
  {
    formula: 'cooling.handbook-time',
    inputs: { beta: 0.47, wall: 3 },
    expected: 4.23,
    tolerance: { absolute: 0.005 },
    from: 'worked case of the handbook form (remembered constant): aluminium, 3 mm',
  },
  ...(
    [
      [0.4, [0.4, 1.6, 3.6, 10, 25.6]],
      [0.47, [0.47, 1.88, 4.23, 11.75, 30.1]],
      [0.31, [0.31, 1.24, 2.79, 7.75, 19.8]],
      [0.63, [0.63, 2.52, 5.67, 15.8, 40.3]],
    ] as const
  ).flatMap(([beta, times]) =>
    [1, 2, 3, 5, 8].map((wall, i) => ({
      formula: 'cooling.handbook-time',
      inputs: { beta, wall },
      expected: times[i] as number,
      tolerance: { absolute: wall < 3 ? 0.00501 : 0.0501 },
      from: `table of the handbook form, ${wall} mm`,
    })),
  ),
  // b = sqrt(96.2 2700 963 / (25 7800 460)) = 1.66988, s = 963 377 / (420000 sqrt(pi)) = 0.48769; at z = 0.2383 z exp(z^2) (erf z + b) is s.
  {
    formula: 'cooling.freezing-constant',
    inputs: { heat: 420, metal_temperature: 577, die_temperature: 200, density: 2.7, cp_solid: 963, conductivity: 96.2, ...H13 },
    expected: 0.23828,
    tolerance: { absolute: 1e-5 },
    from: 'the equation solved by halving in another language, with its own error function',
  },
  // Cold, perfectly conducting die: b = 0 is Stefan's problem, sqrt(pi) z exp(z^2) erf z = Ste; z = 0.5 gives Ste = 0.59228.
  {
    formula: 'cooling.freezing-constant',
    inputs: {
      heat: 400,
      metal_temperature: 600,
      die_temperature: 100,
      density: 2.7,
      cp_solid: (1e3 * 400 * 0.592283) / 500,
      conductivity: 1e-6,
      die_conductivity: 1e6,
      die_density: 8000,
      die_specific_heat: 400,
    },
    expected: 0.5,
    tolerance: { absolute: 2e-4 },
    from: "limiting case: Stefan's problem, for which the Stefan number of z = 0.5 is 0.5 sqrt(pi) e^0.25 erf(0.5) = 0.5923",
  },
  {
    formula: 'cooling.contact-time',
    inputs: { wall: 3, constant: 0.5, density: 2.7, cp_solid: 963, conductivity: 96.2 },
    expected: 0.0608,
    tolerance: { absolute: 5e-5 },
    from: `${HAND}: (1.5 mm)^2 over a diffusivity of 37.0 mm2/s`,
  },
  // The heat solution against the exact one: 20 mm, perfect contact (the coefficient as large as the formula takes).
  {
    formula: 'cooling.solidification-time',
    inputs: { wall: 20, ...PURE, interface: 60000 },
    expected: 12.4,
    tolerance: { relative: 0.03 },
    from: 'exact solution of Neumann and Schwarz: z = 0.2383, (10 mm / 2 z)^2 / 37.0 mm2/s = 11.90 s, and 0.5 s more because the coefficient has an end: 10 mm x 2,700 kg/m3 x 420 kJ/kg over 60,000 W/(m2.K) x 377 K',
  },
  // Interface alone: a thin wall of a metal that conducts well against a die that conducts perfectly.
  {
    formula: 'cooling.solidification-time',
    inputs: { wall: 1, ...PURE, conductivity: 180, die_conductivity: 260, die_density: 19000, die_specific_heat: 600, interface: 1000 },
    expected: 1.504,
    tolerance: { relative: 0.03 },
    from: `limiting case: 2,700 kg/m3 x 0.5 mm x 420 kJ/kg over 1,000 W/(m2.K) x 377 K; even this die warms by some 10 K`,
  },
  {
    formula: 'cooling.solidification-time',
    inputs: { wall: 3.2, ...AL, density: 2.71, cp_liquid: 1177, latent: 451, gate_temperature: 635, die_temperature: 215, ...H13, interface: 10000 },
    expected: 1.447,
    tolerance: { relative: 0.01 },
    from: 'the same equations on a grid eight and four times as fine with steps thirty times as small',
  },
  {
    formula: 'cooling.ejection-time',
    inputs: {
      wall: 3.2,
      ...AL,
      density: 2.71,
      cp_liquid: 1177,
      latent: 451,
      gate_temperature: 635,
      die_temperature: 215,
      ...H13,
      interface: 10000,
      gap: 2000,
      eject_temperature: 385,
    },
    expected: 4.563,
    tolerance: { relative: 0.01 },
    from: 'the same equations on a grid eight and four times as fine with steps thirty times as small',
  },
  // Solid and well conducting: the wall cools as one body, T - T_d falls with exp(-h t / (rho c h/2)).
  {
    formula: 'cooling.ejection-time',
    inputs: {
      wall: 1,
      ...PURE,
      conductivity: 180,
      die_conductivity: 260,
      die_density: 19000,
      die_specific_heat: 600,
      interface: 1000,
      gap: 1000,
      eject_temperature: 388.5,
    },
    expected: 2.405,
    tolerance: { relative: 0.035 },
    from: `limiting case: 1.504 s to freeze, then 1.30 s x ln 2 to fall from 377 K to half of it above the die`,
  },
  {
    formula: 'cooling.ejection-time',
    inputs: {
      wall: 1.8,
      density: 6.6,
      cp_liquid: 480,
      cp_solid: 419,
      latent: 110,
      liquidus: 387,
      solidus: 381,
      conductivity: 113,
      gate_temperature: 407,
      die_temperature: 175,
      ...H13,
      interface: 5000,
      gap: 2000,
      eject_temperature: 300,
    },
    expected: 2.02,
    tolerance: { relative: 0.01 },
    from: 'the same equations for a zinc wall on a grid eight and four times as fine with steps thirty times as small',
  },
  // Both ends of the same run.
  {
    formula: 'cooling.opening-temperature',
    inputs: {
      wall: 1,
      ...PURE,
      conductivity: 180,
      die_conductivity: 260,
      die_density: 19000,
      die_specific_heat: 600,
      interface: 1000,
      gap: 1000,
      time: 2.405,
    },
    expected: 388.5,
    tolerance: { absolute: 12 },
    from: 'limiting case: the wall that cools as one body, at the time of the case before',
  },
  {
    formula: 'cooling.opening-temperature',
    inputs: { wall: 1, ...PURE, interface: 20000, gap: 10000, time: 60 },
    expected: 200,
    tolerance: { absolute: 3 },
    from: 'limiting case: after a minute a wall of 1 mm is as cold as the die',
  },
  {
    formula: 'cooling.opening-temperature',
    inputs: { wall: 20, ...PURE, interface: 10000, gap: 2000, time: 0.2 },
    expected: 577,
    tolerance: { absolute: 1 },
    from: 'limiting case: a thick wall is still at its freezing temperature a moment after the fill',
  },
  {
    formula: 'cooling.heat-to-solid',
    inputs: { gate_temperature: 660, liquidus: 595, solidus: 540, cp_liquid: 1100, cp_solid: 963, latent: 389 },
    expected: 513.5,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: 71.5 + 389 + 0.963 x 55 kJ/kg, two of them as in the worked case of heat per shot`,
  },
  {
    formula: 'cooling.disc-wall',
    inputs: { thickness: 40, diameter: 80 },
    expected: 20,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: a disc as high as half its diameter, twice 201,062 mm3 over 20,106 mm2`,
  },
  {
    formula: 'cooling.disc-wall',
    inputs: { thickness: 2, diameter: 250 },
    expected: 1.9685,
    tolerance: { absolute: 1e-4 },
    from: 'limiting case: a thin disc is a wall of its thickness',
  },
  {
    formula: 'cooling.sprue-shell',
    inputs: { foot: Math.PI * 4, area: (700 * Math.PI) / 4 },
    expected: 20 - 15,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: a foot of 40 mm with 700 pi / 4 mm2 of metal in it leaves a spreader of 30 mm, for 1600 - 700 = 900',
  },
  {
    formula: 'cooling.bar-wall',
    inputs: { depth: 12, width: 12 },
    expected: 6,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: a square bar, twice 144 mm2 over 48 mm`,
  },
  { formula: 'cooling.between-faces', inputs: { first: 9, second: 9 }, expected: 9, tolerance: { absolute: 1e-9 }, from: 'limiting case: two like faces' },
  {
    formula: 'cooling.between-faces',
    inputs: { first: 16, second: 4 },
    expected: 7.1111,
    tolerance: { absolute: 1e-4 },
    from: `${HAND}: (2 / (1/4 + 1/2))^2; fronts that pass 4 and 8 mm in 16 s meet over 12 mm`,
  },
  {
    formula: 'cooling.dwell',
    inputs: { casting: 4.6, thick: 4.1, runner: 9.6, biscuit: 11, hold: 5.5 },
    expected: 11,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: the greatest of five`,
  },
  { formula: 'cooling.dwell', inputs: { casting: 2 }, expected: 2, tolerance: { absolute: 1e-9 }, from: 'limiting case: nothing but the wall' },
  {
    formula: 'cooling.wall-for-time',
    inputs: { wall: 9, time: 12, wanted: 3 },
    expected: 4.5,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: half the wall, a quarter of the time`,
  },
];
