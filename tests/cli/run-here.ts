import { main } from '../../src/cli/main.ts';

/** Runs the command line in this process and keeps what it writes. No terminal, no colour, no input. */
export async function runHere(
  args: readonly string[],
  options: { readonly stdin?: string; readonly env?: Readonly<Record<string, string>> } = {},
): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await main(args, {
    env: options.env ?? {},
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
    settled: async () => true,
  });
  return { code, out, err };
}
