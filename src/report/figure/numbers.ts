import { formatQuantity } from '../../kernel/format.ts';
import type { Traced } from '../../kernel/traced.ts';
import type { Unit } from '../../kernel/units.ts';

/** Greatest number that is drawn: products of two still are numbers, and differences keep their digits. */
const GREATEST = 1e12;

/** Whether a number can be drawn. */
export function isDrawable(value: number): boolean {
  return Math.abs(value) <= GREATEST;
}

/** The values of the plan by id: a length in a figure is printed no finer than the value that it shows. */
export type PlanValues = ReadonlyMap<string, Traced>;

/** Decimals with which the plan prints the first of the values that is there in this unit, where it says how many. */
export function decimalsOf(ids: readonly string[], unit: Unit, values: PlanValues): number | undefined {
  return ids.map((id) => values.get(id)).find((value) => value?.unit === unit)?.decimals;
}

/** A length as drawn, with its unit, in the digits of the value that it shows. */
export function lengthText(length: number, unit: Unit, ids: readonly string[], values: PlanValues): string {
  return formatQuantity(length, unit, decimalsOf(ids, unit, values));
}
