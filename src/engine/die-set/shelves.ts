/** Rows with more castings than this keep the order in which they were filled, mirrored about the middle. */
const MOST_ORDERED = 6;

/**
 * Spreads castings over so many rows, so that the rows come out about as wide: the widest castings first, each into the row
 * that is the narrowest so far. Castings of one part that are alike stand in the order given.
 */
export function spread<T>(castings: readonly T[], rows: number, size: (one: T) => { readonly width: number; readonly height: number }): T[][] {
  const filled = Array.from({ length: rows }, () => ({ width: 0, castings: [] as T[] }));
  const widest = [...castings].sort((one, other) => size(other).width - size(one).width || size(other).height - size(one).height);
  for (const one of widest) {
    const row = filled.reduce((best, next) => (next.width < best.width - 1e-9 ? next : best));
    row.castings.push(one);
    row.width += size(one).width;
  }
  return filled.map((row) => row.castings);
}

/** The orders of a row that look different; for a long row only one, with its like castings on both sides of the middle. */
export function ordersOf<T>(row: readonly T[], kind: (one: T) => string): T[][] {
  if (row.length > MOST_ORDERED) return [mirrored(row)];
  const orders: T[][] = [];
  const fill = (order: T[], left: readonly T[]): void => {
    if (left.length === 0) orders.push(order);
    const seen = new Set<string>();
    for (const [i, one] of left.entries()) {
      if (seen.has(kind(one))) continue;
      seen.add(kind(one));
      fill([...order, one], [...left.slice(0, i), ...left.slice(i + 1)]);
    }
  };
  fill([], row);
  return orders;
}

/** Every other casting to the left of the middle, the rest to the right. */
function mirrored<T>(row: readonly T[]): T[] {
  return [...row.filter((_, i) => i % 2 === 0).reverse(), ...row.filter((_, i) => i % 2 === 1)];
}
