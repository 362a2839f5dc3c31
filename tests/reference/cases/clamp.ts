import { type Case, KGF_PER_CM2 } from '../case.ts';

const LEXICON = 'Foundry Lexicon, die opening force (GL-OPENING-FORCE): formula and factors; area and pressure are ours';
const OTHER_FORM = 'derived, worked by hand in the form with tie-bar distances: F/4 (1 + 2 e_x/L_x + 2 e_y/L_y)';
const SHARES = 'note on tonnage selection (IDEALHARD-TONNAGE), least and greatest shares; its biscuit area is misprinted as pi d^2, taken here as pi d^2 / 4';

export const cases: readonly Case[] = [
  { formula: 'clamp.opening-force', inputs: { pressure: 60, area: 600 }, expected: 3600, tolerance: { absolute: 1e-9 }, from: LEXICON },
  {
    formula: 'clamp.opening-force',
    inputs: { pressure: 500 * KGF_PER_CM2, area: 200 },
    expected: 981,
    tolerance: { absolute: 0.5 },
    from: 'worksheet "Die Casting Calculation" (DC-WORKSHEET): 100 t on 200 cm2 at 500 kgf/cm2',
  },
  {
    formula: 'clamp.opening-force',
    inputs: { pressure: 800 * KGF_PER_CM2, area: 41.8 },
    expected: 328,
    tolerance: { absolute: 0.5 },
    from: 'costing guide for aluminium castings (APOGEE-COSTING): 76 x 55 mm at 8 kgf/mm2, 33.4 t',
  },
  {
    formula: 'clamp.opening-force',
    inputs: { pressure: 600 * KGF_PER_CM2, area: 425 },
    expected: 2501,
    tolerance: { absolute: 3 },
    from: 'Khandagale, clutch hub, 2022, summary: 255 t; area derived from the pressure',
  },
  {
    formula: 'clamp.opening-force',
    inputs: { pressure: 400 * KGF_PER_CM2, area: 638 },
    expected: 2501,
    tolerance: { absolute: 3 },
    from: 'Khandagale, clutch hub, 2022, summary: 255 t; area derived from the pressure',
  },
  {
    formula: 'clamp.locking-force',
    inputs: { opening_force: 3600, slide_force: 0, factor: 1.1 },
    expected: 3960,
    tolerance: { absolute: 1e-9 },
    from: `${LEXICON}, without slides`,
  },
  {
    formula: 'clamp.locking-force',
    inputs: { opening_force: 3600, slide_force: 0, factor: 1.25 },
    expected: 4500,
    tolerance: { absolute: 1e-9 },
    from: `${LEXICON}, with slides not counted`,
  },
  {
    formula: 'clamp.locking-force',
    inputs: { opening_force: 3600, slide_force: 200, factor: 1.1 },
    expected: 4180,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 1.1 x 3800',
  },

  ...(
    [
      [18, 0.325],
      [20, 0.364],
      [22, 0.404],
      [25, 0.466],
    ] as const
  ).map(([lock_angle, tangent]) => ({
    formula: 'clamp.slide-opening-force',
    inputs: { pressure: 60, face_area: 12, lock_angle },
    expected: 72 * tangent,
    tolerance: { absolute: 72 * 0.0005 },
    from: 'derived, worked by hand: 60 MPa x 12 cm2 = 72 kN on the face, times the tangent from a table',
  })),
  {
    formula: 'clamp.slide-opening-force',
    inputs: { pressure: 60, face_area: 12, lock_angle: 20, friction: 0.1 },
    expected: (72 * (0.36397 - 0.1)) / (1 + 0.1 * 0.36397),
    tolerance: { relative: 1e-4 },
    from: 'derived, worked by hand with the addition theorem: tan(b - f) = (tan b - mu) / (1 + mu tan b)',
  },
  {
    formula: 'clamp.slide-opening-force',
    inputs: { pressure: 60, face_area: 12, lock_angle: 20, friction: 0.5 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: a wedge flatter than the friction angle (26.6 degrees) holds by itself',
  },

  // The published strain example: a 400 t machine, centred, has about 100 t on each bar.
  {
    formula: 'clamp.tie-bar-load',
    inputs: { force: 400 * 9.80665, half_span_x: 400, half_span_y: 400, offset_x: 0, offset_y: 0 },
    expected: 100 * 9.80665,
    tolerance: { relative: 1e-9 },
    from: 'machine maker’s note on tie-bar strain (HAICHEN-TIE-BARS, vendor): 400 t, about 100 t a bar',
  },
  {
    formula: 'clamp.tie-bar-load',
    inputs: { force: 4000, half_span_x: 500, half_span_y: 400, offset_x: 50, offset_y: -40 },
    expected: 1000 * (1 + 100 / 1000 + 80 / 800),
    tolerance: { relative: 1e-12 },
    from: OTHER_FORM,
  },
  {
    formula: 'clamp.tie-bar-load',
    inputs: { force: 1000, half_span_x: 500, half_span_y: 400, offset_x: 500, offset_y: 0 },
    expected: 500,
    tolerance: { relative: 1e-12 },
    from: 'limiting case: force in the line of two bars, which share it',
  },
  {
    formula: 'clamp.off-centre-capacity',
    inputs: { rated: 4000, half_span_x: 500, half_span_y: 400, offset_x: 50, offset_y: -40 },
    expected: 4000 / 1.2,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 1000 kN a bar, reached at F (1 + 0.1 + 0.1) / 4',
  },
  {
    formula: 'clamp.off-centre-capacity',
    inputs: { rated: 4000, half_span_x: 500, half_span_y: 400, offset_x: 0, offset_y: 0 },
    expected: 4000,
    tolerance: { relative: 1e-12 },
    from: 'limiting case: centred',
  },

  {
    formula: 'clamp.projected-area-total',
    inputs: { casting_area: 200, cavities: 1, runner_share: 15, overflow_share: 10, biscuit_diameter: 60 },
    expected: 200 + 30 + 20 + 28.274,
    tolerance: { absolute: 0.001 },
    from: SHARES,
  },
  {
    formula: 'clamp.projected-area-total',
    inputs: { casting_area: 200, cavities: 1, runner_share: 30, overflow_share: 20, biscuit_diameter: 60 },
    expected: 200 + 60 + 40 + 28.274,
    tolerance: { absolute: 0.001 },
    from: SHARES,
  },
  {
    formula: 'clamp.projected-area-total',
    inputs: { casting_area: 50, cavities: 4, runner_share: 25, overflow_share: 15, biscuit_diameter: 0 },
    expected: 200 * (1 + 2 / 5),
    tolerance: { relative: 1e-12 },
    from: 'from memory: textbook factor 1 + 2/h for a 5 mm wall',
  },

  {
    formula: 'clamp.spike-pressure',
    inputs: { fill_pressure: 22.48, factor: 3 },
    expected: 67,
    tolerance: { absolute: 0.5 },
    from: 'derived, worked by hand: three times the fill pressure of the worked PQ2 example, 22.5 MPa',
  },
  {
    formula: 'clamp.pressure-reached',
    inputs: { wanted: 39.2, available: 31 },
    expected: 31,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: a hot chamber has no intensifier, so its static pressure is all there is',
  },
  {
    formula: 'clamp.pressure-reached',
    inputs: { wanted: 58.8, available: 85.6 },
    expected: 58.8,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: the machine is set to the class',
  },
  {
    formula: 'clamp.sizing-pressure',
    inputs: { intensified: 60, spike: 67.4 },
    expected: 67.4,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: the spike is the greater',
  },
  {
    formula: 'clamp.sizing-pressure',
    inputs: { intensified: 80, spike: 67.4 },
    expected: 80,
    tolerance: { absolute: 1e-12 },
    from: 'derived, worked by hand: the intensified pressure is the greater',
  },
  {
    formula: 'clamp.use',
    inputs: { needed: 3960, rated: 4400 },
    expected: 90,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 3960 of 4400 kN',
  },
  // Biscuit 50 cm2 (diameter 79.79 mm), 200 mm off, in 500 cm2: a tenth of the area pulls the centre by a tenth of 200 mm.
  {
    formula: 'clamp.pressure-in-die',
    inputs: { feeder_diameter: 79.788, distance: 200, area: 500 },
    expected: -20,
    tolerance: { relative: 1e-4 },
    from: 'derived, worked by hand: first moment of 50 cm2 in 500 cm2',
  },
  // Runner of 50 cm2, 100 mm below the castings, which lie 10 mm above the middle: 10 - (50 * 200 + 50 * 100) / 500.
  {
    formula: 'clamp.pressure-in-die',
    inputs: { feeder_diameter: 79.788, distance: 200, area: 500, castings_offset: 10, runner_area: 50, runner_distance: 100 },
    expected: -20,
    tolerance: { relative: 1e-4 },
    from: 'derived, worked by hand: first moments of 50 cm2 of biscuit and 50 cm2 of runner in 500 cm2, castings 10 mm above the middle',
  },
  {
    formula: 'clamp.castings-in-die',
    inputs: { size: 510, field: 180, side: 250, low: 60, room: 60, overhang: 6 },
    expected: 139,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 54 mm of slide inside the die, 250 mm of steel and feeder, half of 180 mm, less half of 510 mm',
  },
  {
    formula: 'clamp.castings-across',
    inputs: { low: 60, room: 80, overhang: 8 },
    expected: 18,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 54 mm of slide at the left and 18 mm at the right inside the die',
  },
  {
    formula: 'clamp.on-platen',
    inputs: { offset: 56.4, bars: 520, size: 510 },
    expected: 51.4,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: a die with 5 mm to each bar hangs 5 mm lower',
  },
  {
    formula: 'clamp.on-platen',
    inputs: { offset: -80, bars: 620, size: 500 },
    expected: -20,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 60 mm to each bar leave 20 of 80 mm',
  },
  {
    formula: 'clamp.runner-area',
    inputs: { casting_area: 100, cavities: 2, share: 30 },
    expected: 60,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 30 % of two castings of 100 cm2',
  },
  {
    formula: 'clamp.runner-distance',
    inputs: { distance: 240, field: 180 },
    expected: 165,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: half way between 240 mm and the edge of the castings at 90 mm',
  },
  {
    formula: 'clamp.feeder-below',
    inputs: { distance: 240, castings_offset: 45, in_die: -15, offset: 0 },
    expected: 180,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: 195 mm below the middle of the die, which hangs 15 mm higher',
  },
];
