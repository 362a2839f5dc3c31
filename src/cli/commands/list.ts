import { Argument, type Command } from 'commander';
import { LISTINGS, type ListingName, list, listJson, listText, loadRulebook } from '../../index.ts';
import type { Context } from '../context.ts';
import { BadInput } from '../fault.ts';
import { readText } from '../files.ts';

export function define(command: Command, context: Context): void {
  command
    .addArgument(new Argument('<what>', 'what to list').choices(LISTINGS))
    .argument('[word]', 'only rows that hold this word')
    .option('--plant <file>', 'the plant whose machines are listed')
    .option('--json', 'the list as JSON')
    .action(async (what: ListingName, word: string | undefined, options: { plant?: string; json?: boolean }) => {
      const rulebook = await loadRulebook();
      const plant = options.plant === undefined ? {} : { plant: await readText(options.plant, context.io) };
      const { listing, diagnostics } = list(what, { rulebook, ...plant, ...(word === undefined ? {} : { filter: word }) });
      if (listing === undefined) throw new BadInput(diagnostics);
      context.io.out.write(options.json === true ? listJson(listing) : listText(listing));
    });
}
