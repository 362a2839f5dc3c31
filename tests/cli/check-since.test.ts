import { mkdirSync, renameSync, rmSync, symlinkSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { STARTER_PLANT } from '../../src/spec/starters.ts';
import { BROKEN, checkJson, folderWith, GOOD, NASTY_NAMES, THIN } from './check-folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());

/** A limit of the house. */
const HOUSE_LIMIT = `title: The wall is what our die casters fill
uses: { wall: part.wall-least in mm }
when: 'true'
require: wall >= 2.0
severity: error
message: 'The thinnest wall is {wall}'
why: Thinner walls were scrapped.
fix: Make it 2 mm.
status: practice
examples:
  - { given: { wall: 2.5 }, holds: true }
  - { given: { wall: 1.5 }, holds: false }
`;

/** A repository with one commit of these files. */
const repository = (files: Readonly<Record<string, string>>): void => {
  folder = folderWith(files);
  folder.git('init', '-q');
  folder.git('add', '-A');
  folder.git('commit', '-qm', 'first', '--no-gpg-sign');
};
const since = (revision: string, ...args: string[]): string[] => checkJson(folder, '--since', revision, ...args).files.map(({ file }) => file);

describe('--since', () => {
  test('nothing has changed: nothing is checked, and that is no failure', () => {
    repository({ 'a.part.yaml': BROKEN });
    const { code, out, err } = folder.run(['check', '--since', 'HEAD']);
    expect([code, out, err]).toEqual([0, '', 'nothing has changed since HEAD: 0 files checked: no findings\n']);
  });

  test('changes that are committed, staged, in the folder only, and new files', () => {
    repository({ 'committed.part.yaml': GOOD, 'staged.part.yaml': GOOD, 'loose.part.yaml': GOOD, 'same.part.yaml': BROKEN });
    folder.put('committed.part.yaml', THIN);
    folder.git('commit', '-qam', 'second', '--no-gpg-sign');
    folder.put('staged.part.yaml', THIN);
    folder.git('add', '-A');
    folder.put('loose.part.yaml', THIN);
    folder.put('new.part.yaml', GOOD);
    folder.put('.gitignore', 'ignored.part.yaml\n');
    folder.put('ignored.part.yaml', BROKEN);
    expect(since('HEAD~1')).toEqual(['committed.part.yaml', 'loose.part.yaml', 'new.part.yaml', 'staged.part.yaml']);
    expect(since('HEAD')).toEqual(['loose.part.yaml', 'new.part.yaml', 'staged.part.yaml']);
  });

  test('files that were moved, deleted, and whose names hold spaces, letters of any language, quotes and line breaks', () => {
    repository({ ...Object.fromEntries(NASTY_NAMES.map((name) => [`old/${name}`, GOOD])), 'gone.part.yaml': GOOD, 'same.part.yaml': GOOD });
    mkdirSync(folder.file('nëw folder'));
    for (const name of NASTY_NAMES) renameSync(folder.file(`old/${name}`), folder.file(`nëw folder/${name}`));
    rmSync(folder.file('gone.part.yaml'));
    folder.git('add', '-A');
    expect(since('HEAD').sort()).toEqual(NASTY_NAMES.map((name) => `nëw folder/${name}`).sort());
  });

  test('a plant means every part at or below its folder, even when it is gone', () => {
    repository({ 'plant.yaml': STARTER_PLANT, 'x/plant.yaml': STARTER_PLANT, 'x/a.part.yaml': GOOD, 'x/y/b.part.yaml': GOOD, 'z/c.part.yaml': GOOD });
    folder.put('x/plant.yaml', `# changed\n${STARTER_PLANT}`);
    expect(since('HEAD')).toEqual(['x/a.part.yaml', 'x/plant.yaml', 'x/y/b.part.yaml']);
    rmSync(folder.file('x/plant.yaml'));
    expect(since('HEAD')).toEqual(['x/a.part.yaml', 'x/y/b.part.yaml']);
    folder.put('plant.yaml', `# changed\n${STARTER_PLANT}`);
    expect(since('HEAD')).toEqual(['plant.yaml', 'x/a.part.yaml', 'x/y/b.part.yaml', 'z/c.part.yaml']);
  });

  test('the plant or the baseline of the run means all', () => {
    repository({ 'works/own.yaml': STARTER_PLANT, 'x/a.part.yaml': GOOD, 'known.yaml': 'diewright: baseline/1\nfindings: []\n' });
    expect(since('HEAD', 'x', '--plant', 'works/own.yaml', '--baseline', 'known.yaml')).toEqual([]);
    folder.put('works/own.yaml', `# changed\n${STARTER_PLANT}`);
    expect(since('HEAD', 'x')).toEqual([]);
    expect(since('HEAD', 'x', '--plant', 'works/own.yaml')).toEqual(['x/a.part.yaml']);
    folder.put('known.yaml', '# changed\ndiewright: baseline/1\nfindings: []\n');
    expect(since('HEAD', 'x', '--baseline', 'known.yaml')).toEqual(['x/a.part.yaml']);
  });

  test('a plan beside a part means that part', () => {
    repository({ 'x/a.part.yaml': GOOD, 'x/b.part.yaml': GOOD, 'x/b.plan.json': '{}', 'y/c.part.yaml': GOOD, 'y/plan.md': 'x' });
    folder.put('x/b.plan.json', '{ }');
    expect(since('HEAD')).toEqual(['x/b.part.yaml']);
    rmSync(folder.file('y/plan.md'));
    expect(since('HEAD')).toEqual(['x/b.part.yaml', 'y/c.part.yaml']);
  });

  test('house rules, a plant and a project file that lie elsewhere mean every part that is planned with them, and no other', () => {
    repository({
      'house/limits/wall/other.yaml': HOUSE_LIMIT,
      'house/limits/wall/house.yaml': HOUSE_LIMIT,
      'works/own.yaml': STARTER_PLANT,
      'one/diewright.yaml': 'diewright: project/1\nrules: [../house]\n',
      'one/deep/a.part.yaml': GOOD,
      'two/diewright.yaml': 'diewright: project/1\nplant: ../works/own.yaml\n',
      'two/b.part.yaml': GOOD,
      'three/c.part.yaml': GOOD,
    });
    expect(since('HEAD')).toEqual([]);
    folder.put('house/limits/wall/house.yaml', HOUSE_LIMIT.replace('2.0', '1.9'));
    expect(since('HEAD')).toEqual(['one/deep/a.part.yaml']);
    folder.git('checkout', '-q', '.');
    rmSync(folder.file('house/limits/wall/other.yaml'));
    expect(since('HEAD')).toEqual(['one/deep/a.part.yaml']);
    folder.git('checkout', '-q', '.');
    folder.put('works/own.yaml', `# changed\n${STARTER_PLANT}`);
    expect(since('HEAD')).toEqual(['two/b.part.yaml']);
    expect(since('HEAD', '--rules', 'house')).toEqual(['two/b.part.yaml']);
    folder.git('checkout', '-q', '.');
    rmSync(folder.file('one/diewright.yaml'));
    expect(since('HEAD')).toEqual(['one/deep/a.part.yaml']);
    folder.git('checkout', '-q', '.');
    folder.put('house/limits/wall/new.yaml', HOUSE_LIMIT);
    expect(since('HEAD', 'three', '--rules', 'house')).toEqual(['three/c.part.yaml']);
  });

  test('a rule that a link leads to is part of the folder', () => {
    repository({ 'shared/house.yaml': HOUSE_LIMIT, 'one/diewright.yaml': 'diewright: project/1\nrules: [../house]\n', 'one/a.part.yaml': GOOD });
    mkdirSync(folder.file('house/limits/wall'), { recursive: true });
    symlinkSync('../../../shared/house.yaml', folder.file('house/limits/wall/house.yaml'));
    folder.git('add', '-A');
    folder.git('commit', '-qm', 'link', '--no-gpg-sign');
    expect(since('HEAD')).toEqual([]);
    folder.put('shared/house.yaml', HOUSE_LIMIT.replace('2.0', '1.9'));
    expect(since('HEAD')).toEqual(['one/a.part.yaml']);
  });

  test('from inside a folder of the repository, and for a file outside it, of which nothing is known', () => {
    repository({ 'r/x/a.part.yaml': GOOD, 'r/b.part.yaml': GOOD });
    folder.put('r/x/a.part.yaml', THIN);
    expect(JSON.parse(folder.run(['check', '-f', 'json', '--since', 'HEAD', '..'], { cwd: 'r/x' }).out).files).toMatchObject([{ file: 'a.part.yaml' }]);
    folder.put('outer/c.part.yaml', GOOD);
    rmSync(folder.file('.git'), { recursive: true });
    mkdirSync(folder.file('inner'));
    folder.git('init', '-q', 'inner');
    folder.put('inner/d.part.yaml', GOOD);
    folder.git('-C', 'inner', 'add', '-A');
    folder.git('-C', 'inner', 'commit', '-qm', 'x', '--no-gpg-sign');
    const { out } = folder.run(['check', '-f', 'json', '--since', 'HEAD', '.', '../outer'], { cwd: 'inner' });
    expect(JSON.parse(out).files).toMatchObject([{ file: '../outer/c.part.yaml' }]);
  });

  test.each(['no-such-branch', '--output=x', '', '-n', 'HEAD:a.part.yaml', '\u001b[2J'])('the revision %j is refused, and no file is written', (revision) => {
    repository({ 'a.part.yaml': GOOD });
    const { code, out, err } = folder.run(['check', '--since', revision, '-f', 'json=out.json']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('[check/revision]');
    expect(err).not.toContain('\u001b');
    expect(() => folder.read('out.json')).toThrow();
    expect(() => folder.read('x')).toThrow();
  });

  test('without a repository and without git the message says so', () => {
    folder = folderWith({ 'a.part.yaml': GOOD });
    expect(folder.run(['check', '--since', 'HEAD'], { env: { GIT_CEILING_DIRECTORIES: folder.path } })).toMatchObject({
      code: 2,
      err: expect.stringContaining('not a git repository'),
    });
    expect(folder.run(['check', '--since', 'HEAD'], { env: { PATH: folder.path } }).err).toContain('git is not installed');
  });
});
