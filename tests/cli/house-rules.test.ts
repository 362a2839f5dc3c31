import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Ajv2020 from 'ajv/dist/2020.js';
import { Command } from 'commander';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { Context } from '../../src/cli/context.ts';
import { checkHouseRules } from '../../src/cli/rule-check.ts';
import { readRuleFolder } from '../../src/cli/rule-folder.ts';
import { Surroundings } from '../../src/cli/settings.ts';
import { loadRulebook, testRules } from '../../src/index.ts';
import { STARTER_RULE } from '../../src/rulebook/starter.ts';
import { STARTER_PROJECT } from '../../src/spec/starters.ts';
import { GOOD_ALLOY, GOOD_CAUTION, GOOD_CHOICE, GOOD_SOURCES, GOOD_TABLE } from '../unit/rulebook/bad-rules/make.ts';
import { makeFolder } from './folder.ts';
import { noIo, runHere } from './run-here.ts';

const EXAMPLE = resolve(import.meta.dirname, '../../examples/reservoir-cover');
const CLI = resolve(import.meta.dirname, '../../dist/cli.cjs');

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  mkdirSync(folder.file('example'));
  for (const name of ['diewright.yaml', 'reservoir-cover.part.yaml', 'rules']) cpSync(join(EXAMPLE, name), folder.file(`example/${name}`), { recursive: true });
  for (const name of ['limits/clamp', 'tables/draft', 'choices', 'cautions', 'alloys']) mkdirSync(folder.file(`all/${name}`), { recursive: true });
  folder.write('all/limits/clamp/house-use.yaml', STARTER_RULE);
  folder.write('all/tables/draft/constant.yaml', GOOD_TABLE);
  folder.write('all/choices/cooling.yaml', GOOD_CHOICE);
  folder.write('all/cautions/handling.yaml', GOOD_CAUTION);
  folder.write('all/alloys/aluminium.yaml', GOOD_ALLOY);
  folder.write('all/sources.yaml', GOOD_SOURCES);
});
afterAll(() => folder.remove());

const PART = 'example/reservoir-cover.part.yaml';
const planned = (args: readonly string[]) => JSON.parse(folder.run(['plan', ...args, '-f', 'json', '-q', '--fail-on', 'never']).out);

describe('the worked example of the repository', () => {
  test('its rules are sound and their examples come out as they say', async () => {
    const { diagnostics, rules, examples } = await testRules(await loadRulebook(), {
      folders: [{ name: 'rules', files: readRuleFolder(join(EXAMPLE, 'rules')) }],
    });
    expect(diagnostics).toEqual([]);
    expect([rules, examples]).toEqual([2, 8]);
  });

  test('the plan says what is changed and why, and a finding names the file of its rule', () => {
    const { out } = folder.run(['plan', PART, '-q', '--workings']);
    expect(out).toContain('## House rules');
    expect(out).toMatch(/\(limit `clamp\/usual-use`\) \| replaced \| Pressure-tight covers flashed .* \| `rules\/limits\/clamp\/usual-use\.yaml:\d+` \|/);
    expect(out).toMatch(/`clamp\/oversized`\) \| switched off \| Machines are assigned by the hall plan/);
    expect(out).toMatch(/`finish\/leak-rate`\) \| re-graded from note to warning \| No pressure-tight part/);
    expect(out).toContain('A380: casting temperature (alloy `A380`) | replaced');
    expect(out).toContain('  - Rule: re-graded from note to warning by diewright.yaml:');
    expect(out).toContain('house rules: rules/alloys/aluminium.yaml');
  });

  test('the JSON says the same and fits its schema; the sheets say that there are house rules', async () => {
    const plan = planned([PART]);
    expect(plan.houseRules.map(({ id, change }: { id: string; change: string }) => `${id} ${change}`)).toEqual([
      'clamp/usual-use replaced',
      'cycle/trim-cell added',
      'A380 replaced',
      'clamp/oversized switched off',
      'finish/leak-rate re-graded',
    ]);
    expect(plan.findings.find(({ code }: { code: string }) => code === 'finish/leak-rate')).toMatchObject({
      severity: 'warning',
      rule: expect.stringContaining('re-graded from note'),
    });
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse((await runHere(['schema', 'plan'])).out));
    expect(validate(plan), JSON.stringify(validate.errors?.slice(0, 3))).toBe(true);
    expect(folder.run(['plan', PART, '-q', '--sheet', 'shot']).out).toContain('Worked out with house rules (5 changes, listed in the plan).');
  });

  test('the figures of its alloy are used, the others are as they were', () => {
    const [house, builtIn] = [planned([PART]), planned([PART, '--rules', 'all'])];
    expect(house.values['alloy.casting-temperature']).toMatchObject({
      value: 660,
      status: 'practice',
      note: expect.stringContaining('rules/alloys/aluminium.yaml'),
    });
    expect(builtIn.values['alloy.casting-temperature'].status).toBe('memory');
    expect(house.values['alloy.liquidus']).toEqual(builtIn.values['alloy.liquidus']);
  });

  test('the search minds the limit that takes the place of a built-in one: a warning weighs, an error stops', () => {
    const rule = 'example/rules/limits/clamp/usual-use.yaml';
    const machineOf = (plan: { decisions: Record<string, { value: string; because: string }> }) => plan.decisions['machine.model'];
    const warned = planned([PART]);
    expect(machineOf(warned)?.because).toContain('locking force within the share of the rating that the house uses');
    const use = ({ values }: { values: Record<string, { value: number }> }): number =>
      (values['clamp.locking-force']?.value ?? 0) / (values['machine.locking-force']?.value ?? 1);
    expect(use(warned)).toBeGreaterThan(0.75);
    const text = folder.read(rule);
    folder.write(rule, text.replace('severity: warning', 'severity: error'));
    const stopped = planned([PART]);
    folder.write(rule, text);
    expect(use(stopped)).toBeLessThanOrEqual(0.75);
    expect(machineOf(stopped)?.value).not.toBe(machineOf(warned)?.value);
  });

  test('a plan without house rules has no such section', () => {
    expect(folder.run(['plan', 'cover.part.yaml', '-q']).out).not.toMatch(/house rules/i);
    expect(planned(['cover.part.yaml'])).not.toHaveProperty('houseRules');
  });
});

