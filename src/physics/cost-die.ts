import { defineFormula } from '../kernel/formula.ts';

const cavities = { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] } as const;
const exponent = { symbol: 'm', unit: '1', meaning: 'exponent of the die cost on the number of cavities', range: [0.3, 1] } as const;
const money = (symbol: string, meaning: string) => ({ symbol, unit: '1', meaning, range: [0, 1e11], domain: 'not-negative' }) as const;
const hours = (symbol: string, meaning: string) => ({ symbol, unit: 'h', meaning, range: [0, 5000], domain: 'not-negative' }) as const;
const RULE = 'a planning rule of ours, for the order of size of a first figure; toolmakers quote a factor of two apart';
const MOULD = 'remembered from the chapter of a textbook on injection moulds, with little confidence; what its chapter on die casting changes is not known';

/** Hours for the ejection of one cavity. */
export const ejectionHours = defineFormula({
  id: 'cost.hours-ejection',
  title: 'Toolmaking hours, ejection',
  symbol: 'h_e',
  inputs: {
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of one casting', range: [0.5, 20000] },
    each: { symbol: 'k_e', unit: 'h', meaning: 'hours for each centimetre of the root of the area', range: [0.1, 20] },
  },
  unit: 'h',
  equation: 'k_e * sqrt(A)',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: MOULD,
  compute: ({ area, each }) => each * Math.sqrt(area),
});

/** Hours for the size of one cavity. */
export const sizeHours = defineFormula({
  id: 'cost.hours-size',
  title: 'Toolmaking hours, size',
  symbol: 'h_a',
  inputs: {
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of one casting', range: [0.5, 20000] },
    base: { symbol: 'k_0', unit: 'h', meaning: 'hours at no area', range: [0, 100], domain: 'not-negative' },
    factor: { symbol: 'k_a', unit: 'h', meaning: 'hours at 1 cm2', range: [0.001, 2] },
    exponent: { symbol: 'p', unit: '1', meaning: 'exponent of the area', range: [0.5, 2] },
  },
  unit: 'h',
  equation: 'k_0 + k_a * A^p',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: MOULD,
  compute: (x) => x.base + x.factor * x.area ** x.exponent,
});

/** Hours for the shape of one cavity, by the surface that is cut, sunk, fitted and polished. */
export const surfaceHours = defineFormula({
  id: 'cost.hours-surface',
  title: 'Toolmaking hours, cavity surface',
  symbol: 'h_s',
  inputs: {
    surface: { symbol: 'A_s', unit: 'cm2', meaning: 'surface of one casting, in and out', range: [1, 100000] },
    each: { symbol: 'k_s', unit: 'h', meaning: 'hours for each 100 cm2', range: [0.5, 100] },
  },
  unit: 'h',
  equation: 'k_s * A_s / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: RULE,
  compute: ({ surface, each }) => (each * surface) / 100,
});

