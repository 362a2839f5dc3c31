import type { Case } from '../case.ts';

const W12 = 'derived, worked by hand: A380 with 195 MPa (three die casters), flash 800 x 0.2, gate 60 x 2, six overflow gates 12 x 1 mm';
const BLOCKS = 'impregnation example (GODFREY-WING-COST): 1000 blocks a day, 3 % leak, 300 a block, 8 to impregnate, 100 a day to send, 240 days';
const hand = (what: string): string => `derived, worked by hand: ${what}`;
const exact = { relative: 1e-9 } as const;

const blocks = { parts: 1000, leaking: 3, price: 8, shipping: 100, part_cost: 300, days: 240 };

export const cases: readonly Case[] = [
  { formula: 'finish.strip-section', inputs: { length: 800, thickness: 0.2 }, expected: 160, tolerance: exact, from: W12 },
  {
    formula: 'finish.leaving-mean',
    inputs: { mass: 4, thick_mass: 1, thin: 260, thick: 460 },
    expected: 310,
    tolerance: { relative: 1e-12 },
    from: 'derived, worked by hand: three parts at 260 and one at 460 degC',
  },
  { formula: 'finish.cavity-section', inputs: { gates: 120, overflows: 72, flash: 160 }, expected: 352, tolerance: exact, from: W12 },
  {
    formula: 'finish.cavity-section',
    inputs: { gates: 120, overflows: 72, flash: 160, vents: 13.2, holes: 18.8 },
    expected: 384,
    tolerance: exact,
    from: `${W12}, with vents and holes`,
  },
  { formula: 'finish.cavity-section', inputs: { gates: 120 }, expected: 120, tolerance: exact, from: 'limiting case: no flash, the gate is still cut' },
  { formula: 'finish.trim-force', inputs: { shear_strength: 195, sheared_area: 352, factor: 1 }, expected: 68.6, tolerance: { absolute: 0.05 }, from: W12 },
  { formula: 'finish.trim-force', inputs: { shear_strength: 195, sheared_area: 352, factor: 1.3 }, expected: 89.2, tolerance: { absolute: 0.05 }, from: W12 },
  {
    formula: 'finish.trim-force',
    inputs: { shear_strength: 195, sheared_area: 352, factor: 1.3 },
    expected: 9.1 * 9.80665,
    tolerance: { absolute: 0.05 * 9.80665 },
    from: `${W12}; 9.1 metric tons`,
  },
  {
    formula: 'finish.flash-length',
    inputs: { parting_line: 800, gate_width: 60, overflows: 6, overflow_width: 12 },
    expected: 668,
    tolerance: exact,
    from: hand('800 - 60 - 72 mm'),
  },
  {
    formula: 'finish.flash-length',
    inputs: { parting_line: 300, gate_width: 320 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: the gate takes all of the line',
  },
  {
    formula: 'finish.hole-flash',
    inputs: { diameter: 10, count: 4, thickness: 0.2 },
    expected: 25.133,
    tolerance: { absolute: 0.0005 },
    from: hand('four circles of 31.416 mm, 0.2 mm thick'),
  },
  {
    formula: 'finish.shear-estimate',
    inputs: { tensile: 230, ratio: 0.6 },
    expected: 138,
    tolerance: exact,
    from: 'data sheet of AZ91D (CRECO-ALLOYS, LUNT-PROPERTIES): 138 MPa in shear, 230 MPa in tension',
  },
  {
    formula: 'finish.shear-estimate',
    inputs: { tensile: 317, ratio: 0.6 },
    expected: 190,
    tolerance: { absolute: 1 },
    from: 'product standard (NADCA-A-3-2): alloy 380 has 190 MPa in shear and 317 MPa in tension',
  },
  {
    formula: 'finish.shear-estimate',
    inputs: { tensile: 310, ratio: 0.6 },
    expected: 200,
    tolerance: { relative: 0.08 },
    from: 'tables of three die casters: alloy 383 has 200 MPa in shear; 310 MPa in tension (NADCA-A-3-2)',
  },
  {
    formula: 'finish.shear-estimate',
    inputs: { tensile: 200, ratio: 0.6, least: 170 },
    expected: 170,
    tolerance: exact,
    from: hand('a minimum of 200 MPa would give 120; the floor of the family stands'),
  },
  {
    formula: 'finish.quench-heat',
    inputs: { mass: 2.6, specific_heat: 963, eject_temperature: 385, handling_temperature: 50 },
    expected: 838.8,
    tolerance: { absolute: 0.05 },
    from: hand('2.6 x 0.963 x 335 kJ'),
  },
  { formula: 'finish.quench-rate', inputs: { heat: 838.8, shots: 60 }, expected: 13.98, tolerance: { absolute: 0.001 }, from: hand('838.8 kJ a minute') },

  { formula: 'finish.leakers', inputs: { parts: 1000, leaking: 3 }, expected: 30, tolerance: exact, from: BLOCKS },
  {
    formula: 'finish.leakers-left',
    inputs: { leakers: 30, still: 5 },
    expected: 1.5,
    tolerance: exact,
    from: `${BLOCKS}; 5 % of 30, which the source rounds to 2`,
  },
  { formula: 'finish.scrap-cost', inputs: { parts: 1000, leaking: 3, part_cost: 300, days: 240 }, expected: 2160000, tolerance: exact, from: BLOCKS },
  { formula: 'finish.impregnation-cost', inputs: { ...blocks, still: 0 }, expected: 81600, tolerance: exact, from: `${BLOCKS}; impregnation alone` },
  {
    formula: 'finish.impregnation-cost',
    inputs: { ...blocks, still: 100 * (2 / 30) },
    expected: 225600,
    tolerance: exact,
    from: `${BLOCKS}; with the 2 castings a day that the source scraps`,
  },
  { formula: 'finish.impregnation-cost', inputs: { ...blocks, still: 5 }, expected: 189600, tolerance: exact, from: `${BLOCKS}; with 5 % of 30, not rounded` },
  { formula: 'finish.press-room', inputs: { extent: 420, rim: 75 }, expected: 570, tolerance: exact, from: hand('420 + 75 + 75 mm') },
  { formula: 'finish.stroke-needed', inputs: { depth: 46, clearance: 100 }, expected: 192, tolerance: exact, from: hand('46 + 46 + 100 mm') },
];
