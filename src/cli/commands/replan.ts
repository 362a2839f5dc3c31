import { type Command, Option } from 'commander';
import { type Diagnostic, visibleLine } from '../../index.ts';
import { headOf, inOrder, type PartChange, type PartFailure, partCsv, type Replanning, replanJson, replanMarkdown, summarise } from '../../replan.ts';
import { wantsColour } from '../colour.ts';
import { type Context, collect } from '../context.ts';
import { EXIT } from '../exits.ts';
import { findPlanned } from '../inputs.ts';
import { readNumber } from '../outputs.ts';
import { MOST_THREADS, share, usualThreads } from '../pool/pool.ts';
import { mendBrokenRuns } from '../replan/broken-off.ts';
import { Grounds } from '../replan/grounds.ts';
import { type Outcome, replanJob } from '../replan/job.ts';
import { REPLAN_FORMATS, type ReplanOutput, readReplanOutputs } from '../replan/outputs.ts';
import { type ReplanOptions, readTask } from '../replan/request.ts';
import { Writing } from '../replan/writing.ts';
import { descriptionsOf } from '../replan/written.ts';
import { VERSION } from '../version.ts';
import { writeTogether } from '../write-whole.ts';

export function define(command: Command, context: Context): void {
  command
    .argument('<path...>', 'descriptions of parts and dies, folders that hold *.part.yaml and *.die.yaml, or quoted patterns')
    .option('--alloy <name>', 'the alloy to plan anew in, by any designation')
    .option('--set <path=value>', 'set a field for the plan after, such as production.per_year=200000; may be repeated', collect)
    .option('--plant <file>', 'the plant of the plan after; with --alloy or --set that of both plans')
    .option('--rules <folder>', 'house rules of the plan after, in place of those of the project; may be repeated', collect)
    .option('--plant-before <file>', 'the plant of the plan before, where it is another one')
    .addOption(
      new Option('--before <plan>', 'what the plan before is: made of the file as it stands, or the plan committed beside it (plan.json)')
        .choices(['made', 'committed'])
        .default('made'),
    )
    .option('--same-cavities', 'pin the count of cavities of the plan before, so that existing dies are not planned away')
    .option('--least-change <percent>', 'numbers that change by less are counted, not listed', '2')
    .option('--every-value', 'also list values that no group of consequences names: alloy data, table figures, workings')
    .option(
      '-f, --format <name[=path]>',
      `what to write and where; may be repeated: ${REPLAN_FORMATS.join(', ')} (default: markdown to standard output)`,
      collect,
    )
    .addOption(
      new Option('--fail-on <severity>', `exit with ${EXIT.findings} when a part gets a new finding this grave or worse`)
        .choices(['error', 'warning', 'never'])
        .default('error'),
    )
    .option('--write', 'write the new fields into the part descriptions, and the plans beside them anew: all files or none')
    .option('--take-back', 'only take back what a run with --write has left that was killed')
    .option('--threads <count>', 'threads to plan with; 0 for none (default: by the count of parts and processors)')
    .option('-q, --quiet', 'no progress and no messages on standard error')
    .action(async (paths: string[], options: ReplanOptions) => {
      context.exit = await replan(paths, options, context);
    });
}