describe('house rules of every kind', () => {
  test('table, decision, alloy and caution are used, and the plan says whose they are', () => {
    const text = folder.read('cover.part.yaml').replace('alloy: A380', 'alloy: House 226');
    folder.write('mine.part.yaml', text);
    const plan = planned(['mine.part.yaml', '--rules', 'all']);
    expect(plan.alloy.id).toBe('House 226');
    expect(plan.values['alloy.density']).toMatchObject({ value: 2.76, source: ['HOUSE-MELT table 1'], status: 'source' });
    expect(plan.sources).toHaveProperty('HOUSE-MELT');
    expect(plan.values['draft.least-inside'].value).toBeLessThan(planned(['cover.part.yaml']).values['draft.least-inside'].value);
    const draft =
      plan.values['draft.constant-inside'] ??
      Object.values(plan.values as Record<string, { table?: string; note?: string }>).find((v) => v.table === 'draft/constant');
    expect(draft.note).toContain('house rules: all/tables/draft/constant.yaml');
    expect(plan.decisions['cooling.medium'].because).toMatch(/\(house rules: all\/choices\/cooling\.yaml\)$/);
    expect(plan.cautions.find(({ id }: { id: string }) => id === 'handling/house-gloves')).toMatchObject({ house: 'all/cautions/handling.yaml' });
  });

  test('an alloy with little more than a density is planned as far as its figures go', () => {
    const { code, err } = folder.run(['plan', 'mine.part.yaml', '--rules', 'all', '--fail-on', 'never', '-q']);
    expect([code, err]).toEqual([0, '']);
  });
});

