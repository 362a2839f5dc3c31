import { chmodSync, existsSync, linkSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BadInput } from '../../src/cli/fault.ts';
import { freshName, hash, hashOf, JOURNAL, Journal, keptName, readJournal } from '../../src/cli/replan/journal.ts';
import { takeBack } from '../../src/cli/replan/take-back.ts';
import { Transaction } from '../../src/cli/replan/transaction.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'diewright-transaction-'));
  mkdirSync(join(folder, 'b'));
  writeFileSync(join(folder, 'a.yaml'), 'old a');
  writeFileSync(join(folder, 'b', 'b.yaml'), 'old b');
  writeFileSync(join(folder, 'gone.svg'), 'old figure');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (...names: string[]): string => join(folder, ...names);
const read = (...names: string[]): string => readFileSync(at(...names), 'utf8');
const all = (): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => entry.name)
    .sort();

function begun(): Transaction {
  const transaction = Transaction.begin(folder);
  transaction.add({ path: at('a.yaml'), text: 'new a', before: hash('old a') });
  transaction.add({ path: at('b', 'b.yaml'), text: 'new b', before: hash('old b') });
  transaction.add({ path: at('gone.svg'), text: null, before: hash('old figure') });
  transaction.add({ path: at('made.svg'), text: 'new figure', before: null });
  return transaction;
}

function codeOf(work: () => unknown): string | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    return error instanceof BadInput ? error.diagnostics[0]?.code : String(error);
  }
}

describe('many files changed together', () => {
  test('all of them, with nothing left beside them', () => {
    chmodSync(at('a.yaml'), 0o640);
    const transaction = begun();
    expect([read('a.yaml'), read('gone.svg'), existsSync(at('made.svg'))]).toEqual(['old a', 'old figure', false]);
    transaction.settle();
    expect([read('a.yaml'), read('b', 'b.yaml'), read('made.svg')]).toEqual(['new a', 'new b', 'new figure']);
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'made.svg']);
    expect(statSync(at('a.yaml')).mode & 0o777).toBe(0o640);
    transaction.abandon();
    expect(read('a.yaml')).toBe('new a');
  });

  test('none of them when it is abandoned', () => {
    begun().abandon();
    expect([read('a.yaml'), read('b', 'b.yaml'), read('gone.svg')]).toEqual(['old a', 'old b', 'old figure']);
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'gone.svg']);
  });

  test('none of them when one has changed since it was read; what others wrote stays', () => {
    const transaction = begun();
    writeFileSync(at('b', 'b.yaml'), 'of somebody else');
    expect(codeOf(() => transaction.settle())).toBe('file/changed');
    expect([read('a.yaml'), read('b', 'b.yaml'), read('gone.svg')]).toEqual(['old a', 'of somebody else', 'old figure']);
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'gone.svg']);
  });

  test('none of them when a new file is there meanwhile', () => {
    const transaction = begun();
    writeFileSync(at('made.svg'), 'of somebody else');
    expect(codeOf(() => transaction.settle())).toBe('file/changed');
    expect([read('a.yaml'), read('made.svg')]).toEqual(['old a', 'of somebody else']);
  });

  test('none of them when one cannot be replaced after others have been', () => {
    const transaction = begun();
    // The new text of the second file is taken away: its rename fails when the first one has been renamed.
    const found = readJournal(folder);
    const second = found?.entries[1];
    if (found === undefined || second === undefined) throw new Error('no journal');
    rmSync(freshName(folder, second, found.id));
    expect(codeOf(() => transaction.settle())).toBe('file/not-writable');
    expect([read('a.yaml'), read('b', 'b.yaml'), read('gone.svg')]).toEqual(['old a', 'old b', 'old figure']);
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'gone.svg']);
  });

  test('a second run does not begin while there is a journal', () => {
    const transaction = begun();
    expect(codeOf(() => Transaction.begin(folder))).toBe('replan/at-work');
    transaction.abandon();
    expect(codeOf(() => Transaction.begin(folder).abandon())).toBe(undefined);
  });

  test('a link stays a link, and what it points at is replaced', () => {
    symlinkSync('a.yaml', at('link.yaml'));
    const transaction = Transaction.begin(folder);
    transaction.add({ path: at('link.yaml'), text: 'new a', before: hash('old a') });
    transaction.settle();
    expect([read('a.yaml'), read('link.yaml')]).toEqual(['new a', 'new a']);
  });

  test('a text that does not change is not touched', () => {
    const transaction = Transaction.begin(folder);
    transaction.add({ path: at('a.yaml'), text: 'old a', before: hash('old a') });
    expect(transaction.size).toBe(0);
    transaction.settle();
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'gone.svg']);
  });
});

