import type { Case } from '../case.ts';

const EXAMPLE = 'derived, worked by hand: 500 cm3 casting, 4.9 % shrinkage, plunger of 70 mm';
const SHOT = 'derived, worked by hand: 500 cm3 casting, 60 cm3 overflows, 150 cm3 runner, biscuit 70 x 25 mm, 2.71 g/cm3 as a solid and 2.50 as a liquid';
const RANGE = 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): a gate of 1.2 mm freezes in 30 to 80 ms';
const MEASURED = 'Magnusson and Arnberg 2001 (MAGNUSSON-ARNBERG): 6.6 % for pure aluminium, 4.4 % at 11.6 % silicon';
const RESIDUE = 'derived, worked by hand: pores at 70 MPa and 570 degC in metal of 2.65 g/cm3';

const aluminium = { constant: 0.47, reference_constant: 0.47 };

export const cases: readonly Case[] = [
  {
    formula: 'intensification.hydraulic-pressure',
    inputs: { metal_pressure: 56, cylinder_diameter: 140, plunger_diameter: 70 },
    expected: 14,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 14 MPa on a 140 mm cylinder are 56 MPa on a 70 mm plunger',
  },
  ...[30, 80].map((time) => ({
    formula: 'intensification.gate-freeze',
    inputs: { time, reference: 1.2, thickness: 1.2, ...aluminium },
    expected: time,
    tolerance: { relative: 1e-9 },
    from: RANGE,
  })),
  {
    formula: 'intensification.gate-freeze',
    inputs: { time: 30, reference: 1.2, thickness: 2.4, ...aluminium },
    expected: 120,
    tolerance: { relative: 1e-9 },
    from: `${RANGE}; twice the thickness, four times as long`,
  },
  {
    formula: 'intensification.gate-freeze',
    inputs: { time: 47, reference: 1.2, thickness: 1.2, constant: 0.31, reference_constant: 0.47 },
    expected: 31,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: magnesium, 0.31 over 0.47 s/mm2 of a textbook (memory)',
  },
  {
    formula: 'intensification.gate-for-time',
    inputs: { thickness: 1.2, freeze: 30, time: 120 },
    expected: 2.4,
    tolerance: { relative: 1e-9 },
    from: `${RANGE}; four times as long, twice the thickness`,
  },
  { formula: 'intensification.feed-volume', inputs: { volume: 500, shrinkage: 4.9 }, expected: 24.5, tolerance: { relative: 1e-9 }, from: EXAMPLE },
  {
    formula: 'intensification.feed-volume',
    inputs: { volume: 500, shrinkage: 4.9, cavities: 4 },
    expected: 98,
    tolerance: { relative: 1e-9 },
    from: `${EXAMPLE}, four cavities`,
  },
  { formula: 'intensification.feed-travel', inputs: { volume: 24.5, diameter: 70 }, expected: 6.37, tolerance: { absolute: 0.005 }, from: EXAMPLE },
  // A biscuit of 25 mm is 96.2 cm3 of the 38.48 cm2 of a 70 mm plunger: 806.2 cm3 in all, 2.1848 kg, 873.92 cm3 as a liquid.
  {
    formula: 'intensification.biscuit-full',
    inputs: { poured: 873.92, runner_volume: 150, cavities: 1, volume: 560, diameter: 70 },
    expected: 42.6,
    tolerance: { absolute: 0.01 },
    from: `${SHOT}: 873.92 - 710 cm3 over 38.48 cm2`,
  },
  {
    formula: 'intensification.biscuit-full',
    inputs: { poured: 873.92, runner_volume: 150, cavities: 2, volume: 280, shrink: 0.6, diameter: 70 },
    expected: 39.96,
    tolerance: { absolute: 0.01 },
    from: `${SHOT}; cavities larger than their castings by 0.6 %, which is 10.14 of 560 cm3`,
  },
  {
    formula: 'intensification.biscuit-left',
    inputs: { mass: 2.1848, density: 2.71, runner_volume: 150, cavities: 1, volume: 560, diameter: 70 },
    expected: 25,
    tolerance: { absolute: 0.01 },
    from: `${SHOT}: the biscuit that was planned`,
  },
  {
    formula: 'intensification.biscuit-left',
    inputs: { mass: 2.0848, density: 2.71, runner_volume: 150, cavities: 1, volume: 560, diameter: 70 },
    expected: 15.41,
    tolerance: { absolute: 0.01 },
    from: `${SHOT}; poured 100 g short, 36.9 cm3`,
  },
  {
    formula: 'intensification.follow-travel',
    inputs: { full: 42.6, left: 25 },
    expected: 17.6,
    tolerance: { absolute: 1e-9 },
    from: `${SHOT}: 67.72 cm3, the 7.75 % by which 873.92 cm3 of liquid are more than the solid`,
  },

  ...(
    [
      [0, 6.6, 1e-6],
      [7.5, 5.2, 0.05],
      [9, 4.9, 0.05],
      [9.5, 4.8, 0.05],
      [11.6, 4.4, 1e-6],
    ] as const
  ).map(([silicon, expected, absolute]) => ({
    formula: 'porosity.silicon-shrinkage',
    inputs: { silicon, pure: 6.6, measured: 4.4 },
    expected,
    tolerance: { absolute },
    from: `${MEASURED}, and the straight line between them`,
  })),
  {
    formula: 'porosity.silicon-shrinkage',
    inputs: { silicon: 17, pure: 6.6, measured: 4.4 },
    expected: 4.4,
    tolerance: { relative: 1e-9 },
    from: `${MEASURED}; more silicon takes the last figure`,
  },
  ...(
    [
      [1, 0.012],
      [5, 0.059],
      [10, 0.118],
      [30, 0.355],
    ] as const
  ).map(([content, expected]) => ({
    formula: 'porosity.gas-share',
    inputs: { content, density: 2.65, pressure: 70, temperature: 570 },
    expected,
    tolerance: { absolute: 0.0005 },
    from: RESIDUE,
  })),
  {
    formula: 'porosity.gas-content',
    inputs: { gas_volume: 400, pressure: 1013.25, temperature: 0, trapped: 25, mass: 1 },
    expected: 10,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: a quarter of 400 cm3 of air at 0 degC in 1 kg',
  },
  {
    formula: 'porosity.gas-content',
    inputs: { gas_volume: 400, pressure: 50, temperature: 26.85, trapped: 75, mass: 1 },
    expected: 1.348,
    tolerance: { absolute: 0.0006 },
    from: 'derived, worked by hand: 30 x 50 / 1013.25 x 273.15 / 300, under high vacuum',
  },
  {
    formula: 'porosity.trapped-low',
    inputs: { least: 25, left: 14.1, greatest: 75 },
    expected: 25,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: the vents leave less than practice traps',
  },
  {
    formula: 'porosity.trapped-low',
    inputs: { least: 25, left: 29.9, greatest: 75 },
    expected: 29.9,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: vents of half the critical area leave 29.9 %',
  },
  {
    formula: 'porosity.fed-share',
    inputs: { gate_thickness: 1.6, wall: 3.2 },
    expected: 50,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: skins of 0.8 mm meet in the gate and leave half of the wall',
  },
  {
    formula: 'porosity.fed-share',
    inputs: { gate_thickness: 1.6, wall: 3.2, lead: 80 / 30 },
    expected: 81.65,
    tolerance: { absolute: 0.005 },
    from: 'derived, worked by hand: 50 x sqrt(80 / 30)',
  },
  {
    formula: 'porosity.fed-share',
    inputs: { gate_thickness: 4, wall: 3.2 },
    expected: 100,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: a gate thicker than the wall feeds all of it',
  },
  { formula: 'porosity.lead', inputs: { least: 30, greatest: 80 }, expected: 8 / 3, tolerance: { relative: 1e-9 }, from: RANGE },
  {
    formula: 'porosity.unfed-shrinkage',
    inputs: { shrinkage: 4.9, fed: 50 },
    expected: 2.45,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: half of 4.9 %',
  },
  { formula: 'porosity.total', inputs: { gas: 0.355, shrinkage: 2.45 }, expected: 2.805, tolerance: { relative: 1e-9 }, from: 'derived, worked by hand: sum' },
  {
    formula: 'intensification.lowered-pressure',
    inputs: { hydraulic: 15, planned: 58.8, fill_pressure: 71.4 },
    expected: 12.353,
    tolerance: { absolute: 0.0005 },
    from: 'derived, worked by hand: 15 x 58.8 / 71.4',
  },
  {
    formula: 'intensification.lowered-pressure',
    inputs: { hydraulic: 14, planned: 58.8, fill_pressure: 43.6 },
    expected: 14,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: a fill phase that presses less than planned stays as it is',
  },
  {
    formula: 'intensification.lowered-left',
    inputs: { planned: 58.8, fill_pressure: 71.4, flow: 30, dry_flow: 60 },
    expected: 40.95,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 58.8 - 71.4 / 4; the same by the lowered line, 58.8 x (1 - 0.25 x 71.4 / 58.8)',
  },
  {
    formula: 'intensification.lowered-left',
    inputs: { planned: 20, fill_pressure: 71.4, flow: 45, dry_flow: 60 },
    expected: 0,
    tolerance: { absolute: 1e-12 },
    from: 'limiting case: the lowered line ends before this flow',
  },
  {
    formula: 'intensification.static-force',
    inputs: { force: 11510, sizing: 58.8, fill_pressure: 71.4 },
    expected: 13976,
    tolerance: { absolute: 0.5 },
    from: 'derived, worked by hand: 11,510 x 71.4 / 58.8',
  },
  {
    formula: 'intensification.static-force',
    inputs: { force: 3000, sizing: 58.8, fill_pressure: 43.6 },
    expected: 3000,
    tolerance: { relative: 1e-9 },
    from: 'limiting case: a fill phase that presses less asks for no more',
  },
  {
    formula: 'intensification.standing-load',
    inputs: { load: 240, force: 1700, planned: 850 },
    expected: 480,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: twice the force, twice the load',
  },
];
