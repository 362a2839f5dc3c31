import { bracketedRoot } from './root.ts';

/** Ratio of specific heats of air. */
export const HEAT_RATIO = 1.4;
/** Gas constant of air, J/(kg.K). */
export const GAS_CONSTANT = 287.05;

/** Friction length 4 f L / D_h that chokes a duct entered at Mach number `mach` (Fanno flow of air; 0 < mach <= 1). */
export function fannoLength(mach: number): number {
  const square = mach * mach;
  return (1 - square) / (HEAT_RATIO * square) + ((HEAT_RATIO + 1) / (2 * HEAT_RATIO)) * Math.log(((HEAT_RATIO + 1) * square) / (2 + (HEAT_RATIO - 1) * square));
}

/**
 * Mach number at the entry of a choked duct of friction length 4 f L / D_h: the inverse of `fannoLength`.
 * Solved in w = (1/M^2 - 1)/1.2, where the equation reads w - ln(1 + w) = q and keeps its digits near Mach 1.
 * @throws RangeError for a friction length below 0.
 */
export function entryMach(frictionLength: number): number {
  if (!(frictionLength >= 0)) throw new RangeError(`a friction length is 0 or more, not ${frictionLength}`);
  const q = (HEAT_RATIO * frictionLength * 2) / (HEAT_RATIO + 1);
  const s = Math.sqrt(2 * q);
  // For a very short duct x - ln(1 + x) has no digits left; there the series is exact to the last of them.
  const w = q < 1e-8 ? s + s ** 2 / 3 + s ** 3 / 36 : bracketedRoot((x) => x - Math.log1p(x) - q, 0, 2 * (s + q));
  return 1 / Math.sqrt(1 + ((HEAT_RATIO + 1) / 2) * w);
}

/**
 * The same Mach number as printed lines in mathjs syntax, from the friction length `X` to `last`: Newton's method from
 * a start that is exact for short ducts. Three steps are exact to ten digits up to a friction length of 20.
 */
export const ENTRY_MACH_LINES = {
  last: 'M',
  lines: [
    { symbol: 'q', equation: '7 / 6 * X' },
    { symbol: 'w_0', equation: 'sqrt(2 * q) + 2 / 3 * q' },
    // The least divisor matters at X = 0 only, where w is 0 and the step would divide by it.
    ...[1, 2, 3].map((n) => ({
      symbol: `w_${n}`,
      equation: `((1 + w_${n - 1}) * (log(1 + w_${n - 1}) + q) - w_${n - 1}) / max(w_${n - 1}, 1e-12)`,
    })),
    { symbol: 'M', equation: '1 / sqrt(1 + 1.2 * w_3)' },
  ],
} as const;
