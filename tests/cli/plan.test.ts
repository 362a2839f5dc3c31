import { chmodSync, existsSync, readdirSync, statSync, symlinkSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { STARTER_PART, STARTER_PLANT } from '../../src/spec/starters.ts';
import { makeFolder } from './folder.ts';

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  folder.write('other.part.yaml', STARTER_PART.replace('name: Cover', 'name: Other'));
  folder.write('broken.part.yaml', STARTER_PART.replace('geometry:', 'geometri:'));
  // A draft below the least one of its depth is an error or a warning of the plan, not of the file.
  folder.write('steep.part.yaml', STARTER_PART.replace('draft: 3 deg', 'draft: 0.1 deg'));
});
afterAll(() => folder.remove());

describe('where the plan goes', () => {
  test('Markdown to standard output, findings to standard error', () => {
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml']);
    expect(code).toBe(0);
    expect(out.startsWith('# Casting plan: Cover, C-100, revision A\n')).toBe(true);
    expect(err).not.toContain('# Casting plan');
    expect(out).not.toContain(folder.path);
  });

  test('the same bytes on every run, from a file and from standard input but for its name', () => {
    const one = folder.run(['plan', '-q', 'cover.part.yaml']).out;
    expect(folder.run(['plan', '-q', 'cover.part.yaml'], { env: { LANG: 'de_DE.UTF-8', TZ: 'Asia/Tokyo' } }).out).toBe(one);
    const piped = folder.run(['plan', '-q', '-'], { input: STARTER_PART }).out;
    expect(piped).toBe(one.replaceAll('`cover.part.yaml', '`stdin'));
  });

  test('several formats in one run; files are whole, and the message says so', () => {
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml', '-f', 'markdown=plan.md', '--format', 'json', '-f', 'findings=found.txt']);
    expect(code).toBe(0);
    expect(JSON.parse(out).format).toBe('plan/1');
    expect(folder.read('plan.md')).toContain('# Casting plan: Cover');
    expect(folder.read('found.txt')).toMatch(/note|no findings/);
    expect(err).toContain('wrote plan.md\n');
    expect(readdirSync(folder.path).filter((name) => name.includes('.tmp'))).toEqual([]);
  });

  test('--quiet keeps standard error empty', () => {
    expect(folder.run(['plan', '-q', 'cover.part.yaml', '-f', 'json=quiet.json'])).toMatchObject({ code: 0, out: '', err: '' });
    expect(JSON.parse(folder.read('quiet.json')).part.name).toBe('Cover');
  });

  test('an output that cannot be written leaves what was there and names no path of the machine', () => {
    folder.write('kept.md', 'kept');
    expect(folder.run(['plan', 'cover.part.yaml', '-f', 'markdown=no/such/plan.md']).code).toBe(2);
    const { code, err } = folder.run(['plan', '-q', 'cover.part.yaml', '-f', 'markdown=no/such/plan.md']);
    expect([code, err.includes(folder.path)]).toEqual([2, false]);
    expect(err).toContain('[file/not-writable]');
    expect(folder.read('kept.md')).toBe('kept');
  });

  test('writing over a file keeps its permissions, and a link stays a link', () => {
    folder.write('mode.md', 'old');
    chmodSync(folder.file('mode.md'), 0o640);
    symlinkSync('mode.md', folder.file('link.md'));
    expect(folder.run(['plan', '-q', 'cover.part.yaml', '-f', 'markdown=link.md']).code).toBe(0);
    expect(folder.read('mode.md')).toContain('# Casting plan');
    expect(statSync(folder.file('mode.md')).mode & 0o777).toBe(0o640);
  });

  test.each([
    [['-f', 'html'], 'cli/unknown-format'],
    [['-f', 'markdwn'], 'did you mean "markdown"?'],
    [['-f', 'json='], 'cli/usage'],
    [['-f', 'json', '-f', 'markdown'], 'cli/output-twice'],
    [['-f', 'json=a.out', '-f', 'markdown=./a.out'], 'cli/output-twice'],
    [['-f', 'json=cover.part.yaml'], 'cli/output-twice'],
    [['--fail-on', 'note'], 'error, warning, never'],
    [['--nonsense'], 'nonsense'],
  ])('%j is bad input', (args, word) => {
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml', ...args]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(word);
    expect(folder.read('cover.part.yaml')).toBe(STARTER_PART);
  });
});