async function replan(paths: readonly string[], options: ReplanOptions, context: Context): Promise<number> {
  const { io } = context;
  const quiet = options.quiet === true;
  const files = await findPlanned(paths);
  if (options.takeBack === true) return takeBackOnly(files, context);
  const outputs = readReplanOutputs(options.format ?? [], [...files, ...[options.plant, options.plantBefore].filter((path) => path !== undefined)]);
  const threads = options.threads === undefined ? usualThreads(files.length) : readNumber('threads', options.threads, MOST_THREADS, true);
  const task = await readTask(
    options,
    await new Grounds(options.rules === undefined ? {} : { rules: options.rules }, io).rulebooks(files),
    io,
    wantsColour(context.colour, io.env, io.err),
  );
  const touched = task.write ? [...new Set(files.flatMap((file) => [file, ...descriptionsOf(file)]))] : files;
  const mended = mendBrokenRuns(touched, task.write);
  if (mended.length > 0 && !quiet) await context.report(mended);

  const changes: PartChange[] = [];
  const failures: PartFailure[] = [];
  const faults: { readonly file: string; readonly text: string }[] = [];
  const writing = task.write ? Writing.begin(touched) : undefined;
  const progress = quiet || !io.err.isTTY ? undefined : new Progress(files.length, (text) => io.err.write(text));
  try {
    await share<string, Outcome>({
      items: files,
      threads,
      here: () => replanJob(task, io),
      job: 'replan',
      setting: task,
      stopped: () => writing?.stopped === true,
      take: ({ change, failure, faults: text, files: texts }) => {
        if (change !== undefined) changes.push(change);
        if (failure !== undefined) {
          failures.push(failure);
          faults.push({ file: failure.file, text });
        }
        writing?.add(texts);
        progress?.step();
      },
    });
    progress?.clear();
    for (const { text } of inOrder(faults)) io.err.write(text);
    const replanning: Replanning = {
      head: headOf({
        version: VERSION,
        settings: [...(options.alloy === undefined ? [] : [`alloy=${options.alloy}`]), ...(options.set ?? [])],
        before: options.before,
        sameCavities: task.sameCavities,
        leastChange: task.leastChange,
      }),
      set: summarise(changes, failures),
      parts: inOrder(changes),
      failures: inOrder(failures),
    };
    for (const output of outputs) await write(output, replanning, context, quiet);
    if (writing !== undefined && failures.length > 0) await context.report([notWritten(failures.length, files.length)]);
    const written = failures.length > 0 ? undefined : writing?.settle();
    if (written !== undefined && !quiet) io.err.write(`wrote ${written} ${written === 1 ? 'file' : 'files'}: part descriptions and the plans beside them\n`);
  } finally {
    progress?.clear();
    writing?.end();
  }
  if (failures.length > 0) return EXIT.badInput;
  return changes.some((change) => isGrave(change, options.failOn)) ? EXIT.findings : EXIT.made;
}

function notWritten(failed: number, all: number): Diagnostic {
  const message = `no part description was written: ${failed} of ${all} parts could not be planned, and all are written or none`;
  return { code: 'replan/not-written', severity: 'error', message, fix: 'put them right, or name the others' };
}

async function takeBackOnly(files: readonly string[], context: Context): Promise<number> {
  const mended: Diagnostic[] = mendBrokenRuns(files, true);
  if (mended.length > 0) await context.report(mended);
  else context.io.err.write('no run was broken off on these files\n');
  return EXIT.made;
}

async function write(output: ReplanOutput, replanning: Replanning, { io }: Context, quiet: boolean): Promise<void> {
  const pieces = output.format === 'markdown' ? replanMarkdown(replanning) : output.format === 'json' ? replanJson(replanning) : partCsv(replanning);
  if (output.path === '-') {
    for (const piece of pieces) io.out.write(piece);
    return;
  }
  await writeTogether([{ path: output.path, text: pieces }]);
  if (!quiet) io.err.write(`wrote ${visibleLine(output.path)}\n`);
}

function isGrave({ appeared }: PartChange, threshold: ReplanOptions['failOn']): boolean {
  if (threshold === 'never') return false;
  return appeared.some(({ severity }) => severity === 'error' || (threshold === 'warning' && severity === 'warning'));
}

/** A line on a terminal that is written over and over, and gone at the end. */
class Progress {
  #done = 0;

  constructor(
    private readonly all: number,
    private readonly write: (text: string) => void,
  ) {}

  step(): void {
    this.#done += 1;
    this.write(`\rplanned ${this.#done} of ${this.all}`);
  }

  clear(): void {
    if (this.#done > 0) this.write('\r\u001b[K');
    this.#done = 0;
  }
}