/** Hours of the whole die with one cavity. */
export const dieHours = defineFormula({
  id: 'cost.die-hours',
  title: 'Design and toolmaking hours of a die with one cavity',
  symbol: 'h_d',
  inputs: {
    base: hours('h_0', 'hours of any die: design, assembly, first samples'),
    ejection: hours('h_e', 'hours for ejection'),
    size: hours('h_a', 'hours for size'),
    surface: hours('h_s', 'hours for the cavity surface'),
    pulls: { symbol: 'n_s', unit: '1', meaning: 'core pulls', range: [0, 12], domain: 'not-negative' },
    pull: hours('k_p', 'hours for each core pull'),
    feed: { symbol: 'x_f', unit: '%', meaning: 'added for gating, overflows, vents and cooling', range: [0, 100], domain: 'not-negative' },
    finish: { symbol: 'x_s', unit: '%', meaning: 'added for the surface finish', range: [0, 100], domain: 'not-negative' },
    tolerance: { symbol: 'x_t', unit: '%', meaning: 'added for tolerances of the precision level', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'h',
  equation: '(h_0 + h_e + h_a + h_s + n_s * k_p) * (1 + x_f / 100) * (1 + x_s / 100) * (1 + x_t / 100)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: RULE,
  compute: (x) => (x.base + x.ejection + x.size + x.surface + x.pulls * x.pull) * (1 + x.feed / 100) * (1 + x.finish / 100) * (1 + x.tolerance / 100),
});

/** Steel of the inserts of both halves. */
export const insertMass = defineFormula({
  id: 'cost.insert-mass',
  title: 'Mass of the inserts of both halves',
  symbol: 'M_i',
  inputs: {
    width: { symbol: 'W', unit: 'mm', meaning: 'inserts together, across', range: [20, 3000] },
    height: { symbol: 'H', unit: 'mm', meaning: 'inserts together, upright', range: [20, 3000] },
    depth: { symbol: 'D', unit: 'mm', meaning: 'depth of the cavity', range: [1, 800] },
    below: { symbol: 'b', unit: 'mm', meaning: 'steel below the cavity', range: [10, 500] },
    density: { symbol: 'rho', unit: 'kg/dm3', meaning: 'density of the steel', range: [7, 8.5] },
  },
  unit: 'kg',
  equation: 'W * H * (D + 2 * b) / 1e6 * rho',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as bought, before anything is cut out of it',
  compute: (x) => ((x.width * x.height * (x.depth + 2 * x.below)) / 1e6) * x.density,
});

/** Steel of the die in money. */
export const dieSteelCost = defineFormula({
  id: 'cost.die-steel',
  title: 'Steel of the die',
  symbol: 'C_m',
  inputs: {
    mass: { symbol: 'M_d', unit: 'kg', meaning: 'mass of the die', range: [10, 200000] },
    inserts: { symbol: 'M_i', unit: 'kg', meaning: 'mass of the inserts', range: [1, 50000] },
    holder_price: money('P_h', 'money per kilogram of holder steel'),
    cavity_price: money('P_c', 'money per kilogram of cavity steel'),
    treatment: money('P_t', 'money per kilogram for hardening'),
  },
  unit: '1',
  equation: 'max(M_d - M_i, 0) * P_h + M_i * (P_c + P_t)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'as good as the estimated size of the die; standard parts, hydraulics and fittings are not in it',
  compute: (x) => Math.max(x.mass - x.inserts, 0) * x.holder_price + x.inserts * (x.cavity_price + x.treatment),
});

/** Die with one cavity: its hours, and steel brought down from the planned count of cavities. */
export const dieSingle = defineFormula({
  id: 'cost.die-single',
  title: 'Die with one cavity, estimated',
  symbol: 'C_1',
  inputs: {
    hours: { symbol: 'h_d', unit: 'h', meaning: 'design and toolmaking hours of a die with one cavity', range: [10, 50000] },
    rate: { symbol: 'C_h', unit: '1', meaning: 'money per hour of toolmaking', range: [0, 1e7], domain: 'not-negative' },
    steel: money('C_m', 'steel of the planned die'),
    cavities,
    exponent,
  },
  unit: '1',
  equation: 'h_d * C_h + C_m / n^m',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: RULE,
  compute: (x) => x.hours * x.rate + x.steel / x.cavities ** x.exponent,
});

/** The same die with more cavities. */
export const dieForCavities = defineFormula({
  id: 'cost.die-for-cavities',
  title: 'Die with a number of cavities',
  symbol: 'C_n',
  inputs: { single: money('C_1', 'die with one cavity'), cavities, exponent },
  unit: '1',
  equation: 'C_1 * n^m',
  outside: 'extrapolate',
  source: ['MOULD-PRICE-DOUBLING'],
  status: 'memory',
  accuracy: 'an exponent of 0.7 is remembered from a textbook; price ladders of moulds give 0.45 to 0.75',
  compute: (x) => x.single * x.cavities ** x.exponent,
});

/** The way back, from a die price that is known. */
export const dieOfOne = defineFormula({
  id: 'cost.die-of-one',
  title: 'Die with one cavity, from the price of one with more',
  symbol: 'C_1',
  inputs: { whole: money('C_n', 'die with its cavities'), cavities, exponent },
  unit: '1',
  equation: 'C_n / n^m',
  outside: 'extrapolate',
  source: ['MOULD-PRICE-DOUBLING'],
  status: 'memory',
  accuracy: 'as the way there',
  compute: (x) => x.whole / x.cavities ** x.exponent,
});

/** A price as a share of another one. */
export const shareOf = defineFormula({
  id: 'cost.share-of',
  title: 'Price as a share of another',
  symbol: 'C_s',
  inputs: { whole: money('C_n', 'price that the share is of'), share: { symbol: 'p', unit: '%', meaning: 'share', range: [0, 300], domain: 'not-negative' } },
  unit: '1',
  equation: 'C_n * p / 100',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'as good as the share',
  compute: ({ whole, share }) => (whole * share) / 100,
});
