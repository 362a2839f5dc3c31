import type { Ledger } from './ledger.ts';
import { copyOwn } from './overlay.ts';

/** Takes over what was tried on a fork, as if it had been worked out on the ledger itself. */
export function adopt(ledger: Ledger, fork: Ledger): void {
  copyOwn(fork.values, ledger.values);
  copyOwn(fork.texts, ledger.texts);
  copyOwn(fork.textPlaces, ledger.textPlaces);
  copyOwn(fork.decisions, ledger.decisions);
  ledger.filedItems.adopt(fork.filedItems);
  ledger.findings.push(...fork.findings);
  for (const entry of fork.unchecked) ledger.leaveUnchecked(entry);
  for (const id of fork.usedPins) ledger.usedPins.add(id);
}
