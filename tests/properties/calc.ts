import fc from 'fast-check';
import { fillIn } from '../../src/kernel/formula.ts';
import { formulaById } from '../../src/physics/index.ts';

/** The result of a formula by id; inputs left out take their defaults. */
export function calc(id: string, inputs: Readonly<Record<string, number>>): number {
  const formula = formulaById(id);
  if (formula === undefined) throw new Error(`no formula ${id}`);
  const numbers: Record<string, number> = { ...inputs };
  fillIn(formula, numbers);
  for (const name of Object.keys(formula.inputs)) if (numbers[name] === undefined) throw new Error(`${id}: ${name} is missing`);
  return formula.compute(numbers);
}

/** A number between two ends, without the values next to zero that drown a ratio in rounding. */
export const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

/** Runs a property over numbers drawn from the ranges given. */
export function forAll(ranges: readonly (readonly [number, number])[], holds: (...numbers: number[]) => void): void {
  const property = fc.property(fc.tuple(...ranges.map(([min, max]) => between(min, max))), (numbers) => {
    holds(...numbers);
  });
  fc.assert(property, { seed: 20240917, numRuns: 200 });
}
