import { defineFormula } from '../kernel/formula.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Travel that frees the undercut and the boss on the core tip, with clearance. */
export const slideStroke = defineFormula({
  id: 'slide.stroke',
  title: 'Slide stroke',
  symbol: 'S',
  inputs: {
    depth: { symbol: 'd', unit: 'mm', meaning: 'depth of the undercut or hole along the travel', range: [0.5, 500] },
    boss: { symbol: 'b', unit: 'mm', meaning: 'height of a boss on the core tip that must clear too', range: [0, 100], domain: 'not-negative' },
    clearance: { symbol: 'c', unit: 'mm', meaning: 'clearance to the casting when the slide is open', range: [5, 10], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: 'd + b + c',
  outside: 'extrapolate',
  source: ['CASTING-PARTS-CORE'],
  status: 'source',
  accuracy: "exact; the clearance of 5 to 10 mm is a toolmaker's rule",
  compute: ({ depth, boss, clearance }) => depth + boss + clearance,
});

const PIN_INPUTS = {
  stroke: { symbol: 'S', unit: 'mm', meaning: 'slide stroke', range: [1, 500] },
  angle: { symbol: 'a', unit: 'deg', meaning: 'angle of the pin from the die-opening axis', range: [10, 25] },
} as const;

const BELOW_RIGHT_ANGLE = { text: 'an angle below 90 degrees', holds: ({ angle }: { readonly angle: number }) => angle < 90 };

/** Die-opening travel during which the angle pin moves the slide by its stroke. */
export const pinEngagement = defineFormula({
  id: 'slide.pin-engagement',
  title: 'Die-opening travel while the angle pin is engaged',
  symbol: 'H',
  inputs: PIN_INPUTS,
  unit: 'mm',
  equation: 'S / tan(a * pi / 180)',
  requires: [BELOW_RIGHT_ANGLE],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry of a straight pin without play; the clearance of the pin in the slide delays the start of the travel',
  compute: ({ stroke, angle }) => stroke / Math.tan(radians(angle)),
});

/** Length of the angle pin that does the work, measured along the pin. */
export const pinLength = defineFormula({
  id: 'slide.pin-length',
  title: 'Working length of the angle pin',
  symbol: 'L',
  inputs: PIN_INPUTS,
  unit: 'mm',
  equation: 'S / sin(a * pi / 180)',
  requires: [BELOW_RIGHT_ANGLE],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry; head, seat and rounded tip of the pin come on top',
  compute: ({ stroke, angle }) => stroke / Math.sin(radians(angle)),
});
