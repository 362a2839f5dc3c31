import { defineFormula } from '../../kernel/formula.ts';

/** Outline of the core of a box-like casting: the envelope across the die opening, less a wall all round. */
export const innerOutline = defineFormula({
  id: 'ejection.inner-outline',
  title: 'Outline of the core inside the casting',
  symbol: 'U',
  inputs: {
    side_a: { symbol: 'a', unit: 'mm', meaning: 'longer envelope side across the die opening', range: [5, 3000] },
    side_b: { symbol: 'b', unit: 'mm', meaning: 'shorter envelope side across the die opening', range: [5, 3000] },
    wall: { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.5, 25] },
    cores: { symbol: 'n', unit: '1', meaning: 'cores that share the outline', range: [1, 20], default: 1 },
  },
  unit: 'mm',
  equation: 'max(4 * t, 2 * (a + b) - 8 * t) / n',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy:
    'a box as large as the envelope; it sets area and pressure, hardly the force, because a stretched wall presses on a longer outline with less pressure',
  compute: (x) => Math.max(4 * x.wall, 2 * (x.side_a + x.side_b) - 8 * x.wall) / x.cores,
});

/** Diameter of the circle with the outline of a core. */
export const coreDiameter = defineFormula({
  id: 'ejection.core-diameter',
  title: 'Diameter of a core of any outline',
  symbol: 'd',
  inputs: { outline: { symbol: 'U', unit: 'mm', meaning: 'outline of the core', range: [3, 6000] } },
  unit: 'mm',
  equation: 'U / pi',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the sum of the pressure of a band around any outline without hollows; the band presses at corners and hardly on flats',
  compute: ({ outline }) => outline / Math.PI,
});

/** Side surface of a core of any outline. */
export const faceArea = defineFormula({
  id: 'ejection.face-area',
  title: 'Side surface of a core in line of draw',
  symbol: 'A_c',
  inputs: {
    outline: { symbol: 'U', unit: 'mm', meaning: 'outline of the core', range: [3, 6000] },
    height: { symbol: 'h', unit: 'mm', meaning: 'height of the face in line of draw', range: [0.5, 500] },
  },
  unit: 'cm2',
  equation: 'U * h / 100',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for an upright face; windows in it and the draft take some off',
  compute: ({ outline, height }) => (outline * height) / 100,
});

/** Side surface that a casting can have inside at most, when the part file names no inside face: what stands upright of its sheet. */
export const uprightArea = defineFormula({
  id: 'ejection.upright-area',
  title: 'Inside surface in line of draw, estimated',
  symbol: 'A_u',
  inputs: {
    box: { symbol: 'A_b', unit: 'cm2', meaning: 'inside surface of an open box as large as the envelope', range: [0.1, 20000] },
    volume: { symbol: 'V', unit: 'cm3', meaning: 'part volume', range: [0.2, 50000] },
    wall: { symbol: 't', unit: 'mm', meaning: 'nominal wall', range: [0.5, 25] },
    projected_area: { symbol: 'A_p', unit: 'cm2', meaning: 'projected area of the casting', range: [0.5, 20000] },
  },
  unit: 'cm2',
  equation: 'max(0, min(A_b, 10 * V / t - A_p))',
  outside: 'extrapolate',
  source: [],
  status: 'practice',
  accuracy: 'a sheet of the nominal wall folded into an open box: an upper estimate where the part has no inside at all, and none of ribs',
  compute: (x) => Math.max(0, Math.min(x.box, (10 * x.volume) / x.wall - x.projected_area)),
});

/** Height of an upright face that has a given surface over a given outline. */
export const meanHeight = defineFormula({
  id: 'ejection.mean-height',
  title: 'Height of the core inside the casting, estimated',
  symbol: 'h',
  inputs: {
    area: { symbol: 'A_u', unit: 'cm2', meaning: 'side surface in line of draw', range: [0, 20000], domain: 'not-negative' },
    outline: { symbol: 'U', unit: 'mm', meaning: 'outline of the core', range: [3, 6000] },
  },
  unit: 'mm',
  equation: '100 * A_u / U',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the surface and outline given',
  compute: ({ area, outline }) => (100 * area) / outline,
});

/** Outline of a core whose side surface is known. */
export const outlineOf = defineFormula({
  id: 'ejection.outline',
  title: 'Outline of a core of known side surface',
  symbol: 'U',
  inputs: {
    area: { symbol: 'A_c', unit: 'cm2', meaning: 'side surface in line of draw', range: [0.01, 20000] },
    height: { symbol: 'h', unit: 'mm', meaning: 'height in line of draw', range: [0.2, 500] },
  },
  unit: 'mm',
  equation: '100 * A_c / h',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact for the surface and height given',
  compute: ({ area, height }) => (100 * area) / height,
});
