import { join } from 'node:path';
import { Environment } from '@marcbachmann/cel-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileFolder } from '../../.build/rulepack.ts';
import { type Bound, evaluate, type Tree } from '../../src/rulebook/condition.ts';
import { conditionOf, expressionFault, parseExpression, treeOf } from '../../src/rulebook/expression.ts';
import { parseTemplate } from '../../src/rulebook/template.ts';
import type { Binding } from '../../src/rulebook/types.ts';

const { rulebook } = compileFolder(join(import.meta.dirname, '..', '..', 'rules'));

interface Rule {
  readonly id: string;
  readonly uses: readonly Binding[];
  readonly expressions: readonly string[];
  readonly given: readonly Bound[];
}

const given = (examples: readonly { readonly given: Bound }[]): Bound[] => examples.map((example) => example.given);
const RULES: readonly Rule[] = [
  ...Object.values(rulebook.limits).map((limit) => ({
    id: limit.id,
    uses: limit.uses,
    expressions: [limit.when, limit.require, ...[limit.message, limit.fix].flatMap(computed)],
    given: given(limit.examples),
  })),
  ...Object.values(rulebook.choices).map((choice) => ({
    id: choice.id,
    uses: choice.uses,
    expressions: choice.rows.map((row) => row.when),
    given: given(choice.examples),
  })),
  ...Object.values(rulebook.cautions).map((caution) => ({ id: caution.id, uses: caution.uses, expressions: [caution.when], given: given(caution.examples) })),
];

function computed(template: string): string[] {
  return parseTemplate(template).flatMap((part) => (part.kind === 'number' ? [part.expression] : []));
}

/** What the library for CEL says; it throws where a value is missing. */
function byLibrary(text: string, uses: readonly Binding[], values: Bound): unknown {
  try {
    return parseExpression(text, uses)(values);
  } catch {
    return undefined;
  }
}

function byTree(text: string, values: Bound): unknown {
  const tree = rulebook.conditions[text];
  if (tree === undefined) throw new Error(`no tree of "${text}"`);
  return evaluate(tree as Tree, values);
}

const without = (values: Bound, name: string): Bound => Object.fromEntries(Object.entries(values).filter(([other]) => other !== name));

describe('every expression of the rules, as a plan evaluates it and as the library does', () => {
  test('there are enough of them', () => {
    expect(RULES.length).toBeGreaterThan(250);
    expect(Object.keys(rulebook.conditions).length).toBeGreaterThan(400);
  });

  test.each(RULES)('$id, with the values of its examples, and with each of them missing', ({ uses, expressions, given: examples }) => {
    for (const text of expressions) {
      for (const values of examples) {
        expect(byTree(text, values), text).toEqual(byLibrary(text, uses, values));
        for (const name of Object.keys(values)) {
          const fewer = without(values, name);
          expect(byTree(text, fewer), `${text} without ${name}`).toEqual(byLibrary(text, uses, fewer));
        }
      }
    }
  });

  test('with any values: on a bound, beside it, and far from it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...RULES), fc.infiniteStream(fc.nat({ max: 999 })), fc.double({ min: 0.5, max: 2 }), (rule, picks, factor) => {
        const pick = <T>(list: readonly T[]): T => list[(picks.next().value as number) % list.length] as T;
        const numbers = rule.expressions.flatMap((text) => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number));
        const words = rule.expressions.flatMap((text) => [...text.matchAll(/(['"])(.*?)\1/g)].map((match) => match[2] as string));
        const values: Record<string, number | string> = {};
        for (const use of rule.uses) {
          const missing = (picks.next().value as number) % 10 === 0;
          if (missing) continue;
          if (use.unit === undefined) values[use.name] = pick([...words, '', 'another word']);
          else values[use.name] = pick([...numbers, 0, -1, 1e-9, 1e9]) * pick([1, factor]);
        }
        for (const text of rule.expressions) expect(byTree(text, values), text).toEqual(byLibrary(text, rule.uses, values));
      }),
      { seed: 20250613, numRuns: 2000 },
    );
  });
});

describe('what no rule uses yet', () => {
  test.each([
    ['size(a) > 1', /evaluation of rules/],
    ['a.matches("x")', /matches/],
    ['a % 2.0 == 0.0', /"%"/],
    ['2 * 3 > 5', /write 2\.0/],
    ['a in b', /"in"/],
  ])('%s is refused when the rules are compiled', (text, message) => {
    expect(() => treeOf(text)).toThrow(message);
  });

  test('a value of the wrong kind is no answer', () => {
    const trees: Tree[] = [
      treeOf('a + 1.0'),
      treeOf('!a'),
      treeOf('-a'),
      treeOf('a < 1.0'),
      treeOf('a ? 1.0 : 2.0'),
      treeOf('a && true'),
      treeOf('a.contains("x")'),
    ];
    const kinds: Bound[] = [{ a: 'text' }, { a: 1 }, { a: 'text' }, { a: 'text' }, { a: 1 }, { a: 1 }, { a: 1 }];
    for (const [i, tree] of trees.entries()) expect(evaluate(tree, kinds[i] as Bound)).toBe(undefined);
  });

  test('a name that every object has is no value', () => {
    expect(evaluate(treeOf('constructor == "x"'), {})).toBe(undefined);
  });
});

