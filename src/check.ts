import { type CheckedFinding, toChecked } from './engine/check/checked.ts';
import type { Diagnostic, Severity } from './kernel/diagnostic.ts';
import type { RuleInfo } from './report/check/report.ts';
import { FINDING_CODES } from './report/finding-codes.ts';
import { frameOf } from './report/findings-text.ts';
import type { Rulebook } from './rulebook/types.ts';
import { CODES } from './spec/index.ts';

export { applyBaseline, type BaselineEntry, baselineOf, canBeKnown, type FilesOfRun } from './engine/check/baseline.ts';
export { type Checked, type CheckedFile, type CheckedFinding, isFailing, sortFindings, type Threshold } from './engine/check/checked.ts';
export { type CommittedText, checkFreshness, type FreshnessRequest, nameIn } from './freshness.ts';
export { baselineText } from './report/check/baseline-text.ts';
export { CHECK_FORMATS, type CheckFormat, renderCheck } from './report/check/index.ts';
export { type CheckReport, summaryLine } from './report/check/report.ts';
export { readBaseline } from './spec/index.ts';

/**
 * Findings without what they were made from; with `shown` the lines that they point at, and with `names` files called by another name.
 * Faults are those of an input that could not be used.
 */
export function checkedFindings(
  of: string,
  diagnostics: readonly Diagnostic[],
  options: { readonly shown: boolean; readonly faults?: boolean; readonly names?: ReadonlyMap<string, string> },
): CheckedFinding[] {
  return diagnostics.map((diagnostic) => {
    const checked = toChecked(diagnostic, of, options.shown ? frameOf(diagnostic) : undefined, options.names);
    return options.faults === true && diagnostic.severity === 'error' ? { ...checked, fault: true } : checked;
  });
}

/** What the codes of findings mean. */
export function ruleInfoOf(rulebook: Rulebook): (code: string, severity: Severity) => RuleInfo {
  const known = new Map<string, RuleInfo>();
  return (code, severity) => {
    const info = known.get(code) ?? describe(rulebook, code, severity);
    known.set(code, info);
    return info;
  };
}

function describe(rulebook: Rulebook, code: string, severity: Severity): RuleInfo {
  const limit = Object.hasOwn(rulebook.limits, code) ? rulebook.limits[code] : undefined;
  if (limit !== undefined) return { code, title: limit.title, about: limit.why, severity: limit.severity };
  const spec = code.replace(/^spec\//, '');
  const meaning =
    own(FINDING_CODES, code) ??
    (spec === code ? undefined : own(CODES, spec)) ??
    (code.startsWith('range/') ? own(FINDING_CODES, 'range/…') : undefined) ??
    (code.startsWith('house/') ? own(FINDING_CODES, 'house/…') : undefined) ??
    code;
  return { code, title: /^[^.]*\.(?= |$)/.exec(meaning)?.[0].slice(0, -1) ?? meaning, about: meaning, severity };
}

function own(record: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}
