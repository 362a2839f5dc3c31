import { renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { clear, clearStrays, type Entry, type FoundJournal, hashOf, JOURNAL, keptName } from './journal.ts';

export type TakenBack = { readonly state: 'taken back' | 'finished' } | { readonly state: 'changed'; readonly targets: readonly string[] };

/**
 * Puts every file back to what it was before a run that was broken off. A run that had replaced all of its files is finished
 * instead, for only its leftovers are to be cleared away. Nothing is touched when a file holds neither what it held before nor
 * what the run wrote: someone has changed it since.
 */
export function takeBack({ folder, id, entries, settling }: Pick<FoundJournal, 'folder' | 'id' | 'entries' | 'settling'>): TakenBack {
  const states = entries.map((entry) => ({ entry, hash: hashOf(join(folder, ...entry.target.split('/'))) }));
  // Before the settling no target was touched, so whatever they hold now is somebody's own.
  const strange = settling ? states.filter(({ entry, hash: now }) => now !== entry.before && now !== entry.after) : [];
  if (strange.length > 0) return { state: 'changed', targets: strange.map(({ entry }) => entry.target) };
  const finished = settling && states.every(({ entry, hash: now }) => now === entry.after);
  const replaced = settling && !finished ? states.filter(({ entry, hash: now }) => now !== entry.before).map(({ entry }) => entry) : [];
  const lost = replaced.filter((entry) => !canRestore(folder, entry, id));
  if (lost.length > 0) return { state: 'changed', targets: lost.map(({ target }) => target) };
  for (const entry of replaced) restore(folder, entry, id);
  for (const entry of entries) clear(folder, entry, id);
  clearStrays(folder);
  rmSync(join(folder, JOURNAL), { force: true });
  return { state: finished ? 'finished' : 'taken back' };
}

function canRestore(folder: string, entry: Entry, id: string): boolean {
  return entry.before === null || hashOf(keptName(folder, entry, id)) === entry.before;
}

/** Gives a target its old content back. */
export function restore(folder: string, entry: Entry, id: string): void {
  const target = join(folder, ...entry.target.split('/'));
  if (entry.before === null) rmSync(target);
  else renameSync(keptName(folder, entry, id), target);
}
