/** Enough for any bracket of doubles: every step at least halves it. */
const MOST_STEPS = 200;

/**
 * The zero of `f` between `low` and `high`, to the last bits of a double or to the relative `tolerance` (Ridders' method:
 * the bracket is kept, so it cannot run away).
 * @throws RangeError when `f` has the same sign at both ends, or is no number there.
 */
export function bracketedRoot(f: (x: number) => number, low: number, high: number, tolerance = Number.EPSILON): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new RangeError(`no change of sign between ${low} and ${high}`);
  let best = a;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const middle = a + (b - a) / 2;
    const fm = f(middle);
    if (fm === 0 || middle === a || middle === b) return middle;
    const curve = Math.sqrt(fm * fm - fa * fb);
    const x = middle + ((middle - a) * Math.sign(fa - fb) * fm) / curve;
    const fx = f(x);
    if (fx === 0 || Math.abs(x - best) <= tolerance * Math.abs(x)) return x;
    best = x;
    // Of the four points, the tightest pair that still holds the zero.
    if (fm * fx < 0) [a, fa, b, fb] = middle < x ? [middle, fm, x, fx] : [x, fx, middle, fm];
    else if (fa * fx < 0) [b, fb] = [x, fx];
    else [a, fa] = [x, fx];
  }
  return best;
}
