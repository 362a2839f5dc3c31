import type { DecisionRecord, FindingRecord, PlanRecord, ValueRecord } from '../../spec/index.ts';
import { sameData, sameNumber } from './same.ts';

/** A number with its unit, or a word. */
export type Compared = { readonly value: number; readonly unit: string } | string;

/**
 * One thing in which two plans differ. `place` is where something stands in the part file, `entry` all else that a plan says:
 * what a value rests on, a section, a caution; both are only named.
 */
export type Difference =
  | { readonly kind: 'decision' | 'value' | 'text'; readonly id: string; readonly title?: string; readonly before?: Compared; readonly after?: Compared }
  | { readonly kind: 'finding'; readonly id: string; readonly change: 'new' | 'gone'; readonly severity: string; readonly message: string }
  | { readonly kind: 'place' | 'entry'; readonly id: string };

/** Decisions and values that the rest of a plan hangs on, the gravest first. */
const GRAVE_DECISIONS = [
  'machine.kind',
  'parting.die-opening',
  'parting.core-pulls',
  'machine.cavities',
  'machine.model',
  'machine.plunger',
  'vent.kind',
  'cooling.medium',
  'die.cavity-steel',
];
const GRAVE_VALUES = [
  'clamp.locking-force',
  'shot.mass',
  'fill.time',
  'gate.velocity',
  'gate.area',
  'sleeve.fill',
  'cooling.dwell',
  'cycle.time',
  'ejection.force',
  'cost.per-part',
];

/** What says who made a plan, not what is planned. */
const NOT_COMPARED: ReadonlySet<string> = new Set(['tool', 'format', 'findings', 'decisions', 'values', 'texts', 'part']);

/** What the user wrote: a change of it is a cause of others. */
const GIVEN: ReadonlySet<unknown> = new Set(['input', 'pinned', 'default']);

/**
 * In what two plans of the same form differ, the gravest first: main decisions, errors that came or went, key figures, what
 * the user gave, warnings, other decisions, other values by how much they have moved, and the rest. Empty when they say the
 * same; which version made them, from which folder the file was named and the last digits of a number do not count.
 */
export function comparePlans(before: PlanRecord, after: PlanRecord): Difference[] {
  const details: Difference[] = [];
  const decisions = compareFigures('decision', before.decisions, after.decisions, details);
  const values = compareFigures('value', before.values, after.values, details);
  const findings = compareFindings(before.findings, after.findings, details);
  const decided = new Set(decisions.map(({ id }) => id));
  const texts = idsOf(before.texts, after.texts).flatMap((id): Difference[] => {
    const [one, other] = [before.texts[id], after.texts[id]];
    return one === other || decided.has(id) ? [] : [{ kind: 'text', id, ...given('before', one), ...given('after', other) }];
  });
  const part = sameData(before.part, after.part) ? [] : [{ kind: 'entry', id: 'part' } as const];
  const rest = idsOf(before, after).flatMap((key): Difference[] => {
    if (NOT_COMPARED.has(key) || sameData(before[key], after[key])) return [];
    return key === 'sections' ? sectionsOf(before[key], after[key]) : [{ kind: 'entry', id: key }];
  });
  const rank = (difference: Difference): readonly number[] => rankOf(difference, before, after);
  return [...sortBy([...decisions, ...values, ...findings], rank), ...texts, ...part, ...details, ...rest];
}

/** How grave a difference is, as numbers to sort by. */
function rankOf(difference: Difference, before: PlanRecord, after: PlanRecord): readonly number[] {
  const { kind, id } = difference;
  if (kind === 'finding') return [{ error: 1, warning: 4 }[difference.severity] ?? 7, 0, 0];
  if (kind === 'decision') return [GRAVE_DECISIONS.includes(id) ? 0 : 5, GRAVE_DECISIONS.indexOf(id), 0];
  const [one, other] = [before.values[id], after.values[id]];
  const tier = GRAVE_VALUES.includes(id) ? 2 : GIVEN.has((other ?? one)?.kind) ? 3 : 6;
  return [tier, GRAVE_VALUES.indexOf(id), -shift(one, other)];
}

