import { type Command, Option } from 'commander';
import { FAIL_ON, type FailOn } from '../index.ts';
import { type Context, collect } from './context.ts';
import { EXIT } from './exits.ts';
import { badInput } from './fault.ts';
import { type SettingOptions, Surroundings } from './settings.ts';

/** The options of every command that works by a plant and by rules. */
export interface CommonOptions extends SettingOptions {
  readonly showConfig?: boolean;
}

/** Where settings come from, for the help of commands that have them. */
export const SETTINGS_HELP = `
Settings come from the nearest of: an option, the environment (DIEWRIGHT_PLANT,
DIEWRIGHT_RULES, DIEWRIGHT_FAIL_ON), the project file diewright.yaml (in the
folder of the input or above it, up to the top of the repository), what is built
in.`;

/** Adds --plant, --rules and --show-config, and --fail-on where findings end a run. */
export function addSettingOptions(command: Command, also: { readonly failOn?: true } = {}): Command {
  command
    .option('--plant <file>', 'the plant to plan for (default: a typical one that is built in and invented)')
    .option('--rules <folder>', 'house rules to lay over the built-in ones; may be repeated', collect);
  if (also.failOn === true) {
    const about = `exit with ${EXIT.findings} when a finding is this grave or worse (default: error)`;
    command.addOption(new Option('--fail-on <severity>', about).choices([...FAIL_ON] satisfies FailOn[]));
  }
  return command.option('--show-config', 'print each setting and where it was set, and do nothing else').addHelpText('after', SETTINGS_HELP);
}

/**
 * The settings of a run over these inputs. When --show-config asks for them they are printed, and nothing is given back:
 * the command is done.
 */
export async function surroundingsFor(options: CommonOptions, inputs: readonly string[], context: Context): Promise<Surroundings | undefined> {
  const stdin = [...inputs, options.plant].filter((name) => name === '-').length;
  if (stdin > 1) throw badInput('cli/input-twice', 'standard input can be read once only', 'name files for the others');
  const surroundings = new Surroundings(options, context.io);
  if (options.showConfig !== true) return surroundings;
  const { configText } = await import('./show-config.ts');
  context.io.out.write(await configText(surroundings, inputs));
  return undefined;
}
