import { defineFormula } from '../../kernel/formula.ts';

const RATE = { symbol: 'P', unit: 'kW', meaning: 'heat rate that the lines must take', range: [0.01, 500] } as const;

/** Mean temperature of the die surface over the cycle, from the one before the shot. */
export const surfaceTemperature = defineFormula({
  id: 'cooling.surface-temperature',
  title: 'Mean temperature of the die surface',
  symbol: 'T_s',
  inputs: {
    before: { symbol: 'T_d', unit: 'degC', meaning: 'die surface temperature before the shot', range: [100, 450], domain: 'any' },
    excess: { symbol: 'dT_s', unit: 'K', meaning: 'mean over the cycle above that', range: [0, 250], domain: 'not-negative', default: 0 },
  },
  unit: 'degC',
  equation: 'T_d + dT_s',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the excess; without one the lines come out somewhat long',
  compute: ({ before, excess }) => before + excess,
});

/** Share of a die half in the heat, when the slides have taken theirs. */
export const halfShare = defineFormula({
  id: 'cooling.half-share',
  title: 'Share of a die half in the heat of the lines',
  symbol: 'x_h',
  inputs: {
    share: { symbol: 'x', unit: '%', meaning: 'share of this half in what the two halves take', range: [1, 99] },
    slides: { symbol: 'x_s', unit: '%', meaning: 'share of the slides that have lines of their own', range: [0, 99], domain: 'not-negative', default: 0 },
  },
  unit: '%',
  equation: 'x * (1 - x_s / 100)',
  requires: [{ text: 'slides that leave the halves some of the heat', holds: (x) => x.slides < 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the shares',
  compute: ({ share, slides }) => share * (1 - slides / 100),
});

/** Share of the die face that belongs to a slide. */
export const slideShare = defineFormula({
  id: 'cooling.slide-share',
  title: 'Share of a slide in the heat of the lines',
  symbol: 'x_s',
  inputs: {
    core_surface: { symbol: 'A_1', unit: 'cm2', meaning: 'side surface of the cores of the slide', range: [0, 2000], domain: 'not-negative' },
    face_area: { symbol: 'A_2', unit: 'cm2', meaning: 'face of the slide under metal', range: [0, 2000], domain: 'not-negative' },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities, each with such a slide', range: [1, 64], default: 1 },
    die_face: { symbol: 'A', unit: 'cm2', meaning: 'die face that takes heat, whole shot', range: [10, 100000] },
  },
  unit: '%',
  equation: '100 * min(1, n * (A_1 + A_2) / A)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the same heat for every square centimetre; a core in the casting gets more',
  compute: (x) => 100 * Math.min(1, (x.cavities * (x.core_surface + x.face_area)) / x.die_face),
});

/** Length of line that takes a heat rate. */
export const lengthNeeded = defineFormula({
  id: 'cooling.length-needed',
  title: 'Length of line needed',
  symbol: 'L_n',
  inputs: { rate: RATE, per_length: { symbol: 'q_1', unit: 'W/m', meaning: 'heat of one metre of line', range: [10, 50000] } },
  unit: 'm',
  equation: '1000 * P / q_1',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the heat balance: the split of the heat is a rule of thumb',
  compute: (x) => (1000 * x.rate) / x.per_length,
});

/** Whole lines for a length. */
export const linesNeeded = defineFormula({
  id: 'cooling.lines-needed',
  title: 'Lines needed',
  symbol: 'n_l',
  inputs: {
    needed: { symbol: 'L_n', unit: 'm', meaning: 'length of line needed', range: [0.001, 100] },
    each: { symbol: 'L', unit: 'm', meaning: 'length of one line under the field', range: [0.01, 5] },
  },
  unit: '1',
  equation: 'ceil(L_n / L - 0.000001)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'rounded up to whole lines',
  compute: ({ needed, each }) => Math.ceil(needed / each - 1e-6),
});

/** Lines as a number with its fraction, to see where far less than one would do. */
export const linesWorth = defineFormula({
  id: 'cooling.lines-worth',
  title: 'Lines that the heat is worth',
  symbol: 'n_w',
  inputs: linesNeeded.inputs,
  unit: '1',
  equation: 'L_n / L',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the length needed',
  compute: ({ needed, each }) => needed / each,
});

/** Lines laid: what is needed, no more than fit, at least one. */
export const linesLaid = defineFormula({
  id: 'cooling.lines',
  title: 'Lines laid',
  symbol: 'N_l',
  inputs: {
    needed: { symbol: 'n_l', unit: '1', meaning: 'lines needed', range: [0, 100], domain: 'not-negative' },
    fit: { symbol: 'N', unit: '1', meaning: 'lines that fit', range: [1, 100] },
  },
  unit: '1',
  equation: 'max(1, min(n_l, N))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'one line is laid in each half in any case: it brings the die to temperature and holds it there',
  compute: ({ needed, fit }) => Math.max(1, Math.min(needed, fit)),
});

/** Length of some lines. */
export const laidLength = defineFormula({
  id: 'cooling.laid-length',
  title: 'Length of the lines laid',
  symbol: 'L_l',
  inputs: {
    lines: { symbol: 'n', unit: '1', meaning: 'lines', range: [1, 100] },
    each: { symbol: 'L', unit: 'm', meaning: 'length of one line under the field', range: [0.01, 5] },
  },
  unit: 'm',
  equation: 'n * L',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the length below the field; to the edge of the block the holes are longer',
  compute: ({ lines, each }) => lines * each,
});

/** Conductance of all lines of the die. */
export const totalConductance = defineFormula({
  id: 'cooling.conductance',
  title: 'Conductance of all lines',
  symbol: 'C',
  inputs: {
    each: { symbol: 'UA', unit: 'W/K', meaning: 'conductance of one line', range: [0.1, 2000] },
    each_length: { symbol: 'L', unit: 'm', meaning: 'length of one line', range: [0.01, 5] },
    length: { symbol: 'L_t', unit: 'm', meaning: 'length of all lines', range: [0.02, 200] },
  },
  unit: 'W/K',
  equation: 'UA / L * L_t',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'lines of slides and cores are taken to be as near their faces as those of the halves',
  compute: (x) => (x.each / x.each_length) * x.length,
});
