import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { printable } from '../../kernel/printable.ts';
import type { BaselineEntry } from '../../spec/index.ts';
import { isAcceptable } from '../acceptance.ts';
import type { CheckedFinding } from './checked.ts';
import { fingerprintsOf } from './fingerprints.ts';

export type { BaselineEntry } from '../../spec/index.ts';

/** What is known of files when a baseline is held against a run. */
export interface FilesOfRun {
  /** Whether the file was checked in this run, and to the end. */
  readonly judged: (file: string) => boolean;
  /** Whether the file is there at all. */
  readonly there: (file: string) => boolean;
}

/** The findings with those accepted that the baseline knows, and a finding for each entry that matches none any more. */
export function applyBaseline(
  findings: readonly CheckedFinding[],
  entries: readonly BaselineEntry[],
  files: FilesOfRun,
): { readonly findings: CheckedFinding[]; readonly stale: Diagnostic[] } {
  const known = new Map(entries.map((entry) => [entry.fingerprint, entry]));
  const prints = fingerprintsOf(findings);
  const met = new Set<string>();
  const marked = findings.map((finding, i) => {
    const entry = known.get(prints[i] as string);
    if (entry === undefined || entry.code !== finding.code || !canBeKnown(finding)) return finding;
    met.add(entry.fingerprint);
    return finding.accepted === undefined ? { ...finding, accepted: { reason: entry.reason, where: 'baseline' as const } } : finding;
  });
  const stale = entries.filter((entry) => !met.has(entry.fingerprint) && isStale(entry, files)).map(staleFinding);
  return { findings: marked, stale };
}

/**
 * A baseline of what is open now: errors and warnings of plans, which are what can fail a run. Entries that are in it
 * already keep their reason; those of files that were not checked stay; those that match nothing any more go.
 */
export function baselineOf(findings: readonly CheckedFinding[], before: readonly BaselineEntry[], files: FilesOfRun): BaselineEntry[] {
  const known = new Map(before.map((entry) => [entry.fingerprint, entry]));
  const prints = fingerprintsOf(findings);
  const met = new Set<string>();
  const current = findings.flatMap((finding, i): BaselineEntry[] => {
    const fingerprint = prints[i] as string;
    if (!canBeKnown(finding) || finding.severity === 'note' || finding.accepted?.where === 'part') return [];
    met.add(fingerprint);
    const { code, of, item, message } = finding;
    const reason = known.get(fingerprint)?.reason ?? UNREVIEWED;
    return [{ code, file: of, ...(item === undefined ? {} : { item }), message, fingerprint, reason }];
  });
  const kept = before.filter((entry) => !met.has(entry.fingerprint) && !isStale(entry, files));
  const sortKey = ({ file, code, item, fingerprint }: BaselineEntry): string => [file, code, item ?? '', fingerprint].join('\u0000');
  return [...current, ...kept].sort((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1));
}

/** The reason of an entry that nobody has given one yet. */
const UNREVIEWED = 'there when this baseline was written; not reviewed yet';

/** Findings that a baseline cannot take: faults of inputs, stale plans and whatever else a command mends. */
export function canBeKnown({ code, fault }: CheckedFinding): boolean {
  return fault !== true && isAcceptable(code);
}

function isStale({ file }: BaselineEntry, files: FilesOfRun): boolean {
  return files.judged(file) || !files.there(file);
}

function staleFinding(entry: BaselineEntry): Diagnostic {
  const { code, file, item, at } = entry;
  return {
    code: 'check/stale-baseline',
    severity: 'warning',
    message: `the baseline accepts ${printable(code)}${item === undefined ? '' : ` of ${printable(item)}`} in ${printable(file, 200)}, which is no longer found`,
    ...(at === undefined ? {} : { at }),
    fix: 'remove the entry, or write the baseline again',
  };
}
