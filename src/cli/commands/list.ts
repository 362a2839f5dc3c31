import { Argument, type Command } from 'commander';
import { LISTINGS, type ListingName, list, listJson, listText } from '../../index.ts';
import type { Context } from '../context.ts';
import { BadInput } from '../fault.ts';
import { addSettingOptions, type CommonOptions, surroundingsFor } from '../setting-options.ts';

export function define(command: Command, context: Context): void {
  command
    .addArgument(new Argument('<what>', 'what to list').choices(LISTINGS))
    .argument('[word]', 'only rows that hold this word')
    .option('--json', 'the list as JSON')
    .action(async (what: ListingName, word: string | undefined, options: CommonOptions & { json?: boolean }) => {
      const surroundings = await surroundingsFor(options, [], context);
      if (surroundings === undefined) return;
      // Only machines come from the plant.
      const { rulebook, plant } =
        what === 'machines' ? await surroundings.ground() : { rulebook: await surroundings.rulebook(await surroundings.settings()), plant: undefined };
      const { listing, diagnostics } = list(what, { rulebook, ...(plant === undefined ? {} : { plant }), ...(word === undefined ? {} : { filter: word }) });
      if (listing === undefined) throw new BadInput(diagnostics);
      context.io.out.write(options.json === true ? listJson(listing) : listText(listing, context.io.out.columns));
    });
  addSettingOptions(command);
}
