import { basename, dirname, extname, join } from 'node:path';
import { type Command, Option } from 'commander';
import { nearestWord, orList, type SourceText, visibleLine } from '../../index.ts';
import { type OptionsReport, optionsFigure, optionsFor, optionsJson, optionsMarkdown } from '../../options.ts';
import { type Context, collect } from '../context.ts';
import { EXIT } from '../exits.ts';
import { BadInput, badInput } from '../fault.ts';
import { readText } from '../files.ts';
import { isDie, partTexts } from '../plan-input.ts';
import { Surroundings } from '../settings.ts';
import { VERSION } from '../version.ts';
import { type WholeFile, writeTogether } from '../write-whole.ts';

const FORMATS = ['markdown', 'json'] as const;
type Format = (typeof FORMATS)[number];

interface OptionsOptions {
  readonly alloys?: string;
  readonly plant?: readonly string[];
  readonly rules?: readonly string[];
  readonly set?: readonly string[];
  readonly format?: readonly string[];
  readonly most: string;
  readonly failOn: 'error' | 'never';
  readonly quiet?: boolean;
}

export function define(command: Command, context: Context): void {
  command
    .argument('<file>', 'a description of a part, or of a die with several parts; - reads standard input')
    .option('--alloys <a,b,...>', 'also plan the part in these alloys, by any designation, and compare')
    .option('--plant <file>', 'the plant to plan for (default: a typical one that is built in and invented); repeated, further plants to compare', collect)
    .option('--rules <folder>', 'house rules to lay over the built-in ones, in place of those of the project; may be repeated', collect)
    .option('--set <path=value>', 'set a field before reading, such as production.per_year=200000; may be repeated', collect)
    .option('-f, --format <name[=path]>', `what to write and where; may be repeated: ${FORMATS.join(', ')} (default: markdown to standard output)`, collect)
    .option('--most <count>', 'candidates listed at most', '12')
    .addOption(
      new Option('--fail-on <severity>', `exit with ${EXIT.findings} when nothing fits (error), or never`).choices(['error', 'never']).default('error'),
    )
    .option('-q, --quiet', 'no messages on standard error')
    .action(async (file: string, options: OptionsOptions) => {
      context.exit = await run(file, options, context);
    });
}

async function run(file: string, options: OptionsOptions, context: Context): Promise<number> {
  const { io } = context;
  const outputs = readFormats(options.format ?? []);
  const most = readCount(options.most);
  const plantFiles = options.plant ?? [];
  if ([file, ...plantFiles].filter((name) => name === '-').length > 1)
    throw badInput('cli/input-twice', 'standard input can be read once only', 'name files for the others');
  const plants: SourceText[] = [];
  for (const plant of plantFiles) plants.push(await readText(plant, io));
  const ground = await new Surroundings(options.rules === undefined ? {} : { rules: options.rules }, io).ground(file);
  if (plants.length === 0 && ground.plant !== undefined) plants.push(ground.plant);
  const alloys = (options.alloys ?? '')
    .split(',')
    .map((word) => word.trim())
    .filter((word) => word !== '');
  const source = await readText(file, io);
  const { report, diagnostics } = optionsFor({
    source,
    partText: isDie(source) ? partTexts(file === '-' ? '.' : dirname(file), source.name) : undefined,
    plants,
    alloys,
    rulebook: ground.rulebook,
    version: VERSION,
    ...(options.set === undefined ? {} : { set: options.set }),
  });
  if (report === undefined) throw new BadInput(diagnostics);
  const files: WholeFile[] = [];
  for (const { format, path } of outputs) {
    const written = await textOf(report, format, path, most);
    if (path === '-') io.out.write(written.text);
    else files.push({ path, text: written.text }, ...written.figures);
  }
  if (files.length > 0) await writeTogether(files);
  if (options.quiet !== true) for (const { path } of files) io.err.write(`wrote ${visibleLine(path)}\n`);
  return options.failOn === 'error' && report.options?.fits !== true ? EXIT.findings : EXIT.made;
}

async function textOf(report: OptionsReport, format: Format, path: string, most: number): Promise<{ readonly text: string; readonly figures: WholeFile[] }> {
  if (format === 'json') return { text: optionsJson(report), figures: [] };
  const svg = path === '-' ? undefined : await optionsFigure(report);
  if (svg === undefined) return { text: optionsMarkdown(report, { most }), figures: [] };
  const name = `${basename(path, extname(path))}-cavities.svg`;
  return { text: optionsMarkdown(report, { most, figure: name }), figures: [{ path: join(dirname(path), name), text: svg }] };
}

function readFormats(texts: readonly string[]): { readonly format: Format; readonly path: string }[] {
  if (texts.length === 0) return [{ format: 'markdown', path: '-' }];
  return texts.map((text) => {
    const equals = text.indexOf('=');
    const [word, path] = equals < 0 ? [text, '-'] : [text.slice(0, equals), text.slice(equals + 1)];
    const format = FORMATS.find((known) => known === word);
    if (format === undefined) {
      const near = nearestWord(word, FORMATS);
      throw badInput('cli/unknown-format', `there is no format "${word}"${near === undefined ? '' : `; did you mean "${near}"?`}`, `write ${orList(FORMATS)}`);
    }
    if (path === '') throw badInput('cli/usage', `--format ${text} names no file`, `write ${format} or ${format}=PATH`);
    return { format, path };
  });
}

function readCount(text: string): number {
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > 10000) throw badInput('cli/usage', `--most ${text} is no count`, 'write a whole number from 1 to 10000');
  return count;
}
