import type { Case } from '../case.ts';

const LONGEST = 'derived, worked by hand: NADCA fill-time equation with remembered constants';
const TEXTBOOK =
  'Boothroyd, Dewhurst and Knight, Product Design for Manufacture and Assembly, die casting: form and temperatures from memory, arithmetic by hand';

const longest = (
  k: number,
  wall: number,
  gate: number,
  flow: number,
  die: number,
  solids: number,
  conversion: number,
  expected: number,
  digit: number,
): Case => ({
  formula: 'fill.longest-time',
  inputs: { k, wall, gate_temperature: gate, flow_temperature: flow, die_temperature: die, solids, conversion },
  expected,
  tolerance: { absolute: digit / 2 },
  from: LONGEST,
});

/** Temperatures of injection, liquidus and die, and the times for walls of 1, 2, 3 and 5 mm. */
const TEXTBOOK_ROWS = [
  ['zinc', 440, 387, 175, [15.1, 30.1, 45.2, 75.3]],
  ['aluminium', 635, 585, 220, [9.4, 18.7, 28.1, 46.8]],
  ['zinc-aluminium', 460, 432, 215, [12.7, 25.4, 38.1, 63.6]],
  ['copper', 948, 927, 315, [4.5, 9.1, 13.6, 22.7]],
  ['magnesium', 655, 610, 275, [9.8, 19.5, 29.3, 48.8]],
] as const;
const WALLS = [1, 2, 3, 5] as const;

export const cases: readonly Case[] = [
  longest(0.0346, 2, 650, 570, 230, 30, 4.8, 45.59, 0.01),
  longest(0.0346, 2.5, 640, 570, 220, 35, 4.8, 58.82, 0.01),
  longest(0.0346, 2.5, 640, 570, 220, 20, 4.8, 41.03, 0.01),
  longest(0.0312, 1.5, 405, 382, 200, 20, 2.5, 18.77, 0.01),
  longest(0.0312, 0.8, 405, 382, 200, 10, 2.5, 6.58, 0.01),
  longest(0.0252, 2, 620, 510, 250, 20, 3.7, 35.67, 0.01),
  longest(0.0346, 4, 700, 595, 230, 40, 5.9, 129.3, 0.1),
  longest(0.0346, 2.5, 950, 900, 350, 25, 4.7, 26.34, 0.01),
  ...TEXTBOOK_ROWS.flatMap(([family, gate_temperature, liquidus, die_temperature, times]) =>
    WALLS.map((wall, i) => ({
      formula: 'fill.recommended-time',
      inputs: { wall, gate_temperature, liquidus, die_temperature },
      expected: times[i] as number,
      tolerance: { absolute: 0.05 },
      from: `${TEXTBOOK}, ${family}`,
    })),
  ),
  {
    formula: 'fill.recommended-time',
    inputs: { wall: 2, gate_temperature: 635, liquidus: 585, die_temperature: 220 },
    expected: 18.72,
    tolerance: { absolute: 0.005 },
    from: `${TEXTBOOK}, aluminium`,
  },
];
