import type { Traced } from '../kernel/traced.ts';
import { findAlloy } from '../rulebook/alloys.ts';
import type { MetalPrice } from '../spec/index.ts';
import type { Ledger } from './ledger.ts';
import { assumeUsual } from './planned.ts';

/** What the plant file says of the metal of this part: of its alloy, else of its family. */
export function metalOfPlant(ledger: Ledger): MetalPrice | undefined {
  const { prices } = ledger.plant;
  const own = prices?.alloys.find(({ id }) => {
    const search = findAlloy(ledger.rulebook, id);
    return 'found' in search && search.found.id === ledger.alloy.id;
  });
  return own ?? prices?.metal.get(ledger.alloy.family);
}

/** Metal lost at each melting, filed once: by the plant file, else a usual figure. */
export function meltLoss(ledger: Ledger): Traced<'%'> {
  const known = ledger.maybe('metal.melt-loss');
  if (known !== undefined) return known;
  const own = metalOfPlant(ledger)?.meltLoss;
  if (own !== undefined) return ledger.put(own.as('metal.melt-loss'));
  const axes = { family: ledger.alloy.family };
  ledger.look('metal/melt-loss', 'least', axes, 'metal.melt-loss-least');
  ledger.look('metal/melt-loss', 'greatest', axes, 'metal.melt-loss-greatest');
  const usual = ledger.look('metal/melt-loss', 'used', axes, 'metal.melt-loss-usual');
  return assumeUsual(ledger, 'metal.melt-loss', usual, 'the plant file gives none; the furnace and the charge decide');
}
