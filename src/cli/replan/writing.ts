import { realpathSync } from 'node:fs';
import { dirname, sep } from 'node:path';
import { BadInput } from '../fault.ts';
import { type FileChange, Transaction } from './transaction.ts';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * The writing of a run: a transaction that a signal takes back. What it does on the disk is done without a pause, so a signal
 * is heard between two files, or after all have been replaced, and never in between.
 */
export class Writing {
  #stopped = false;
  readonly #transaction: Transaction;

  private constructor(folder: string) {
    // First, so that no signal finds a journal and nobody to take it back.
    for (const signal of SIGNALS) process.on(signal, this.#stop);
    try {
      this.#transaction = Transaction.begin(folder);
    } catch (error) {
      for (const signal of SIGNALS) process.off(signal, this.#stop);
      throw error;
    }
  }

  /** Begins in the folder that all files lie below. @throws BadInput when that cannot be written to. */
  static begin(files: readonly string[]): Writing {
    return new Writing(commonFolder(files));
  }

  get stopped(): boolean {
    return this.#stopped;
  }

  add(changes: readonly FileChange[]): void {
    if (this.#stopped) return;
    for (const change of changes) this.#transaction.add(change);
  }

  /** Puts all files in their places and gives their number. */
  settle(): number {
    const { size } = this.#transaction;
    this.#transaction.settle();
    return size;
  }

  /** Takes back what is not settled, and lets signals work as usual again. */
  end(): void {
    for (const signal of SIGNALS) process.off(signal, this.#stop);
    this.#transaction.abandon();
  }

  readonly #stop = (signal: NodeJS.Signals): void => {
    this.#stopped = true;
    this.end();
    // The program ends as it would have without us.
    process.kill(process.pid, signal);
  };
}

/** The deepest folder that holds all of these files, whatever links lead to them. */
function commonFolder(files: readonly string[]): string {
  const folders = files.map((file) => dirname(realOf(file)).split(sep));
  const [first = [], ...others] = folders;
  let length = first.length;
  for (const other of others) {
    let same = 0;
    while (same < length && first[same] === other[same]) same += 1;
    length = same;
  }
  return first.slice(0, length).join(sep) || sep;
}

function realOf(file: string): string {
  try {
    return realpathSync(file);
  } catch (error) {
    const message = `${file} cannot be found: ${(error as NodeJS.ErrnoException).code ?? ''}`;
    throw new BadInput([{ code: 'file/not-found', severity: 'error', message, fix: 'check the path; nothing was written' }]);
  }
}
