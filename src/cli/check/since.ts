import { basename, dirname, join } from 'node:path';
import { planNames } from './beside.ts';
import type { Found } from './discover.ts';
import { type Changed, changedSince, realName } from './git.ts';

/** Files that hold for every part at or below their folder. */
const FROM_ABOVE: readonly string[] = ['plant.yaml', 'diewright.yaml'];

/**
 * Those of the files whose result may have changed since a revision: the file itself, a plan beside it, a plant or project
 * file above it. When a file that the whole run rests on has changed, all of them. A file outside the repository counts as
 * changed, because nothing is known of it.
 * @throws BadInput when what has changed cannot be told.
 */
export async function onlyChanged(files: readonly Found[], revision: string, restsOn: readonly string[]): Promise<Found[]> {
  const changed = await changedSince(revision);
  if (restsOn.some((path) => !isUnchanged(path, changed))) return [...files];
  const above = new Set([...changed.files].filter((path) => FROM_ABOVE.includes(basename(path))).map((path) => dirname(path)));
  return files.filter(({ path, kind }) => {
    if (!isUnchanged(path, changed)) return true;
    if (kind === 'plant') return false;
    const folder = dirname(realName(path));
    return isBelow(folder, above) || planNames(path).some(({ name }) => changed.files.has(join(folder, name)));
  });
}

function isUnchanged(path: string, { files, covers }: Changed): boolean {
  const name = realName(path);
  return covers(name) && !files.has(name);
}

function isBelow(folder: string, tops: ReadonlySet<string>): boolean {
  if (tops.size === 0) return false;
  for (let at = folder; ; at = dirname(at)) {
    if (tops.has(at)) return true;
    if (dirname(at) === at) return false;
  }
}
