import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planDie } from '../../src/die.ts';
import { type Planned, planPart, type Rulebook } from '../../src/index.ts';

const examples = join(import.meta.dirname, '..', '..', 'examples');
export const { version } = JSON.parse(readFileSync(join(examples, '..', 'package.json'), 'utf8')) as { version: string };

const filesOf = (folder: string, ending: string): string[] => readdirSync(join(examples, folder)).filter((name) => name.endsWith(ending));
const folders = readdirSync(examples, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);
const inFolder = (name: string, file: string) => ({ name, file, folder: join(examples, name) });

/** Every example of a part that has a die of its own, planned as `npm run examples` does it: from inside its own folder. */
export const EXAMPLES = folders.flatMap((name) =>
  filesOf(name, '.die.yaml').length > 0 ? [] : filesOf(name, '.part.yaml').map((file) => inFolder(name, file)),
);

/** Every example of a die with several parts. */
export const DIES = folders.flatMap((name) => filesOf(name, '.die.yaml').map((file) => inFolder(name, file)));

/** An example planned under the name of its file, as from inside its folder. */
export function planExample({ file, folder }: { readonly file: string; readonly folder: string }, rulebook: Rulebook): Planned {
  const read = (name: string) => ({ name, text: readFileSync(join(folder, name), 'utf8') });
  if (!file.endsWith('.die.yaml')) return planPart({ part: read(file), rulebook, version });
  return planDie({ die: read(file), partText: (entry) => read(entry.file.value), rulebook, version });
}
