import { defineFormula } from '../kernel/formula.ts';

/** Force of the metal on the backs of the cavity inserts. */
export const backForce = defineFormula({
  id: 'die.back-force',
  title: 'Force on the back of the cavities',
  symbol: 'F_b',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure that sizes the clamp', range: [2, 200] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of one casting', range: [1, 5000] },
    cavities: { symbol: 'n', unit: '1', meaning: 'cavities', range: [1, 64] },
    overflows: { symbol: 'a_o', unit: '%', meaning: 'overflow area, share of casting area', range: [0, 100], domain: 'not-negative' },
  },
  unit: 'kN',
  equation: 'p * n * A * (1 + a_o / 100) / 10',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as pressure and area; runner and biscuit lie beside the inserts, over rails and locks, and are left out',
  compute: (x) => (x.pressure * x.cavities * x.area * (1 + x.overflows / 100)) / 10,
});

/** Pressure with which the inserts lie on the plate behind them. */
export const backPressure = defineFormula({
  id: 'die.back-pressure',
  title: 'Pressure of the inserts on the support plate',
  symbol: 'p_b',
  inputs: {
    force: { symbol: 'F_b', unit: 'kN', meaning: 'force on the back of the cavities', range: [1, 100000] },
    width: { symbol: 'W_i', unit: 'mm', meaning: 'insert, across the rails', range: [20, 3000] },
    breadth: { symbol: 'B_i', unit: 'mm', meaning: 'insert, along the rails', range: [20, 3000] },
  },
  unit: 'MPa',
  equation: '1000 * F_b / (W_i * B_i)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the insert is thick and spreads the force of the cavities over its whole back; right under the cavity it presses harder',
  compute: (x) => (1000 * x.force) / (x.width * x.breadth),
});

/** Free span of the support plate between the rails of the ejector box. */
export const span = defineFormula({
  id: 'die.span',
  title: 'Span of the support plate between the rails',
  symbol: 'L',
  inputs: {
    width: { symbol: 'W', unit: 'mm', meaning: 'size of the die across the rails', range: [50, 3000] },
    rail: { symbol: 'r', unit: 'mm', meaning: 'width of a rail', range: [10, 300] },
    insert: { symbol: 'W_i', unit: 'mm', meaning: 'insert, across the rails', range: [20, 3000] },
  },
  unit: 'mm',
  equation: 'min(W - 2 * r, W_i)',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'rails as near together as the ejector plate behind the inserts allows; a wider ejector plate needs more pillars',
  requires: [{ text: 'room between the rails', holds: ({ width, rail }) => width > 2 * rail }],
  compute: (x) => Math.min(x.width - 2 * x.rail, x.insert),
});

