import type { Command } from 'commander';
import {
  CHECK_FORMATS,
  type CheckedFinding,
  type CheckFormat,
  type CheckReport,
  checkedFindings,
  isFailing,
  loadRulebook,
  readPlantText,
  renderCheck,
  ruleInfoOf,
  type SourceText,
  sortFindings,
  summaryLine,
  type Threshold,
  visibleLine,
} from '../../index.ts';
import { inBatches } from '../batches.ts';
import { judgeByBaseline, readBaselines } from '../check/baseline.ts';
import { checkFiles } from '../check/check-files.ts';
import { discover, type Found } from '../check/discover.ts';
import { progress } from '../check/progress.ts';
import { type Context, collect } from '../context.ts';
import { EXIT } from '../exits.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { shownPath } from '../find/look-up.ts';
import { readArgument, readNumber, refuseSamePlace } from '../outputs.ts';
import { MOST_THREADS, usualThreads } from '../pool/pool.ts';
import { checkHouseRules } from '../rule-check.ts';
import { addSettingOptions, type CommonOptions, surroundingsFor } from '../setting-options.ts';
import type { Surroundings } from '../settings.ts';
import { VERSION } from '../version.ts';
import type { WholeFile } from '../write-whole.ts';

interface CheckOptions extends CommonOptions {
  readonly format?: readonly string[];
  readonly set?: readonly string[];
  readonly since?: string;
  readonly baseline?: string;
  readonly writeBaseline?: string;
  readonly rulesOnly?: boolean;
  readonly threads?: string;
  readonly quiet?: boolean;
}

interface Output {
  readonly format: CheckFormat;
  readonly path: string;
}

const HELP = `
Each part is read and planned as "diewright plan" does it. A plan beside it
(plan.json, plan.md, or NAME.plan.json and NAME.plan.md beside NAME.part.yaml)
must be what the part gives today.

Examples:
  $ diewright check
  $ diewright check parts --format text --format sarif=check.sarif
  $ diewright check "parts/**/*.part.yaml" --since origin/main`;

export function define(command: Command, context: Context): void {
  addSettingOptions(command, { failOn: true })
    .argument('[path...]', 'files, folders (searched for *.part.yaml, *.die.yaml and plant.yaml) and quoted patterns (default: the current folder)')
    .option(
      '-f, --format <name[=path]>',
      `how to write the findings and where; may be repeated: ${CHECK_FORMATS.join(', ')} (default: text to standard output)`,
      collect,
    )
    .option(
      '--since <revision>',
      'only what has changed since a git revision, committed or not: parts, plans beside them, and the plant, project file and house rules that they are planned with',
    )
    .option('--baseline <file>', 'known findings, which are shown as accepted and do not fail the run')
    .option('--write-baseline <file>', 'write the errors and warnings of this run as known ones; reasons that are there are kept')
    .option('--set <path=value>', 'set a field before reading, in every part; may be repeated', collect)
    .option('--rules-only', 'check the house rules and settings only, and run the examples in the rules')
    .option('--threads <count>', 'threads to check with; 0 for none (default: by the count of files and processors)')
    .option('-q, --quiet', 'no summary and no messages on standard error')
    .addHelpText('after', HELP)
    .action(async (paths: string[], options: CheckOptions) => {
      context.exit = await check(paths.length === 0 ? ['.'] : paths, options, context);
    });
}