/** Random expressions of each type over two numbers and two texts, of operations that trees know and of some that they do not. */
const EXPRESSIONS = fc.letrec<{ number: string; text: string; bool: string }>((tie) => ({
  number: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.constantFrom('a', 'b', '0.0', '1.0', '2.5', '-1.0'),
    fc.tuple(tie('number'), fc.constantFrom('+', '-', '*', '/'), tie('number')).map(([l, op, r]) => `(${l} ${op} ${r})`),
    tie('number').map((n) => `(-${n})`),
    fc.tuple(tie('bool'), tie('number'), tie('number')).map(([c, l, r]) => `(${c} ? ${l} : ${r})`),
    tie('text').map((t) => `double(size(${t}))`),
  ),
  text: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom('s', 't', '"zinc"', '"z"', '""'),
    fc.tuple(tie('text'), tie('text')).map(([l, r]) => `(${l} + ${r})`),
  ),
  bool: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom('true', 'false'),
    fc.tuple(tie('number'), fc.constantFrom('<', '<=', '>', '>=', '==', '!='), tie('number')).map(([l, op, r]) => `(${l} ${op} ${r})`),
    fc.tuple(tie('text'), fc.constantFrom('<', '<=', '>', '>=', '==', '!='), tie('text')).map(([l, op, r]) => `(${l} ${op} ${r})`),
    fc.tuple(tie('bool'), fc.constantFrom('&&', '||', '==', '!=', '<', '>='), tie('bool')).map(([l, op, r]) => `(${l} ${op} ${r})`),
    tie('bool').map((c) => `!${c}`),
    fc.tuple(tie('text'), fc.constantFrom('contains', 'startsWith', 'endsWith'), tie('text')).map(([l, f, r]) => `${l}.${f}(${r})`),
    fc.tuple(tie('number'), tie('number'), tie('number')).map(([n, x, y]) => `(${n} in [${x}, ${y}])`),
    fc.tuple(tie('text'), tie('text')).map(([x, y]) => `(${x} in [${y}, "zinc"])`),
    fc.tuple(tie('number'), tie('number')).map(([x, y]) => `[1.0, ${x}].exists(v, v > ${y})`),
    tie('text').map((t) => `${t}.matches("^z")`),
  ),
}));

function withTypes(text: string, values: Bound): unknown {
  const environment = new Environment();
  for (const [name, value] of Object.entries(values)) environment.registerVariable(name, typeof value === 'string' ? 'string' : 'double');
  return environment.evaluate(text, values as Record<string, unknown>);
}

describe('expressions of house rules', () => {
  const uses: readonly Binding[] = [
    { name: 'a', id: 'part.volume', unit: 'cm3' },
    { name: 'b', id: 'part.mass', unit: 'kg' },
    { name: 's', id: 'alloy.family' },
    { name: 't', id: 'quality.use' },
  ];
  const number = fc.constantFrom(0, 1, -1, 2.5, 1e9, -0.5);
  const text = fc.constantFrom('', 'z', 'zinc', 'zinc-aluminium', 'copper');
  const bound = fc.record({ a: number, b: number, s: text, t: text }, { requiredKeys: [] });

  test('any that the library takes comes to what the library says, whatever is missing', () => {
    let trees = 0;
    let functions = 0;
    fc.assert(
      fc.property(fc.oneof(EXPRESSIONS.bool, EXPRESSIONS.number), bound, (expression, values) => {
        if (expressionFault(expression, uses, expression.startsWith('(a') ? 'number' : 'bool')?.message.includes('overload') === true) return;
        const condition = conditionOf(expression, uses);
        if (typeof condition === 'function') functions += 1;
        else trees += 1;
        const own = typeof condition === 'function' ? condition(values as Bound) : evaluate(condition, values as Bound);
        expect(own, expression).toEqual(byLibrary(expression, uses, values as Bound));
        // With all types declared, as the check has them, the library says the same.
        if (Object.keys(values).length === uses.length) expect(own, expression).toEqual(withTypes(expression, values as Bound));
      }),
      { seed: 20260101, numRuns: 4000 },
    );
    // Both roads are taken often.
    expect(trees).toBeGreaterThan(500);
    expect(functions).toBeGreaterThan(500);
  });
});
