/** A stream that text goes to. */
export interface Sink {
  readonly isTTY: boolean;
  /** Columns of a terminal; undefined where the stream is none. */
  readonly columns?: number | undefined;
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

/** The process's own surroundings. Streams are opened when they are first used: opening them takes time. */
export function processIo(): Io {
  const out = new StreamSink(() => process.stdout);
  const err = new StreamSink(() => process.stderr);
  return {
    env: process.env,
    out,
    err,
    get stdin() {
      return process.stdin;
    },
    settled: async () => (await out.settled()) && (await err.settled()),
  };
}

class StreamSink implements Sink {
  readonly #pending: Promise<void>[] = [];
  #stream: NodeJS.WriteStream | undefined;
  #sound = true;

  constructor(private readonly open: () => NodeJS.WriteStream) {}

  get isTTY(): boolean {
    return this.#opened().isTTY === true;
  }

  get columns(): number | undefined {
    const { isTTY, columns } = this.#opened();
    // A terminal that does not know its width says 0.
    return isTTY === true && columns > 0 ? columns : undefined;
  }

  write(text: string): void {
    const stream = this.#opened();
    this.#pending.push(new Promise((resolve) => stream.write(text, () => resolve())));
  }

  async settled(): Promise<boolean> {
    if (this.#pending.length === 0) return true;
    await Promise.all(this.#pending);
    // The error event of a stream follows the callback of its write.
    await new Promise((resolve) => setImmediate(resolve));
    return this.#sound;
  }

  #opened(): NodeJS.WriteStream {
    if (this.#stream === undefined) {
      this.#stream = this.open();
      this.#stream.on('error', (error: NodeJS.ErrnoException) => {
        if (error.code !== 'EPIPE') this.#sound = false;
      });
    }
    return this.#stream;
  }
}
