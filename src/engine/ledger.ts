import { applyFormula, type FormulaArguments, Refusal } from '../kernel/apply.ts';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import type { Formula, FormulaInputs } from '../kernel/formula.ts';
import type { Place } from '../kernel/place.ts';
import { inUnit, readQuantity } from '../kernel/quantity.ts';
import type { SourceRef, Status } from '../kernel/status.ts';
import { Traced } from '../kernel/traced.ts';
import { dimensionOf, type Unit } from '../kernel/units.ts';
import { type AxisValue, readTable } from '../rulebook/lookup.ts';
import type { Alloy, Rulebook } from '../rulebook/types.ts';
import type { PartSpec, PlantSpec } from '../spec/index.ts';
import type { Case } from './case.ts';
import { Items } from './items.ts';
import { Missing } from './missing.ts';
import { Overlay } from './overlay.ts';
import { pinFault } from './pin-fault.ts';
import type { Decision, Unchecked } from './plan.ts';
import type { Recorded } from './recorded.ts';
import { addRangeFinding, refusalFinding } from './refusal-finding.ts';
import { fullId, type TextId, type UnitOf, type ValueId, wordOf } from './vocabulary/index.ts';

export type { Case, FirstPlan } from './case.ts';
export { Missing } from './missing.ts';

/**
 * The record of one plan in the making. Every number that a step uses or makes goes through it: formulas applied,
 * tables read, assumptions made, decisions taken. What the engineer has pinned replaces what was worked out, here and
 * nowhere else.
 */
export class Ledger implements Recorded {
  readonly values: Map<string, Traced>;
  readonly texts: Map<string, string>;
  readonly textPlaces: Map<string, Place>;
  readonly decisions: Map<string, Decision>;
  readonly findings: Diagnostic[] = [];
  readonly unchecked: Unchecked[] = [];
  readonly usedPins = new Set<string>();
  readonly filedItems: Items;
  /** Whether alternatives, reasons and what only stands beside a figure are wanted, besides what the plan comes to. */
  readonly explains: boolean = true;

  /** Empty, or with what another one has recorded: over its record, or with a copy of it. */
  constructor(
    readonly given: Case,
    from?: Recorded,
    begin: <V>(record: Map<string, V>) => Map<string, V> = (record) => new Overlay(record),
  ) {
    this.values = from === undefined ? new Map() : begin(from.values);
    this.texts = from === undefined ? new Map() : begin(from.texts);
    this.textPlaces = from === undefined ? new Map() : begin(from.textPlaces);
    this.decisions = from === undefined ? new Map() : begin(from.decisions);
    this.filedItems = new Items(from?.filedItems);
  }

  /** A ledger over this one to try something on: what is filed there does not touch this one. This one rests meanwhile. */
  fork(): Ledger {
    return new Ledger(this.given, this);
  }

  /** Work that comes to the same whenever the key is the same; here it is done. */
  once(_key: string, work: () => void): void {
    work();
  }

  /** A copy with all that has been recorded so far, to go on from there in a case that knows more. */
  continuedWith(given: Case): Ledger {
    const copy = new Ledger(given, this, (record) => new Map(record));
    copy.findings.push(...this.findings);
    copy.unchecked.push(...this.unchecked);
    for (const id of this.usedPins) copy.usedPins.add(id);
    return copy;
  }

  get part(): PartSpec {
    return this.given.part;
  }
  get plant(): PlantSpec {
    return this.given.plant;
  }
  get alloy(): Alloy {
    return this.given.alloy;
  }
  get rulebook(): Rulebook {
    return this.given.rulebook;
  }

  /** Files a value under its own id (with the item, if it belongs to one); a pin of that id takes its place. */
  put<U extends Unit>(traced: Traced<U>): Traced<U> {
    const word = wordOf(traced.id);
    if (word === undefined || 'text' in word) throw new TypeError(`${traced.id} is not in the vocabulary`);
    if (word.unit !== traced.unit) throw new TypeError(`${traced.id} is filed in ${traced.unit}, the vocabulary says ${word.unit}`);
    if (this.values.has(traced.id)) throw new TypeError(`${traced.id} is filed twice`);
    const shown = word.decimals === undefined ? traced : traced.printedWith(word.decimals);
    const kept =
      traced.kind === 'pinned'
        ? traced
        : (this.pinnedValue(traced.id, traced.unit, shown) ?? (this.given.settled?.get(traced.id) as unknown as Traced<U> | undefined) ?? shown);
    this.values.set(kept.id, kept);
    this.filedItems.note(kept.id);
    return kept;
  }

  /** The items filed under a word, in the order of filing. */
  items(id: ValueId | TextId): readonly string[] {
    return this.filedItems.of(id);
  }

  /** The pinned value of an id, read in the dimension of its unit; `instead` is what the tool had worked out. */
  protected pinnedValue<U extends Unit>(id: string, unit: U, instead?: Traced<U>): Traced<U> | undefined {
    const pin = this.part.pinned.get(id);
    if (pin === undefined) return undefined;
    this.usedPins.add(id);
    const parsed = readQuantity(pin.text, dimensionOf(unit), dimensionOf(unit) === 'number' ? unit : undefined);
    if (!parsed.ok) {
      this.findings.push(pinFault(id, pin.at, parsed.fault));
      return undefined;
    }
    const value = inUnit(parsed.quantity, unit);
    return Traced.pinned(id, value, unit, { at: pin.at, written: pin.text, source: 'PART', instead });
  }

