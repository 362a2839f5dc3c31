import type { Place } from './place.ts';

export const SEVERITIES = ['error', 'warning', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** What the reader, the rule loader and the rules report: one shape, many printers. */
export interface Diagnostic {
  /** `spec/unknown-key` for the reader, the rule's id for a rule. */
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly at?: Place;
  /** Further facts, one sentence each. */
  readonly notes?: readonly string[];
  /** What to do or write next. */
  readonly fix?: string;
  /** Ids of the plan values involved. */
  readonly values?: readonly string[];
  /** Ids of the values that it hangs on: those that the condition of a rule names, or the inputs that lie outside a range. */
  readonly on?: readonly string[];
  /** Codes of the findings that it stands for, where several are said as one. */
  readonly gathers?: readonly string[];
  /** The item of a list that it concerns, such as hole `H1`. */
  readonly item?: string;
  /** Where a rule that is not as built in comes from, such as `house rule rules/limits/clamp/use.yaml`. */
  readonly rule?: string;
  /** Somebody has accepted it: it is printed with the reason, and does not fail a run. */
  readonly accepted?: Accepted;
}

/** Why a finding is accepted, and whether the part file says so or a baseline. */
export interface Accepted {
  readonly reason: string;
  readonly where: 'part' | 'baseline';
}

/** Sorted by file, line, column, severity, code, message: the order in which every format prints them. */
export function sortDiagnostics(list: readonly Diagnostic[]): Diagnostic[] {
  const keyed = list.map((diagnostic) => {
    const position = diagnostic.at?.position();
    return {
      diagnostic,
      key: [
        diagnostic.at?.source.name ?? '',
        position?.line ?? 0,
        position?.column ?? 0,
        SEVERITIES.indexOf(diagnostic.severity),
        diagnostic.code,
        diagnostic.message,
      ] as const,
    };
  });
  keyed.sort((a, b) => {
    for (let i = 0; i < a.key.length; i += 1) {
      const x = a.key[i] as string | number;
      const y = b.key[i] as string | number;
      if (x !== y) return x < y ? -1 : 1;
    }
    return 0;
  });
  return keyed.map((entry) => entry.diagnostic);
}

/** A fingerprint that survives moved lines: code, item and the path in the file, not line numbers or figures. */
export function fingerprint(diagnostic: Diagnostic): string {
  return hashOf([diagnostic.code, diagnostic.item ?? '', diagnostic.at?.path ?? '']);
}

/** FNV-1a over UTF-16 code units of words, 64 bits as hexadecimal. */
export function hashOf(words: readonly string[]): string {
  const text = words.join('\u0000');
  let hash = 0xcbf29ce484222325n;
  for (let i = 0; i < text.length; i += 1) {
    hash ^= BigInt(text.charCodeAt(i));
    hash = BigInt.asUintN(64, hash * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, '0');
}
