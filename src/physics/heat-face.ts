import { defineFormula } from '../kernel/formula.ts';

const DIE = { symbol: 'T_d', unit: 'degC', meaning: 'die surface temperature', range: [50, 450], domain: 'any' } as const;
const CYCLE = { symbol: 't_z', unit: 's', meaning: 'cycle', range: [2, 600] } as const;

/** Surface of a casting of even wall, both sides, from its volume. */
export const castingSurface = defineFormula({
  id: 'heat.casting-surface',
  title: 'Surface of the casting by volume and wall',
  symbol: 'A_v',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of the casting', range: [0.1, 50000] },
    wall: { symbol: 'h', unit: 'mm', meaning: 'nominal wall', range: [0.3, 30] },
  },
  unit: 'cm2',
  equation: '20 * V / h',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'two sides of an even wall: too much where bosses and thick spots hold part of the volume, too little by the rims of a small part',
  compute: ({ volume, wall }) => (20 * volume) / wall,
});

/** Die face of a runner: both faces of its projected area, and its sides. */
export const runnerFace = defineFormula({
  id: 'heat.runner-face',
  title: 'Die face of the runner',
  symbol: 'A_r',
  inputs: {
    projected: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the runner', range: [0.1, 20000] },
    depth: { symbol: 't_r', unit: 'mm', meaning: 'runner depth', range: [0.5, 100] },
    width: { symbol: 'w_r', unit: 'mm', meaning: 'runner width', range: [1, 400] },
  },
  unit: 'cm2',
  equation: '2 * A_p * (1 + t_r / w_r)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a section as deep and wide as at the gate; its draft makes the bottom a little narrower',
  compute: ({ projected, depth, width }) => 2 * projected * (1 + depth / width),
});

/** Die face of the overflows: both faces of their share of the casting's projected area. */
export const overflowFace = defineFormula({
  id: 'heat.overflow-face',
  title: 'Die face of the overflows of one cavity',
  symbol: 'A_o',
  inputs: {
    area: { symbol: 'A_o1', unit: 'cm2', meaning: 'projected area of the overflows', range: [0.01, 20000] },
    number: { symbol: 'n_o', unit: '1', meaning: 'number of overflows', range: [1, 1000] },
    depth: { symbol: 'd_o', unit: 'mm', meaning: 'depth of the overflows', range: [1, 40] },
  },
  unit: 'cm2',
  equation: '2 * A_o1 + 0.4 * d_o * sqrt(A_o1 * n_o)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for square overflows of one size, with the area of the gate and vent in it',
  compute: ({ area, number, depth }) => 2 * area + 0.4 * depth * Math.sqrt(area * number),
});

/** Face of the biscuit on the die. */
export const biscuitFace = defineFormula({
  id: 'heat.biscuit-face',
  title: 'Die face of the biscuit',
  symbol: 'A_b',
  inputs: { diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] } },
  unit: 'cm2',
  equation: 'pi / 4 * D^2 / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the end face; the round face lies in the sleeve and the other end on the plunger',
  compute: ({ diameter }) => ((Math.PI / 4) * diameter ** 2) / 100,
});

/** Heat of a shot on a square metre of die face. */
export const heatPerArea = defineFormula({
  id: 'heat.per-area',
  title: 'Heat of a shot per die face',
  symbol: 'e_A',
  inputs: {
    heat: { symbol: 'E_d', unit: 'kJ', meaning: 'heat of a shot to the die', range: [0.1, 150000] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'die face that takes heat', range: [1, 200000] },
  },
  unit: 'kJ/m2',
  equation: '10000 * E_d / A',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a mean: thick walls bring more, thin ones less',
  compute: ({ heat, area }) => (10000 * heat) / area,
});

