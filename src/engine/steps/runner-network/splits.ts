/** A split of the runner between the cavities: how many branches, along the columns or the rows, and how many cavities lie that way before it. */
export interface Split {
  readonly branches: number;
  readonly along: 'columns' | 'rows';
  readonly cavities: number;
}

/** Branches of splits that follow each other, or that are drawn as one. */
export const branchesOf = (splits: readonly Split[]): number => splits.reduce((all, { branches }) => all * branches, 1);

/**
 * Splits from the middle of the cavities to the single cavity: first between rows, then between columns, so that the
 * runner stands in the gap between two columns. Into two or three branches wherever the count allows, so that all ways
 * are alike; a count with a larger prime factor needs a split that wide.
 */
export function splitsOf(columns: number, rows: number): Split[] {
  return [...along('rows', rows), ...along('columns', columns)];
}

/**
 * Splits that are drawn as one: at the foot of a sprue the runs part at once, as many as find room round it, instead of in
 * twos and threes one after the other. That saves length, and each run is thin enough to freeze with the castings.
 * @param most runs that find room round the sprue
 */
export function partAtOnce(splits: readonly Split[], most: number): Split[][] {
  let runs = 1;
  const first = splits.findIndex(({ branches }) => {
    runs *= branches;
    return runs > most;
  });
  const joined = first === -1 ? splits.length : Math.max(1, first);
  return [splits.slice(0, joined), ...splits.slice(joined).map((split) => [split])].filter((node) => node.length > 0);
}

function along(way: Split['along'], count: number): Split[] {
  const splits: Split[] = [];
  let left = count;
  for (const branches of primeFactors(count)) {
    splits.push({ branches, along: way, cavities: left });
    left /= branches;
  }
  return splits;
}

/** In rising order; none for 1. */
function primeFactors(count: number): number[] {
  const factors: number[] = [];
  let left = count;
  for (let factor = 2; left > 1; factor += 1) {
    while (left % factor === 0) {
      factors.push(factor);
      left /= factor;
    }
  }
  return factors;
}
