import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { findingCodes, loadRulebook } from '../../src/index.ts';
import { formatNumber } from '../../src/kernel/format.ts';
import { sourceKey } from '../../src/kernel/status.ts';
import { FORMULAS } from '../../src/physics/index.ts';
import { EACH } from '../reference/alloys.ts';
import { runHere } from './run-here.ts';
import { parseTree, type TreeNode } from './tree.ts';

const math = create(all as FactoryFunctionMap);
const ROOT = join(import.meta.dirname, '../..');

const explained = async (...args: string[]): Promise<string> => {
  const { code, out, err } = await runHere(['explain', ...args]);
  expect([code, err], args.join(' ')).toEqual([0, '']);
  return out;
};
/** Wrapped prose on one line. */
const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('explain FORMULA, for every formula of the catalogue', () => {
  test.each(FORMULAS.map((formula) => [formula.id, formula] as const))('%s', async (id, formula) => {
    const out = await explained(id);
    const text = flat(out);
    const relation = formula.solution === 'time-stepped' ? 'by time steps of' : formula.implicit ? 'solves 0 =' : '=';
    expect(text).toContain(`${id}: ${formula.title} formula ${formula.symbol} ${relation} ${formula.equation}`);
    for (const { symbol, equation } of formula.where ?? []) expect(text).toContain(`${symbol} = ${equation}`);
    expect(text).toContain(`gives ${formula.symbol} in ${formula.unit === '1' ? 'a pure number' : formula.unit}`);
    for (const [name, input] of Object.entries(formula.inputs)) {
      const [least, greatest] = input.range;
      const unit = input.unit === '1' ? '' : ` ${input.unit}`;
      const range = input.logical === true ? 'true or false' : `${formatNumber(least)} to ${formatNumber(greatest)}${unit}`;
      const row = `${name} ${input.symbol} ${input.unit === '1' ? 'a pure number' : input.unit} ${range}`;
      const plain = input.logical === true ? String(input.default === 1) : `${formatNumber(input.default ?? 0)}${unit}`;
      const standard = input.otherwise !== undefined ? `, else ${input.otherwise.equation}` : input.default === undefined ? '' : `, else ${plain}`;
      expect(text).toContain(`${row}${standard} ${input.meaning}`);
    }
    expect(text).toContain(`accuracy ${formula.accuracy}`);
    // Where the figures come from, or honestly that they come from nowhere.
    const source = /^ {2}source +(.*)$/m.exec(out.slice(out.indexOf('\n  formula ')))?.[1] ?? '';
    expect(source).toMatch(
      formula.source.length > 0 ? new RegExp(`^${sourceKey(formula.source[0] as string)}`) : /^(derived|common practice|from memory, unverified)$/,
    );
    if (formula.status !== 'source') expect(source).toMatch(/(derived|common practice|from memory, unverified)$/);
    // One line, so that it can be filled in and pasted into a shell.
    const call = out.split('\n').find((line) => line.startsWith('  by hand')) ?? '';
    for (const [name, input] of Object.entries(formula.inputs))
      if (input.default === undefined && input.otherwise === undefined) expect(call).toContain(` ${name}=`);
  });
});

describe('explain, everything else', () => {
  test.each([
    ['a limit', 'clamp/machine-use', [/kind +limit, error/, /must hold +\S/, /why +\S/, /do +\S/, /source +\S/]],
    ['a choice', 'machine.kind', [/row 1 +/, /hot-chamber/, /NADCA-FAMILY/]],
    ['a table', 'draft/constant', [/axes +/, /figures +family/, /signs +/, /source +/]],
    ['a source', 'NADCA-S4A7', [/publisher +North American Die Casting Association/, /read +/, /errata +/, /cited by +formula draft\.angle/]],
    ['a finding code of the reader', 'spec/unknown-key', [/kind +code of a finding/, /means +\S/]],
    ['a finding code of a range', 'range/fill.longest-time', [/code of a finding/, /t_max = /]],
    ['a value', 'shot.mass', [/plan value, a number/, /unit +kg/, /explain shot\.mass FILE/]],
    ['a value that is a word', 'machine.model', [/plan value, a word/]],
    ['a value of an item', 'draft.wall-angle[outer]', [/such as draft\.wall-angle\[ID\]/, /explain draft\.wall-angle FILE/]],
    ['a caution', 'machine/crushing', [/kind +caution/, /defer to +\S/]],
  ] as const)('%s: %s', async (_, id, wanted) => {
    const out = await explained(id);
    for (const pattern of wanted) expect(out).toMatch(pattern);
  });

  test('every finding code that is not a rule has a meaning', async () => {
    const codes = Object.keys(findingCodes());
    expect(codes.length).toBeGreaterThan(50);
    for (const code of codes.filter((candidate) => !candidate.includes('…'))) expect(await explained(code), code).toMatch(/means +\S/);
  });

  test('every value of a plan, items too', async () => {
    const plan = JSON.parse(readFileSync(join(ROOT, 'examples/gearbox-housing/plan.json'), 'utf8')) as { values: object; texts: object };
    for (const id of [...Object.keys(plan.values), ...Object.keys(plan.texts)]) expect(await explained(id), id).toContain('plan value');
  });

  test('an alloy by each system of designations', async () => {
    const systems = new Set<string>();
    for (const [id, alloy] of EACH) {
      for (const { system, code, near } of alloy.designations) {
        if (near === true) continue;
        systems.add(system);
        expect(await explained(code), `${system} ${code}`).toContain(`${id}: ${alloy.name}, ${alloy.family} alloy`);
      }
    }
    expect([...systems].sort()).toEqual(expect.arrayContaining(['AA', 'ASTM', 'BS', 'DIN', 'EN number', 'EN symbol', 'JIS', 'UNS', 'trade']));
  });

  test('nothing names the same source twice', async () => {
    const twice: string[] = [];
    const walk = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      if (Array.isArray(node) && /\bsource$/.test(path) && new Set(node).size < node.length) twice.push(path);
      for (const [key, child] of Object.entries(node)) walk(child, `${path}.${key}`);
    };
    const { tables, choices, limits, cautions, alloys: records } = await loadRulebook();
    walk({ tables, choices, limits, cautions, records }, 'rules');
    for (const formula of FORMULAS) walk(formula.source, `${formula.id}.source`);
    expect(twice).toEqual([]);
  });
});

