import type { SourceRef, Status } from '../kernel/status.ts';
import type { Unit } from '../kernel/units.ts';
import type { Bound, Tree, Value } from './condition.ts';

/** The rulebook is plain data: what is compiled at build time is what is loaded, with no YAML in between. */
export interface Rulebook {
  readonly tables: Readonly<Record<string, Table>>;
  readonly choices: Readonly<Record<string, Choice>>;
  readonly limits: Readonly<Record<string, Limit>>;
  readonly cautions: Readonly<Record<string, Caution>>;
  readonly alloys: Readonly<Record<string, Alloy>>;
  readonly sources: Readonly<Record<string, Source>>;
  /** The built-in plants as the plant reader compiled them; opaque here. */
  readonly plants: Readonly<Record<string, unknown>>;
  /** Every expression of a rule by its text, ready to be evaluated. */
  readonly conditions: Readonly<Record<string, Condition>>;
  /** What house rules and a project file have changed, in their order; absent where nothing is changed. */
  readonly changes?: readonly Change[];
  /** Built-in limits that a project file has switched off; they are not among the limits. */
  readonly switchedOff?: Readonly<Record<string, Limit>>;
}

/** A tree, or for an expression of a house rule that goes beyond what trees are for, its evaluation by the library for CEL. */
export type Condition = Tree | ((values: Bound) => Value | undefined);

export type RuleKind = 'limit' | 'choice' | 'table' | 'caution' | 'alloy' | 'source';

/** One thing that is not as built in, and what has made it so. */
export interface Change {
  readonly what: RuleKind;
  readonly id: string;
  readonly title: string;
  readonly change: 'added' | 'replaced' | 're-graded' | 'switched off';
  /** The file that makes the change, as the rules folder is named by the user, and the line in it. */
  readonly file: string;
  readonly line: number;
  /** Why; of a limit that is added, what the limit itself says. */
  readonly reason?: string;
  /** What a limit was built in as, and what it is now. */
  readonly severity?: { readonly from: Limit['severity']; readonly to: Limit['severity'] | 'off' };
}

/** The file of the house rules that a record comes from; absent for what is built in. */
interface FromHouse {
  readonly house?: string;
}

/** Where a figure, a row or a rule comes from. */
export interface Origin {
  readonly status: Status;
  readonly source: readonly SourceRef[];
}

export interface Figure extends Origin {
  readonly value: number;
  readonly note?: string;
}

export type Axis =
  | { readonly name: string; readonly kind: 'word'; readonly values: readonly string[] }
  | {
      readonly name: string;
      readonly kind: 'number';
      readonly unit: Unit;
      readonly reading: 'up-to' | 'linear';
      readonly outside: 'refuse' | 'clamp' | 'extrapolate';
    };

export interface Column {
  readonly name: string;
  readonly unit: Unit;
  readonly meaning: string;
}

export interface TableRow {
  readonly at: Readonly<Record<string, string | number>>;
  readonly cells: Readonly<Record<string, Figure | null>>;
}

export interface Table extends FromHouse {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly axes: readonly Axis[];
  readonly gives: readonly Column[];
  readonly rows: readonly TableRow[];
  readonly notes: readonly string[];
}

/** A name in an expression, bound to a plan value in a unit, or to a text fact when `unit` is absent. */
export interface Binding {
  readonly name: string;
  readonly id: string;
  readonly unit?: Unit;
}

export interface ChoiceRow extends Origin {
  readonly when: string;
  readonly choose: string;
  readonly because: string;
}

export interface Choice extends FromHouse {
  /** `topic.name`, the id of the decision. */
  readonly id: string;
  readonly title: string;
  /** It says how figures lie; there is nothing to decide, so it cannot be pinned. */
  readonly verdict?: true;
  readonly uses: readonly Binding[];
  readonly rows: readonly ChoiceRow[];
  readonly examples: readonly { readonly given: Given; readonly chooses: string }[];
}

export type Given = Readonly<Record<string, number | string | boolean>>;

export const ITEM_KINDS = ['hole', 'wall', 'undercut', 'insert', 'rib', 'fillet', 'dimension', 'machining', 'slide', 'certificate', 'set'] as const;
export type ItemKind = (typeof ITEM_KINDS)[number];

/** How far a trial of the machine search is worked out, one stage after the other. */
export const SEARCH_STAGES = ['clamp', 'shot', 'reach', 'whole'] as const;

/** A limit that stops a candidate of the machine search: cavities, machine and plunger. */
export interface SearchStop {
  /** The stage after which all that the limit uses is known. */
  readonly after: (typeof SEARCH_STAGES)[number];
  /** Place among the limits of its stage. */
  readonly order: number;
  /** Whether only a larger machine comes nearer to it, so that larger plungers need not be tried, or a larger plunger does. */
  readonly eases?: 'machine' | 'plunger';
  /** Broken it does not stop a candidate, which then loses to any that keeps more of these limits. */
  readonly waived?: boolean;
  /** For the search alone: a plan is not judged by it. */
  readonly only?: boolean;
}

export interface Limit extends Origin, FromHouse {
  /** The path of the file below `limits/`, without extension. */
  readonly id: string;
  readonly title: string;
  readonly each?: ItemKind;
  readonly uses: readonly Binding[];
  readonly when: string;
  readonly require: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly search?: SearchStop;
  readonly message: string;
  readonly why: string;
  readonly fix: string;
  readonly at?: string;
  /** What its severity was before a project file re-graded it, and where that stands. */
  readonly regraded?: { readonly from: Limit['severity']; readonly by: string };
  readonly examples: readonly { readonly given: Given; readonly holds: boolean }[];
}

/** A hazard, the decision that triggers it, what to do, and the document to defer to. */
export interface Caution extends Origin, FromHouse {
  readonly id: string;
  readonly title: string;
  readonly uses: readonly Binding[];
  readonly when: string;
  readonly text: string;
  readonly defer: string;
  readonly examples: readonly { readonly given: Given; readonly applies: boolean }[];
}

export interface Designation {
  readonly system: string;
  readonly code: string;
  readonly near?: boolean;
  readonly status?: Status;
}

export interface AlloyProperty extends Origin, FromHouse {
  readonly unit: Unit;
  readonly value?: number;
  readonly least?: number;
  readonly greatest?: number;
  readonly note?: string;
  readonly others?: readonly {
    readonly value?: number;
    readonly least?: number;
    readonly greatest?: number;
    readonly source?: readonly SourceRef[];
    readonly note?: string;
  }[];
}

export interface Alloy extends FromHouse {
  readonly id: string;
  readonly family: string;
  readonly name: string;
  readonly designations: readonly Designation[];
  readonly chamber: Origin & { readonly allows: readonly ('hot' | 'cold')[]; readonly note?: string };
  readonly composition: Origin & {
    readonly unit: string;
    readonly balance: string;
    readonly limits: Readonly<Record<string, readonly [number | null, number | null]>>;
    readonly note?: string;
  };
  readonly properties: Readonly<Record<string, AlloyProperty>>;
  readonly ratings?: Readonly<Record<string, unknown>>;
  readonly notes: readonly string[];
}

export interface Source {
  readonly key: string;
  readonly title: string;
  readonly author?: string;
  readonly publisher?: string;
  readonly edition?: string;
  readonly year?: string;
  readonly read: string;
  readonly vendor?: boolean;
  readonly errata?: readonly string[];
}

/** What a value id of a plan is: a number in this unit, a text, or unknown. */
export type Vocabulary = (id: string) => { readonly unit: Unit } | { readonly text: true } | undefined;
