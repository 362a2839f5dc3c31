import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { JobName } from './jobs.ts';
import type { Answer, Orders } from './worker.ts';

/** From this many files on, threads save more than they cost: each has to warm up by itself, for what some forty parts take. */
const WORTH_THREADS = 80;
/** Each thread holds a rulebook and a heap of its own. */
const MOST_USUAL = 8;
/** So many can be asked for. */
export const MOST_THREADS = 64;

/** The script that a thread runs; the build lays it beside the program. */
declare const __dirname: string | undefined;
const SCRIPT = typeof __dirname === 'string' ? join(__dirname, 'worker.cjs') : undefined;

/** How many threads are used for a count of files when none is asked for; none means that this thread does the work. */
export function usualThreads(files: number): number {
  return files < WORTH_THREADS ? 0 : Math.min(MOST_USUAL, availableParallelism());
}

export interface Shared<Item, Result> {
  readonly items: readonly Item[];
  readonly threads: number;
  /** The work in this thread, where there are no others. */
  readonly here: () => Promise<(item: Item) => Promise<Result>>;
  /** The same work for other threads: its name, and the plain data that it is set up with. */
  readonly job: JobName;
  readonly setting: unknown;
  /** Hears what came of each item, in whatever order they are done. */
  readonly take: (result: Result, index: number) => void;
  /** Ends the work between two items. */
  readonly stopped?: () => boolean;
  /** What becomes of an item that a fault of ours, or the end of its thread, has left undone; without it the whole work fails. */
  readonly lost?: (item: Item, index: number, why: string) => void;
  /** The script of a thread. */
  readonly script?: string | undefined;
}

/** Works on all items, in other threads where some are asked for. What is made does not depend on their count. */
export async function share<Item, Result>(shared: Shared<Item, Result>): Promise<void> {
  const { script = SCRIPT } = shared;
  const threads = Math.min(shared.threads, shared.items.length);
  if (threads === 0 || script === undefined || !existsSync(script)) await workHere(shared);
  else await new Pool(shared, script).run(threads);
}

async function workHere<Item, Result>({ items, here, take, stopped, lost }: Shared<Item, Result>): Promise<void> {
  const work = await here();
  for (const [index, item] of items.entries()) {
    if (stopped?.() === true) return;
    let result: { readonly of: Result } | undefined;
    try {
      result = { of: await work(item) };
    } catch (error) {
      if (lost === undefined) throw error;
      lost(item, index, reasonOf(error));
    }
    if (result !== undefined) take(result.of, index);
    // Lets signals in: a plan is made without a pause.
    await new Promise((resolve) => setImmediate(resolve));
  }
}

class Pool<Item, Result> {
  #next = 0;
  readonly #workers = new Set<Worker>();

  constructor(
    private readonly shared: Shared<Item, Result>,
    private readonly script: string,
  ) {}

  async run(threads: number): Promise<void> {
    try {
      await Promise.all(Array.from({ length: threads }, () => this.#serve()));
    } finally {
      await Promise.all([...this.#workers].map((worker) => worker.terminate()));
    }
  }

  get #isOver(): boolean {
    return this.#next >= this.shared.items.length || this.shared.stopped?.() === true;
  }

  /** One thread after the other: a thread that ends has its next item worked on by a new one. */
  async #serve(): Promise<void> {
    while (!this.#isOver) await this.#feed();
  }

  /** Feeds a new thread until nothing is left or the thread ends. */
  #feed(): Promise<void> {
    const { items, take, lost, job, setting } = this.shared;
    const worker = new Worker(this.script, { workerData: { job, setting } satisfies Orders });
    this.#workers.add(worker);
    return new Promise((resolve, reject) => {
      // The item that the thread works on; below 0 when it has none.
      let at = -1;
      const send = (): void => {
        if (this.#isOver) {
          resolve();
          return;
        }
        at = this.#next;
        this.#next += 1;
        worker.postMessage(items[at]);
      };
      const lose = (why: string): void => {
        const index = at;
        at = -1;
        if (index < 0) return;
        if (lost === undefined) throw new Error(why);
        lost(items[index] as Item, index, why);
      };
      // What these hear goes wrong with the work as a whole, and not with nobody.
      const guarded = <A>(hear: (of: A) => void) => {
        return (of: A): void => {
          try {
            hear(of);
          } catch (error) {
            reject(error);
          }
        };
      };
      const ended = guarded((why: string) => {
        // An error is followed by the end of the thread, which then is no news.
        if (!this.#workers.delete(worker)) return;
        lose(why);
        resolve();
      });
      worker.on('error', (error) => ended(reasonOf(error)));
      worker.on('exit', (code) => ended(`a thread ended with ${code}`));
      worker.on(
        'message',
        guarded((answer: Answer) => {
          if ('fault' in answer) lose(answer.fault);
          else {
            const index = at;
            at = -1;
            take(answer.result as Result, index);
          }
          send();
        }),
      );
      send();
    });
  }
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
