import type { Command } from 'commander';
import { calculate, calculationJson, calculationText } from '../../index.ts';
import type { Context } from '../context.ts';
import { EXIT } from '../exits.ts';
import { badInput } from '../fault.ts';

export function define(command: Command, context: Context): void {
  command
    .argument('<formula>', 'id of a formula; see: diewright list formulas')
    .argument('[name=value...]', 'its inputs with their units, such as velocity="45 m/s"')
    .option('--in <unit>', 'unit of the result')
    .option('--json', 'the result as JSON')
    .addHelpText('after', '\nExample:\n  $ diewright calc gate.area volume="768 cm3" velocity="45 m/s" time="50 ms"')
    .action(async (formula: string, inputs: string[], options: { in?: string; json?: boolean }) => {
      const given = inputs.map(readInput);
      const { calculation, diagnostics } = calculate({ formula, given, ...(options.in === undefined ? {} : { unit: options.in }) });
      if (calculation !== undefined) context.io.out.write(options.json === true ? calculationJson(calculation) : calculationText(calculation));
      if (diagnostics.length > 0) await context.report(diagnostics);
      context.exit = diagnostics.length > 0 ? EXIT.badInput : EXIT.made;
    });
}

function readInput(text: string): { name: string; text: string } {
  const equals = text.indexOf('=');
  if (equals < 1)
    throw badInput(
      'calc/form',
      `"${text}" is not of the form name=value`,
      'write the name of an input, an equals sign and a quantity, such as velocity="45 m/s"',
    );
  return { name: text.slice(0, equals).trim(), text: text.slice(equals + 1) };
}
