import { readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type Diagnostic, nearestWord } from '../../index.ts';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';
import { distinct, type LookedUp, lookUp, realInFolder, shownPath, unreadFolder } from '../find/look-up.ts';
import { type FileKind, type Found, kindByName, kindByReading, kindByText, SEARCHED } from './kinds.ts';

export type { Found } from './kinds.ts';

/**
 * The files that the arguments name, sorted by path, each once: files, folders (searched at any depth) and patterns. What
 * cannot be found or read is a fault, and does not stop the others. A file that two paths lead to, by links between
 * folders, is taken by the shorter one.
 */
export async function discover(args: readonly string[]): Promise<{ readonly files: readonly Found[]; readonly faults: readonly Diagnostic[] }> {
  const faults: Diagnostic[] = [];
  const found: Found[] = [];
  const add = (path: string, kind: FileKind): void => {
    found.push({ path: shownPath(path), kind });
  };
  for (const argument of [...new Set(args)].sort()) {
    const looked = await lookUp(argument, { searched: SEARCHED, links: true });
    if (looked.kind === 'file') addFile(argument, add, faults);
    else if (looked.kind === 'nothing') faults.push(nothing(argument, 'other'));
    else if (addMatches(looked, add, faults) === 0) faults.push(nothing(argument, looked.kind === 'folder' ? 'folder' : 'other'));
  }
  const files = distinct(found, ({ path }) => realInFolder(path), shorterFirst).sort((a, b) => (a.path < b.path ? -1 : 1));
  return { files: files.some(({ kind }) => kind === 'die') ? (await import('./dies.ts')).withoutPartsOfDies(files, args) : files, faults };
}

type Add = (path: string, kind: FileKind) => void;

/** A file that was named is checked whatever its name, as long as its first key says what it is. */
function addFile(path: string, add: Add, faults: Diagnostic[]): void {
  const named = kindByName(path);
  if (named !== undefined) {
    add(path, named);
    return;
  }
  try {
    const kind = kindByText(readFileText(path).text);
    if (kind !== undefined) add(path, kind);
    else
      faults.push({
        code: 'check/unknown-kind',
        severity: 'error',
        message: `nothing tells what kind of file "${shownPath(path)}" is`,
        fix: 'name it like cover.part.yaml or plant.yaml, or begin it with "diewright: part/1"',
      });
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    faults.push(...error.diagnostics);
  }
}

/** Adds what a folder holds or a pattern matches, and gives how much that was. */
function addMatches({ kind, paths, unread }: Extract<LookedUp, { readonly paths: unknown }>, add: Add, faults: Diagnostic[]): number {
  faults.push(...unread.map(unreadFolder));
  let taken = 0;
  for (const path of paths) {
    // A pattern may match files of every sort; those that are none of ours are passed over.
    const found = kindByName(path) ?? (kind === 'pattern' && /\.ya?ml$/.test(path) ? kindByReading(path) : undefined);
    if (found === undefined) continue;
    add(path, found);
    taken += 1;
  }
  return taken + unread.length;
}

function nothing(argument: string, kind: 'folder' | 'other'): Diagnostic {
  if (kind === 'folder') {
    return {
      code: 'check/nothing-matched',
      severity: 'error',
      message: `the folder "${argument}" holds no file that can be checked`,
      fix: `name a folder with files like cover.part.yaml (${SEARCHED.map((pattern) => pattern.slice('**/'.length)).join(', ')})`,
    };
  }
  return {
    code: 'check/nothing-matched',
    severity: 'error',
    message: `"${argument}" is no file and no folder, and matches no file that can be checked${nearTo(argument)}`,
    fix: 'check the path; a pattern is quoted, such as "parts/**/*.part.yaml"',
  };
}

function nearTo(argument: string): string {
  try {
    const near = nearestWord(basename(argument), readdirSync(dirname(argument)));
    return near === undefined ? '' : `; did you mean "${shownPath(join(dirname(argument), near))}"?`;
  } catch {
    return '';
  }
}

/** Fewer folders, or else the earlier name. */
function shorterFirst({ path: a }: Found, { path: b }: Found): number {
  return a.split('/').length - b.split('/').length || (a < b ? -1 : a > b ? 1 : 0);
}
