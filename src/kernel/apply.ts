import { formatBeside, formatNumber, formatQuantity } from './format.ts';
import { type Formula, type FormulaInput, type FormulaInputs, type FormulaNumbers, fillIn } from './formula.ts';
import { type RangeVerdict, Traced } from './traced.ts';
import type { Unit } from './units.ts';

/** Why a formula or table gave no number. */
export class Refusal extends Error {
  constructor(
    /** Code of the finding, such as `range/fill.longest-time`. */
    readonly code: string,
    message: string,
    readonly fix: string,
    readonly values: readonly Traced[] = [],
  ) {
    super(message);
    this.name = 'Refusal';
  }
}

export type FormulaArguments<I extends FormulaInputs> = {
  readonly [K in keyof I as I[K] extends Optional ? never : K]: Traced<I[K]['unit']>;
} & {
  readonly [K in keyof I as I[K] extends Optional ? K : never]?: Traced<I[K]['unit']> | undefined;
};
type Optional = { readonly default: number } | { readonly otherwise: object };

export interface Applied<U extends Unit> {
  readonly result: Traced<U>;
  /** One sentence for each input that lies outside the range in which the formula holds. */
  readonly warnings: readonly string[];
  /** Ids of those inputs. */
  readonly outside: readonly string[];
}

/**
 * Applies a formula to traced values; each must carry the unit that the formula names, or it does not compile.
 * @throws Refusal when an input is physically impossible, a condition is broken, or the range is exceeded and the formula refuses.
 */
export function applyFormula<I extends FormulaInputs, O extends Unit>(
  formula: Formula<I, O>,
  args: FormulaArguments<I>,
  options: { readonly id?: string; readonly note?: string } = {},
): Applied<O> {
  const given = args as Readonly<Record<string, Traced | undefined>>;
  const numbers: Record<string, number> = {};
  const parents: Traced[] = [];
  // By name, not by entry: a plan applies some thousand formulas, and an array for each input is what the time goes into.
  for (const name in formula.inputs) {
    const input = formula.inputs[name] as FormulaInput;
    const traced = given[name];
    if (traced !== undefined) {
      if (traced.unit !== input.unit) throw new TypeError(`${formula.id}: ${name} must be in ${input.unit}, not ${traced.unit}`);
      parents.push(traced);
      numbers[name] = traced.value;
    } else if (input.default === undefined && input.otherwise === undefined) throw new TypeError(`${formula.id}: ${name} is missing`);
  }
  fillIn(formula, numbers);
  const checked = checkNumbers(formula as unknown as Formula, numbers, parents);
  const value = formula.compute(checked.numbers as FormulaNumbers<I>);
  if (!Number.isFinite(value)) {
    throw new Refusal(`range/${formula.id}`, `${formula.title} has no finite result for these inputs`, 'check the inputs', parents);
  }
  const result = Traced.formula(options.id ?? formula.id, value, formula as unknown as Formula<FormulaInputs, O>, parents, checked.verdict, {
    note: options.note,
    numbers: checked.numbers,
  });
  const outside = checked.outside.flatMap((name) => given[name]?.id ?? []);
  return { result, warnings: checked.warnings, outside };
}

/** Whether an input can have a value at all, inside the range of the formula or not. */
export function isPossible({ domain = 'positive', logical }: FormulaInput, value: number): boolean {
  if (logical === true) return value === 0 || value === 1;
  return Number.isFinite(value) && (domain === 'any' || (domain === 'positive' ? value > 0 : value >= 0));
}

/** Numbers that a formula may be worked out with, and what is to be said of them. */
export interface Checked {
  readonly numbers: Readonly<Record<string, number>>;
  readonly verdict: RangeVerdict;
  readonly warnings: readonly string[];
  /** Names of the inputs outside their range. */
  readonly outside: readonly string[];
}
const NOTHING: readonly never[] = [];

/**
 * Holds numbers against a formula's domain, conditions and range.
 * @throws Refusal as `applyFormula` does.
 */
export function checkNumbers(formula: Formula, numbers: Readonly<Record<string, number>>, values: readonly Traced[] = []): Checked {
  const outside = namesOutside(formula, numbers);
  const checked: Checked =
    outside === undefined ? { numbers, verdict: 'inside', warnings: NOTHING, outside: NOTHING } : beyond(formula, numbers, outside, values);
  if (formula.requires !== undefined) {
    for (const condition of formula.requires) {
      if (condition.holds(checked.numbers as never)) continue;
      const given = Object.entries(formula.inputs).map(([name, { unit }]) => `${name} = ${formatQuantity(checked.numbers[name] as number, unit)}`);
      throw new Refusal(
        `range/${formula.id}`,
        `${formula.title} needs ${condition.text}`,
        `${condition.mend ?? 'mend what it was given'}: ${given.join(', ')}`,
        values,
      );
    }
  }
  return checked;
}

/** The inputs that are impossible or outside their range; undefined when there is none, as nearly always. */
function namesOutside({ inputs }: Formula, numbers: Readonly<Record<string, number>>): string[] | undefined {
  let outside: string[] | undefined;
  for (const name in inputs) {
    const input = inputs[name] as FormulaInput;
    const value = numbers[name] as number;
    if (isPossible(input, value) && value >= input.range[0] && value <= input.range[1]) continue;
    outside ??= [];
    outside.push(name);
  }
  return outside;
}

/** What the formula does with inputs outside their range. */
function beyond(formula: Formula, numbers: Readonly<Record<string, number>>, outside: readonly string[], values: readonly Traced[]): Checked {
  const used: Record<string, number> = { ...numbers };
  const code = `range/${formula.id}`;
  const sentence = (name: string): string => {
    const { range, unit } = formula.inputs[name] as FormulaInput;
    const value = numbers[name] as number;
    return `${name} = ${formatBeside(value, value < range[0] ? range[0] : range[1], unit)} lies outside ${formatNumber(range[0])} to ${formatQuantity(range[1], unit)}, where ${formula.title.toLowerCase()} (${formula.id}) holds`;
  };
  for (const name of outside) {
    const input = formula.inputs[name] as FormulaInput;
    const value = numbers[name] as number;
    if (!isPossible(input, value)) {
      const shown = formatQuantity(value, input.unit);
      const must = input.logical === true ? 'true or false' : (input.domain ?? 'positive') === 'positive' ? 'above 0' : 'a number of 0 or more';
      throw new Refusal(code, `${formula.title}: ${name} (${input.meaning}) is ${shown}, but must be ${must}`, `give ${name} a possible value`, values);
    }
    if (formula.outside === 'refuse') throw new Refusal(code, sentence(name), `give ${name} a value inside the range, or pin ${formula.id}`, values);
    if (formula.outside === 'clamp') used[name] = Math.min(Math.max(value, input.range[0]), input.range[1]);
  }
  const clamped = formula.outside === 'clamp';
  return {
    numbers: used,
    verdict: clamped ? 'clamped' : 'extrapolated',
    outside,
    // A trial asks for none.
    get warnings() {
      return outside.map((name) => `${sentence(name)}; ${clamped ? 'the nearest value inside was used' : 'the result is an extrapolation'}`);
    },
  };
}
