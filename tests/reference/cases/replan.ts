import type { Case } from '../case.ts';

const HAND = 'derived, worked by hand: two cavity sizes, each the dimension times one plus its allowance';

export const cases: readonly Case[] = [
  // 200.00 mm cut at 0.6 % is 201.20 mm; at 0.7 % it is 201.40 mm.
  { formula: 'replan.size-shift', inputs: { dimension: 200, before: 0.6, after: 0.7 }, expected: 0.2, tolerance: { absolute: 1e-9 }, from: HAND },
  // 254 mm: 255.524 mm at 0.6 %, 255.397 mm at 0.55 %.
  { formula: 'replan.size-shift', inputs: { dimension: 254, before: 0.6, after: 0.55 }, expected: -0.127, tolerance: { absolute: 1e-9 }, from: HAND },
  {
    formula: 'replan.shift-share',
    inputs: { shift: -0.1, tolerance: 0.4 },
    expected: 25,
    tolerance: { absolute: 1e-9 },
    from: 'derived, worked by hand: 0.1 mm of 0.4 mm',
  },
];
