import { BadInput, badInput } from './fault.ts';
import { distinct, lookUp, realOf, unreadFolder } from './find/look-up.ts';

/** Ending of a part description; a file that is named may have any. */
const ENDING = '.part.yaml';

/**
 * The part files that paths stand for: a file is itself, a folder all part files below it, anything else a pattern such as
 * `parts/**\/*.part.yaml`. Sorted by name, each file once, whatever ways lead to it. Folders whose name begins with a dot,
 * `node_modules` and links are passed over.
 *
 * @throws BadInput when a path stands for no file, and for a folder that cannot be looked into.
 */
export async function findParts(paths: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const path of paths) {
    if (path === '-') throw badInput('cli/usage', 'part descriptions are read from files here, not from standard input', 'name files or folders');
    found.push(...(await filesOf(path)));
  }
  return distinct(found, realOf, (a, b) => (a < b ? -1 : a > b ? 1 : 0));
}

async function filesOf(path: string): Promise<readonly string[]> {
  const looked = await lookUp(path, { searched: [`**/*${ENDING}`], links: false });
  // A path that is neither there nor a pattern is left to the reader of files, which says what is near to it.
  if (looked.kind === 'file' || looked.kind === 'nothing') return [path];
  if (looked.unread.length > 0) throw new BadInput(looked.unread.map(unreadFolder));
  if (looked.paths.length === 0)
    throw badInput(
      'cli/no-parts',
      looked.kind === 'pattern' ? `nothing matches "${path}"` : `no part description lies below "${path}"`,
      `part descriptions end in ${ENDING}; name files, folders or a quoted pattern`,
    );
  return looked.paths;
}
