import type { Formula, FormulaInput, FormulaInputs } from '../kernel/formula.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';

// Formulas made for the number of values at hand; like sums they are not in the catalogue, and print what they come from.

const ANY = Number.MAX_VALUE;
const term = (symbol: string, unit: Unit, meaning: string): FormulaInput => ({ symbol, unit, meaning, range: [-ANY, ANY], domain: 'any' });

function made<U extends Unit>(
  id: string,
  title: string,
  unit: U,
  inputs: Record<string, FormulaInput>,
  equation: string,
  compute: (x: Readonly<Record<string, number>>) => number,
): Formula<FormulaInputs, U> {
  return {
    id,
    title,
    symbol: 'x',
    inputs,
    unit,
    equation,
    outside: 'extrapolate',
    source: [],
    status: 'derived',
    accuracy: 'exact',
    compute: compute as never,
  };
}

function apply<U extends Unit>(formula: Formula<FormulaInputs, U>, parents: readonly Traced[], note?: string): Traced<U> {
  const names = Object.keys(formula.inputs);
  const numbers = Object.fromEntries(names.map((name, i) => [name, (parents[i] as Traced).value]));
  const value = (formula.compute as (x: Readonly<Record<string, number>>) => number)(numbers);
  return Traced.formula(formula.id, value, formula, parents, 'inside', { note, numbers });
}

function extreme<U extends Unit>(which: 'min' | 'max', id: string, title: string, terms: readonly Traced<U>[], note?: string): Traced<U> {
  const unit = (terms[0] as Traced<U>).unit;
  const symbols = terms.map((_, i) => `x_${i + 1}`);
  const inputs = Object.fromEntries(symbols.map((symbol, i) => [`term_${i + 1}`, term(symbol, unit, 'term')]));
  return apply(
    made(id, title, unit, inputs, `${which}(${symbols.join(', ')})`, (x) => Math[which](...Object.values(x))),
    terms,
    note,
  );
}

/** The least of some values of one unit. */
export function leastOf<U extends Unit>(id: string, title: string, terms: readonly Traced<U>[], note?: string): Traced<U> {
  return extreme('min', id, title, terms, note);
}

/** The greatest of some values of one unit. */
export function greatestOf<U extends Unit>(id: string, title: string, terms: readonly Traced<U>[], note?: string): Traced<U> {
  return extreme('max', id, title, terms, note);
}

/** The greatest of some values over the least of them. */
export function spreadOf<U extends Unit>(id: string, title: string, terms: readonly Traced<U>[]): Traced<'1'> {
  const unit = (terms[0] as Traced<U>).unit;
  const symbols = terms.map((_, i) => `x_${i + 1}`);
  const inputs = Object.fromEntries(symbols.map((symbol, i) => [`term_${i + 1}`, term(symbol, unit, 'term')]));
  const list = symbols.join(', ');
  return apply(
    made(id, title, '1', inputs, `max(${list}) / min(${list})`, (x) => Math.max(...Object.values(x)) / Math.min(...Object.values(x))),
    terms,
  );
}

/** A value for each of several kinds of things, and how many there are of each. */
export interface Counted<U extends Unit> {
  readonly value: Traced<U>;
  readonly count: Traced<'1'>;
}

function countedInputs(terms: readonly Counted<Unit>[]): Record<string, FormulaInput> {
  return Object.fromEntries(
    terms.flatMap(({ value }, i) => [
      [`term_${i + 1}`, term(`x_${i + 1}`, value.unit, 'of one')] as const,
      [`count_${i + 1}`, term(`n_${i + 1}`, '1', 'how many')] as const,
    ]),
  );
}

/** Values of one unit, each as often as it is counted, added up. */
export function totalOf<U extends Unit>(id: string, title: string, terms: readonly Counted<U>[], note?: string): Traced<U> {
  const unit = (terms[0] as Counted<U>).value.unit;
  const equation = terms.map((_, i) => `n_${i + 1} * x_${i + 1}`).join(' + ');
  const sum = (x: Readonly<Record<string, number>>): number =>
    terms.reduce((all, _, i) => all + (x[`term_${i + 1}`] as number) * (x[`count_${i + 1}`] as number), 0);
  return apply(
    made(id, title, unit, countedInputs(terms as readonly Counted<Unit>[]), equation, sum),
    terms.flatMap(({ value, count }) => [value, count]),
    note,
  );
}

/** The mean of some values, each with the weight of another and as often as it is counted. */
export function meanOf<U extends Unit, W extends Unit>(
  id: string,
  title: string,
  terms: readonly (Counted<U> & { readonly weight: Traced<W> })[],
  note?: string,
): Traced<U> {
  const unit = (terms[0] as Counted<U>).value.unit;
  const inputs = {
    ...countedInputs(terms as unknown as readonly Counted<Unit>[]),
    ...Object.fromEntries(terms.map(({ weight }, i) => [`weight_${i + 1}`, term(`w_${i + 1}`, weight.unit, 'weight of one')])),
  };
  const products = terms.map((_, i) => `n_${i + 1} * w_${i + 1}`);
  const equation = `(${products.map((one, i) => `${one} * x_${i + 1}`).join(' + ')}) / (${products.join(' + ')})`;
  const mean = (x: Readonly<Record<string, number>>): number => {
    const weights = terms.map((_, i) => (x[`count_${i + 1}`] as number) * (x[`weight_${i + 1}`] as number));
    const whole = weights.reduce((all, one) => all + one, 0);
    return weights.reduce((all, one, i) => all + one * (x[`term_${i + 1}`] as number), 0) / whole;
  };
  return apply(
    made(id, title, unit, inputs, equation, mean),
    [...terms.flatMap(({ value, count }) => [value, count]), ...terms.map(({ weight }) => weight)],
    note,
  );
}

/** All of one kind of things, as a share in % of a whole of the same unit. */
export function shareOf<U extends Unit>(id: string, title: string, { value, count }: Counted<U>, whole: Traced<U>): Traced<'%'> {
  const { unit } = value;
  const inputs = { each: term('x_1', unit, 'of one'), count: term('n', '1', 'how many'), whole: term('x', unit, 'whole') };
  const formula = made(id, title, '%', inputs, '100 * n * x_1 / x', (x) => (100 * (x['count'] as number) * (x['each'] as number)) / (x['whole'] as number));
  return apply(formula, [value, count, whole]);
}
