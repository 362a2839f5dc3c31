export type Value = number | string | boolean;
export type Bound = Readonly<Record<string, Value>>;

/**
 * An expression of a rule as data: a constant, or the name of an operation and what it works on. It is made from what the library for
 * CEL parses (`treeOf` of expression.ts) when the rules are compiled, so that a plan loads no parser and parses no rule:
 * that would take a sixth of the time of a short plan. The library stays the authority; a test holds the two together.
 */
export type Tree = Value | readonly Tree[];

/**
 * What an expression comes to, or undefined when that cannot be said: a value that it hangs on is missing, or is of a
 * kind that the operation is not for.
 */
export function evaluate(tree: Tree, values: Bound): Value | undefined {
  if (typeof tree !== 'object') return tree;
  const operation = tree[0] as string;
  const first = tree[1] as Tree;
  switch (operation) {
    case 'name':
      return Object.hasOwn(values, first as string) ? values[first as string] : undefined;
    case '&&':
      return logical(tree, false, values);
    case '||':
      return logical(tree, true, values);
    case '?:': {
      const condition = evaluate(first, values);
      return typeof condition === 'boolean' ? evaluate(tree[condition ? 2 : 3] as Tree, values) : undefined;
    }
    case 'in':
      return isAmong(evaluate(first, values), tree[2] as readonly Tree[], values);
    case '!_': {
      const operand = evaluate(first, values);
      return typeof operand === 'boolean' ? !operand : undefined;
    }
    case '-_': {
      const operand = evaluate(first, values);
      return typeof operand === 'number' ? -operand : undefined;
    }
    default:
      return ofTwo(operation, evaluate(first, values), evaluate(tree[2] as Tree, values));
  }
}

/** `&&` and `||` as CEL has them: a side that decides alone decides, even where the other one cannot be said. */
function logical(tree: readonly Tree[], decides: boolean, values: Bound): boolean | undefined {
  const left = evaluate(tree[1] as Tree, values);
  if (left === decides) return decides;
  const right = evaluate(tree[2] as Tree, values);
  if (right === decides) return decides;
  return left === !decides && right === !decides ? !decides : undefined;
}

function isAmong(value: Value | undefined, [, ...list]: readonly Tree[], values: Bound): boolean | undefined {
  const members = list.map((member) => evaluate(member, values));
  return value === undefined || members.includes(undefined) ? undefined : members.some((member) => member === value);
}

function ofTwo(operation: string, left: Value | undefined, right: Value | undefined): Value | undefined {
  if (left === undefined || right === undefined) return undefined;
  if (operation === '==') return left === right;
  if (operation === '!=') return left !== right;
  if (typeof left === 'number' && typeof right === 'number') return ofNumbers(operation, left, right);
  if (typeof left === 'string' && typeof right === 'string') return ofTexts(operation, left, right);
  return typeof left === 'boolean' && typeof right === 'boolean' ? ordered(operation, left, right) : undefined;
}

/** The order of two values of one kind; false comes before true, texts stand in the order of their characters. */
function ordered<V extends Value>(operation: string, left: V, right: V): boolean | undefined {
  switch (operation) {
    case '<':
      return left < right;
    case '<=':
      return left <= right;
    case '>':
      return left > right;
    case '>=':
      return left >= right;
    default:
      return undefined;
  }
}

function ofNumbers(operation: string, left: number, right: number): Value | undefined {
  switch (operation) {
    case '+':
      return left + right;
    case '-':
      return left - right;
    case '*':
      return left * right;
    case '/':
      return left / right;
    default:
      return ordered(operation, left, right);
  }
}

function ofTexts(operation: string, left: string, right: string): Value | undefined {
  switch (operation) {
    case 'contains':
      return left.includes(right);
    case 'startsWith':
      return left.startsWith(right);
    case 'endsWith':
      return left.endsWith(right);
    case '+':
      return left + right;
    default:
      return ordered(operation, left, right);
  }
}

/** The operations on two values, in the words of the library's parser. */
export const OF_TWO = ['==', '!=', '<', '<=', '>', '>=', '+', '-', '*', '/', '&&', '||', 'in'] as const;
/** The functions of one text that is given another. */
export const OF_TEXTS = ['contains', 'startsWith', 'endsWith'] as const;