/** Free span from rail to pillar, or from pillar to pillar. */
export const bay = defineFormula({
  id: 'die.bay',
  title: 'Span from rail to pillar',
  symbol: 'L_b',
  inputs: {
    span: { symbol: 'L', unit: 'mm', meaning: 'span between the rails', range: [20, 3000] },
    rows: { symbol: 'n_r', unit: '1', meaning: 'rows of pillars, evenly spread', range: [0, 20], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'L / (n_r + 1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for rows of equal spacing',
  compute: ({ span: s, rows }) => s / (rows + 1),
});

/** Bow in the middle of a plate that lies on two rails under an even pressure, for a strip of unit width. */
export const plateBow = defineFormula({
  id: 'die.plate-bow',
  title: 'Bow of a plate over rails',
  symbol: 'delta',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure on the whole span', range: [0.5, 150] },
    span: { symbol: 'L', unit: 'mm', meaning: 'span between the rails or pillars', range: [20, 1500] },
    thickness: { symbol: 't', unit: 'mm', meaning: 'thickness of the plate', range: [10, 400] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus", range: [100, 250] },
  },
  unit: 'mm',
  equation: '5 * p * L^4 / (384 * 1000 * E_s * I)',
  where: [{ symbol: 'I', equation: 't^3 / 12' }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy:
    'beam theory: a strip freely supported at both ends, loaded over its whole span. A plate held by its neighbours, running on over a pillar, or helped by the insert bows less, often by half; a load in the middle only bows it more, by up to 1.6 for the same force',
  compute: (x) => (5 * x.pressure * x.span ** 4) / (384 * 1000 * x.modulus * (x.thickness ** 3 / 12)),
});

/** Rows of pillars so that the bow is allowed: with r rows the span is L/(r + 1), and the bow falls with its fourth power. */
export const pillarRows = defineFormula({
  id: 'die.pillar-rows',
  title: 'Rows of support pillars',
  symbol: 'n_r',
  inputs: {
    bow: { symbol: 'delta_0', unit: 'mm', meaning: 'bow without pillars', range: [0.0001, 100] },
    allowed: { symbol: 'delta_a', unit: 'mm', meaning: 'bow allowed', range: [0.005, 0.5] },
  },
  unit: '1',
  equation: 'max(0, ceil((delta_0 / delta_a)^0.25 - 1e-9) - 1)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'rows of equal spacing that do not give way; pillars shorten a little under load, so die makers leave them a few hundredths longer than the rails',
  compute: (x) => Math.max(0, Math.ceil((x.bow / x.allowed) ** 0.25 - 1e-9) - 1),
});

/** Plate thickness that keeps the bow with no more pillars. */
export const plateThickness = defineFormula({
  id: 'die.plate-thickness',
  title: 'Plate thickness for a bow allowed',
  symbol: 't_n',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure on the whole span', range: [0.5, 150] },
    span: { symbol: 'L', unit: 'mm', meaning: 'span between the rails or pillars', range: [20, 1500] },
    bow: { symbol: 'delta_a', unit: 'mm', meaning: 'bow allowed', range: [0.005, 0.5] },
    modulus: { symbol: 'E_s', unit: 'GPa', meaning: "Young's modulus", range: [100, 250] },
  },
  unit: 'mm',
  equation: '(60 * p * L^4 / (384 * 1000 * E_s * delta_a))^(1/3)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'the bow of a plate over rails turned round; a plate as thick as a third of its span is stiffer against bending than shear lets it be',
  compute: (x) => Math.cbrt((60 * x.pressure * x.span ** 4) / (384 * 1000 * x.modulus * x.bow)),
});

/** Pillars of one row, so that they stand no further apart than the rows. */
export const pillarsEach = defineFormula({
  id: 'die.pillars-each',
  title: 'Pillars in a row',
  symbol: 'n_p',
  inputs: {
    breadth: { symbol: 'B_i', unit: 'mm', meaning: 'insert, along the rails', range: [20, 3000] },
    bay: { symbol: 'L_b', unit: 'mm', meaning: 'span from rail to pillar', range: [10, 1500] },
  },
  unit: '1',
  equation: 'max(1, ceil(B_i / L_b - 1e-9))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a planning rule of ours; where pillars stand is decided by the ejector pins between them',
  compute: (x) => Math.max(1, Math.ceil(x.breadth / x.bay - 1e-9)),
});

/** Load of one pillar: the field of the plate that is nearer to it than to its neighbours. */
export const pillarLoad = defineFormula({
  id: 'die.pillar-load',
  title: 'Load of a pillar',
  symbol: 'N',
  inputs: {
    pressure: { symbol: 'p_b', unit: 'MPa', meaning: 'pressure of the inserts on the plate', range: [0.5, 150] },
    bay: { symbol: 'L_b', unit: 'mm', meaning: 'span from rail to pillar', range: [10, 1500] },
    breadth: { symbol: 'B_i', unit: 'mm', meaning: 'insert, along the rails', range: [20, 3000] },
    pillars: { symbol: 'n_p', unit: '1', meaning: 'pillars in the row', range: [1, 30] },
  },
  unit: 'kN',
  equation: 'p_b * L_b * B_i / n_p / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'even shares; a plate that runs on over a single row puts a quarter more on it',
  compute: (x) => (x.pressure * x.bay * x.breadth) / x.pillars / 1000,
});

/** Pillar diameter for its load, rounded up to 5 mm. */
export const pillarDiameter = defineFormula({
  id: 'die.pillar-diameter',
  title: 'Diameter of a pillar',
  symbol: 'd_p',
  inputs: {
    load: { symbol: 'N', unit: 'kN', meaning: 'load of a pillar', range: [1, 5000] },
    allowed: { symbol: 's_a', unit: 'MPa', meaning: 'compressive stress allowed', range: [30, 400] },
  },
  unit: 'mm',
  equation: '5 * ceil(sqrt(4000 * N / (pi * s_a)) / 5)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a pillar is short, it does not buckle; the plate under its ends must not be pressed in either',
  compute: (x) => 5 * Math.ceil(Math.sqrt((4000 * x.load) / (Math.PI * x.allowed)) / 5),
});

/** Compressive stress in a pillar. */
export const pillarStress = defineFormula({
  id: 'die.pillar-stress',
  title: 'Compressive stress in a pillar',
  symbol: 's_p',
  inputs: {
    load: { symbol: 'N', unit: 'kN', meaning: 'load of a pillar', range: [1, 5000] },
    diameter: { symbol: 'd_p', unit: 'mm', meaning: 'diameter of the pillar', range: [10, 400] },
  },
  unit: 'MPa',
  equation: '4000 * N / (pi * d_p^2)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for an even load',
  compute: (x) => (4000 * x.load) / (Math.PI * x.diameter ** 2),
});
