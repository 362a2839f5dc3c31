import type { Case } from '../case.ts';

const EXAMPLE = 'derived, worked by hand: cavity 500, overflows 60, runner 150 cm3, biscuit 70 x 25 mm, 2500 kg/m3';
const RESIDUE = 'derived, worked by hand: gas of 100 g of casting at 2.65 g/cm3, at 70 MPa and 570 degC against 1013.25 mbar and 0 degC';

export const cases: readonly Case[] = [
  {
    formula: 'shot.volume',
    inputs: { cavities: 1, part_volume: 500, overflow_volume: 60, runner_volume: 150, biscuit_volume: 96.2 },
    expected: 806.2,
    tolerance: { absolute: 0.05 },
    from: EXAMPLE,
  },
  {
    formula: 'shot.volume',
    inputs: { cavities: 4, part_volume: 50, overflow_volume: 8, runner_volume: 60, biscuit_volume: 100 },
    expected: 392,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 4 x 58 + 160',
  },
  { formula: 'shot.mass', inputs: { volume: 806.2, density: 2.5 }, expected: 2.016, tolerance: { absolute: 0.0006 }, from: EXAMPLE },

  {
    formula: 'porosity.gas-volume',
    inputs: { gas_volume: 691, gas_pressure: 1013, gas_temperature: 20, metal_pressure: 70, metal_temperature: 20, trapped: 100 },
    expected: 1,
    tolerance: { relative: 0.001 },
    from: 'knowledge-base article on vacuum casting (KB-VACUUM): 1013 mbar to 70 MPa at constant temperature, factor about 690 (691)',
  },
  // Per cent of the casting's volume, 100 g / 2.65 g/cm3 = 37.74 cm3.
  ...(
    [
      [1, 0.012, 0.0005],
      [5, 0.059, 0.0005],
      [10, 0.118, 0.0005],
      [30, 0.355, 0.0005],
    ] as const
  ).map(([gas_volume, share, digit]) => ({
    formula: 'porosity.gas-volume',
    inputs: { gas_volume, gas_pressure: 1013.25, gas_temperature: 0, metal_pressure: 70, metal_temperature: 570, trapped: 100 },
    expected: (share / 100) * (100 / 2.65),
    tolerance: { absolute: (digit / 100) * (100 / 2.65) },
    from: RESIDUE,
  })),

  // Shares by wall and finish, remembered: 50 % at 1.8 mm, 25 % at 2.5 mm; and 60 cm3 of 500 cm3.
  {
    formula: 'overflow.volume',
    inputs: { cavity_volume: 500, share: 12 },
    expected: 60,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 60 cm3 of overflows on 500 cm3',
  },
  {
    formula: 'overflow.volume',
    inputs: { cavity_volume: 80, share: 150 },
    expected: 120,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: one and a half times the segment, as for a wall of 0.9 mm',
  },

  {
    formula: 'metal.part-volume',
    inputs: { mass: 0.5, density: 2.65 },
    expected: 188.7,
    tolerance: { absolute: 0.05 },
    from: 'worksheet "Die Casting Calculation" (DC-WORKSHEET): casting of 500 g at 2.65 g/cm3',
  },
  {
    formula: 'metal.part-mass',
    inputs: { volume: 188.68, density: 2.65 },
    expected: 0.5,
    tolerance: { absolute: 0.0005 },
    from: 'worksheet "Die Casting Calculation" (DC-WORKSHEET): casting of 500 g at 2.65 g/cm3',
  },
];
