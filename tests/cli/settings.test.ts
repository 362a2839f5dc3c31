import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync } from 'node:fs';
import { delimiter, relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { projectFileFor } from '../../src/cli/settings.ts';
import { STARTER_PLANT, STARTER_PROJECT } from '../../src/spec/starters.ts';
import { GOOD_LIMIT } from '../unit/rulebook/bad-rules/make.ts';
import { makeFolder } from './folder.ts';

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  for (const name of ['parts/deep', 'house/limits/wall', 'other/limits/wall', 'empty']) mkdirSync(folder.file(name), { recursive: true });
  folder.write('house/limits/wall/house.yaml', GOOD_LIMIT);
  folder.write('other/limits/wall/other.yaml', GOOD_LIMIT);
  folder.write('hall.yaml', STARTER_PLANT);
  for (const name of ['parts/a.part.yaml', 'parts/deep/b.part.yaml']) folder.write(name, folder.read('cover.part.yaml'));
});
afterAll(() => folder.remove());

const ADJUSTED = `adjusted:
  - { rule: clamp/oversized, severity: off, reason: the hall plan assigns machines }
`;

/** The rows that --show-config prints: setting, value, from. */
function config(args: readonly string[], env: Readonly<Record<string, string>> = {}): Record<string, [value: string, from: string]> {
  const { code, out, err } = folder.run(['plan', ...args, '--show-config'], { env });
  expect([code, err]).toEqual([0, '']);
  const rows = out
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.split(/ {2,}/) as [string, string, string]);
  return Object.fromEntries(rows.map(([setting, value, from]) => [setting, [value, from]]));
}

describe('which setting holds', () => {
  // Option over environment over project file over built in: every way in which they can meet.
  const part = 'parts/deep/b.part.yaml';
  const WAYS = [0, 1, 2, 3, 4, 5, 6, 7].map((bits) => ({ option: (bits & 4) !== 0, env: (bits & 2) !== 0, project: (bits & 1) !== 0 }));

  test.each(WAYS)('option $option, environment $env, project file $project', ({ option, env, project }) => {
    folder.write(
      'parts/diewright.yaml',
      project ? 'diewright: project/1\nplant: ../hall.yaml\nrules: [../house]\nfail_on: warning\n' : STARTER_PROJECT.replace(/^fail_on.*\n/m, ''),
    );
    const found = config(
      [part, ...(option ? ['--plant', 'option.yaml', '--rules', 'option', '--rules', 'two', '--fail-on', 'never'] : [])],
      env ? { DIEWRIGHT_PLANT: 'env.yaml', DIEWRIGHT_RULES: `env${delimiter}env2`, DIEWRIGHT_FAIL_ON: 'error' } : {},
    );
    const expected = option
      ? { plant: ['option.yaml', '--plant'], rules: ['two', '--rules'], fail_on: ['never', '--fail-on'] }
      : env
        ? { plant: ['env.yaml', 'DIEWRIGHT_PLANT'], rules: ['env2', 'DIEWRIGHT_RULES'], fail_on: ['error', 'DIEWRIGHT_FAIL_ON'] }
        : project
          ? { plant: ['hall.yaml', 'parts/diewright.yaml:2'], rules: ['house', 'parts/diewright.yaml:3'], fail_on: ['warning', 'parts/diewright.yaml:4'] }
          : { plant: ['typical (invented)', 'built in'], rules: ['none of a house', 'built in'], fail_on: ['error', 'built in'] };
    expect(found).toMatchObject({ ...expected, project: ['parts/diewright.yaml', 'found from the input upwards'] });
  });

  test('an empty variable is none; a wrong one is bad input', () => {
    folder.write('parts/diewright.yaml', STARTER_PROJECT);
    expect(config([part], { DIEWRIGHT_FAIL_ON: '', DIEWRIGHT_PLANT: '', DIEWRIGHT_RULES: '' })).toMatchObject({ plant: ['typical (invented)', 'built in'] });
    const { code, out, err } = folder.run(['plan', part], { env: { DIEWRIGHT_FAIL_ON: 'sometimes' } });
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('cli/environment');
  });

  test('fail_on ends the run, the option wins over it', () => {
    folder.write('parts/diewright.yaml', 'diewright: project/1\nrules: [../house]\nfail_on: warning\n');
    folder.write('parts/thin.part.yaml', folder.read('cover.part.yaml').replace('least: 2.5 mm, nominal: 3 mm', 'least: 0.8 mm, nominal: 0.9 mm'));
    expect(folder.run(['plan', 'parts/thin.part.yaml', '-q', '-f', 'findings']).code).toBe(1);
    expect(folder.run(['plan', 'parts/thin.part.yaml', '-q', '-f', 'findings', '--fail-on', 'never']).code).toBe(0);
  });
});