describe('a check of the rules alone', () => {
  const check = async (inputs: readonly string[], rules?: readonly string[]) => {
    let [out, err] = ['', ''];
    const io = {
      ...noIo(),
      out: {
        isTTY: false,
        write: (text: string) => {
          out += text;
        },
      },
      err: {
        isTTY: false,
        write: (text: string) => {
          err += text;
        },
      },
    };
    const surroundings = new Surroundings(rules === undefined ? {} : { rules }, io);
    const code = await checkHouseRules(surroundings, inputs, new Context(io, new Command()));
    return { code, out, err };
  };

  test('sound ones: how much was read and run', async () => {
    const { code, out, err } = await check([folder.file(PART)]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/rules, .*diewright\.yaml: 4 files, 2 rules with conditions; all 8 examples come out as they say\n$/);
  });

  test('an example that lies: which, with its numbers', async () => {
    mkdirSync(folder.file('lying/limits/clamp'), { recursive: true });
    folder.write('lying/limits/clamp/house-use.yaml', STARTER_RULE.replace('f: 3500, rated: 4000 }, holds: false', 'f: 3100, rated: 4000 }, holds: false'));
    const { code, out, err } = await check([], [folder.file('lying')]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/house-use\.yaml:\d+:5: error: f = 3100, rated = 4000 holds, but the example says that it does not \[rules\/example\]/);
    expect(err).toContain('require: f <= 0.8 * rated gives true');
  });

  test('none set', async () => {
    await expect(check([folder.file('cover.part.yaml')])).rejects.toThrow('no house rules are set');
  });
});

describe('explain and list', () => {
  test.each([
    ['clamp/machine-use', [], 'active, as built in'],
    ['clamp/usual-use', [], 'active, replaced by rules/limits/clamp/usual-use.yaml:2, because: Pressure-tight'],
    ['cycle/trim-cell', [], 'active, added by rules/limits/cycle/trim-cell.yaml:2, because: What the cell'],
    ['finish/leak-rate', [], 'active, re-graded from note to warning by diewright.yaml:'],
    ['clamp/oversized', [], 'not judged, switched off by diewright.yaml:6, because: Machines'],
    ['A380', [], 'active, replaced by rules/alloys/aluminium.yaml:4'],
    ['draft/constant', [], 'active, as built in'],
    ['clamp/usual-use', [PART], 'active, replaced by rules/limits/clamp/usual-use.yaml:2'],
    ['clamp/oversized', [PART], 'not judged'],
    ['clamp/machine-use', [PART], 'active, as built in'],
  ])('explain %s %j', (id, file, says) => {
    const cwd = spawnSync(
      process.execPath,
      [resolve(import.meta.dirname, '../../bin/diewright.js'), 'explain', id, ...file.map((name) => name.replace('example/', ''))],
      {
        cwd: folder.file('example'),
        encoding: 'utf8',
      },
    );
    expect([cwd.status, cwd.stderr]).toEqual([0, '']);
    expect(cwd.stdout.replace(/\s+/g, ' ')).toContain(`here ${says}`);
  });

  test('list marks what is not as built in', () => {
    const rows = (what: string): Record<string, string>[] => JSON.parse(folder.run(['list', what, '--json', '--rules', 'all']).out);
    const here = (what: string, id: string) => rows(what).find((row) => row['id'] === id)?.['here'];
    expect(here('rules', 'clamp/house-use')).toBe('added by all/limits/clamp/house-use.yaml:7');
    expect(here('rules', 'handling/house-gloves')).toBe('added by all/cautions/handling.yaml:2');
    expect(here('rules', 'clamp/machine-use')).toBe('built in');
    expect(here('tables', 'draft/constant')).toBe('replaced by all/tables/draft/constant.yaml:1');
    expect(here('choices', 'cooling.medium')).toBe('replaced by all/choices/cooling.yaml:2');
    expect(here('alloys', 'House 226')).toBe('added by all/alloys/aluminium.yaml:3');
  });
});

