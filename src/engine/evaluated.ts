import { type Bound, evaluate, type Value } from '../rulebook/condition.ts';
import type { Rulebook } from '../rulebook/types.ts';

/** What an expression of a rule comes to; undefined when it hangs on a value that is missing. */
export function evaluated(rulebook: Rulebook, expression: string, values: Bound): Value | undefined {
  const tree = rulebook.conditions[expression];
  if (tree === undefined) throw new TypeError(`the rulebook was compiled without the expression "${expression}"`);
  return typeof tree === 'function' ? tree(values) : evaluate(tree, values);
}
