import { checkNumbers, isPossible, Refusal } from '../kernel/apply.ts';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { type Formula, type FormulaInput, fillIn } from '../kernel/formula.ts';
import { inUnit, readQuantity, readUnit } from '../kernel/quantity.ts';
import { nearestWord, nearestWords, orList } from '../kernel/spelling.ts';
import type { RangeVerdict } from '../kernel/traced.ts';
import { convert, dimensionOf, type Unit, unitsOf } from '../kernel/units.ts';
import { FORMULAS, formulaById } from '../physics/index.ts';

/** A formula worked out by hand. `numbers` are in the units of the formula, `value` is in `unit`. */
export interface Calculation {
  readonly formula: Formula;
  readonly numbers: Readonly<Record<string, number>>;
  readonly value: number;
  readonly unit: Unit;
  readonly range: RangeVerdict;
}

export interface CalculationRequest {
  /** Id of the formula. */
  readonly formula: string;
  /** Names and quantities as people type them, such as `velocity` and `45 m/s`. */
  readonly given: readonly { readonly name: string; readonly text: string }[];
  /** Unit in which the result is wanted; the formula's own when absent. */
  readonly unit?: string;
}

/**
 * Works out one formula from texts. Everything that is wrong with the request is named together. A value outside the
 * range of a formula that goes on all the same gives both a result and a finding.
 */
export function calculate(request: CalculationRequest): { readonly calculation?: Calculation; readonly diagnostics: readonly Diagnostic[] } {
  const formula = formulaById(request.formula);
  if (formula === undefined) {
    const near = nearestWords(
      request.formula,
      FORMULAS.map((candidate) => candidate.id),
    );
    return {
      diagnostics: [
        fault(
          'unknown-formula',
          `no formula is called "${request.formula}"${near.length === 0 ? '' : `; did you mean ${orList(near)}?`}`,
          'see "diewright list formulas"',
        ),
      ],
    };
  }
  const { numbers, diagnostics } = readInputs(formula, request.given);
  const unit = resultUnit(formula, request.unit, diagnostics);
  const outOfRange = Object.keys(formula.inputs).flatMap((name) => (Object.hasOwn(numbers, name) ? outside(formula, name, numbers[name] as number) : []));
  const findings = outOfRange.map(({ finding }) => finding);
  if (diagnostics.length > 0 || unit === undefined) return { diagnostics: [...diagnostics, ...findings] };
  if (outOfRange.some(({ refused }) => refused)) return { diagnostics: findings };
  try {
    const checked = checkNumbers(formula, numbers);
    const result = formula.compute(checked.numbers);
    if (!Number.isFinite(result)) throw new Refusal(`range/${formula.id}`, `${formula.title} has no finite result for these inputs`, 'check the inputs');
    const calculation = { formula, numbers: checked.numbers, value: convert(result, formula.unit, unit), unit, range: checked.verdict };
    return { calculation, diagnostics: findings };
  } catch (error) {
    if (error instanceof Refusal) return { diagnostics: [...findings, { code: error.code, severity: 'error', message: error.message, fix: error.fix }] };
    throw error;
  }
}

/** Answers to an input that is a yes or a no. */
const TRUTH: ReadonlyMap<string, number> = new Map([
  ['true', 1],
  ['yes', 1],
  ['1', 1],
  ['false', 0],
  ['no', 0],
  ['0', 0],
]);

function fault(code: string, message: string, fix: string): Diagnostic {
  return { code: `calc/${code}`, severity: 'error', message, fix };
}

function readInputs(formula: Formula, given: CalculationRequest['given']): { numbers: Record<string, number>; diagnostics: Diagnostic[] } {
  const names = Object.keys(formula.inputs);
  const numbers: Record<string, number> = {};
  const diagnostics: Diagnostic[] = [];
  const seen = new Set<string>();
  for (const { name, text } of given) {
    const input = Object.hasOwn(formula.inputs, name) ? formula.inputs[name] : undefined;
    if (input === undefined) {
      const near = nearestWord(name, names);
      diagnostics.push(
        fault(
          'unknown-input',
          `${formula.id} has no input "${name}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
          `its inputs are ${names.join(', ')}`,
        ),
      );
    } else if (seen.has(name)) diagnostics.push(fault('input-twice', `${name} is given twice`, 'give each input once'));
    else {
      seen.add(name);
      if (input.logical === true) {
        const truth = TRUTH.get(text.trim().toLowerCase());
        if (truth !== undefined) numbers[name] = truth;
        else diagnostics.push(fault('not-true-or-false', `${name} (${input.meaning}): "${text}" is not a yes or a no`, `write ${name}=true or ${name}=false`));
        continue;
      }
      const dimension = dimensionOf(input.unit);
      const parsed = readQuantity(text, dimension, dimension === 'number' ? input.unit : undefined);
      if (parsed.ok) numbers[name] = inUnit(parsed.quantity, input.unit);
      else {
        const others = unitsOf(dimension).filter((unit) => unit !== input.unit);
        const withUnit = `write ${name}="${text.trim()} ${input.unit}"${others.length === 0 ? '' : `, or with another unit: ${orList(others)}`}`;
        const fix = parsed.fault.code === 'bare-number' ? withUnit : (parsed.fault.fix ?? `give it in ${input.unit}`);
        diagnostics.push(fault(parsed.fault.code, `${name} (${input.meaning}): ${parsed.fault.message}`, fix));
      }
    }
  }
  for (const [name, input] of Object.entries(formula.inputs)) {
    if (seen.has(name) || input.default !== undefined || input.otherwise !== undefined) continue;
    diagnostics.push(fault('missing-input', `${name} is missing: ${input.meaning}`, `add ${name}=${input.unit === '1' ? 'NUMBER' : `"NUMBER ${input.unit}"`}`));
  }
  // What follows from the others is worked out only when all of them are there.
  if (diagnostics.length === 0) fillIn(formula, numbers);
  return { numbers, diagnostics };
}

function resultUnit(formula: Formula, asked: string | undefined, diagnostics: Diagnostic[]): Unit | undefined {
  if (asked === undefined) return formula.unit;
  const unit = readUnit(asked);
  const dimension = dimensionOf(formula.unit);
  if (unit !== undefined && dimensionOf(unit) === dimension) return unit;
  const why = unit === undefined ? `"${asked}" is not a unit` : `"${asked}" is a unit of ${dimensionOf(unit)}, but the result is of the kind ${dimension}`;
  diagnostics.push(fault('wrong-result-unit', why, `write one of ${orList(unitsOf(dimension))}`));
  return undefined;
}

/** One input held against its own domain and range, so that all that lie outside are named and not the first alone. */
function outside(formula: Formula, name: string, value: number): { readonly finding: Diagnostic; readonly refused: boolean }[] {
  const input = formula.inputs[name] as FormulaInput;
  const possible = isPossible(input, value);
  try {
    checkNumbers({ ...formula, inputs: { [name]: input }, requires: [], outside: 'refuse' }, { [name]: value });
    return [];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { code, message } = error;
    const fix = possible ? `give ${name} a value inside the range; outside it the result is a guess` : error.fix;
    return [{ finding: { code, severity: 'error', message, fix }, refused: !possible || formula.outside === 'refuse' }];
  }
}
