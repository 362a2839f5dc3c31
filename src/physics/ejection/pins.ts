import { defineFormula } from '../../kernel/formula.ts';

const DIAMETER = { symbol: 'd', unit: 'mm', meaning: 'pin diameter', range: [0.5, 40] } as const;
const LENGTH = { symbol: 'L', unit: 'mm', meaning: 'length of the pin without a guide', range: [10, 600] } as const;
const MODULUS = { symbol: 'E_p', unit: 'GPa', meaning: "Young's modulus of the pin", range: [150, 230] } as const;
const END_FACTOR = {
  symbol: 'K',
  unit: '1',
  meaning: 'buckling length over length: 0.5 guided at both ends, 0.7 one end free to tilt, 1 both',
  range: [0.5, 2],
} as const;
const NUMBER = { symbol: 'n', unit: '1', meaning: 'pins that carry the force', range: [1, 200] } as const;

/** Force at which a slender pin buckles, after Euler. */
export const pinBucklingForce = defineFormula({
  id: 'ejection.pin-buckling-force',
  title: 'Buckling force of an ejector pin',
  symbol: 'F_cr',
  inputs: { diameter: DIAMETER, length: LENGTH, modulus: MODULUS, end_factor: END_FACTOR },
  unit: 'kN',
  where: [{ symbol: 'I_p', equation: 'pi * d^4 / 64' }],
  equation: 'pi^2 * E_p * I_p / (K * L)^2',
  outside: 'extrapolate',
  source: ['PT-PINS'],
  status: 'derived',
  accuracy: 'Euler: an upper bound for a straight slender pin loaded in its axis; bent, worn or off-centre pins buckle at less, stout ones yield first',
  compute: (x) => (Math.PI ** 3 * x.modulus * x.diameter ** 4) / (64 * (x.end_factor * x.length) ** 2),
});

/** Diameter at which a pin just buckles. */
export const pinBucklingDiameter = defineFormula({
  id: 'ejection.pin-buckling-diameter',
  title: 'Pin diameter that just buckles',
  symbol: 'd_b',
  inputs: {
    force: { symbol: 'F_1', unit: 'kN', meaning: 'force on one pin', range: [0, 50], domain: 'not-negative' },
    length: LENGTH,
    modulus: MODULUS,
    end_factor: END_FACTOR,
  },
  unit: 'mm',
  equation: '(64 * F_1 * (K * L)^2 / (pi^3 * E_p))^(1/4)',
  outside: 'extrapolate',
  source: ['PT-PINS', 'KAZMER-MOLD p. 352'],
  status: 'derived',
  accuracy: "Euler turned round; a textbook's own constant comes out 3 % smaller than guided ends give, which is not on the safe side",
  compute: (x) => ((64 * x.force * (x.end_factor * x.length) ** 2) / (Math.PI ** 3 * x.modulus)) ** 0.25,
});

/** Buckling diameter with a reserve. */
export const pinSafeDiameter = defineFormula({
  id: 'ejection.pin-safe-diameter',
  title: 'Pin diameter against buckling',
  symbol: 'd_s',
  inputs: {
    diameter: { symbol: 'd_b', unit: 'mm', meaning: 'diameter that just buckles', range: [0, 40], domain: 'not-negative' },
    factor: { symbol: 'k', unit: '1', meaning: 'factor on the diameter', range: [1, 3] },
  },
  unit: 'mm',
  equation: 'k * d_b',
  outside: 'extrapolate',
  source: ['KAZMER-MOLD p. 352'],
  status: 'source',
  accuracy: 'a factor of 1.5 on the diameter is one of 5 on the force',
  compute: ({ diameter, factor }) => factor * diameter,
});

/** Length over radius of gyration, r = d/4. */
export const pinSlenderness = defineFormula({
  id: 'ejection.pin-slenderness',
  title: 'Slenderness of an ejector pin',
  symbol: 's_p',
  inputs: { length: LENGTH, diameter: DIAMETER },
  unit: '1',
  equation: 'L / (d / 4)',
  outside: 'extrapolate',
  source: ['PT-PINS'],
  status: 'source',
  accuracy: 'exact; above 100 a pin fails by buckling',
  compute: ({ length, diameter }) => (4 * length) / diameter,
});