describe('a run that was broken off', () => {
  /** The state on the disk after so many steps of the settling, as a killed process leaves it. */
  function brokenOff(steps: number): void {
    const journal = Journal.begin(folder);
    const entries = [
      { target: 'a.yaml', before: hash('old a'), after: hash('new a') },
      { target: 'b/b.yaml', before: hash('old b'), after: hash('new b') },
      { target: 'gone.svg', before: hash('old figure'), after: null },
      { target: 'made.svg', before: null, after: hash('new figure') },
    ];
    const texts = ['new a', 'new b', undefined, 'new figure'];
    const place = (i: number): string => at(...(entries[i]?.target ?? '').split('/'));
    const work: (() => void)[] = [];
    for (const [i, entry] of entries.entries()) {
      work.push(() => journal.note(entry));
      if (texts[i] !== undefined) work.push(() => writeFileSync(freshName(folder, entry, journal.id), texts[i] as string));
    }
    work.push(() => journal.noteSettling());
    for (const [i, entry] of entries.entries()) if (entry.before !== null) work.push(() => linkSync(place(i), keptName(folder, entry, journal.id)));
    for (const [i, entry] of entries.entries()) {
      work.push(() => {
        if (texts[i] === undefined) rmSync(place(i));
        else {
          writeFileSync(`${place(i)}.x`, texts[i] as string);
          rmSync(freshName(folder, entry, journal.id));
          rmSync(place(i), { force: true });
          linkSync(`${place(i)}.x`, place(i));
          rmSync(`${place(i)}.x`);
        }
      });
    }
    for (const entry of entries) work.push(() => rmSync(keptName(folder, entry, journal.id), { force: true }));
    for (const step of work.slice(0, steps)) step();
    journal.close();
  }

  const STEPS = 4 + 3 + 1 + 3 + 4 + 4;
  test.each(Array.from({ length: STEPS + 1 }, (_, steps) => steps))('after %i steps it is taken back whole, or was done', (steps) => {
    brokenOff(steps);
    const found = readJournal(folder);
    expect(found).toBeDefined();
    if (found === undefined) return;
    const { state } = takeBack(found);
    const done = steps >= STEPS - 4;
    expect(state).toBe(done ? 'finished' : 'taken back');
    expect(read('a.yaml')).toBe(done ? 'new a' : 'old a');
    expect(read('b', 'b.yaml')).toBe(done ? 'new b' : 'old b');
    expect(all()).toEqual(done ? ['a.yaml', 'b.yaml', 'made.svg'] : ['a.yaml', 'b.yaml', 'gone.svg']);
  });

  test('a file that was changed since is not written over', () => {
    brokenOff(12);
    writeFileSync(at('a.yaml'), 'mended by hand');
    const found = readJournal(folder);
    if (found === undefined) throw new Error('no journal');
    expect(takeBack(found)).toEqual({ state: 'changed', targets: ['a.yaml'] });
    expect(read('a.yaml')).toBe('mended by hand');
    expect(existsSync(at(JOURNAL))).toBe(true);
  });

  test('a file changed before any was replaced is nobody’s business but its own', () => {
    brokenOff(5);
    writeFileSync(at('a.yaml'), 'mended by hand');
    const found = readJournal(folder);
    if (found === undefined) throw new Error('no journal');
    expect(takeBack(found)).toEqual({ state: 'taken back' });
    expect(read('a.yaml')).toBe('mended by hand');
  });

  test('a last line that was cut off does not count', () => {
    brokenOff(2);
    writeFileSync(at(JOURNAL), `${read(JOURNAL)}{"target":"b/b.ya`);
    expect(readJournal(folder)?.entries.map(({ target }) => target)).toEqual(['a.yaml']);
  });

  test.each([
    ['nothing', ''],
    ['no JSON', 'x\n'],
    ['another format', '{"format":"other/1","id":"0123456789ab","process":1}\n'],
    ['a file outside', `{"format":"diewright-replan-journal/1","id":"0123456789ab","process":1}\n{"target":"../x","before":null,"after":null}\n`],
    ['a path from the root', `{"format":"diewright-replan-journal/1","id":"0123456789ab","process":1}\n{"target":"/etc/x","before":null,"after":null}\n`],
    ['an id that is a path', `{"format":"diewright-replan-journal/1","id":"../../../../a","process":1}\n`],
  ])('a journal of %s is not believed', (_, text) => {
    writeFileSync(at(JOURNAL), text);
    expect(readJournal(folder)).toBeUndefined();
  });

  test('a journal cannot reach through a link to a folder elsewhere', () => {
    const elsewhere = mkdtempSync(join(tmpdir(), 'diewright-elsewhere-'));
    symlinkSync(elsewhere, at('away'));
    writeFileSync(
      at(JOURNAL),
      `{"format":"diewright-replan-journal/1","id":"0123456789ab","process":1}\n{"target":"away/x","before":null,"after":"${hash('')}"}\n`,
    );
    expect(readJournal(folder)).toBeUndefined();
    rmSync(elsewhere, { recursive: true });
  });

  test('a journal says whether the process that made it still runs', () => {
    const head = (id: number): string => `{"format":"diewright-replan-journal/1","id":"0123456789ab","process":${id}}\n`;
    const running = [process.ppid, 2 ** 22 + 1, 0, -1].map((id) => {
      writeFileSync(at(JOURNAL), head(id));
      return readJournal(folder)?.running;
    });
    expect(running).toEqual([true, false, false, false]);
  });

  test('what a run left that was killed while it made its journal goes with the next one', () => {
    const dead = 2 ** 22 + 1;
    writeFileSync(at(`${JOURNAL}.${dead}.tmp`), '');
    Transaction.begin(folder).abandon();
    expect(all()).toEqual(['a.yaml', 'b.yaml', 'gone.svg']);
  });

  test('a hash of a file that is not there is none', () => {
    expect([hashOf(at('no')), hashOf(at('a.yaml', 'no')), hashOf(at('a.yaml'))]).toEqual([null, null, hash('old a')]);
  });
});
