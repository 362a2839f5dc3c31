import { defineFormula } from '../../kernel/formula.ts';
import { DEPTH, DIAMETER } from './line-inputs.ts';

const LENGTH = { symbol: 'L', unit: 'm', meaning: 'length of the line', range: [0.01, 20] } as const;
const BELOW = { text: 'a line that lies wholly below the surface', holds: (x: { depth: number; diameter: number }) => x.depth > 0.5 * x.diameter } as const;

/** Shape factor of one line that runs under a flat surface: heat = S k (surface - line). */
export const shapeFactor = defineFormula({
  id: 'cooling.shape-factor',
  title: 'Shape factor of one line under a surface',
  symbol: 'S',
  inputs: { length: LENGTH, diameter: { ...DIAMETER, range: [0.5, 5000] }, depth: { ...DEPTH, range: [0.5, 20000] } },
  unit: 'm',
  equation: '2 * pi * L / acosh(2 * z / D)',
  requires: [BELOW],
  outside: 'extrapolate',
  source: ['INCROPERA-T4-1'],
  status: 'source',
  accuracy: 'exact for one long line below a wide surface at one temperature; lines side by side take heat from each other, see cooling.row-shape-factor',
  compute: ({ length, diameter, depth }) => (2 * Math.PI * length) / Math.acosh((2 * depth) / diameter),
});

/** Shape factor of one line of a row of equal ones. */
export const rowShapeFactor = defineFormula({
  id: 'cooling.row-shape-factor',
  title: 'Shape factor of one line of a row',
  symbol: 'S',
  inputs: {
    length: LENGTH,
    diameter: { ...DIAMETER, range: [0.5, 100] },
    depth: { ...DEPTH, range: [1, 500] },
    pitch: { symbol: 'w', unit: 'mm', meaning: 'distance from line to line', range: [5, 2000] },
  },
  unit: 'm',
  equation: '2 * pi * L / log(2 * w / (pi * D) * sinh(2 * pi * z / w))',
  requires: [BELOW, { text: 'a pitch wider than a line', holds: (x) => x.pitch > x.diameter }],
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy:
    'a textbook form, remembered with high confidence; for long lines with pitch and depth above 1.5 diameters. For a wide pitch it is the one of a single line; the face between the lines is taken at one temperature',
  compute: ({ length, diameter, depth, pitch }) =>
    (2 * Math.PI * length) / Math.log(((2 * pitch) / (Math.PI * diameter)) * Math.sinh((2 * Math.PI * depth) / pitch)),
});

/**
 * Shape factor of one line of a row under a face that takes the same heat everywhere, to the mean temperature of the face: a row of
 * sinks, its mirror image above the face, and the even flow that keeps the steel below free of heat. Close lines give what
 * `rowShapeFactor` gives; far apart they leave the face between them hotter, so it falls again where that one stays.
 */