/** Diameter at which a pin has the slenderness given. */
export const pinStoutDiameter = defineFormula({
  id: 'ejection.pin-stout-diameter',
  title: 'Pin diameter for its length',
  symbol: 'd_l',
  inputs: { length: LENGTH, slenderness: { symbol: 's_p', unit: '1', meaning: 'slenderness, length over radius of gyration', range: [30, 300] } },
  unit: 'mm',
  equation: '4 * L / s_p',
  outside: 'extrapolate',
  source: ['PT-PINS'],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ length, slenderness }) => (4 * length) / slenderness,
});

/** Pin diameter to aim at: as the pressure on the casting asks for, as far as it suits the wall. */
export const pinAimDiameter = defineFormula({
  id: 'ejection.pin-aim-diameter',
  title: 'Pin diameter that suits wall and pressure',
  symbol: 'd_a',
  inputs: {
    pressure_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'diameter for the pressure on the casting', range: [0, 60], domain: 'not-negative' },
    wall: { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.5, 25] },
    ratio_least: { symbol: 'r_0', unit: '1', meaning: 'pin diameter over wall, low end', range: [0.5, 3] },
    ratio_greatest: { symbol: 'r_1', unit: '1', meaning: 'pin diameter over wall, high end', range: [3, 6] },
    greatest: { symbol: 'd_1', unit: 'mm', meaning: 'greatest usual diameter', range: [10, 25] },
  },
  unit: 'mm',
  equation: 'min(d_1, max(r_0 * t, min(r_1 * t, d_p)))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'planning rule of ours: a pin of two to three walls finds room on rims, bosses and rib crossings; where that is not enough for the force, pins are added',
  compute: (x) => Math.min(x.greatest, Math.max(x.ratio_least * x.wall, Math.min(x.ratio_greatest * x.wall, x.pressure_diameter))),
});

/** Pin diameter needed: suits wall and length, and is enough against buckling and pressure with the number of pins taken. */
export const pinNeededDiameter = defineFormula({
  id: 'ejection.pin-needed-diameter',
  title: 'Pin diameter needed',
  symbol: 'd_n',
  inputs: {
    size: { symbol: 'd_0', unit: 'mm', meaning: 'standard size that suits wall and length', range: [1, 32] },
    safe: { symbol: 'd_s', unit: 'mm', meaning: 'diameter against buckling', range: [0, 40], domain: 'not-negative' },
    pressure_diameter: { symbol: 'd_p', unit: 'mm', meaning: 'diameter for the pressure on the casting', range: [0, 60], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'max(d_0, d_s, d_p)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: (x) => Math.max(x.size, x.safe, x.pressure_diameter),
});

/** Force on one pin. */
export const pinForce = defineFormula({
  id: 'ejection.pin-force',
  title: 'Force on one ejector pin',
  symbol: 'F_1',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force of one casting', range: [0, 3000], domain: 'not-negative' },
    pins: NUMBER,
  },
  unit: 'kN',
  equation: 'F / n',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for pins that share the force evenly; those beside the deepest cores carry more',
  compute: ({ force, pins }) => force / pins,
});

/** Pressure of a pin on the casting. */
export const pinPressure = defineFormula({
  id: 'ejection.pin-pressure',
  title: 'Pressure of a pin on the casting',
  symbol: 'p_p',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force of one casting', range: [0, 3000], domain: 'not-negative' },
    pins: NUMBER,
    diameter: DIAMETER,
  },
  unit: 'MPa',
  equation: '4000 * F / (n * pi * d^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for pins that share the force evenly; those beside the deepest cores carry more',
  compute: ({ force, pins, diameter }) => (4000 * force) / (pins * Math.PI * diameter ** 2),
});

/** Pin diameter at which a number of pins presses with no more than a given pressure. */
export const pinPressureDiameter = defineFormula({
  id: 'ejection.pin-pressure-diameter',
  title: 'Pin diameter for the pressure on the casting',
  symbol: 'd_p',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'ejection force of one casting', range: [0, 3000], domain: 'not-negative' },
    pins: NUMBER,
    pressure: { symbol: 'p_a', unit: 'MPa', meaning: 'pressure allowed on the casting', range: [10, 120] },
  },
  unit: 'mm',
  equation: 'sqrt(4000 * F / (n * pi * p_a))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for pins that share the force evenly',
  compute: ({ force, pins, pressure }) => Math.sqrt((4000 * force) / (pins * Math.PI * pressure)),
});
