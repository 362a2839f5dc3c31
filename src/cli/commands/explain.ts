import type { Command } from 'commander';
import { explain, explainIn, orList } from '../../index.ts';
import { type Context, collect } from '../context.ts';
import { badInput } from '../fault.ts';
import { type PartOptions, planFile, planOrFault } from '../plan-input.ts';
import { addSettingOptions, surroundingsFor } from '../setting-options.ts';
import type { Surroundings } from '../settings.ts';

export function define(command: Command, context: Context): void {
  command
    .argument('<id>', 'a formula, limit, choice, caution, table, plan value, source or finding code, any designation of an alloy, or a word of the trade')
    .argument('[file]', 'a part or die description: how its plan came to the value, or how the limit came out; - reads standard input')
    .option('--set <path=value>', 'set a field before reading; may be repeated', collect)
    .addHelpText('after', '\nExample:\n  $ diewright explain clamp.locking-force cover.part.yaml')
    .action(async (id: string, file: string | undefined, options: PartOptions) => {
      const surroundings = await surroundingsFor(options, file === undefined ? [] : [file], context);
      if (surroundings !== undefined) context.io.out.write(await explainText(id, file, options, surroundings, context));
    });
  addSettingOptions(command);
}

/** @throws BadInput for an id that names nothing, or nothing in the plan of the file. */
async function explainText(id: string, file: string | undefined, options: PartOptions, surroundings: Surroundings, context: Context): Promise<string> {
  const ground = file === undefined ? undefined : await surroundings.ground(file);
  const rulebook = ground?.rulebook ?? (await surroundings.rulebook(await surroundings.settings()));
  if (file !== undefined && ground !== undefined) {
    const planned = await planFile(file, options, ground, context.io);
    // The limits of the plant file are in the rulebook that the plan was made with.
    const text = explainIn(planOrFault(planned), planned.given?.rulebook ?? rulebook, id);
    if (text !== undefined) return text;
  }
  const found = explain(rulebook, id);
  if ('near' in found) {
    throw badInput(
      'cli/unknown-id',
      `"${id}" names nothing that is known here${found.near.length === 0 ? '' : `; did you mean ${orList(found.near)}?`}`,
      'see "diewright list" for formulas, rules, tables, values and the rest',
    );
  }
  if (file !== undefined)
    throw badInput('cli/not-in-plan', `the plan of ${file} holds nothing of "${id}"`, `without the file, "diewright explain ${id}" tells what it is`);
  return found.text;
}
