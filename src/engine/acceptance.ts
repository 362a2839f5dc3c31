import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import { printable } from '../kernel/printable.ts';
import { nearestWord, orList } from '../kernel/spelling.ts';
import { formulaById } from '../physics/index.ts';
import type { Rulebook } from '../rulebook/types.ts';
import type { Acceptance } from '../spec/index.ts';
import { isPlantLimit } from './plant-limits.ts';

/**
 * The codes that say an input, a command line or a committed file is wrong: these are mended, not accepted. Those of
 * `--set` are named one by one, for limits on the set of castings of a die begin with the same word.
 */
const NEVER = /^(?:(?:spec|file|cli|calc|check)\/|set\/(?:form|value|unknown-field|unknown-item)$)/;

/** Whether a finding of this code can be accepted: a finding of the plan, not a fault of what it was made from. */
export function isAcceptable(code: string): boolean {
  return !NEVER.test(code);
}

/** What a part is judged by: the codes of its findings are the ids of limits, ranges of formulas and tables, and a few more. */
export interface KnownCodes {
  readonly rulebook: Rulebook;
  /** Codes of findings of a plan that are no limit's. */
  readonly others: readonly string[];
}

/**
 * Marks the findings of a plan that its part file accepts. An entry whose code names no finding, or one that cannot be
 * accepted, is an error; one that matches nothing in this plan is a warning. Nothing is left out of the list.
 */
export function applyAcceptances(accepted: readonly Acceptance[], findings: readonly Diagnostic[], known: KnownCodes): Diagnostic[] {
  if (accepted.length === 0) return [...findings];
  const used = new Set<Acceptance>();
  const marked = findings.map((finding): Diagnostic => {
    if (!isAcceptable(finding.code)) return finding;
    if (finding.gathers !== undefined) {
      const all = acceptedOf(finding.gathers, accepted, used);
      if (all !== undefined) return { ...finding, accepted: { reason: all, where: 'part' } };
    }
    const matching = accepted.filter(({ code, item }) => code === finding.code && (item === undefined || item === finding.item));
    for (const entry of matching) used.add(entry);
    // An entry for the one item says more than an entry for all.
    const entry = matching.find(({ item }) => item !== undefined) ?? matching[0];
    return entry === undefined ? finding : { ...finding, accepted: { reason: entry.reason, where: 'part' } };
  });
  const faults = accepted.filter((entry) => !used.has(entry)).map((entry) => faultOf(entry, findings, known));
  return faults.length === 0 ? marked : sortDiagnostics([...marked, ...faults]);
}

/**
 * The reasons for which all findings that one stands for are accepted, or undefined where one of them is not. An acceptance of
 * any of them has what it is for, so it is used.
 */
function acceptedOf(codes: readonly string[], accepted: readonly Acceptance[], used: Set<Acceptance>): string | undefined {
  const entries = codes.map((code) => accepted.find((entry) => entry.code === code));
  for (const entry of entries) if (entry !== undefined) used.add(entry);
  return entries.includes(undefined) ? undefined : [...new Set(entries.map((entry) => entry?.reason))].join('; ');
}

function faultOf(entry: Acceptance, findings: readonly Diagnostic[], known: KnownCodes): Diagnostic {
  const { code, item } = entry;
  const shown = printable(code);
  if (!isAcceptable(code)) {
    return {
      code: 'spec/not-acceptable',
      severity: 'error',
      message: `${shown} is a fault of a file or of a run, which cannot be accepted`,
      at: entry.codeAt,
      fix: 'mend what it is about, and remove this entry',
    };
  }
  if (!isKnown(code, known)) {
    const near = nearestWord(code, [...Object.keys(known.rulebook.limits), ...known.others.filter(isAcceptable)]);
    return {
      code: 'spec/unknown-code',
      severity: 'error',
      message: `no finding has the code "${shown}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
      at: entry.codeAt,
      fix: 'write a code as findings print it in brackets, or see "diewright list rules"',
    };
  }
  const others = [...new Set(findings.filter((finding) => finding.code === code).flatMap((finding) => finding.item ?? []))];
  return {
    code: 'check/unused-acceptance',
    severity: 'warning',
    message: `${shown}${item === undefined ? '' : ` of ${printable(item)}`} is accepted, but the plan has no such finding`,
    at: entry.at,
    fix:
      others.length === 0
        ? 'remove the entry'
        : `remove the entry, or write the item that is meant: ${orList(others.slice(0, 8).map((id) => `"${printable(id)}"`))}`,
  };
}

function isKnown(code: string, { rulebook, others }: KnownCodes): boolean {
  if (Object.hasOwn(rulebook.limits, code) || others.includes(code) || isPlantLimit(code)) return true;
  if (!code.startsWith('range/')) return false;
  const id = code.slice('range/'.length);
  return formulaById(id) !== undefined || Object.hasOwn(rulebook.tables, id);
}
