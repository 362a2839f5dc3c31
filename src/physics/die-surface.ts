import { defineFormula } from '../kernel/formula.ts';
import { type DieSurface, steadyCycle } from './solve/die-cycle.ts';
import { FACE, GAP, METAL, STEEL, WALL } from './solve/section-inputs.ts';
import { sectionOf } from './solve/section-of.ts';

const INPUTS = {
  wall: WALL,
  ...METAL,
  interface: FACE,
  gap: GAP,
  ...STEEL,
  cycle: { symbol: 't_c', unit: 's', meaning: 'cycle time', range: [3, 300] },
  dwell: { symbol: 't_d', unit: 's', meaning: 'time from the full cavity to the opening of the die', range: [0.3, 100] },
  spray: { symbol: 't_y', unit: 's', meaning: 'time of the spray', range: [0, 60], domain: 'not-negative' },
  spray_share: { symbol: 's_y', unit: '%', meaning: 'share of the heat that the spray takes', range: [0, 60], domain: 'not-negative' },
  surroundings_share: { symbol: 's_a', unit: '%', meaning: 'share of the heat that the surroundings take', range: [0, 30], domain: 'not-negative' },
  depth: { symbol: 'z', unit: 'mm', meaning: 'from the die surface to the cooling lines', range: [5, 80] },
  conductance: {
    symbol: 'U',
    unit: 'W/(m2.K)',
    meaning: 'from the die surface to the coolant, of the lines and for a unit of die face',
    range: [20, 3000],
  },
  coolant: { symbol: 'T_w', unit: 'degC', meaning: 'coolant temperature', range: [10, 300], domain: 'any' },
} as const;
type Numbers = { readonly [K in keyof typeof INPUTS]: number };

const BALANCE =
  'd(rho*H)/dt = d/dx(k*dT/dx) in casting and steel during t_d, then s_a and s_y taken from the open face, U from the lines, over and over until a cycle ends as it began';
const REQUIRES = [
  { text: 'gate_temperature >= liquidus', holds: (x: Numbers) => x.gate_temperature >= x.liquidus },
  { text: 'liquidus >= solidus', holds: (x: Numbers) => x.liquidus >= x.solidus },
  { text: 'a cycle longer than the time in the die', holds: (x: Numbers) => x.cycle >= x.dwell + 0.5 },
  { text: 'something left for the lines to take', holds: (x: Numbers) => x.spray_share + x.surroundings_share <= 95 },
  { text: 'a coolant below the solidus', holds: (x: Numbers) => x.coolant < x.solidus - 50 },
] as const;
const LIMITS =
  'the equations are solved to 2 K; one dimension, lines spread evenly, and shares of spray and surroundings that are assumed: good to some tens of kelvin';

function surfaceOf(x: Numbers): DieSurface {
  const { metal, steel, half, gateTemperature, interface: face, gap } = sectionOf({ ...x, die_temperature: x.coolant });
  return steadyCycle({
    metal,
    steel,
    half,
    gateTemperature,
    interface: face,
    gap,
    cycle: x.cycle,
    dwell: x.dwell,
    spray: x.spray,
    sprayShare: x.spray_share / 100,
    surroundingsShare: x.surroundings_share / 100,
    depth: x.depth / 1000,
    conductance: x.conductance,
    coolant: x.coolant,
  });
}

const COMMON = {
  inputs: INPUTS,
  unit: 'degC',
  equation: BALANCE,
  solution: 'time-stepped',
  requires: REQUIRES,
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: LIMITS,
} as const;

/** Die surface temperature just before the shot, once every cycle is as the last. */
export const surfaceBefore = defineFormula({
  ...COMMON,
  id: 'heat.surface-before',
  title: 'Die surface temperature before the shot, steady cycle',
  symbol: 'T_b',
  compute: (x) => surfaceOf(x).before,
});

/** Highest die surface temperature of a cycle. */
export const surfacePeak = defineFormula({
  ...COMMON,
  id: 'heat.surface-peak',
  title: 'Highest die surface temperature of a cycle',
  symbol: 'T_p',
  compute: (x) => surfaceOf(x).peak,
});

