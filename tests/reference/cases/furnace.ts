import type { Case } from '../case.ts';

const hand = (what: string): string => `derived, worked by hand: ${what}`;
const exact = { relative: 1e-9 } as const;
// A shot of 2 kg with two castings of 0.5 kg, 60 shots an hour, 5 % rejects, 4 % lost in melting.
const SHOP = 'a shot of 2 kg with two castings of 0.5 kg, 60 an hour, 5 % rejects, 4 % melt loss';

export const cases: readonly Case[] = [
  { formula: 'furnace.poured', inputs: { shot: 2, shots: 60 }, expected: 120, tolerance: exact, from: hand(`${SHOP}: 2 kg x 60`) },
  { formula: 'furnace.melted', inputs: { poured: 120, loss: 4 }, expected: 125, tolerance: exact, from: hand(`${SHOP}: 120 / 0.96`) },
  { formula: 'furnace.melted', inputs: { poured: 120, loss: 0 }, expected: 120, tolerance: exact, from: 'limiting case: nothing is lost' },
  { formula: 'furnace.returned', inputs: { poured: 120, good: 114, part_mass: 0.5 }, expected: 63, tolerance: exact, from: hand(`${SHOP}: 120 - 57`) },
  {
    formula: 'furnace.returned',
    inputs: { poured: 57, good: 114, part_mass: 0.5 },
    expected: 0,
    tolerance: { absolute: 1e-9 },
    from: 'limiting case: no runner, no reject',
  },
  {
    formula: 'furnace.new-metal',
    inputs: { melted: 125, returned: 63 },
    expected: 114 * (0.5 + ((1 / 0.95) * 0.04) / 0.96),
    tolerance: exact,
    from: hand(`${SHOP}: the balance per good part M_p + M_s / (1 - s) l / (1 - l), times 114 an hour`),
  },
  { formula: 'furnace.new-metal', inputs: { melted: 125 }, expected: 125, tolerance: exact, from: 'limiting case: returns are sold' },
  { formula: 'furnace.hold', inputs: { capacity: 800, usable: 60, poured: 120 }, expected: 4, tolerance: exact, from: hand('480 kg at 120 kg/h') },
  { formula: 'furnace.melt-use', inputs: { melted: 125, rate: 500 }, expected: 25, tolerance: exact, from: hand('125 of 500 kg/h') },
];
