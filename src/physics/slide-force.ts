import { defineFormula } from '../kernel/formula.ts';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Pin angle at which the slide makes its stroke within a given die-opening travel. */
export const pinAngleNeeded = defineFormula({
  id: 'slide.pin-angle-needed',
  title: 'Pin angle for stroke and opening',
  symbol: 'a',
  inputs: {
    stroke: { symbol: 'S', unit: 'mm', meaning: 'slide stroke', range: [1, 500] },
    opening: { symbol: 'H', unit: 'mm', meaning: 'die-opening travel in which the stroke must be made', range: [50, 2000] },
  },
  unit: 'deg',
  equation: 'atan(S / H) * 180 / pi',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact geometry of a straight pin without play',
  compute: ({ stroke, opening }) => (Math.atan(stroke / opening) * 180) / Math.PI,
});

/** Angle of the wedge lock: steeper than the pin, so that the lock is clear before the pin pulls. */
export const lockAngle = defineFormula({
  id: 'slide.lock-angle',
  title: 'Angle of the wedge lock',
  symbol: 'b',
  inputs: {
    pin_angle: { symbol: 'a', unit: 'deg', meaning: 'angle of the pin from the die-opening axis', range: [10, 25] },
    extra: { symbol: 'd', unit: 'deg', meaning: 'what the lock is steeper by', range: [2, 5] },
  },
  unit: 'deg',
  equation: 'a + d',
  outside: 'extrapolate',
  source: ['USM-SLIDER'],
  status: 'source',
  accuracy: 'rule of a toolmaker for moulds (2 to 3 degrees); no die casting book with such a rule was found',
  compute: ({ pin_angle, extra }) => pin_angle + extra,
});

/** Metal-side face of round cores, seen along their travel. */
export const coreFace = defineFormula({
  id: 'slide.core-face',
  title: 'Face area of round cores',
  symbol: 'A_f',
  inputs: {
    diameter: { symbol: 'd', unit: 'mm', meaning: 'core diameter', range: [1, 300] },
    count: { symbol: 'n', unit: '1', meaning: 'number of such cores', range: [1, 100] },
  },
  unit: 'cm2',
  equation: 'n * pi * d^2 / 400',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact; the slide face around the core, where metal touches it, comes on top',
  compute: ({ diameter, count }) => (count * Math.PI * diameter ** 2) / 400,
});

/** Side surface of round cores, on which the casting shrinks. */
export const coreSurface = defineFormula({
  id: 'slide.core-surface',
  title: 'Side surface of round cores',
  symbol: 'A_c',
  inputs: {
    diameter: { symbol: 'd', unit: 'mm', meaning: 'core diameter', range: [1, 300] },
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the hole', range: [0.5, 500] },
    count: { symbol: 'n', unit: '1', meaning: 'number of such cores', range: [1, 100] },
  },
  unit: 'cm2',
  equation: 'n * pi * d * h / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for a cylinder; the draft takes a few per cent off',
  compute: ({ diameter, depth, count }) => (count * Math.PI * diameter * depth) / 100,
});

/** Side surface of an undercut whose outline is not known: that of a square of the same face area. */
export const undercutSurface = defineFormula({
  id: 'slide.undercut-surface',
  title: 'Side surface of an undercut',
  symbol: 'A_c',
  inputs: {
    face_area: { symbol: 'A', unit: 'cm2', meaning: 'face area of the undercut along its travel', range: [0.05, 2000] },
    depth: { symbol: 'h', unit: 'mm', meaning: 'depth of the undercut', range: [0.5, 500] },
  },
  unit: 'cm2',
  equation: '4 * sqrt(A) * h / 10',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a square outline is assumed; a long narrow undercut has more',
  compute: ({ face_area, depth }) => (4 * Math.sqrt(face_area) * depth) / 10,
});

/** Force that draws a core out of the casting that has shrunk onto it. */
export const pullingForce = defineFormula({
  id: 'slide.pulling-force',
  title: 'Core pulling force',
  symbol: 'F_p',
  inputs: {
    surface: { symbol: 'A_c', unit: 'cm2', meaning: 'side surface of the cores that the casting grips', range: [0.1, 5000] },
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'pressure with which the casting grips the core', range: [6, 16] },
    friction: { symbol: 'mu', unit: '1', meaning: 'friction of the casting on the core', range: [0.2, 0.25] },
    draft: { symbol: 'a', unit: 'deg', meaning: 'draft of the core, per side', range: [0, 10], domain: 'not-negative' },
  },
  unit: 'kN',
  // A core steeper than the friction angle comes free by itself.
  equation: 'A_c * p * max(0, mu * cos(a * pi / 180) - sin(a * pi / 180)) / 10',
  outside: 'extrapolate',
  source: [],
  status: 'memory',
  accuracy: 'the gripping pressure is remembered and spreads by a fifth to a third; a core that is soldered or pulled late needs far more',
  compute: ({ surface, pressure, friction, draft }) => (surface * pressure * Math.max(0, friction * Math.cos(radians(draft)) - Math.sin(radians(draft)))) / 10,
});
