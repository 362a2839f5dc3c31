import type { Change, Rulebook, RuleKind } from '../rulebook/types.ts';

/** What house rules and a project file have changed about one thing that an id names; undefined for what is as built in. */
export function changeOf(changes: readonly Change[] | undefined, what: RuleKind, id: string): Change | undefined {
  return changes?.find((change) => change.what === what && change.id === id);
}

/** In a word or two where a thing comes from, for a column of a list. */
export function hereInShort(rulebook: Rulebook, what: RuleKind, id: string): string {
  const change = changeOf(rulebook.changes, what, id);
  if (change === undefined) return 'built in';
  const place = `${change.file}:${change.line}`;
  if (change.severity === undefined) return `${change.change} by ${place}`;
  return change.change === 'switched off' ? `switched off by ${place}` : `re-graded from ${change.severity.from} by ${place}`;
}
