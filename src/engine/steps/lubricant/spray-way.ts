import type { Traced } from '../../../kernel/traced.ts';
import { choose } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';

/**
 * Decides the die lubricant and files how the die is sprayed with it. Times of the cycle and the shares of the heat hang on
 * that, so whichever step comes first asks for it.
 */
export function fileSprayWay(ledger: Ledger): void {
  if (ledger.texts.has('lubricant.spray-way')) return;
  const own = ledger.plant.spray?.kind;
  ledger.setText('lubricant.plant-spray', own ?? 'not given');
  const lubricant = ledger.attempt('lubricant.kind', 'Die lubricant', () => choose(ledger, 'lubricant.kind'))?.value;
  // A lubricant without water is sprayed in minimal quantities, and one with water is not, however the plant sprays its other dies.
  const ofWater = own === 'minimal-quantity' ? 'water-based' : own;
  const way = lubricant === undefined ? own : lubricant === 'water-free' ? 'minimal-quantity' : ofWater;
  ledger.setText('lubricant.spray-way', way ?? 'not given');
  ledger.setText('lubricant.head-given', plantSpray(ledger)?.flow === undefined ? 'no' : 'yes');
}

/** What the plant says of its spray, where this die is sprayed in that way. */
export function plantSpray(ledger: Ledger): Ledger['plant']['spray'] {
  const { spray } = ledger.plant;
  return spray?.kind === ledger.texts.get('lubricant.spray-way') ? spray : undefined;
}

/** Whether minimal quantities are sprayed, which take no heat worth counting. */
export function spraysLittle(ledger: Ledger): boolean {
  return ledger.texts.get('lubricant.spray-way') === 'minimal-quantity';
}

/** The share of the heat that such a spray takes. */
export function littleHeat(ledger: Ledger): Traced<'%'> {
  const share = ledger.look('lubricant/minimal', 'heat_share', {}, 'heat.spray-minimal');
  return ledger.put(share.as('heat.share-spray', 'minimal quantities are sprayed, which take no heat worth counting'));
}
