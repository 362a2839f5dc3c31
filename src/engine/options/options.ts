import type { Stop } from '../steps/machine/stops.ts';

/** One candidate of the machine search as a reader compares it. Numbers are those of a trial, with the gates of the plan; pin the three to see its own. */
export interface Candidate {
  readonly cavities: number;
  readonly machine: string;
  /** mm */
  readonly plunger: number;
  /** Money of the plant for a good part; absent without prices. */
  readonly cost?: number;
  /** What it costs more than the plan, as a share; below 0 what it costs less. */
  readonly dearer?: number;
  /** s, shots an hour, % of the rated locking force, % of sleeve fill, and the least reserve in %. */
  readonly cycle?: number;
  readonly goodParts?: number;
  readonly clampUse?: number;
  readonly sleeveFill?: number;
  readonly margin?: number;
  readonly planned: boolean;
  /** Limits that it breaks and that are waived, in words. */
  readonly warnings: readonly Reason[];
}

/** A limit, or why something could not be worked out, with the numbers of the candidate. */
export interface Reason {
  readonly id: string;
  readonly title: string;
  readonly message: string;
  readonly fix: string;
}

export const reasonOf = ({ id, title, message, fix }: Stop): Reason => ({ id, title, message, fix });

/** The best of a count of cavities or of a machine, or what stopped it. */
export interface Best {
  readonly name: string;
  readonly best?: Candidate;
  /** Why it was not taken; empty for what is planned. */
  readonly lost: string;
}

/** How often a limit stopped a candidate, and the words of the one that it asked least of. */
export interface Stopped {
  readonly reason: Reason;
  readonly count: number;
  readonly example: Pick<Candidate, 'cavities' | 'machine' | 'plunger'>;
}

/** A candidate that nothing fits: what stands in its way, and what would let it fit. */
export interface NearMiss {
  readonly candidate: Pick<Candidate, 'cavities' | 'machine' | 'plunger'>;
  /** By how much its limits are missed, added up, as a share. */
  readonly distance?: number;
  readonly broken: readonly Reason[];
}

/** The ranked alternatives behind the choice of cavities, machine and plunger. */
export interface Options {
  readonly fits: boolean;
  /** What ranked: the cost of a good part, or without prices the size of the machine. */
  readonly byCost: boolean;
  readonly currency?: string;
  readonly pricesOf?: string;
  /** How many were tried, and how many of them pass every limit of an error. */
  readonly tried: number;
  readonly passing: number;
  /** Weights of the ranking in %: costs alike within, what a warning adds at least, and of what it is missed by. */
  readonly weights: { readonly alike: number; readonly warning: number; readonly miss: number };
  /** m/s at the gates, where the plan has larger gates than usual because its machine drives no more. */
  readonly loweredVelocity?: number;
  /** Those that pass, the best first. */
  readonly candidates: readonly Candidate[];
  readonly counts: readonly Best[];
  readonly machines: readonly Best[];
  readonly stopped: readonly Stopped[];
  readonly misses: readonly NearMiss[];
}

/** The plan of the part in one alloy on one plant, beside others. */
export interface Variant {
  readonly alloy: string;
  readonly plant: string;
  /** Absent when there is no plan; then `lost` says why. */
  readonly kind?: string;
  readonly machine?: string;
  readonly cavities?: number;
  readonly plunger?: number;
  readonly mass?: number;
  readonly cycle?: number;
  readonly goodParts?: number;
  readonly lockingForce?: number;
  readonly cost?: number;
  readonly currency?: string;
  readonly errors: readonly string[];
  readonly warnings: number;
  readonly lost: string;
}
