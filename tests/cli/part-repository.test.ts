import { spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Log } from 'sarif';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { makeFolder } from './folder.ts';

// The example of a repository of parts, taken out of this one: its own workflow and hook run as they are written, with the
// command of the packed package.

const ROOT = join(import.meta.dirname, '../..');
const EXAMPLE = join(ROOT, 'examples/part-repository');
const TOOL = 'tools/diewright-0.1.0.tgz';

const folder = makeFolder({});
const repository = folder.file('repository');
const summary = folder.file('summary.md');

/** Stands in for npx, which would fetch what the package depends on: runs the command of the package unpacked, and nothing of this checkout. */
const NPX = `#!/bin/sh
for word; do case "$word" in --package=*) test -f "\${word#--package=}" || exit 9;; esac; done
while [ "$1" != -- ]; do shift; done
shift; test "$1" = diewright || exit 8; shift
exec "${process.execPath}" "${folder.file('unpacked/package/bin/diewright.js')}" "$@"
`;

function shell(command: string): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync('bash', ['-e', '-c', command], {
    cwd: repository,
    encoding: 'utf8',
    env: { PATH: `${folder.file('bin')}:${process.env['PATH'] ?? ''}`, HOME: folder.path, GITHUB_STEP_SUMMARY: summary },
  });
  return { code: status, out: stdout, err: stderr };
}

const git = (words: string): void => {
  const { code, err } = shell(`git -c user.name=t -c user.email=t@example.invalid -c init.defaultBranch=main ${words}`);
  if (code !== 0) throw new Error(err);
};

/** The commands of the workflow, in their order. */
const STEPS: readonly string[] = (
  parse(readFileSync(join(EXAMPLE, '.github/workflows/casting-plans.yml'), 'utf8')) as { jobs: { check: { steps: { run?: string }[] } } }
).jobs.check.steps.flatMap(({ run }) => run ?? []);
const [HOOK = ''] = (parse(readFileSync(join(EXAMPLE, '.pre-commit-config.yaml'), 'utf8')) as { repos: { hooks: { entry: string }[] }[] }).repos.flatMap(
  ({ hooks }) => hooks.map(({ entry }) => entry),
);

const edit = (file: string, from: string, to: string): void => {
  const text = readFileSync(join(repository, file), 'utf8');
  if (!text.includes(from)) throw new Error(`${file} has no ${from}`);
  writeFileSync(join(repository, file), text.replace(from, to));
};
const sarif = (): Log => JSON.parse(readFileSync(join(repository, 'check.sarif'), 'utf8')) as Log;
/** Results that are open, as code, file and line. */
const open = (): string[] =>
  (sarif().runs[0]?.results ?? [])
    .filter(({ suppressions = [], level }) => suppressions.length === 0 && level === 'error')
    .map(({ ruleId, locations }) => {
      const { artifactLocation, region } = locations?.[0]?.physicalLocation ?? {};
      return `${ruleId} ${artifactLocation?.uri}:${region?.startLine}`;
    });

