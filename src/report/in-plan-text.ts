import type { Decision, Judged, Plan } from '../engine/plan.ts';
import type { Limit } from '../engine/rule-data.ts';
import { printTraced } from '../kernel/traced.ts';
import { derivationText } from './derivation.ts';
import { type Field, fieldsText } from './fields.ts';
import { hereText } from './here-text.ts';
import { originText, placeText } from './words.ts';

const OUTCOMES: Readonly<Record<Judged['outcome'], string>> = {
  pass: 'holds',
  fail: 'broken',
  open: 'could not be judged',
  'not-applicable': 'does not apply',
};

/** How a limit came out in a plan, for the part or for each of its items, with the values that it was held against. */
export function limitInPlan(plan: Plan, limit: Limit): string {
  const judged = plan.judged.filter((entry) => entry.id === limit.id);
  const fields = judged.flatMap((entry): Field[] => {
    const finding = plan.findings.find((candidate) => candidate.code === limit.id && candidate.item === entry.item);
    const missing = plan.unchecked.filter(
      (candidate) => candidate.id === limit.id && (entry.item === undefined || candidate.missing.startsWith(`${entry.item}:`)),
    );
    return [
      [entry.item ?? 'verdict', OUTCOMES[entry.outcome]],
      ['', usedValues(plan, limit, entry.item)],
      ['', finding?.message],
      ['', finding?.fix === undefined ? undefined : `do: ${finding.fix}`],
      ['', entry.outcome === 'open' ? missing.map((candidate) => candidate.missing) : undefined],
    ];
  });
  const off = plan.changes?.some(({ id, change }) => id === limit.id && change === 'switched off') === true;
  const none: Field = ['verdict', off ? 'not judged' : `the part has no ${limit.each ?? 'such item'}`];
  return fieldsText(`${limit.id} in ${plan.part.file}`, [...(fields.length === 0 ? [none] : fields), ['here', hereText(plan.changes, 'limit', limit.id)]]);
}

function usedValues(plan: Plan, limit: Limit, item: string | undefined): string[] {
  return limit.uses.map((use) => {
    const ids = item === undefined ? [use.id] : [`${use.id}[${item}]`, use.id];
    const id = ids.find((candidate) => plan.values.has(candidate) || plan.texts.has(candidate)) ?? use.id;
    return `${use.name} = ${shownValue(plan, id)}`;
  });
}

/** A decision of a plan: what was taken, why, on what, and what else was possible. */
function decisionInPlan(plan: Plan, decision: Decision): string {
  return fieldsText(`${decision.id}: ${decision.title}`, [
    ['taken', decision.value],
    ['because', decision.because],
    ['decided on', decision.parents.map((id) => shownValue(plan, id))],
    ['also possible', decision.alternatives.map((other) => `${other.value}: ${other.because}`).join('\n')],
    ['at', decision.at === undefined ? undefined : placeText(decision.at)],
    ['source', originText(decision.source, decision.status)],
  ]);
}

function shownValue(plan: Plan, id: string): string {
  const value = plan.values.get(id);
  return `${id} = ${value === undefined ? (plan.texts.get(id) ?? 'not known') : printTraced(value)}`;
}

/**
 * What `explain` prints of an id that a plan holds: the decision, the word, and the derivation of the value or of each
 * item's value; undefined when the plan holds nothing of that id.
 */
export function explainInPlan(plan: Plan, id: string): string | undefined {
  const parts: string[] = [];
  const decision = plan.decisions.get(id);
  if (decision !== undefined) parts.push(decisionInPlan(plan, decision));
  const ids = [...plan.values.keys()].filter((candidate) => candidate === id || candidate.startsWith(`${id}[`));
  for (const found of ids) {
    const value = plan.values.get(found);
    if (value !== undefined) parts.push(derivationText(value, plan.titles));
  }
  for (const [name, text] of plan.texts) {
    if (decision === undefined && (name === id || name.startsWith(`${id}[`))) parts.push(fieldsText(`${name} = ${text}`, [['what', plan.titles.get(name)]]));
  }
  return parts.length === 0 ? undefined : parts.join('\n');
}

/** What an id comes to in a plan, of a die in the plans of its parts too; undefined when it holds nothing of it. */
export function inPlanText(plan: Plan, limits: Readonly<Record<string, Limit>>, id: string): string | undefined {
  const limit = Object.hasOwn(limits, id) ? limits[id] : undefined;
  const { parts } = plan;
  if (parts === undefined || plan.judged.some((entry) => entry.id === id)) return limit === undefined ? explainInPlan(plan, id) : limitInPlan(plan, limit);
  const own = limit === undefined ? explainInPlan(plan, id) : undefined;
  if (own !== undefined) return own;
  // What holds for one casting stands in the plans of the parts.
  const texts = parts.flatMap(({ id: name, plan: part }) => {
    const text = limit !== undefined && !part.judged.some((entry) => entry.id === id) ? undefined : inPlanText(part, limits, id);
    return text === undefined ? [] : [limit === undefined ? `In ${name}:\n${text}` : text];
  });
  return texts.length === 0 ? undefined : texts.join('\n');
}
