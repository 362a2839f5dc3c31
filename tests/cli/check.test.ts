import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { main } from '../../src/cli/main.ts';
import { STARTER_PLANT } from '../../src/spec/starters.ts';
import { BROKEN, checkJson, folderWith, GOOD, NASTY_NAMES, THIN } from './check-folder.ts';
import { BIN } from './folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());
const using = (files: Readonly<Record<string, string>>) => {
  folder = folderWith(files);
  return folder;
};

describe('exit codes', () => {
  test.each([
    ['all is well', { 'a.part.yaml': GOOD }, [], 0],
    ['an error', { 'a.part.yaml': THIN }, [], 1],
    ['an error, and nothing fails', { 'a.part.yaml': THIN }, ['--fail-on', 'never'], 0],
    ['an error among good parts', { 'a.part.yaml': GOOD, 'b.part.yaml': THIN }, [], 1],
    ['a broken part', { 'a.part.yaml': BROKEN }, [], 2],
    ['a broken part, and nothing fails', { 'a.part.yaml': BROKEN }, ['--fail-on', 'never'], 2],
    ['a broken part beside an error', { 'a.part.yaml': BROKEN, 'b.part.yaml': THIN }, [], 2],
    ['a broken plant', { 'plant.yaml': STARTER_PLANT.replace('4000 kN', '4000') }, [], 2],
    ['a sound plant', { 'plant.yaml': STARTER_PLANT }, [], 0],
    ['an empty folder', {}, [], 2],
    ['a file that is not there', { 'a.part.yaml': GOOD }, ['b.part.yaml'], 2],
    ['a pattern that matches nothing', { 'a.part.yaml': GOOD }, ['x/*.part.yaml'], 2],
    ['one of two paths is not there', { 'a.part.yaml': GOOD }, ['a.part.yaml', 'b.part.yaml'], 2],
    ['an unknown format', { 'a.part.yaml': GOOD }, ['-f', 'jsno'], 2],
    ['an unknown threshold', { 'a.part.yaml': GOOD }, ['--fail-on', 'note'], 2],
    ['an unknown option', { 'a.part.yaml': GOOD }, ['--nonsense'], 2],
    ['a plant that is not there', { 'a.part.yaml': GOOD }, ['--plant', 'no.yaml'], 2],
    ['a baseline that is not there', { 'a.part.yaml': GOOD }, ['--baseline', 'no.yaml'], 2],
    ['an output that cannot be written', { 'a.part.yaml': GOOD }, ['-f', 'json=no/such/x.json'], 2],
    ['a --set that is no field', { 'a.part.yaml': GOOD }, ['--set', 'geometry.wal=1 mm'], 2],
    ['no git', { 'a.part.yaml': GOOD }, ['--since', 'main'], 2],
  ])('%s', (_, files, args, code) => {
    const run = using(files).run(['check', ...args]);
    expect([run.code, run.err.includes('internal fault'), /\n +at .+:\d+:\d+/.test(run.err)]).toEqual([code, false, false]);
  });
});

