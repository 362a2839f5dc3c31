import { type ChildProcess, spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { JOURNAL } from '../../src/cli/replan/journal.ts';
import { BIN } from './folder.ts';

// How often the process is killed; a hundred by hand: DIEWRIGHT_KILLS=100.
const KILLS = Number(process.env['DIEWRIGHT_KILLS'] ?? 20);
const EXAMPLES = join(import.meta.dirname, '../../examples');
const PARTS = ['gearbox-housing', 'brake-valve-body', 'instrument-cover', 'seat-frame'];

let home: string;
let old: Map<string, string>;
let fresh: Map<string, string>;

beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), 'diewright-kill-'));
  old = contents(library('as-it-is'));
  const done = library('done');
  const { code } = await ended(start(done));
  expect([0, 1]).toContain(code);
  fresh = contents(done);
  expect([...fresh.keys()].filter((name) => fresh.get(name) !== old.get(name)).length).toBeGreaterThan(20);
});
afterAll(() => rmSync(home, { recursive: true, force: true }));

/** A library of example parts with their plans and figures. */
function library(name: string): string {
  const folder = join(home, name);
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder);
  for (const part of PARTS) cpSync(join(EXAMPLES, part), join(folder, part), { recursive: true });
  return folder;
}

function contents(folder: string): Map<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const paths = files.map((entry) => join(entry.parentPath, entry.name)).sort();
  return new Map(paths.map((path) => [path.slice(folder.length + 1), createHash('sha256').update(readFileSync(path)).digest('hex')]));
}

function start(folder: string, args: readonly string[] = ['--alloy', 'AM50A', '--write', '-q', '--threads', '0', '-f', 'csv']): ChildProcess {
  return spawn(process.execPath, [BIN, 'replan', folder, ...args], { stdio: ['ignore', 'ignore', 'pipe'] });
}

function ended(child: ChildProcess): Promise<{ readonly code: number | null; readonly signal: NodeJS.Signals | null; readonly err: string }> {
  let err = '';
  child.stderr?.on('data', (chunk: Buffer) => {
    err += chunk.toString();
  });
  return new Promise((resolve) => child.on('close', (code, signal) => resolve({ code, signal, err })));
}

const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Waits until the run replaces files, or is over. */
async function untilSettling(folder: string, child: ChildProcess): Promise<void> {
  const journal = join(folder, JOURNAL);
  const settles = (): boolean => {
    try {
      return readFileSync(journal, 'utf8').includes('"settling"');
    } catch {
      return false;
    }
  };
  while (child.exitCode === null && !settles()) await pause(0);
}

/** Numbers from 0 to 1, the same in every run. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

describe('a run that is killed while it writes', () => {
  test(`leaves nothing torn and nothing unnamed, and is taken back, ${KILLS} times`, { timeout: 20_000 + KILLS * 8000 }, async () => {
    const random = generator(11);
    const seen = { untouched: 0, mixed: 0, done: 0 };
    const pristine = start(library('timed'));
    const begin = process.hrtime.bigint();
    await ended(pristine);
    const duration = Number(process.hrtime.bigint() - begin) / 1e6;
    for (let kill = 0; kill < KILLS; kill += 1) {
      const folder = library('killed');
      const child = start(folder);
      const over = ended(child);
      // Half of the kills fall anywhere in the run, half into the moment in which files are replaced.
      if (kill % 2 === 0) await pause(random() * duration);
      else {
        await untilSettling(folder, child);
        await pause(Math.floor(random() * 4));
      }
      child.kill('SIGKILL');
      await over;
      const state = contents(folder);
      const visible = [...state].filter(([name]) => !name.split('/').at(-1)?.startsWith('.'));
      const isOld = visible.length === old.size && visible.every(([name, hash]) => old.get(name) === hash);
      const isNew = visible.length === fresh.size && visible.every(([name, hash]) => fresh.get(name) === hash);
      // No file holds anything but its old or its new content.
      for (const [name, hash] of visible) expect([old.get(name), fresh.get(name)], name).toContain(hash);
      const named = existsSync(join(folder, JOURNAL));
      const leftovers = state.size - visible.length;
      if (!isOld && !isNew) expect(named, 'a mixed state is named by a journal').toBe(true);
      if (leftovers > 0) expect(named).toBe(true);
      seen[isOld ? 'untouched' : isNew ? 'done' : 'mixed'] += 1;
      if (named) {
        // A run that does not write names it, and does nothing.
        const refused = await ended(start(folder, ['--alloy', 'AM50A', '-q']));
        expect([refused.code, refused.err.includes('[replan/broken-off]')]).toEqual([2, true]);
        expect(contents(folder)).toEqual(state);
      }
      expect((await ended(start(folder, ['--take-back']))).code).toBe(0);
      // What had been replaced whole stays so; anything else is as it was.
      expect([...contents(folder)]).toEqual([...(isNew ? fresh : old)]);
    }
    console.log(`killed ${KILLS} times: ${JSON.stringify(seen)}`);
    expect(seen.untouched).toBeGreaterThan(0);
  });

  test('the same command again takes it back first, and does the whole of it', { timeout: 60_000 }, async () => {
    for (let attempt = 0; attempt < 10; attempt += 1) {
      const folder = library('again');
      const child = start(folder);
      const over = ended(child);
      await untilSettling(folder, child);
      child.kill('SIGKILL');
      await over;
      if (!existsSync(join(folder, JOURNAL))) continue;
      const again = await ended(start(folder, ['--alloy', 'AM50A', '--write', '--threads', '0', '-f', 'csv']));
      expect(again.err).toContain('[replan/broken-off]');
      expect([...contents(folder)]).toEqual([...fresh]);
      return;
    }
    throw new Error('the process was never killed in time');
  });

  test.each(['SIGINT', 'SIGTERM'] as const)('%s: everything is as it was, and nothing is left', { timeout: 60_000 }, async (signal) => {
    const folder = library('stopped');
    const child = start(folder);
    const over = ended(child);
    while (child.exitCode === null && !existsSync(join(folder, JOURNAL))) await pause(1);
    child.kill(signal);
    expect((await over).signal).toBe(signal);
    expect([...contents(folder)]).toEqual([...old]);
  });
});
