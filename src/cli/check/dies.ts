import { dirname, join } from 'node:path';
import { partFilesOf } from '../../die.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { realInFolder, shownPath } from '../find/look-up.ts';
import type { Found } from './kinds.ts';

/** The part files that a die names, as paths from the working folder; none where it cannot be read, which its own check tells. */
export function partsOfDie(path: string): string[] {
  try {
    return partFilesOf(readFileText(path)).map((file) => shownPath(join(dirname(path), file)));
  } catch (error) {
    if (error instanceof BadInput) return [];
    throw error;
  }
}

/**
 * Without the parts that a die of the run is planned with: what is found of them is told with the die, and a die of their own is none
 * that anybody makes. Parts that are named as such stay.
 */
export function withoutPartsOfDies(files: readonly Found[], named: readonly string[]): readonly Found[] {
  const dies = files.filter(({ kind }) => kind === 'die');
  if (dies.length === 0) return files;
  const asked = new Set(named.map((path) => realInFolder(path)));
  const inDies = new Set(dies.flatMap(({ path }) => partsOfDie(path)).map((path) => realInFolder(path)));
  return files.filter(({ path, kind }) => kind !== 'part' || asked.has(realInFolder(path)) || !inDies.has(realInFolder(path)));
}
