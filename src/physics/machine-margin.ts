import { defineFormula } from '../kernel/formula.ts';

const EXACT = { outside: 'extrapolate', source: [], status: 'derived', accuracy: 'exact; below 0 the bound is broken' } as const;

/** What is left of the rated locking force. */
export const reserveClamp = defineFormula({
  ...EXACT,
  id: 'machine.reserve-clamp',
  title: 'Locking force left',
  symbol: 'm_F',
  inputs: { use: { symbol: 'u', unit: '%', meaning: 'use of the rated locking force', range: [1, 200] } },
  unit: '%',
  equation: '100 - u',
  compute: ({ use }) => 100 - use,
});

/** What is left of the plunger speed that the machine gives. */
export const reserveSpeed = defineFormula({
  ...EXACT,
  id: 'machine.reserve-speed',
  title: 'Plunger speed left',
  symbol: 'm_v',
  inputs: {
    speed: { symbol: 'v', unit: 'm/s', meaning: 'planned plunger speed', range: [0.01, 12] },
    available: { symbol: 'v_a', unit: 'm/s', meaning: 'plunger speed that may be planned with', range: [0.1, 12] },
  },
  unit: '%',
  equation: '100 * (1 - v / v_a)',
  compute: ({ speed, available }) => 100 * (1 - speed / available),
});

/** What is left of the stroke of a hot-chamber plunger. */
export const reserveStroke = defineFormula({
  ...EXACT,
  id: 'machine.reserve-stroke',
  title: 'Plunger stroke left',
  symbol: 'm_s',
  inputs: {
    needed: { symbol: 's', unit: 'mm', meaning: 'stroke that the shot takes', range: [1, 1500] },
    stroke: { symbol: 's_m', unit: 'mm', meaning: 'stroke of the machine', range: [20, 1500] },
  },
  unit: '%',
  equation: '100 * (1 - s / s_m)',
  compute: ({ needed, stroke }) => 100 * (1 - needed / stroke),
});

/** What is left of the machine where its window of pressure and flow asks least of it. */
export const reserveWindow = defineFormula({
  ...EXACT,
  id: 'machine.reserve-window',
  title: 'Window of pressure and flow left',
  symbol: 'm_p',
  inputs: { use: { symbol: 'u', unit: '%', meaning: 'use of the machine at the least flow and gate velocity', range: [0, 300], domain: 'not-negative' } },
  unit: '%',
  equation: '100 - u',
  compute: ({ use }) => 100 - use,
});

/** How far a sleeve fill lies inside its window: 100 % in the middle, 0 at an end. */
export const reserveFill = defineFormula({
  ...EXACT,
  id: 'machine.reserve-fill',
  title: 'Sleeve fill inside its window',
  symbol: 'm_f',
  inputs: {
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [1, 120] },
    least: { symbol: 'f_1', unit: '%', meaning: 'least fill', range: [0, 90], domain: 'not-negative' },
    greatest: { symbol: 'f_2', unit: '%', meaning: 'greatest fill', range: [10, 100] },
  },
  unit: '%',
  equation: '200 * min(f - f_1, f_2 - f) / (f_2 - f_1)',
  requires: [{ text: 'least < greatest', holds: (x) => x.least < x.greatest }],
  compute: (x) => (200 * Math.min(x.fill - x.least, x.greatest - x.fill)) / (x.greatest - x.least),
});