beforeAll(() => {
  const packed = spawnSync('npm', ['pack', '--ignore-scripts', '--pack-destination', folder.path], {
    cwd: ROOT,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (packed.status !== 0) throw new Error(packed.stderr);
  mkdirSync(folder.file('unpacked'));
  spawnSync('tar', ['-xzf', folder.file('diewright-0.1.0.tgz'), '-C', folder.file('unpacked')]);
  mkdirSync(folder.file('bin'));
  folder.write('bin/npx', NPX);
  chmodSync(folder.file('bin/npx'), 0o755);
  cpSync(EXAMPLE, repository, { recursive: true });
  mkdirSync(join(repository, 'tools'));
  copyFileSync(folder.file('diewright-0.1.0.tgz'), join(repository, TOOL));
  git('init -q');
  git('add -A');
  git('commit -qm first --no-gpg-sign');
});
beforeEach(() => {
  git('checkout -q .');
  rmSync(summary, { force: true });
});
afterAll(() => folder.remove());

describe('as it is', () => {
  test('the workflow passes, and says what is accepted', () => {
    expect(STEPS).toHaveLength(2);
    const runs = STEPS.map(shell);
    expect(runs.map(({ code, err }) => [code, err.includes('internal')])).toEqual([
      [0, false],
      [0, false],
    ]);
    expect(runs[0]?.out).toContain('all 5 examples come out as they say');
    expect(open()).toEqual([]);
    const accepted = (sarif().runs[0]?.results ?? []).filter(({ suppressions = [] }) => suppressions.length > 0).map(({ ruleId }) => ruleId);
    expect(accepted).toEqual(expect.arrayContaining(['wall/small-hall', 'draft/wall']));
    expect(readFileSync(summary, 'utf8')).toContain('rail-clamp');
    expect(runs[1]?.out).not.toContain('::error');
  });

  test('the hook passes at once when nothing has changed', () => {
    expect(shell(HOOK)).toEqual({ code: 0, out: '', err: '' });
  });

  test('a step of the README: what another plant changes, by the plant of the repository before', () => {
    writeFileSync(join(repository, 'new-plant.yaml'), readFileSync(join(repository, 'plant.yaml'), 'utf8').replace('hourly_rate: 57', 'hourly_rate: 61'));
    const replan = /^diewright (replan .+)$/m.exec(readFileSync(join(EXAMPLE, 'README.md'), 'utf8'))?.[1];
    const { code, out, err } = shell(`npx --package=${TOOL} -- diewright ${replan} -f json --fail-on never`);
    expect([code, err.includes('wrote')]).toEqual([0, false]);
    const { parts } = JSON.parse(out) as { parts: { file: string; standing: string }[] };
    // What breaks a rule of the house before and after is told by the rules of the house.
    expect(parts.filter(({ standing }) => standing !== 'stays castable').map(({ file }) => file)).toEqual(['parts/rail-clamp/rail-clamp.part.yaml']);
    expect(parts).toHaveLength(readdirSync(join(EXAMPLE, 'parts')).length);
    rmSync(join(repository, 'new-plant.yaml'));
  });
});

describe('when a part is broken', () => {
  test('a wall too thin fails the workflow at its line, and the plan beside it is stale', () => {
    edit('parts/lamp-bracket/lamp-bracket.part.yaml', 'least: 2.2 mm', 'least: 1.5 mm');
    const { code, out } = shell(STEPS[1] as string);
    expect(code).toBe(1);
    expect(open()).toEqual(
      expect.arrayContaining(['wall/small-hall parts/lamp-bracket/lamp-bracket.part.yaml:10', 'check/stale-plan parts/lamp-bracket/plan.md:1']),
    );
    expect(out).toMatch(/^::error file=parts\/lamp-bracket\/lamp-bracket\.part\.yaml,line=10,.*title=wall\/small-hall::/m);
    expect(readFileSync(summary, 'utf8')).toContain('wall/small-hall');
    const hook = shell(HOOK);
    expect([hook.code, hook.out.includes('lamp-bracket'), hook.out.includes('coat-hook')]).toEqual([1, true, false]);
  });

  test('another alloy makes the plan stale, and the message says what changes and renews it', () => {
    edit('parts/coat-hook/coat-hook.part.yaml', 'alloy: Zamak 5', 'alloy: ZA-8');
    const { code, out } = shell(STEPS[1] as string);
    expect(code).toBe(1);
    expect(open()).toEqual(expect.arrayContaining(['check/stale-plan parts/coat-hook/plan.json:1', 'check/stale-plan parts/coat-hook/plan.md:1']));
    const renew = /renew it with: (diewright plan [^%\n]+)/.exec(out)?.[1];
    expect(renew).toContain('parts/coat-hook/coat-hook.part.yaml');
    expect(shell(`npx --package=${TOOL} -- ${renew}`).code).toBe(0);
    shell(STEPS[1] as string);
    expect(open().filter((one) => one.startsWith('check/stale-plan'))).toEqual([]);
  });

  test('an alloy that does not exist is bad input', () => {
    edit('parts/coat-hook/coat-hook.part.yaml', 'alloy: Zamak 5', 'alloy: Zamak 55');
    const { code, out } = shell(STEPS[1] as string);
    expect(code).toBe(2);
    expect(out).toMatch(/^::error file=parts\/coat-hook\/coat-hook\.part\.yaml,line=4,.*title=spec\/unknown-alloy::/m);
  });

  test('a rule whose example lies stops the first step', () => {
    edit('house-rules/limits/wall/small-hall.yaml', 'wall: 2.0, family: aluminium', 'wall: 1.0, family: aluminium');
    expect(shell(STEPS[0] as string).code).toBe(2);
  });
});
