import { defineFormula } from '../kernel/formula.ts';

const DENSITY = { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the solid alloy', range: [1.5, 11.5] } as const;

/** Mass of a casting from its volume. */
export const metalMass = defineFormula({
  id: 'metal.part-mass',
  title: 'Mass from volume',
  symbol: 'm',
  inputs: { volume: { symbol: 'V', unit: 'cm3', meaning: 'volume of the casting or overflow', range: [0, 100000], domain: 'not-negative' }, density: DENSITY },
  unit: 'kg',
  equation: 'V * rho / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a sound casting',
  compute: ({ volume, density }) => (volume * density) / 1000,
});

/** Volume of a casting from its mass. */
export const metalVolume = defineFormula({
  id: 'metal.part-volume',
  title: 'Volume from mass',
  symbol: 'V',
  inputs: { mass: { symbol: 'm', unit: 'kg', meaning: 'mass of the casting', range: [0.0001, 250] }, density: DENSITY },
  unit: 'cm3',
  equation: '1000 * m / rho',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a sound casting',
  compute: ({ mass, density }) => (1000 * mass) / density,
});
