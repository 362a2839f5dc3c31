import type { Io } from '../io.ts';

/** Every so many files the line is written anew. */
const STEP = 10;

/** A line on a terminal that says how far the check is; nothing anywhere else. `end` takes it away. */
export function progress({ err, env }: Io, total: number, quiet: boolean): { readonly done: (count: number) => void; readonly end: () => void } {
  if (quiet || total <= STEP || !err.isTTY || env['TERM'] === 'dumb') return { done: () => undefined, end: () => undefined };
  let width = 0;
  return {
    done: (count) => {
      if (count % STEP !== 0 && count !== total) return;
      const line = `checked ${count} of ${total} files`;
      width = line.length;
      err.write(`\r${line}`);
    },
    end: () => {
      if (width > 0) err.write(`\r${' '.repeat(width)}\r`);
    },
  };
}