describe('the project file that is found', () => {
  const here = (input?: string) => {
    const path = projectFileFor(input);
    return path === undefined ? undefined : relative(folder.path, path);
  };

  test('the nearest from the input upwards, up to the top of a repository', () => {
    folder.write('diewright.yaml', STARTER_PROJECT);
    expect(here(folder.file('parts/deep/b.part.yaml'))).toBe('parts/diewright.yaml');
    expect(here(folder.file('house/x.part.yaml'))).toBe('diewright.yaml');
    mkdirSync(folder.file('parts/deep/.git'));
    expect(here(folder.file('parts/deep/b.part.yaml'))).toBe(undefined);
    folder.write('parts/deep/diewright.yaml', STARTER_PROJECT);
    expect(here(folder.file('parts/deep/b.part.yaml'))).toBe('parts/deep/diewright.yaml');
    execFileSync('rm', ['-r', folder.file('parts/deep/.git'), folder.file('parts/deep/diewright.yaml'), folder.file('diewright.yaml')]);
  });

  test('each part is planned with its own; standard input with that of the current folder', () => {
    folder.write('parts/diewright.yaml', `diewright: project/1\nrules: [../house]\n${ADJUSTED}`);
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml', 'parts/a.part.yaml', '-f', 'json', '-q', '--fail-on', 'never']);
    expect([code, err]).toEqual([0, '']);
    const { plans } = JSON.parse(out) as { plans: { houseRules?: { id: string; at: { file: string; line: number } }[] }[] };
    expect(plans.map((plan) => plan.houseRules?.map(({ id, at }) => `${id} ${at.file}:${at.line}`))).toEqual([
      undefined,
      ['wall/house ../house/limits/wall/house.yaml:1', 'clamp/oversized diewright.yaml:4'],
    ]);
    const stdin = folder.run(['plan', '-', '-f', 'json', '-q'], { input: folder.read('cover.part.yaml') });
    expect(JSON.parse(stdin.out).houseRules).toBe(undefined);
  });

  test('the same bytes from whatever folder the command is run', () => {
    const json = (args: readonly string[]) => JSON.parse(folder.run(['plan', ...args, '-f', 'json', '-q', '--fail-on', 'never']).out).houseRules;
    expect(json(['parts/deep/b.part.yaml'])).toEqual(json([folder.file('parts/deep/b.part.yaml')]));
  });

  test('--show-config tells several projects apart', () => {
    const { out } = folder.run(['plan', 'cover.part.yaml', 'parts/a.part.yaml', 'parts/deep/b.part.yaml', '--show-config']);
    expect(out).toMatch(/^cover\.part\.yaml\nsetting +value +from\nproject +none +none found\n/);
    expect(out).toMatch(/\n\nparts\/a\.part\.yaml\nparts\/deep\/b\.part\.yaml\nsetting/);
    expect(out).toMatch(/adjusted +clamp\/oversized off +parts\/diewright\.yaml:4\n$/);
  });

  test('a fault in it is said once, at its place, for all parts under it; other parts are planned', () => {
    folder.write('parts/diewright.yaml', 'diewright: project/1\nfail_on: no\n');
    const { code, out, err } = folder.run(['plan', 'parts/a.part.yaml', 'parts/deep/b.part.yaml', 'cover.part.yaml', '--fail-on', 'never']);
    expect(code).toBe(2);
    expect(out).toContain('# Casting plan: Cover');
    expect(err.match(/spec\/unknown-word/g)).toHaveLength(1);
    expect(err).toContain('parts/diewright.yaml:2:10: error:');
  });

  test('neither it nor the plant is written over', () => {
    folder.write('parts/diewright.yaml', 'diewright: project/1\nplant: ../hall.yaml\n');
    for (const target of ['parts/diewright.yaml', 'hall.yaml'])
      expect(folder.run(['plan', 'parts/a.part.yaml', '-f', `json=${target}`]).err).toContain('cli/output-twice');
  });
});

describe('a folder of rules on the disk', () => {
  test.each([
    ['not there', 'nowhere', 'file/not-found'],
    ['a file', 'hall.yaml', 'file/not-a-folder'],
    ['empty', 'empty', 'rules/folder-empty'],
  ])('%s', (_, name, code) => {
    const { code: exit, out, err } = folder.run(['plan', 'cover.part.yaml', '--rules', name]);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toContain(`[${code}]`);
    expect(err).toContain(name);
    expect(err).not.toMatch(/\n\s+at .+:\d+:\d+/);
  });

  test('a linked file is read, hidden files and other kinds are not', () => {
    mkdirSync(folder.file('linked/limits/wall'), { recursive: true });
    symlinkSync(folder.file('house/limits/wall/house.yaml'), folder.file('linked/limits/wall/linked.yaml'));
    symlinkSync(folder.file('linked'), folder.file('linked/limits/circle'));
    folder.write('linked/limits/wall/.house.yaml.swp', 'x');
    folder.write('linked/limits/wall/.hidden.yaml', 'x: [');
    folder.write('linked/README.md', 'x');
    const { code, out } = folder.run(['list', 'rules', 'linked', '--rules', 'linked']);
    expect(code).toBe(0);
    expect(out).toContain('wall/linked');
  });

  test('standard input for the plant and for the part is one too many', () => {
    expect(folder.run(['plan', '-', '--plant', '-']).err).toContain('cli/input-twice');
  });
});
