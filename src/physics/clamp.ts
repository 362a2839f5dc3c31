import { defineFormula } from '../kernel/formula.ts';

/** Force with which the metal pressure opens the die: pressure times projected area. 1 MPa x 1 cm2 = 0.1 kN. */
export const openingForce = defineFormula({
  id: 'clamp.opening-force',
  title: 'Die opening force',
  symbol: 'F_open',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'metal pressure in the cavity, the greater of intensified pressure and end-of-fill spike', range: [1, 150] },
    area: { symbol: 'A', unit: 'cm2', meaning: 'projected area of all metal at the parting plane, whole shot', range: [1, 30000] },
  },
  unit: 'kN',
  equation: 'p * A / 10',
  outside: 'extrapolate',
  source: ['GL-OPENING-FORCE'],
  status: 'source',
  accuracy: 'exact for a hydrostatic pressure over the whole area; the real pressure falls away from the gate, so this is the safe side',
  compute: ({ pressure, area }) => (pressure * area) / 10,
});

/** Part of the force on a slide face that its wedge lock turns into die opening force. */
export const slideOpeningForce = defineFormula({
  id: 'clamp.slide-opening-force',
  title: 'Opening force from a slide lock',
  symbol: 'F_slide',
  inputs: {
    pressure: { symbol: 'p', unit: 'MPa', meaning: 'metal pressure in the cavity', range: [1, 150] },
    face_area: { symbol: 'A_s', unit: 'cm2', meaning: 'area of the slide seen along its travel, metal side', range: [0.1, 10000] },
    lock_angle: { symbol: 'b', unit: 'deg', meaning: 'angle of the wedge lock from the die-opening axis', range: [10, 30] },
    friction: {
      symbol: 'mu',
      unit: '1',
      meaning: 'coefficient of friction at the lock face; 0 is the safe side',
      range: [0, 0.15],
      domain: 'not-negative',
      default: 0,
    },
  },
  unit: 'kN',
  where: [{ symbol: 'f_a', equation: 'atan(mu)' }],
  // A lock flatter than the friction angle holds by itself and opens nothing.
  equation: 'p * A_s / 10 * max(0, tan(b * pi / 180 - f_a))',
  requires: [{ text: 'a lock angle below 90 degrees', holds: ({ lock_angle }) => lock_angle < 90 }],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'statics of a wedge; without friction an upper bound. With slides counted this way the clamp factor is that without slides',
  compute: ({ pressure, face_area, lock_angle, friction }) =>
    ((pressure * face_area) / 10) * Math.max(0, Math.tan((lock_angle * Math.PI) / 180 - Math.atan(friction))),
});

/** Locking force needed: opening force and slide locks, times the clamp factor. */
export const lockingForce = defineFormula({
  id: 'clamp.locking-force',
  title: 'Locking force needed',
  symbol: 'F_lock',
  inputs: {
    opening_force: { symbol: 'F_open', unit: 'kN', meaning: 'die opening force of the whole shot', range: [1, 200000] },
    slide_force: { symbol: 'F_slide', unit: 'kN', meaning: 'opening force from all slide locks', range: [0, 50000], domain: 'not-negative' },
    factor: { symbol: 'k', unit: '1', meaning: 'clamp factor', range: [1.1, 1.25] },
  },
  unit: 'kN',
  equation: 'k * (F_open + F_slide)',
  requires: [{ text: 'a clamp factor of 1 or more', holds: ({ factor }) => factor >= 1 }],
  outside: 'extrapolate',
  source: ['GL-OPENING-FORCE'],
  status: 'derived',
  accuracy: 'factor 1.1 with the slides counted, or 1.25 with slides not counted; both at once count them twice',
  compute: ({ opening_force, slide_force, factor }) => factor * (opening_force + slide_force),
});

const PLATEN_INPUTS = {
  half_span_x: { symbol: 'a', unit: 'mm', meaning: 'half the distance of the tie-bar centres, x', range: [100, 2000] },
  half_span_y: { symbol: 'b', unit: 'mm', meaning: 'half the distance of the tie-bar centres, y', range: [100, 2000] },
  offset_x: { symbol: 'e_x', unit: 'mm', meaning: 'offset of the pressure centre from the platen centre, x', range: [-500, 500], domain: 'any' },
  offset_y: { symbol: 'e_y', unit: 'mm', meaning: 'offset of the pressure centre from the platen centre, y', range: [-500, 500], domain: 'any' },
} as const;

