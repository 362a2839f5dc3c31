/** Counts of cavities that lie in a balanced layout, with runners of equal length. */
export const BALANCED_COUNTS = [1, 2, 4, 6, 8, 12, 16] as const;
