import { createHash, randomBytes } from 'node:crypto';
import {
  closeSync,
  constants,
  copyFileSync,
  existsSync,
  linkSync,
  openSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';

/** Name of the journal of a run that writes. It is there before anything else is written, and goes last. */
export const JOURNAL = '.diewright-replan.journal';

const FORMAT = 'diewright-replan-journal/1';

/** A file to write, to take away (`after` null) or to make (`before` null): what it held and what it is to hold. */
export interface Entry {
  /** Below the journal's folder, with forward slashes. */
  readonly target: string;
  /** SHA-256 of the content before and after; null where there is no file. */
  readonly before: string | null;
  readonly after: string | null;
}

interface JournalHead {
  readonly format: string;
  /** Part of the name of every file that the run lays beside a target. */
  readonly id: string;
  readonly process: number;
}

/** SHA-256 of a file's bytes, null when there is no file. */
export function hashOf(path: string): string | null {
  try {
    return hash(readFileSync(path));
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) return null;
    throw error;
  }
}

export function hash(bytes: Buffer | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** The new content beside its target, complete before the target is touched. */
export function freshName(folder: string, { target }: Entry, id: string): string {
  return beside(folder, target, id, 'new');
}

/** What the target held, kept under a second name while targets are replaced. */
export function keptName(folder: string, { target }: Entry, id: string): string {
  return beside(folder, target, id, 'old');
}

function beside(folder: string, target: string, id: string, ending: string): string {
  const path = join(folder, ...target.split('/'));
  return join(dirname(path), `.${basename(path)}.${id}.${ending}`);
}

/** An open journal: a line for each file, written before that file's new content is laid beside it. */
export class Journal {
  private constructor(
    readonly folder: string,
    readonly id: string,
    private readonly file: number,
  ) {}

  /**
   * Makes the journal of a folder; it appears whole or not at all.
   * @throws an error with the code EEXIST when there is one already.
   */
  static begin(folder: string): Journal {
    const id = randomBytes(6).toString('hex');
    const path = join(folder, JOURNAL);
    clearStrays(folder);
    const staged = `${path}.${process.pid}.tmp`;
    const head: JournalHead = { format: FORMAT, id, process: process.pid };
    writeFileSync(staged, `${JSON.stringify(head)}\n`, { flag: 'wx' });
    try {
      twin(staged, path);
    } finally {
      rmSync(staged, { force: true });
    }
    return new Journal(folder, id, openSync(path, 'a'));
  }

  note(entry: Entry): void {
    writeSync(this.file, `${JSON.stringify(entry)}\n`);
  }

  /** Says that every new content is complete: from here on, targets are replaced. */
  noteSettling(): void {
    writeSync(this.file, '{"settling":true}\n');
  }

  /** Takes the journal away: all is done. */
  end(): void {
    this.close();
    rmSync(join(this.folder, JOURNAL), { force: true });
  }

  close(): void {
    closeSync(this.file);
  }
}

/** What a run that was killed while it made its journal has left. */
export function clearStrays(folder: string): void {
  for (const name of readdirSync(folder)) {
    const [, id] = name.startsWith(`${JOURNAL}.`) ? (/\.(\d+)\.tmp$/.exec(name) ?? []) : [];
    if (id !== undefined && !isRunning(Number(id))) rmSync(join(folder, name), { force: true });
  }
}

/** A second name for a file; a copy where the file system knows no second names. Fails when the name is taken. */
export function twin(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    copyFileSync(from, to, constants.COPYFILE_EXCL);
  }
}

/** A journal that was found, and the run that left it or still writes it. */
export interface FoundJournal {
  readonly folder: string;
  readonly id: string;
  readonly entries: readonly Entry[];
  /** The process that made it. */
  readonly process: number;
  /** It still runs, on this machine; its number may have been given anew. */
  readonly running: boolean;
  /** Whether targets may have been replaced. */
  readonly settling: boolean;
}

/** The journals of the folders of these files and of all folders above them. */
export function findJournals(files: readonly string[]): string[] {
  const seen = new Set<string>();
  const found: string[] = [];
  for (const file of files) {
    let folder = dirname(realOf(file));
    while (!seen.has(folder)) {
      seen.add(folder);
      if (existsSync(join(folder, JOURNAL))) found.push(folder);
      folder = dirname(folder);
    }
  }
  return found.sort();
}

/** Reads a journal; undefined when it is none, or names files outside its folder. The last line counts when it is whole. */
export function readJournal(folder: string): FoundJournal | undefined {
  try {
    const [first = '', ...lines] = readFileSync(join(folder, JOURNAL), 'utf8').split('\n').slice(0, -1);
    const head = JSON.parse(first) as JournalHead;
    if (head.format !== FORMAT || !/^[0-9a-f]{12}$/.test(head.id)) return undefined;
    const notes = lines.map((line) => JSON.parse(line) as Entry | { readonly settling: true });
    const entries = notes.filter((note): note is Entry => 'target' in note);
    if (!entries.every((entry) => isSound(entry, folder))) return undefined;
    return { folder, id: head.id, entries, process: head.process, running: isRunning(head.process), settling: notes.length > entries.length };
  } catch {
    return undefined;
  }
}

/** A target lies below the folder, whatever links its path goes through, so that a forged journal reaches nothing else. */
function isSound({ target, before, after }: Entry, folder: string): boolean {
  if (![before, after].every((hash) => hash === null || /^[0-9a-f]{64}$/.test(hash))) return false;
  if (target.split('/').some((step) => step === '' || step === '.' || step === '..')) return false;
  const real = realOf(dirname(join(folder, ...target.split('/'))));
  const way = relative(realOf(folder), real);
  return way === '' || (!way.startsWith('..') && !isAbsolute(way));
}

function isRunning(id: number): boolean {
  if (!Number.isInteger(id) || id <= 0 || id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function realOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}

/** Takes the files away that the run had laid beside a target. */
export function clear(folder: string, entry: Entry, id: string): void {
  rmSync(freshName(folder, entry, id), { force: true });
  rmSync(keptName(folder, entry, id), { force: true });
}

/** Rights of a file, so that its successor gets them; those of a new file when there is none. */
export function modeOf(path: string): number {
  return (statSync(path, { throwIfNoEntry: false })?.mode ?? 0o666) & 0o777;
}

/** The path of a target below the journal's folder. */
export function targetName(folder: string, path: string): string {
  return relative(folder, path).split(sep).join('/');
}
