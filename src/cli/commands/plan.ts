import type { Command } from 'commander';
import { allFindings, type Diagnostic, type FailOn, findingsText, type Plan, renderPlans, renderSheets, SEVERITIES, SHEETS, visibleLine } from '../../index.ts';
import { type Context, collect } from '../context.ts';
import { EXIT } from '../exits.ts';
import { BadInput } from '../fault.ts';
import type { FigureSet } from '../figures.ts';
import { FORMAT_NAMES, type Output, readOutputs } from '../outputs.ts';
import { type PartOptions, planFile } from '../plan-input.ts';
import { addSettingOptions, surroundingsFor } from '../setting-options.ts';
import type { Surroundings } from '../settings.ts';

interface PlanOptions extends PartOptions {
  readonly format?: readonly string[];
  readonly sheet?: readonly string[];
  readonly quiet?: boolean;
  readonly workings?: boolean;
  readonly wave?: boolean;
  readonly figures?: string;
}

export function define(command: Command, context: Context): void {
  command
    .argument('<file...>', 'part descriptions, and descriptions of dies with several parts; - reads standard input')
    .option(
      '-f, --format <name[=path]>',
      `what to write and where; may be repeated: ${FORMAT_NAMES.join(', ')} (default: markdown to standard output)`,
      collect,
    )
    .option(
      '--sheet <name[=path]>',
      `one page of the plan for one reader, as Markdown, and where; may be repeated, with or without --format: ${SHEETS.join(', ')}`,
      collect,
    )
    .option('--set <path=value>', 'set a field before reading, such as geometry.wall.nominal="3 mm"; may be repeated', collect)
    .option('--workings', 'in Markdown, also every value that no section shows: alloy data, table figures, workings')
    .option(
      '--figures <folder>',
      'where the figures of the Markdown plan go as SVG: a folder that is there, or none (default: beside the Markdown file; none with standard output)',
    )
    .option('--wave', 'also compute the wave of the slow shot in the sleeve of a cold chamber: does it close over air, and over how much')
    .option('-q, --quiet', 'no findings of the plan and no messages on standard error')
    .action(async (files: string[], options: PlanOptions) => {
      context.exit = await plan(files, options, context);
    });
  addSettingOptions(command, { failOn: true });
}

async function plan(files: readonly string[], options: PlanOptions, context: Context): Promise<number> {
  const { io } = context;
  const surroundings = await surroundingsFor(options, files, context);
  if (surroundings === undefined) return EXIT.made;
  const inputs = [...files, ...(await otherInputs(surroundings, files))];
  const outputs = readOutputs(options.format ?? [], options.sheet ?? [], inputs);
  const drawsFigures = outputs.some((output) => output.format === 'markdown' && output.path !== '-') || options.figures !== undefined;
  // Loaded only when a figure may be written.
  const figures = drawsFigures ? await import('../figures.ts') : undefined;
  figures?.checkFigureOption(options.figures, outputs);
  const plans: Plan[] = [];
  const faults: Diagnostic[] = [];
  let grave = false;
  for (const file of files) {
    try {
      const ground = await surroundings.ground(file);
      const planned = await planFile(file, options, ground, io);
      if (planned.plan === undefined) faults.push(...unseen(faults, planned.diagnostics));
      else {
        plans.push(planned.plan);
        grave ||= allFindings(planned.plan).some((finding) => isGrave(finding, ground.failOn));
      }
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      faults.push(...unseen(faults, error.diagnostics));
    }
  }
  const findings = plans.flatMap(allFindings);
  const several = files.length > 1;
  const sets: FigureSet[] = [];
  for (const output of outputs) sets.push((await figures?.figuresFor(output, plans, several, options.figures)) ?? NO_SET);
  figures?.refuseOverwriting(sets, outputs, inputs);
  for (const [i, output] of outputs.entries()) if (output.format === 'sheet') sets[i] = { files: [], links: figures?.linksFor(output, outputs, sets) ?? [] };
  for (const [i, output] of outputs.entries()) await write(output, sets[i] ?? NO_SET, plans, [...findings, ...faults], several, options, context);
  const shown = outputs.some((output) => output.format === 'findings' && output.path === '-') ? [] : [...(options.quiet === true ? [] : findings), ...faults];
  if (shown.length > 0) await context.report(shown);
  if (faults.length > 0) return EXIT.badInput;
  return grave ? EXIT.findings : EXIT.made;
}

const NO_SET: FigureSet = { files: [], links: [] };

/** Files besides the parts that must not be written over: plants and project files. A fault in the settings is reported with the part. */
async function otherInputs(surroundings: Surroundings, files: readonly string[]): Promise<string[]> {
  const found = new Set<string>();
  for (const file of files) {
    const { plant, project } = await surroundings.settings(file).catch(() => ({ plant: undefined, project: undefined }));
    for (const path of [plant?.value?.at, project]) if (path !== undefined) found.add(path);
  }
  return [...found];
}

/** A fault of the plant file or of house rules comes back with each part; it is said once. */
function unseen(known: readonly Diagnostic[], list: readonly Diagnostic[]): Diagnostic[] {
  const key = (d: Diagnostic): string => JSON.stringify([d.code, d.message, d.at?.source.name, d.at?.position()]);
  const keys = new Set(known.map(key));
  return list.filter((diagnostic) => !keys.has(key(diagnostic)));
}

async function write(
  output: Output,
  figures: FigureSet,
  plans: readonly Plan[],
  findings: readonly Diagnostic[],
  several: boolean,
  options: PlanOptions,
  context: Context,
): Promise<void> {
  const { io } = context;
  const toStdout = output.path === '-';
  if (output.format !== 'findings' && plans.length === 0) return;
  const text =
    output.format === 'findings'
      ? findingsText(findings, toStdout ? await context.palette(io.out) : undefined)
      : output.format === 'sheet'
        ? await renderSheets(output.sheet, plans, figures.links)
        : await renderPlans(output.format, plans, several, { workings: options.workings === true, figures: figures.links });
  const files = [...figures.files, ...(toStdout ? [] : [{ path: output.path, text }])];
  if (files.length > 0) {
    // Loaded only when a file is written: its modules take time to load.
    const { writeTogether } = await import('../write-whole.ts');
    await writeTogether(files);
  }
  if (toStdout) io.out.write(text);
  if (options.quiet !== true) for (const { path } of files) io.err.write(`wrote ${visibleLine(path)}\n`);
}

function isGrave(finding: Diagnostic, threshold: FailOn): boolean {
  return finding.accepted === undefined && threshold !== 'never' && SEVERITIES.indexOf(finding.severity) <= SEVERITIES.indexOf(threshold);
}
