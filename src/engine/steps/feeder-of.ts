import type { Ledger } from '../ledger.ts';

/** What the metal comes through at the parting plane, for sentences: a hot chamber has a sprue, a cold one a biscuit. */
export function feederOf(ledger: Ledger): 'sprue' | 'biscuit' {
  return ledger.texts.get('machine.chamber') === 'hot' ? 'sprue' : 'biscuit';
}
