import type { Formula, FormulaInput, FormulaInputs } from '../kernel/formula.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';

/**
 * The sum of any number of values of one unit, times an optional count, as a traced value that prints its terms. The
 * formula is made for the number of terms at hand, so it is not in the catalogue.
 */
export function sumOf<U extends Unit>(id: string, title: string, unit: U, terms: readonly Traced<U>[], times?: Traced<'1'>): Traced<U> {
  const inputs: Record<string, FormulaInput> = {};
  terms.forEach((_, index) => {
    inputs[`term_${index + 1}`] = { symbol: `x_${index + 1}`, unit, meaning: 'term', range: [0, Number.MAX_VALUE], domain: 'not-negative' };
  });
  if (times !== undefined) inputs['times'] = { symbol: 'n', unit: '1', meaning: 'count', range: [1, 1e6] };
  const added = terms.map((_, index) => `x_${index + 1}`).join(' + ');
  const formula: Formula<FormulaInputs, U> = {
    id,
    title,
    symbol: 'S',
    inputs,
    unit,
    equation: times === undefined ? added : `n * (${added})`,
    outside: 'extrapolate',
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: (x) => terms.reduce((sum, _, index) => sum + (x[`term_${index + 1}`] as number), 0) * (x['times'] ?? 1),
  };
  const numbers = Object.fromEntries([
    ...terms.map((term, index) => [`term_${index + 1}`, term.value]),
    ...(times === undefined ? [] : [['times', times.value]]),
  ]);
  return Traced.formula(id, formula.compute(numbers), formula, times === undefined ? terms : [...terms, times], 'inside', { numbers });
}
