import type { Block, Decision, Plan } from '../engine/plan.ts';
import type { Change } from '../engine/rule-data.ts';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { fingerprint } from '../kernel/diagnostic.ts';
import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import { jsonText } from './json-text.ts';

const PLAN_FORMAT = 'plan/1';
const PLANS_FORMAT = 'plans/1';
const DIE_PLAN_FORMAT = 'die-plan/1';

/** One plan as JSON. Numbers stand in values (and in lines and columns) only; everything else refers to them by id. */
export function planJson(plan: Plan): string {
  return jsonText(planRecord(plan));
}

/** Several plans as one JSON document, in the order given. */
export function plansJson(plans: readonly Plan[]): string {
  return jsonText({ format: PLANS_FORMAT, plans: plans.map(planRecord) });
}

/** The plan of a part; or that of a die, with the plans of its parts in it. */
function planRecord(plan: Plan): object {
  const { parts } = plan;
  const head = { tool: { name: plan.tool.name, version: plan.tool.version }, standing: plan.standing };
  if (parts === undefined) {
    const inDie = plan.inDie === undefined ? {} : { inDie: plan.inDie };
    return { format: PLAN_FORMAT, ...head, part: plan.part, ...inDie, ...contents(plan) };
  }
  const members = parts.map(({ id, plan: part }) => ({ id, plan: planRecord(part) }));
  return { format: DIE_PLAN_FORMAT, ...head, die: plan.part, ...contents(plan), parts: members };
}

function contents(plan: Plan) {
  const values = allValues(plan);
  return {
    alloy: plan.alloy,
    plant: plan.plant,
    decisions: record(plan.decisions, (decision) => decisionRecord(decision, plan.values.get(decision.id))),
    texts: record(plan.texts, (text) => text),
    values: record(values, (value) => valueRecord(value, plan.titles.get(value.id))),
    sections: Object.fromEntries(plan.sections.map(({ id, title, blocks }) => [id, { title, blocks: blocks.map(blockRecord) }])),
    findings: plan.findings.map(findingRecord),
    cautions: plan.cautions,
    unchecked: plan.unchecked,
    judged: plan.judged,
    unverified: [...values.values()].filter((value) => value.status === 'memory').map((value) => value.id),
    checkFirst: plan.weak.map(({ figure }) => ({ id: figure.id, status: figure.status })),
    sources: record(plan.sources, (text) => text),
    ...(plan.changes === undefined ? {} : { houseRules: plan.changes.map(changeRecord) }),
  };
}

/** A figure is named only: its samples are for the eye, and what they show stands in values. */
function blockRecord(block: Block) {
  return block.kind === 'figure' ? { kind: block.kind, id: block.id, title: block.title } : block;
}

/** The plan's values in its order, then those that they rest on and that no section files, so that every parent is there. */
function allValues(plan: Plan): Map<string, Traced> {
  const all = new Map(plan.values);
  const add = (value: Traced): void => {
    for (const parent of value.parents) {
      if (all.has(parent.id)) continue;
      all.set(parent.id, parent);
      add(parent);
    }
  };
  for (const value of plan.values.values()) add(value);
  return all;
}

function valueRecord(value: Traced, title: string | undefined) {
  const item = /\[(.*)\]$/s.exec(value.id)?.[1];
  return {
    title: title ?? value.id,
    value: value.value,
    unit: value.unit,
    kind: value.kind,
    ...(value.formula === undefined ? {} : { formula: value.formula.id }),
    ...(value.table === undefined ? {} : { table: value.table }),
    parents: [...new Set(value.parents.map((parent) => parent.id))],
    source: value.source,
    status: value.status,
    range: value.range,
    ...(value.note === undefined ? {} : { note: value.note }),
    ...(value.written === undefined ? {} : { written: value.written }),
    ...(item === undefined ? {} : { item }),
    ...(value.at === undefined ? {} : { at: placeRecord(value.at) }),
  };
}

/** A decision with a value of the same id, such as the count of cavities, gives number and unit; any other gives its word. */
function decisionRecord(decision: Decision, value: Traced | undefined) {
  return {
    title: decision.title,
    ...(value === undefined ? { value: decision.value } : { value: value.value, unit: value.unit }),
    because: decision.because,
    kind: decision.kind,
    source: decision.source,
    status: decision.status,
    parents: decision.parents,
    alternatives: decision.alternatives,
    ...(decision.at === undefined ? {} : { at: placeRecord(decision.at) }),
  };
}

function findingRecord(finding: Diagnostic) {
  return {
    code: finding.code,
    severity: finding.severity,
    message: finding.message,
    ...(finding.item === undefined ? {} : { item: finding.item }),
    ...(finding.at === undefined ? {} : { at: placeRecord(finding.at) }),
    ...(finding.notes === undefined ? {} : { notes: finding.notes }),
    ...(finding.fix === undefined ? {} : { fix: finding.fix }),
    ...(finding.accepted === undefined ? {} : { accepted: finding.accepted }),
    ...(finding.rule === undefined ? {} : { rule: finding.rule }),
    values: finding.values ?? [],
    fingerprint: fingerprint(finding),
  };
}

function changeRecord({ file, line, ...change }: Change) {
  return { ...change, at: { file, line } };
}

function placeRecord(place: Place) {
  const { line, column } = place.position();
  return { file: place.source.name, line, column };
}

function record<T, R>(map: ReadonlyMap<string, T>, of: (entry: T) => R): Record<string, R> {
  return Object.fromEntries([...map].map(([key, entry]) => [key, of(entry)]));
}
