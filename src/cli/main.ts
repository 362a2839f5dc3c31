import { EXIT } from './exits.ts';
import { type Io, processIo } from './io.ts';
import { VERSION } from './version.ts';

/** Runs the command line and gives the exit code. `argv` holds the arguments alone. Asking for the version loads nothing else. */
export async function main(argv: readonly string[] = process.argv.slice(2), io: Io = processIo()): Promise<number> {
  let code: number = EXIT.made;
  if (argv.length === 1 && argv[0] === '--version') io.out.write(`${VERSION}\n`);
  else code = await (await import('./program.ts')).run(argv, io);
  return (await io.settled()) ? code : EXIT.fault;
}
