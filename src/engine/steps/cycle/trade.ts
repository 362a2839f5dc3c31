import type { Ledger } from '../../ledger.ts';
import { sumOf } from '../../sum.ts';

/** How fast machines of a kind work: the word that the tables by size of machine have for it. */
export function paceOf(ledger: Ledger): string {
  if (ledger.text('machine.chamber') === 'cold') return 'cold-chamber';
  return ledger.alloy.family === 'magnesium' ? 'magnesium-hot-chamber' : 'hot-chamber';
}

/** The range of each element in the trade, by kind and size of machine. */
export function tradeRanges(ledger: Ledger): void {
  const at = { pace: paceOf(ledger), locking_force: ledger.value('machine.locking-force') };
  const cold = at.pace === 'cold-chamber';
  for (const end of ['least', 'greatest'] as const) {
    if (cold) ledger.look('cycle/elements', `ladle_${end}`, at, `cycle.ladle-${end}`);
    for (const name of ['inject', 'dwell', 'open', 'eject', 'extract', 'spray', 'blow', 'close'] as const)
      ledger.look('cycle/elements', `${name}_${end}`, at, `cycle.${name}-${end}`);
  }
  ledger.put(sumOf('cycle.shut', 'Closing and locking', 's', [ledger.value('cycle.close'), ledger.value('cycle.lock')]));
}

/** Shares and cycles that were published, to hold the plan against; most of them are those of aluminium in cold chambers. */
export function published(ledger: Ledger): void {
  ledger.look('cycle/trade', 'typical_least', {}, 'cycle.typical-least');
  ledger.look('cycle/trade', 'typical_greatest', {}, 'cycle.typical-greatest');
  ledger.look('cycle/trade', 'structural_least', {}, 'cycle.structural-least');
  ledger.look('cycle/trade', 'structural_greatest', {}, 'cycle.structural-greatest');
  ledger.look('cycle/trade', 'dwell_greatest', {}, 'cycle.trade-dwell-greatest');
  if (ledger.alloy.family !== 'aluminium' || ledger.text('machine.chamber') !== 'cold') return;
  ledger.look('cycle/trade', 'dwell_least', {}, 'cycle.trade-dwell-least');
  ledger.look('cycle/trade', 'spray_least', {}, 'cycle.trade-spray-least');
  ledger.look('cycle/trade', 'spray_greatest', {}, 'cycle.trade-spray-greatest');
  ledger.look('cycle/trade', 'measured', {}, 'cycle.measured');
}
