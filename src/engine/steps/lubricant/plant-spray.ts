import type { Traced } from '../../../kernel/traced.ts';
import type { Ledger } from '../../ledger.ts';

/** How the plant sprays its dies, for the decisions and rules that hang on it. */
export function fileSprayWay(ledger: Ledger): void {
  const { spray } = ledger.plant;
  ledger.setText('lubricant.plant-spray', spray?.kind ?? 'not given');
  ledger.setText('lubricant.head-given', spray?.flow === undefined ? 'no' : 'yes');
}

/** Whether the plant sprays minimal quantities, which take no heat worth counting. */
export function spraysLittle(ledger: Ledger): boolean {
  return ledger.plant.spray?.kind === 'minimal-quantity';
}

/** The share of the heat that such a spray takes. */
export function littleHeat(ledger: Ledger): Traced<'%'> {
  const share = ledger.look('lubricant/minimal', 'heat_share', {}, 'heat.spray-minimal');
  return ledger.put(share.as('heat.share-spray', 'the plant sprays minimal quantities, which take no heat worth counting'));
}
