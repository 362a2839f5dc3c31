import { existsSync, mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { cpuTime } from '../cpu-time.ts';
import { folderWith } from './check-folder.ts';
import { runHere } from './run-here.ts';

// Each sentence of the section "Security" of the README.

const SECRET = 'key-of-the-runner';
const DIE = (file: string): string => `diewright: die/1\ndie: { name: Pair }\nparts:\n  - { file: a.part.yaml }\n  - { file: ${file} }\n`;

let folder: ReturnType<typeof folderWith>;
const at = (name: string): string => folder.file(name);
beforeAll(() => {
  folder = folderWith({ 'around/secret.part.yaml': `${SECRET}\n`, 'around/plant.yaml': `${SECRET}\n`, 'repo/a.part.yaml': STARTER_PART });
  mkdirSync(at('repo/.git'));
  mkdirSync(at('repo/house/limits/wall'), { recursive: true });
});
afterAll(() => folder.remove());

async function refused(code: string, ...args: string[]): Promise<void> {
  const { code: exit, out, err } = await runHere(args);
  expect(exit).toBe(2);
  expect(out + err).toContain(code);
  expect(out + err).not.toContain(SECRET);
}

describe('files of a repository do not reach what lies around it', () => {
  test('a part of a die', async () => {
    folder.put('repo/out.die.yaml', DIE('../around/secret.part.yaml'));
    await refused('lies outside the repository', 'plan', at('repo/out.die.yaml'));
    folder.put('repo/in.die.yaml', DIE('nested/../b.part.yaml'));
    folder.put('repo/b.part.yaml', STARTER_PART);
    mkdirSync(at('repo/nested'), { recursive: true });
    expect((await runHere(['plan', at('repo/in.die.yaml'), '--fail-on', 'never'])).code).toBe(0);
  });

  test.each([
    ['plant: ../../around/plant.yaml', 'file/outside'],
    ['rules: [../../around]', 'file/outside'],
  ])('a project file with %s', async (line, code) => {
    folder.put('repo/project/diewright.yaml', `diewright: project/1\n${line}\n`);
    folder.put('repo/project/a.part.yaml', STARTER_PART);
    await refused(code, 'plan', at('repo/project/a.part.yaml'));
  });

  test('links that are read: a part, a rule, a plan beside a part', async () => {
    symlinkSync('../../around/secret.part.yaml', join(at('repo/nested'), 'link.part.yaml'));
    await refused('file/outside', 'plan', at('repo/nested/link.part.yaml'));
    await refused('file/outside', 'check', at('repo/nested'), '--threads', '0');
    symlinkSync('../../../../around/secret.part.yaml', at('repo/house/limits/wall/x.yaml'));
    await refused('file/outside', 'plan', at('repo/a.part.yaml'), '--rules', at('repo/house'));
  });

  test('links that are written to: an output, and a part that is replanned', async () => {
    writeFileSync(at('around/plan.json'), SECRET);
    symlinkSync('../around/plan.json', at('repo/plan.json'));
    await refused('file/outside', 'plan', at('repo/a.part.yaml'), '--format', `json=${at('repo/plan.json')}`);
    expect(folder.read('around/plan.json')).toBe(SECRET);
    writeFileSync(at('around/own.part.yaml'), STARTER_PART);
    symlinkSync('../../around/own.part.yaml', at('repo/nested/own.part.yaml'));
    await refused('file/outside', 'replan', at('repo/nested/own.part.yaml'), '--set', 'production.per_year=5000', '--write');
    expect(folder.read('around/own.part.yaml')).toBe(STARTER_PART);
    expect(readdirSync(at('around')).sort()).toEqual(['own.part.yaml', 'plan.json', 'plant.yaml', 'secret.part.yaml']);
  });

  test('what the command line names is read wherever it lies, and outside a repository there is no bound', async () => {
    writeFileSync(at('around/good.part.yaml'), STARTER_PART);
    expect((await runHere(['plan', at('around/good.part.yaml'), '--fail-on', 'never'])).code).toBe(0);
    folder.put('around/out.die.yaml', DIE('../repo/a.part.yaml').replace('file: a.part.yaml', 'file: good.part.yaml'));
    const { out, err } = await runHere(['plan', at('around/out.die.yaml'), '--fail-on', 'never']);
    expect(out + err).not.toContain('outside the repository');
  });
});

const rule = (when: string): string => `title: Bound of the test
uses:
  wall: part.wall-nominal in mm
when: '${when}'
require: wall < 9.0
severity: note
message: The wall is {wall}
why: A test.
fix: Make it thinner.
status: practice
examples:
  - { given: { wall: 1 }, holds: true }
  - { given: { wall: 10 }, holds: false }
`;

describe('nothing in a file runs', () => {
  test.each(['!!js/function "x"', '!!python/object:os.system x', '&a x', '*a'])('%s is refused', async (value) => {
    folder.put('repo/tag.part.yaml', STARTER_PART.replace(/alloy: .*/, `alloy: ${value}`));
    await refused('spec/', 'plan', at('repo/tag.part.yaml'));
  });

  test.each([
    ['"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!".matches("^(a+)+$")', 'matches'],
    ['[1.0, 2.0].all(a, [1.0].all(b, [1.0].all(c, a + b + c < wall)))', 'more than 2 loops'],
    [`${'wall > 0.0 && '.repeat(200)}true`, 'longer than 2000 characters'],
  ])('an expression of a house rule that could take without an end: %s', async (when, says) => {
    const rules = folderWith({ 'limits/wall/x.yaml': rule(when) });
    const start = cpuTime();
    const { code, err, out } = await runHere(['plan', at('repo/a.part.yaml'), '--rules', rules.path]);
    expect(cpuTime() - start).toBeLessThan(2000);
    expect([code, (out + err).includes('rules/expression'), (out + err).includes(says)]).toEqual([2, true, true]);
    rules.remove();
  });

  test('two loops over a list are evaluated', async () => {
    const rules = folderWith({ 'limits/wall/x.yaml': rule('[1.0, 2.0].exists(a, [0.0].all(b, a + b < wall + 9.0))') });
    expect((await runHere(['plan', at('repo/a.part.yaml'), '--rules', rules.path, '--fail-on', 'never'])).err).not.toContain('rules/');
    rules.remove();
  });
});

test.each(['--output=x', '-x', '--upload-pack=touch x', '', 'no\nsuch', '$(touch x)', '; touch x'])(
  '--since %j is no option and no command',
  async (revision) => {
    const { code, err } = await runHere(['check', at('repo'), `--since=${revision}`]);
    expect([code, err.includes('check/revision')]).toEqual([2, true]);
    expect(existsSync('x')).toBe(false);
  },
);
