import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { open, realpath, rename, stat, unlink, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { inBatches } from './batches.ts';
import { fault, reason, refuseLinkOut } from './files.ts';

export interface WholeFile {
  readonly path: string;
  /** The text, or its pieces, which are then made while it is written. */
  readonly text: string | Iterable<string>;
}

/** Writes a whole file or nothing; see `writeTogether`. */
export function writeWhole(path: string, text: WholeFile['text']): Promise<void> {
  return writeTogether([{ path, text }]);
}

/**
 * Writes files that belong together, all of them whole or none: each is written beside its target, and when all are
 * complete they take their places in the order given.
 * @throws BadInput when that cannot be done; files that were there before are unchanged, unless a place is taken away in
 * the moment between the last two steps, and then the message says which are new.
 */
export async function writeTogether(files: readonly WholeFile[]): Promise<void> {
  for (const { path } of files) refuseLinkOut(path);
  const staged: Staged[] = [];
  const release = onInterrupt();
  try {
    for (const file of files) staged.push(await blamed(file.path, 'nothing was changed', () => stage(file)));
    for (const [i, one] of staged.entries())
      await blamed(one.path, i === 0 ? 'nothing was changed' : `${files[i - 1]?.path} and what was written before it are new`, one.settle);
  } catch (error) {
    for (const one of staged) await one.discard();
    throw error;
  } finally {
    release();
  }
}

/** Files beside their targets, which are not to be left behind when the process is told to end. */
const unfinished = new Set<string>();

/** Until the function that it gives is called, an interrupt takes the unfinished files away before it ends the process. */
function onInterrupt(): () => void {
  const end = (signal: NodeJS.Signals): void => {
    for (const name of unfinished) rmSync(name, { force: true });
    release();
    process.kill(process.pid, signal);
  };
  const release = (): void => {
    for (const signal of SIGNALS) process.removeListener(signal, end);
  };
  for (const signal of SIGNALS) process.on(signal, end);
  return release;
}

const SIGNALS = ['SIGINT', 'SIGTERM'] as const;

/** A file that is complete but not in its place. */
interface Staged {
  readonly path: string;
  readonly settle: () => Promise<void>;
  readonly discard: () => Promise<void>;
}

async function stage({ path, text }: WholeFile): Promise<Staged> {
  // A link stays a link: what it points at is replaced. A device or pipe cannot be replaced and is written to.
  const target = await realpath(path).catch(() => path);
  const there = await stat(target).catch(() => undefined);
  if (there?.isDirectory() === true) throw Object.assign(new Error('a folder'), { code: 'EISDIR' });
  if (there !== undefined && !there.isFile()) return { path, settle: () => writeInto(target, text), discard: async () => undefined };
  const name = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString('hex')}.tmp`);
  const discard = async (): Promise<void> => {
    await unlink(name).catch(() => undefined);
    unfinished.delete(name);
  };
  const settle = async (): Promise<void> => {
    await rename(name, target);
    unfinished.delete(name);
  };
  unfinished.add(name);
  const file = await open(name, 'wx', 0o666);
  try {
    if (there !== undefined) await file.chmod(there.mode & 0o777);
    await writeFile(file, pieces(text));
  } catch (error) {
    await discard();
    throw error;
  } finally {
    await file.close();
  }
  return { path, settle, discard };
}

function pieces(text: WholeFile['text']): string | Iterable<string> {
  return typeof text === 'string' ? text : inBatches(text);
}

async function writeInto(target: string, text: WholeFile['text']): Promise<void> {
  try {
    const file = await open(target, 'w');
    await writeFile(file, pieces(text)).finally(() => file.close());
  } catch (error) {
    // A pipe whose reader has gone away is no fault, as on standard output.
    if ((error as NodeJS.ErrnoException).code !== 'EPIPE') throw error;
  }
}

async function blamed<T>(path: string, state: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw fault(path, 'not-writable', `the file cannot be written: ${reason(error)}`, `check the folder and its permissions; ${state}`);
  }
}
