import { Environment } from '@marcbachmann/cel-js';
import type { Binding } from './types.ts';

export type Bound = Readonly<Record<string, number | string | boolean>>;
export type Expression = (values: Bound) => unknown;

/**
 * A CEL environment in which each bound name has its type: numbers with a unit are doubles, text facts are strings.
 * It is what rules are checked in when they are compiled.
 */
function typed(uses: readonly Binding[]): Environment {
  const env = new Environment();
  for (const binding of uses) env.registerVariable(binding.name, binding.unit === undefined ? 'string' : 'double');
  return env;
}

/** One environment for all evaluation: the rules have been checked with their types, and making one for each takes time. */
let untyped: Environment | undefined;

/** Parsed once for each rule: the list of bindings is the rule's own, so it is the key. */
const PARSED = new WeakMap<readonly Binding[], Map<string, Expression>>();

/**
 * An expression ready for repeated evaluation.
 * @throws Error with the library's message when it does not parse (built-in rules are checked when they are compiled).
 */
export function parseExpression(text: string, uses: readonly Binding[]): Expression {
  let ofRule = PARSED.get(uses);
  if (ofRule === undefined) {
    ofRule = new Map();
    PARSED.set(uses, ofRule);
  }
  let expression = ofRule.get(text);
  if (expression === undefined) {
    untyped ??= new Environment({ unlistedVariablesAreDyn: true });
    const parsed = untyped.parse(text);
    expression = (values) => parsed(values as Record<string, unknown>);
    ofRule.set(text, expression);
  }
  return expression;
}

/** The fault of an expression that must give `wanted`, in one line, or undefined when it is sound. */
export function expressionFault(text: string, uses: readonly Binding[], wanted: 'bool' | 'number'): string | undefined {
  let checked: { valid: boolean; type?: string; error?: Error };
  try {
    checked = typed(uses).check(text) as typeof checked;
  } catch (error) {
    checked = { valid: false, error: error as Error };
  }
  if (!checked.valid) return (checked.error?.message ?? 'is not a valid expression').split('\n')[0] as string;
  const type = checked.type ?? 'dyn';
  const fits = wanted === 'bool' ? ['bool', 'dyn'] : ['double', 'int', 'dyn'];
  return fits.includes(type) ? undefined : `gives a ${type}, but a ${wanted} is wanted`;
}
