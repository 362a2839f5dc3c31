import { withoutPartsOfDies } from './check/dies.ts';
import { kindByName, kindByReading } from './check/kinds.ts';
import { BadInput, badInput } from './fault.ts';
import { distinct, lookUp, realOf, unreadFolder } from './find/look-up.ts';

/** Endings of descriptions of parts and dies; a file that is named may have any. */
const ENDINGS = ['.part.yaml', '.die.yaml'] as const;

/**
 * The files of parts and dies that paths stand for: a file is itself, a folder all such files below it, anything else a pattern
 * such as `parts/**\/*.part.yaml`. A part that one of these dies casts is left to the die, unless it is named itself. Sorted by name,
 * each file once, whatever ways lead to it. Folders whose name begins with a dot, `node_modules` and links are passed over.
 *
 * @throws BadInput when a path stands for no file, and for a folder that cannot be looked into.
 */
export async function findPlanned(paths: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const path of paths) {
    if (path === '-') throw badInput('cli/usage', 'part descriptions are read from files here, not from standard input', 'name files or folders');
    found.push(...(await filesOf(path)));
  }
  const files = distinct(found, realOf, (a, b) => (a < b ? -1 : a > b ? 1 : 0));
  return withoutPartsOfDies(
    files.map((path) => ({ path, kind: kindByName(path) ?? kindByReading(path) ?? 'part' })),
    paths,
  ).map(({ path }) => path);
}

async function filesOf(path: string): Promise<readonly string[]> {
  const looked = await lookUp(path, { searched: ENDINGS.map((ending) => `**/*${ending}`), links: false });
  // A path that is neither there nor a pattern is left to the reader of files, which says what is near to it.
  if (looked.kind === 'file' || looked.kind === 'nothing') return [path];
  if (looked.unread.length > 0) throw new BadInput(looked.unread.map(unreadFolder));
  if (looked.paths.length === 0)
    throw badInput(
      'cli/no-parts',
      looked.kind === 'pattern' ? `nothing matches "${path}"` : `no description of a part or die lies below "${path}"`,
      `they end in ${ENDINGS.join(' and ')}; name files, folders or a quoted pattern`,
    );
  return looked.paths;
}
