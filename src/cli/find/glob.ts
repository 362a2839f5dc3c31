import { readdirSync } from 'node:fs';
import { globSync, isDynamicPattern } from 'tinyglobby';

export interface GlobResult {
  /** Paths as the pattern leads to them, relative to the folder, with forward slashes, unsorted. */
  readonly paths: readonly string[];
  /** Folders that could not be read, with the reason of the system. */
  readonly unread: readonly { readonly folder: string; readonly error: unknown }[];
}

/** Whether an argument is a pattern rather than a path. */
export function isPattern(argument: string): boolean {
  return isDynamicPattern(argument);
}

/** The files that patterns match in a folder; dot folders and node_modules are left out. Links are passed over, or with `links` followed without end. */
export function search(patterns: readonly string[], folder: string, links: boolean): GlobResult {
  const unread: { folder: string; error: unknown }[] = [];
  const read = (path: string, options: object): unknown => {
    try {
      return readdirSync(path, options);
    } catch (error) {
      // The library passes over what it cannot read; that must not pass in silence.
      unread.push({ folder: path, error });
      throw error;
    }
  };
  const paths = globSync(patterns, {
    cwd: folder,
    expandDirectories: false,
    followSymbolicLinks: links,
    ignore: ['**/node_modules/**'],
    fs: { readdirSync: read as typeof readdirSync },
  });
  return { paths, unread };
}
