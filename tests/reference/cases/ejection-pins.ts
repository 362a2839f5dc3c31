import type { Case } from '../case.ts';
import { INCH } from '../case.ts';

/** Newtons in a pound-force. */
const LBF = 4.4482216152605;
/** 30e6 psi in GPa. */
const PSI_30E6 = 206.8427;
/** The pin diameters that the printed loads are for; the printed heads are others. */
const PINS = [1 / 32, 3 / 64, 1 / 16, 5 / 64, 3 / 32, 1 / 8];
const LOADS: readonly (readonly [length: number, loads: readonly number[]])[] = [
  [3, [6, 31, 99, 241, 499, 1577]],
  [1.5, [25, 125, 394, 963, 1996, 6308]],
];
const PT = 'Plastics Technology, September 2018, p. 48 (PT-PINS), with the column heads that fit';

const KAZMER = 'pin of Kazmer p. 352 (5,800 N on 20 pins, 0.2 m, 200 GPa) after Euler; the book itself has a radius of 1.1 mm';
const bar = { force: 0.29, length: 200, modulus: 200 };

export const cases: readonly Case[] = [
  ...LOADS.flatMap(([length, loads]) =>
    loads.map((load, index) => ({
      formula: 'ejection.pin-buckling-force',
      inputs: { diameter: (PINS[index] as number) * INCH, length: length * INCH, modulus: PSI_30E6, end_factor: 0.5 },
      expected: (load * LBF) / 1000,
      tolerance: { absolute: (0.5 * LBF) / 1000 },
      from: `${PT}: ${load} lb, ${length} in long`,
    })),
  ),
  ...(
    [
      [0.5, 1.17],
      [0.7, 1.38],
      [1, 1.65],
    ] as const
  ).map(([end_factor, radius]) => ({
    formula: 'ejection.pin-buckling-diameter',
    inputs: { ...bar, end_factor },
    expected: 2 * radius,
    tolerance: { absolute: 0.011 },
    from: `${KAZMER}, K ${end_factor}`,
  })),
  {
    formula: 'ejection.pin-force',
    inputs: { force: 5.8, pins: 20 },
    expected: 0.29,
    tolerance: { relative: 1e-9 },
    from: 'Kazmer p. 352: 5,800 N on 20 pins are 290 N (the text prints 235 N)',
  },
  {
    formula: 'ejection.pin-safe-diameter',
    inputs: { diameter: 2.34, factor: 1.5 },
    expected: 3.51,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 1.5 times the buckling diameter',
  },
  {
    formula: 'ejection.pin-slenderness',
    inputs: { length: 250, diameter: 10 },
    expected: 100,
    tolerance: { relative: 1e-9 },
    from: 'PT-PINS: L/r of 100 is a length of 25 diameters',
  },
  {
    formula: 'ejection.pin-stout-diameter',
    inputs: { length: 250, slenderness: 100 },
    expected: 10,
    tolerance: { relative: 1e-9 },
    from: 'PT-PINS: L/r of 100 is a length of 25 diameters',
  },
  {
    formula: 'ejection.pin-pressure',
    inputs: { force: 15.708, pins: 4, diameter: 10 },
    expected: 50,
    tolerance: { absolute: 0.001 },
    from: 'derived, worked by hand: 15,708 N on 4 x 78.54 mm2',
  },
  {
    formula: 'ejection.pin-pressure-diameter',
    inputs: { force: 15.708, pins: 4, pressure: 50 },
    expected: 10,
    tolerance: { absolute: 0.001 },
    from: 'derived, worked by hand: 15,708 N on 4 x 78.54 mm2',
  },
  ...(
    [
      ['the pressure asks for less than two walls', 4, 6.4],
      ['the pressure asks for more than three walls', 14, 9.6],
      ['the pressure asks for what suits the wall', 8, 8],
    ] as const
  ).map(([what, pressure_diameter, expected]) => ({
    formula: 'ejection.pin-aim-diameter',
    inputs: { pressure_diameter, wall: 3.2, ratio_least: 2, ratio_greatest: 3, greatest: 12 },
    expected,
    tolerance: { relative: 1e-9 },
    from: `derived, worked by hand, wall of 3.2 mm: ${what}`,
  })),
  {
    formula: 'ejection.pin-needed-diameter',
    inputs: { size: 6, safe: 8.4, pressure_diameter: 5 },
    expected: 8.4,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: greatest of three',
  },

  {
    formula: 'ejection.pin-spacing',
    inputs: { wall: 2, ratio: 20, least: 25, greatest: 60 },
    expected: 40,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 20 walls',
  },
  {
    formula: 'ejection.pin-spacing',
    inputs: { wall: 1, ratio: 20, least: 25, greatest: 60 },
    expected: 25,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: never closer',
  },
  {
    formula: 'ejection.pin-spacing',
    inputs: { wall: 6, ratio: 20, least: 25, greatest: 60 },
    expected: 60,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: never further',
  },
  {
    formula: 'ejection.pins-by-outline',
    inputs: { outline: 760, spacing: 60 },
    expected: 13,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 760 / 60 = 12.7',
  },
  {
    formula: 'ejection.pins-by-outline',
    inputs: { outline: 720, spacing: 60 },
    expected: 12,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: a whole quotient is no more',
  },
  {
    formula: 'ejection.pins-by-area',
    inputs: { area: 268, spacing: 60, field: 2 },
    expected: 4,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 26,800 / 7,200 = 3.7',
  },
  {
    formula: 'ejection.pins-by-force',
    inputs: { force: 50, pressure: 50, diameter: 10 },
    expected: 13,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 1,000 / 78.54 mm2 = 12.7',
  },
  {
    formula: 'ejection.pins-by-force',
    inputs: { force: 0, pressure: 50, diameter: 10 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: nothing to push',
  },
  {
    formula: 'ejection.pin-total',
    inputs: { cavities: 4, casting: 7, overflows: 3, overflow_pins: 1, runner_pins: 2, feeder_pins: 1 },
    expected: 49,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 4 x (7 + 3 + 2) + 1',
  },
  {
    formula: 'ejection.pin-length',
    inputs: { stroke: 88, gap: 5, plate: 70, steel: 87, guide: 25 },
    expected: 225,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 88 + 5 + 70 + 87 - 25',
  },
  {
    formula: 'ejection.stroke',
    inputs: { height: 80, clearance: 5 },
    expected: 85,
    tolerance: { relative: 1e-9 },
    from: 'Pye p. 518 (PYE-MOULD): height of the casting and 5 mm',
  },
];
