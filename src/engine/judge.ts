import type { Diagnostic } from '../kernel/diagnostic.ts';
import { formatNumber } from '../kernel/format.ts';
import type { Place } from '../kernel/place.ts';
import { printTraced } from '../kernel/traced.ts';
import { parseTemplate } from '../rulebook/template.ts';
import type { Binding, Limit, Rulebook } from '../rulebook/types.ts';
import { type Bindings, bind } from './bind.ts';
import { evaluated } from './evaluated.ts';
import type { Ledger } from './ledger.ts';
import { placeOf } from './place-of.ts';
import type { Judged } from './plan.ts';
import { isPlantLimit } from './plant-limits.ts';
import { wordOf } from './vocabulary/index.ts';

/** The outcome of one limit for one subject. */
export type Verdict =
  | { readonly kind: 'pass' | 'not-applicable' }
  | { readonly kind: 'fail'; readonly finding: Diagnostic }
  | { readonly kind: 'open'; readonly missing: string };

/** Judges every limit of the rulebook over the ledger, per item where the rule says so, and files what comes of it. */
export function judgeAll(ledger: Ledger, isJudged: (limit: Limit) => boolean = () => true): Judged[] {
  const judged: Judged[] = [];
  const items = itemsByKind(ledger);
  for (const limit of Object.values(ledger.rulebook.limits)) {
    if (limit.search?.only === true || !isJudged(limit)) continue;
    const subjects = limit.each === undefined ? [undefined] : [...(items.get(limit.each) ?? [])];
    for (const item of subjects) {
      const verdict = judge(ledger, limit, item);
      judged.push({ id: limit.id, outcome: verdict.kind, ...(item === undefined ? {} : { item }) });
      if (verdict.kind === 'fail') ledger.findings.push(verdict.finding);
      if (verdict.kind === 'open')
        ledger.leaveUnchecked({ id: limit.id, title: limit.title, missing: item === undefined ? verdict.missing : `${item}: ${verdict.missing}` });
    }
  }
  return judged;
}

/** The items of each kind - hole, wall, slide and so on - that any value or text is filed for, in the order of filing. */
function itemsByKind(ledger: Ledger): Map<string, Set<string>> {
  const kinds = new Map<string, Set<string>>();
  for (const ids of [ledger.values.keys(), ledger.texts.keys()]) {
    for (const id of ids) {
      if (!id.endsWith(']')) continue;
      const kind = id.slice(0, id.indexOf('.'));
      let items = kinds.get(kind);
      if (items === undefined) {
        items = new Set();
        kinds.set(kind, items);
      }
      items.add(id.slice(id.indexOf('[') + 1, -1));
    }
  }
  return kinds;
}

/** What a limit found broken was judged on, or undefined when it holds, does not apply or cannot be judged. */
export function brokenBy(ledger: Ledger, limit: Limit): Bindings | undefined {
  const { rulebook } = ledger;
  const bound = bind(ledger, limit.uses);
  if (bound.missing.length > 0 || evaluated(rulebook, limit.when, bound.values) !== true) return undefined;
  return evaluated(rulebook, limit.require, bound.values) === false ? bound : undefined;
}

/** Judges one limit. A missing value leaves it open, unless the rule is about something the part simply lacks. */
export function judge(ledger: Ledger, limit: Limit, item?: string): Verdict {
  const { rulebook } = ledger;
  const bound = bind(ledger, limit.uses, item);
  const applies = evaluated(rulebook, limit.when, bound.values);
  const { missing } = bound;
  if (missing.length > 0) {
    // An optional field of an item that the drawing does not give (no draft asked, no thread) is nothing to judge, and what
    // is known may already say that the rule does not apply: then nothing is missing for it.
    const own = limit.each !== undefined && missing.some((id) => id.startsWith(`${limit.each}.`));
    return own || applies === false ? { kind: 'not-applicable' } : { kind: 'open', missing: `needs ${missing.join(', ')}` };
  }
  if (applies === false) return { kind: 'not-applicable' };
  const holds = applies === undefined ? undefined : evaluated(rulebook, limit.require, bound.values);
  if (holds === undefined) return { kind: 'open', missing: 'the condition could not be evaluated' };
  if (holds === true) return { kind: 'pass' };
  const at = placePointedAt(ledger, limit, item) ?? firstPlace(bound, limit.uses) ?? ledger.part.at;
  return {
    kind: 'fail',
    finding: {
      code: limit.id,
      severity: limit.severity,
      message: item === undefined ? fill(rulebook, limit.message, bound) : `${item}: ${fill(rulebook, limit.message, bound)}`,
      at,
      notes: [limit.why],
      fix: fill(rulebook, limit.fix, bound),
      values: bound.numbers.map((value) => value.id),
      on: limit.uses.flatMap(({ name }) => (isNamed(limit.require, name) ? (bound.number(name)?.id ?? []) : [])),
      ...(item === undefined ? {} : { item }),
      ...ruleOf(limit),
    },
  };
}

/** What to say of the origin of a rule that is not as built in. */
function ruleOf({ id, house, regraded, severity }: Limit): { readonly rule?: string } {
  if (house !== undefined && isPlantLimit(id)) return { rule: `limit of the plant: ${house}` };
  if (house !== undefined) return { rule: `house rules: ${house}` };
  return regraded === undefined ? {} : { rule: `re-graded from ${regraded.from} to ${severity} by ${regraded.by}` };
}

/** Whether a condition names a value. */
function isNamed(condition: string, name: string): boolean {
  return new RegExp(`(?<![\\w"])${name}(?![\\w"])`).test(condition);
}

/** The place of the value that the rule points at, which need not be one that it judges by. */
function placePointedAt(ledger: Ledger, { at }: Limit, item: string | undefined): Place | undefined {
  if (at === undefined) return undefined;
  const id = item !== undefined && (ledger.values.has(`${at}[${item}]`) || ledger.texts.has(`${at}[${item}]`)) ? `${at}[${item}]` : at;
  const value = ledger.values.get(id);
  return value === undefined ? ledger.textPlaces.get(id) : placeOf(value);
}

function firstPlace(bound: Bindings, uses: readonly Binding[]): Place | undefined {
  for (const { name } of uses) {
    const place = bound.place(name);
    if (place !== undefined) return place;
  }
  return undefined;
}

/** The decimals that the vocabulary has for a value; a trial does not carry them. */
function decimalsOf(id: string): number | undefined {
  const word = wordOf(id);
  return word === undefined || 'text' in word ? undefined : word.decimals;
}

/** Puts values and computed numbers into a message. */
export function fill(rulebook: Rulebook, template: string, bound: Bindings): string {
  return parseTemplate(template)
    .map((part) => {
      if (part.kind === 'text') return part.text;
      if (part.kind === 'number') return formatNumber(Number(evaluated(rulebook, part.expression, bound.values)), part.digits);
      const number = bound.number(part.name);
      return number === undefined ? (bound.text(part.name) ?? '') : printTraced(number, number.decimals ?? decimalsOf(number.id));
    })
    .join('');
}
