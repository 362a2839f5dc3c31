import type { Case } from '../case.ts';

const FANNO = 'derived, worked by hand: Fanno flow of air at 300 K';
const GAS_TABLES = 'standard gas tables for Fanno flow, k = 1.4';
const AREA = 'derived, worked by hand: 250 cavity + 50 overflows + 300 cm3 sleeve and runner gas in 35 ms';
const EVACUATION = 'note on the principle of vacuum-assisted die casting (MIDLAND-VACUUM, vendor): t = V / (A v), form reconstructed; 2 dm3 through 60 mm2';
const BALANCE = 'derived, worked by hand: gas balance of a vent choked throughout, 90 % of the stroke';

/** 300 K in degrees Celsius. */
const T_300 = 26.85;

/** Friction length, entry Mach number, effective velocity (m/s). */
const TABLE = [
  [0, 1, 200.9],
  [0.5, 0.5977, 168.7],
  [1, 0.5087, 151.8],
  [2, 0.4183, 131.0],
  [3, 0.3672, 117.7],
  [5, 0.3066, 100.7],
  [10, 0.2339, 78.6],
  [20, 0.1741, 59.4],
] as const;

export const cases: readonly Case[] = [
  ...TABLE.map(([friction_length, , expected]) => ({
    formula: 'vent.choked-velocity',
    inputs: { gas_temperature: T_300, friction_length },
    expected,
    tolerance: { absolute: 0.06 },
    from: FANNO,
  })),
  ...TABLE.map(([friction_length, expected]) => ({
    formula: 'vent.entry-mach',
    inputs: { friction_length },
    expected,
    tolerance: { absolute: 0.00006 },
    from: FANNO,
  })),
  { formula: 'vent.entry-mach', inputs: { friction_length: 1.0691 }, expected: 0.5, tolerance: { absolute: 0.00005 }, from: GAS_TABLES },
  { formula: 'vent.entry-mach', inputs: { friction_length: 5.2993 }, expected: 0.3, tolerance: { absolute: 0.00005 }, from: GAS_TABLES },
  // No friction: speed of sound times 1 / 1.2^3, with the speed of sound 347.22 m/s at 300 K.
  {
    formula: 'vent.choked-velocity',
    inputs: { gas_temperature: T_300 },
    expected: 347.22 / 1.728,
    tolerance: { relative: 2e-5 },
    from: 'limiting case: choked without friction, 0.5787 times the speed of sound',
  },

  {
    formula: 'vent.friction-length',
    inputs: { depth: 0.12, land: 25, friction: 0.012 },
    expected: 5,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 4 x 0.012 x 25 / 0.24',
  },
  ...(
    [
      [340, 50.4],
      [200, 85.7],
      [100, 171.4],
    ] as const
  ).map(([velocity, expected]) => ({
    formula: 'vent.area',
    inputs: { gas_volume: 600, time: 35, velocity },
    expected,
    tolerance: { absolute: 0.05 },
    from: AREA,
  })),
  ...(
    [
      [98, 340],
      [167, 200],
    ] as const
  ).map(([time, velocity]) => ({
    formula: 'vent.area',
    inputs: { gas_volume: 2000, time, velocity },
    expected: 60,
    tolerance: { relative: 0.005 },
    from: EVACUATION,
  })),
  { formula: 'vent.width', inputs: { area: 85.7, depth: 0.12 }, expected: 714, tolerance: { absolute: 0.5 }, from: `${AREA}; vents 0.12 mm deep` },

  ...(
    [
      [0.5, 4.17, 0.005],
      [0.8, 1.71, 0.005],
      [1, 1, 0.005],
      [1.2, 0.61, 0.005],
      [1.5, 0.31, 0.005],
      [2, 0.11, 0.005],
    ] as const
  ).map(([area_ratio, expected, absolute]) => ({
    formula: 'vent.residual-pressure-choked',
    inputs: { area_ratio },
    expected,
    tolerance: { absolute },
    from: BALANCE,
  })),
  // The gas left is (1 + 3 (1.58489 - 1))^-5 = 0.006304 of the start, and the pressure 0.06304^1.4.
  { formula: 'vent.residual-pressure-choked', inputs: { area_ratio: 3 }, expected: 0.02087, tolerance: { relative: 0.001 }, from: BALANCE },
];
