import type { Traced } from '../kernel/traced.ts';
import type { Alloy, Rulebook } from '../rulebook/types.ts';
import type { DieSpec, PartSpec, PlantSpec } from '../spec/index.ts';
import type { SetLayout } from './die-set/set.ts';
import type { Recorded } from './recorded.ts';

export interface Case {
  readonly part: PartSpec;
  readonly plant: PlantSpec;
  readonly alloy: Alloy;
  readonly rulebook: Rulebook;
  /** Whether the wave in the sleeve is to be computed; it takes longer than the rest of the plan. */
  readonly wave?: boolean;
  readonly first?: FirstPlan;
  /** Values that are settled outside this ledger, by id: they take the place of what a step works out; a pin stands over them. */
  readonly settled?: ReadonlyMap<string, Traced>;
  /** The castings of several parts, planned together as one; then the part is what they come to together. */
  readonly set?: CastingSet;
}

/** What a first plan has shown, for the steps that come too early to know it. */
export interface FirstPlan {
  /** Gate velocity in m/s that the best machine drives at the planned flow, when that is less than the wall asks for. */
  readonly velocity?: { readonly value: number; readonly machine: string; readonly plunger: number };
}

/** A part of the die, worked out as far as it stands alone: parting, design, fill window, overflows. */
export interface Member {
  readonly id: string;
  readonly count: Traced<'1'>;
  readonly given: Case;
  readonly recorded: Recorded;
}

/** Castings of several parts that one shot fills; planned together as if they were one. */
export interface CastingSet {
  readonly die: DieSpec;
  readonly members: readonly Member[];
  readonly layout: SetLayout;
  /** The kind of machine that each part alone would go to, by its id. */
  readonly kinds: ReadonlyMap<string, string>;
  /** Values of the parts and of the layout that the plan of the die rests on. */
  readonly filed: readonly Traced[];
  /** What each part has come to with its gates, by its id; the step of the gates fills it. */
  readonly gated: Map<string, Recorded>;
}
