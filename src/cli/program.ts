import { Command, CommanderError } from 'commander';
import { type CommandModule, Context } from './context.ts';
import { EXIT } from './exits.ts';
import { BadInput } from './fault.ts';
import type { Io } from './io.ts';
import { usageFault } from './usage-fault.ts';
import { VERSION } from './version.ts';

/** The commands, each loaded when it is asked for; the others are known by their summary. */
const COMMANDS: readonly { readonly name: string; readonly summary: string; readonly load: () => Promise<CommandModule> }[] = [
  { name: 'plan', summary: 'a part description becomes a casting plan', load: () => import('./commands/plan.ts') },
  { name: 'check', summary: 'findings only, for CI: parts, plants and the plans that lie beside them', load: () => import('./commands/check.ts') },
  {
    name: 'replan',
    summary: 'what another alloy, plant or field changes, part by part and for a whole library',
    load: () => import('./commands/replan.ts'),
  },
  {
    name: 'options',
    summary: 'the ranked alternatives behind a plan: cavities, machine, plunger, alloy, plant; why each other one lost',
    load: () => import('./commands/options.ts'),
  },
  { name: 'calc', summary: 'work out one formula by hand', load: () => import('./commands/calc.ts') },
  {
    name: 'explain',
    summary: 'a formula, rule, table, alloy, source, finding code or word of the trade; with a file, how its plan came to a value',
    load: () => import('./commands/explain.ts'),
  },
  { name: 'list', summary: 'what is built in', load: () => import('./commands/list.ts') },
  { name: 'schema', summary: 'the JSON Schema of a kind of file', load: () => import('./commands/schema.ts') },
  { name: 'new', summary: 'a commented file to begin from', load: () => import('./commands/new.ts') },
];

const EXIT_HELP = `
Exit codes:
  ${EXIT.made}  done, no finding at or above the threshold
  ${EXIT.findings}  done, findings at or above the threshold
  ${EXIT.badInput}  the command line, an input or rule data is wrong, or an output cannot
     be written
  ${EXIT.fault}  a fault of the program itself

Colour: --color and --no-color win over FORCE_COLOR, FORCE_COLOR over NO_COLOR,
and both over what the terminal can do.`;

/** Reads the arguments, runs the command they name and gives the exit code. */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  const program = new Command('diewright');
  const context = new Context(io, program);
  try {
    await build(program, context, argv);
    await program.parseAsync([...argv], { from: 'user' });
    return context.exit;
  } catch (error) {
    return failed(error, context);
  }
}

/** What a thread of the program does: see `pool/pool.ts`. */
export async function work(): Promise<void> {
  await (await import('./pool/worker.ts')).work();
}

async function build(program: Command, context: Context, argv: readonly string[]): Promise<void> {
  const wanted = argv.find((word) => COMMANDS.some(({ name }) => name === word));
  const { io } = context;
  program
    .description('Works out casting plans for high-pressure die casting: every figure with its formula, its source and what it rests on.')
    .version(VERSION, '--version', 'print the version')
    .option('--color', 'colour, whatever the terminal and the environment say')
    .option('--no-color', 'no colour')
    .helpOption('-h, --help', 'print help')
    .helpCommand('help [command]', 'print help for a command')
    .configureHelp({ showGlobalOptions: true })
    .configureOutput({
      writeOut: (text) => io.out.write(text),
      writeErr: (text) => io.err.write(harmless(text)),
      outputError: (text, write) =>
        write(
          usageFault(
            text,
            program.commands.find((command) => command.name() === wanted),
          ),
        ),
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    })
    .showHelpAfterError('(--help shows what there is)')
    .addHelpText('after', EXIT_HELP)
    .exitOverride();
  for (const { name, summary, load } of COMMANDS) {
    const command = program.command(name).description(summary);
    if (name === wanted) (await load()).define(command, context);
  }
}

/** Prints why a run failed, and gives the exit code. */
async function failed(error: unknown, context: Context): Promise<number> {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.made : EXIT.badInput;
  if (error instanceof BadInput) {
    await context.report(error.diagnostics);
    return EXIT.badInput;
  }
  const { io } = context;
  const { message, stack } = error instanceof Error ? error : new Error(String(error));
  const detail = io.env['DIEWRIGHT_DEBUG'] === '1' ? (stack ?? message) : `${message.split('\n')[0]} (DIEWRIGHT_DEBUG=1 shows where)`;
  io.err.write(`${harmless(`diewright: internal fault: ${detail}`)}\n`);
  return EXIT.fault;
}

/** Words of the command line may hold characters that act on a terminal. Looked for here, so that nothing else is loaded for it. */
function harmless(text: string): string {
  return text.replace(ACTIVE, (c) => `<U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`);
}

/** As in `kernel/printable.ts`, and carriage returns; line breaks and tabs stay. */
const ACTIVE = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ufffe\uffff]|\p{Surrogate}/gu;
