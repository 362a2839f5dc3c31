/**
 * How far a figure can be trusted, and where it was read.
 *
 * `source`   read in the named publication (or stated by the user for this part or plant)
 * `derived`  follows by arithmetic or physics from sourced figures
 * `practice` a rule of thumb of the trade without a single source
 * `memory`   remembered, not verified in a text
 */
export const STATUSES = ['source', 'derived', 'practice', 'memory'] as const;
export type Status = (typeof STATUSES)[number];

/** The least trustworthy of the given statuses; `source` when none is given. */
export function weakest(...statuses: readonly Status[]): Status {
  let worst = 0;
  for (const status of statuses) worst = Math.max(worst, STATUSES.indexOf(status));
  return STATUSES[worst] as Status;
}

/** A reference into the bibliography: the key, then the table, page or step, as in `NADCA-FAQ "Alloy properties"`. */
export type SourceRef = string;

/** The bibliography key of a reference. */
export function sourceKey(ref: SourceRef): string {
  const space = ref.indexOf(' ');
  return space < 0 ? ref : ref.slice(0, space);
}

/** The same references, each once, in order of first appearance. */
export function mergeSources(...lists: readonly (readonly SourceRef[])[]): SourceRef[] {
  return [...new Set(lists.flat())];
}
