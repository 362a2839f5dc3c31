import { Refusal } from '../kernel/apply.ts';
import { formatNumber, formatQuantity } from '../kernel/format.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import { type Ledger, Missing } from './ledger.ts';
import { type UnitOf, type ValueId, wordOf } from './vocabulary/index.ts';

/** Plans with the middle of a published range and says so; the ends stay beside it as what it rests on. */
export function assumeMiddle<K extends ValueId>(
  ledger: Ledger,
  id: K,
  least: Traced<UnitOf<K>>,
  greatest: Traced<UnitOf<K>>,
  remark?: string,
): Traced<UnitOf<K>> {
  const middle = `middle of ${formatNumber(least.value)} to ${formatQuantity(greatest.value, greatest.unit)}`;
  const note = remark === undefined ? middle : `${middle}; ${remark}`;
  return ledger.put(
    Traced.assumption<Unit>(id, (least.value + greatest.value) / 2, least.unit, { note, status: 'practice', parents: [least, greatest] }),
  ) as unknown as Traced<UnitOf<K>>;
}

/** Plans with a tabled figure, listed among the assumptions because the next plant may well differ. */
export function assumeUsual<K extends ValueId>(ledger: Ledger, id: K, usual: Traced<UnitOf<K>>, note: string): Traced<UnitOf<K>> {
  return ledger.put(
    Traced.assumption<Unit>(id, usual.value, usual.unit, { note, status: usual.status, source: usual.source, parents: [usual] }),
  ) as unknown as Traced<UnitOf<K>>;
}

/**
 * Works a value out, or takes the engineer's pin where no figure is published to work it out from, so that a plan can go
 * on for families that the tables leave out.
 * @throws Missing or Refusal as `work` does, when the value is not pinned.
 */
export function orPinned<K extends ValueId>(ledger: Ledger, id: K, work: () => Traced<UnitOf<K>>): Traced<UnitOf<K>> {
  try {
    return work();
  } catch (error) {
    const unpublished = error instanceof Missing || error instanceof Refusal;
    const number = unpublished ? ledger.pinnedNumber(id) : undefined;
    const word = wordOf(id);
    if (number === undefined || word === undefined || 'text' in word) throw error;
    const pin = ledger.pinnedWord(id);
    return ledger.put(Traced.pinned<Unit>(id, number, word.unit, { at: pin?.at, written: pin?.text ?? '', source: 'PART' })) as unknown as Traced<UnitOf<K>>;
  }
}
