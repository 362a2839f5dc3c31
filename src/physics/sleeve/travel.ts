import { defineFormula } from '../../kernel/formula.ts';

const METAL_INPUTS = {
  length: { symbol: 'L', unit: 'mm', meaning: 'active length, plunger start face to parting plane', range: [100, 2000] },
  volume: { symbol: 'V', unit: 'cm3', meaning: 'all metal of one shot', range: [5, 100000] },
  diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] },
} as const;

const RUNNER = { symbol: 'V_r', unit: 'cm3', meaning: 'runner volume between biscuit and gate', range: [0.5, 20000], domain: 'not-negative' } as const;

interface MetalNumbers {
  readonly length: number;
  readonly volume: number;
  readonly diameter: number;
}

/** Length of sleeve that a volume (cm3) fills. */
const columnLength = (volume: number, diameter: number): number => (4000 * volume) / (Math.PI * diameter ** 2);
const travelAtGate = (x: MetalNumbers & { readonly runner_volume: number }): number => x.length - columnLength(x.volume - x.runner_volume, x.diameter);

const FITS = {
  text: 'metal that fits in the sleeve',
  holds: (x: MetalNumbers) => columnLength(x.volume, x.diameter) <= x.length,
  mend: 'take a larger plunger, a longer sleeve or a smaller shot',
};
const RUNNER_IS_PART = {
  text: 'runner_volume < volume',
  holds: (x: { readonly volume: number; readonly runner_volume: number }) => x.runner_volume < x.volume,
};

/** Plunger travel from the start at which the metal fills the section of the sleeve. */
export const travelWhenFull = defineFormula({
  id: 'sleeve.travel-when-full',
  title: 'Plunger travel when the sleeve is full',
  symbol: 'x_full',
  inputs: METAL_INPUTS,
  unit: 'mm',
  equation: 'L - 4000 * V / (pi * D^2)',
  requires: [FITS],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact volume balance, as good as the poured volume',
  compute: (x) => x.length - columnLength(x.volume, x.diameter),
});

/** Plunger travel at which the metal stands at the gate. */
export const travelWhenAtGate = defineFormula({
  id: 'sleeve.travel-at-gate',
  title: 'Plunger travel when the metal is at the gate',
  symbol: 'x_gate',
  inputs: { ...METAL_INPUTS, runner_volume: RUNNER },
  unit: 'mm',
  equation: 'L - 4000 * (V - V_r) / (pi * D^2)',
  requires: [FITS, RUNNER_IS_PART],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact volume balance, as good as the poured volume',
  compute: travelAtGate,
});

/** Plunger travel at which the fast shot begins, so that the fast speed is reached when the metal is at the gate. */
export const changeOver = defineFormula({
  id: 'sleeve.change-over',
  title: 'Plunger travel at change-over to the fast shot',
  symbol: 'x_co',
  inputs: {
    ...METAL_INPUTS,
    runner_volume: RUNNER,
    fast_speed: { symbol: 'v_f', unit: 'm/s', meaning: 'plunger speed of the fast shot', range: [0.5, 8] },
    slow_speed: { symbol: 'v_s', unit: 'm/s', meaning: 'plunger speed at the end of the slow shot', range: [0.1, 1.5], domain: 'not-negative' },
    acceleration: { symbol: 'a', unit: 'm/s2', meaning: 'acceleration of the plunger in between', range: [50, 400] },
  },
  unit: 'mm',
  equation: 'L - 4000 * (V - V_r) / (pi * D^2) - 500 * (v_f^2 - v_s^2) / a',
  requires: [
    FITS,
    RUNNER_IS_PART,
    { text: 'fast_speed >= slow_speed', holds: (x) => x.fast_speed >= x.slow_speed },
    {
      text: 'a ramp that fits into the travel before the metal is at the gate',
      holds: (x) => ramp(x) <= travelAtGate(x),
      mend: 'take a slower fast shot, a stronger acceleration, a larger plunger or a longer sleeve',
    },
  ],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE', 'KB-HPDC-PARAMETERS'],
  status: 'derived',
  accuracy: 'exact for a constant acceleration; set at the machine within 10 to 30 mm of this',
  compute: (x) => travelAtGate(x) - ramp(x),
});

function ramp(x: { readonly fast_speed: number; readonly slow_speed: number; readonly acceleration: number }): number {
  return (500 * (x.fast_speed ** 2 - x.slow_speed ** 2)) / x.acceleration;
}

/** Plunger speed that gives a flow. */
export const fastSpeed = defineFormula({
  id: 'sleeve.fast-speed',
  title: 'Plunger speed of the fast shot',
  symbol: 'v_p',
  inputs: {
    flow: { symbol: 'Q', unit: 'l/s', meaning: 'metal flow through all gates', range: [0.05, 500] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [20, 250] },
  },
  unit: 'm/s',
  equation: '4000 * Q / (pi * D^2)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'source',
  accuracy: 'exact without leakage past the plunger tip',
  compute: ({ flow, diameter }) => (4000 * flow) / (Math.PI * diameter ** 2),
});
