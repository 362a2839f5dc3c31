import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Io } from '../io.ts';
import { type Outcome, replanFile, rulebooks, type Task } from './job.ts';

/** From this many files on, threads save more than they cost: each has to warm up by itself, for what some forty parts take. */
const WORTH_THREADS = 80;
/** Each thread holds a rulebook and a heap of its own. */
const MOST_THREADS = 8;

/** The script that a thread runs; the build lays it beside the program. */
declare const __dirname: string | undefined;
const SCRIPT = typeof __dirname === 'string' ? join(__dirname, 'worker.cjs') : undefined;

/** How many threads are used for a count of files when none is asked for; none means that this thread does the work. */
export function usualThreads(files: number): number {
  return files < WORTH_THREADS ? 0 : Math.min(MOST_THREADS, availableParallelism());
}

/**
 * Replans files and hands on what came of each, in whatever order they are done. `stopped` ends the work between two files.
 * What is made does not depend on the count of threads.
 */
export async function replanFiles(
  files: readonly string[],
  task: Task,
  io: Io,
  options: { readonly threads: number; readonly take: (outcome: Outcome) => void; readonly stopped: () => boolean },
): Promise<void> {
  const threads = Math.min(options.threads, files.length);
  if (threads === 0 || SCRIPT === undefined || !existsSync(SCRIPT)) {
    const rules = await rulebooks(task, io);
    for (const file of files) {
      if (options.stopped()) return;
      options.take(await replanFile(file, task, rules, io));
      // Lets signals in: a plan is made without a pause.
      await new Promise((resolve) => setImmediate(resolve));
    }
    return;
  }
  let next = 0;
  const workers = Array.from({ length: threads }, () => new Worker(SCRIPT, { workerData: task }));
  const feed = (worker: Worker): Promise<void> =>
    new Promise((resolve, reject) => {
      const send = (): void => {
        if (next < files.length && !options.stopped()) {
          worker.postMessage(files[next]);
          next += 1;
        } else resolve();
      };
      worker.on('error', reject);
      worker.on('exit', (code) => reject(new Error(`a thread ended with ${code}`)));
      worker.on('message', ({ outcome, fault }: { readonly outcome?: Outcome; readonly fault?: string }) => {
        try {
          if (outcome === undefined) throw new Error(fault);
          options.take(outcome);
          send();
        } catch (error) {
          reject(error);
        }
      });
      send();
    });
  try {
    await Promise.all(workers.map(feed));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}
