import { defineFormula } from '../../kernel/formula.ts';
import { SEGMENT_ANGLE_LINES, segmentAngle } from '../solve/segment.ts';

/** Standard gravity, m/s2. */
const GRAVITY = 9.80665;

const INPUTS = {
  diameter: { symbol: 'D', unit: 'mm', meaning: 'inside diameter of the sleeve', range: [30, 250] },
  fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [20, 80] },
} as const;

const NOT_OVERFULL = {
  text: 'a fill of 100 % or less',
  holds: ({ fill }: { readonly fill: number }) => fill <= 100,
  mend: 'take a larger plunger, a longer sleeve or a smaller shot',
};

const DEPTH = { symbol: 'y', equation: `(1 - cos(${SEGMENT_ANGLE_LINES.last} / 2)) / 2` };

/**
 * Slow-shot speed at which the wave just reaches the top of the sleeve, by continuity and energy between the filled
 * and the part-filled section. `y` is the depth of the metal over the diameter.
 */
export const criticalSpeedEnergy = defineFormula({
  id: 'sleeve.critical-speed-energy',
  title: 'Critical slow-shot speed, energy balance',
  symbol: 'v_e',
  inputs: INPUTS,
  unit: 'm/s',
  where: [...SEGMENT_ANGLE_LINES.lines, DEPTH],
  equation: 'sqrt(2 * 9.80665 * D / 1000 * (1 - y) * (1 - u) / (1 + u))',
  requires: [NOT_OVERFULL],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy:
    'within 2.4 % of the linear rule of the trade for 40 to 80 % fill; takes no loss in the wave, so below half fill it lies under the momentum balance',
  compute: ({ diameter, fill }) => {
    const share = fill / 100;
    const depth = (1 - Math.cos(segmentAngle(share) / 2)) / 2;
    return Math.sqrt((2 * GRAVITY * (diameter / 1000) * (1 - depth) * (1 - share)) / (1 + share));
  },
});

/**
 * The same speed by mass and momentum across the moving front, which allows for the loss in it. `c` is the depth of the
 * centroid of the metal's section under its surface, over the diameter.
 */
export const criticalSpeedMomentum = defineFormula({
  id: 'sleeve.critical-speed-momentum',
  title: 'Critical slow-shot speed, momentum balance',
  symbol: 'v_m',
  inputs: INPUTS,
  unit: 'm/s',
  where: [...SEGMENT_ANGLE_LINES.lines, DEPTH, { symbol: 'c', equation: `y - 0.5 + sin(${SEGMENT_ANGLE_LINES.last} / 2)^3 / (3 * pi * u)` }],
  equation: 'sqrt(9.80665 * D / 1000 * (0.5 - c * u) * (1 - u) / u)',
  requires: [NOT_OVERFULL],
  outside: 'extrapolate',
  source: ['BAR-MEIR'],
  status: 'derived',
  accuracy: 'said to agree with published experiments; 14 % above the energy balance at 40 % fill, 2 % at 80 %',
  compute: ({ diameter, fill }) => {
    const share = fill / 100;
    const half = segmentAngle(share) / 2;
    const moment = Math.sin(half) ** 3 / (3 * Math.PI) - (share * Math.cos(half)) / 2;
    return Math.sqrt((GRAVITY * (diameter / 1000) * (0.5 - moment) * (1 - share)) / share);
  },
});
