import { wordOf } from '../vocabulary/index.ts';
import type { Change, ChangeGroup, FindingChange, Shown } from './change.ts';
import { CONSEQUENCES, consequenceOf } from './consequence.ts';
import type { KeptFinding, KeptValue, Snapshot } from './snapshot.ts';

export interface CompareOptions {
  /** Numbers that change by less than this share, in per cent of the larger one, are counted and not listed. */
  readonly leastChange: number;
  /** Also list the values and words that no group of consequences names. */
  readonly everyValue: boolean;
}

/** Decisions, words and values that differ, group by group in order of consequence, and how many are left out. */
export function changesOf(
  before: Snapshot,
  after: Snapshot,
  options: CompareOptions,
): { readonly groups: readonly ChangeGroup[]; readonly small: number; readonly further: number } {
  const grouped: { readonly change: Change; readonly place: number }[][] = CONSEQUENCES.map(() => []);
  const rest: Change[] = [];
  let small = 0;
  let further = 0;
  for (const change of differences(before, after)) {
    if (isSmall(change, options.leastChange)) {
      small += 1;
      continue;
    }
    const at = consequenceOf(change.id);
    if (at !== undefined) grouped[at.group]?.push({ change, place: at.place });
    else if (change.because !== undefined || options.everyValue) rest.push(change);
    else further += 1;
  }
  const groups = CONSEQUENCES.map(({ id, title }, i) => ({
    id,
    title,
    changes: (grouped[i] ?? []).sort((a, b) => a.place - b.place).map(({ change }) => change),
  }));
  return {
    groups: [...groups, { id: 'other', title: 'Other decisions and values', changes: rest }].filter(({ changes }) => changes.length > 0),
    small,
    further,
  };
}

/** Everything that differs: decisions, then words that are no decision, then numbers; each in the order of the plan after. */
function differences(before: Snapshot, after: Snapshot): Change[] {
  const changes: Change[] = [];
  const add = (id: string, title: string, was: Shown | undefined, is: Shown | undefined, because?: string): void => {
    changes.push({
      id,
      title,
      ...(was === undefined ? {} : { before: was }),
      ...(is === undefined ? {} : { after: is }),
      ...(because === undefined ? {} : { because }),
    });
  };
  for (const id of idsOf(after.decisions, before.decisions)) {
    const [was, is] = [decided(id, before), decided(id, after)];
    if (sameShown(was, is)) continue;
    const decision = after.decisions.get(id) ?? before.decisions.get(id);
    add(id, decision?.title ?? id, was, is, after.decisions.get(id)?.because ?? 'the plan after does not decide it');
  }
  for (const id of idsOf(after.texts, before.texts)) {
    if (before.decisions.has(id) || after.decisions.has(id)) continue;
    const [was, is] = [before.texts.get(id), after.texts.get(id)];
    if (was !== is) add(id, titleOf(id), was === undefined ? undefined : { word: was }, is === undefined ? undefined : { word: is });
  }
  for (const id of idsOf(after.values, before.values)) {
    if (before.decisions.has(id) || after.decisions.has(id)) continue;
    const [was, is] = [before.values.get(id), after.values.get(id)];
    if (was?.value !== is?.value) add(id, is?.title ?? was?.title ?? id, shownOf(id, was), shownOf(id, is));
  }
  return changes;
}

/** What was decided: the number with its unit where a value has the same id, such as a plunger's diameter; the word otherwise. */
function decided(id: string, plan: Snapshot): Shown | undefined {
  const decision = plan.decisions.get(id);
  return decision === undefined ? undefined : (shownOf(id, plan.values.get(id)) ?? { word: decision.value });
}

function sameShown(a: Shown | undefined, b: Shown | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  if ('word' in a || 'word' in b) return 'word' in a && 'word' in b && a.word === b.word;
  return a.value === b.value && a.unit === b.unit;
}

function idsOf(first: ReadonlyMap<string, unknown>, then: ReadonlyMap<string, unknown>): Iterable<string> {
  return new Set([...first.keys(), ...then.keys()]);
}

export function shownOf(id: string, value: KeptValue | undefined): Shown | undefined {
  if (value === undefined) return undefined;
  const word = wordOf(id);
  const decimals = word === undefined || 'text' in word ? undefined : word.decimals;
  return { value: value.value, unit: value.unit, ...(decimals === undefined ? {} : { decimals }) };
}

function titleOf(id: string): string {
  const word = wordOf(id);
  if (word === undefined) return id;
  return id.endsWith(']') ? `${word.title}, ${id.slice(id.indexOf('[') + 1, -1)}` : word.title;
}

function isSmall({ before, after }: Change, leastChange: number): boolean {
  if (before === undefined || after === undefined || 'word' in before || 'word' in after || before.unit !== after.unit) return false;
  const larger = Math.max(Math.abs(before.value), Math.abs(after.value));
  return Math.abs(after.value - before.value) < (leastChange / 100) * larger;
}

/** Findings of `list` that `other` has not: the same code for the same item is the same finding, whatever its figures. Errors first. */
export function findingsOnlyIn(list: readonly KeptFinding[], other: readonly KeptFinding[], titles: (code: string) => string | undefined): FindingChange[] {
  const key = ({ code, item }: KeptFinding): string => JSON.stringify([code, item]);
  const known = new Set(other.map(key));
  const found = list.filter((finding) => !known.has(key(finding)));
  const order = ['error', 'warning', 'note'];
  return found
    .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
    .map(({ code, severity, message, item }) => ({
      code,
      title: titles(code) ?? message,
      severity,
      message,
      ...(item === undefined ? {} : { item }),
    }));
}