  /** A pinned word, such as a machine's id; undefined when that id is not pinned. */
  pinnedWord(id: string): { readonly text: string; readonly at: Place } | undefined {
    const pin = this.part.pinned.get(id);
    if (pin !== undefined) this.usedPins.add(id);
    return pin;
  }

  /** The number of a pinned value in the unit of the vocabulary, for steps that must know it before they file it. */
  pinnedNumber(id: ValueId): number | undefined {
    const pin = this.part.pinned.get(id);
    const word = wordOf(id);
    if (pin === undefined || word === undefined || 'text' in word) return undefined;
    const dimension = dimensionOf(word.unit);
    const parsed = readQuantity(pin.text, dimension, dimension === 'number' ? word.unit : undefined);
    return parsed.ok ? inUnit(parsed.quantity, word.unit) : undefined;
  }

  /** The value filed under an id. @throws Missing when an earlier step could not give it. */
  value<K extends ValueId>(id: K, item?: string): Traced<UnitOf<K>> {
    const found = this.values.get(fullId(id, item));
    if (found === undefined) throw new Missing(fullId(id, item));
    return found as unknown as Traced<UnitOf<K>>;
  }

  maybe<K extends ValueId>(id: K, item?: string): Traced<UnitOf<K>> | undefined {
    return this.values.get(fullId(id, item)) as unknown as Traced<UnitOf<K>> | undefined;
  }

  /**
   * Applies a formula, files the result under the formula's id (or `id`) and reports inputs outside its range, unless it is a figure
   * `aside`: one for comparison that is not planned, whose table says it.
   */
  apply<I extends FormulaInputs, O extends Unit>(
    formula: Formula<I, O>,
    args: FormulaArguments<I>,
    options: { id?: ValueId; item?: string; note?: string; aside?: boolean } = {},
  ): Traced<O> {
    const id = fullId(options.id ?? formula.id, options.item);
    const { result, warnings, outside } = applyFormula(formula, args, { id, ...(options.note === undefined ? {} : { note: options.note }) });
    if (options.aside !== true) for (const message of warnings) addRangeFinding(this.findings, `range/${formula.id}`, message, result, outside);
    return this.put(result);
  }

  /** Reads a table, files the figure under `id` and reports an axis value outside the table. */
  look<K extends ValueId>(tableId: string, column: string, axes: Readonly<Record<string, AxisValue>>, id: K, item?: string): Traced<UnitOf<K>> {
    const table = this.rulebook.tables[tableId];
    if (table === undefined) throw new TypeError(`no table ${tableId}`);
    const word = wordOf(id);
    if (word === undefined || 'text' in word) throw new TypeError(`${id} is not in the vocabulary`);
    const { result, warnings } = readTable(table, column, axes, fullId(id, item), word.unit as UnitOf<K>);
    for (const message of warnings) addRangeFinding(this.findings, `range/${tableId}`, message, result);
    return this.put(result);
  }

  /** As `look`, but undefined where the table has no figure: for figures that are published for some families only. */
  lookIfAny<K extends ValueId>(
    tableId: string,
    column: string,
    axes: Readonly<Record<string, AxisValue>>,
    id: K,
    item?: string,
  ): Traced<UnitOf<K>> | undefined {
    try {
      return this.look(tableId, column, axes, id, item);
    } catch (error) {
      if (error instanceof Refusal && error.code === 'table/no-figure') return undefined;
      throw error;
    }
  }

  /** Fills a gap with a stated figure; it appears in the plan's list of assumptions. */
  assume<K extends ValueId>(
    id: K,
    value: number,
    unit: UnitOf<K>,
    from: { note: string; status: Status; source?: readonly SourceRef[]; parents?: readonly Traced[] },
    item?: string,
  ): Traced<UnitOf<K>> {
    return this.put(Traced.assumption(fullId(id, item), value, unit as Unit, from)) as unknown as Traced<UnitOf<K>>;
  }

  setText(id: TextId, value: string, options: { item?: string; at?: Place | undefined } = {}): void {
    this.texts.set(fullId(id, options.item), value);
    if (options.item !== undefined) this.filedItems.note(fullId(id, options.item));
    if (options.at !== undefined) this.textPlaces.set(fullId(id, options.item), options.at);
  }

  /** The text fact or decision filed under an id. @throws Missing when there is none. */
  text(id: TextId, item?: string): string {
    const found = this.texts.get(fullId(id, item));
    if (found === undefined) throw new Missing(fullId(id, item));
    return found;
  }

  /** Records a decision; its word becomes a text fact for the rules, if the vocabulary knows it as one. */
  record(decision: Decision): void {
    this.decisions.set(decision.id, decision);
    this.filedItems.note(decision.id);
    const word = wordOf(decision.id);
    if (word !== undefined && 'text' in word) this.texts.set(decision.id, decision.value);
  }

  /** Notes that something could not be judged, once. */
  leaveUnchecked(entry: Unchecked): void {
    if (!this.unchecked.some((known) => known.id === entry.id && known.missing === entry.missing)) this.unchecked.push(entry);
  }

  /** Runs a part of a step; a refusal becomes a finding, a missing value an entry among what was not checked. */
  attempt<T>(id: string, title: string, work: () => T): T | undefined {
    try {
      return work();
    } catch (error) {
      if (error instanceof Refusal) {
        this.findings.push(refusalFinding(error));
        this.leaveUnchecked({ id, title, missing: error.message });
        return undefined;
      }
      if (error instanceof Missing) {
        this.leaveUnchecked({ id, title, missing: `needs ${error.id}` });
        return undefined;
      }
      throw error;
    }
  }
}
