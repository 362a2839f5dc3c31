import type { Accepted, Severity } from '../kernel/diagnostic.ts';
import { SEVERITIES } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import type { Status } from '../kernel/status.ts';
import type { Kind, RangeVerdict } from '../kernel/traced.ts';

/** What a status is called on paper. */
export const STATUS_WORDS: Readonly<Record<Status, string>> = {
  source: 'from a source',
  derived: 'derived',
  practice: 'common practice',
  memory: 'from memory, unverified',
};

export const KIND_WORDS: Readonly<Record<Kind, string>> = {
  input: 'given',
  default: 'default',
  pinned: 'pinned',
  table: 'table',
  formula: 'formula',
  choice: 'decision',
  assumption: 'assumption',
};

export const RANGE_WORDS: Readonly<Record<Exclude<RangeVerdict, 'inside'>, string>> = {
  clamped: 'outside the valid range: the nearest value inside was used',
  extrapolated: 'outside the valid range: extrapolated',
};

/** `1 warning`, `2 warnings`; `several` where the plural is not the word with an s. */
export function counted(count: number, word: string, several = `${word}s`): string {
  return `${count} ${count === 1 ? word : several}`;
}

/** `2 errors, 1 warning, 1 accepted`; `no findings` when there are none. What is accepted is counted apart. */
export function countFindings(list: readonly { readonly severity: Severity; readonly accepted?: Accepted | undefined }[]): string {
  const open = (severity: Severity): number => list.filter((d) => d.severity === severity && d.accepted === undefined).length;
  const accepted = list.filter((d) => d.accepted !== undefined).length;
  const parts = SEVERITIES.map((severity) => [severity, open(severity)] as [Severity, number])
    .filter(([, count]) => count > 0)
    .map(([severity, count]) => counted(count, severity));
  if (accepted > 0) parts.push(`${accepted} accepted`);
  return parts.length === 0 ? 'no findings' : parts.join(', ');
}

/** Where a finding was accepted, in words. */
export const ACCEPTED_WHERE: Readonly<Record<Accepted['where'], string>> = { part: 'in the part file', baseline: 'in the baseline' };

/** Whether a place is a whole file rather than a spot in it. */
export function isWholeFile(place: Place): boolean {
  if (place.path !== '') return false;
  const { line, column, endLine, endColumn } = place.position();
  return line === 1 && column === 1 && (endLine > 1 || endColumn === 1);
}

/** `valve.part.yaml:12:5`. */
export function placeText(place: Place): string {
  const { line, column } = place.position();
  return `${place.source.name}:${line}:${column}`;
}

/** What a reference of the user's own files is called. */
const OWN_FILES: Readonly<Record<string, string>> = { PART: 'part description', DIE: 'die description', PLANT: 'plant description' };

export function refText(ref: string): string {
  return OWN_FILES[ref] ?? ref;
}

/** References with their status in words: `KEY table 3; common practice`. */
export function originText(source: readonly string[], status: Status): string {
  const refs = source.map(refText).join(', ');
  if (refs === '') return STATUS_WORDS[status];
  return status === 'source' ? refs : `${refs}; ${STATUS_WORDS[status]}`;
}