describe('which files', () => {
  const paths = (...args: string[]): string[] => checkJson(folder, ...args).files.map(({ file }) => file);

  test('a folder is searched at any depth, without dot folders and node_modules, and other files are passed over', () => {
    using({
      'b/c/deep.part.yaml': GOOD,
      'a.part.yaml': GOOD,
      'b/plant.yaml': STARTER_PLANT,
      'b/other.yaml': 'services: {}\n',
      '.hidden/x.part.yaml': BROKEN,
      'node_modules/x/y.part.yaml': BROKEN,
      'b/.dot.part.yaml': BROKEN,
    });
    expect(paths()).toEqual(['a.part.yaml', 'b/c/deep.part.yaml', 'b/plant.yaml']);
    expect(paths('b')).toEqual(['b/c/deep.part.yaml', 'b/plant.yaml']);
    expect(paths('./b/', 'b/c', `${folder.path}/b/c/deep.part.yaml`)).toEqual(['b/c/deep.part.yaml', 'b/plant.yaml']);
    expect(paths('**/*.part.yaml')).toEqual(['a.part.yaml', 'b/c/deep.part.yaml']);
    expect(paths('b/*.yaml', 'a.part.yaml')).toEqual(['a.part.yaml', 'b/plant.yaml']);
  });

  test('paths are printed from the working folder, wherever that is', () => {
    using({ 'b/c/deep.part.yaml': GOOD, 'x/y': '' });
    const { out } = folder.run(['check', '-f', 'json', '../b'], { cwd: 'x' });
    expect(JSON.parse(out).files[0].file).toBe('../b/c/deep.part.yaml');
    expect(out).not.toContain(folder.path);
  });

  test('links between folders end, and no part is checked twice', () => {
    using({ 'a/x.part.yaml': GOOD, 'real/z.part.yaml': GOOD });
    symlinkSync('..', folder.file('a/loop'));
    symlinkSync('.', folder.file('a/self'));
    symlinkSync('../real', folder.file('a/link'));
    expect(paths()).toEqual(['a/x.part.yaml', 'real/z.part.yaml']);
    expect(paths('a')).toEqual(['a/x.part.yaml', 'a/link/z.part.yaml'].sort());
  });

  test('a file of any name is checked when its first key says what it is; one that says nothing is a fault', () => {
    using({ 'cover.yaml': GOOD, 'works.yml': STARTER_PLANT, 'notes.txt': 'hello\n' });
    expect(paths('cover.yaml', 'works.yml')).toEqual(['cover.yaml', 'works.yml']);
    expect(paths('*.yaml')).toEqual(['cover.yaml']);
    const wrong = checkJson(folder, 'notes.txt', 'cover.yaml');
    expect([wrong.code, wrong.findings.find(({ fault }) => fault)?.code]).toEqual([2, 'check/unknown-kind']);
  });

  test('a path that is slightly wrong names the near one', () => {
    using({ 'parts/cover.part.yaml': GOOD });
    const { findings } = checkJson(folder, 'parts/covr.part.yaml');
    expect(findings).toMatchObject([{ code: 'check/nothing-matched', fault: true }]);
    expect(findings[0]?.message).toContain('did you mean "parts/cover.part.yaml"?');
  });

  test('a die description is read as one', () => {
    using({ 'a.die.yaml': 'diewright: die/1\n' });
    const missing = { fault: true, code: 'spec/missing-field', at: { file: 'a.die.yaml' } };
    expect(checkJson(folder)).toMatchObject({ code: 2, findings: [missing, missing] });
  });

  test.skipIf(process.getuid?.() === 0)('a folder without permission is said, and the others are checked', () => {
    using({ 'a.part.yaml': GOOD, 'locked/b.part.yaml': GOOD });
    chmodSync(folder.file('locked'), 0o000);
    const { code, files, findings } = checkJson(folder);
    chmodSync(folder.file('locked'), 0o755);
    expect([code, files.map(({ file }) => file)]).toEqual([2, ['a.part.yaml']]);
    expect(findings.some((finding) => finding.code === 'file/not-readable' && finding.at?.file === 'locked')).toBe(true);
  });
});

