import { defineFormula } from '../../kernel/formula.ts';
import { DIAMETER } from './line-inputs.ts';

const DENSITY = { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the coolant', range: [600, 1100] } as const;
const VISCOSITY = { symbol: 'mu', unit: 'mPa.s', meaning: 'viscosity of the coolant', range: [0.1, 50] } as const;
const HEAT_CAPACITY = { symbol: 'c', unit: 'J/(kg.K)', meaning: 'specific heat of the coolant', range: [1500, 4500] } as const;
const SPEED = { symbol: 'v', unit: 'm/s', meaning: 'speed of the coolant', range: [0.01, 10] } as const;
const FLOW = { symbol: 'Q', unit: 'l/min', meaning: 'flow of one circuit', range: [0.1, 400] } as const;
const FRICTION = { symbol: 'f', unit: '1', meaning: 'friction factor after Darcy', range: [0.006, 0.1] } as const;

/** Coolant flow of one circuit that reaches a Reynolds number. */
export const flowForReynolds = defineFormula({
  id: 'cooling.flow-for-reynolds',
  title: 'Flow for a Reynolds number',
  symbol: 'Q_r',
  inputs: {
    reynolds: { symbol: 'Re', unit: '1', meaning: 'Reynolds number wanted', range: [1000, 1e5] },
    viscosity: VISCOSITY,
    density: DENSITY,
    diameter: DIAMETER,
  },
  unit: 'l/min',
  equation: '60 * pi / 4 * Re * mu * D / (1000 * rho)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => (15 * Math.PI * x.reynolds * x.viscosity * x.diameter) / (1000 * x.density),
});

/** Coolant flow of one circuit that keeps its temperature rise. */
export const flowForRise = defineFormula({
  id: 'cooling.flow-for-rise',
  title: 'Flow for a temperature rise',
  symbol: 'Q_h',
  inputs: {
    heat: { symbol: 'q', unit: 'W', meaning: 'heat that the circuit takes', range: [1, 50000] },
    density: DENSITY,
    specific_heat: HEAT_CAPACITY,
    rise: { symbol: 'dT', unit: 'K', meaning: 'temperature rise of the coolant', range: [0.5, 30] },
  },
  unit: 'l/min',
  equation: '60000 * q / (rho * c * dT)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact heat balance of the coolant',
  compute: (x) => (60000 * x.heat) / (x.density * x.specific_heat * x.rise),
});

/** The greater of two flows: one for turbulence, one for the rise. */
export const plannedFlow = defineFormula({
  id: 'cooling.flow',
  title: 'Flow of one circuit',
  symbol: 'Q',
  inputs: {
    for_reynolds: { symbol: 'Q_r', unit: 'l/min', meaning: 'flow for the Reynolds number', range: [0.1, 400] },
    for_rise: { symbol: 'Q_h', unit: 'l/min', meaning: 'flow for the temperature rise', range: [0.1, 400] },
    at_speed: { symbol: 'Q_v', unit: 'l/min', meaning: 'flow at the greatest speed', range: [0.1, 1000], default: 1000 },
  },
  unit: 'l/min',
  equation: 'max(Q_r, min(Q_h, Q_v))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the greater of the two governs; for the rise alone no faster than lines are run, and then it rises a little more',
  compute: (x) => Math.max(x.for_reynolds, Math.min(x.for_rise, x.at_speed)),
});

/** Flow of a line at a given speed. */
export const flowAtSpeed = defineFormula({
  id: 'cooling.flow-at-speed',
  title: 'Flow of one circuit at a speed',
  symbol: 'Q_v',
  inputs: { speed: { symbol: 'v', unit: 'm/s', meaning: 'speed of the coolant', range: [0.1, 10] }, diameter: DIAMETER },
  unit: 'l/min',
  equation: '60 * pi * D^2 * v / 4000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ speed, diameter }) => (60 * Math.PI * diameter ** 2 * speed) / 4000,
});

/** Speed of a flow in a line. */
export const lineSpeed = defineFormula({
  id: 'cooling.speed',
  title: 'Speed of the coolant',
  symbol: 'v',
  inputs: { flow: FLOW, diameter: DIAMETER },
  unit: 'm/s',
  equation: '4000 * Q / (60 * pi * D^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ flow, diameter }) => (4000 * flow) / (60 * Math.PI * diameter ** 2),
});

/** Temperature rise of the coolant in a circuit. */
export const coolantRise = defineFormula({
  id: 'cooling.rise',
  title: 'Temperature rise of a circuit',
  symbol: 'dT',
  inputs: {
    heat: { symbol: 'q', unit: 'W', meaning: 'heat that the circuit takes', range: [1, 50000] },
    density: DENSITY,
    specific_heat: HEAT_CAPACITY,
    flow: FLOW,
  },
  unit: 'K',
  equation: '60000 * q / (rho * c * Q)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact heat balance of the coolant; a heating circuit falls by as much',
  compute: (x) => (60000 * x.heat) / (x.density * x.specific_heat * x.flow),
});

/** Pressure that a circuit takes: friction along the line, and its bends and fittings. */
export const pressureDrop = defineFormula({
  id: 'cooling.pressure-drop',
  title: 'Pressure drop of a circuit',
  symbol: 'dp',
  inputs: {
    friction: { ...FRICTION, range: [0.006, 1] },
    length: { symbol: 'L', unit: 'm', meaning: 'length of the drilled line', range: [0.02, 20] },
    diameter: DIAMETER,
    fittings: { symbol: 'z_f', unit: '1', meaning: 'losses of bends and fittings, in velocity heads', range: [0, 40], domain: 'not-negative' },
    density: DENSITY,
    speed: SPEED,
  },
  unit: 'bar',
  equation: '(1000 * f * L / D + z_f) * rho * v^2 / 2 / 100000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'without the hoses between unit and die, which often take more than the die',
  compute: (x) => (((1000 * x.friction * x.length) / x.diameter + x.fittings) * x.density * x.speed ** 2) / 2 / 1e5,
});

/** Length of a drilled line from edge to edge of the block. */
export const drilledLength = defineFormula({
  id: 'cooling.drilled',
  title: 'Length of a drilled line',
  symbol: 'L_d',
  inputs: {
    field: { symbol: 'L', unit: 'm', meaning: 'length of the line under the field', range: [0.01, 5] },
    steel: { symbol: 's', unit: 'mm', meaning: 'steel from the field to the edge of the block', range: [20, 400] },
  },
  unit: 'm',
  equation: 'L + 2 * s / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum for a straight line',
  compute: ({ field, steel }) => field + (2 * steel) / 1000,
});
