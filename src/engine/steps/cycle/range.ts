import type { Traced } from '../../../kernel/traced.ts';
import type { Ledger } from '../../ledger.ts';
import { assumeMiddle } from '../../planned.ts';
import type { ValueId } from '../../vocabulary/index.ts';

/** Elements that are planned with the middle of a usual range: their value, and the columns of the handling table. */
const RANGES = {
  delay: 'cycle.delay',
  approach: 'cycle.slow-shot',
  fall: 'cycle.extract',
  signals: 'cycle.signals',
  recovery: 'cycle.recovery',
  switching: 'cycle.switching',
  reach: 'cycle.insert-reach',
  insert: 'cycle.insert-each',
} as const satisfies Readonly<Record<string, ValueId>>;

/** Plans an element with the middle of its usual range for the chamber; the ends are filed beside it. */
export function assumeTime(ledger: Ledger, name: keyof typeof RANGES, remark: string): Traced<'s'> {
  const axes = { chamber: ledger.text('machine.chamber') };
  const least = ledger.look('cycle/handling', `${name}_least`, axes, 'cycle.usual-least', name);
  const greatest = ledger.look('cycle/handling', `${name}_greatest`, axes, 'cycle.usual-greatest', name);
  return assumeMiddle(ledger, RANGES[name], least, greatest, remark);
}
