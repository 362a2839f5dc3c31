import type { Io } from '../io.ts';

/** Work that threads can do: from plain data, what is to be done with each item; items and results are plain data too. */
export type Job<Setting, Item, Result> = (setting: Setting, io: Io) => Promise<(item: Item) => Promise<Result>>;

/** The work of each command that has threads, by its name, loaded by the thread that is to do it. */
export const JOBS = {
  check: async () => (await import('../check/job.ts')).checkJob as Job<unknown, unknown, unknown>,
  replan: async () => (await import('../replan/job.ts')).replanJob as Job<unknown, unknown, unknown>,
} as const satisfies Readonly<Record<string, () => Promise<Job<unknown, unknown, unknown>>>>;
export type JobName = keyof typeof JOBS;
