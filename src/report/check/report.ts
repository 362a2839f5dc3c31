import { type Checked, type CheckedFile, type CheckedFinding, isFailing, type Threshold } from '../../engine/check/checked.ts';
import { SEVERITIES, type Severity } from '../../kernel/diagnostic.ts';
import { ACCEPTED_WHERE, counted, countFindings } from '../words.ts';

/** What a code means, for the formats that explain their rules. */
export interface RuleInfo {
  readonly code: string;
  readonly title: string;
  /** Why it matters, or what the code means. */
  readonly about: string;
  /** How to mend it, where that can be said without the figures of a part. */
  readonly help?: string;
  readonly severity: Severity;
}

/** What the formats of a check print. */
export interface CheckReport extends Checked {
  readonly tool: { readonly name: string; readonly version: string };
  readonly threshold: Threshold;
  /** The exit code that the run ends with. */
  readonly exit: number;
  readonly rule: (code: string, severity: Severity) => RuleInfo;
}

export interface Counts {
  readonly error: number;
  readonly warning: number;
  readonly note: number;
  readonly accepted: number;
}

/** What was found, by severity; what is accepted is counted apart. */
export function countsOf(findings: readonly CheckedFinding[]): Counts {
  const counts = { error: 0, warning: 0, note: 0, accepted: 0 };
  for (const { severity, accepted } of findings) counts[accepted === undefined ? severity : 'accepted'] += 1;
  return counts;
}

/** `12 files checked: 2 errors, 1 warning, 3 accepted`. */
export function summaryLine({ files, findings }: CheckReport): string {
  return `${counted(files.length, 'file')} checked: ${countFindings(findings)}`;
}

/** The findings of each checked file, files by name; those of the command line under the empty name. */
export function byFile({ files, findings }: Checked): { readonly file: CheckedFile; readonly findings: readonly CheckedFinding[] }[] {
  const own = new Map<string, CheckedFinding[]>(files.map(({ name }) => [name, []]));
  for (const finding of findings) {
    const list = own.get(finding.of);
    if (list === undefined) own.set(finding.of, [finding]);
    else list.push(finding);
  }
  const known = new Map(files.map((file) => [file.name, file]));
  return [...own].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, list]) => ({ file: known.get(name) ?? { name, judged: false }, findings: list }));
}

/** Whether a finding fails the run, in the words of the formats that tell tests that fail from tests that cannot be run. */
export function verdictOf(finding: CheckedFinding, threshold: Threshold): 'fault' | 'accepted' | 'failing' | 'passing' {
  if (finding.accepted !== undefined) return 'accepted';
  if (finding.fault === true) return 'fault';
  return isFailing(finding, threshold) ? 'failing' : 'passing';
}

/** `parts/cover.part.yaml:12:5`; empty where the finding has no file. */
export function placeOf({ file, line, column }: CheckedFinding): string {
  return file === '' ? '' : `${file}:${line}:${column}`;
}

/** `accepted in the baseline: reason`. */
export function acceptedText({ accepted }: CheckedFinding): string | undefined {
  return accepted === undefined ? undefined : `accepted ${ACCEPTED_WHERE[accepted.where]}: ${accepted.reason}`;
}

/** The gravest first, and in the order given within a severity; what is accepted last. */
export function gravestFirst(findings: readonly CheckedFinding[]): CheckedFinding[] {
  return [
    ...SEVERITIES.flatMap((severity) => findings.filter((finding) => finding.severity === severity && finding.accepted === undefined)),
    ...findings.filter(({ accepted }) => accepted !== undefined),
  ];
}
