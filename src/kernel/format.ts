import type { Unit } from './units.ts';

/**
 * A number as a plan prints it: three significant digits, four between 1000 and 10000, no grouping, no exponent for
 * engineering sizes. These are estimates; more digits would claim what the figures do not hold. A whole number that ends in
 * zeros after its fourth digit, such as 1125000 castings, is one that somebody gave, and stands as it is.
 */
export function formatNumber(value: number, digits?: number): string {
  if (!Number.isFinite(value)) return String(value);
  if (digits !== undefined) return withoutNegativeZero(value.toFixed(digits));
  const size = Math.abs(value);
  if (size === 0) return '0';
  if (size >= 1e9 || size < 1e-4) return value.toExponential(2);
  const significant = size >= 1000 && (size < 10000 || Number(size.toPrecision(4)) === size) ? 4 : 3;
  return withoutNegativeZero(String(Number(value.toPrecision(significant))));
}

/** Number and unit with a space (SI Brochure 5.4.3), the bare number for dimension one. */
export function formatQuantity(value: number, unit: Unit, digits?: number): string {
  const number = formatNumber(value, digits);
  return unit === '1' ? number : `${number} ${unit}`;
}

/** A quantity with as many digits as tell it from a bound that it is beyond: 0.49995 mm beside 0.5 mm, where three digits would print both alike. */
export function formatBeside(value: number, bound: number, unit: Unit): string {
  const other = formatNumber(bound);
  let number = formatNumber(value);
  for (let digits = 4; digits <= 17 && number === other && value !== bound; digits += 1) number = String(Number(value.toPrecision(digits)));
  return unit === '1' ? number : `${number} ${unit}`;
}

function withoutNegativeZero(text: string): string {
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}
