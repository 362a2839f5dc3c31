import { chmodSync, realpathSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import { badInput } from '../fault.ts';
import { fault, reason, refuseLinkOut } from '../files.ts';
import { clear, type Entry, freshName, hash, hashOf, Journal, keptName, modeOf, targetName, twin } from './journal.ts';
import { restore } from './take-back.ts';

/** A file to change: its new text, or null to take it away, and the hash of what it held when it was read (null: it was not there). */
export interface FileChange {
  readonly path: string;
  readonly text: string | null;
  readonly before: string | null;
}

/**
 * Changes many files, all of them or none. New texts are laid beside their targets first. When all are complete, each old
 * content gets a second name, and every target is replaced by a rename. The journal names every file before anything is done to
 * it, so that a run that is killed at any moment is taken back by the next one (`takeBack`). Taking back, and not finishing, is
 * the rule: a run that failed or was stopped has then done nothing, and the same command does the whole of it.
 *
 * It guards against a process that ends at any moment, not against a disk that loses what it has taken.
 */
export class Transaction {
  readonly #entries: Entry[] = [];
  /** Hash of the new text of every file that came, also where it is the old one; empty where the file goes. */
  readonly #texts = new Map<string, string>();
  readonly #replaced: Entry[] = [];
  #done = false;

  private constructor(private readonly journal: Journal) {}

  /** @throws BadInput when the folder cannot be written to, or another run has its journal there. */
  static begin(folder: string): Transaction {
    try {
      return new Transaction(Journal.begin(folder));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'EEXIST')
        throw badInput('replan/at-work', 'another run that writes is at work on these files', 'wait until it has ended');
      throw fault(
        '.',
        'not-writable',
        `no journal can be made in the folder that holds all files: ${reason(error)}`,
        'check its permissions; nothing was changed',
      );
    }
  }

  /** Lays a new text beside its target. The target is not touched. */
  add({ path, text, before }: FileChange): void {
    try {
      refuseLinkOut(path);
    } catch (error) {
      this.abandon();
      throw error;
    }
    const { folder, id } = this.journal;
    const target = before === null ? join(realpathSync(dirname(path)), path.split(sep).at(-1) as string) : realpathSync(path);
    const entry: Entry = { target: targetName(folder, target), before, after: text === null ? null : hash(text) };
    const known = this.#texts.get(entry.target);
    if (known !== undefined) {
      // A part that two dies cast comes with both.
      if (known === (entry.after ?? '')) return;
      this.abandon();
      throw badInput('replan/two-texts', `${path} would be written in two ways, by two of the files named`, 'name them in runs of their own');
    }
    this.#texts.set(entry.target, entry.after ?? '');
    if (entry.before === entry.after) return;
    this.journal.note(entry);
    this.#entries.push(entry);
    if (text === null) return;
    const fresh = freshName(folder, entry, id);
    this.#blamed(path, () => {
      writeFileSync(fresh, text, { flag: 'wx' });
      if (before !== null) chmodSync(fresh, modeOf(target));
    });
  }

  /** Files that will have changed when this is done. */
  get size(): number {
    return this.#entries.length;
  }

  /**
   * Puts every new text in its place.
   * @throws BadInput when a file has changed since it was read, or cannot be replaced; then nothing is changed.
   */
  settle(): void {
    const { folder, id } = this.journal;
    const place = (entry: Entry): string => join(folder, ...entry.target.split('/'));
    for (const entry of this.#entries) this.#blamed(entry.target, () => refuseIfChanged(place(entry), entry));
    this.journal.noteSettling();
    for (const entry of this.#entries) if (entry.before !== null) this.#blamed(entry.target, () => twin(place(entry), keptName(folder, entry, id)));
    for (const entry of this.#entries)
      this.#blamed(entry.target, () => {
        refuseIfChanged(place(entry), entry);
        if (entry.after === null) rmSync(place(entry));
        else renameSync(freshName(folder, entry, id), place(entry));
        this.#replaced.push(entry);
      });
    this.#done = true;
    for (const entry of this.#entries) clear(folder, entry, id);
    this.journal.end();
  }

  /** Undoes what was begun. Does nothing when it is done, or undone already. */
  abandon(): void {
    if (this.#done) return;
    this.#done = true;
    const { folder, id } = this.journal;
    for (const entry of this.#replaced) if (hashOf(join(folder, ...entry.target.split('/'))) === entry.after) restore(folder, entry, id);
    for (const entry of this.#entries) clear(folder, entry, id);
    this.journal.end();
  }

  #blamed(path: string, work: () => void): void {
    try {
      work();
    } catch (error) {
      this.abandon();
      if (error instanceof ChangedUnderUs) {
        const advice = 'run the command again: it reads the file as it is now; nothing was changed';
        throw fault(path, 'changed', 'the file has changed since this run read it', advice);
      }
      throw fault(path, 'not-writable', `the file cannot be written: ${reason(error)}`, 'check the folder and its permissions; nothing was changed');
    }
  }
}

class ChangedUnderUs extends Error {}

function refuseIfChanged(path: string, { before }: Entry): void {
  if (hashOf(path) !== before) throw new ChangedUnderUs();
}