/** Half a step of the last digit printed, and a little for the inputs, which stand in the line with six digits. */
function rounding(printed: number): number {
  const size = Math.abs(printed);
  if (size === 0) return 1e-9;
  const digits = size >= 1000 ? Math.max(4, Math.floor(Math.log10(size)) - 1) : 3;
  return 0.5 * 10 ** (Math.floor(Math.log10(size)) + 1 - digits) + 2e-5 * size;
}

const BRAKE = 'brake-valve-body';
describe.each([
  ['clamp.locking-force', BRAKE],
  ['sleeve.fill', BRAKE],
  ['vent.plain-area', 'handle-escutcheon'],
  ['tolerance.plus-standard', 'gearbox-housing'],
])('explain %s of the %s', (id, name) => {
  const file = join(ROOT, 'examples', name, `${name}.part.yaml`);
  const tree = async (): Promise<TreeNode[]> => parseTree((await runHere(['explain', id, file])).out);

  test('each formula of the tree gives its printed result again', async () => {
    const formulas = (await tree()).filter((node) => node.formula !== undefined);
    expect(formulas.length).toBeGreaterThan(2);
    for (const { id: node, value, formula } of formulas) {
      const { equation, where, lines } = formula as NonNullable<TreeNode['formula']>;
      const scope: Record<string, number> = {};
      for (const line of where) scope[line.symbol] = math.evaluate(line.expression, scope) as number;
      const result = math.evaluate(lines.expression, scope) as number;
      expect(Math.abs(result - lines.result), `${node}: ${equation}`).toBeLessThanOrEqual(Math.max(rounding(lines.result), 1e-9));
      expect(lines.result, node).toBe(value);
    }
  });

  test('what a formula was given stands below it', async () => {
    const nodes = await tree();
    const fromFile = new Set(nodes.filter((node) => node.at !== undefined).map((node) => node.id));
    for (const { id: node, children, formula } of nodes) {
      if (formula === undefined) continue;
      const text = [...formula.where.map((line) => line.expression), formula.lines.expression].join(' ');
      const numbers = (text.match(/\d+(\.\d+)?(e[+-]?\d+)?/g) ?? []).map(Number);
      expect(children.length, node).toBeGreaterThan(0);
      for (const child of children) {
        // What stands in the file is printed in its own unit, such as grams where the formula works in kilograms.
        const scales = fromFile.has(child.id) ? [1, 10, 100, 1000, 0.1, 0.01, 0.001] : [1];
        const close = numbers.some((number) => scales.some((scale) => Math.abs(number * scale - Math.abs(child.value)) <= rounding(child.value)));
        expect(close, `${node} rests on ${child.id} = ${child.value}, but works with ${text}`).toBe(true);
      }
    }
  });

  test('it ends in the file, in tables, and in what was assumed or decided', async () => {
    const { tables } = await loadRulebook();
    const source = readFileSync(file, 'utf8').split('\n');
    const leaves = (await tree()).filter((node) => node.children.length === 0 && !node.again);
    expect(leaves.some((leaf) => leaf.at !== undefined) && leaves.some((leaf) => leaf.table !== undefined)).toBe(true);
    for (const leaf of leaves) {
      if (leaf.at !== undefined) {
        expect(leaf.at.file).toBe(file);
        if (leaf.remark.startsWith('default')) continue;
        // The place is that of the very words in the file; the unit of a bare number is added in print.
        const there = /^['"]?([^,}'"#]*[^,}'"# ])/.exec(source[leaf.at.line - 1]?.slice(leaf.at.column - 1) ?? '')?.[1] ?? 'nothing';
        expect([leaf.printed, leaf.printed.split(' ')[0]], leaf.id).toContain(there);
      } else if (leaf.table !== undefined) expect(/^(plant|alloy) \S/.test(leaf.table) || leaf.table in tables, `${leaf.id}: ${leaf.table}`).toBe(true);
      else expect(leaf.remark, leaf.id).toMatch(/^(assumption|decision|default)/);
    }
  });
});
