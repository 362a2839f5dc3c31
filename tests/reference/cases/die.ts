import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';
const EXACT = { relative: 1e-9 };

/** Simpson's rule over 200 strips: exact for the polynomials of bending theory up to its rounding. */
function integrate(to: number, of: (x: number) => number): number {
  const strips = 200;
  const step = to / strips;
  let sum = of(0) + of(to);
  for (let i = 1; i < strips; i += 1) sum += (i % 2 === 1 ? 4 : 2) * of(i * step);
  return (sum * step) / 3;
}

/** Deflection in the middle of a beam on two supports by the unit-load method: bending moments M and m over E I. */
function middleOfBeam(load: number, span: number, stiffness: number): number {
  return (2 * integrate(span / 2, (x) => ((load * x * (span - x)) / 2) * (x / 2))) / stiffness;
}

/** Deflection of the tip of a cantilever under an even load, by the same method. */
function tipOfCantilever(load: number, length: number, stiffness: number): number {
  return integrate(length, (x) => ((load * x * x) / 2) * x) / stiffness;
}

const plate = { pressure: 10.66, span: 378, thickness: 60, modulus: 205 };

export const cases: readonly Case[] = [
  {
    formula: 'die.preheat',
    inputs: { least: 180, greatest: 300, running: 215 },
    expected: 215,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: the middle of 240 degC is above the running surface',
  },
  {
    formula: 'die.preheat',
    inputs: { least: 150, greatest: 200, running: 230 },
    expected: 175,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: the middle',
  },
  {
    formula: 'die.plate-bow',
    inputs: { pressure: 10, span: 300, thickness: 60, modulus: 205 },
    expected: 0.2858,
    tolerance: { absolute: 0.00005 },
    from: `${HAND}: I = 60^3/12 = 18,000 mm4 for 1 mm, 5 x 10 x 8.1e9 / (384 x 205,000 x 18,000)`,
  },
  {
    formula: 'die.plate-bow',
    inputs: plate,
    expected: middleOfBeam(plate.pressure, plate.span, (plate.modulus * 1000 * plate.thickness ** 3) / 12),
    tolerance: { relative: 1e-6 },
    from: 'derived by the unit-load method, integrated numerically',
  },
  {
    formula: 'die.plate-bow',
    inputs: { ...plate, span: 378 / 2 },
    expected: 0.76834 / 16,
    tolerance: { relative: 1e-3 },
    from: `${HAND}: a row of pillars halves the span, a sixteenth of 0.76834 mm`,
  },
  {
    formula: 'die.plate-bow',
    inputs: { pressure: 0.05, span: 2000, thickness: 100, modulus: 210 },
    expected: 0.5952,
    tolerance: { absolute: 0.0001 },
    from: `${HAND}: square steel bar of 100 mm over 2 m under 5 kN/m, I = 8.333e6 mm4, as any table of beams has it`,
  },
  {
    formula: 'die.plate-thickness',
    inputs: { pressure: 10, span: 300, bow: 0.2858, modulus: 205 },
    expected: 60,
    tolerance: { absolute: 0.01 },
    from: `${HAND}: the plate of 60 mm above, turned round`,
  },
  {
    formula: 'die.pillar-rows',
    inputs: { bow: 0.8, allowed: 0.05 },
    expected: 1,
    tolerance: { absolute: 1e-12 },
    from: `${HAND}: 16 times the bow allowed is just one row`,
  },
  {
    formula: 'die.pillar-rows',
    inputs: { bow: 0.81, allowed: 0.05 },
    expected: 2,
    tolerance: { absolute: 1e-12 },
    from: `${HAND}: a little more than 16 times asks for two rows, which leave an 81st`,
  },
  { formula: 'die.pillar-rows', inputs: { bow: 0.04, allowed: 0.05 }, expected: 0, tolerance: { absolute: 1e-12 }, from: 'limiting case: nothing to hold up' },
  { formula: 'die.bay', inputs: { span: 378, rows: 2 }, expected: 126, tolerance: EXACT, from: `${HAND}: three bays` },
  {
    formula: 'die.back-force',
    inputs: { pressure: 39.2, area: 268, cavities: 1, overflows: 15 },
    expected: 1208.1,
    tolerance: { absolute: 0.1 },
    from: `${HAND}: 39.2 N/mm2 over 30,820 mm2`,
  },
  {
    formula: 'die.back-pressure',
    inputs: { force: 1208.1, width: 388, breadth: 292 },
    expected: 10.663,
    tolerance: { absolute: 0.001 },
    from: `${HAND}: 1,208,100 N over 113,296 mm2`,
  },
  {
    formula: 'die.span',
    inputs: { width: 478, rail: 50, insert: 388 },
    expected: 378,
    tolerance: EXACT,
    from: `${HAND}: the rails stand at the edge of the die`,
  },
  { formula: 'die.span', inputs: { width: 621, rail: 70, insert: 388 }, expected: 388, tolerance: EXACT, from: `${HAND}: the rails stand beside the inserts` },
  { formula: 'die.pillars-each', inputs: { breadth: 292, bay: 189 }, expected: 2, tolerance: { absolute: 1e-12 }, from: `${HAND}: 292 / 189 = 1.54` },
  {
    formula: 'die.pillar-load',
    inputs: { pressure: 10.663, bay: 189, breadth: 292, pillars: 2 },
    expected: 294.2,
    tolerance: { absolute: 0.1 },
    from: `${HAND}: 10.663 N/mm2 over 189 x 146 mm2`,
  },
  {
    formula: 'die.pillar-diameter',
    inputs: { load: 294.2, allowed: 100 },
    expected: 65,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 2,942 mm2 are 61.2 mm across, rounded up to 5 mm`,
  },
  {
    formula: 'die.pillar-stress',
    inputs: { load: 294.2, diameter: 65 },
    expected: 88.66,
    tolerance: { absolute: 0.02 },
    from: `${HAND}: 294,200 N over 3,318.3 mm2`,
  },

  {
    formula: 'die.core-bending',
    inputs: { pressure: 2.5, diameter: 8, height: 40, modulus: 200 },
    expected: tipOfCantilever(2.5 * 8, 40, (200000 * Math.PI * 8 ** 4) / 64),
    tolerance: { relative: 1e-6 },
    from: 'derived by the unit-load method for a cantilever under P D for each mm, integrated numerically',
  },
  {
    formula: 'die.core-bending',
    inputs: { pressure: 2.5, diameter: 8, height: 40, modulus: 200 },
    expected: (20 * 40 ** 4) / (8 * 200000 * 201.062),
    tolerance: { relative: 1e-5 },
    from: `${HAND}: cantilever of a table of beams, w L^4 / (8 E I) with w = 20 N/mm and I = 201.06 mm4`,
  },
  {
    formula: 'die.core-bending',
    inputs: { pressure: 5, diameter: 20, bore: 10, height: 100, modulus: 200 },
    expected: (100 * 1e8) / (8 * 200000 * 7363.1),
    tolerance: { relative: 1e-4 },
    from: `${HAND}: w = 100 N/mm, I = pi (160,000 - 10,000) / 64 = 7,363.1 mm4`,
  },
  {
    formula: 'die.core-stress',
    inputs: { pressure: 2.5, diameter: 8, height: 40 },
    expected: 318.3,
    tolerance: { absolute: 0.1 },
    from: `${HAND}: 20 N/mm x 40^2 / 2 = 16,000 Nmm over pi 8^3 / 32 = 50.265 mm3`,
  },
  { formula: 'die.core-slenderness', inputs: { height: 22, diameter: 6.8 }, expected: 3.235, tolerance: { absolute: 0.0005 }, from: `${HAND}: 22 / 6.8` },
  {
    formula: 'die.core-least-diameter',
    inputs: { pressure: 2.5, height: 40, bend: 0.15915, modulus: 200 },
    expected: 8,
    tolerance: { relative: 1e-4 },
    from: `${HAND}: the core of 8 mm above, which bends 0.15915 mm`,
  },
  {
    formula: 'die.core-greatest-height',
    inputs: { pressure: 2.5, diameter: 8, bend: 0.15915, modulus: 200 },
    expected: 40,
    tolerance: { relative: 1e-4 },
    from: `${HAND}: the core of 40 mm above`,
  },
  {
    formula: 'die.stream-pressure',
    inputs: { density: 2500, velocity: 40 },
    expected: 2,
    tolerance: EXACT,
    from: `${HAND}: 2,500 x 1,600 / 2 = 2 MPa`,
  },
  { formula: 'die.core-stress-greatest', inputs: { hot_yield: 850, share: 0.5 }, expected: 425, tolerance: EXACT, from: `${HAND}: half` },
  {
    formula: 'die.core-slenderness-greatest',
    inputs: { stress: 318.3, pressure: 2.5 },
    expected: 5,
    tolerance: { relative: 1e-4 },
    from: `${HAND}: the core of 8 by 40 mm above`,
  },
  { formula: 'die.line-room', inputs: { pitch: 35, diameter: 10, steel: 6 }, expected: 13, tolerance: EXACT, from: `${HAND}: 35 - 10 - 12` },

  {
    formula: 'die.thermal-stress',
    inputs: { modulus: 197, expansion: 12, swing: 200, poisson: 0.3 },
    expected: 675,
    tolerance: { absolute: 0.5 },
    from: `${HAND}: 197,000 x 12e-6 x 200 / 0.7, printed as 675 MPa`,
  },
  {
    formula: 'die.thermal-stress',
    inputs: { modulus: 175, expansion: 13, swing: 300, poisson: 0.3 },
    expected: 975,
    tolerance: { absolute: 0.5 },
    from: `${HAND}: 175,000 x 13e-6 x 300 / 0.7, printed as 975 MPa`,
  },
  { formula: 'die.heat-check-index', inputs: { stress: 675, hot_yield: 900 }, expected: 0.75, tolerance: EXACT, from: `${HAND}: 675 / 900` },
  {
    formula: 'die.swing-for-index',
    inputs: { index: 0.75, hot_yield: 900, modulus: 197, expansion: 12, poisson: 0.3 },
    expected: 200,
    tolerance: { absolute: 0.2 },
    from: `${HAND}: 675 MPa are a swing of 200 K`,
  },
  {
    formula: 'die.shots-needed',
    inputs: { parts: 600000, cavities: 2, reject_share: 4 },
    expected: 312500,
    tolerance: EXACT,
    from: `${HAND}: 1.92 good parts a shot`,
  },
  { formula: 'die.sets', inputs: { shots: 312500, life: 125000 }, expected: 3, tolerance: { absolute: 1e-12 }, from: `${HAND}: 2.5 sets are 3` },
  { formula: 'die.sets', inputs: { shots: 125000, life: 125000 }, expected: 1, tolerance: { absolute: 1e-12 }, from: 'limiting case: just one set' },
];
