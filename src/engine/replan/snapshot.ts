import type { Diagnostic, Severity } from '../../kernel/diagnostic.ts';
import type { SourceRef, Status } from '../../kernel/status.ts';
import type { Plan } from '../plan.ts';

/** A value of a plan, without its derivation. */
export interface KeptValue {
  readonly title: string;
  readonly value: number;
  readonly unit: string;
  readonly status: Status;
  readonly source: readonly SourceRef[];
}

export interface KeptDecision {
  readonly title: string;
  readonly value: string;
  readonly because: string;
  readonly kind: string;
}

export interface KeptFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly item?: string;
}

/**
 * What two plans are compared by: what a plan holds, without derivations, sections and places. A plan just made and one
 * read from its JSON both give it, so both are compared in the same way.
 */
export interface Snapshot {
  readonly part: { readonly name: string; readonly number?: string; readonly revision?: string; readonly file: string };
  readonly alloy: { readonly id: string; readonly family: string };
  readonly plant: { readonly name: string; readonly invented: boolean };
  readonly decisions: ReadonlyMap<string, KeptDecision>;
  readonly texts: ReadonlyMap<string, string>;
  readonly values: ReadonlyMap<string, KeptValue>;
  readonly findings: readonly KeptFinding[];
  readonly cautions: readonly { readonly id: string; readonly title: string }[];
  /** Ids of the values that the engineer has pinned, and of the decisions. */
  readonly pins: readonly string[];
}

/** The same of a die with several parts: what its plan holds for a shot, and the plan of each part in it, by its id. */
export interface DieSnapshot {
  readonly whole: Snapshot;
  readonly parts: ReadonlyMap<string, Snapshot>;
}

/** The plan of a die as it was just made. */
export function dieSnapshotOf(plan: Plan): DieSnapshot {
  return { whole: snapshotOf(plan), parts: new Map((plan.parts ?? []).map(({ id, plan: part }) => [id, snapshotOf(part)])) };
}

/** A plan as it was just made. */
export function snapshotOf(plan: Plan): Snapshot {
  const { name, number, revision, file } = plan.part;
  const values = new Map<string, KeptValue>();
  const pins = new Set<string>();
  for (const [id, value] of plan.values) {
    values.set(id, { title: plan.titles.get(id) ?? id, value: value.value, unit: value.unit, status: value.status, source: value.source });
    if (value.kind === 'pinned') pins.add(id);
  }
  const decisions = new Map<string, KeptDecision>();
  for (const [id, decision] of plan.decisions) {
    decisions.set(id, { title: decision.title, value: decision.value, because: decision.because, kind: decision.kind });
    if (decision.kind === 'pinned') pins.add(id);
  }
  return {
    part: { name, ...(number === undefined ? {} : { number }), ...(revision === undefined ? {} : { revision }), file },
    alloy: { id: plan.alloy.id, family: plan.alloy.family },
    plant: { name: plan.plant.name, invented: plan.plant.invented },
    decisions,
    texts: plan.texts,
    values,
    findings: plan.findings.map(keptFinding),
    cautions: plan.cautions.map(({ id, title }) => ({ id, title })),
    pins: [...pins].sort(),
  };
}

function keptFinding({ code, severity, message, item }: Diagnostic): KeptFinding {
  return { code, severity, message, ...(item === undefined ? {} : { item }) };
}
