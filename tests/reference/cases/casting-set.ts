import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand';
const EXACT = { relative: 1e-9 };

/** Castings of several parts in one die: shots for the numbers needed, pressure centre, hours and shares. */
export const cases: readonly Case[] = [
  { formula: 'set.sets-for-parts', inputs: { castings: 900000, count: 4 }, expected: 225000, tolerance: EXACT, from: `${HAND}: 900000 / 4` },
  { formula: 'set.surplus', inputs: { sets: 24000, count: 1, needed: 9000 }, expected: 15000, tolerance: EXACT, from: `${HAND}: 24000 - 9000` },
  { formula: 'set.surplus', inputs: { sets: 24000, count: 2, needed: 48000 }, expected: 0, tolerance: { absolute: 1e-9 }, from: `${HAND}: none left over` },
  { formula: 'set.surplus-share', inputs: { surplus: 15000, sets: 24000, count: 1 }, expected: 62.5, tolerance: EXACT, from: `${HAND}: 15 of 24` },
  {
    formula: 'set.offset',
    inputs: { centre: 20, castings: 300, area: 400 },
    expected: 15,
    tolerance: EXACT,
    from: `${HAND}: statics, moment of 300 cm2 at 20 mm over 400 cm2 of which the rest lies in the middle`,
  },
  {
    formula: 'clamp.pressure-in-die',
    inputs: { centre: 10, castings: 400, feeder_diameter: 80, distance: 200, area: 500 },
    expected: (10 * 400 - (Math.PI * 80 ** 2 * 200) / 400) / 500,
    tolerance: EXACT,
    from: `${HAND}: statics, the biscuit of 50.27 cm2 pulls the other way: (4000 - 10053) / 500 = -12.1`,
  },
  {
    formula: 'set.offset',
    inputs: { centre: -20, castings: 300, area: 400 },
    expected: -15,
    tolerance: EXACT,
    from: `${HAND}: on the other side as far`,
  },
  {
    formula: 'set.die-hours',
    inputs: { all: 1600, castings: 2, exponent: 0.7 },
    expected: 800 * 2 ** 0.7,
    tolerance: EXACT,
    from: `${HAND}: 800 h each, and the rule of two equal cavities: 1300 h`,
  },
  {
    formula: 'set.die-hours',
    inputs: { all: 700, castings: 1, exponent: 0.7 },
    expected: 700,
    tolerance: EXACT,
    from: `${HAND}: one casting is a die of its own`,
  },
  { formula: 'set.tested-spent', inputs: { spent: 5, share: 97 }, expected: 4.85, tolerance: EXACT, from: `${HAND}: 97 % of 5` },
  { formula: 'set.casting-share', inputs: { whole: 2.4, share: 60, count: 3 }, expected: 0.48, tolerance: EXACT, from: `${HAND}: 1.44 over three castings` },
];
