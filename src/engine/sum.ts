import type { Formula, FormulaInput, FormulaInputs } from '../kernel/formula.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';

/**
 * The sum of any number of values of one unit, times an optional count, as a traced value that prints its terms. The
 * formula is made for the number of terms at hand, so it is not in the catalogue.
 */
export function sumOf<U extends Unit>(id: string, title: string, unit: U, terms: readonly Traced<U>[], times?: Traced<'1'>): Traced<U> {
  const formula = formulaOf(id, title, unit, terms.length, times !== undefined);
  const numbers: Record<string, number> = {};
  for (let i = 0; i < terms.length; i += 1) numbers[nameOf(i)] = (terms[i] as Traced<U>).value;
  if (times !== undefined) numbers['times'] = times.value;
  return Traced.formula(id, formula.compute(numbers), formula, times === undefined ? terms : [...terms, times], 'inside', { numbers });
}

const names: string[] = [];

/** The name of a term by its place; made once, since castings of a plan have hundreds of sums. */
function nameOf(index: number): string {
  names[index] ??= `term_${index + 1}`;
  return names[index];
}

const made = new Map<string, Formula<FormulaInputs, Unit>>();

function formulaOf<U extends Unit>(id: string, title: string, unit: U, terms: number, times: boolean): Formula<FormulaInputs, U> {
  const key = `${id} ${unit} ${terms} ${times}`;
  let formula = made.get(key);
  if (formula === undefined) {
    formula = make(id, title, unit, terms, times);
    if (made.size < MOST) made.set(key, formula);
  }
  return formula as Formula<FormulaInputs, U>;
}

/** Kept formulas; ids with an item are without number over many plans. */
const MOST = 500;

function make<U extends Unit>(id: string, title: string, unit: U, terms: number, times: boolean): Formula<FormulaInputs, U> {
  const inputs: Record<string, FormulaInput> = {};
  const symbols = Array.from({ length: terms }, (_, i) => `x_${i + 1}`);
  for (const [i, symbol] of symbols.entries()) inputs[nameOf(i)] = { symbol, unit, meaning: 'term', range: [0, Number.MAX_VALUE], domain: 'not-negative' };
  if (times) inputs['times'] = { symbol: 'n', unit: '1', meaning: 'count', range: [1, 1e6] };
  const added = symbols.join(' + ');
  return {
    id,
    title,
    symbol: 'S',
    inputs,
    unit,
    equation: times ? `n * (${added})` : added,
    outside: 'extrapolate',
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: (x) => symbols.reduce((sum, _, i) => sum + (x[nameOf(i)] as number), 0) * (x['times'] ?? 1),
  };
}
