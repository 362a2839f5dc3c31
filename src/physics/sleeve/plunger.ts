import { defineFormula } from '../../kernel/formula.ts';
import { linearSpeed } from '../slow-shot/speed.ts';
import { canFill, fillWith, plungerOf, type SleeveNumbers } from '../solve/plunger.ts';
import { bracketedRoot } from '../solve/root.ts';

const DENSITY = { symbol: 'rho_s', unit: 'g/cm3', meaning: 'density of the solid metal', range: [1.5, 11] } as const;
const LIQUID_DENSITY = { symbol: 'rho', unit: 'g/cm3', meaning: 'density of the liquid metal', range: [1.5, 11] } as const;
const LENGTH = { symbol: 'L', unit: 'mm', meaning: 'active length of the sleeve', range: [100, 2000] } as const;
/** How thick the biscuit of another plunger is; one that is pinned is given as the least, and grows with nothing. */
const OTHER_BISCUIT = {
  least: { symbol: 'b_1', unit: 'mm', meaning: 'least biscuit, or the one that stays', range: [0, 60], domain: 'not-negative', default: 0 },
  runner_depth: { symbol: 'd_r', unit: 'mm', meaning: 'depth of the deepest runner', range: [0, 60], domain: 'not-negative', default: 0 },
  share: { symbol: 's', unit: '1', meaning: 'biscuit over plunger diameter', range: [0, 0.5], domain: 'not-negative', default: 0 },
} as const;

interface Biscuit {
  readonly density: number;
  readonly liquid_density: number;
  readonly length: number;
  readonly least: number;
  readonly runner_depth: number;
  readonly share: number;
}

function sleeveOf(x: Biscuit, metal: number): SleeveNumbers {
  return { metal, length: x.length, swell: x.density / x.liquid_density, least: Math.max(x.least, x.runner_depth), share: x.share };
}

const byVolume = (x: Biscuit & { readonly volume: number; readonly biscuit_volume: number }): SleeveNumbers =>
  sleeveOf(x, x.volume - (x.density / x.liquid_density) * x.biscuit_volume);

/** Plunger diameter that gives a wanted sleeve fill in the same sleeve; its biscuit follows it, the other metal of the shot stays. */
export const plungerForFill = defineFormula({
  id: 'sleeve.plunger-for-fill',
  title: 'Plunger diameter for a fill',
  symbol: 'D',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'liquid metal of one shot', range: [5, 100000] },
    biscuit_volume: {
      symbol: 'V_b',
      unit: 'cm3',
      meaning: 'biscuit of the plunger at hand, solid, that is part of it',
      range: [0, 5000],
      domain: 'not-negative',
      default: 0,
    },
    density: DENSITY,
    liquid_density: LIQUID_DENSITY,
    length: LENGTH,
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill wanted', range: [20, 90] },
    ...OTHER_BISCUIT,
  },
  unit: 'mm',
  where: [{ symbol: 'k', equation: 'rho_s / rho' }],
  equation: '(4000 * (V - k * V_b) / (pi * D^2) + k * max(b_1, d_r, s * D)) / L - f / 100',
  implicit: true,
  requires: [{ text: 'metal besides the biscuit, and a sleeve that some plunger fills so little', holds: (x) => canFill(byVolume(x), x.fill) }],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact geometry, as good as the poured volume; the runner is left as it is, although its way from the biscuit changes a little',
  compute: (x) => plungerOf(byVolume(x), x.fill),
});

const linear = (diameter: number, fill: number): number => linearSpeed.compute({ diameter, fill });

interface AtHand extends Biscuit {
  readonly diameter: number;
  readonly fill: number;
  readonly biscuit: number;
}

/** mm of the sleeve that the plunger at hand has filled with other metal than the biscuit. */
const besides = (x: AtHand): number => (x.fill * x.length) / 100 - (x.density / x.liquid_density) * x.biscuit;
const byFill = (x: AtHand): SleeveNumbers => sleeveOf(x, (besides(x) * Math.PI * x.diameter ** 2) / 4000);

/** Plunger with which the same metal in the same sleeve comes down to a slow speed, by the linear rule; its biscuit follows it. */
export const plungerForSpeed = defineFormula({
  id: 'slow-shot.plunger-for-window',
  title: 'Plunger at the greatest slow speed in use',
  symbol: 'D_w',
  inputs: {
    diameter: { symbol: 'D', unit: 'mm', meaning: 'diameter of the plunger at hand', range: [30, 250] },
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill with it', range: [20, 60] },
    biscuit: { symbol: 'b', unit: 'mm', meaning: 'its biscuit', range: [0, 100], domain: 'not-negative', default: 0 },
    density: DENSITY,
    liquid_density: LIQUID_DENSITY,
    length: LENGTH,
    ...OTHER_BISCUIT,
    speed: { symbol: 'v_w', unit: 'm/s', meaning: 'slow speed to come down to', range: [0.1, 0.6] },
  },
  unit: 'mm',
  where: [{ symbol: 'k', equation: 'rho_s / rho' }],
  equation: '0.1149 * (1 - (f / 100 - k * b / L) * (D / D_w)^2 - k * max(b_1, d_r, s * D_w) / L) * sqrt(D_w) - v_w',
  implicit: true,
  requires: [
    { text: 'metal besides the biscuit', holds: (x) => besides(x) > 0 },
    { text: 'a critical speed above speed with the plunger at hand', holds: (x) => linear(x.diameter, fillWith(byFill(x), x.diameter)) > x.speed },
  ],
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'by the linear rule, which is remembered; exact geometry, the runner is left as it is',
  // At the low end the metal would fill the sleeve without its biscuit, and the rule gives no speed.
  compute: (x) => bracketedRoot((d) => linear(d, fillWith(byFill(x), d)) - x.speed, Math.sqrt((4000 * byFill(x).metal) / (Math.PI * x.length)), x.diameter),
});
