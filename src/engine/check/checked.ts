import type { Accepted, Diagnostic, Severity } from '../../kernel/diagnostic.ts';

/** The line that a finding points at as it is shown, uncoloured. */
export interface ShownLine {
  readonly before?: string;
  readonly line: string;
  readonly marks: string;
}

/** A finding of a check: what a format needs, and no text, plan or tree that it came from, so that thousands can be kept. */
export interface CheckedFinding {
  /** The checked file that it came from: the part, where the place is in its plant. */
  readonly of: string;
  /** Where it stands; paths have forward slashes. Empty for a fault of the command line. */
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  /** The path in the file, such as `holes[0].diameter`. */
  readonly path: string;
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly notes?: readonly string[] | undefined;
  readonly fix?: string | undefined;
  readonly item?: string | undefined;
  readonly accepted?: Accepted | undefined;
  readonly shown?: ShownLine | undefined;
  /** An input could not be used; the run ends as one with bad input, and the finding cannot be accepted. */
  readonly fault?: true;
}

/** A file that was checked. */
export interface CheckedFile {
  readonly name: string;
  /** Whether its findings are complete; false where a fault of the input stood in the way. */
  readonly judged: boolean;
}

/** What came of a check, files by name and findings in the order of `sortFindings`. */
export interface Checked {
  readonly files: readonly CheckedFile[];
  readonly findings: readonly CheckedFinding[];
}

/** A finding without what it was made from. A file that was read under another name is called by the name given for it. */
export function toChecked(diagnostic: Diagnostic, of: string, shown?: ShownLine, names?: ReadonlyMap<string, string>): CheckedFinding {
  const { at, code, severity, message, notes, fix, item, accepted } = diagnostic;
  const { line, column, endLine, endColumn } = at?.position() ?? { line: 1, column: 1, endLine: 1, endColumn: 1 };
  const read = at?.source.name ?? of;
  const file = names?.get(read) ?? read;
  return { of, file, line, column, endLine, endColumn, path: at?.path ?? '', code, severity, message, notes, fix, item, accepted, shown };
}

/** By file, line, column, code, message, and the file it came from: the same order whatever the order of arguments. */
export function sortFindings(findings: readonly CheckedFinding[]): CheckedFinding[] {
  return [...findings].sort(
    (a, b) =>
      order(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      order(a.code, b.code) ||
      order(a.message, b.message) ||
      order(a.of, b.of) ||
      order(a.item ?? '', b.item ?? ''),
  );
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The severities that fail a run, by the threshold. */
export const THRESHOLDS = { error: ['error'], warning: ['error', 'warning'], never: [] } as const satisfies Readonly<Record<string, readonly Severity[]>>;
export type Threshold = keyof typeof THRESHOLDS;

/** Whether a finding makes the run fail. */
export function isFailing({ severity, accepted, fault }: CheckedFinding, threshold: Threshold): boolean {
  return accepted === undefined && fault !== true && (THRESHOLDS[threshold] as readonly Severity[]).includes(severity);
}
