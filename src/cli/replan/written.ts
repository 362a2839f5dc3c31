import { statSync } from 'node:fs';
import { leadsOut } from '../boundary.ts';
import { partsOfDie } from '../check/dies.ts';
import { kindByName } from '../check/kinds.ts';

/**
 * The descriptions that get new fields when a file is replanned: a part is itself, a die the parts that it names. A part that is
 * missing or lies outside the repository is told when the die is planned.
 */
export function descriptionsOf(file: string): readonly string[] {
  const parts = kindByName(file) === 'part' ? [] : partsOfDie(file);
  return parts.length === 0 ? [file] : parts.filter((part) => isFile(part) && !leadsOut(part, file));
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() === true;
}
