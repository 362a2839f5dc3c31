import type { Calculation } from '../engine/calculate.ts';
import { formatNumber, formatQuantity } from '../kernel/format.ts';
import { equationOf, type Formula, type FormulaInput, otherwiseOf, substitute } from '../kernel/formula.ts';
import { convert, type Unit } from '../kernel/units.ts';
import { alignRows } from './columns.ts';
import { fieldsText } from './fields.ts';
import { jsonText } from './json-text.ts';
import { originText, RANGE_WORDS } from './words.ts';

const OUTSIDE: Readonly<Record<Formula['outside'], string>> = {
  refuse: 'refused',
  clamp: 'the nearest value inside is used, with a finding',
  extrapolate: 'worked out all the same, with a finding',
};

/** What `explain` prints of a formula. */
export function formulaText(formula: Formula): string {
  const inputs = Object.entries(formula.inputs);
  return fieldsText(`${formula.id}: ${formula.title}`, [
    ['formula', equationOf(formula)],
    ['where', (formula.where ?? []).map((line) => `${line.symbol} = ${line.equation}`)],
    ['gives', `${formula.symbol} in ${unitText(formula.unit)}`],
    ['inputs', alignRows(inputs.map(([name, input]) => [name, input.symbol, unitText(input.unit), rangeText(input), input.meaning]))],
    ['needs', (formula.requires ?? []).map((condition) => condition.text)],
    ['outside its range', OUTSIDE[formula.outside]],
    ['accuracy', formula.accuracy],
    ['source', originText(formula.source, formula.status)],
    ['by hand', [exampleCall(formula)]],
  ]);
}

function unitText(unit: Unit): string {
  return unit === '1' ? 'a pure number' : unit;
}

function rangeText(input: FormulaInput): string {
  const [least, greatest] = input.range;
  const range = input.logical === true ? 'true or false' : `${formatNumber(least)} to ${formatQuantity(greatest, input.unit)}`;
  const otherwise = otherwiseOf(input);
  return otherwise === undefined ? range : `${range}, else ${otherwise}`;
}

/** The call to fill in and paste into a shell. */
function exampleCall(formula: Formula): string {
  const args = Object.entries(formula.inputs)
    .filter(([, input]) => otherwiseOf(input) === undefined)
    .map(([name, input]) => (input.unit === '1' ? `${name}=NUMBER` : `${name}="NUMBER ${input.unit}"`));
  return `diewright calc ${[formula.id, ...args].join(' ')}`;
}

/** `where` lines and the equation with the numbers put in, and the result. */
export function substitutionOf(calculation: Calculation): string[] {
  const { formula, numbers, value, unit } = calculation;
  return substitute(formula, numbers, convert(value, unit, formula.unit));
}

/** What `calc` prints. */
export function calculationText(calculation: Calculation): string {
  const { formula, value, unit, range } = calculation;
  return fieldsText(`${formula.id}: ${formula.title}`, [
    ['formula', [equationOf(formula), ...(formula.where ?? []).map((line) => `with ${line.symbol} = ${line.equation}`)]],
    ['with numbers', substitutionOf(calculation)],
    ['result', formatQuantity(value, unit)],
    ['range', range === 'inside' ? undefined : RANGE_WORDS[range]],
    ['accuracy', formula.accuracy],
    ['source', originText(formula.source, formula.status)],
  ]);
}

/** What `calc --json` prints: the value with all its digits, the rest as the text form has it. */
export function calculationJson(calculation: Calculation): string {
  const { formula, value, unit, range } = calculation;
  const { id, source, status } = formula;
  return jsonText({ id, value, unit, substitution: substitutionOf(calculation).join('\n'), source, status, range });
}
