import { join, relative } from 'node:path';
import type { Diagnostic } from '../../index.ts';
import { BadInput } from '../fault.ts';
import { type FoundJournal, findJournals, JOURNAL, readJournal } from './journal.ts';
import { takeBack } from './take-back.ts';

/**
 * Looks for runs that were broken off while they wrote these files. With `repair` each is taken back, and told; without, the
 * command ends here, for plans made of files that are half old and half new would mislead.
 * @throws BadInput when there is one and it is not, or cannot be, taken back.
 */
export function mendBrokenRuns(files: readonly string[], repair: boolean): Diagnostic[] {
  return findJournals(files).map((folder) => {
    const name = shown(folder);
    const found = readJournal(folder);
    if (found === undefined)
      throw stop('replan/broken-off', `${name} is no journal that can be read`, 'compare the part files with their last good state, then delete it');
    if (found.running)
      throw stop(
        'replan/at-work',
        `another run that writes is at work here, by ${name}: process ${found.process}`,
        'wait until it has ended; if that process is another program, write 0 for it in the first line of the journal',
      );
    if (!repair)
      throw stop(
        'replan/broken-off',
        `a run that wrote was broken off here: ${name} names ${found.entries.length} files, ${found.settling ? 'and some of them may be new already' : 'none of them changed yet'}`,
        'take it back with "diewright replan --take-back PATHS", or give --write, which takes it back first',
      );
    return mended(found, name);
  });
}

function mended(found: FoundJournal, name: string): Diagnostic {
  const done = takeBack(found);
  if (done.state === 'changed') {
    const list = done.targets.slice(0, 5).join(', ');
    const more = done.targets.length > 5 ? ` and ${done.targets.length - 5} more` : '';
    throw stop(
      'replan/broken-off',
      `a run that wrote was broken off here, and since then ${list}${more} changed, so nothing was taken back`,
      `put these files right by hand - what they held before lies beside them, hidden, ending in ${found.id}.old - then delete ${name}`,
    );
  }
  const message =
    done.state === 'finished'
      ? `a run that was broken off had written all of its ${found.entries.length} files; its leftovers were cleared away (${name})`
      : `a run that was broken off was taken back: its ${found.entries.length} files are as they were before it (${name})`;
  return { code: 'replan/broken-off', severity: 'warning', message };
}

/** The journal as seen from here, without a path of this machine. */
function shown(folder: string): string {
  return join(relative(process.cwd(), folder), JOURNAL);
}

function stop(code: string, message: string, fix: string): BadInput {
  return new BadInput([{ code, severity: 'error', message, fix }]);
}
