import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compileFolder, describe as inWords } from '../../.build/rulepack.ts';
import { wordOf } from '../../src/engine/vocabulary/index.ts';
import { sourceKey } from '../../src/kernel/status.ts';
import { FORMULAS } from '../../src/physics/index.ts';
import { compileRulebook } from '../../src/rulebook/compile.ts';
import { parseExpression } from '../../src/rulebook/expression.ts';

const rules = join(import.meta.dirname, '..', '..', 'rules');
const { rulebook, diagnostics } = compileFolder(rules);

describe('the built-in rulebook', () => {
  test('compiles without a fault', () => {
    expect(diagnostics.map(inWords)).toEqual([]);
  });

  test.each(Object.values(rulebook.limits).flatMap((limit) => limit.examples.map((example, index) => ({ id: limit.id, index, limit, example }))))(
    '$id, example $index behaves as it says',
    ({ limit, example }) => {
      const applies = parseExpression(limit.when, limit.uses)(example.given) === true;
      const holds = !applies || parseExpression(limit.require, limit.uses)(example.given) === true;
      expect(holds).toBe(example.holds);
    },
  );

  test('every rule says why, what to do, and on what authority', () => {
    for (const limit of Object.values(rulebook.limits)) {
      expect.soft(limit.message.length, limit.id).toBeGreaterThan(15);
      expect.soft(limit.why.length, limit.id).toBeGreaterThan(20);
      expect.soft(limit.why, `${limit.id}: only message and fix take values`).not.toMatch(/[{}]/);
      expect.soft(limit.fix.length, limit.id).toBeGreaterThan(10);
      expect.soft(limit.source.length > 0 || limit.status !== 'source', limit.id).toBe(true);
    }
  });

  test('every source cited is listed, and every source listed is cited', () => {
    const cited = new Set<string>(['PART', 'PLANT']);
    const note = (refs: readonly string[]): void => {
      for (const ref of refs) cited.add(sourceKey(ref));
    };
    for (const table of Object.values(rulebook.tables))
      for (const row of table.rows) for (const figure of Object.values(row.cells)) if (figure !== null) note(figure.source);
    for (const limit of Object.values(rulebook.limits)) note(limit.source);
    for (const caution of Object.values(rulebook.cautions)) note(caution.source);
    for (const choice of Object.values(rulebook.choices)) for (const row of choice.rows) note(row.source);
    for (const alloy of Object.values(rulebook.alloys)) {
      note([...alloy.chamber.source, ...alloy.composition.source]);
      for (const property of Object.values(alloy.properties)) {
        note(property.source);
        for (const other of property.others ?? []) note(other.source ?? []);
      }
    }
    for (const formula of FORMULAS) note(formula.source);
    expect([...cited].filter((key) => !(key in rulebook.sources) && key !== 'PART' && key !== 'PLANT')).toEqual([]);
    expect(Object.keys(rulebook.sources).filter((key) => !cited.has(key))).toEqual([]);
  });
});

describe('a broken rule file', () => {
  const limit = (change: (text: string) => string): readonly string[] => {
    const good = `title: Wall stays above nought
uses: { wall: part.wall-nominal in mm }
when: 'true'
require: wall >= 1.0
severity: warning
message: 'A wall of {wall}'
why: because of this and that
fix: make it thicker
status: practice
examples:
  - { given: { wall: 2.0 }, holds: true }
  - { given: { wall: 0.5 }, holds: false }
`;
    const { diagnostics: found } = compileRulebook([{ name: 'limits/wall/test.yaml', text: change(good) }], wordOf);
    return found.map((d) => `${d.code}:${d.at?.position().line}`);
  };

  test('the good one is good', () => {
    expect(limit((text) => text)).toEqual([]);
  });
  test.each([
    ['an unknown value', 'part.wall-nominal in', 'part.wall-nominl in', 'rules/unknown-value:2'],
    ['a wrong unit', 'in mm', 'in MPa', 'rules/wrong-unit:2'],
    ['a unit that is missing', 'part.wall-nominal in mm', 'part.wall-nominal', 'rules/unit-missing:2'],
    ['a text with a unit', 'part.wall-nominal in mm', 'alloy.family in mm', 'rules/unit-of-text:2'],
    ['an expression of the wrong type', 'require: wall >= 1.0', 'require: wall + 1.0', 'rules/expression:4'],
    ['an expression that does not parse', 'require: wall >= 1.0', 'require: wall >=', 'rules/expression:4'],
    ['an unbound name', 'require: wall >= 1.0', 'require: wal >= 1.0', 'rules/expression:4'],
    ['an int times a double', 'require: wall >= 1.0', 'require: 2 * wall >= 1.0', 'rules/expression:4'],
    ['a template with a foreign name', '{wall}', '{walls}', 'rules/template:6'],
    ['a template with an open brace', '{wall}', '{wall', 'rules/template:6'],
    ['an example that lies', 'wall: 0.5 }, holds: false', 'wall: 5.0 }, holds: false', 'rules/example:12'],
    ['an unknown key', 'fix: make it thicker', 'fixx: make it thicker', 'rules/unknown-key:8'],
    ['an unknown severity', 'severity: warning', 'severity: fatal', 'rules/unknown-word:5'],
    ['an unknown source', 'status: practice', 'source: [NO-SUCH]', 'rules/unknown-source:9'],
    ['a source that is missing', 'status: practice', 'status: source', 'rules/no-source:9'],
    ['YAML that does not parse', 'title: Wall', 'title: "Wall', 'rules/yaml-syntax:1'],
  ])('%s is found, with its line', (_, from, to, expected) => {
    const found = limit((text) => text.replace(from, to));
    expect(found).toContain(expected);
  });

  test('tables: a word off its axis, two rows in one place, a foreign column', () => {
    const table = `title: T
about: A
axes: { family: { values: [zinc, copper] }, size: { unit: mm, steps: up-to } }
gives: { least: { unit: mm, meaning: m } }
status: practice
rows:
  - { family: zinc, size: 10, least: 1 }
  - { family: zinc, size: 10, least: 2 }
  - { family: brass, size: 10, least: 2 }
  - { family: zinc, size: 20, lest: 2 }
`;
    const { diagnostics: found } = compileRulebook([{ name: 'tables/wall/test.yaml', text: table }], wordOf);
    expect(found.map((d) => d.code).sort()).toEqual(['rules/row-twice', 'rules/unknown-key', 'rules/unknown-word']);
    expect(found.find((d) => d.code === 'rules/unknown-key')?.at?.position()).toMatchObject({ line: 10, column: 31 });
  });
});
