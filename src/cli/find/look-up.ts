import { realpathSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import type { Diagnostic } from '../../index.ts';
import { fault, reason } from '../files.ts';
import type { GlobResult } from './glob.ts';

/**
 * What an argument of a command stands for: a file, whatever its name; a folder, with what was looked for in it at any depth; a
 * pattern, with what it matches; or none of these. Paths are as the argument leads to them, unsorted.
 */
export type LookedUp = { readonly kind: 'file' } | { readonly kind: 'nothing' } | ({ readonly kind: 'folder' | 'pattern' } & GlobResult);

export interface Looking {
  /** Patterns that a folder is searched for. */
  readonly searched: readonly string[];
  /** Whether links are followed in a folder that is searched and by a pattern. */
  readonly links: boolean;
}

/** Looks an argument up; the library for patterns is loaded for folders and patterns only. */
export async function lookUp(argument: string, { searched, links }: Looking): Promise<LookedUp> {
  const kind = whatIs(argument);
  if (kind === 'file') return { kind };
  const { isPattern, search } = await import('./glob.ts');
  if (kind === 'folder') {
    const { paths, unread } = search(searched, argument, links);
    return { kind, paths: paths.map((path) => join(argument, path)), unread };
  }
  return isPattern(argument) ? { kind: 'pattern', ...search([argument], '.', links) } : { kind: 'nothing' };
}

function whatIs(argument: string): 'file' | 'folder' | 'other' {
  try {
    return statSync(argument).isDirectory() ? 'folder' : 'file';
  } catch (error) {
    // What is there and cannot be looked at is said when it is read.
    return ['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'EINVAL'].includes((error as NodeJS.ErrnoException).code ?? '') ? 'other' : 'file';
  }
}

/** The first of those that are the same by a key, in the order of `compare`. */
export function distinct<T>(items: readonly T[], keyOf: (item: T) => string, compare: (a: T, b: T) => number): T[] {
  const found = new Map<string, T>();
  for (const item of [...items].sort(compare)) {
    const key = keyOf(item);
    if (!found.has(key)) found.set(key, item);
  }
  return [...found.values()];
}

/** A path without links, or as it is where it leads nowhere. */
export function realOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}

/** A path without links in its folders; a link that is itself a file keeps its name. */
export function realInFolder(path: string): string {
  return join(realOf(dirname(path)), basename(path));
}

/** A path as it is printed: from the working folder, with forward slashes. */
export function shownPath(path: string): string {
  return relative('.', resolve(path)).split(sep).join('/') || '.';
}

/** What is said of a folder that could not be looked into: what it holds would be left out in silence. */
export function unreadFolder({ folder, error }: GlobResult['unread'][number]): Diagnostic {
  const [finding] = fault(shownPath(folder), 'not-readable', `the folder cannot be read: ${reason(error)}`, 'check the permissions of the folder').diagnostics;
  return finding as Diagnostic;
}
