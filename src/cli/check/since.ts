import { readdirSync, realpathSync } from 'node:fs';
import { basename, dirname, join, resolve, sep } from 'node:path';
import { BadInput } from '../fault.ts';
import type { Surroundings } from '../settings.ts';
import { planNames } from './beside.ts';
import { partsOfDie } from './dies.ts';
import type { Found } from './discover.ts';
import { type Changed, changedSince, realName } from './git.ts';

/** Files that hold for every part at or below their folder. */
const FROM_ABOVE: readonly string[] = ['plant.yaml', 'diewright.yaml'];

/**
 * Those of the files whose result may have changed since a revision: the file itself, a plan beside it, a plant or project
 * file above it, and the plant and the house rules that it is planned with, wherever they lie. When a file that the whole run
 * rests on has changed, all of them. A file outside the repository counts as changed, because nothing is known of it.
 * @throws BadInput when what has changed cannot be told.
 */
export async function onlyChanged(files: readonly Found[], revision: string, restsOn: readonly string[], surroundings: Surroundings): Promise<Found[]> {
  const changed = await changedSince(revision);
  if (restsOn.some((path) => !isUnchanged(path, changed))) return [...files];
  const above = new Set([...changed.files].filter((path) => FROM_ABOVE.includes(basename(path))).map((path) => dirname(path)));
  const ground = new ChangedGround(changed, surroundings);
  const chosen: Found[] = [];
  for (const file of files)
    if (isItself(file, changed, above) || isMember(file, changed) || (file.kind !== 'plant' && (await ground.of(file.path)))) chosen.push(file);
  return chosen;
}

/** Whether the file, a plan beside it or something above it has changed. */
function isItself({ path, kind }: Found, changed: Changed, above: ReadonlySet<string>): boolean {
  if (!isUnchanged(path, changed)) return true;
  if (kind === 'plant') return false;
  const folder = dirname(realName(path));
  return isBelow(folder, above) || planNames(path).some(({ name }) => changed.files.has(join(folder, name)));
}

/** Whether a part that a die is planned with has changed. */
function isMember({ path, kind }: Found, changed: Changed): boolean {
  return kind === 'die' && partsOfDie(path).some((part) => !isUnchangedFile(part, changed));
}

/** Whether what parts are planned with has changed; each plant and each folder of rules is looked at once. */
class ChangedGround {
  readonly #known = new Map<string, boolean>();

  constructor(
    private readonly changed: Changed,
    private readonly surroundings: Surroundings,
  ) {}

  async of(part: string): Promise<boolean> {
    try {
      const { plant, rules } = await this.surroundings.settings(part);
      const plants = plant.value === undefined || plant.value.at === '-' ? [] : [plant.value.at];
      return plants.some((path) => this.#once(path, () => !isUnchangedFile(path, this.changed))) || rules.value.some(({ at }) => this.#folder(at));
    } catch (error) {
      // What is wrong with them is told when the part is checked.
      if (error instanceof BadInput) return true;
      throw error;
    }
  }

  #folder(path: string): boolean {
    return this.#once(path, () => {
      const folder = realOf(path);
      if (!this.changed.covers(folder) || [...this.changed.files].some((file) => file.startsWith(`${folder}${sep}`))) return true;
      return linksIn(folder).some((link) => !isUnchangedFile(link, this.changed));
    });
  }

  #once(path: string, look: () => boolean): boolean {
    const known = this.#known.get(path) ?? look();
    this.#known.set(path, known);
    return known;
  }
}

/** Links in a folder of rules: what they lead to is read with it. */
function linksIn(folder: string): string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true, recursive: true });
    return entries.filter((entry) => entry.isSymbolicLink()).map((entry) => join(entry.parentPath ?? entry.path, entry.name));
  } catch {
    // A folder that cannot be read is told when its rules are.
    return [];
  }
}

/** Of a link, both the link and what it leads to must be unchanged. */
function isUnchangedFile(path: string, changed: Changed): boolean {
  return isUnchanged(path, changed) && isUnchanged(realOf(path), changed);
}

function realOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
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