describe('several files', () => {
  test('Markdown one after the other, JSON as one document, in the order given', () => {
    const { out } = folder.run(['plan', '-q', 'other.part.yaml', 'cover.part.yaml', '-f', 'json', '-f', 'markdown=both.md']);
    const data = JSON.parse(out);
    expect([data.format, ...data.plans.map((plan: { part: { name: string } }) => plan.part.name)]).toEqual(['plans/1', 'Other', 'Cover']);
    expect(folder.read('both.md').match(/^# Casting plan: \w+/gm)).toEqual(['# Casting plan: Other', '# Casting plan: Cover']);
  });

  test('a broken file does not stop the others, and the exit code tells of it', () => {
    const { code, out, err } = folder.run(['plan', 'broken.part.yaml', 'missing.part.yaml', 'cover.part.yaml', '-f', 'json']);
    expect(code).toBe(2);
    expect(JSON.parse(out).plans).toHaveLength(1);
    expect(err).toContain('[spec/unknown-key]');
    expect(err).toContain('[file/not-found]');
    expect(err).not.toMatch(/\n +at .+:\d+:\d+/);
  });

  test('a plant file that is wrong is said once', () => {
    folder.write('plant.yaml', STARTER_PLANT.replace('locking_force: 4000 kN', 'locking_force: 4000'));
    const { code, err } = folder.run(['plan', 'cover.part.yaml', 'other.part.yaml', '--plant', 'plant.yaml']);
    expect(code).toBe(2);
    expect(err.match(/spec\/bare-number/g)).toHaveLength(1);
  });
});

describe('exit codes by severity', () => {
  const severities = (): Set<string> =>
    new Set(
      JSON.parse(folder.run(['plan', '-q', '--fail-on', 'never', 'steep.part.yaml', '-f', 'json']).out).findings.map(
        (finding: { severity: string }) => finding.severity,
      ),
    );

  test('the threshold decides, and never means never', () => {
    const found = severities();
    expect(found.has('error') || found.has('warning')).toBe(true);
    expect(folder.run(['plan', '-q', '--fail-on', 'never', 'steep.part.yaml']).code).toBe(0);
    expect(folder.run(['plan', '-q', '--fail-on', 'warning', 'steep.part.yaml']).code).toBe(1);
    expect(folder.run(['plan', '-q', 'steep.part.yaml']).code).toBe(found.has('error') ? 1 : 0);
  });
});

describe('--set, --plant and pins', () => {
  test('a field is set before reading, and the file stays as it is', () => {
    const { code, out } = folder.run([
      'plan',
      '-q',
      'cover.part.yaml',
      '--set',
      'geometry.wall.nominal=4 mm',
      '--set',
      'pinned.gate.velocity=42 m/s',
      '-f',
      'json',
    ]);
    const { values } = JSON.parse(out);
    expect(code).toBe(0);
    expect(values['part.wall-nominal']).toMatchObject({ value: 4, written: '4 mm' });
    expect(values['gate.velocity']).toMatchObject({ value: 42, kind: 'pinned' });
    expect(folder.read('cover.part.yaml')).toBe(STARTER_PART);
  });

  test('a path that is no field points into the argument', () => {
    const { code, out, err } = folder.run(['plan', 'cover.part.yaml', '--set', 'geometry.wal.nominal=4 mm']);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('--set:1:10: error:');
    expect(err).toContain('did you mean "wall"? [set/unknown-field]\n  1 | geometry.wal.nominal=4 mm\n    |          ^^^\n');
  });

  test('a pin that names nothing is bad input', () => {
    const { code, err } = folder.run(['plan', 'cover.part.yaml', '--set', 'pinned.gate.velocty=42 m/s']);
    expect(code).toBe(2);
    expect(err).toContain('[spec/unknown-pin]');
  });

  test("the user's plant is planned for, and standard input is read once only", () => {
    folder.write('own.yaml', STARTER_PLANT);
    expect(JSON.parse(folder.run(['plan', '-q', 'cover.part.yaml', '--plant', 'own.yaml', '-f', 'json']).out).decisions['machine.model'].value).toBe(
      'cold-4000',
    );
    expect(JSON.parse(folder.run(['plan', '-q', '-', '--plant', 'own.yaml', '-f', 'json'], { input: STARTER_PART }).out).part.file).toBe('stdin');
    expect(folder.run(['plan', '-', '--plant', '-'], { input: STARTER_PART }).err).toContain('cli/input-twice');
  });

  test('an unknown alloy names a near one; a designation that is only near asks', () => {
    expect(folder.run(['plan', 'cover.part.yaml', '--set', 'alloy=A38O']).err).toMatch(
      /no alloy is called "A38O"; did you mean ".+"\? \[spec\/unknown-alloy\]/,
    );
    expect(folder.run(['plan', 'cover.part.yaml', '--set', 'alloy=ADC10']).err).toContain('[spec/ambiguous-alloy]');
    expect(existsSync(folder.file('cover.part.yaml'))).toBe(true);
  });
});
