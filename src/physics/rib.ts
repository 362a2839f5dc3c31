import { defineFormula } from '../kernel/formula.ts';

const RADIANS = Math.PI / 180;

/** Greatest edge radius at the tip of a drafted rib: the two edge roundings then meet in a full round. */
export const ribTipRadius = defineFormula({
  id: 'rib.tip-radius',
  title: 'Greatest tip radius of a rib',
  symbol: 'r_1',
  inputs: {
    root_width: { symbol: 'b', unit: 'mm', meaning: 'width of the rib at its root', range: [1, 15] },
    height: { symbol: 'h_1', unit: 'mm', meaning: 'height of the rib above the wall', range: [1, 60] },
    draft: { symbol: 'a', unit: 'deg', meaning: 'draft of the rib, per side', range: [1.5, 3], domain: 'not-negative' },
  },
  unit: 'mm',
  equation: '(0.5 * b * cos(a * pi / 180) - h_1 * sin(a * pi / 180)) / (1 - sin(a * pi / 180))',
  requires: [
    { text: 'draft below 90 degrees', holds: ({ draft }) => draft < 90 },
    {
      text: 'a rib that the draft leaves wider than nothing at its tip (0.5 * root_width > height * tan(draft))',
      holds: ({ root_width, height, draft }) => 0.5 * root_width > height * Math.tan(draft * RADIANS),
    },
  ],
  outside: 'extrapolate',
  source: ['CN-MANUAL table 2-22'],
  status: 'source',
  accuracy: 'exact geometry; the handbook prints it as rounded coefficients for four heights, all eight reproduced',
  compute: ({ root_width, height, draft }) =>
    (0.5 * root_width * Math.cos(draft * RADIANS) - height * Math.sin(draft * RADIANS)) / (1 - Math.sin(draft * RADIANS)),
});
