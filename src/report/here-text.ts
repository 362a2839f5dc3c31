import { changeOf } from '../engine/changes.ts';
import type { Change, RuleKind } from '../engine/rule-data.ts';

/** Whether a thing holds here, and which setting made it so: one sentence for `explain`. */
export function hereText(changes: readonly Change[] | undefined, what: RuleKind, id: string): string {
  const change = changeOf(changes, what, id);
  if (change === undefined) return 'active, as built in';
  const state = change.change === 'switched off' ? 'not judged' : 'active';
  return `${state}, ${changeText(change)}${change.reason === undefined ? '' : `, because: ${change.reason}`}`;
}

/** `replaced by house-rules/limits/clamp/use.yaml:1`, `re-graded from warning to error by diewright.yaml:6`. */
export function changeText(change: Change): string {
  return `${changeWord(change)} by ${change.file}:${change.line}`;
}

/** `replaced`, `re-graded from warning to error`. */
export function changeWord({ change, severity }: Change): string {
  return change === 're-graded' && severity !== undefined ? `re-graded from ${severity.from} to ${severity.to}` : change;
}
