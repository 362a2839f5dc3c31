import { formatQuantity } from './format.ts';
import type { SourceRef, Status } from './status.ts';
import type { Unit } from './units.ts';

/** One input of a formula. `range` is where the formula holds, in `unit`; it is also where its tests draw points. */
export interface FormulaInput<U extends Unit = Unit> {
  readonly symbol: string;
  readonly unit: U;
  readonly meaning: string;
  readonly range: readonly [least: number, greatest: number];
  /** Physically possible values; a value outside is always refused. Default `positive`. */
  readonly domain?: 'positive' | 'not-negative' | 'any';
  /** Taken when the input is not given. */
  readonly default?: number;
  /** Worked out from the other inputs when it is not given, by an equation in their symbols. */
  readonly otherwise?: { readonly equation: string; readonly compute: (numbers: Readonly<Record<string, number>>) => number };
  /** A yes or a no: 1 or 0 in the equation, `true` or `false` as people write it. */
  readonly logical?: true;
}

export type FormulaInputs = Readonly<Record<string, FormulaInput>>;
export type FormulaNumbers<I extends FormulaInputs> = { readonly [K in keyof I]: number };

/** A condition that ties several inputs together, such as "T_f > T_d". Broken: the formula refuses. */
export interface FormulaCondition<I extends FormulaInputs> {
  readonly text: string;
  readonly holds: (x: FormulaNumbers<I>) => boolean;
  /** What to do where it is broken, such as "take a larger plunger"; where it is left out, to mend an input. */
  readonly mend?: string;
}

/**
 * A formula: numbers in the units named, a number in the unit named, and everything needed to print and to check it.
 * `equation` is written in the symbols of the inputs, in the syntax of mathjs, so that a test can evaluate the printed
 * text and compare it with `compute`. `where` defines helper symbols, evaluated in order before the equation.
 */
export interface Formula<I extends FormulaInputs = FormulaInputs, O extends Unit = Unit> {
  /** `topic.name` in kebab-case. */
  readonly id: string;
  readonly title: string;
  readonly symbol: string;
  readonly inputs: I;
  readonly unit: O;
  readonly equation: string;
  readonly where?: readonly { readonly symbol: string; readonly equation: string }[];
  /** For an equation without closed form: `equation` is the residual, zero at the result. */
  readonly implicit?: true;
  /**
   * For the result of a run in time steps: `equation` names the balances that are stepped, for reading only. Nothing can
   * evaluate it, so reference cases take the place of that check; `where` and `implicit` are not used.
   */
  readonly solution?: 'time-stepped';
  readonly requires?: readonly FormulaCondition<I>[];
  /** What happens when an input lies outside its `range`. */
  readonly outside: 'refuse' | 'clamp' | 'extrapolate';
  readonly source: readonly SourceRef[];
  readonly status: Status;
  /** What is known of its accuracy, and where it should not be believed. */
  readonly accuracy: string;
  readonly compute: (x: FormulaNumbers<I>) => number;
}

/** Declares a formula; the identity function that makes TypeScript infer the units as literal types. */
export function defineFormula<const I extends FormulaInputs, const O extends Unit>(spec: Formula<I, O>): Formula<I, O> {
  return spec;
}

/** What an input that need not be given is otherwise, as people read it; undefined when it must be given. */
export function otherwiseOf(input: FormulaInput): string | undefined {
  if (input.otherwise !== undefined) return input.otherwise.equation;
  if (input.default === undefined) return undefined;
  return input.logical === true ? String(input.default === 1) : formatQuantity(input.default, input.unit);
}

/** Adds the inputs that were not given and need not be: first the defaults, then what follows from the others. */
export function fillIn({ inputs }: { readonly inputs: FormulaInputs }, numbers: Record<string, number>): void {
  let open: string[] | undefined;
  for (const name in inputs) {
    if (numbers[name] !== undefined) continue;
    const { default: usual, otherwise } = inputs[name] as FormulaInput;
    if (usual !== undefined) numbers[name] = usual;
    if (otherwise !== undefined) {
      open ??= [];
      open.push(name);
    }
  }
  for (const name of open ?? []) numbers[name] = (inputs[name] as FormulaInput).otherwise?.compute(numbers) as number;
}

/** The formula in one line: its symbol and how it follows from the equation. */
export function equationOf({ symbol, equation, implicit, solution }: Formula): string {
  if (solution === 'time-stepped') return `${symbol} by time steps of ${equation}`;
  return implicit ? `${symbol} solves 0 = ${equation}` : `${symbol} = ${equation}`;
}

/** `where` lines and the equation, with each symbol of an input replaced by its number; then the result. */
export function substitute(formula: Formula, numbers: Readonly<Record<string, number>>, result: number): string[] {
  if (formula.solution === 'time-stepped') {
    const given = Object.entries(formula.inputs).map(([name, { symbol, unit }]) => {
      const number = plainNumber(numbers[name] as number);
      return unit === '1' ? `${symbol} = ${number}` : `${symbol} = ${number} ${unit}`;
    });
    return [`with ${given.join(', ')}`, `${formula.symbol} = ${formatQuantity(result, formula.unit)} by time steps`];
  }
  const bySymbol = new Map<string, string>();
  for (const [name, input] of Object.entries(formula.inputs)) {
    bySymbol.set(input.symbol, plainNumber(numbers[name] as number));
  }
  const fill = (equation: string): string => equation.replace(/[A-Za-z_][A-Za-z0-9_]*/g, (word) => bySymbol.get(word) ?? word);
  const lines = (formula.where ?? []).map((line) => `${line.symbol} = ${fill(line.equation)}`);
  const printed = formatQuantity(result, formula.unit);
  lines.push(
    formula.implicit ? `0 = ${fill(formula.equation)} at ${formula.symbol} = ${printed}` : `${formula.symbol} = ${fill(formula.equation)} = ${printed}`,
  );
  return lines;
}

/** Enough digits to recompute by hand, none of the binary noise; negative numbers in brackets. */
function plainNumber(value: number): string {
  const text = String(Number(value.toPrecision(6)));
  return value < 0 ? `(${text})` : text;
}
