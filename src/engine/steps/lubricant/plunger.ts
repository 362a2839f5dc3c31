import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';

/** What is published of plunger lubricants; an amount per shot is not among it. */
export function plunger(ledger: Ledger): void {
  const { value } = choose(ledger, 'lubricant.plunger');
  if (value === 'oil') {
    ledger.look('lubricant/other', 'oil_least', {}, 'lubricant.oil-least');
    ledger.look('lubricant/other', 'oil_greatest', {}, 'lubricant.oil-greatest');
  } else if (value === 'wax beads') {
    ledger.look('lubricant/other', 'bead_size', {}, 'lubricant.bead-size');
    ledger.look('lubricant/other', 'bead_melting', {}, 'lubricant.bead-melting');
  }
}
