import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { SHEETS } from '../../src/index.ts';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { runHere } from './run-here.ts';

let folder = '';
let part = '';
let other = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'diewright-test-'));
  part = at('cover.part.yaml');
  other = at('other.part.yaml');
  writeFileSync(part, STARTER_PART);
  writeFileSync(other, STARTER_PART.replace('name: Cover', 'name: Other'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
const read = (name: string): string => readFileSync(at(name), 'utf8');
const titles = (text: string): string[] => text.match(/^# .*$/gm) ?? [];

describe('where a sheet goes', () => {
  test.each(SHEETS)('%s: to standard output, in the place of the plan, and nothing else there', async (sheet) => {
    const { code, out, err } = await runHere(['plan', '-q', part, '--sheet', sheet]);
    expect([code, err]).toEqual([0, '']);
    expect(titles(out)).toEqual([`# ${sheet === 'die' ? 'Die' : sheet[0]?.toUpperCase() + sheet.slice(1)} sheet: Cover, C-100, revision A`]);
    expect(out.endsWith('|\n')).toBe(true);
  });

  test('several sheets and formats in one run, each to its own place, and the message says so', async () => {
    const { code, out, err } = await runHere([
      'plan',
      part,
      '--sheet',
      `die=${at('d.md')}`,
      '--sheet',
      'shot',
      '-f',
      `json=${at('p.json')}`,
      '--sheet',
      `quote=${at('q.md')}`,
    ]);
    expect(code).toBe(0);
    expect(titles(out)).toEqual(['# Shot sheet: Cover, C-100, revision A']);
    expect(titles(read('d.md'))).toEqual(['# Die sheet: Cover, C-100, revision A']);
    expect(titles(read('q.md'))).toEqual(['# Quote sheet: Cover, C-100, revision A']);
    expect(JSON.parse(read('p.json')).format).toBe('plan/1');
    for (const name of ['d.md', 'q.md', 'p.json']) expect(err).toContain(`wrote ${at(name)}\n`);
  });

  test('one sheet may be written twice, to two places', async () => {
    const { out } = await runHere(['plan', '-q', part, '--sheet', 'trial', '--sheet', `trial=${at('t.md')}`]);
    expect(read('t.md')).toBe(out);
  });

  test('several parts: a sheet for each, one after the other; a broken part does not stop the others', async () => {
    const { code, out, err } = await runHere(['plan', '-q', other, part, at('missing.yaml'), '--sheet', 'quote']);
    expect(titles(out)).toEqual(['# Quote sheet: Other, C-100, revision A', '# Quote sheet: Cover, C-100, revision A']);
    expect(code).toBe(2);
    expect(err).toContain('[file/not-found]');
  });

  test('from standard input, but for the name the same bytes; and the same on every run', async () => {
    const one = await runHere(['plan', '-q', part, '--sheet', 'die']);
    const piped = await runHere(['plan', '-q', '-', '--sheet', 'die'], { stdin: STARTER_PART });
    expect(piped.out).toBe(one.out.replaceAll(`\`${part}\``, '`stdin`'));
    expect((await runHere(['plan', '-q', part, '--sheet', 'die'])).out).toBe(one.out);
  });

  test('no colour, whatever is asked; findings go to standard error as with a plan, and set the exit code', async () => {
    const steep = ['--set', 'walls[0].draft=0.1 deg', '--fail-on', 'warning'];
    const { code, out, err } = await runHere(['plan', part, '--sheet', 'trial', '--color', ...steep], { env: { FORCE_COLOR: '1' } });
    expect(out).not.toContain('\u001b');
    expect(err).toContain('\u001b[');
    expect(code).toBe(1);
  });

  test('--set reaches the sheet', async () => {
    const { out } = await runHere(['plan', '-q', part, '--sheet', 'shot', '--set', 'pinned.gate.velocity=42 m/s']);
    expect(out).toContain('| Gate velocity | 42 m/s | 30 m/s to 60 m/s | given |');
  });
});

describe('the drawing of the die', () => {
  test('is linked where the plan of the same run has it, as seen from the sheet', async () => {
    await runHere(['plan', '-q', part, '--sheet', `die=${at('with.md')}`, '-f', `markdown=${at('plan.md')}`]);
    expect(read('with.md')).toContain('Face of the die, to scale: [plan-die-layout.svg](plan-die-layout.svg)');
    expect(readFileSync(at('plan-die-layout.svg'), 'utf8')).toContain('<svg');
  });

  test('each of several parts has its own', async () => {
    await runHere(['plan', '-q', part, other, '--sheet', `die=${at('both.md')}`, '-f', `markdown=${at('two.md')}`]);
    expect(read('both.md').match(/\(two-\d-die-layout\.svg\)/g)).toEqual(['(two-1-die-layout.svg)', '(two-2-die-layout.svg)']);
  });

  test('is not drawn for a sheet alone, or when no figures are wanted', async () => {
    const hint = 'The face of the die, to scale, is drawn with `--format markdown=FILE`.';
    expect((await runHere(['plan', '-q', part, '--sheet', 'die'])).out).toContain(hint);
    await runHere(['plan', '-q', part, '--sheet', `die=${at('none.md')}`, '-f', `markdown=${at('bare.md')}`, '--figures', 'none']);
    expect(read('none.md')).toContain(hint);
  });
});

describe('what is refused', () => {
  test.each([
    [['--sheet', 'dye'], 'cli/unknown-sheet', 'there is no sheet "dye"; did you mean "die"?'],
    [['--sheet', 'inspection'], 'cli/unknown-sheet', 'write die, shot, trial or quote'],
    [['--sheet', ''], 'cli/unknown-sheet', 'there is no sheet ""'],
    [['--sheet', 'die='], 'cli/usage', '--sheet die= names no file'],
    [['--sheet', 'die', '--sheet', 'shot'], 'cli/output-twice', '--sheet shot would write over another output to standard output'],
    [['--sheet', 'die', '-f', 'markdown'], 'cli/output-twice', 'another output to standard output'],
    [['--sheet', 'die=x.md', '--sheet', 'shot=./x.md'], 'cli/output-twice', 'the output --sheet die=x.md'],
    [['--sheet', 'die=x.md', '-f', 'json=x.md'], 'cli/output-twice', 'the output --format json=x.md'],
    [['--sheet', 'die', '--figures', 'somewhere'], 'cli/usage', 'has no Markdown that its figures belong to'],
    [['--sheet'], 'argument missing', '--sheet <name[=path]>'],
  ])('%j', async (args, code, words) => {
    const run = await runHere(['plan', part, ...args]);
    expect([run.code, run.out]).toEqual([2, '']);
    expect(run.err).toContain(code);
    expect(run.err).toContain(words);
  });

  test('a sheet is never written over an input, or a figure over a sheet', async () => {
    expect((await runHere(['plan', part, '--sheet', `die=${part}`])).err).toContain(`would write over the input ${part}`);
    const { code, err } = await runHere(['plan', part, '--sheet', `die=${at('p-die-layout.svg')}`, '-f', `markdown=${at('p.md')}`]);
    expect(code).toBe(2);
    expect(err).toContain('would write over the output --sheet die=');
    expect(readFileSync(part, 'utf8')).toBe(STARTER_PART);
  });
});

test('the help names the sheets', async () => {
  const { out } = await runHere(['plan', '--help']);
  expect(out).toContain('--sheet <name[=path]>');
  expect(out.replace(/\s+/g, ' ')).toContain('with or without --format: die, shot, trial, quote');
});
