import type { Case } from '../case.ts';

const WORKSHEET = 'worksheet "Die Casting Calculation" (DC-WORKSHEET): aluminium casting of 500 g, wall 2.5 mm, 40 ms, 40 m/s';
const STROKE = 'worksheet "Die Casting Calculation" (DC-WORKSHEET): d = sqrt(4 shot / (pi stroke 0.75 x 2.5)) in cm and g';
const EXAMPLE = 'derived, worked by hand: sleeve 70 x 400 mm, cavity 500, overflows 60, runner 150 cm3, biscuit 25 mm, 50 ms';
const TEXTBOOK = 'Boothroyd, Dewhurst and Knight, Product Design for Manufacture and Assembly, die casting: from memory, arithmetic by hand';
const GAS = 'derived, worked by hand: 250 cavity + 50 overflows + 300 cm3 sleeve and runner gas';
const HAND = 'derived, worked by hand';

const exact = { relative: 1e-9 } as const;
const SECTION = { width_least: 2, width_greatest: 3, wall_draft: 10 };
/** A rectangle twice as wide as deep, as the worksheet draws the runner. */
const RECTANGLE = { width_least: 2, width_greatest: 2, wall_draft: 0 };

export const cases: readonly Case[] = [
  // Furnace 670 degC (a caster's page) less 35 K: the 635 degC at which a textbook injects aluminium (memory).
  {
    formula: 'fill.gate-temperature',
    inputs: { holding_temperature: 670, loss: 35 },
    expected: 635,
    tolerance: exact,
    from: `${TEXTBOOK}: aluminium injected at 635 degC`,
  },
  {
    formula: 'fill.solids',
    inputs: { least: 20, greatest: 50, position: 0 },
    expected: 20,
    tolerance: exact,
    from: `${HAND}: the low end for the best finish`,
  },
  { formula: 'fill.solids', inputs: { least: 20, greatest: 50, position: 1 }, expected: 50, tolerance: exact, from: `${HAND}: the high end without a demand` },
  { formula: 'fill.solids', inputs: { least: 20, greatest: 50, position: 0.5 }, expected: 35, tolerance: exact, from: `${HAND}: 20 + 30 / 2` },
  // 18.7 and 45.6 ms are the two times of a 2 mm aluminium wall.
  {
    formula: 'fill.time',
    inputs: { recommended: 18.7, longest: 45.6, share: 0, ceiling: 0.9 },
    expected: 18.7,
    tolerance: exact,
    from: `${HAND}: the recommended time itself`,
  },
  {
    formula: 'fill.time',
    inputs: { recommended: 18.7, longest: 45.6, share: 0.4, ceiling: 0.9 },
    expected: 29.46,
    tolerance: exact,
    from: `${HAND}: 18.7 + 0.4 x 26.9`,
  },
  {
    formula: 'fill.time',
    inputs: { recommended: 18.7, longest: 45.6, share: 1, ceiling: 0.9 },
    expected: 41.04,
    tolerance: exact,
    from: `${HAND}: nine tenths of the longest`,
  },
  {
    formula: 'fill.time',
    inputs: { recommended: 22, longest: 17, share: 0.2, ceiling: 0.9 },
    expected: 15.3,
    tolerance: exact,
    from: `${HAND}: nine tenths of a longest time below the recommended`,
  },

  { formula: 'gate.flow-mass', inputs: { part_mass: 1.25, overflow_mass: 0.15 }, expected: 1.4, tolerance: exact, from: `${HAND}: 1250 g + 150 g` },
  {
    formula: 'gate.velocity',
    inputs: { least: 40, greatest: 50, position: 0.5 },
    expected: 45,
    tolerance: exact,
    from: 'Foundry Lexicon, gate area (GL-GATE-AREA): 45 m/s, the middle of the usual 40 to 50 m/s',
  },
  {
    formula: 'gate.velocity-of-machine',
    inputs: { driven: 40, reserve: 3, least: 25 },
    expected: 38.8,
    tolerance: exact,
    from: `${HAND}: 97 hundredths of 40 m/s`,
  },
  {
    formula: 'gate.velocity-of-machine',
    inputs: { driven: 25.5, reserve: 3, least: 25 },
    expected: 25,
    tolerance: exact,
    from: `${HAND}: not below the window`,
  },
  { formula: 'vent.area-planned', inputs: { choked: 30, multiple: 1.4 }, expected: 42, tolerance: exact, from: `${HAND}: 1.4 times 30 mm2` },
  {
    formula: 'runner.each-volume',
    inputs: { volume: 84, cavities: 6 },
    expected: 14,
    tolerance: { absolute: 1e-12 },
    from: 'derived, by hand: 84 cm3 of runner for six cavities',
  },
  {
    formula: 'runner.each-projected',
    inputs: { area: 99, cavities: 6 },
    expected: 16.5,
    tolerance: { absolute: 1e-12 },
    from: 'derived, by hand: 99 cm2 of runner for six cavities',
  },
  {
    formula: 'runner.layout-share',
    inputs: { area: 15.6, casting_area: 12.4 },
    expected: 125.8,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: 15.6 cm2 of 12.4 cm2`,
  },
  { formula: 'gate.velocity', inputs: { least: 25, greatest: 35, position: 1 }, expected: 35, tolerance: exact, from: `${HAND}: upper end` },
  {
    formula: 'gate.thickness',
    inputs: { wall: 2.4, share: 0.5, greatest_share: 0.8, least: 0.8, greatest: 2.5 },
    expected: 1.2,
    tolerance: exact,
    from: 'Foundry Lexicon, gate area (GL-GATE-AREA): 1.2 mm for AlSi9Cu3; half of a wall of 2.4 mm',
  },
  {
    formula: 'gate.thickness',
    inputs: { wall: 2.5, share: 1 / 3, greatest_share: 0.8, least: 0.25, greatest: 2.5 },
    expected: 0.833,
    tolerance: { absolute: 0.0005 },
    from: `${WORKSHEET}, a third of the wall`,
  },
  {
    formula: 'gate.thickness',
    inputs: { wall: 1.2, share: 0.5, greatest_share: 0.8, least: 0.8, greatest: 2.5 },
    expected: 0.8,
    tolerance: exact,
    from: `${HAND}: the thinnest gate of the family`,
  },
  {
    formula: 'gate.thickness',
    inputs: { wall: 0.9, share: 0.5, greatest_share: 0.8, least: 0.8, greatest: 2.5 },
    expected: 0.72,
    tolerance: exact,
    from: `${HAND}: four fifths of the wall rule over the family`,
  },
  {
    formula: 'gate.thickness',
    inputs: { wall: 8, share: 0.5, greatest_share: 0.8, least: 0.8, greatest: 2.5 },
    expected: 2.5,
    tolerance: exact,
    from: `${HAND}: the thickest gate of the family`,
  },
  {
    formula: 'gate.count',
    inputs: { width: 155.7, side: 120 },
    expected: 2,
    tolerance: { absolute: 1e-9 },
    from: `${WORKSHEET}: gate of 155.7 mm on a side of 120 mm`,
  },
  { formula: 'gate.count', inputs: { width: 120, side: 120 }, expected: 1, tolerance: { absolute: 1e-9 }, from: `${HAND}: fits exactly` },
  { formula: 'gate.greatest-width', inputs: { parting_line: 760, share: 50 }, expected: 380, tolerance: exact, from: `${HAND}: half of 760 mm` },

  // 1.25 and 1.6 times 129.7 mm2 are printed as 1.62 and 2.08 cm2; their middle is 185 mm2.
  {
    formula: 'runner.area',
    inputs: { gate_area: 129.7, ratio_least: 1.25, ratio_greatest: 1.6 },
    expected: 185,
    tolerance: { absolute: 0.5 },
    from: `${WORKSHEET}: runner 1.62 to 2.08 cm2`,
  },
  { formula: 'runner.depth', inputs: { area: 162, ...RECTANGLE }, expected: 9, tolerance: exact, from: `${WORKSHEET}: depth sqrt(A / 2) = 9 mm` },
  {
    formula: 'runner.depth',
    inputs: { area: 232.367, ...SECTION },
    expected: 10,
    tolerance: { relative: 1e-5 },
    from: `${HAND}: trapezoid 25 mm wide at the top, 21.4735 mm at the floor, 10 mm deep`,
  },
  {
    formula: 'runner.width',
    inputs: { depth: 9, width_least: 2, width_greatest: 2 },
    expected: 18,
    tolerance: exact,
    from: `${WORKSHEET}: width twice the depth`,
  },
  { formula: 'runner.width', inputs: { depth: 10, width_least: 2, width_greatest: 3 }, expected: 25, tolerance: exact, from: `${HAND}: 2.5 times the depth` },
  {
    formula: 'runner.volume',
    inputs: { casting_area: 100, area_share: 20, depth: 10, ...RECTANGLE },
    expected: 20,
    tolerance: exact,
    from: `${HAND}: 20 cm2 x 1 cm`,
  },
  {
    formula: 'runner.volume',
    inputs: { casting_area: 100, area_share: 20, depth: 10, ...SECTION },
    expected: 18.589,
    tolerance: { absolute: 0.0005 },
    from: `${HAND}: 20 cm2 are 80 cm of runner 25 mm wide, times 2.32365 cm2`,
  },
  { formula: 'runner.total-volume', inputs: { cavities: 4, volume: 15 }, expected: 60, tolerance: exact, from: `${HAND}: 4 x 15` },
  { formula: 'runner.handbook-volume', inputs: { part_volume: 1000, wall: 5 }, expected: 200, tolerance: exact, from: TEXTBOOK },
  {
    formula: 'shot.handbook-volume',
    inputs: { cavities: 1, part_volume: 1000, wall: 5 },
    expected: 1400,
    tolerance: exact,
    from: `${TEXTBOOK}: shot of 1400 cm3 for a part of 1000 cm3 and 5 mm`,
  },

  { formula: 'overflow.parting-line', inputs: { side_a: 238, side_b: 142 }, expected: 760, tolerance: exact, from: `${HAND}: 2 x (238 + 142)` },
  {
    formula: 'overflow.number',
    inputs: { volume: 60, parting_line: 760, spacing: 60, least: 2 },
    expected: 7,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: 380 mm / 60 mm = 6.3, so 7`,
  },
  {
    formula: 'overflow.number',
    inputs: { volume: 5, parting_line: 100, spacing: 60, least: 2 },
    expected: 2,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: least number`,
  },
  { formula: 'overflow.each', inputs: { volume: 60, number: 8 }, expected: 7.5, tolerance: exact, from: `${HAND}: 60 / 8` },
  ...(
    [
      [0.9, 91.3],
      [1.3, 57.6],
      [1.8, 38.4],
      [2.5, 25.4],
      [3.2, 18.7],
    ] as const
  ).map(([wall, expected]) => ({
    formula: 'overflow.share-fit',
    inputs: { wall },
    expected,
    tolerance: { absolute: 0.06 },
    from: `${TEXTBOOK}: 0.8 / h^1.25`,
  })),
  {
    formula: 'overflow.gate-area',
    inputs: { gate_area: 222, share: 50 },
    expected: 111,
    tolerance: exact,
    from: 'digest of a gating manual (OVERFLOWS-DIGEST): half of the ingate area, here 222 mm2',
  },
  {
    formula: 'overflow.gate-width',
    inputs: { area: 111, number: 6, thickness: 0.65 },
    expected: 28.46,
    tolerance: { absolute: 0.005 },
    from: `${HAND}: 111 / (6 x 0.65)`,
  },

  { formula: 'shot.flow', inputs: { cavities: 1, volume: 207.5, time: 40 }, expected: 5.189, tolerance: { absolute: 0.002 }, from: WORKSHEET },
  { formula: 'shot.flow', inputs: { cavities: 4, volume: 50, time: 20 }, expected: 10, tolerance: exact, from: `${HAND}: 200 cm3 in 20 ms` },
  {
    formula: 'shot.speed-available',
    inputs: { dry_speed: 5, drop: 25, use: 80 },
    expected: 3,
    tolerance: exact,
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): loaded 25 % below dry, 80 % of that; product by hand',
  },
  {
    formula: 'shot.speed-available',
    inputs: { dry_speed: 8, drop: 10, use: 80 },
    expected: 5.76,
    tolerance: exact,
    from: 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): loaded 10 % below dry, 80 % of that; product by hand',
  },
  // 14 MPa on 140 mm give 56.0 MPa with 70 mm and 109.8 MPa with 50 mm.
  {
    formula: 'shot.plunger-for-pressure',
    inputs: { diameter: 70, pressure: 56, needed: 109.8 },
    expected: 50,
    tolerance: { absolute: 0.01 },
    from: `${HAND}: static pressures 56.0 and 109.8 MPa of the same machine`,
  },

  { formula: 'sleeve.biscuit-thickness', inputs: { least: 25, runner_depth: 11, diameter: 70, share: 0.3333 }, expected: 25, tolerance: exact, from: EXAMPLE },
  {
    formula: 'sleeve.biscuit-thickness',
    inputs: { least: 15, runner_depth: 11, diameter: 90, share: 0.3333 },
    expected: 30,
    tolerance: { absolute: 0.005 },
    from: `${HAND}: a third of 90 mm`,
  },
  {
    formula: 'sleeve.biscuit-thickness',
    inputs: { least: 15, runner_depth: 28, diameter: 60, share: 0.3333 },
    expected: 28,
    tolerance: exact,
    from: 'Bar-Meir (BAR-MEIR): at least as thick as the runner',
  },
  {
    formula: 'sleeve.biscuit-thickness',
    inputs: { least: 15, runner_depth: 8, diameter: 40, share: 0.3333, left: 15, feed: 5 },
    expected: 18.979,
    tolerance: { absolute: 0.001 },
    from: `${HAND}: 5 cm3 are 3.979 mm of the 1256.6 mm2 of a 40 mm plunger, 15 mm stay`,
  },
  {
    formula: 'sleeve.air-volume',
    inputs: { volume: 806.2, diameter: 70, length: 400 },
    expected: 733.2,
    tolerance: { absolute: 0.05 },
    from: `${EXAMPLE}: 1539.4 - 806.2 cm3`,
  },
  {
    formula: 'sleeve.plunger-for-fill',
    inputs: { volume: 650 / 2.5, length: 250, fill: 75 },
    expected: 42.0,
    tolerance: { absolute: 0.06 },
    from: `${STROKE}: 650 g, 25 cm, 4.20 cm`,
  },
  {
    formula: 'sleeve.plunger-for-fill',
    inputs: { volume: 1300 / 2.5, length: 300, fill: 75 },
    expected: 54.2,
    tolerance: { absolute: 0.06 },
    from: `${STROKE}: 1300 g, 30 cm, 5.42 cm`,
  },
  {
    formula: 'pot.stroke-needed',
    inputs: { volume: 96.2, diameter: 70 },
    expected: 25,
    tolerance: { absolute: 0.005 },
    from: `${EXAMPLE}: a cylinder of 70 x 25 mm holds 96.2 cm3`,
  },
  {
    formula: 'pot.nozzle-diameter',
    inputs: { cavities: 2, runner_area: 50, ratio: 1.1 },
    expected: 11.83,
    tolerance: { absolute: 0.005 },
    from: `${HAND}: sqrt(4 x 110 / pi)`,
  },

  {
    formula: 'vent.gas-volume',
    inputs: { part_volume: 250, overflow_volume: 50, runner_volume: 100, sleeve_air: 200, cavities: 1 },
    expected: 600,
    tolerance: exact,
    from: GAS,
  },
  {
    formula: 'vent.gas-volume',
    inputs: { part_volume: 50, overflow_volume: 10, runner_volume: 20, sleeve_air: 400, cavities: 4 },
    expected: 180,
    tolerance: exact,
    from: `${HAND}: 80 + 400 / 4`,
  },
  { formula: 'vent.gate-share', inputs: { vent_area: 85.7, gate_area: 222 }, expected: 38.6, tolerance: { absolute: 0.05 }, from: `${HAND}: 85.7 / 222` },
  {
    formula: 'vent.width-available',
    inputs: { parting_line: 760, gate_width: 160, share: 50 },
    expected: 300,
    tolerance: exact,
    from: `${HAND}: half of 600 mm`,
  },
  { formula: 'vent.number', inputs: { width: 714, each: 25 }, expected: 29, tolerance: { absolute: 1e-9 }, from: `${GAS}; 714 mm of width in vents of 25 mm` },
];
