import { checkNumbers, type FormulaArguments, Refusal } from '../kernel/apply.ts';
import { type Formula, type FormulaInputs, fillIn } from '../kernel/formula.ts';
import type { Place } from '../kernel/place.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import { type AxisValue, readNumber } from '../rulebook/lookup.ts';
import { Ledger } from './ledger.ts';
import type { Decision } from './plan.ts';
import { fullId, type TextId, type UnitOf, type ValueId, wordOf } from './vocabulary/index.ts';

interface Filed {
  readonly values: Traced[];
  readonly texts: [TextId, string, { item?: string; at?: Place | undefined }][];
  readonly decisions: Decision[];
}

/**
 * A ledger for trying candidates: the steps run on it as on any other and come to the same numbers, but no derivation is
 * recorded and nothing is reported, which takes a third of the time. What a search chooses is worked out again on a real ledger.
 */
export class Trial extends Ledger {
  /** What tables that are asked for words alone have given or refused so far, for all forks of a trial. */
  readonly #read: Map<string, number | Refusal>;
  override readonly explains = false;
  /** What work of a key has filed, for all forks of a trial. */
  readonly #filed: Map<string, Filed>;
  /** Where filing is noted down while such work is done for the first time. */
  #noting: Filed | undefined;

  constructor(from: Ledger, given = from.given) {
    super(given, from);
    this.#read = from instanceof Trial ? from.#read : new Map();
    this.#filed = from instanceof Trial ? from.#filed : new Map();
  }

  override fork(): Trial {
    return new Trial(this);
  }

  /** That nothing is filed twice is seen to by the ledger of the plan. */
  override put<U extends Unit>(traced: Traced<U>): Traced<U> {
    const { part, settled } = this.given;
    const pinned = part.pinned.size > 0 && part.pinned.has(traced.id) ? this.pinnedValue(traced.id, traced.unit, traced) : undefined;
    const kept = pinned ?? (settled?.get(traced.id) as unknown as Traced<U> | undefined) ?? traced;
    this.values.set(kept.id, kept);
    this.filedItems.note(kept.id);
    this.#noting?.values.push(kept);
    return kept;
  }

  override setText(id: TextId, value: string, options: { item?: string; at?: Place | undefined } = {}): void {
    super.setText(id, value, options);
    this.#noting?.texts.push([id, value, options]);
  }

  override record(decision: Decision): void {
    super.record(decision);
    this.#noting?.decisions.push(decision);
  }

  /** Done once for all forks; the others are given what it came to. Such work may file, and nothing else. */
  override once(key: string, work: () => void): void {
    const known = this.#filed.get(key);
    if (known === undefined) {
      this.#noting = { values: [], texts: [], decisions: [] };
      this.#filed.set(key, this.#noting);
      work();
      this.#noting = undefined;
      return;
    }
    for (const value of known.values) {
      this.values.set(value.id, value);
      this.filedItems.note(value.id);
    }
    for (const [id, value, options] of known.texts) super.setText(id, value, options);
    for (const decision of known.decisions) super.record(decision);
  }

  override apply<I extends FormulaInputs, O extends Unit>(
    formula: Formula<I, O>,
    args: FormulaArguments<I>,
    options: { id?: ValueId; item?: string; note?: string; aside?: boolean } = {},
  ): Traced<O> {
    const given = args as Readonly<Record<string, Traced | undefined>>;
    const numbers: Record<string, number> = {};
    for (const name in formula.inputs) {
      const traced = given[name];
      if (traced !== undefined) numbers[name] = traced.value;
    }
    fillIn(formula, numbers);
    const value = formula.compute(checkNumbers(formula as unknown as Formula, numbers).numbers as never);
    if (!Number.isFinite(value)) throw new Refusal(`range/${formula.id}`, `${formula.title} has no finite result for these inputs`, 'check the inputs');
    return this.put(Traced.trial(fullId(options.id ?? formula.id, options.item), value, formula.unit));
  }

  override look<K extends ValueId>(tableId: string, column: string, axes: Readonly<Record<string, AxisValue>>, id: K, item?: string): Traced<UnitOf<K>> {
    const word = wordOf(id);
    if (word === undefined || 'text' in word) throw new TypeError(`${id} is not in the vocabulary`);
    const unit = word.unit as UnitOf<K>;
    return this.put(Traced.trial(fullId(id, item), this.#number(tableId, column, axes, unit), unit));
  }

  #number(tableId: string, column: string, axes: Readonly<Record<string, AxisValue>>, unit: Unit): number {
    const read = (): number => {
      const table = this.rulebook.tables[tableId];
      if (table === undefined) throw new TypeError(`no table ${tableId}`);
      return readNumber(table, column, axes, unit);
    };
    let key = `${tableId} ${column} ${unit}`;
    for (const name in axes) {
      const at = axes[name];
      // A number seldom comes twice.
      if (typeof at !== 'string') return read();
      key += ` ${at}`;
    }
    let known = this.#read.get(key);
    if (known === undefined) {
      known = numberOrRefusal(read);
      this.#read.set(key, known);
    }
    if (typeof known !== 'number') throw known;
    return known;
  }

  override leaveUnchecked(): void {
    // A trial reports nothing.
  }
}

function numberOrRefusal(read: () => number): number | Refusal {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) return error;
    throw error;
  }
}
