/** A stream that text goes to. */
export interface Sink {
  readonly isTTY: boolean;
  write(text: string): void;
}

/** The surroundings of a run, so that a test can stand in for them. */
export interface Io {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly out: Sink;
  readonly err: Sink;
  readonly stdin: AsyncIterable<Buffer>;
  /** Waits until all is written; false when an output could not be written. A reader that has gone away is no fault. */
  settled(): Promise<boolean>;
}

/** The process's own surroundings. */
export function processIo(): Io {
  const pending: Promise<void>[] = [];
  let sound = true;
  const sink = (stream: NodeJS.WriteStream): Sink => {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') sound = false;
    });
    return {
      isTTY: stream.isTTY === true,
      write: (text) => {
        pending.push(new Promise((resolve) => stream.write(text, () => resolve())));
      },
    };
  };
  return {
    env: process.env,
    out: sink(process.stdout),
    err: sink(process.stderr),
    stdin: process.stdin,
    settled: async () => {
      await Promise.all(pending);
      // The error event of a stream follows the callback of its write.
      await new Promise((resolve) => setImmediate(resolve));
      return sound;
    },
  };
}