type Figures = Readonly<Record<string, DecisionRecord | ValueRecord>>;

function compareFigures(kind: 'decision' | 'value', before: Figures, after: Figures, details: Difference[]): Difference[] {
  return idsOf(before, after).flatMap((id): Difference[] => {
    const [one, other] = [before[id], after[id]];
    if (one !== undefined && other !== undefined && sameFigure(one, other)) {
      details.push(...detailOf(`${kind}s.${id}`, one, other));
      return [];
    }
    return [{ kind, id, ...given('title', (other ?? one)?.title), ...given('before', compared(one)), ...given('after', compared(other)) }];
  });
}

function detailOf(id: string, one: object, other: object): Difference[] {
  if (sameData(one, other)) return [];
  return [{ kind: sameData(one, other, 'at') ? 'place' : 'entry', id }];
}

/** How far a value has moved, as a share of the larger of both; a value that came or went has moved by all of it. */
function shift(before: ValueRecord | undefined, after: ValueRecord | undefined): number {
  if (before === undefined || after === undefined || before.unit !== after.unit) return 1;
  return Math.abs(before.value - after.value) / Math.max(Math.abs(before.value), Math.abs(after.value));
}

/** Findings that came and went; one that only says another figure, or stands on another line, is a detail. */
function compareFindings(before: readonly FindingRecord[], after: readonly FindingRecord[], details: Difference[]): Difference[] {
  const keyOf = ({ code, item }: FindingRecord): string => JSON.stringify([code, item]);
  const left = new Map<string, FindingRecord[]>();
  for (const finding of before) left.set(keyOf(finding), [...(left.get(keyOf(finding)) ?? []), finding]);
  const found: Difference[] = [];
  for (const finding of after) {
    const known = left.get(keyOf(finding))?.shift();
    if (known === undefined) found.push(findingOf(finding, 'new'));
    else if (known.severity !== finding.severity) found.push(findingOf(known, 'gone'), findingOf(finding, 'new'));
    else details.push(...detailOf(`findings.${finding.code}`, known, finding));
  }
  for (const gone of [...left.values()].flat()) found.push(findingOf(gone, 'gone'));
  return found;
}

function findingOf({ code, item, severity, message }: FindingRecord, change: 'new' | 'gone'): Difference {
  return { kind: 'finding', id: item === undefined ? code : `${code} of ${item}`, change, severity, message };
}

/** The sections that differ. */
function sectionsOf(before: unknown, after: unknown): Difference[] {
  const record = (data: unknown): Readonly<Record<string, unknown>> => (typeof data === 'object' && data !== null ? (data as Record<string, unknown>) : {});
  const [one, other] = [record(before), record(after)];
  return idsOf(one, other).flatMap((id): Difference[] => (sameData(one[id], other[id]) ? [] : [{ kind: 'entry', id: `sections.${id}` }]));
}

function sameFigure(one: DecisionRecord | ValueRecord, other: DecisionRecord | ValueRecord): boolean {
  if (typeof one.value === 'number' && typeof other.value === 'number') return one.unit === other.unit && sameNumber(one.value, other.value);
  return one.value === other.value;
}

function compared(record: DecisionRecord | ValueRecord | undefined): Compared | undefined {
  if (record === undefined) return undefined;
  return typeof record.value === 'number' ? { value: record.value, unit: record.unit ?? '1' } : record.value;
}

/** The keys of both, in the order of the later plan; those that only the earlier one has follow. */
function idsOf(before: object, after: object): string[] {
  return [...new Set([...Object.keys(after), ...Object.keys(before)])];
}

/** Sorted by these numbers; equals stay in their order. */
function sortBy<T>(list: readonly T[], keys: (entry: T) => readonly number[]): T[] {
  const keyed = list.map((entry) => ({ entry, by: keys(entry) }));
  keyed.sort((a, b) => a.by.reduce((order, key, i) => (order !== 0 ? order : key - (b.by[i] as number)), 0));
  return keyed.map(({ entry }) => entry);
}

function given<K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } {
  return (value === undefined ? {} : { [key]: value }) as { [P in K]?: V };
}
