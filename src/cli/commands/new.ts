import { access } from 'node:fs/promises';
import { Argument, type Command } from 'commander';
import { STARTERS, type StarterName, starterText } from '../../index.ts';
import type { Context } from '../context.ts';
import { badInput } from '../fault.ts';
import { writeWhole } from '../write-whole.ts';

export function define(command: Command, context: Context): void {
  command
    .addArgument(new Argument('<kind>', 'kind of file').choices(STARTERS))
    .option('-o, --out <file>', 'write it there (default: standard output)')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', '\nExample:\n  $ diewright new part --out cover.part.yaml')
    .action(async (kind: StarterName, options: { out?: string; force?: boolean }) => {
      const { io } = context;
      const text = await starterText(kind);
      if (options.out === undefined || options.out === '-') io.out.write(text);
      else {
        if (options.force !== true && (await isThere(options.out)))
          throw badInput('file/exists', `${options.out} is already there`, 'choose another name, or give --force');
        await writeWhole(options.out, text);
        io.err.write(`wrote ${options.out}\n`);
      }
    });
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
