import type { Case } from '../case.ts';

const NOTES = 'knowledge-base article on gating and runner design (KB-GATING): 500 cm3, 50 ms, 45 m/s, 150 mm wide';
const SHOT = 'knowledge-base article on the shot profile (KB-SHOT-PROFILE): plunger 80 mm at 2 m/s, gate 222 mm2, 45.3 m/s';
const WORKSHEET = 'worksheet "Die Casting Calculation" (DC-WORKSHEET): aluminium casting of 500 g, 40 ms, 40 m/s';
const HUB = 'Khandagale, clutch hub, 2022, summary: gate area 58.25 mm2, with 40 m/s by hand 2.33 l/s';

/** Least velocities for an index of 475 and 750 in inch units, by gate thickness (mm). */
const ATOMISED = [
  [0.5, [37.9, 49.5], [48.3, 63.1], [22.5, 29.4], [19.8, 25.8]],
  [0.8, [28.8, 37.6], [36.7, 47.9], [17.1, 22.3], [15.0, 19.6]],
  [1.0, [25.3, 33.0], [32.2, 42.1], [15.0, 19.6], [13.2, 17.2]],
  [1.5, [19.9, 26.0], [25.4, 33.2], [11.8, 15.4], [10.4, 13.6]],
  [2.0, [16.8, 22.0], [21.5, 28.0], [10.0, 13.1], [8.8, 11.5]],
  [2.5, [14.8, 19.3], [18.8, 24.6], [8.8, 11.5], [7.7, 10.1]],
] as const;
const DENSITIES = [2500, 1650, 6100, 7600] as const;
const INDEX = [6.251e5, 9.87e5] as const;

/** The index in inch units: in/s, in, lb/in3. */
const inchIndex = (velocity: number, thickness: number, density: number): number => (velocity / 0.0254) ** 1.71 * (thickness / 25.4) * (density / 27679.9);

export const cases: readonly Case[] = [
  // 1 kg of AlSi9Cu3(Fe) at 2.5 g/cm3; then the mass that the manual formula A = 1000 m / (rho v t) takes for 222 mm2.
  {
    formula: 'gate.flow-volume',
    inputs: { mass: 1, density: 2.5 },
    expected: 400,
    tolerance: { relative: 1e-12 },
    from: 'Foundry Lexicon, gate area (GL-GATE-AREA): liquid density of AlSi9Cu3(Fe) 2.5 g/cm3; quotient by hand',
  },
  {
    formula: 'gate.flow-volume',
    inputs: { mass: 1.25, density: 2.5 },
    expected: (222.2 * 45 * 50) / 1000,
    tolerance: { relative: 5e-4 },
    from: 'Foundry Lexicon, gate area (GL-GATE-AREA): 1000 x 1250 g / (2.5 x 45 x 50) = 222.2 mm2, back to the volume',
  },

  { formula: 'gate.flow', inputs: { volume: 500, time: 50 }, expected: 10, tolerance: { relative: 1e-12 }, from: NOTES },
  { formula: 'gate.flow', inputs: { volume: 207.5, time: 40 }, expected: 5.189, tolerance: { absolute: 0.002 }, from: WORKSHEET },
  { formula: 'gate.area', inputs: { volume: 500, velocity: 45, time: 50 }, expected: 222, tolerance: { absolute: 0.5 }, from: NOTES },
  { formula: 'gate.area', inputs: { volume: 207.5, velocity: 40, time: 40 }, expected: 129.7, tolerance: { absolute: 0.05 }, from: WORKSHEET },
  { formula: 'gate.velocity-from-flow', inputs: { flow: 10.053, area: 222 }, expected: 45.3, tolerance: { absolute: 0.05 }, from: SHOT },
  { formula: 'gate.velocity-from-flow', inputs: { flow: 2.33, area: 58.25 }, expected: 40, tolerance: { absolute: 0.05 }, from: HUB },
  { formula: 'gate.width', inputs: { area: 222, thickness: 1.48 }, expected: 150, tolerance: { absolute: 0.5 }, from: NOTES },
  {
    formula: 'gate.width',
    inputs: { area: 129.7, thickness: 0.833 },
    expected: 155.7,
    tolerance: { absolute: 0.05 },
    from: `${WORKSHEET}, a third of the wall`,
  },
  {
    formula: 'gate.width',
    inputs: { area: 129.7, thickness: 0.625 },
    expected: 207.5,
    tolerance: { absolute: 0.05 },
    from: `${WORKSHEET}, a quarter of the wall`,
  },

  ...ATOMISED.flatMap(([thickness, ...velocities]) =>
    velocities.flatMap((pair, alloy) =>
      pair.map((expected, level) => ({
        formula: 'gate.least-atomised-velocity',
        inputs: { index: INDEX[level] as number, thickness, density: DENSITIES[alloy] as number },
        expected,
        tolerance: { absolute: 0.05 },
        from: 'derived, worked by hand: index 475 or 750 in inch units, exponent and index from memory',
      })),
    ),
  ),
  // 475 in inch units is 6.251e5 in SI units, so the two forms must keep that ratio at any point.
  ...(
    [
      [25.3, 1, 2500],
      [48, 0.5, 1650],
      [30, 0.4, 6100],
    ] as const
  ).map(([velocity, thickness, density]) => ({
    formula: 'gate.atomisation-index',
    inputs: { velocity, thickness, density },
    expected: (inchIndex(velocity, thickness, density) / 475) * 6.251e5,
    tolerance: { relative: 1e-4 },
    from: 'derived, worked by hand in inch units (in/s, in, lb/in3); exponent from memory',
  })),
];
