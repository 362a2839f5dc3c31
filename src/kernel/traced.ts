import { formatQuantity } from './format.ts';
import type { Formula, FormulaInputs } from './formula.ts';
import type { Place } from './place.ts';
import { mergeSources, type SourceRef, type Status, weakest } from './status.ts';
import { convert, type SameDimension, type Unit } from './units.ts';

export type Kind = 'input' | 'default' | 'pinned' | 'table' | 'formula' | 'choice' | 'assumption';
const NONE: readonly never[] = [];

/** Whether the figure lies inside the valid range of the formula or table that gave it. */
export type RangeVerdict = 'inside' | 'clamped' | 'extrapolated';

export interface TracedFields<U extends Unit> {
  readonly id: string;
  readonly value: number;
  readonly unit: U;
  readonly kind: Kind;
  readonly parents: readonly Traced[];
  readonly source: readonly SourceRef[];
  readonly status: Status;
  readonly range: RangeVerdict;
  readonly at?: Place | undefined;
  /** One sentence: why this value, what it assumes. */
  readonly note?: string | undefined;
  /** As the user wrote it, where the user wrote it. */
  readonly written?: string | undefined;
  readonly formula?: Formula | undefined;
  /** The numbers that the formula was worked out with, by input name, in the units it names. */
  readonly numbers?: Readonly<Record<string, number>> | undefined;
  /** Decimals to print, where the usual three significant digits would lose what the value is for. */
  readonly decimals?: number | undefined;
  /** Id of the table the figure was read from. */
  readonly table?: string | undefined;
}

/** Where a value stands that somebody wrote, and how. */
interface Written {
  readonly at?: Place | undefined;
  readonly written?: string;
  readonly source: SourceRef;
  readonly note?: string;
}

/** What a figure rests on that is neither read nor worked out. */
interface Reasoned {
  readonly note: string;
  readonly source?: readonly SourceRef[];
  readonly status: Status;
  readonly parents?: readonly Traced[];
}

/**
 * The only number that crosses a folder border above `physics`. It cannot be built from an object literal: the
 * constructors below are the only road, and each demands what makes the number checkable.
 */
export class Traced<U extends Unit = Unit> implements TracedFields<U> {
  // Plain properties, because a plan reads them by the ten thousand; `declare`, so that each is set once and not twice.
  /** Makes the type nominal: no object literal can have it. */
  declare protected readonly traced: true;
  declare readonly id: string;
  declare readonly value: number;
  declare readonly unit: U;
  declare readonly kind: Kind;
  declare readonly parents: readonly Traced[];
  declare readonly source: readonly SourceRef[];
  declare readonly status: Status;
  declare readonly range: RangeVerdict;
  declare readonly at: Place | undefined;
  declare readonly note: string | undefined;
  declare readonly written: string | undefined;
  declare readonly formula: Formula | undefined;
  declare readonly numbers: Readonly<Record<string, number>> | undefined;
  declare readonly decimals: number | undefined;
  declare readonly table: string | undefined;

  private constructor(fields: TracedFields<U>) {
    if (!Number.isFinite(fields.value)) throw new RangeError(`${fields.id} is not a finite number`);
    this.id = fields.id;
    this.value = fields.value;
    this.unit = fields.unit;
    this.kind = fields.kind;
    this.parents = fields.parents;
    this.source = fields.source;
    this.status = fields.status;
    this.range = fields.range;
    this.at = fields.at;
    this.note = fields.note;
    this.written = fields.written;
    this.formula = fields.formula;
    this.numbers = fields.numbers;
    this.decimals = fields.decimals;
    this.table = fields.table;
  }

  /** A value that the user wrote for this part or plant. */
  static input<U extends Unit>(id: string, value: number, unit: U, from: Written): Traced<U> {
    return new Traced({ id, value, unit, kind: 'input', ...written(from) });
  }

  /** What the format of the file lays down for a field that the user left out, such as a count of 1. */
  static default<U extends Unit>(id: string, value: number, unit: U, from: { note: string; source: SourceRef; at?: Place | undefined }): Traced<U> {
    return new Traced({ id, value, unit, kind: 'default', ...written(from) });
  }

  /** A decision that the engineer has taken in `pinned:`; `instead` is what the tool had worked out, if anything. */
  static pinned<U extends Unit>(id: string, value: number, unit: U, from: Omit<Written, 'note'> & { readonly instead?: Traced<U> | undefined }): Traced<U> {
    const note = from.instead === undefined ? 'pinned by the engineer' : `pinned by the engineer; worked out: ${printTraced(from.instead)}`;
    return new Traced({ id, value, unit, kind: 'pinned', ...written({ ...from, note }) });
  }

