import type { PartChange, PartFailure } from '../../engine/replan/change.ts';
import type { SetChange } from '../../engine/replan/set.ts';

/** What was asked for, as it is told at the top of a report. */
export interface Head {
  readonly tool: { readonly name: string; readonly version: string };
  /** What every plan of this program says of itself. */
  readonly standing: string;
  /** Settings of the plan after, as they were given: `alloy=AZ91D`. */
  readonly settings: readonly string[];
  /** Whether the plans before were made of the files as they stand, or read from the plans committed beside them. */
  readonly before: 'made' | 'committed';
  /** Whether the count of cavities was held. */
  readonly sameCavities: boolean;
  /** Per cent below which a number that changes is counted and not listed. */
  readonly leastChange: number;
}

/** Everything that a report of a replanning prints; parts and failures in the order of their files. */
export interface Replanning {
  readonly head: Head;
  readonly set: SetChange;
  readonly parts: readonly PartChange[];
  readonly failures: readonly PartFailure[];
}
