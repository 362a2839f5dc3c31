import { type ASTNode, Environment } from '@marcbachmann/cel-js';
import { type Bound, OF_TEXTS, OF_TWO, type Tree, type Value } from './condition.ts';
import type { Binding, Condition } from './types.ts';

// The library for CEL, which is the authority on what an expression means. It checks the rules when they are compiled and
// in the tests; a plan evaluates what `treeOf` made of them (condition.ts), so nothing of this is loaded to make a plan
// without house rules.

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
let anyTypes: Environment | undefined;

function untyped(): Environment {
  // A list of a name and a constant is one of two types to an environment that knows no types.
  anyTypes ??= new Environment({ unlistedVariablesAreDyn: true, homogeneousAggregateLiterals: false });
  return anyTypes;
}

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
    const parsed = untyped().parse(text);
    expression = (values) => parsed(values as Record<string, unknown>);
    ofRule.set(text, expression);
  }
  return expression;
}

/** What is wrong with an expression, in one line, and the characters of it that are meant. */
export interface ExpressionFault {
  readonly message: string;
  readonly range?: readonly [from: number, to: number];
  /** A name that is not bound. */
  readonly unknown?: string;
}

/** The fault of an expression that must give `wanted`, or undefined when it is sound. */
export function expressionFault(text: string, uses: readonly Binding[], wanted: 'bool' | 'number'): ExpressionFault | undefined {
  const refused = refusedOf(text);
  if (refused !== undefined) return { message: refused };
  let checked: { valid: boolean; type?: string; error?: Error };
  try {
    checked = typed(uses).check(text) as typeof checked;
  } catch (error) {
    checked = { valid: false, error: error as Error };
  }
  if (!checked.valid) return faultOf(checked.error);
  const type = checked.type ?? 'dyn';
  const fits = wanted === 'bool' ? ['bool', 'dyn'] : ['double', 'int', 'dyn'];
  return fits.includes(type) ? undefined : { message: `gives a ${type}, but a ${wanted} is wanted` };
}

/** Longest expression, and most loops over a list in one: with these no expression takes long, whatever it is given. */
const LONGEST = 2000;
const MOST_LOOPS = 2;
const LOOPS: readonly string[] = ['all', 'exists', 'exists_one', 'map', 'filter'];

/** Why an expression is not evaluated though it is CEL: it could take without an end. */
function refusedOf(text: string): string | undefined {
  if (text.length > LONGEST) return `is longer than ${LONGEST} characters`;
  const called: string[] = [];
  const walk = (node: unknown): void => {
    if (Array.isArray(node)) {
      for (const member of node) walk(member);
      return;
    }
    const { op, args } = (node ?? {}) as { readonly op?: unknown; readonly args?: unknown };
    if ((op === 'rcall' || op === 'call') && Array.isArray(args)) called.push(String(args[0]));
    if (op !== undefined && typeof args === 'object') walk(Array.isArray(args) ? args : [args]);
  };
  try {
    walk(untyped().parse(text).ast);
  } catch {
    // What is wrong with it is said by the check.
    return undefined;
  }
  if (called.includes('matches')) return 'uses "matches", whose patterns can run without an end: use contains, startsWith or endsWith';
  return called.filter((name) => LOOPS.includes(name)).length > MOST_LOOPS ? `has more than ${MOST_LOOPS} loops over lists` : undefined;
}

function faultOf(error: Error | undefined): ExpressionFault {
  const { summary, range } = (error ?? {}) as { summary?: string; range?: { start: number; end: number } };
  const message = (summary ?? error?.message ?? 'is not a valid expression').split('\n')[0] as string;
  const unknown = /^Unknown variable: (\w+)$/.exec(message)?.[1];
  return { message, ...(range === undefined ? {} : { range: [range.start, range.end] }), ...(unknown === undefined ? {} : { unknown }) };
}

/**
 * An expression of a house rule, which may be any that the library takes: as a tree where it can be one, else as a
 * function that has the library evaluate it.
 */
export function conditionOf(text: string, uses: readonly Binding[]): Condition {
  try {
    return treeOf(text);
  } catch {
    const expression = parseExpression(text, uses);
    return (values) => asValue(() => expression(values));
  }
}

/** What the library comes to as a value of a rule: its whole numbers as numbers; nothing where it finds a value missing or of the wrong kind. */
function asValue(work: () => unknown): Value | undefined {
  let result: unknown;
  try {
    result = work();
  } catch {
    return undefined;
  }
  if (typeof result === 'bigint') return Number(result);
  return typeof result === 'number' || typeof result === 'string' || typeof result === 'boolean' ? result : undefined;
}

/**
 * An expression as data, for `evaluate` of condition.ts.
 * @throws Error when it does not parse, or uses what no rule has needed yet; then condition.ts and this have to learn it.
 */
export function treeOf(text: string): Tree {
  return treeOfNode(untyped().parse(text).ast);
}

function treeOfNode(node: ASTNode, comparedWithInteger = false): Tree {
  const { op, args } = node as { readonly op: string; readonly args: unknown };
  if (op === 'value') {
    // A whole number is an integer of CEL, which no value of a plan is; the two can be compared but not added or divided.
    if (typeof args === 'bigint' && comparedWithInteger) return Number(args);
    if (typeof args === 'number' || typeof args === 'string' || typeof args === 'boolean') return args;
    throw new Error(`the constant ${String(args)} cannot stand here; numbers are doubles: write 2.0, not 2`);
  }
  if (op === 'id') return ['name', args as string];
  if (op === '!_' || op === '-_') return [op, treeOfNode(args as ASTNode)];
  if (op === 'list') return [op, ...(args as ASTNode[]).map((member) => treeOfNode(member))];
  if (op === '?:') return [op, ...(args as ASTNode[]).map((operand) => treeOfNode(operand))];
  if (op === 'rcall') {
    const [name, receiver, given] = args as [string, ASTNode, ASTNode[]];
    if (given.length === 1 && OF_TEXTS.some((known) => known === name)) return [name, treeOfNode(receiver), treeOfNode(given[0] as ASTNode)];
    throw new Error(`the function "${name}" is not known to the evaluation of rules`);
  }
  const [left, right] = args as ASTNode[];
  if (!OF_TWO.some((known) => known === op) || left === undefined || right === undefined || (op === 'in' && right.op !== 'list'))
    throw new Error(`"${op}" is not known to the evaluation of rules`);
  const compares = /^[=!<>]/.test(op);
  return [op, treeOfNode(left, compares), treeOfNode(right, compares)];
}
