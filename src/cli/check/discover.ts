import { readdirSync, realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { type Diagnostic, nearestWord } from '../../index.ts';
import { BadInput } from '../fault.ts';
import { fault, readFileText, reason } from '../files.ts';
import { type FileKind, kindByName, kindByText, SEARCHED } from './kinds.ts';

/** A file to check. */
export interface Found {
  /** Path from the working folder, with forward slashes. */
  readonly path: string;
  readonly kind: FileKind;
}

/**
 * The files that the arguments name, sorted by path, each once: files, folders (searched at any depth) and patterns. What
 * cannot be found or read is a fault, and does not stop the others. A file that two paths lead to, by links between
 * folders, is taken by the shorter one.
 */
export async function discover(args: readonly string[]): Promise<{ readonly files: readonly Found[]; readonly faults: readonly Diagnostic[] }> {
  const faults: Diagnostic[] = [];
  const found = new Map<string, Found>();
  const add = (path: string, kind: FileKind): void => {
    const key = join(realFolder(dirname(path)), basename(path));
    const shown = shownPath(path);
    const known = found.get(key);
    if (known === undefined || isShorter(shown, known.path)) found.set(key, { path: shown, kind });
  };
  for (const argument of [...new Set(args)].sort()) {
    const kind = whatIs(argument);
    if (kind === 'file') addFile(argument, add, faults);
    else {
      const taken = await addMatches(argument, kind, add, faults);
      if (taken === 0) faults.push(nothing(argument, kind));
    }
  }
  const files = [...found.values()].sort((a, b) => (a.path < b.path ? -1 : 1));
  return { files, faults };
}

type Add = (path: string, kind: FileKind) => void;

function whatIs(argument: string): 'file' | 'folder' | 'other' {
  try {
    return statSync(argument).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    // What is there and cannot be looked at is said when it is read.
    return ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'EINVAL'].includes((error as NodeJS.ErrnoException).code ?? '') ? 'other' : 'file';
  }
}

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
async function addMatches(argument: string, kind: 'folder' | 'other', add: Add, faults: Diagnostic[]): Promise<number> {
  const { isPattern, search } = await import('./glob.ts');
  if (kind === 'other' && !isPattern(argument)) return 0;
  const folder = kind === 'folder' ? argument : '.';
  const { paths, unread } = search(kind === 'folder' ? SEARCHED : [argument], folder);
  for (const { folder: path, error } of unread) {
    faults.push(...fault(shownPath(path), 'not-readable', `the folder cannot be read: ${reason(error)}`, 'check the permissions of the folder').diagnostics);
  }
  let taken = 0;
  for (const path of paths) {
    const full = join(folder, path);
    // A pattern may match files of every sort; those that are none of ours are passed over.
    const found = kindByName(full) ?? (kind === 'other' && /\.ya?ml$/.test(full) ? quietKind(full) : undefined);
    if (found === undefined) continue;
    add(full, found);
    taken += 1;
  }
  return taken + unread.length;
}

function quietKind(path: string): FileKind | undefined {
  try {
    return kindByText(readFileText(path).text);
  } catch (error) {
    if (error instanceof BadInput) return undefined;
    throw error;
  }
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

/** A path as it is printed: from the working folder, with forward slashes. */
export function shownPath(path: string): string {
  return relative('.', resolve(path)).split(sep).join('/') || '.';
}

function realFolder(folder: string): string {
  try {
    return realpathSync(folder);
  } catch {
    return resolve(folder);
  }
}

/** Fewer folders, or else the earlier name. */
function isShorter(path: string, other: string): boolean {
  const depth = path.split('/').length - other.split('/').length;
  return depth < 0 || (depth === 0 && path < other);
}
