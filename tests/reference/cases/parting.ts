import { type Case, INCH } from '../case.ts';

const HAND = 'derived, worked by hand: ';
const exact = { absolute: 1e-9 };
const TOOLMAKER = 'toolmaker’s page on slide design: lock 2 to 3 degrees steeper than the pin (USM-SLIDER)';

export const cases: readonly Case[] = [
  // Along an axis the extent is that side; along the space diagonal of a cube of 10 it is 3 x 10 / sqrt(3).
  {
    formula: 'parting.extent',
    inputs: { envelope_x: 238, envelope_y: 142, envelope_z: 46, cosine_x: 0, cosine_y: 0, cosine_z: 1 },
    expected: 46,
    tolerance: exact,
    from: 'limiting case: along an axis it is that side',
  },
  {
    formula: 'parting.extent',
    inputs: { envelope_x: 10, envelope_y: 10, envelope_z: 10, cosine_x: 0.57735, cosine_y: 0.57735, cosine_z: -0.57735 },
    expected: 17.32,
    tolerance: { absolute: 0.005 },
    from: `${HAND}space diagonal of a cube of 10 mm, 10 sqrt(3)`,
  },
  { formula: 'parting.box-area', inputs: { side_a: 238, side_b: 142 }, expected: 337.96, tolerance: exact, from: `${HAND}23.8 x 14.2` },
  { formula: 'parting.box-perimeter', inputs: { side_a: 238, side_b: 142 }, expected: 760, tolerance: exact, from: `${HAND}twice 380` },

  {
    formula: 'slide.pin-angle-needed',
    inputs: { stroke: 30, opening: 92.3 },
    expected: 18,
    tolerance: { absolute: 0.05 },
    from: `${HAND}right triangle, 30 mm over 92.3 mm is the pin of 18 degrees`,
  },
  { formula: 'slide.pin-angle-needed', inputs: { stroke: 100, opening: 100 }, expected: 45, tolerance: exact, from: 'limiting case: equal legs' },
  { formula: 'slide.lock-angle', inputs: { pin_angle: 18, extra: 2 }, expected: 20, tolerance: exact, from: TOOLMAKER },
  { formula: 'slide.lock-angle', inputs: { pin_angle: 18, extra: 3 }, expected: 21, tolerance: exact, from: TOOLMAKER },
  {
    formula: 'slide.core-face',
    inputs: { diameter: 30, count: 1 },
    expected: 7.069,
    tolerance: { absolute: 0.0005 },
    from: `${HAND}circle of 1.5 cm radius, 2.25 pi`,
  },
  {
    formula: 'slide.core-face',
    inputs: { diameter: 15, count: 4 },
    expected: 7.069,
    tolerance: { absolute: 0.0005 },
    from: `${HAND}four circles of half that radius`,
  },
  {
    formula: 'slide.core-surface',
    inputs: { diameter: 10, depth: 20, count: 3 },
    expected: 18.85,
    tolerance: { absolute: 0.005 },
    from: `${HAND}3 x pi x 1 cm x 2 cm`,
  },
  {
    formula: 'slide.undercut-surface',
    inputs: { face_area: 9, depth: 20 },
    expected: 24,
    tolerance: exact,
    from: `${HAND}square of 3 cm, 12 cm around, 2 cm deep`,
  },
  // 10 cm2 at 10 MPa are 10 kN of grip; at no draft a fifth to a quarter of it is friction.
  {
    formula: 'slide.pulling-force',
    inputs: { surface: 10, pressure: 10, friction: 0.2, draft: 0 },
    expected: 2,
    tolerance: exact,
    from: `${HAND}10 cm2 x 10 MPa x 0.2`,
  },
  {
    formula: 'slide.pulling-force',
    inputs: { surface: 10, pressure: 12, friction: 0.25, draft: 2 },
    expected: 2.579,
    tolerance: { absolute: 0.001 },
    from: `${HAND}12 kN x (0.25 x 0.99939 - 0.03490)`,
  },
  {
    formula: 'slide.pulling-force',
    inputs: { surface: 10, pressure: 12, friction: 0.2, draft: 12 },
    expected: 0,
    tolerance: exact,
    from: 'limiting case: steeper than the friction angle of 11.3 degrees the core comes free',
  },

  { formula: 'hole.bottom-diameter', inputs: { diameter: 8, taper: 1.27 }, expected: 6.73, tolerance: exact, from: `${HAND}8 - 1.27` },
  // The depth tables end at 1 in; the ratio must carry on where they end (6 x 25.4 mm = 152.4 mm).
  {
    formula: 'hole.depth-by-ratio',
    inputs: { ratio: 6, diameter: INCH },
    expected: 152.4,
    tolerance: exact,
    from: 'product-standard sheet of a die caster, last hole: 1 in wide, 6 in deep (AL-DRAFT-SHEET)',
  },
  { formula: 'hole.core-depth', inputs: { depth: 40, cores: 2 }, expected: 20, tolerance: exact, from: `${HAND}half of 40` },
  {
    formula: 'hole.edge-by-depth',
    inputs: { share: 0.25, depth: 24 },
    expected: 6,
    tolerance: exact,
    from: 'course text on die casting part design: a quarter of the depth, 24 mm (CN-COURSE-PARTS)',
  },
  {
    formula: 'hole.edge-by-depth',
    inputs: { share: 1 / 3, depth: 24 },
    expected: 8,
    tolerance: exact,
    from: 'course text on die casting part design: a third of the depth, 24 mm (CN-COURSE-PARTS)',
  },
  {
    formula: 'thread.length',
    inputs: { ratio: 2, size: 6 },
    expected: 12,
    tolerance: exact,
    from: 'catalogues of thread-forming screws: M6 engages 12 mm (TR-TAPFIX, REMINC-CATALOGUE)',
  },
  { formula: 'thread.tapping-diameter', inputs: { size: 6, pitch: 1 }, expected: 5, tolerance: exact, from: 'metric tap drill chart: M6, 5.0 mm (TAP-CHART)' },
  {
    formula: 'thread.tapping-diameter',
    inputs: { size: 8, pitch: 1.25 },
    expected: 6.8,
    tolerance: { absolute: 0.051 },
    from: 'metric tap drill chart: M8, 6.8 mm, rounded to a drill size (TAP-CHART)',
  },
  { formula: 'wall.ratio', inputs: { greatest: 6.5, least: 2 }, expected: 3.25, tolerance: exact, from: `${HAND}6.5 over 2` },
  { formula: 'wall.side-area', inputs: { projected: 268, surface: 1950 }, expected: 268, tolerance: exact, from: `${HAND}268 is less than half of 1950` },
  { formula: 'wall.side-area', inputs: { projected: 268, surface: 300 }, expected: 150, tolerance: exact, from: `${HAND}half of 300, less than 268` },

  // W9: 5 in set by a slide of 75 in2, aluminium: +0.038 / -0.014 in standard, +0.024 / -0.006 in precision.
  {
    formula: 'tolerance.plus',
    inputs: { linear: 0.014 * INCH, added: 0.024 * INCH },
    expected: 0.038 * INCH,
    tolerance: exact,
    from: 'aluminium, 5 in across a slide face of 75 in2, standard level; amount of the moving part from memory',
  },
  {
    formula: 'tolerance.plus',
    inputs: { linear: 0.006 * INCH, added: 0.018 * INCH },
    expected: 0.024 * INCH,
    tolerance: exact,
    from: 'aluminium, 5 in across a slide face of 75 in2, precision level; amount of the moving part from memory',
  },
  {
    formula: 'tolerance.centred',
    inputs: { linear: 0.15, added: 0.127 },
    expected: 0.2135,
    tolerance: exact,
    from: `${HAND}half of the band of 0.277 and 0.15`,
  },
  {
    formula: 'tolerance.full-width',
    inputs: { tolerance: 0.39 },
    expected: 0.78,
    tolerance: exact,
    from: 'ISO 8062-3 table 2, 80 mm, DCTG 6: 0.78 mm is plus-minus 0.39 mm (ISO-8062-3)',
  },
  {
    formula: 'tolerance.flatness',
    inputs: { length: 254, base: 0.008 * INCH, step: 0.003 * INCH, within: 3 * INCH },
    expected: 0.029 * INCH,
    tolerance: exact,
    from: 'NADCA flatness, standard, 10 in: 0.008 + 7 x 0.003 in, from memory',
  },
  {
    formula: 'tolerance.flatness',
    inputs: { length: 254, base: 0.005 * INCH, step: 0.002 * INCH, within: 3 * INCH },
    expected: 0.019 * INCH,
    tolerance: exact,
    from: 'NADCA flatness, precision, 10 in: 0.005 + 7 x 0.002 in, from memory',
  },
  {
    formula: 'shrink.added',
    inputs: { dimension: 100, allowance: 0.6 },
    expected: 0.6,
    tolerance: exact,
    from: "die caster's FAQ, 0.006 in an inch (EMPIRE-FAQ, vendor)",
  },

  {
    formula: 'certificate.sludge-factor',
    inputs: { iron: 1, manganese: 0.25, chromium: 0.1 },
    expected: 1.8,
    tolerance: exact,
    from: `${HAND}1 + 2 x 0.25 + 3 x 0.1`,
  },
  {
    formula: 'certificate.iron-over-manganese',
    inputs: { iron: 0.005, manganese: 0.15 },
    expected: 0.0333,
    tolerance: { absolute: 0.0001 },
    from: 'AZ91D, greatest iron over least manganese of its casting limits (AZOM-AZ91D)',
  },
];
