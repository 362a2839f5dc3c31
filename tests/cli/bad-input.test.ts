import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { BASE_PART } from './bad-input/base.ts';
import { BAD_INPUT } from './bad-input/cases.ts';
import { runHere } from './run-here.ts';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'bad-input-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const ESCAPE = String.fromCharCode(27);

describe('a bad file, through the command', () => {
  // The command refuses these two before they reach the reader, under codes of its own; they are tested below.
  const refusedEarlier = ['spec/too-large', 'spec/not-utf8'];
  const bad = BAD_INPUT.filter((entry) => entry.severity === 'error' && !refusedEarlier.includes(entry.code));

  test('there are enough of them', () => {
    expect(bad.length).toBeGreaterThan(60);
  });

  test.each(bad)('$name', async (entry) => {
    const path = join(folder, { part: 'bad.part.yaml', die: 'bad.die.yaml', plant: 'bad-plant.yaml' }[entry.kind]);
    writeFileSync(path, entry.bytes());
    const part = join(folder, 'good.part.yaml');
    writeFileSync(part, BASE_PART);
    const args = entry.kind === 'plant' ? ['plan', part, '--plant', path] : ['plan', path];
    const { code, out, err } = await runHere(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(`${path}:${entry.line}:${entry.column}: error:`);
    expect(err).toContain(`[${entry.code}]`);
    expect(err).not.toMatch(/\n\s+at .+:\d+:\d+/);
    expect(err.includes(ESCAPE)).toBe(false);
  });
});

describe('a file that cannot be read, through the real command', () => {
  const run = (...args: string[]) => spawnSync(process.execPath, ['bin/diewright.js', 'plan', ...args], { encoding: 'utf8' });

  test('not there, with the nearest name', () => {
    writeFileSync(join(folder, 'cover.part.yaml'), BASE_PART);
    const { status, stderr, stdout } = run(join(folder, 'covr.part.yaml'));
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain('file/not-found');
    expect(stderr).toContain('cover.part.yaml');
  });

  test('a folder', () => {
    mkdirSync(join(folder, 'parts'), { recursive: true });
    const { status, stderr } = run(join(folder, 'parts'));
    expect(status).toBe(2);
    expect(stderr).toContain('file/is-a-directory');
  });

  test('10 MB', () => {
    writeFileSync(join(folder, 'large.part.yaml'), 'a: '.padEnd(10_000_000, 'x'));
    const { status, stderr } = run(join(folder, 'large.part.yaml'));
    expect(status).toBe(2);
    expect(stderr).toContain('too-large');
  });

  test('not UTF-8', () => {
    writeFileSync(join(folder, 'latin.part.yaml'), Buffer.from([0x61, 0x3a, 0x20, 0xe4, 0x0a]));
    const { status, stderr } = run(join(folder, 'latin.part.yaml'));
    expect(status).toBe(2);
    expect(stderr).toContain('not-utf8');
  });

  test.skipIf(process.getuid?.() === 0)('no permission', () => {
    const path = join(folder, 'locked.part.yaml');
    writeFileSync(path, BASE_PART);
    chmodSync(path, 0o000);
    const { status, stderr } = run(path);
    expect(status).toBe(2);
    expect(stderr).toContain('file/not-readable');
  });

  test('one broken file does not stop the others', () => {
    writeFileSync(join(folder, 'good.part.yaml'), BASE_PART);
    writeFileSync(join(folder, 'bad.part.yaml'), BASE_PART.replace('alloy:', 'aloy:'));
    const { status, stdout, stderr } = run(join(folder, 'bad.part.yaml'), join(folder, 'good.part.yaml'), '--fail-on', 'never');
    expect(status).toBe(2);
    expect(stdout).toContain('# Casting plan');
    expect(stderr).toContain('spec/unknown-key');
    expect(stderr).toContain('did you mean "alloy"');
  });
});
