import { defineFormula } from '../kernel/formula.ts';

/** Hydraulic pressure to set for a metal pressure. */
export const hydraulicPressure = defineFormula({
  id: 'intensification.hydraulic-pressure',
  title: 'Hydraulic pressure for a metal pressure',
  symbol: 'p_h',
  inputs: {
    metal_pressure: { symbol: 'p_m', unit: 'MPa', meaning: 'metal pressure in front of the plunger', range: [2, 150] },
    cylinder_diameter: { symbol: 'd_h', unit: 'mm', meaning: 'diameter of the shot cylinder', range: [40, 500] },
    plunger_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'MPa',
  equation: 'p_m * d_p^2 / d_h^2',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact without friction of plunger and rings and without pressure on the rod side, which ask for more',
  compute: (x) => (x.metal_pressure * x.plunger_diameter ** 2) / x.cylinder_diameter ** 2,
});

/** Time in which a gate freezes, from a published time for one thickness: with the thickness squared, and by the alloy family. */
export const gateFreeze = defineFormula({
  id: 'intensification.gate-freeze',
  title: 'Time until the gate is frozen',
  symbol: 't_f',
  inputs: {
    time: { symbol: 't_1', unit: 'ms', meaning: 'published freezing time of a gate of the reference thickness', range: [10, 200] },
    reference: { symbol: 'T_1', unit: 'mm', meaning: 'thickness that the published time is for', range: [0.5, 3] },
    thickness: { symbol: 'T_g', unit: 'mm', meaning: 'gate thickness', range: [0.2, 10] },
    constant: { symbol: 'k_f', unit: 's/mm2', meaning: 'handbook constant of cooling time over wall squared, of the family', range: [0.2, 0.8] },
    reference_constant: { symbol: 'k_1', unit: 's/mm2', meaning: 'the same of aluminium, which the published time is for', range: [0.2, 0.8] },
  },
  unit: 'ms',
  equation: 't_1 * (T_g / T_1)^2 * k_f / k_1',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy:
    'one published range for one thickness, carried over by the square law; the metal that has just passed heats the gate, die temperature and velocity are not in it. A heat solution of the gate replaces it where it matters',
  compute: (x) => (x.time * (x.thickness / x.reference) ** 2 * x.constant) / x.reference_constant,
});

/** Gate thickness that stays liquid for a given time: the square law turned round. */
export const gateForTime = defineFormula({
  id: 'intensification.gate-for-time',
  title: 'Gate thickness that stays liquid for a time',
  symbol: 'T_n',
  inputs: {
    thickness: { symbol: 'T_g', unit: 'mm', meaning: 'gate thickness', range: [0.2, 10] },
    freeze: { symbol: 't_f', unit: 'ms', meaning: 'time until that gate is frozen', range: [1, 5000] },
    time: { symbol: 't', unit: 'ms', meaning: 'time for which the gate must stay liquid', range: [1, 500] },
  },
  unit: 'mm',
  equation: 'T_g * sqrt(t / t_f)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'as good as the freezing time it is scaled from',
  compute: (x) => x.thickness * Math.sqrt(x.time / x.freeze),
});

/** Metal that must follow to make up for the shrinkage of freezing. */
export const feedVolume = defineFormula({
  id: 'intensification.feed-volume',
  title: 'Metal to feed for the shrinkage',
  symbol: 'V_s',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'metal that freezes: casting, with its overflows', range: [0.1, 100000] },
    shrinkage: { symbol: 'b_s', unit: '%', meaning: 'volume lost from liquid to solid', range: [1, 8] },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64], default: 1 },
  },
  unit: 'cm3',
  equation: 'n * V * b_s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'all of it would be fed if the gate stayed open to the end; what freezes after the gate is not',
  compute: (x) => (x.cavities * x.volume * x.shrinkage) / 100,
});