export const spreadShapeFactor = defineFormula({
  id: 'cooling.spread-shape-factor',
  title: 'Shape factor of one line of those laid',
  symbol: 'S',
  inputs: rowShapeFactor.inputs,
  unit: 'm',
  equation: '2 * pi * L / (log(w / (pi * D)) + 2 * pi * z / w - log(1 - exp(-4 * pi * z / w)))',
  requires: [BELOW, { text: 'a pitch wider than a line', holds: (x) => x.pitch > x.diameter }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for long lines with pitch and depth above 1.5 diameters, steel without end below and a face that takes the same heat everywhere',
  compute: ({ length, diameter, depth, pitch }) =>
    (2 * Math.PI * length) / (Math.log(pitch / (Math.PI * diameter)) + (2 * Math.PI * depth) / pitch - Math.log(1 - Math.exp((-4 * Math.PI * depth) / pitch))),
});

/** Conductance of one line from the die surface to the coolant: the film in the line and the steel above it in series. */
export const lineConductance = defineFormula({
  id: 'cooling.line-conductance',
  title: 'Conductance of one line',
  symbol: 'UA',
  inputs: {
    film: { symbol: 'h', unit: 'W/(m2.K)', meaning: 'film coefficient in the line', range: [20, 60000] },
    diameter: DIAMETER,
    length: LENGTH,
    shape: { symbol: 'S', unit: 'm', meaning: 'shape factor of the line', range: [0.01, 200] },
    conductivity: { symbol: 'k', unit: 'W/(m.K)', meaning: 'thermal conductivity of the die steel', range: [10, 250] },
  },
  unit: 'W/K',
  equation: '1 / (1 / (h * pi * D / 1000 * L) + 1 / (S * k))',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the two resistances; scale in the line adds a third: 1 mm of lime about doubles the whole',
  compute: (x) => 1 / (1 / (x.film * Math.PI * (x.diameter / 1000) * x.length) + 1 / (x.shape * x.conductivity)),
});

/** The most that a line can take: the steel alone holds the heat back. */
export const steelConductance = defineFormula({
  id: 'cooling.steel-conductance',
  title: 'Conductance of the steel above one line',
  symbol: 'C_s',
  inputs: {
    shape: { symbol: 'S', unit: 'm', meaning: 'shape factor of the line', range: [0.01, 200] },
    conductivity: { symbol: 'k', unit: 'W/(m.K)', meaning: 'thermal conductivity of the die steel', range: [10, 250] },
  },
  unit: 'W/K',
  equation: 'S * k',
  outside: 'extrapolate',
  source: ['INCROPERA-T4-1'],
  status: 'derived',
  accuracy: 'exact; no line takes more, however fast the coolant',
  compute: ({ shape, conductivity }) => shape * conductivity,
});

/** Heat through a conductance between two temperatures. */
export const lineHeat = defineFormula({
  id: 'cooling.line-heat',
  title: 'Heat through a line',
  symbol: 'q',
  inputs: {
    conductance: { symbol: 'UA', unit: 'W/K', meaning: 'conductance from die surface to coolant', range: [0.1, 2000] },
    warm: { symbol: 'T_w', unit: 'degC', meaning: 'the warmer of die surface and coolant', range: [100, 700], domain: 'any' },
    cold: { symbol: 'T_c', unit: 'degC', meaning: 'the colder of the two', range: [10, 400], domain: 'any' },
  },
  unit: 'W',
  equation: 'UA * (T_w - T_c)',
  requires: [{ text: 'a warm side that is warmer than the cold one', holds: (x) => x.warm > x.cold }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for mean temperatures over the cycle and over the face',
  compute: ({ conductance, warm, cold }) => conductance * (warm - cold),
});

/** Heat that one metre of line takes. */
export const heatPerLength = defineFormula({
  id: 'cooling.heat-per-length',
  title: 'Heat of one metre of line',
  symbol: 'q_1',
  inputs: { heat: { symbol: 'q', unit: 'W', meaning: 'heat of one line', range: [1, 50000] }, length: LENGTH },
  unit: 'W/m',
  equation: 'q / L',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ heat, length }) => heat / length,
});

/** Temperature of the wall of the line, which boils the coolant when it is too hot. */
export const wallTemperature = defineFormula({
  id: 'cooling.wall-temperature',
  title: 'Temperature of the wall of the line',
  symbol: 'T_p',
  inputs: {
    coolant: { symbol: 'T_c', unit: 'degC', meaning: 'coolant temperature', range: [10, 350], domain: 'any' },
    heat: { symbol: 'q', unit: 'W', meaning: 'heat that the line takes', range: [1, 50000] },
    film: { symbol: 'h', unit: 'W/(m2.K)', meaning: 'film coefficient in the line', range: [20, 60000] },
    diameter: DIAMETER,
    length: LENGTH,
  },
  unit: 'degC',
  equation: 'T_c + q / (h * pi * D / 1000 * L)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'mean of the cycle and of the circumference; the side that faces the cavity is hotter',
  compute: (x) => x.coolant + x.heat / (x.film * Math.PI * (x.diameter / 1000) * x.length),
});

/** Heat flux at the wall of the line. */
export const wallFlux = defineFormula({
  id: 'cooling.wall-flux',
  title: 'Heat flux at the wall of the line',
  symbol: 'q_p',
  inputs: { heat: { symbol: 'q', unit: 'W', meaning: 'heat that the line takes', range: [1, 50000] }, diameter: DIAMETER, length: LENGTH },
  unit: 'kW/m2',
  equation: 'q / (pi * D * L)',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'mean of the cycle and of the circumference',
  compute: ({ heat, diameter, length }) => heat / (Math.PI * diameter * length),
});
