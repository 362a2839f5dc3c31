import { cavityDimension, shrinkAdded, shrinkFromContraction } from '../../../physics/shrink.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

/** Shrink allowance of the alloy, the cavity size of each dimension, and contraction by physics as a cross-check. */
export function reviewShrink(ledger: Ledger): void {
  const { family } = ledger.alloy;
  const own = ledger.maybe('alloy.shrink-allowance');
  const allowance =
    own === undefined
      ? lookQuietly(ledger, 'shrink/allowance', 'used', { family }, 'shrink.allowance', { title: 'Shrink allowance' })
      : ledger.put(own.as('shrink.allowance'));
  ledger.attempt('shrink.from-contraction', 'Shrink by contraction', () => {
    const eject = ledger.lookIfAny('fill/recommended', 'ejection', { family }, 'shrink.eject-temperature');
    const die = ledger.lookIfAny('fill/recommended', 'die', { family }, 'shrink.die-temperature');
    if (eject === undefined || die === undefined) return;
    ledger.apply(shrinkFromContraction, {
      alloy_expansion: ledger.value('alloy.expansion'),
      steel_expansion: ledger.look('shrink/steel', 'expansion', {}, 'shrink.steel-expansion'),
      eject_temperature: eject,
      die_temperature: die,
    });
  });
  if (allowance === undefined) return;
  for (const dimension of ledger.part.dimensions) {
    ledger.attempt(`shrink.cavity-dimension[${dimension.id}]`, `Cavity size of ${dimension.id}`, () => {
      const nominal = ledger.value('dimension.nominal', dimension.id);
      ledger.apply(shrinkAdded, { dimension: nominal, allowance }, { item: dimension.id });
      ledger.apply(cavityDimension, { dimension: nominal, allowance }, { item: dimension.id });
    });
  }
}