/** Mean heat flux of the die face. */
export const faceFlux = defineFormula({
  id: 'heat.face-flux',
  title: 'Mean heat flux of the die face',
  symbol: 'q_f',
  inputs: {
    per_area: { symbol: 'e_A', unit: 'kJ/m2', meaning: 'heat of a shot per die face', range: [50, 30000] },
    cycle: CYCLE,
    share: { symbol: 'x_l', unit: '%', meaning: 'share of it that goes through the steel to the lines', range: [1, 100] },
  },
  unit: 'kW/m2',
  equation: 'e_A / t_z * x_l / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'mean of the cycle and of the face',
  compute: (x) => ((x.per_area / x.cycle) * x.share) / 100,
});

/** Outside of the die that gives heat to air and platens: four sides and two backs. */
export const dieOutside = defineFormula({
  id: 'heat.outside',
  title: 'Outside of the die',
  symbol: 'A_e',
  inputs: {
    width: { symbol: 'W', unit: 'mm', meaning: 'die block width', range: [50, 4000] },
    height: { symbol: 'H', unit: 'mm', meaning: 'die block height', range: [50, 4000] },
    thickness: { symbol: 'B', unit: 'mm', meaning: 'both halves with their support plates', range: [100, 2500] },
  },
  unit: 'm2',
  equation: '2 * ((W + H) * B + W * H) / 1000000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the estimate of the die; the ejector box behind it is left out, it stays colder',
  compute: (x) => (2 * ((x.width + x.height) * x.thickness + x.width * x.height)) / 1e6,
});

/** Heat that the die gives to air and platens at its planned temperature. */
export const surroundingsRate = defineFormula({
  id: 'heat.surroundings-rate',
  title: 'Heat to the surroundings',
  symbol: 'P_e',
  inputs: {
    area: { symbol: 'A_e', unit: 'm2', meaning: 'outside of the die', range: [0.05, 60] },
    coefficient: { symbol: 'a_e', unit: 'W/(m2.K)', meaning: 'heat transfer outside, by the die surface temperature', range: [2, 60] },
    die_temperature: DIE,
    room: { symbol: 'T_r', unit: 'degC', meaning: 'room temperature', range: [-10, 45], domain: 'any' },
  },
  unit: 'kW',
  equation: 'A_e * a_e * (T_d - T_r) / 1000',
  requires: [{ text: 'a die warmer than the room', holds: (x) => x.die_temperature > x.room }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a coefficient known to a factor of two',
  compute: (x) => (x.area * x.coefficient * (x.die_temperature - x.room)) / 1000,
});

/** Heat that a spray of this time could take from the whole face at its planned temperature. */
export const sprayRate = defineFormula({
  id: 'heat.spray-rate',
  title: 'Heat to the spray',
  symbol: 'P_s',
  inputs: {
    area: { symbol: 'A', unit: 'cm2', meaning: 'die face', range: [1, 200000] },
    coefficient: { symbol: 'a_s', unit: 'W/(m2.K)', meaning: 'heat transfer where the spray is', range: [100, 20000] },
    die_temperature: DIE,
    spray_temperature: { symbol: 'T_w', unit: 'degC', meaning: 'temperature of the spray', range: [0, 60], domain: 'any' },
    spray: { symbol: 't_s', unit: 's', meaning: 'spray in a cycle', range: [0.1, 60] },
    wetted: { symbol: 'x_w', unit: '%', meaning: 'share of that time that a spot is under a nozzle', range: [1, 100] },
    cycle: CYCLE,
  },
  unit: 'kW',
  equation: 'A / 10000 * a_s * (T_d - T_w) * t_s / t_z * x_w / 100 / 1000',
  requires: [{ text: 'a die warmer than the spray', holds: (x) => x.die_temperature > x.spray_temperature }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a coefficient known to a factor of three; a check on the planned share and no more',
  compute: (x) => (((x.area / 1e4) * x.coefficient * (x.die_temperature - x.spray_temperature) * x.spray) / x.cycle) * (x.wetted / 100) * 1e-3,
});