describe('one run over all', () => {
  test('a broken file stops no other, and every finding has its file', () => {
    using({ 'a.part.yaml': BROKEN, 'b.part.yaml': THIN, 'c.part.yaml': 'a: [\n', 'd.part.yaml': GOOD });
    const { files, findings, code } = checkJson(folder);
    expect(files).toEqual(['a', 'b', 'c', 'd'].map((name) => expect.objectContaining({ file: `${name}.part.yaml`, judged: 'bd'.includes(name) })));
    expect(code).toBe(2);
    expect(findings.some((finding) => finding.code === 'wall/least' && finding.checked === 'b.part.yaml')).toBe(true);
    expect(findings.filter(({ fault }) => fault).map(({ at }) => at?.file)).toEqual(expect.arrayContaining(['a.part.yaml', 'c.part.yaml']));
  });

  test('the same bytes whatever the order of arguments, sorted by file, line, column, code', () => {
    using({ 'a/x.part.yaml': THIN, 'b/y.part.yaml': BROKEN, 'c/z.part.yaml': GOOD });
    const formats = ['text', 'json', 'sarif', 'junit', 'github', 'markdown'];
    const args = formats.flatMap((format) => ['-f', `${format}=out.${format}`]);
    const bytes = (paths: readonly string[]): string[] => {
      folder.run(['check', ...paths, ...args]);
      return formats.map((format) => folder.read(`out.${format}`));
    };
    const one = bytes(['a', 'b', 'c', 'no.part.yaml']);
    expect(bytes(['no.part.yaml', 'c/z.part.yaml', 'b', './a/', 'a'])).toEqual(one);
    expect(one.every((text) => text.length > 100)).toBe(true);
    const list = (JSON.parse(one[1] as string) as ReturnType<typeof checkJson>).findings.map(
      ({ at, code }) => [at?.file ?? '', at?.line ?? 1, at?.column ?? 1, code] as const,
    );
    const sorted = [...list].sort((a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : a[1] - b[1] || a[2] - b[2] || (a[3] < b[3] ? -1 : a[3] > b[3] ? 1 : 0)));
    expect(list).toEqual(sorted);
  });

  test('findings on standard output with their lines, the count on standard error; --quiet leaves it out', () => {
    using({ 'a.part.yaml': THIN });
    const { out, err } = folder.run(['check']);
    expect(out).toMatch(/^a\.part\.yaml:15:18: error: .+ \[wall\/least\]\n {2}14 \| .+\n {2}15 \| .+\n {5}\| +\^+\n/m);
    expect(out).not.toContain('files checked');
    expect(err).toMatch(/^1 file checked: 1 error, .+\n$/);
    expect(folder.run(['check', '-q'])).toMatchObject({ code: 1, out, err: '' });
    expect(folder.run(['check', '--color']).out).toContain('\u001b[31merror:');
    expect(out.includes('\u001b') || err.includes('\r')).toBe(false);
  });

  test('several formats in one run; a file for two of them is refused, and so is an input', () => {
    using({ 'a.part.yaml': GOOD });
    expect(folder.run(['check', '-f', 'text', '-f', 'json=a.json', '-f', 'junit=a.xml']).code).toBe(0);
    expect(JSON.parse(folder.read('a.json')).format).toBe('findings/1');
    expect(folder.run(['check', '-f', 'json=a', '-f', 'text=./a']).err).toContain('[cli/output-twice]');
    expect(folder.run(['check', '-f', 'json=a.part.yaml']).err).toContain('[cli/output-twice]');
    expect(folder.run(['check', '-f', 'json', '-f', 'text']).err).toContain('[cli/output-twice]');
    expect(folder.read('a.part.yaml')).toBe(GOOD);
    expect(readdirSync(folder.path).filter((name) => name.includes('.tmp'))).toEqual([]);
  });

  test('names that a format could misread come through in every one', () => {
    using(Object.fromEntries(NASTY_NAMES.map((name) => [`pa rts/${name}`, THIN])));
    const { files, code } = checkJson(folder);
    expect([code, files.map(({ file }) => file).sort()]).toEqual([1, NASTY_NAMES.map((name) => `pa rts/${name}`).sort()]);
    for (const format of ['text', 'sarif', 'junit', 'github', 'markdown']) expect(folder.run(['check', '-f', format]).code, format).toBe(1);
  });
});

