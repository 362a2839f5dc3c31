import { Argument, type Command } from 'commander';
import { SCHEMAS, type SchemaName, schemaText } from '../../index.ts';
import type { Context } from '../context.ts';

export function define(command: Command, context: Context): void {
  command
    .addArgument(new Argument('<kind>', 'kind of file').choices(SCHEMAS))
    .addHelpText('after', '\nExample:\n  $ diewright schema part > part.schema.json')
    .action(async (kind: SchemaName) => {
      context.io.out.write(await schemaText(kind));
    });
}
