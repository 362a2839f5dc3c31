import { defineFormula } from '../../kernel/formula.ts';

const SURFACE = { symbol: 'T_s', unit: 'degC', meaning: 'mean temperature of the die surface', range: [100, 700], domain: 'any' } as const;

/** Mean temperature of the tip of a core above the die: a fin that takes heat from the metal and leads it to its foot. */
export const coreExcess = defineFormula({
  id: 'cooling.core-excess',
  title: 'Tip of a solid core above the die',
  symbol: 'dT_k',
  inputs: {
    flux: { symbol: 'q_f', unit: 'kW/m2', meaning: 'heat flux of the die face, mean of the cycle', range: [1, 300] },
    metal: { symbol: 'T_m', unit: 'degC', meaning: 'temperature of the metal while it gives off its heat', range: [300, 950], domain: 'any' },
    surface: SURFACE,
    conductivity: { symbol: 'k_p', unit: 'W/(m.K)', meaning: 'thermal conductivity of the core', range: [10, 250] },
    diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter of the core', range: [0.5, 200] },
    depth: { symbol: 'L_k', unit: 'mm', meaning: 'length of the core in the metal', range: [0.5, 400] },
  },
  unit: 'K',
  where: [{ symbol: 'm_L', equation: 'L_k / 1000 * sqrt(4 * q_f * 1000 / (T_m - T_s) / (k_p * d / 1000))' }],
  equation: '(T_m - T_s) * (1 - 1 / cosh(m_L))',
  requires: [{ text: 'a metal hotter than the die', holds: (x) => x.metal > x.surface }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'a fin held at the die temperature at its foot; the spray on the pin is not in it, the poor fit of a pin in its hole neither',
  compute: (x) => {
    const span = x.metal - x.surface;
    const length = (x.depth / 1000) * Math.sqrt((4 * x.flux * 1000) / span / ((x.conductivity * x.diameter) / 1000));
    return span * (1 - 1 / Math.cosh(length));
  },
});

/** Thinnest core that takes a bubbler: its bore and steel round it. */
export const bubblerCore = defineFormula({
  id: 'cooling.bubbler-core',
  title: 'Thinnest core for a bubbler',
  symbol: 'd_b',
  inputs: {
    bore: { symbol: 'd_i', unit: 'mm', meaning: 'least bore of a bubbler', range: [3, 15] },
    wall: { symbol: 's_b', unit: 'mm', meaning: 'steel round the bore', range: [2, 10] },
  },
  unit: 'mm',
  equation: 'd_i + 2 * s_b',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact sum of two rules of thumb',
  compute: ({ bore, wall }) => bore + 2 * wall,
});
