import { type Bound, evaluate, type Tree } from '../rulebook/condition.ts';

/**
 * By how much a condition is missed, as a share: 0 where it holds, 0.25 for a number that would have to be a quarter smaller or
 * larger. Of conditions that must all hold, the greatest; of those of which one is enough, the least. Undefined for words, and
 * where a bound is not above 0.
 */
export function shortfall(tree: Tree, values: Bound): number | undefined {
  if (evaluate(tree, values) === true) return 0;
  if (typeof tree !== 'object') return undefined;
  const [operation, left, right] = tree as readonly [string, Tree, Tree];
  if (operation === '&&') return both(Math.max, shortfall(left, values), shortfall(right, values));
  if (operation === '||') return both(Math.min, shortfall(left, values), shortfall(right, values));
  if (operation === '?:') {
    const taken = evaluate(left, values) === true ? right : (tree[3] as Tree);
    return shortfall(taken, values);
  }
  // Of a bound that means none, such as 0.5 for a count, there is no share.
  if (typeof right === 'number' && right < 1) return undefined;
  const [a, b] = [evaluate(left, values), evaluate(right, values)];
  if (typeof a !== 'number' || typeof b !== 'number' || !(a > 0) || !(b > 0)) return undefined;
  if (operation === '<=' || operation === '<') return a / b - 1;
  if (operation === '>=' || operation === '>') return b / a - 1;
  return undefined;
}

/** A side that cannot be measured is left to the other one. */
function both(pick: (a: number, b: number) => number, a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? (a ?? b) : pick(a, b);
}
