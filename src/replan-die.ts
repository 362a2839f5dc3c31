import { type DieEntry, planDie } from './die.ts';
import { planEditedDie } from './edited-die.ts';
import type { PartChange, PartFailure } from './engine/replan/change.ts';
import { compareDies, type MemberAfter } from './engine/replan/several.ts';
import { type DieSnapshot, dieSnapshotOf } from './engine/replan/snapshot.ts';
import type { Plan } from './index.ts';
import type { Diagnostic } from './kernel/diagnostic.ts';
import type { SourceText } from './kernel/place.ts';
import { failed, type PlanSide, type ReplanRequest, sideOf } from './replan.ts';
import { readDiePlanJson } from './report/replan/read-plan.ts';

export interface ReplanDieRequest extends Omit<ReplanRequest, 'part'> {
  readonly die: SourceText;
  /** The text of a part file that the die names, or why it cannot be read. */
  readonly partText: (entry: DieEntry) => SourceText | readonly Diagnostic[];
}

export interface ReplannedDie {
  /** Absent when there is no plan before or after; then `failure` says why in a line, and `diagnostics` in full. */
  readonly change?: PartChange;
  readonly failure?: PartFailure;
  readonly diagnostics: readonly Diagnostic[];
  /** The part descriptions with the fields set, by the file as the die names it, and the plan of the die. */
  readonly after?: { readonly parts: ReadonlyMap<string, SourceText>; readonly plan: Plan };
}

/**
 * Plans a die with several parts as it stands and as it would be with fields of its parts set, and holds the two plans against
 * each other. The count of its castings stays: the die file gives it. Never throws for what a user can write.
 */
export function replanDie(request: ReplanDieRequest): ReplannedDie {
  const { die, after, compare } = request;
  const old = planBefore(request);
  if ('diagnostics' in old) return failed(die.name, old.diagnostics);
  const { snapshot } = old;
  const { partText, version } = request;
  const { plan, members, entries, parts, masses, diagnostics } = planEditedDie({ die, partText, ...sideOf(after), set: after.set, version }, snapshot);
  if (plan === undefined || members === undefined) return failed(die.name, diagnostics);
  const given = members.map((member, i): [string, MemberAfter] => {
    const { id, file } = entries[i] as DieEntry;
    return [id, { given: member, remarks: masses.flatMap((mass) => (mass.file === file.value ? [mass.remark] : [])) }];
  });
  return { change: compareDies(snapshot, dieSnapshotOf(plan), new Map(given), compare), diagnostics: [], after: { parts, plan } };
}

function planBefore({
  die,
  partText,
  before,
  version,
}: ReplanDieRequest): { readonly snapshot: DieSnapshot } | { readonly diagnostics: readonly Diagnostic[] } {
  if (before.committed !== undefined) {
    const read = readDiePlanJson(before.committed);
    return 'fault' in read ? { diagnostics: [read.fault] } : { snapshot: read.snapshot };
  }
  const side: PlanSide = sideOf(before);
  const { plan, diagnostics } = planDie({ die, partText, ...side, version });
  return plan === undefined ? { diagnostics } : { snapshot: dieSnapshotOf(plan) };
}
