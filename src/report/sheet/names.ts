/** The sheets, each for one reader: die maker, setter at the machine, first shots, estimator and buyer. */
export const SHEETS = ['die', 'shot', 'trial', 'quote'] as const;
export type SheetName = (typeof SHEETS)[number];
