import { statSync } from 'node:fs';
import { basename, dirname, extname, join, relative, resolve, sep } from 'node:path';
import { type Plan, renderFigures } from '../index.ts';
import { badInput } from './fault.ts';
import { type Output, optionText } from './outputs.ts';
import type { WholeFile } from './write-whole.ts';

/** The figures of one Markdown output. */
export interface FigureSet {
  readonly files: readonly (WholeFile & { readonly text: string })[];
  /** For each plan the links to its figures, by figure id, as seen from the Markdown. */
  readonly links: readonly ReadonlyMap<string, string>[];
}

/** What `--figures` says when none are wanted; a folder of that name is written `./none`. */
export const NO_FIGURES = 'none';

/**
 * Checks `--figures` against the outputs.
 * @throws BadInput when a folder is named and nothing would link to what is in it.
 */
export function checkFigureOption(folder: string | undefined, outputs: readonly Output[]): void {
  if (folder === undefined || folder === NO_FIGURES) return;
  if (folder === '') throw badInput('cli/usage', '--figures names no folder', `write --figures DIR, or --figures ${NO_FIGURES}`);
  if (!outputs.some((output) => output.format === 'markdown'))
    throw badInput('cli/usage', `--figures ${folder} has no Markdown that its figures belong to`, 'add --format markdown=FILE, or leave it out');
}

/**
 * Draws the figures that go with a Markdown output: beside it, or in the folder given. Names begin with the name of the
 * Markdown file, so that several plans can share a folder.
 */
export async function figuresFor(output: Output, plans: readonly Plan[], several: boolean, folder: string | undefined): Promise<FigureSet> {
  const toFile = output.path !== '-' && !isDevice(output.path);
  const place = folder ?? (toFile ? dirname(output.path) : undefined);
  if (output.format !== 'markdown' || folder === NO_FIGURES || place === undefined) return { files: [], links: [] };
  const stem = toFile ? basename(output.path, extname(output.path)) : 'plan';
  const from = folderOf(output);
  const files: FigureSet['files'][number][] = [];
  const links: ReadonlyMap<string, string>[] = [];
  for (const [i, plan] of plans.entries()) {
    const own = new Map<string, string>();
    for (const { id, svg } of await renderFigures(plan)) {
      const path = join(place, `${stem}-${several ? `${i + 1}-` : ''}${id}.svg`);
      files.push({ path, text: svg });
      own.set(id, relative(from, path).split(sep).join('/'));
    }
    links.push(own);
  }
  return { files, links };
}

/** The links of a sheet to the figures that a Markdown output of the same run has, seen from where the sheet lies; none without one. */
export function linksFor(sheet: Output, outputs: readonly Output[], sets: readonly FigureSet[]): FigureSet['links'] {
  const drawn = outputs.findIndex((_, i) => sets[i]?.links.some((links) => links.size > 0) === true);
  const markdown = outputs[drawn];
  if (markdown === undefined) return [];
  const link = (path: string): string =>
    relative(folderOf(sheet), join(folderOf(markdown), path))
      .split(sep)
      .join('/');
  return (sets[drawn]?.links ?? []).map((links) => new Map([...links].map(([id, path]) => [id, link(path)])));
}

/** Where an output is read from: the folder of its file, or the current one. */
function folderOf({ path }: Output): string {
  return path === '-' || isDevice(path) ? '.' : dirname(path);
}

/** Something that is there and is no file, such as a pipe or a device: nothing lies beside it. */
function isDevice(path: string): boolean {
  try {
    return !statSync(path).isFile();
  } catch {
    return false;
  }
}

/** @throws BadInput when a figure would take the place of an input or of another output. */
export function refuseOverwriting(sets: readonly FigureSet[], outputs: readonly Output[], inputs: readonly string[]): void {
  const taken = new Map([
    ...inputs.filter((input) => input !== '-').map((input) => [resolve(input), `the input ${input}`] as const),
    ...outputs.filter(({ path }) => path !== '-').map((output) => [resolve(output.path), `the output ${optionText(output)}`] as const),
  ]);
  for (const { path } of sets.flatMap(({ files }) => files)) {
    const other = taken.get(resolve(path));
    if (other !== undefined) throw badInput('cli/output-twice', `the figure ${path} would write over ${other}`, 'give each output a file of its own');
  }
}
