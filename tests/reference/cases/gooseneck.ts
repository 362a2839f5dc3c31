import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';

export const cases: readonly Case[] = [
  {
    formula: 'gooseneck.bore-area',
    inputs: { diameter: 65 },
    expected: 3318.3,
    tolerance: { absolute: 0.05 },
    from: `${HAND}: a quarter of pi times 65 mm squared`,
  },
  { formula: 'gooseneck.shot-area', inputs: { cavities: 6, area: 42 }, expected: 252, tolerance: { absolute: 1e-9 }, from: `${HAND}: six runners of 42 mm2` },
  // Twice the area is the square root of two times the bore.
  {
    formula: 'gooseneck.channel-diameter',
    inputs: { nozzle: 20, ratio: 1.1 },
    expected: 20.976,
    tolerance: { absolute: 5e-4 },
    from: `${HAND}: a tenth more area`,
  },
  {
    formula: 'gooseneck.channel-diameter',
    inputs: { nozzle: 20, ratio: 1 },
    expected: 20,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: the same area',
  },
  {
    formula: 'gooseneck.flow-speed',
    inputs: { flow: 10, area: 222 },
    expected: 45,
    tolerance: { absolute: 0.05 },
    from: 'knowledge-base article on gates: 10 l/s through 222 mm2 at 45 m/s',
  },
  {
    formula: 'gooseneck.superheat',
    inputs: { pot_temperature: 425, liquidus: 387 },
    expected: 38,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: zinc at 425 degC`,
  },
  ...['speed', 'class-pressure', 'stroke', 'time'].map((what) => ({
    formula: `gooseneck.use-${what}`,
    inputs: { planned: 3, bound: 4 },
    expected: 75,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: three of four`,
  })),
  {
    formula: 'gooseneck.greatest-use',
    inputs: { speed: 94, machine: 60, class_pressure: 87, stroke: 19, time: 70 },
    expected: 94,
    tolerance: { absolute: 1e-9 },
    from: `${HAND}: the greatest of five`,
  },
];
