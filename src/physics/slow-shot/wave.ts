import { defineFormula } from '../../kernel/formula.ts';
import { waveShot } from '../solve/wave-shot.ts';

/** Mass and momentum of the metal, x along the sleeve: what the run steps through. */
const BALANCES = 'dA/dt + d(A*u)/dx = 0 and d(A*u)/dt + d(A*u^2 + g*I)/dx = 0, A the section of the metal and I its first moment';

const INPUTS = {
  diameter: { symbol: 'D', unit: 'mm', meaning: 'inside diameter of the sleeve', range: [20, 300] },
  fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [5, 95] },
  length: { symbol: 'L', unit: 'mm', meaning: 'active length, plunger start face to parting plane', range: [50, 3000] },
  hole_travel: { symbol: 'x_h', unit: 'mm', meaning: 'plunger travel at the end of the first ramp', range: [5, 600] },
  hole_speed: { symbol: 'v_h', unit: 'm/s', meaning: 'plunger speed there', range: [0.05, 1] },
  ramp_end: { symbol: 'x_r', unit: 'mm', meaning: 'plunger travel when the slow speed is reached', range: [5, 2000] },
  speed: { symbol: 'v_s', unit: 'm/s', meaning: 'slow-shot speed, kept from there', range: [0.05, 3] },
} as const;

type Numbers = { readonly [K in keyof typeof INPUTS]: number };

const REQUIRES = [
  { text: 'a fill below 100 %', holds: ({ fill }: Numbers) => fill < 100 },
  { text: 'ramp_end >= hole_travel', holds: (x: Numbers) => x.ramp_end >= x.hole_travel },
  { text: 'speed >= hole_speed', holds: (x: Numbers) => x.speed >= x.hole_speed },
  { text: 'a slow speed that is reached before the sleeve is full', holds: (x: Numbers) => x.ramp_end <= x.length * (1 - x.fill / 100) },
];

const LIMITS =
  'shallow water without friction, cooling or air pressure, the way out at the top of the die end; a crest that curls over is not in it, so a head above the roof counts as one';

/** Air that the metal cuts off from the way out before the sleeve is full. */
export const waveTrapped = defineFormula({
  id: 'slow-shot.wave-trapped',
  title: 'Air trapped in the sleeve by the wave',
  symbol: 'V_w',
  inputs: INPUTS,
  unit: 'cm3',
  equation: BALANCES,
  solution: 'time-stepped',
  requires: REQUIRES,
  outside: 'refuse',
  source: [],
  status: 'derived',
  accuracy: `an estimate: ${LIMITS}; doubling the cells moves it by less than 2 %, or a thousandth of the air of the sleeve`,
  compute: (x) => waveShot(x).trapped,
});

/** Plunger travel at which the metal closes the die end, where the air leaves. */
export const waveClosing = defineFormula({
  id: 'slow-shot.wave-closing',
  title: 'Plunger travel when the wave closes the way out',
  symbol: 'x_w',
  inputs: INPUTS,
  unit: 'mm',
  equation: BALANCES,
  solution: 'time-stepped',
  requires: REQUIRES,
  outside: 'refuse',
  source: [],
  status: 'derived',
  accuracy: LIMITS,
  compute: (x) => waveShot(x).closing,
});

/** Head of the metal at the plunger while the wave runs. */
export const waveHead = defineFormula({
  id: 'slow-shot.wave-head',
  title: 'Head of the metal at the plunger, over the sleeve diameter',
  symbol: 'h_w',
  inputs: INPUTS,
  unit: '%',
  equation: BALANCES,
  solution: 'time-stepped',
  requires: REQUIRES,
  outside: 'refuse',
  source: [],
  status: 'derived',
  accuracy: `mean from reaching the slow speed until 90 % of the air is out; 100 % is a wave that just fills the section; ${LIMITS}`,
  compute: (x) => waveShot(x).head,
});

/** Trapped air as a share of all air that was in the sleeve. */
export const waveShare = defineFormula({
  id: 'slow-shot.wave-share',
  title: 'Air trapped by the wave, share of the air in the sleeve',
  symbol: 's_w',
  inputs: {
    trapped: { symbol: 'V_w', unit: 'cm3', meaning: 'air trapped by the wave', range: [0, 5000], domain: 'not-negative' },
    air: { symbol: 'V_a', unit: 'cm3', meaning: 'air in the sleeve after pouring', range: [10, 50000] },
  },
  unit: '%',
  equation: '100 * V_w / V_a',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'as good as the trapped volume; the same for every sleeve of one fill when speeds go with the square root of the diameter',
  compute: ({ trapped, air }) => (100 * trapped) / air,
});
