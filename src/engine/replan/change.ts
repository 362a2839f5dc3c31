import type { Severity } from '../../kernel/diagnostic.ts';

/** What a plan says of one thing: a number with its unit, or a word. Plain data, so that it may cross to another thread. */
export type Shown = { readonly value: number; readonly unit: string; readonly decimals?: number } | { readonly word: string };

/** Something that two plans say differently; absent where one of them does not say it. */
export interface Change {
  readonly id: string;
  readonly title: string;
  readonly before?: Shown;
  readonly after?: Shown;
  /** Of a decision: why the plan after has decided so. */
  readonly because?: string;
}

export interface ChangeGroup {
  readonly id: string;
  readonly title: string;
  readonly changes: readonly Change[];
}

/** A finding that one plan has and the other has not. */
export interface FindingChange {
  readonly code: string;
  readonly title: string;
  readonly severity: Severity;
  readonly message: string;
  readonly item?: string;
}

/** What one plan comes to, for tables and totals. */
export interface Side {
  readonly alloy: string;
  readonly family: string;
  readonly plant: string;
  /** The plan breaks no rule whose breach is an error. */
  readonly castable: boolean;
  /** Such breaches. */
  readonly errors: number;
  readonly kind?: string;
  readonly machine?: string;
  readonly steel?: string;
  readonly currency?: string;
  /** Figures that the tables show and the totals add up, by value id; those that the plan has. */
  readonly figures: Readonly<Record<string, number>>;
}

export interface DieElement {
  readonly id: string;
  readonly title: string;
  readonly verdict: string;
  /** Nothing is to be done to it. */
  readonly stays: boolean;
  readonly because: string;
  /** The figures that it was decided on. */
  readonly values: readonly { readonly id: string; readonly title: string; readonly shown: Shown }[];
}

/** What becomes of the existing die. */
export interface DieChange {
  readonly verdict: string;
  readonly because: string;
  readonly elements: readonly DieElement[];
  /** What could not be judged, and what is missing for it. */
  readonly unchecked: readonly { readonly title: string; readonly missing: string }[];
}

/** How the part stands: castable means that the plan breaks no rule whose breach is an error. */
export type Standing = 'stays castable' | 'no longer castable' | 'becomes castable' | 'not castable before or after';

/** Two plans held against each other: of one part, or of a die with several parts, whose figures are then those of a shot's set of castings. */
export interface PartChange {
  readonly file: string;
  readonly part: { readonly name: string; readonly number?: string; readonly revision?: string };
  /** Castings a year that the part description asks for; of a die the sets of castings. */
  readonly perYear?: number;
  /** Castings of a set; of a die with several parts only. */
  readonly castings?: number;
  /** Of a die, what changes in each of its parts besides what changes for the whole die. */
  readonly parts?: readonly PartChange[];
  readonly before: Side;
  readonly after: Side;
  readonly standing: Standing;
  /** What the comparison had to do or to leave out, one sentence each. */
  readonly remarks: readonly string[];
  readonly appeared: readonly FindingChange[];
  readonly vanished: readonly FindingChange[];
  /** Decisions and values that changed, in order of consequence. */
  readonly groups: readonly ChangeGroup[];
  /** Changes that are left out of the groups. */
  readonly leftOut: {
    /** Numbers that changed by less than the threshold. */
    readonly small: number;
    /** Values and words that no group names, unless all were asked for. */
    readonly further: number;
  };
  readonly cautions: { readonly appeared: readonly string[]; readonly vanished: readonly string[] };
  /** Absent where the plan after does not hold, or nothing of it can be judged; `dieMissing` says why. */
  readonly die?: DieChange;
  readonly dieMissing?: string;
}

/** A part that could not be planned, before or after. */
export interface PartFailure {
  readonly file: string;
  /** The first fault. */
  readonly message: string;
  readonly code: string;
}
