import type { Alloy, Rulebook } from '../rulebook/types.ts';
import type { PartSpec, PlantSpec } from '../spec/index.ts';

export interface Case {
  readonly part: PartSpec;
  readonly plant: PlantSpec;
  readonly alloy: Alloy;
  readonly rulebook: Rulebook;
  /** Whether the wave in the sleeve is to be computed; it takes longer than the rest of the plan. */
  readonly wave?: boolean;
  readonly first?: FirstPlan;
}

/** What a first plan has shown, for the steps that come too early to know it. */
export interface FirstPlan {
  /** Gate velocity in m/s that the best machine drives at the planned flow, when that is less than the wall asks for. */
  readonly velocity?: { readonly value: number; readonly machine: string; readonly plunger: number };
}
