import type { Case } from '../case.ts';

const ROUTE = 'derived, worked by hand';
const WORKED = 'worked case of the cooling line: 10 mm at 25 mm depth and 40 mm pitch in H13 of 25 W/(m.K), water of 40 degC at 2 m/s, surface 220 degC';
/** Water of the worked case: density 992 kg/m3, viscosity 0.653 mPa.s, 4179 J/(kg.K), 0.631 W/(m.K). */
const [RHO, MU, C, K] = [992, 0.653, 4179, 0.631] as const;

const one = (formula: string, inputs: Readonly<Record<string, number>>, expected: number, tolerance: Case['tolerance'], from: string): Case => ({
  formula,
  inputs,
  expected,
  tolerance,
  from,
});

export const cases: readonly Case[] = [
  // Shape factors. The worksheet has L = 5, D = 1, z = 1.5 in one unit of length; the formula takes L in metres and the rest in millimetres.
  one(
    'cooling.shape-factor',
    { length: 5, diameter: 1000, depth: 1500 },
    17.822,
    { absolute: 5e-4 },
    'worksheet of M. M. Yovanovich on Table 4.1 (INCROPERA-T4-1), recomputed',
  ),
  one(
    'cooling.shape-factor',
    { length: 3, diameter: 1, depth: 100 },
    3.146071454894645,
    { relative: 1e-12 },
    'documentation of an open heat-transfer library, printed answer for D = 1, Z = 100, L = 3',
  ),
  one(
    'cooling.row-shape-factor',
    { length: 1, diameter: 12, depth: 25, pitch: 40 },
    1.5764,
    { absolute: 5e-5 },
    `${ROUTE}: row of lines of 12 mm at 25 mm, 40 mm apart, 1 m long`,
  ),
  one('cooling.row-shape-factor', { length: 1, diameter: 10, depth: 25, pitch: 40 }, 1.507, { absolute: 5e-4 }, WORKED),

  // ln(118 / (10 pi)) = 1.32338, 40 pi / 118 = 1.06497, -ln(1 - exp(-2.12994)) = 0.12652: 2 pi / 2.51487.
  one(
    'cooling.spread-shape-factor',
    { length: 1, diameter: 10, depth: 20, pitch: 118 },
    2.49842,
    { absolute: 5e-5 },
    `${ROUTE}: line of 10 mm at 20 mm, 118 mm apart; held against a solution on a grid in tests/properties/cooling.test.ts`,
  ),
  one(
    'cooling.spread-shape-factor',
    { length: 1, diameter: 12, depth: 25, pitch: 40 },
    1.5764,
    { relative: 1e-3 },
    `${ROUTE}: close lines as in a row under a face at one temperature`,
  ),

  // Correlations.
  one('cooling.nusselt-gnielinski', { reynolds: 1e5, prandtl: 1.2, friction: 0.0185 }, 254.6268, { absolute: 5e-5 }, `${ROUTE}: Re 1e5, Pr 1.2, f 0.0185`),
  one('cooling.nusselt-gnielinski', { reynolds: 30383, prandtl: 4.325 }, 174.9, { absolute: 0.06 }, `${WORKED}; friction factor left to Petukhov`),
  one('cooling.nusselt-dittus-boelter', { reynolds: 1e5, prandtl: 1.2 }, 247.4004, { absolute: 5e-5 }, `${ROUTE}: Re 1e5, Pr 1.2, coolant being heated`),
  one(
    'cooling.nusselt-dittus-boelter',
    { reynolds: 1e5, prandtl: 1.2, heating: 0 },
    242.9306,
    { absolute: 5e-5 },
    `${ROUTE}: Re 1e5, Pr 1.2, fluid being cooled`,
  ),
  one('cooling.friction', { reynolds: 30383 }, 0.02357, { absolute: 5e-6 }, WORKED),
  one('cooling.laminar-friction', { reynolds: 1600 }, 0.04, { relative: 1e-12 }, `${ROUTE}: 64 over 1600`),
  one('cooling.reynolds', { density: RHO, speed: 2, diameter: 10, viscosity: MU }, 30383, { absolute: 0.6 }, WORKED),
  one('cooling.prandtl', { specific_heat: C, viscosity: MU, conductivity: K }, 4.325, { absolute: 5e-4 }, WORKED),
  one('cooling.film', { nusselt: 174.9, conductivity: K, diameter: 10 }, 11035, { absolute: 4 }, WORKED),

  // Flow. 10 mm and water of 40 degC: Re 10,000 at 0.658 m/s and 4,000 at 0.263 m/s, times the bore of 78.54 mm2.
  one(
    'cooling.flow-for-reynolds',
    { reynolds: 10000, viscosity: MU, density: RHO, diameter: 10 },
    0.658 * 78.54 * 0.06,
    { relative: 8e-4 },
    'worked case of the speed for a Reynolds number: 0.658 m/s for 10,000 in 10 mm',
  ),
  one(
    'cooling.flow-for-reynolds',
    { reynolds: 4000, viscosity: MU, density: RHO, diameter: 10 },
    0.263 * 78.54 * 0.06,
    { relative: 2e-3 },
    'worked case of the speed for a Reynolds number: 0.263 m/s for 4,000 in 10 mm',
  ),
  one('cooling.speed', { flow: 9.4248, diameter: 10 }, 2, { absolute: 1e-5 }, `${ROUTE}: 2 m/s through 78.54 mm2 are 9.4248 l/min`),
  one(
    'cooling.flow-for-rise',
    { heat: 1672, density: 1000, specific_heat: 4180, rise: 4 },
    6,
    { relative: 1e-9 },
    `${ROUTE}: 0.1 l/s of water take 418 W for each kelvin`,
  ),
  one(
    'cooling.rise',
    { heat: 1672, density: 1000, specific_heat: 4180, flow: 6 },
    4,
    { relative: 1e-9 },
    `${ROUTE}: 0.1 l/s of water take 418 W for each kelvin`,
  ),
  one('cooling.flow', { for_reynolds: 3.1, for_rise: 12, at_speed: 9.05 }, 9.05, { absolute: 1e-12 }, `${ROUTE}: no faster than the speed allows`),
  one('cooling.flow-at-speed', { speed: 3, diameter: 8 }, 9.048, { absolute: 5e-4 }, `${ROUTE}: 3 m/s x 50.27 mm2 = 150.8 cm3/s`),
  one('cooling.flow', { for_reynolds: 3.1, for_rise: 6 }, 6, { absolute: 1e-12 }, `${ROUTE}: the greater of two`),
  one(
    'cooling.pressure-drop',
    { friction: 0.02, length: 1, diameter: 10, fittings: 6, density: 1000, speed: 2 },
    0.16,
    { relative: 1e-9 },
    `${ROUTE}: (2 + 6) velocity heads of 2000 Pa`,
  ),
  one('cooling.drilled', { field: 0.3, steel: 75 }, 0.45, { relative: 1e-12 }, `${ROUTE}: 300 mm and 75 mm at either end`),
  one('cooling.pump-flow', { flow: 6, length: 3, each: 0.3 }, 60, { relative: 1e-12 }, `${ROUTE}: ten circuits of 6 l/min`),

  // The worked line, metre by metre: resistances 0.002884 and 0.02654 K/W.
  one('cooling.steel-conductance', { shape: 1.507, conductivity: 25 }, 1 / 0.02654, { relative: 2e-4 }, WORKED),
  one(
    'cooling.line-conductance',
    { film: 11035, diameter: 10, length: 1, shape: 1.507, conductivity: 25 },
    1 / (0.002884 + 0.02654),
    { relative: 3e-4 },
    WORKED,
  ),
  one('cooling.line-heat', { conductance: 33.987, warm: 220, cold: 40 }, 6118, { absolute: 1 }, WORKED),
  one('cooling.heat-per-length', { heat: 1529.5, length: 0.25 }, 6118, { relative: 1e-9 }, `${ROUTE}: a quarter of a metre of the worked line`),
  one('cooling.wall-temperature', { coolant: 40, heat: 6118, film: 11035, diameter: 10, length: 1 }, 57.6, { absolute: 0.06 }, WORKED),
  one('cooling.wall-flux', { heat: 6118, diameter: 10, length: 1 }, 195, { absolute: 0.5 }, WORKED),

  one(
    'cooling.line-heat',
    { conductance: 1, warm: 43.33, cold: 20 },
    23.33,
    { absolute: 1e-9 },
    'textbook balance of a die (question 917174): 1 W/K to water of 20 degC; the die at 43.3 degC carries off 23.33 W',
  ),

  // Layout.
  one(
    'cooling.pitch',
    { diameter: 10, depth: 20, diameter_least: 2.5, diameter_greatest: 4, depth_least: 1.5, depth_greatest: 2 },
    35,
    { relative: 1e-12 },
    `${ROUTE}: 30 to 40 mm hold both windows`,
  ),
  one('cooling.field', { block: 415, steel: 88, depth: 20 }, 279, { relative: 1e-12 }, `${ROUTE}: 415 less twice 88, and twice 20 mm of spread`),
  one('cooling.field', { block: 233, steel: 66, depth: 15, rest: 66 }, 65, { relative: 1e-12 }, `${ROUTE}: the same without the room of the sprue`),
  one('cooling.lines-fit', { field: 279, pitch: 35 }, 7, { absolute: 1e-12 }, `${ROUTE}: seven whole pitches`),
  one('cooling.lines-fit', { field: 279, pitch: 35, depth: 86 }, 11, { absolute: 1e-12 }, `${ROUTE}: and two lines at two levels of the depth`),
  one('cooling.lines-fit', { field: 20, pitch: 35 }, 1, { absolute: 1e-12 }, `${ROUTE}: one at least`),

  // The plan of the lines.
  one('cooling.surface-temperature', { before: 215, excess: 25 }, 240, { relative: 1e-12 }, `${ROUTE}: a sum`),
  one('cooling.heating-temperature', { surface: 215, above: 30 }, 245, { relative: 1e-12 }, `${ROUTE}: a sum`),
  one('cooling.half-share', { share: 60, slides: 10 }, 54, { relative: 1e-12 }, `${ROUTE}: 60 % of the 90 % that the slides leave`),
  one('cooling.slide-share', { core_surface: 60, face_area: 15, cavities: 2, die_face: 3000 }, 5, { relative: 1e-12 }, `${ROUTE}: 150 of 3000 cm2`),
  one('cooling.length-needed', { rate: 6.118, per_length: 6118 }, 1, { relative: 1e-12 }, `${ROUTE}: one metre of the worked line`),
  one('cooling.lines-worth', { needed: 1, each: 0.25 }, 4, { relative: 1e-12 }, `${ROUTE}: a quotient`),
  one('cooling.lines-needed', { needed: 1, each: 0.25 }, 4, { absolute: 1e-12 }, `${ROUTE}: four whole lines, not five for the last binary digit`),
  one('cooling.lines-needed', { needed: 1.01, each: 0.25 }, 5, { absolute: 1e-12 }, `${ROUTE}: rounded up`),
  one('cooling.lines', { needed: 5, fit: 4 }, 4, { absolute: 1e-12 }, `${ROUTE}: what fits`),
  one('cooling.lines', { needed: 0, fit: 4 }, 1, { absolute: 1e-12 }, `${ROUTE}: one at least`),
  one('cooling.laid-length', { lines: 4, each: 0.25 }, 1, { relative: 1e-12 }, `${ROUTE}: a product`),
  one('cooling.conductance', { each: 8.5, each_length: 0.25, length: 3 }, 102, { relative: 1e-12 }, `${ROUTE}: 34 W/K for each metre`),
  one('cooling.coolant-temperature', { surface: 220, rate: 6.118, conductance: 33.987 }, 40, { absolute: 0.02 }, WORKED),
  one('cooling.coolant-temperature', { surface: 220, rate: 9, conductance: 34, least: 30 }, 30, { absolute: 1e-12 }, `${ROUTE}: never below the coldest`),
  one(
    'cooling.cycle-least',
    { heat: 250, conductance: 40, before: 215, coolant: 40, elements: 40 },
    250000 / 40 / 175,
    { relative: 1e-12 },
    `${ROUTE}: without an excess`,
  ),
  one(
    'cooling.cycle-least',
    { heat: 320, conductance: 40, before: 215, coolant: 40, excess: 25, elements: 40 },
    40,
    { relative: 1e-12 },
    `${ROUTE}: 320 kJ through 40 W/K over 175 + 25 K take the 40 s that the excess belongs to`,
  ),
  one('cooling.shared-heat', { rate: 5, most: 2000 }, 5000 / 3, { relative: 1e-12 }, `${ROUTE}: three lines`),
  one('cooling.bubbler-core', { bore: 5.5, wall: 3 }, 11.5, { relative: 1e-12 }, `${ROUTE}: a sum`),
  // A long fin comes to the metal, a short one to half the flux times its surface over its section: 2 q L^2 / (k d).
  one(
    'cooling.core-excess',
    { flux: 50, metal: 540, surface: 215, conductivity: 25, diameter: 2, depth: 200 },
    325,
    { relative: 1e-6 },
    `${ROUTE}: limit of a long thin pin`,
  ),
  one(
    'cooling.core-excess',
    { flux: 50, metal: 540, surface: 215, conductivity: 25, diameter: 20, depth: 2 },
    (2 * 50000 * 0.002 ** 2) / (25 * 0.02),
    { relative: 3e-3 },
    `${ROUTE}: limit of a short thick pin`,
  ),
  {
    formula: 'cooling.laid-pitch',
    inputs: { pitch: 26.25, field: 318.3, lines: 3 },
    expected: 106.1,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 318.3 / 3',
  },
  {
    formula: 'cooling.laid-pitch',
    inputs: { pitch: 35, field: 200, lines: 12 },
    expected: 35,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: a full row, with more lines beside the cavity',
  },
  {
    formula: 'cooling.closest-pitch',
    inputs: { diameter: 10, depth: 15, diameter_least: 2.5, depth_least: 1.5 },
    expected: 25,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 25 mm by the diameter, 22.5 mm by the depth',
  },
  {
    formula: 'cooling.die-share',
    inputs: { pressure: 5, share: 50 },
    expected: 2.5,
    tolerance: { relative: 1e-9 },
    from: 'derived, worked by hand: half of 5 bar',
  },
];
