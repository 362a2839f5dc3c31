import { defineFormula } from '../kernel/formula.ts';

const LINEAR = { symbol: 'T', unit: 'mm', meaning: 'linear tolerance, plus and minus', range: [0.02, 3] } as const;
const ADDED = {
  symbol: 'T_a',
  unit: 'mm',
  meaning: 'what parting line or moving die part adds on the plus side',
  range: [0, 1.1],
  domain: 'not-negative',
} as const;

/** Plus side of the tolerance: a die that does not close fully only makes the casting larger. */
export const plusSide = defineFormula({
  id: 'tolerance.plus',
  title: 'Tolerance, plus side',
  symbol: 'T_p',
  inputs: { linear: LINEAR, added: ADDED },
  unit: 'mm',
  equation: 'T + T_a',
  outside: 'extrapolate',
  source: ['NADCA-S4A1', 'NADCA-4A', 'NADCA-4A-PL'],
  status: 'source',
  accuracy: 'the product standard adds on the plus side only; casters in the United Kingdom print the same amounts as plus-minus',
  compute: ({ linear, added }) => linear + added,
});

/** Half of the whole band: what plus-minus a dimension holds when the cavity is cut to the middle of it. */
export const centredTolerance = defineFormula({
  id: 'tolerance.centred',
  title: 'Tolerance when the cavity is cut to the middle of the band',
  symbol: 'T_c',
  inputs: { linear: LINEAR, added: ADDED },
  unit: 'mm',
  equation: 'T + T_a / 2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'arithmetic on the band of plus (T + T_a) and minus T; it rests on the die maker knowing the added amount beforehand',
  compute: ({ linear, added }) => linear + added / 2,
});

/** Full width of a plus-minus tolerance, the form in which ISO 8062-3 states its grades. */
export const fullWidth = defineFormula({
  id: 'tolerance.full-width',
  title: 'Full width of a plus-minus tolerance',
  symbol: 'W',
  inputs: { tolerance: { symbol: 't', unit: 'mm', meaning: 'tolerance asked, plus and minus', range: [0.005, 10] } },
  unit: 'mm',
  equation: '2 * t',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ tolerance }) => 2 * tolerance,
});

/** Flatness of a continuous face: a base up to a length, and a step for each further inch. */
export const flatness = defineFormula({
  id: 'tolerance.flatness',
  title: 'Flatness tolerance of a continuous face',
  symbol: 'T_f',
  inputs: {
    length: { symbol: 'L', unit: 'mm', meaning: 'greatest length of the face', range: [5, 1000] },
    base: { symbol: 'T_0', unit: 'mm', meaning: 'tolerance up to the base length', range: [0.05, 0.5] },
    step: { symbol: 'T_1', unit: 'mm', meaning: 'tolerance added for every further 25.4 mm', range: [0, 0.2], domain: 'not-negative' },
    within: { symbol: 'L_0', unit: 'mm', meaning: 'base length', range: [25.4, 100] },
  },
  unit: 'mm',
  equation: 'T_0 + T_1 * max(0, L - L_0) / 25.4',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'remembered form of the product standard; measured at three widely spaced points',
  compute: ({ length, base, step, within }) => base + (step * Math.max(0, length - within)) / 25.4,
});
