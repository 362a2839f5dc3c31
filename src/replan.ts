import { otherMass } from './engine/other-mass.ts';
import type { PartChange, PartFailure } from './engine/replan/change.ts';
import type { CompareOptions } from './engine/replan/compare.ts';
import { comparePlans } from './engine/replan/part.ts';
import { type Snapshot, snapshotOf } from './engine/replan/snapshot.ts';
import { STANDING } from './engine/standing.ts';
import { type Plan, type Planned, planPart, type Rulebook } from './index.ts';
import type { Diagnostic } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import type { Head } from './report/replan/head.ts';
import { readPlanJson } from './report/replan/read-plan.ts';
import { setFields } from './spec/set-field.ts';

export type { PartChange, PartFailure } from './engine/replan/change.ts';
export { inOrder, type SetChange, summarise } from './engine/replan/set.ts';
export { partCsv } from './report/replan/csv.ts';
export type { Replanning } from './report/replan/head.ts';
export { replanJson } from './report/replan/json.ts';
export { replanMarkdown } from './report/replan/markdown.ts';

/** The head of a report: what was asked for, and what every plan of this program says of itself. */
export function headOf({ version, ...asked }: Omit<Head, 'tool' | 'standing'> & { readonly version: string }): Head {
  return { tool: { name: 'diewright', version }, standing: STANDING.status, ...asked };
}

/** What is wrong with settings whatever part they are for. */
export function settingFaults(settings: readonly string[]): readonly Diagnostic[] {
  return setFields({ name: '', text: '' }, settings).diagnostics;
}

/** What a plan is made with, besides the part: its plant, the built-in one when absent, and the rules. */
export interface PlanSide {
  readonly plant?: SourceText;
  readonly rulebook: Rulebook;
}

export interface ReplanRequest {
  readonly part: SourceText;
  readonly before: PlanSide & {
    /** The text of a plan that was written earlier as JSON, to take the place of a plan of the part as it stands. */
    readonly committed?: SourceText;
  };
  readonly after: PlanSide & {
    /** Fields of the part description to set, as `path=value`; an alloy is one of them. */
    readonly set: readonly string[];
    /** Pins the count of cavities of the plan before. */
    readonly sameCavities?: boolean;
  };
  readonly compare: CompareOptions;
  readonly version: string;
}

export interface Replanned {
  /** Absent when there is no plan before or after; then `failure` says why in a line, and `diagnostics` in full. */
  readonly change?: PartChange;
  readonly failure?: PartFailure;
  readonly diagnostics: readonly Diagnostic[];
  /** The part description with the fields set, and its plan. */
  readonly after?: { readonly source: SourceText; readonly plan: Plan };
}

/** Plans a part as it stands and as it would be, and holds the two plans against each other. Never throws for what a user can write. */
export function replanPart(request: ReplanRequest): Replanned {
  const { part, after, compare, version } = request;
  const old = planBefore(request);
  if ('diagnostics' in old) return failed(part.name, old.diagnostics);
  const { snapshot } = old;
  const cavities = snapshot.values.get('machine.cavities')?.value;
  const set = [...after.set, ...(after.sameCavities === true && cavities !== undefined ? [`pinned.machine.cavities=${cavities}`] : [])];
  const edited = setFields(part, set);
  if (edited.diagnostics.length > 0) return failed(part.name, edited.diagnostics);
  const make = (source: SourceText): Planned => planPart({ part: source, ...sideOf(after), version });
  let { source } = edited;
  let planned = make(source);
  const remarks: string[] = [];
  const mass = planned.plan === undefined ? undefined : otherMass(snapshot, planned.plan, after.set);
  if (mass !== undefined) {
    source = setFields(source, [`geometry.mass=${mass.text}`]).source;
    planned = make(source);
    remarks.push(mass.remark);
  }
  const { plan, given } = planned;
  if (plan === undefined || given === undefined) return failed(part.name, planned.diagnostics);
  const change = comparePlans(snapshot, snapshotOf(plan), given, compare, remarks);
  return { change, diagnostics: [], after: { source, plan } };
}

function planBefore({ part, before, version }: ReplanRequest): { readonly snapshot: Snapshot } | { readonly diagnostics: readonly Diagnostic[] } {
  if (before.committed !== undefined) {
    const read = readPlanJson(before.committed);
    return 'fault' in read ? { diagnostics: [read.fault] } : { snapshot: read.snapshot };
  }
  const { plan, diagnostics } = planPart({ part, ...sideOf(before), version });
  return plan === undefined ? { diagnostics } : { snapshot: snapshotOf(plan) };
}

export function sideOf({ plant, rulebook }: PlanSide): PlanSide {
  return { rulebook, ...(plant === undefined ? {} : { plant }) };
}

/** What is said where there is nothing to compare: the first fault in a line, and all of them. */
export function failed(file: string, diagnostics: readonly Diagnostic[]): { readonly failure: PartFailure; readonly diagnostics: readonly Diagnostic[] } {
  const first = diagnostics.find(({ severity }) => severity === 'error') ?? (diagnostics[0] as Diagnostic);
  return { failure: { file, message: first.message, code: first.code }, diagnostics };
}