describe('schemas and starters', () => {
  const compiled = new Map<string, Promise<ReturnType<Ajv2020['compile']>>>();
  const compile = async (kind: string) => new Ajv2020({ strict: false }).compile(JSON.parse((await runHere(['schema', kind])).out));
  const fits = async (kind: string, text: string) => {
    if (!compiled.has(kind)) compiled.set(kind, compile(kind));
    return ((await compiled.get(kind)) as ReturnType<Ajv2020['compile']>)(parse(text));
  };

  test('each kind of rule file fits its schema', async () => {
    const rules = resolve(import.meta.dirname, '../../rules');
    const some = (name: string) => readdirSync(join(rules, name), { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.yaml'));
    for (const [kind, name] of [
      ['limit', 'limits'],
      ['choice', 'choices'],
      ['table', 'tables'],
      ['caution', 'cautions'],
      ['alloy', 'alloys'],
    ] as const)
      for (const path of some(name)) expect(await fits(kind, readFileSync(join(rules, name, path), 'utf8')), path).toBe(true);
    expect(await fits('sources', GOOD_SOURCES)).toBe(true);
    expect(await fits('limit', STARTER_RULE)).toBe(true);
    expect(await fits('limit', STARTER_RULE.replace('require:', 'requires:'))).toBe(false);
    expect(await fits('project', STARTER_PROJECT)).toBe(true);
    expect(await fits('project', readFileSync(join(EXAMPLE, 'diewright.yaml'), 'utf8'))).toBe(true);
    expect(await fits('project', STARTER_PROJECT.replace('fail_on', 'fail-on'))).toBe(false);
  });

  test('the starter of a rule can be tried as it says', () => {
    mkdirSync(folder.file('new/limits/clamp'), { recursive: true });
    expect(folder.run(['new', 'rule', '--out', 'new/limits/clamp/house-use.yaml']).code).toBe(0);
    expect(folder.run(['list', 'rules', 'house', '--rules', 'new']).out).toContain('clamp/house-use');
    expect(folder.run(['explain', 'clamp/house-use', 'cover.part.yaml', '--rules', 'new']).out).toMatch(/verdict +(holds|broken)/);
  });

  test.each(['rules/expression', 'rules/yaml-syntax', 'rules/caution-kept', 'cli/environment', 'file/not-a-folder'])(
    'the code %s can be explained',
    async (code) => {
      expect((await runHere(['explain', code])).out).toContain('code of a finding');
    },
  );
});

describe('faults, through the command', () => {
  test('all of them, with file, line and column; nothing is written', () => {
    mkdirSync(folder.file('bad/limits/wall'), { recursive: true });
    folder.write('bad/limits/wall/a.yaml', STARTER_RULE.replace('clamp.locking-force in kN, rated', 'clamp.loking-force in kN, rated'));
    folder.write('bad/limits/wall/b.yaml', STARTER_RULE.replace('f <= 0.8 * rated', 'f <= 0.8 * ratd'));
    symlinkSync(folder.file('nowhere.yaml'), folder.file('bad/limits/wall/c.txt'));
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml', '--rules', 'bad', '-f', 'json=out.json']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(
      /^bad\/limits\/wall\/a\.yaml:\d+:\d+: error: no plan value is called "clamp\.loking-force"; did you mean "clamp\.locking-force"\? \[rules\/unknown-value\]$/m,
    );
    expect(err).toMatch(/^bad\/limits\/wall\/b\.yaml:\d+:\d+: error: .*did you mean "rated"\? \[rules\/expression\]$/m);
    expect(err).toContain('2 errors');
    expect(readdirSync(folder.path)).not.toContain('out.json');
  });

  test('a link that leads nowhere', () => {
    mkdirSync(folder.file('broken/limits/wall'), { recursive: true });
    symlinkSync(folder.file('nowhere.yaml'), folder.file('broken/limits/wall/c.yaml'));
    const { code, err } = folder.run(['plan', 'cover.part.yaml', '--rules', 'broken']);
    expect(code).toBe(2);
    expect(err).toContain('[file/not-found]');
  });

  test('several parts under the same bad rules say it once', () => {
    const { err } = folder.run(['plan', 'cover.part.yaml', PART, '--rules', 'bad']);
    expect(err.match(/rules\/expression/g)).toHaveLength(1);
  });
});

test('without house rules nothing of their reader is loaded', () => {
  const script = (args: readonly string[]) => `
    const { main } = require(${JSON.stringify(CLI)});
    const sink = { isTTY: false, write() {} };
    main(${JSON.stringify(args)}, { env: {}, out: sink, err: sink, stdin: (async function* () {})(), settled: async () => true })
      .then(() => console.log(JSON.stringify(Object.keys(require.cache).map((path) => path.split(/[\\\\/]/).at(-1)))));`;
  const loaded = (args: readonly string[]): string[] =>
    JSON.parse(spawnSync(process.execPath, ['-e', script(args)], { cwd: folder.path, encoding: 'utf8' }).stdout);
  const bare = loaded(['plan', 'cover.part.yaml', '-q']);
  expect(bare).toEqual(['cli.cjs']);
  expect(loaded(['plan', 'cover.part.yaml', '-q', '--rules', 'all'])).toContain('expression.cjs');
});
