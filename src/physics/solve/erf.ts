/** Terms of the series are added until they no longer count; beyond this the function is 1 to the last bit. */
const ONE_FROM = 6;

/** The error function, for x >= 0, by its series of positive terms: good to the last digits of a double. */
export function erf(x: number): number {
  if (x >= ONE_FROM) return 1;
  let term = x;
  let sum = x;
  for (let n = 1; term > sum * Number.EPSILON; n += 1) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x) * sum;
}