async function check(paths: readonly string[], options: CheckOptions, context: Context): Promise<number> {
  const { io } = context;
  const quiet = options.quiet === true;
  const surroundings = await surroundingsFor(options, [], context);
  if (surroundings === undefined) return EXIT.made;
  if (options.rulesOnly === true) return checkHouseRules(surroundings, await partsOf(paths), context);
  const outputs = (options.format ?? ['text']).map((text): Output => {
    const { name, path } = readArgument('format', text, CHECK_FORMATS);
    return { format: name, path };
  });
  const inputs = [options.plant, options.baseline].filter((path) => path !== undefined);
  refuseSamePlace(
    [
      ...outputs.map(({ format, path }) => ({ path, option: `--format ${format}=${path}` })),
      ...(options.writeBaseline === undefined ? [] : [{ path: options.writeBaseline, option: `--write-baseline ${options.writeBaseline}` }]),
    ],
    inputs.filter((path) => options.writeBaseline === undefined || shownPath(path) !== shownPath(options.writeBaseline)),
  );
  const shown = outputs.some(({ format }) => format === 'text');
  const baselines = readBaselines(options.baseline, options.writeBaseline);
  const plant = readPlant(options.plant, shown);
  const discovered = await discover(paths);
  const found = await chosen(discovered.files, options, inputs, surroundings);
  refuseSamePlace(
    outputs.map(({ format, path }) => ({ path, option: `--format ${format}=${path}` })),
    discovered.files.map(({ path }) => path),
  );
  const first = found[0]?.path ?? discovered.files[0]?.path;
  const threshold = (await surroundings.settings(first)).failOn.value;
  const { rulebook } = first === undefined ? { rulebook: await loadRulebook() } : await surroundings.ground(first);
  const bar = progress(io, found.length, quiet);
  const threads = options.threads === undefined ? usualThreads(found.length) : readNumber('threads', options.threads, MOST_THREADS, true);
  const { plant: plantPath, rules } = options;
  const orders = {
    options: { ...(plantPath === undefined ? {} : { plant: plantPath }), ...(rules === undefined ? {} : { rules }) },
    plant: plant?.source,
    set: options.set ?? [],
    shown,
  };
  const checked = await checkFiles(found, orders, surroundings, { threads, done: bar.done });
  bar.end();
  const faults = checkedFindings('', discovered.faults, { shown, faults: true });
  // The plant of the run is checked with it, once, whether or not it is among the files.
  const ofPlant = plant === undefined || found.some(({ path }) => path === plant.source.name) ? [] : plant.findings;
  const judged = judgeByBaseline(sortFindings([...faults, ...ofPlant, ...checked.findings]), checked.files, baselines, shown);
  const exit = checked.broken ? EXIT.fault : exitOf(judged.findings, threshold);
  const report: CheckReport = {
    tool: { name: 'diewright', version: VERSION },
    threshold,
    exit,
    files: checked.files,
    findings: judged.findings,
    rule: ruleInfoOf(rulebook),
  };
  await write(outputs, report, judged.file, context);
  if (quiet) return exit;
  if (judged.file !== undefined) io.err.write(`wrote ${visibleLine(judged.file.path)}: ${judged.known} known\n`);
  const nothing = discovered.files.length > 0 && found.length === 0;
  io.err.write(`${nothing ? `nothing has changed since ${visibleLine(options.since ?? '')}: ` : ''}${summaryLine(report)}\n`);
  return exit;
}

/** The parts below the paths, whose projects set the rules; the paths themselves where there are none. */
async function partsOf(paths: readonly string[]): Promise<readonly string[]> {
  const { files } = await discover(paths);
  return files.map(({ path }) => path);
}

/** The plant of the run, which has no fault, and what else is found in it. @throws BadInput with all of its faults. */
function readPlant(path: string | undefined, shown: boolean): { readonly source: SourceText; readonly findings: readonly CheckedFinding[] } | undefined {
  if (path === undefined) return undefined;
  const source = { name: shownPath(path), text: readFileText(path).text };
  const diagnostics = readPlantText(source);
  if (diagnostics.some(({ severity }) => severity === 'error')) throw new BadInput(diagnostics);
  return { source, findings: checkedFindings(source.name, diagnostics, { shown }) };
}

async function chosen(files: readonly Found[], { since }: CheckOptions, restsOn: readonly string[], surroundings: Surroundings): Promise<readonly Found[]> {
  return since === undefined ? files : (await import('../check/since.ts')).onlyChanged(files, since, restsOn, surroundings);
}

function exitOf(findings: readonly CheckedFinding[], threshold: Threshold): number {
  if (findings.some(({ fault }) => fault === true)) return EXIT.badInput;
  return findings.some((finding) => isFailing(finding, threshold)) ? EXIT.findings : EXIT.made;
}

/** Files first, all of them or none; then what goes to standard output. */
async function write(outputs: readonly Output[], report: CheckReport, baseline: WholeFile | undefined, context: Context): Promise<void> {
  const { io } = context;
  const files: WholeFile[] = baseline === undefined ? [] : [baseline];
  for (const { format, path } of outputs) if (path !== '-') files.push({ path, text: await renderCheck(format, report) });
  if (files.length > 0) await (await import('../write-whole.ts')).writeTogether(files);
  for (const { format, path } of outputs) {
    if (path !== '-') continue;
    const pieces = await renderCheck(format, report, format === 'text' ? await context.palette(io.out) : undefined);
    for (const text of inBatches(pieces)) io.out.write(text);
  }
}
