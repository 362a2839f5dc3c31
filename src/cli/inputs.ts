import { realpathSync, type Stats, statSync } from 'node:fs';
import { badInput } from './fault.ts';

/** Ending of a part description; a file that is named may have any. */
const ENDING = '.part.yaml';

/**
 * The part files that paths stand for: a file is itself, a folder all part files below it, anything else a pattern such as
 * `parts/**\/*.part.yaml`. Sorted by name, each file once, whatever ways lead to it. Folders whose name begins with a dot, and
 * `node_modules`, are passed over.
 *
 * @throws BadInput when a path stands for no file.
 */
export async function findParts(paths: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const path of paths) {
    if (path === '-') throw badInput('cli/usage', 'part descriptions are read from files here, not from standard input', 'name files or folders');
    found.push(...(await filesOf(path)));
  }
  return unique(found);
}

async function filesOf(path: string): Promise<string[]> {
  const stats = statOf(path);
  if (stats !== undefined && !stats.isDirectory()) return [path];
  // A path that is neither there nor a pattern is left to the reader of files, which says what is near to it.
  if (stats === undefined && !/[*?[\]{}!()]/.test(path)) return [path];
  const { escapePath, glob } = await import('./check/glob.ts');
  const pattern = path.replaceAll('\\', '/').replace(/\/+$/, '');
  const below = pattern === '.' ? '' : `${escapePath(pattern)}/`;
  const names = await glob(stats === undefined ? pattern : `${below}**/*${ENDING}`, {
    onlyFiles: true,
    followSymbolicLinks: false,
    ignore: ['**/node_modules/**'],
    expandDirectories: false,
  });
  if (names.length === 0)
    throw badInput(
      'cli/no-parts',
      stats === undefined ? `nothing matches "${path}"` : `no part description lies below "${path}"`,
      `part descriptions end in ${ENDING}; name files, folders or a quoted pattern`,
    );
  return names;
}

function statOf(path: string): Stats | undefined {
  return statSync(path, { throwIfNoEntry: false });
}

function unique(names: readonly string[]): string[] {
  const sorted = [...names].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  const seen = new Set<string>();
  return sorted.filter((name) => {
    const real = realOf(name);
    if (seen.has(real)) return false;
    seen.add(real);
    return true;
  });
}

function realOf(name: string): string {
  try {
    return realpathSync(name);
  } catch {
    return name;
  }
}
