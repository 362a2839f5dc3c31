import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { STARTER_DIE, STARTER_PART, STARTER_PLANT, STARTER_PROJECT } from '../../src/spec/starters.ts';

const ROOT = join(import.meta.dirname, '../..');

/** A sound file to begin from. `path` is its place in a rule folder, where that tells what it is. */
export interface Base {
  readonly path: string;
  readonly text: string;
}

export type Kind = 'part' | 'die' | 'plant' | 'project' | 'baseline' | 'plan' | 'limit' | 'table' | 'choice' | 'caution' | 'alloy' | 'sources';

/** The files of some folders of the repository with this ending, by their path from the first of these folders. */
function under(folders: readonly string[], ending: string): Base[] {
  return folders.flatMap((folder) =>
    readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith(ending))
      .sort()
      .map((name) => ({ path: name, text: readFileSync(join(ROOT, folder, name), 'utf8') })),
  );
}

/** A few of many, spread over all of them, so that a case does not take long to draw. */
function some(bases: readonly Base[], count: number): Base[] {
  const step = Math.max(1, Math.floor(bases.length / count));
  return bases.filter((_, i) => i % step === 0).slice(0, count);
}

const inRules = (folder: string, count: number): Base[] =>
  some(under([`rules/${folder}`], '.yaml'), count).map(({ path, text }) => ({ path: `${folder}/${path}`, text }));

const house = ['examples/reservoir-cover/rules', 'examples/part-repository/house-rules'];

/** Rule files of the house and some built-in ones, by the folder that they lie in. */
const rules = (folder: string, count: number): Base[] => [
  ...under(house, '.yaml').filter(({ path }) => path.startsWith(`${folder}/`)),
  ...inRules(folder, count),
];

/** Sound files of every kind that the program reads: the examples, the starters, and some of the built-in rules. */
export const BASES: Readonly<Record<Kind, readonly Base[]>> = {
  part: [...under(['examples'], '.part.yaml'), { path: 'starter', text: STARTER_PART }],
  die: [...under(['examples'], '.die.yaml'), { path: 'starter', text: STARTER_DIE }],
  plant: [...under(['examples/plants'], '.yaml'), { path: 'starter', text: STARTER_PLANT }],
  project: [...under(['examples'], 'diewright.yaml'), { path: 'starter', text: STARTER_PROJECT }],
  baseline: under(['examples'], 'known.yaml'),
  plan: some(under(['examples'], 'plan.json'), 4),
  limit: rules('limits', 12),
  table: rules('tables', 8),
  choice: rules('choices', 6),
  caution: rules('cautions', 3),
  alloy: [...rules('alloys', 0), ...inRules('alloys', 7).filter(({ text }) => text.length < 40_000)],
  sources: under(house, 'sources.yaml'),
};

/** The parts that the dies among the examples name, by the name of their file. */
export const PARTS_BY_NAME: ReadonlyMap<string, string> = new Map(BASES.part.map(({ path, text }) => [path.split('/').at(-1) as string, text]));
