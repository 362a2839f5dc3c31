import { existsSync, realpathSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, resolve } from 'node:path';

const tops = new Map<string, string | undefined>();

/** The top of the repository that a folder lies in: the nearest one, here or above, that holds `.git`. Undefined outside of one. */
function topOf(folder: string): string | undefined {
  if (tops.has(folder)) return tops.get(folder);
  const above = dirname(folder);
  const top = existsSync(join(folder, '.git')) ? folder : above === folder ? undefined : topOf(above);
  tops.set(folder, top);
  return top;
}

function realOf(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    // What is not there yet lies where its folder does.
    return dirname(path) === path ? path : join(realOf(dirname(path)), relative(dirname(path), path));
  }
}

/**
 * Whether a path leads out of the repository of `from`, by its steps or by links. The files of a repository may come from anybody,
 * as in a request to merge, and are not to reach what lies around it. What lies in no repository has no such bound.
 */
export function leadsOut(path: string, from = path): boolean {
  const top = topOf(dirname(resolve(from)));
  if (top === undefined) return false;
  const way = relative(realOf(top), realOf(resolve(path)));
  return way === '..' || way.startsWith('../') || way.startsWith('..\\') || isAbsolute(way);
}
