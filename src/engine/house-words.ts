import type { Words } from '../rulebook/house-fits.ts';
import { VOCABULARY, wordOf } from './vocabulary/index.ts';

/** What every part description settles, with its defaults, before the first decision is taken. */
const ALWAYS_GIVEN = [
  'alloy.id',
  'alloy.family',
  'alloy.chamber',
  'part.envelope-x',
  'part.envelope-y',
  'part.envelope-z',
  'part.wall-nominal',
  'quality.use',
  'quality.finish',
  'quality.heat-treatment',
  'quality.welded',
  'quality.cold-shut',
  'quality.markets',
] as const satisfies readonly (keyof typeof VOCABULARY)[];

/** The words that house rules may use. */
export const HOUSE_WORDS: Words = { vocabulary: wordOf, ids: Object.keys(VOCABULARY), given: ALWAYS_GIVEN };
