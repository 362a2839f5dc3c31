import type { Ledger } from '../../ledger.ts';
import { VERTICAL } from '../squeeze.ts';

/** At the velocity of squeeze casting the gates ask for next to no pressure, and the two lines say nothing. */
export function isSqueezeFill(ledger: Ledger): boolean {
  const velocity = ledger.maybe('gate.velocity');
  const squeeze = ledger.maybe('squeeze.gate-velocity-greatest');
  return ledger.texts.get('machine.kind') === VERTICAL && velocity !== undefined && squeeze !== undefined && velocity.value <= squeeze.value;
}