interface PlatenNumbers {
  readonly half_span_x: number;
  readonly half_span_y: number;
  readonly offset_x: number;
  readonly offset_y: number;
}
const eccentricity = (x: PlatenNumbers): number => Math.abs(x.offset_x) / x.half_span_x + Math.abs(x.offset_y) / x.half_span_y;

/** Beyond it the opposite bar would have to push. */
const INSIDE_KERNEL = { text: '|offset_x| / half_span_x + |offset_y| / half_span_y of 1 or less', holds: (x: PlatenNumbers) => eccentricity(x) <= 1 };

/** Load of the most loaded of four equal tie bars under a force off the platen centre. */
export const tieBarLoad = defineFormula({
  id: 'clamp.tie-bar-load',
  title: 'Load of the most loaded tie bar',
  symbol: 'T_bar',
  inputs: {
    force: { symbol: 'F', unit: 'kN', meaning: 'opening force of the whole shot', range: [1, 200000] },
    ...PLATEN_INPUTS,
  },
  unit: 'kN',
  equation: 'F / 4 * (1 + abs(e_x) / a + abs(e_y) / b)',
  requires: [INSIDE_KERNEL],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'statics of a rigid platen on four equal bars; real platens bend and bars differ in set length, so the true spread is larger',
  compute: (x) => (x.force / 4) * (1 + eccentricity(x)),
});

/** Opening force that a machine holds when the pressure centre is off the platen centre. */
export const offCentreCapacity = defineFormula({
  id: 'clamp.off-centre-capacity',
  title: 'Locking force usable off centre',
  symbol: 'F_use',
  inputs: {
    rated: { symbol: 'F_r', unit: 'kN', meaning: 'rated locking force', range: [100, 200000] },
    ...PLATEN_INPUTS,
  },
  unit: 'kN',
  equation: 'F_r / (1 + abs(e_x) / a + abs(e_y) / b)',
  requires: [INSIDE_KERNEL],
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'statics of a rigid platen on four equal bars, each good for a quarter of the rating',
  compute: (x) => x.rated / (1 + eccentricity(x)),
});

/** Projected area of everything that metal pressure acts on: castings, runner, overflows, and biscuit or sprue. */
export const projectedAreaTotal = defineFormula({
  id: 'clamp.projected-area-total',
  title: 'Projected area of the whole shot',
  symbol: 'A',
  inputs: {
    casting_area: { symbol: 'A_1', unit: 'cm2', meaning: 'projected area of one casting', range: [0.5, 20000] },
    cavities: { symbol: 'n', unit: '1', meaning: 'number of cavities', range: [1, 64] },
    runner_share: {
      symbol: 'r',
      unit: '%',
      meaning: 'runner area as a share of the casting area, usually 15 to 30, a multiple of it for the smallest castings',
      range: [0, 2000],
      domain: 'not-negative',
    },
    overflow_share: {
      symbol: 'o',
      unit: '%',
      meaning: 'overflow area as a share of the casting area, usually 10 to 20',
      range: [0, 200],
      domain: 'not-negative',
    },
    biscuit_diameter: { symbol: 'd', unit: 'mm', meaning: 'diameter of biscuit or sprue at the parting plane', range: [0, 250], domain: 'not-negative' },
  },
  unit: 'cm2',
  equation: 'n * A_1 * (1 + (r + o) / 100) + pi * d^2 / 400',
  outside: 'extrapolate',
  source: ['IDEALHARD-TONNAGE'],
  status: 'derived',
  accuracy: 'as good as the shares, which spread by a factor of 2; the source prints pi d^2 for the biscuit, four times its area, corrected here',
  compute: (x) => x.cavities * x.casting_area * (1 + (x.runner_share + x.overflow_share) / 100) + (Math.PI * x.biscuit_diameter ** 2) / 400,
});