  /** A figure that fills a gap; `note` says why this one. Listed in the plan. */
  static assumption<U extends Unit>(id: string, value: number, unit: U, from: Reasoned): Traced<U> {
    return new Traced({ id, value, unit, kind: 'assumption', ...reasoned(from) });
  }

  /** A number that follows from a decision, such as the count of slides. */
  static choice<U extends Unit>(id: string, value: number, unit: U, from: Reasoned): Traced<U> {
    return new Traced({ id, value, unit, kind: 'choice', ...reasoned(from) });
  }

  /** A figure of the plant or of an alloy record, or one read from a table at the given axes. */
  static table<U extends Unit>(
    id: string,
    value: number,
    unit: U,
    from: {
      table: string;
      source: readonly SourceRef[];
      status: Status;
      parents?: readonly Traced[];
      range?: RangeVerdict;
      note?: string | undefined;
      at?: Place | undefined;
    },
  ): Traced<U> {
    const parents = from.parents ?? [];
    return new Traced({
      id,
      value,
      unit,
      kind: 'table',
      parents,
      source: from.source,
      status: weakestOf(from.status, parents),
      range: worstRange(from.range ?? 'inside', parents),
      table: from.table,
      note: from.note,
      at: from.at,
    });
  }

  /** The result of a formula; use `applyFormula` of apply.ts, which checks the inputs first. */
  static formula<U extends Unit>(
    id: string,
    value: number,
    formula: Formula<FormulaInputs, U>,
    parents: readonly Traced[],
    range: RangeVerdict,
    from: { note?: string | undefined; numbers?: Readonly<Record<string, number>> } = {},
  ): Traced<U> {
    return new Traced({
      id,
      value,
      unit: formula.unit,
      kind: 'formula',
      parents,
      source: formula.source.length < 2 ? formula.source : mergeSources(formula.source),
      status: weakestOf(formula.status, parents),
      range: worstRange(range, parents),
      formula: formula as unknown as Formula,
      numbers: from.numbers,
      note: from.note,
    });
  }

  /**
   * A number of a trial, which is only compared with other trials: what wins is worked out again with its derivation, so that
   * none of these reaches a plan.
   */
  static trial<U extends Unit>(id: string, value: number, unit: U): Traced<U> {
    return new Traced({ id, value, unit, kind: 'formula', parents: NONE, source: NONE, status: 'derived', range: 'inside' });
  }

  /** The same value under the same id in another unit of its dimension; the compiler refuses any other. */
  in<V extends SameDimension<U>>(unit: V): Traced<V> {
    if ((unit as Unit) === this.unit) return this as unknown as Traced<V>;
    return new Traced<V>({ ...this, value: convert(this.value, this.unit, unit), unit });
  }

  /** The same value, printed with that many decimals. */
  printedWith(decimals: number): Traced<U> {
    return new Traced({ ...this, decimals });
  }

  /** The same figure, with its whole derivation, filed under another id. */
  as(id: string, note?: string): Traced<U> {
    return new Traced({ ...this, id, note: note ?? this.note });
  }
}

function written({ source, at, written: text, note }: Written) {
  return { parents: NONE, source: [source], status: 'source' as const, range: 'inside' as const, at, written: text, note };
}

function reasoned({ note, status, source = [], parents = [] }: Reasoned) {
  return { parents, source, status: weakestOf(status, parents), range: 'inside' as const, note };
}

/** The least trustworthy of a figure's own status and those of what it rests on. */
function weakestOf(own: Status, parents: readonly Traced[]): Status {
  let worst = own;
  for (const parent of parents) worst = weakest(worst, parent.status);
  return worst;
}

/** The worst of a figure's own verdict and those of what it rests on. */
function worstRange(own: RangeVerdict, parents: readonly Traced[]): RangeVerdict {
  let worst = own;
  for (const { range } of parents) if (range === 'extrapolated' || worst === 'inside') worst = range;
  return worst;
}

/** Number and unit as the plan prints them: an input as the user wrote it, anything else rounded. */
export function printTraced(traced: Traced, digits?: number): string {
  return traced.written ?? formatQuantity(traced.value, traced.unit, digits ?? traced.decimals);
}