/** Travel of the plunger that feeds a volume. */
export const feedTravel = defineFormula({
  id: 'intensification.feed-travel',
  title: 'Plunger travel to feed the shrinkage of the castings',
  symbol: 'x_s',
  inputs: {
    volume: { symbol: 'V_s', unit: 'cm3', meaning: 'metal to feed', range: [0.001, 5000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'mm',
  equation: '4000 * V_s / (pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry; the machine shows more, because gas and metal are compressed too',
  compute: ({ volume, diameter }) => (4000 * volume) / (Math.PI * diameter ** 2),
});

/** Metal between plunger and parting plane when the cavities are full: what was poured, less runner and cavities, all liquid. */
export const biscuitWhenFull = defineFormula({
  id: 'intensification.biscuit-full',
  title: 'Metal in front of the plunger when the cavities are full',
  symbol: 'b_f',
  inputs: {
    poured: { symbol: 'V_l', unit: 'cm3', meaning: 'liquid metal of one shot', range: [5, 100000] },
    runner_volume: { symbol: 'V_r', unit: 'cm3', meaning: 'runner volume between biscuit and gates', range: [0.5, 20000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of one casting with its overflows', range: [0.1, 100000] },
    shrink: { symbol: 's', unit: '%', meaning: 'shrink allowance, by which the die is larger', range: [0, 2], domain: 'not-negative', default: 0 },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'mm',
  equation: '4000 * (V_l - V_r - n * V * (1 + s / 100)^3) / (pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact volume balance, as good as the poured volume: nothing is frozen yet',
  requires: [
    {
      text: 'metal that fills runner and cavities',
      holds: (x) => x.poured > x.runner_volume + x.cavities * x.volume * (1 + x.shrink / 100) ** 3,
      mend: 'pour more metal',
    },
  ],
  compute: (x) => (4000 * (x.poured - x.runner_volume - x.cavities * x.volume * (1 + x.shrink / 100) ** 3)) / (Math.PI * x.diameter ** 2),
});

/** Biscuit that is left when all metal is solid, by the mass that was poured. */
export const biscuitLeft = defineFormula({
  id: 'intensification.biscuit-left',
  title: 'Biscuit left when all metal is solid',
  symbol: 'b_r',
  inputs: {
    mass: { symbol: 'm_s', unit: 'kg', meaning: 'all metal of one shot', range: [0.01, 200] },
    density: { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the solid metal', range: [1.5, 11] },
    runner_volume: { symbol: 'V_r', unit: 'cm3', meaning: 'runner volume between biscuit and gates', range: [0.5, 20000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of one casting with its overflows', range: [0.1, 100000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'mm',
  equation: '4000 * (1000 * m_s / rho - V_r - n * V) / (pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact balance of the mass for sound castings: pores and flash take a little of it, and the dose of the ladle moves it by several millimetres',
  requires: [
    {
      text: 'metal that is more than castings and runner',
      holds: (x) => (1000 * x.mass) / x.density > x.runner_volume + x.cavities * x.volume,
      mend: 'pour more metal',
    },
  ],
  compute: (x) => (4000 * ((1000 * x.mass) / x.density - x.runner_volume - x.cavities * x.volume)) / (Math.PI * x.diameter ** 2),
});

/** Travel of the plunger behind the metal that freezes, from full cavities until all is solid. */
export const followTravel = defineFormula({
  id: 'intensification.follow-travel',
  title: 'Plunger travel from full cavities until all metal is solid',
  symbol: 'x_p',
  inputs: {
    full: { symbol: 'b_f', unit: 'mm', meaning: 'metal in front of the plunger when the cavities are full', range: [5, 250] },
    left: { symbol: 'b_r', unit: 'mm', meaning: 'biscuit left when all metal is solid', range: [5, 150] },
  },
  unit: 'mm',
  equation: 'b_f - b_r',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the densities of liquid and solid; less once the gate is frozen, for then the castings take no more',
  compute: ({ full, left }) => full - left,
});

/** Hydraulic pressure of the fill phase at which its static pressure is no more than the die is planned and locked for. */
export const loweredFillPressure = defineFormula({
  id: 'intensification.lowered-pressure',
  title: 'Hydraulic pressure of the fill phase that presses no harder than planned',
  symbol: 'p_h2',
  inputs: {
    hydraulic: { symbol: 'p_h', unit: 'MPa', meaning: 'hydraulic pressure of the fill phase', range: [1, 40] },
    planned: { symbol: 'p_int', unit: 'MPa', meaning: 'metal pressure planned', range: [1, 150] },
    fill_pressure: { symbol: 'p_0', unit: 'MPa', meaning: 'static metal pressure of the fill phase', range: [1, 250] },
  },
  unit: 'MPa',
  equation: 'p_h * min(1, p_int / p_0)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact by the areas of cylinder and plunger',
  compute: (x) => x.hydraulic * Math.min(1, x.planned / x.fill_pressure),
});

/** Metal pressure that is left at the planned flow when the accumulator is set that low. */
export const loweredPressureLeft = defineFormula({
  id: 'intensification.lowered-left',
  title: 'Metal pressure at the planned flow, with the lowered hydraulic pressure',
  symbol: 'p_q',
  inputs: {
    planned: { symbol: 'p_int', unit: 'MPa', meaning: 'metal pressure planned', range: [1, 150] },
    fill_pressure: { symbol: 'p_0', unit: 'MPa', meaning: 'static metal pressure of the fill phase as the machine has it', range: [1, 250] },
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'planned flow', range: [0.05, 300] },
    dry_flow: { symbol: 'Q_d', unit: 'l/s', meaning: 'dry-shot flow as the machine has it', range: [0.1, 500] },
  },
  unit: 'MPa',
  equation: 'max(0, min(p_int, p_0) - p_0 * (Q / Q_d)^2)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'the line of the machine shifted down: dry-shot flow falls with the root of the pressure, so the loss at a flow stays',
  compute: (x) => Math.max(0, Math.min(x.planned, x.fill_pressure) - x.fill_pressure * (x.flow / x.dry_flow) ** 2),
});

/** Locking force that the static pressure of the fill phase asks for where it is above the pressure planned. */
export const staticLockingForce = defineFormula({
  id: 'intensification.static-force',
  title: 'Locking force for the static pressure of the fill phase',
  symbol: 'F_0',
  inputs: {
    force: { symbol: 'F_lock', unit: 'kN', meaning: 'locking force needed', range: [1, 200000] },
    sizing: { symbol: 'p', unit: 'MPa', meaning: 'pressure that the clamp is sized on', range: [1, 250] },
    fill_pressure: { symbol: 'p_0', unit: 'MPa', meaning: 'static metal pressure of the fill phase', range: [1, 250] },
  },
  unit: 'kN',
  equation: 'F_lock * max(1, p_0 / p)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact for the projected area and slides of the plan',
  compute: (x) => x.force * Math.max(1, x.fill_pressure / x.sizing),
});
