import { type Command, Option } from 'commander';
import { type Diagnostic, findingsText, loadRulebook, type Plan, renderPlans, SEVERITIES } from '../../index.ts';
import { type Context, collect } from '../context.ts';
import { EXIT } from '../exits.ts';
import { BadInput } from '../fault.ts';
import { FORMAT_NAMES, type Output, readOutputs } from '../outputs.ts';
import { type PartOptions, planFile, readPlantFile } from '../plan-input.ts';

interface PlanOptions extends PartOptions {
  readonly format?: readonly string[];
  readonly failOn: 'error' | 'warning' | 'never';
  readonly quiet?: boolean;
  readonly workings?: boolean;
}

export function define(command: Command, context: Context): void {
  command
    .argument('<file...>', 'part descriptions; - reads standard input')
    .option(
      '-f, --format <name[=path]>',
      `what to write and where; may be repeated: ${FORMAT_NAMES.join(', ')} (default: markdown to standard output)`,
      collect,
    )
    .option('--plant <file>', 'the plant to plan for (default: a typical one that is built in and invented)')
    .option('--set <path=value>', 'set a field before reading, such as geometry.wall.nominal="3 mm"; may be repeated', collect)
    .addOption(
      new Option('--fail-on <severity>', `exit with ${EXIT.findings} when a finding is this grave or worse`)
        .choices(['error', 'warning', 'never'])
        .default('error'),
    )
    .option('--workings', 'in Markdown, also every value that no section shows: alloy data, table figures, workings')
    .option('-q, --quiet', 'no findings of the plan and no messages on standard error')
    .action(async (files: string[], options: PlanOptions) => {
      context.exit = await plan(files, options, context);
    });
}

async function plan(files: readonly string[], options: PlanOptions, context: Context): Promise<number> {
  const { io } = context;
  const outputs = readOutputs(options.format ?? [], options.plant === undefined ? files : [...files, options.plant]);
  const plant = await readPlantFile(options, files, io);
  const rulebook = await loadRulebook();
  const plans: Plan[] = [];
  const faults: Diagnostic[] = [];
  for (const file of files) {
    try {
      const planned = await planFile(file, { plant, set: options.set }, rulebook, io);
      if (planned.plan === undefined) faults.push(...unseen(faults, planned.diagnostics));
      else plans.push(planned.plan);
    } catch (error) {
      if (!(error instanceof BadInput)) throw error;
      faults.push(...error.diagnostics);
    }
  }
  const findings = plans.flatMap((one) => one.findings);
  for (const output of outputs) await write(output, plans, [...findings, ...faults], files.length > 1, options, context);
  const shown = outputs.some((output) => output.format === 'findings' && output.path === '-') ? [] : [...(options.quiet === true ? [] : findings), ...faults];
  if (shown.length > 0) await context.report(shown);
  if (faults.length > 0) return EXIT.badInput;
  return findings.some((finding) => isGrave(finding, options.failOn)) ? EXIT.findings : EXIT.made;
}

/** A fault of the plant file comes back with each part; it is said once. */
function unseen(known: readonly Diagnostic[], list: readonly Diagnostic[]): Diagnostic[] {
  const key = (d: Diagnostic): string => JSON.stringify([d.code, d.message, d.at?.source.name, d.at?.position()]);
  const keys = new Set(known.map(key));
  return list.filter((diagnostic) => !keys.has(key(diagnostic)));
}

async function write(
  output: Output,
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
      : await renderPlans(output.format, plans, several, { workings: options.workings === true });
  if (toStdout) io.out.write(text);
  else {
    // Loaded only when a file is written: its modules take time to load.
    const { writeWhole } = await import('../write-whole.ts');
    await writeWhole(output.path, text);
    if (options.quiet !== true) io.err.write(`wrote ${output.path}\n`);
  }
}

function isGrave(finding: Diagnostic, threshold: PlanOptions['failOn']): boolean {
  return threshold !== 'never' && SEVERITIES.indexOf(finding.severity) <= SEVERITIES.indexOf(threshold);
}
