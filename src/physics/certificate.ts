import { defineFormula } from '../kernel/formula.ts';

const share = (symbol: string, element: string, greatest: number) =>
  ({ symbol, unit: '%', meaning: `share of ${element} in the melt`, range: [0, greatest], domain: 'not-negative' }) as const;

/** Tendency of an aluminium melt to drop hard intermetallic sludge of iron, manganese and chromium. */
export const sludgeFactor = defineFormula({
  id: 'certificate.sludge-factor',
  title: 'Sludge factor',
  symbol: 'SF',
  inputs: { iron: share('w_1', 'iron', 2), manganese: share('w_2', 'manganese', 1), chromium: share('w_3', 'chromium', 0.5) },
  unit: '%',
  equation: 'w_1 + 2 * w_2 + 3 * w_3',
  outside: 'extrapolate',
  source: ['SLUDGE-ANSWER metallurgy answer 2016/3'],
  status: 'source',
  accuracy: 'rule of the trade; whether sludge forms depends on the holding temperature too',
  compute: ({ iron, manganese, chromium }) => iron + 2 * manganese + 3 * chromium,
});

/** Iron over manganese of a magnesium melt: manganese makes iron harmless for corrosion up to a ratio. */
export const ironOverManganese = defineFormula({
  id: 'certificate.iron-over-manganese',
  title: 'Iron over manganese',
  symbol: 'r',
  inputs: { iron: share('w_1', 'iron', 0.05), manganese: { symbol: 'w_2', unit: '%', meaning: 'share of manganese in the melt', range: [0.05, 1] } },
  unit: '1',
  equation: 'w_1 / w_2',
  outside: 'extrapolate',
  source: [],
  status: 'derived',
  accuracy: 'exact',
  compute: ({ iron, manganese }) => iron / manganese,
});
