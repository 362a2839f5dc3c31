import type { Case } from '../case.ts';

const TABLE = 'derived, computed apart from this program: gas balance with Fanno flow, 4 f L / D_h = 3, at 90 % of the stroke';
const CHOKE = 'derived, computed apart from this program: Fanno flow of air, pressure needed to choke';
const LIMIT = 'limiting case';
const EVACUATION =
  'note on the principle of vacuum-assisted die casting (MIDLAND-VACUUM, vendor): 2 dm3 through 60 mm2, t = V / (A v); in that time the pressure falls to 1/e';

/** Area over critical area; pressure and gas left with an air vent, then with a vent choked throughout. */
const BALANCE = [
  [0.5, 4.64, 0.299, 4.17, 0.277],
  [0.8, 2.22, 0.176, 1.71, 0.147],
  [1.0, 1.62, 0.141, 1.0, 0.1],
  [1.2, 1.35, 0.124, 0.61, 0.07],
  [1.5, 1.19, 0.113, 0.31, 0.043],
  [2.0, 1.09, 0.107, 0.11, 0.021],
  [3.0, 1.04, 0.103, 0.02, 0.006],
] as const;

/** Friction length, and cavity over outside pressure at which the vent chokes. */
const CHOKING = [
  [0, 1.893],
  [0.5, 2.254],
  [1, 2.505],
  [2, 2.903],
  [3, 3.231],
  [5, 3.779],
  [10, 4.839],
  [20, 6.406],
] as const;

export const cases: readonly Case[] = [
  ...BALANCE.flatMap(([area_ratio, air, , vacuum]) => [
    { formula: 'vent.residual-pressure', inputs: { area_ratio }, expected: air, tolerance: { absolute: 0.005 }, from: `${TABLE}, into the air` },
    {
      formula: 'vent.residual-pressure',
      inputs: { area_ratio, back_pressure: 0 },
      expected: vacuum,
      tolerance: { absolute: vacuum < 0.1 ? 0.0025 : 0.005 },
      from: `${TABLE}, into a vacuum`,
    },
  ]),
  // The pressures that go with the printed shares of gas left, to more digits: P = (m / 0.1)^1.4.
  ...BALANCE.flatMap(([, , airLeft, , vacuumLeft]) =>
    [airLeft, vacuumLeft].map((left) => ({
      formula: 'vent.gas-left',
      inputs: { pressure: (left / 0.1) ** 1.4 },
      expected: 100 * left,
      tolerance: { relative: 1e-9 },
      from: 'derived, worked by hand: density and pressure of a gas that loses no heat',
    })),
  ),
  // And from the printed pressures, to their digits.
  ...BALANCE.map(([, air, left]) => ({
    formula: 'vent.gas-left',
    inputs: { pressure: air },
    expected: 100 * left,
    tolerance: { absolute: 0.08 },
    from: `${TABLE}, into the air, printed pressure and printed gas left`,
  })),
  ...BALANCE.filter(([, air]) => air > 1.05).map(([area_ratio, air]) => ({
    formula: 'vent.ratio-for-pressure',
    inputs: { pressure: air },
    expected: area_ratio,
    tolerance: { relative: 0.015 },
    from: `${TABLE}, into the air, read the other way`,
  })),
  ...CHOKING.map(([friction_length, expected]) => ({
    formula: 'vent.choke-ratio',
    inputs: { friction_length },
    expected,
    tolerance: { absolute: 0.0006 },
    from: CHOKE,
  })),
  {
    formula: 'vent.choke-ratio',
    inputs: { friction_length: 0 },
    expected: 1.2 ** 3.5,
    tolerance: { relative: 1e-12 },
    from: `${LIMIT}: nozzle without friction, 1.2^3.5 (gas tables: 1.8929)`,
  },
  // A closed cavity: all the gas in a tenth of the room, compressed without loss of heat.
  { formula: 'vent.residual-pressure', inputs: { area_ratio: 0 }, expected: 10 ** 1.4, tolerance: { relative: 1e-4 }, from: `${LIMIT}: no vent` },
  {
    formula: 'vent.residual-pressure',
    inputs: { area_ratio: 20 },
    expected: 1,
    tolerance: { absolute: 0.001 },
    from: `${LIMIT}: very large vent into the air`,
  },

  {
    formula: 'vent.area-ratio',
    inputs: { area: 171.4, critical: 85.7 },
    expected: 2,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 171.4 mm2 over 85.7 mm2',
  },
  {
    formula: 'vent.multiple-area',
    inputs: { critical: 85.7, ratio: 1.5 },
    expected: 128.55,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: one and a half times 85.7 mm2',
  },
  {
    formula: 'vent.cavity-pressure',
    inputs: { start: 50, times: 1.2 },
    expected: 0.06,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 1.2 times 50 mbar are 0.06 bar',
  },
  {
    formula: 'vent.back-pressure',
    inputs: { behind: 20, start: 50 },
    expected: 0.4,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 20 over 50 mbar',
  },
  {
    formula: 'vent.plain-fit',
    inputs: { needed: 171, width: 245, depth: 0.11 },
    expected: 26.95,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 245 mm x 0.11 mm',
  },
  {
    formula: 'vent.plain-fit',
    inputs: { needed: 20, width: 245, depth: 0.11 },
    expected: 20,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: no more than needed',
  },
  ...(
    [
      [340, 98],
      [200, 167],
    ] as const
  ).map(([velocity, expected]) => ({
    formula: 'vent.evacuation-time',
    inputs: { gas_volume: 2000, area: 60, velocity, start: 1013, end: 1013 / Math.E },
    expected,
    tolerance: { absolute: 0.5 },
    from: EVACUATION,
  })),
  {
    formula: 'vent.evacuated-volume',
    inputs: { die: 1690, all: 8776, diameter: 130, hole_travel: 162.5, cavities: 1 },
    expected: 6619,
    tolerance: { absolute: 1 },
    from: 'derived, worked by hand: the plunger of 132.7 cm2 sweeps 2157 cm3 on 162.5 mm, and 8776 less that are left',
  },
  {
    formula: 'vent.evacuated-volume',
    inputs: { die: 1000, all: 1500, diameter: 130, hole_travel: 162.5, cavities: 2 },
    expected: 1000,
    tolerance: { relative: 1e-9 },
    from: 'a law: never less than the die itself holds',
  },
  {
    formula: 'vent.tank-volume',
    inputs: { gas_volume: 5000, start: 1000, end: 50 },
    expected: 95,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 5 l of air at 1000 mbar spread over 100 l stand at 50 mbar',
  },
  {
    formula: 'vent.tank-volume',
    inputs: { gas_volume: 5000, start: 1000, end: 50, tank: 10 },
    expected: 118.75,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: 5 x 950 = 118.75 x 40, the gas lost by the die is what the tank gains',
  },
];
