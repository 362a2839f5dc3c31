import type { Refusal } from '../kernel/apply.ts';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Traced } from '../kernel/traced.ts';
import { placeOf } from './place-of.ts';

/** What a plan says of a formula or table that refused what it was given. */
export function refusalFinding({ code, message, fix, values }: Refusal): Diagnostic {
  const at = values.map(placeOf).find((place) => place !== undefined);
  return { code, severity: 'error', message, fix, values: values.map((value) => value.id), ...(at === undefined ? {} : { at }) };
}

/** An extrapolation is a warning; a figure taken at the end of its table is a note. Said once for each cause. */
export function addRangeFinding(findings: Diagnostic[], code: string, message: string, value: Traced, on: readonly string[] = []): void {
  if (findings.some((known) => known.code === code && known.message === message)) return;
  const at = placeOf(value);
  const severity = value.range === 'extrapolated' ? 'warning' : 'note';
  findings.push({ code, severity, message, fix: `treat ${value.id} as a guess, or pin it`, values: [value.id], on, ...(at === undefined ? {} : { at }) });
}
