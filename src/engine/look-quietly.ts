import { Refusal } from '../kernel/apply.ts';
import type { AxisValue } from '../rulebook/lookup.ts';
import type { Ledger } from './ledger.ts';
import { fullId, type ValueId } from './vocabulary/index.ts';

/**
 * Reads a table as `Ledger.look` does; where it has no figure, or ends before the value at hand, the gap is listed
 * among what was not checked instead of being a fault of the part: nobody has published a figure to break.
 */
export function lookQuietly<K extends ValueId>(
  ledger: Ledger,
  table: string,
  column: string,
  axes: Readonly<Record<string, AxisValue>>,
  id: K,
  options: { readonly title: string; readonly item?: string | undefined },
): ReturnType<typeof ledger.look<K>> | undefined {
  try {
    return ledger.look(table, column, axes, id, options.item);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    ledger.leaveUnchecked({ id: fullId(id, options.item), title: options.title, missing: error.message });
    return undefined;
  }
}
