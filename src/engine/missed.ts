import type { Traced } from '../kernel/traced.ts';

/** A figure is to be no less than its bound, or no more. */
export type BoundSide = 'least' | 'most';

/** Steps of rounding are no miss. */
const SLACK = 1e-9;

/** Whether a figure lies beyond a bound; both are in the same unit. */
export function missesBound(figure: Traced, bound: Traced, side: BoundSide): boolean {
  if (figure.unit !== bound.unit) throw new TypeError(`${figure.id} in ${figure.unit} cannot be held against ${bound.id} in ${bound.unit}`);
  const beyond = side === 'least' ? bound.value - figure.value : figure.value - bound.value;
  return beyond > SLACK * Math.abs(bound.value);
}
