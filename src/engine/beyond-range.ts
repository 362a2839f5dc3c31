import type { Traced } from '../kernel/traced.ts';

/** Whether a figure was worked out with a number outside the range of its own formula. */
export function isBeyondRange({ formula, numbers }: Traced): boolean {
  if (formula === undefined || numbers === undefined) return false;
  return Object.entries(formula.inputs).some(([name, { range }]) => {
    const number = numbers[name];
    return number !== undefined && (number < range[0] || number > range[1]);
  });
}
