import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { wordOf } from '../../src/engine/vocabulary/index.ts';
import { compileRulebook } from '../../src/rulebook/compile.ts';
import { STARTER_RULE } from '../../src/rulebook/starter.ts';
import { STARTER_PART, STARTER_PLANT } from '../../src/spec/starters.ts';
import { makeFolder } from './folder.ts';
import { runHere } from './run-here.ts';

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
});
afterAll(() => folder.remove());

/** Codes written out in the source of the engine, the command line and the settings, each with its first part. */
function sourceCodes(): string[] {
  const root = join(import.meta.dirname, '../../src');
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  const found = new Set<string>();
  for (const name of files) {
    const text = readFileSync(join(root, name), 'utf8');
    for (const match of text.matchAll(/'((?:spec|pin|table|machine|file|set|cli|calc)\/[a-z0-9-]+)'/g)) {
      if (!name.startsWith('report')) found.add(match[1] as string);
    }
    if (name.startsWith('cli') && name.endsWith('files.ts'))
      for (const match of text.matchAll(/fault\(\s*(?:path|name|shown),\s*'([a-z0-9-]+)'/g)) found.add(`file/${match[1]}`);
    if (name.endsWith('calculate.ts')) for (const match of text.matchAll(/fault\(\s*'([a-z0-9-]+)'/g)) found.add(`calc/${match[1]}`);
    if (name.endsWith('set-field.ts')) for (const match of text.matchAll(/fault\(\s*'([a-z0-9-]+)'/g)) found.add(`set/${match[1]}`);
  }
  return [...found].filter((code) => !existsSync(join(root, `${code}.ts`)) && !existsSync(join(root, '../rules/tables', `${code}.yaml`)));
}

describe('calc', () => {
  // 768 cm3 / (45 m/s x 50 ms) = 341.3 mm2, by hand.
  const gate = ['calc', 'gate.area', 'volume=768 cm3', 'velocity=45 m/s', 'time=50 ms'];

  test('prints equation, numbers, result and source', async () => {
    const { code, out, err } = await runHere(gate);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/result +341 mm2\n/);
    expect(out).toMatch(/source +\S/);
  });

  test('JSON and another unit', async () => {
    expect(JSON.parse((await runHere([...gate, '--json', '--in', 'cm2'])).out)).toMatchObject({
      id: 'gate.area',
      unit: 'cm2',
      range: 'inside',
      value: expect.closeTo(3.41333, 4),
    });
  });

  test.each([
    [['calc', 'gate.area'], 'volume is missing'],
    [['calc', 'gate.area', 'volume'], 'calc/form'],
    [['calc', 'gate.aera'], 'gate.area'],
    [[...gate.slice(0, 3), 'speed=45 m/s'], 'no input "speed"'],
    [[...gate, '--in', 'kg'], 'calc/wrong-result-unit'],
    [['calc', 'clamp.opening-force', 'pressure=900 MPa', 'area=100 cm2'], 'range/clamp.opening-force'],
  ])('%j is bad input', async (args, word) => {
    const { code, err } = await runHere(args);
    expect(code).toBe(2);
    expect(err).toContain(word);
  });
});

describe('explain', () => {
  test.each([
    ['gate.area', 'A_g ='],
    ['clamp/machine-use', 'must hold'],
    ['machine.kind', 'row 1'],
    ['draft/constant', 'figures'],
    ['EN AC-46000', 'aluminium alloy'],
    ['clamp.locking-force', 'plan value'],
    ['spec/unknown-key', 'code of a finding'],
    ['range/gate.area', 'code of a finding'],
    ['file/not-found', 'no such file'],
    ['calc/wrong-dimension', 'measures something else'],
  ])('%s', async (id, word) => {
    const { code, out, err } = await runHere(['explain', id]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain(word);
  });

  test('every id that a list names can be explained', async () => {
    for (const what of ['alloys', 'formulas', 'tables', 'rules', 'choices', 'sources']) {
      const rows = JSON.parse((await runHere(['list', what, '--json'])).out) as Record<string, string>[];
      expect(rows.length, what).toBeGreaterThan(5);
      for (const row of rows) {
        const id = (row['id'] ?? row['key']) as string;
        expect((await runHere(['explain', id])).code, id).toBe(0);
      }
    }
  });

  test('every code that the source gives out is in the catalogue', async () => {
    const codes = sourceCodes();
    expect(codes.length).toBeGreaterThan(20);
    for (const code of codes) expect((await runHere(['explain', code])).code, code).toBe(0);
  });

  test('an unknown id names the near ones', async () => {
    const { code, out, err } = await runHere(['explain', 'clamp.lockin']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('clamp.locking-force');
  });

  test('with a file: the derivation down to the line of the file, a verdict, a decision', async () => {
    const file = folder.file('cover.part.yaml');
    const tree = (await runHere(['explain', 'clamp.locking-force', file])).out;
    expect(tree).toMatch(/^clamp.locking-force = .+ kN/);
    expect(tree).toContain(`at ${file}:`);
    expect((await runHere(['explain', 'clamp/machine-use', file])).out).toMatch(/verdict +holds\n +f = clamp.locking-force = /);
    expect((await runHere(['explain', 'machine.model', file])).out).toContain('taken');
    expect((await runHere(['explain', 'A380', file])).err).toContain('cli/not-in-plan');
  });
});

describe('list', () => {
  test('a word filters, whatever its case, and matches designations too', async () => {
    const rows = JSON.parse((await runHere(['list', 'alloys', 'zp0400', '--json'])).out) as { id: string }[];
    expect(rows.map((row) => row.id)).toEqual(['Zamak 3']);
    expect((await runHere(['list', 'alloys', 'no such alloy'])).out).toMatch(/^id +family.*\n$/);
  });

  test("machines come from the user's plant", async () => {
    folder.write('plant.yaml', STARTER_PLANT);
    expect(JSON.parse((await runHere(['list', 'machines', '--json', '--plant', folder.file('plant.yaml')])).out)).toHaveLength(2);
  });

  test('an unknown list names those there are', async () => {
    const { code, err } = await runHere(['list', 'machine']);
    expect(code).toBe(2);
    expect(err).toContain('machines');
  });
});

describe('schema', () => {
  const ajv = () => new Ajv2020({ strict: false, allErrors: true });
  const schema = async (kind: string) => JSON.parse((await runHere(['schema', kind])).out);

  test.each(['part', 'plant', 'plan', 'replan', 'rule'])('%s is a JSON Schema 2020-12 with an id', async (kind) => {
    const text = await schema(kind);
    expect(text.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(text.$id).toBe(`urn:diewright:${kind}/1`);
    expect(() => ajv().compile(text)).not.toThrow();
  });

  test('the starters fit their schemas, and a slip does not', async () => {
    const fits = async (kind: string, text: string) => ajv().validate(await schema(kind), parse(text));
    expect(await fits('part', STARTER_PART)).toBe(true);
    expect(await fits('plant', STARTER_PLANT)).toBe(true);
    expect(await fits('rule', STARTER_RULE)).toBe(true);
    expect(await fits('part', STARTER_PART.replace('geometry:', 'geometri:'))).toBe(false);
    expect(await fits('rule', STARTER_RULE.replace('require:', 'requires:'))).toBe(false);
  });

  test('a real plan fits the schema of plans', async () => {
    const plan = JSON.parse((await runHere(['plan', '-q', folder.file('cover.part.yaml'), '-f', 'json'])).out);
    const validate = ajv().compile(await schema('plan'));
    expect(validate(plan), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
  });
});

describe('new', () => {
  test('the part plans cleanly, with the built-in plant and with the new plant', async () => {
    folder.write('new-plant.yaml', (await runHere(['new', 'plant'])).out);
    expect((await runHere(['plan', folder.file('cover.part.yaml'), '--fail-on', 'warning'])).code).toBe(0);
    expect((await runHere(['plan', folder.file('cover.part.yaml'), '--plant', folder.file('new-plant.yaml')])).code).toBe(0);
  });

  test('the rule compiles with its examples', () => {
    const { diagnostics } = compileRulebook([{ name: 'limits/clamp/house-use.yaml', text: STARTER_RULE }], wordOf);
    expect(diagnostics.map((d) => `${d.code} ${d.message}`)).toEqual([]);
  });

  test('a file that is there is kept, unless forced', async () => {
    const out = folder.file('mine.part.yaml');
    folder.write('mine.part.yaml', 'mine');
    expect((await runHere(['new', 'part', '--out', out])).code).toBe(2);
    expect(folder.read('mine.part.yaml')).toBe('mine');
    expect((await runHere(['new', 'part', '--out', out, '--force'])).code).toBe(0);
    expect(folder.read('mine.part.yaml')).toBe(STARTER_PART);
  });
});
