import type { Diagnostic } from '../kernel/diagnostic.ts';
import { Place, type SourceText } from '../kernel/place.ts';

/** A plan as plain data, in the form that `--format json` writes; what is not named here is there too. */
export interface PlanRecord {
  readonly format: 'plan/1';
  readonly part: { readonly name: string; readonly file: string };
  readonly decisions: Readonly<Record<string, DecisionRecord>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, ValueRecord>>;
  readonly findings: readonly FindingRecord[];
  readonly [key: string]: unknown;
}

export interface DecisionRecord {
  readonly title: string;
  /** A number where a value has the same id. */
  readonly value: string | number;
  readonly unit?: string;
}

export interface ValueRecord {
  readonly title: string;
  readonly value: number;
  readonly unit: string;
  /** `input`, `pinned`, `formula` and so on. */
  readonly kind?: string;
}

export interface FindingRecord {
  readonly code: string;
  readonly severity: string;
  readonly message: string;
  readonly item?: string;
}

/**
 * Reads a plan that lies in a repository: one plan, or several in one file. Never throws. A text that is no such plan
 * gives one finding and no plan.
 */
export function readCommittedPlans(source: SourceText): { readonly plans: readonly PlanRecord[]; readonly diagnostics: readonly Diagnostic[] } {
  const fault = (message: string, offset?: number) => ({ plans: [], diagnostics: [unreadable(source, message, offset)] });
  const merge = /^(<{7}|={7}|>{7})( |\r?$)/m.exec(source.text);
  if (merge !== null) return fault('the marks of a merge that was not finished stand in it', merge.index);
  let data: unknown;
  try {
    data = JSON.parse(source.text);
  } catch (error) {
    const position = /position (\d+)/.exec(String((error as Error).message))?.[1];
    return fault('it is not JSON', position === undefined ? undefined : Number(position));
  }
  if (!isRecord(data)) return fault('it is not a mapping of keys and values');
  const { format } = data;
  const listed = format === 'plans/1' && Array.isArray(data['plans']) ? (data['plans'] as unknown[]) : [data];
  const plans: unknown[] = [];
  for (const one of listed) {
    const plan = ofDie(one) ?? one;
    plans.push(plan);
    const problem = problemOf(plan);
    if (problem !== undefined) return fault(problem);
  }
  return { plans: plans as PlanRecord[], diagnostics: [] };
}

/**
 * The plan of a die as one record: the die stands for the part, and what the plans of its parts hold comes under their names, so
 * that all of it is compared at once. Undefined for any other record.
 */
function ofDie(record: unknown): Readonly<Record<string, unknown>> | undefined {
  if (!isRecord(record) || record['format'] !== 'die-plan/1') return undefined;
  const { die, parts, ...own } = record;
  const members = (Array.isArray(parts) ? parts : []).filter(isRecord).flatMap(({ id, plan }) => (isRecord(plan) ? [{ id: String(id), plan }] : []));
  const under = (key: 'decisions' | 'texts' | 'values'): Record<string, unknown> => {
    const all = { ...(isRecord(own[key]) ? own[key] : {}) } as Record<string, unknown>;
    for (const { id, plan } of members) for (const [name, value] of Object.entries(isRecord(plan[key]) ? plan[key] : {})) all[`${id}: ${name}`] = value;
    return all;
  };
  const findings = [own, ...members.map(({ plan }) => plan)].flatMap(({ findings: list }) => (Array.isArray(list) ? list : []));
  return {
    ...own,
    format: 'plan/1',
    part: die,
    decisions: under('decisions'),
    texts: under('texts'),
    values: under('values'),
    findings,
    sectionsOfParts: members.map(({ plan }) => plan['sections']),
  };
}

function unreadable(source: SourceText, message: string, offset?: number): Diagnostic {
  return {
    code: 'check/unreadable-plan',
    severity: 'error',
    message: `this file should hold a plan, but ${message}`,
    at: offset === undefined ? new Place(source, '', () => [0, source.text.length]) : new Place(source, '', () => [offset, offset + 1]),
    fix: 'plan the part again, or remove the file',
  };
}

/** What a plan lacks of its form, as far as a comparison needs it. */
function problemOf(plan: unknown): string | undefined {
  if (!isRecord(plan)) return 'a plan in it is not a mapping of keys and values';
  if (plan['format'] !== 'plan/1') return 'it does not say "format": "plan/1" or "die-plan/1"';
  const { part, decisions, texts, values, findings } = plan;
  if (!isRecord(part) || typeof part['file'] !== 'string') return 'it does not name the file of its part';
  if (!allOf(decisions, (one) => typeof one['value'] === 'string' || typeof one['value'] === 'number')) return 'a decision in it has no value';
  if (!allOf(values, (one) => typeof one['value'] === 'number' && typeof one['unit'] === 'string')) return 'a value in it has no number or no unit';
  if (!isRecord(texts) || Object.values(texts).some((text) => typeof text !== 'string')) return 'its texts are no texts';
  const sound = (finding: unknown): boolean => isRecord(finding) && ['code', 'severity', 'message'].every((key) => typeof finding[key] === 'string');
  return Array.isArray(findings) && findings.every(sound) ? undefined : 'its findings are not of their form';
}

function allOf(records: unknown, holds: (record: Readonly<Record<string, unknown>>) => boolean): boolean {
  return isRecord(records) && Object.values(records).every((record) => isRecord(record) && holds(record));
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
