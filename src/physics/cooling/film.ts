import { defineFormula } from '../../kernel/formula.ts';
import { DIAMETER } from './line-inputs.ts';

const DENSITY = { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the coolant', range: [600, 1100] } as const;
const VISCOSITY = { symbol: 'mu', unit: 'mPa.s', meaning: 'viscosity of the coolant', range: [0.1, 50] } as const;
const HEAT_CAPACITY = { symbol: 'c', unit: 'J/(kg.K)', meaning: 'specific heat of the coolant', range: [1500, 4500] } as const;
const SPEED = { symbol: 'v', unit: 'm/s', meaning: 'speed of the coolant', range: [0.01, 10] } as const;
const FRICTION = { symbol: 'f', unit: '1', meaning: 'friction factor after Darcy', range: [0.006, 0.1] } as const;
const TURBULENT = { symbol: 'Re', unit: '1', meaning: 'Reynolds number', range: [3000, 5e6] } as const;
const PRANDTL = { symbol: 'Pr', unit: '1', meaning: 'Prandtl number', range: [0.5, 2000] } as const;

/** Reynolds number of the coolant in a line. */
export const reynolds = defineFormula({
  id: 'cooling.reynolds',
  title: 'Reynolds number of the coolant',
  symbol: 'Re',
  inputs: { density: DENSITY, speed: SPEED, diameter: DIAMETER, viscosity: VISCOSITY },
  unit: '1',
  equation: 'rho * v * D / mu',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; flow is laminar below 2300 and fully turbulent above 10,000',
  compute: (x) => (x.density * x.speed * x.diameter) / x.viscosity,
});

/** Prandtl number of the coolant. */
export const prandtl = defineFormula({
  id: 'cooling.prandtl',
  title: 'Prandtl number of the coolant',
  symbol: 'Pr',
  inputs: {
    specific_heat: HEAT_CAPACITY,
    viscosity: VISCOSITY,
    conductivity: { symbol: 'k_c', unit: 'W/(m.K)', meaning: 'thermal conductivity of the coolant', range: [0.08, 0.8] },
  },
  unit: '1',
  equation: 'c * mu / (1000 * k_c)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => (x.specific_heat * x.viscosity) / (1000 * x.conductivity),
});

/** Friction factor after Darcy of turbulent flow in a smooth line (Petukhov). */
export const friction = defineFormula({
  id: 'cooling.friction',
  title: 'Friction factor of turbulent flow',
  symbol: 'f',
  inputs: { reynolds: TURBULENT },
  unit: '1',
  equation: '(0.79 * log(Re) - 1.64)^(-2)',
  outside: 'refuse',
  source: [],
  status: 'memory',
  accuracy: 'Petukhov, remembered with high confidence; a smooth line. A drilled or rusty one has more',
  compute: (x) => (0.79 * Math.log(x.reynolds) - 1.64) ** -2,
});

/** Friction factor after Darcy of laminar flow. */
export const laminarFriction = defineFormula({
  id: 'cooling.laminar-friction',
  title: 'Friction factor of laminar flow',
  symbol: 'f',
  inputs: { reynolds: { symbol: 'Re', unit: '1', meaning: 'Reynolds number', range: [10, 3000] } },
  unit: '1',
  equation: '64 / Re',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for developed laminar flow in a round line; from 2300 to 3000 the flow may be either',
  compute: (x) => 64 / x.reynolds,
});

/** Nusselt number of turbulent and transition flow after Gnielinski. It refuses laminar flow. */
export const nusseltGnielinski = defineFormula({
  id: 'cooling.nusselt-gnielinski',
  title: 'Nusselt number after Gnielinski',
  symbol: 'Nu',
  inputs: {
    reynolds: TURBULENT,
    prandtl: PRANDTL,
    friction: {
      ...FRICTION,
      otherwise: { equation: '(0.79 * log(Re) - 1.64)^(-2)', compute: (x) => (0.79 * Math.log(x['reynolds'] ?? Number.NaN) - 1.64) ** -2 },
    },
  },
  unit: '1',
  equation: '(f / 8) * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f / 8) * (Pr^(2/3) - 1))',
  outside: 'refuse',
  source: ['GNIELINSKI-FORM', 'GNIELINSKI-RANGE'],
  status: 'source',
  accuracy: 'about 10 % for smooth lines from 3,000 to 5,000,000; the friction factor not given is that of Petukhov',
  compute: (x) => ((x.friction / 8) * (x.reynolds - 1000) * x.prandtl) / (1 + 12.7 * Math.sqrt(x.friction / 8) * (x.prandtl ** (2 / 3) - 1)),
});

/** Nusselt number of fully turbulent flow after Dittus and Boelter. */
export const nusseltDittusBoelter = defineFormula({
  id: 'cooling.nusselt-dittus-boelter',
  title: 'Nusselt number after Dittus and Boelter',
  symbol: 'Nu',
  inputs: {
    reynolds: { ...TURBULENT, range: [10000, 5e6] },
    prandtl: { ...PRANDTL, range: [0.6, 160] },
    heating: {
      symbol: 'H',
      unit: '1',
      meaning: 'whether the coolant is being heated, as in a die line',
      range: [0, 1],
      domain: 'not-negative',
      logical: true,
      default: 1,
    },
  },
  unit: '1',
  equation: '0.023 * Re^0.8 * Pr^(0.3 + 0.1 * H)',
  outside: 'extrapolate',
  source: ['DITTUS-BOELTER'],
  status: 'source',
  accuracy: 'up to 25 %; smooth line, fully turbulent. Below 10,000 it gives too much',
  compute: (x) => 0.023 * x.reynolds ** 0.8 * x.prandtl ** (0.3 + 0.1 * x.heating),
});

/** Film coefficient in a line. */
export const filmCoefficient = defineFormula({
  id: 'cooling.film',
  title: 'Film coefficient in the line',
  symbol: 'h',
  inputs: {
    nusselt: { symbol: 'Nu', unit: '1', meaning: 'Nusselt number', range: [3, 20000] },
    conductivity: { symbol: 'k_c', unit: 'W/(m.K)', meaning: 'thermal conductivity of the coolant', range: [0.08, 0.8] },
    diameter: DIAMETER,
  },
  unit: 'W/(m2.K)',
  equation: '1000 * Nu * k_c / D',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the Nusselt number',
  compute: (x) => (1000 * x.nusselt * x.conductivity) / x.diameter,
});