describe('what every part is planned with', () => {
  test('the plant is read once, its faults are said once, and its findings keep the part that they came from', () => {
    using({ 'a.part.yaml': GOOD, 'b.part.yaml': GOOD, 'own.yaml': STARTER_PLANT, 'bad.yaml': STARTER_PLANT.replace('4000 kN', '4000') });
    const bad = folder.run(['check', '--plant', 'bad.yaml']);
    expect([bad.code, bad.err.match(/spec\/bare-number/g)?.length]).toEqual([2, 1]);
    expect(checkJson(folder, '--plant', './own.yaml').code).toBeLessThan(2);
  });

  test('--set holds for every part', () => {
    using({ 'a.part.yaml': GOOD, 'b.part.yaml': GOOD });
    const { findings } = checkJson(folder, '--set', 'geometry.wall.least=0.6 mm');
    expect(findings.filter(({ code }) => code === 'wall/least').map(({ checked }) => checked)).toEqual(['a.part.yaml', 'b.part.yaml']);
  });

  test('a --set that is wrong is said once, and one that a single part lacks is a fault of that part', () => {
    const third = '  - { id: third, diameter: 6.5 mm, depth: 12 mm, kind: through, direction: z }\ndimensions:';
    using({ 'a.part.yaml': GOOD, 'b.part.yaml': GOOD.replace('dimensions:', third) });
    const wrong = folder.run(['check', '--set', 'geometry.wal.least=1 mm']);
    expect([wrong.code, wrong.out, wrong.err.match(/set\/unknown-field/g)?.length]).toEqual([2, '', 1]);
    const { files, code } = checkJson(folder, '--set', 'holes[third].depth=13 mm');
    expect([code, files.map(({ judged }) => judged)]).toEqual([2, [false, true]]);
  });

  test('a part that is no longer there when it is read is a fault of its own', () => {
    using({ 'a.part.yaml': GOOD });
    mkdirSync(folder.file('b.part.yaml'));
    symlinkSync('nowhere', folder.file('c.part.yaml'));
    expect(checkJson(folder, 'a.part.yaml', 'c.part.yaml').code).toBe(2);
  });
});

describe('an interrupt', () => {
  // The first output is a pipe that nobody reads, so that the run waits with the second one complete beside its place.
  test.skipIf(process.platform === 'win32')('leaves no file that is half written, and what was there before', async () => {
    using({ 'a.part.yaml': GOOD, 'out.json': 'before' });
    spawnSync('mkfifo', [folder.file('pipe')]);
    const child = spawn(process.execPath, [BIN, 'check', '-f', 'text=pipe', '-f', 'json=out.json'], { cwd: folder.path, stdio: 'ignore' });
    const ended = new Promise((resolve) => child.on('close', (_, signal) => resolve(signal)));
    const unfinished = (): string[] => readdirSync(folder.path).filter((name) => name.includes('.tmp'));
    for (let tries = 0; unfinished().length === 0 && tries < 1000; tries += 1) await new Promise((resolve) => setTimeout(resolve, 20));
    expect(unfinished()).toHaveLength(1);
    child.kill('SIGINT');
    expect(await ended).toBe('SIGINT');
    expect([unfinished(), folder.read('out.json')]).toEqual([[], 'before']);
  });
});

describe('how far it is', () => {
  test('is told on a terminal that can, and nowhere else', async () => {
    using(Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`p${i}.part.yaml`, BROKEN])));
    const told = async (isTTY: boolean, env: Readonly<Record<string, string>>, ...args: string[]): Promise<string> => {
      let err = '';
      const sink = { isTTY: false, write: () => undefined };
      const io = {
        env,
        out: sink,
        err: {
          isTTY,
          write: (text: string) => {
            err += text;
          },
        },
        stdin: (async function* (): AsyncGenerator<Buffer> {})(),
        settled: async () => true,
      };
      expect(await main(['check', '--no-color', ...args, folder.path], io)).toBe(2);
      return err;
    };
    expect(await told(true, {})).toMatch(/^\rchecked 10 of 12 files\rchecked 12 of 12 files\r {22}\r12 files checked: /);
    for (const quiet of [told(false, {}), told(true, { TERM: 'dumb' }), told(true, {}, '-q')]) expect(await quiet).not.toContain('\r');
  });
});
