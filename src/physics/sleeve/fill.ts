import { defineFormula } from '../../kernel/formula.ts';
import { segmentAngle as solveSegmentAngle } from '../solve/segment.ts';

/** Share of the active sleeve that the poured metal fills before the plunger moves. */
export const sleeveFill = defineFormula({
  id: 'sleeve.fill',
  title: 'Sleeve fill',
  symbol: 'f',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'all metal of one shot', range: [5, 100000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'inside diameter of the sleeve', range: [30, 250] },
    length: { symbol: 'L', unit: 'mm', meaning: 'active length, plunger start face to parting plane', range: [100, 2000] },
  },
  unit: '%',
  equation: '400000 * V / (pi * D^2 * L)',
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE', 'GL-FILLING-LEVEL'],
  status: 'source',
  accuracy: 'exact for a horizontal sleeve; above 100 % the metal does not fit',
  compute: ({ volume, diameter, length }) => (400000 * volume) / (Math.PI * diameter ** 2 * length),
});

/** Active length of the sleeve that gives a wanted fill. */
export const sleeveLengthForFill = defineFormula({
  id: 'sleeve.length-for-fill',
  title: 'Active sleeve length for a fill',
  symbol: 'L',
  inputs: {
    volume: { symbol: 'V', unit: 'cm3', meaning: 'all metal of one shot', range: [5, 100000] },
    diameter: { symbol: 'D', unit: 'mm', meaning: 'inside diameter of the sleeve', range: [30, 250] },
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill wanted', range: [20, 90] },
  },
  unit: 'mm',
  equation: '400000 * V / (pi * D^2 * f)',
  requires: [{ text: 'a fill of 100 % or less', holds: ({ fill }) => fill <= 100 }],
  outside: 'extrapolate',
  source: ['KB-SHOT-PROFILE'],
  status: 'derived',
  accuracy: 'exact; an active length of 4 to 8 diameters is usual',
  compute: ({ volume, diameter, fill }) => (400000 * volume) / (Math.PI * diameter ** 2 * fill),
});

/** Central angle of the metal's cross-section in a horizontal sleeve. */
export const sleeveSegmentAngle = defineFormula({
  id: 'sleeve.segment-angle',
  title: 'Central angle of the metal in the sleeve',
  symbol: 'theta',
  inputs: {
    fill: { symbol: 'f', unit: '%', meaning: 'sleeve fill', range: [1, 99], domain: 'not-negative' },
  },
  unit: 'rad',
  equation: '(theta - sin(theta)) / (2 * pi) - f / 100',
  implicit: true,
  requires: [{ text: 'a fill of 100 % or less', holds: ({ fill }) => fill <= 100 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry of a circular sleeve at rest',
  compute: ({ fill }) => solveSegmentAngle(fill / 100),
});

/** Volume of the biscuit that stays in front of the plunger. */
export const biscuitVolume = defineFormula({
  id: 'sleeve.biscuit-volume',
  title: 'Biscuit volume',
  symbol: 'V_b',
  inputs: {
    diameter: { symbol: 'D', unit: 'mm', meaning: 'plunger diameter', range: [30, 250] },
    thickness: { symbol: 'b', unit: 'mm', meaning: 'biscuit thickness', range: [5, 100] },
  },
  unit: 'cm3',
  equation: 'pi * D^2 / 4 * b / 1000',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a flat cylinder',
  compute: ({ diameter, thickness }) => (((Math.PI * diameter ** 2) / 4) * thickness) / 1000,
});