/** Mean die surface temperature over a cycle. */
export const surfaceMean = defineFormula({
  ...COMMON,
  id: 'heat.surface-mean',
  title: 'Mean die surface temperature over a cycle',
  symbol: 'T_m',
  compute: (x) => surfaceOf(x).mean,
});

/** Swing of the die surface from before the shot to its peak. */
export const surfaceSwing = defineFormula({
  id: 'heat.surface-swing',
  title: 'Swing of the die surface temperature',
  symbol: 'dT',
  inputs: {
    peak: { symbol: 'T_p', unit: 'degC', meaning: 'highest temperature', range: [150, 700], domain: 'any' },
    before: { symbol: 'T_b', unit: 'degC', meaning: 'temperature before the shot', range: [50, 450], domain: 'any' },
  },
  unit: 'K',
  equation: 'T_p - T_b',
  requires: [{ text: 'peak >= before', holds: (x) => x.peak >= x.before }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as both temperatures; cold spray makes more of it for a moment than is in the mean shares',
  compute: ({ peak, before }) => peak - before,
});

/** The Hurwitz zeta function of 1/2 at 1 with its sign turned: what a train of even pulses leaves the surface below its mean. */
const PULSE_TRAIN = 1.4604;

/**
 * How much the mean die surface temperature lies above that before the shot: a train of heat pulses into a deep body, in
 * closed form.
 */
export const surfaceExcess = defineFormula({
  id: 'cooling.surface-excess',
  title: 'Mean die surface temperature above that before the shot',
  symbol: 'dT_m',
  inputs: {
    heat: { symbol: 'q_a', unit: 'kJ/m2', meaning: 'heat of one shot for a unit of die face', range: [100, 20000] },
    cycle: { symbol: 't_c', unit: 's', meaning: 'cycle time', range: [3, 300] },
    ...STEEL,
  },
  unit: 'K',
  equation: `${PULSE_TRAIN} * 1000 * q_a / sqrt(pi * t_c * k_d * rho_d * c_d)`,
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for sudden pulses into a deep body; lines at some diameters and pulses of seconds make it a few kelvin less, spray some more',
  compute: (x) => (PULSE_TRAIN * 1000 * x.heat) / Math.sqrt(Math.PI * x.cycle * x.die_conductivity * x.die_density * x.die_specific_heat),
});

/** Heat that one face of a wall brings the die at each shot. */
export const wallHeat = defineFormula({
  id: 'heat.wall-per-area',
  title: 'Heat of a wall for a unit of die face',
  symbol: 'q_w',
  inputs: {
    density: METAL.density,
    wall: WALL,
    per_mass: { symbol: 'q', unit: 'kJ/kg', meaning: 'heat given off in the die, per mass', range: [80, 1200] },
  },
  unit: 'kJ/m2',
  equation: 'rho * h / 2 * q',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a wall cooled alike on both faces',
  compute: ({ density, wall, per_mass }) => ((density * wall) / 2) * per_mass,
});

/** Conductance of the lines behind a wall for a unit of its face, lines being laid where the heat is. */
export const faceConductance = defineFormula({
  id: 'cooling.face-conductance',
  title: 'Conductance of the lines for a unit of die face',
  symbol: 'U',
  inputs: {
    conductance: { symbol: 'C', unit: 'W/K', meaning: 'of all lines of the die, from surface to coolant', range: [1, 20000] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'die face that takes heat, of the whole shot', range: [10, 200000] },
    wall_heat: { symbol: 'q_w', unit: 'kJ/m2', meaning: 'heat of the wall for a unit of die face', range: [50, 20000] },
    mean_heat: { symbol: 'q_a', unit: 'kJ/m2', meaning: 'heat of the whole shot for a unit of die face', range: [50, 20000] },
  },
  unit: 'W/(m2.K)',
  equation: '10000 * C / A * q_w / q_a',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'lines shared out by the heat they have to take: the aim of a die maker, met as far as ejector pins and slides leave room',
  compute: (x) => ((10000 * x.conductance) / x.area) * (x.wall_heat / x.mean_heat),
});
