import type { Io } from '../../src/cli/io.ts';
import { main } from '../../src/cli/main.ts';

/** Surroundings without terminal, colour, environment and input, which keep nothing that is written. */
export function noIo(env: Io['env'] = {}): Io {
  const sink = { isTTY: false, write: () => undefined };
  return { env, out: sink, err: sink, stdin: (async function* () {})(), settled: async () => true };
}

/** Runs the command line in this process and keeps what it writes. No terminal, no colour, no input. */
export async function runHere(
  args: readonly string[],
  options: { readonly stdin?: string; readonly env?: Readonly<Record<string, string>> } = {},
): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await main(args, {
    ...noIo(options.env),
    out: {
      isTTY: false,
      write: (text) => {
        out += text;
      },
    },
    err: {
      isTTY: false,
      write: (text) => {
        err += text;
      },
    },
    stdin: (async function* () {
      yield Buffer.from(options.stdin ?? '');
    })(),
  });
  return { code, out, err };
}
