import type { Diagnostic } from '../kernel/diagnostic.ts';
import { formatNumber } from '../kernel/format.ts';
import { printTraced } from '../kernel/traced.ts';
import { type Bound, parseExpression } from '../rulebook/expression.ts';
import { parseTemplate } from '../rulebook/template.ts';
import type { Binding, Limit } from '../rulebook/types.ts';
import { type Bindings, bind } from './bind.ts';
import type { Ledger } from './ledger.ts';
import type { Judged } from './plan.ts';

/** The outcome of one limit for one subject. */
export type Verdict =
  | { readonly kind: 'pass' | 'not-applicable' }
  | { readonly kind: 'fail'; readonly finding: Diagnostic }
  | { readonly kind: 'open'; readonly missing: string };

/** Judges every limit of the rulebook over the ledger, per item where the rule says so, and files what comes of it. */
export function judgeAll(ledger: Ledger): Judged[] {
  const judged: Judged[] = [];
  const items = itemsByKind(ledger);
  for (const limit of Object.values(ledger.rulebook.limits)) {
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

/** Judges one limit. A missing value leaves it open, unless the rule is about something the part simply lacks. */
export function judge(ledger: Ledger, limit: Limit, item?: string): Verdict {
  const bound = bind(ledger, limit.uses, item);
  if ('missing' in bound) {
    // An optional field of an item that the drawing does not give (no draft asked, no thread) is nothing to judge.
    const own = limit.each !== undefined && bound.missing.some((id) => id.startsWith(`${limit.each}.`));
    return own || isRuledOut(limit, bound.values) ? { kind: 'not-applicable' } : { kind: 'open', missing: `needs ${bound.missing.join(', ')}` };
  }
  try {
    if (parseExpression(limit.when, limit.uses)(bound.values) !== true) return { kind: 'not-applicable' };
    if (parseExpression(limit.require, limit.uses)(bound.values) === true) return { kind: 'pass' };
  } catch (error) {
    return { kind: 'open', missing: `the condition could not be evaluated: ${(error as Error).message.split('\n')[0]}` };
  }
  const pointed = limit.uses.find((use) => use.id === limit.at)?.name;
  const names = [...(pointed === undefined ? [] : [pointed]), ...limit.uses.map((use) => use.name)];
  const at = names.map(bound.place).find((place) => place !== undefined) ?? ledger.part.at;
  return {
    kind: 'fail',
    finding: {
      code: limit.id,
      severity: limit.severity,
      message: item === undefined ? fill(limit.message, limit.uses, bound) : `${item}: ${fill(limit.message, limit.uses, bound)}`,
      at,
      notes: [limit.why],
      fix: fill(limit.fix, limit.uses, bound),
      values: [...bound.traced.values()].map((value) => value.id),
      ...(item === undefined ? {} : { item }),
    },
  };
}

/** Whether the values that are known already say that the rule does not apply: then nothing is missing for it. */
function isRuledOut(limit: Limit, values: Bound): boolean {
  try {
    return parseExpression(limit.when, limit.uses)(values) === false;
  } catch {
    return false;
  }
}

/** Puts values and computed numbers into a message. */
export function fill(template: string, uses: readonly Binding[], bound: Bindings): string {
  return parseTemplate(template)
    .map((part) => {
      if (part.kind === 'text') return part.text;
      if (part.kind === 'number') return formatNumber(Number(parseExpression(part.expression, uses)(bound.values)), part.digits);
      const traced = bound.traced.get(part.name);
      return traced === undefined ? (bound.texts.get(part.name) ?? '') : printTraced(traced);
    })
    .join('');
}
