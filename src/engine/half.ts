import type { Formula, FormulaInputs } from '../kernel/formula.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';

/** Half of a value, filed under its own id with the reason why half. */
export function halfOf<U extends Unit>(id: string, note: string, whole: Traced<U>): Traced<U> {
  const formula: Formula<FormulaInputs, U> = {
    id,
    title: 'Half',
    symbol: 'h',
    inputs: { whole: { symbol: 'w', unit: whole.unit, meaning: 'whole', range: [0, Number.MAX_VALUE], domain: 'not-negative' } },
    unit: whole.unit,
    equation: 'w / 2',
    outside: 'extrapolate',
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: ({ whole: w }) => (w as number) / 2,
  };
  return Traced.formula(id, whole.value / 2, formula, [whole], 'inside', { note, numbers: { whole: whole.value } });
}
