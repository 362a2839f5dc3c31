import { biscuitLeft, biscuitWhenFull, feedVolume, followTravel } from '../../physics/intensification.ts';
import { siliconShrinkage } from '../../physics/porosity-estimate.ts';
import type { Ledger } from '../ledger.ts';
import { sumOf } from '../sum.ts';

/** Metal that castings and overflows take after the fill to make up for the shrinkage of freezing. */
export function workFeeding(ledger: Ledger): void {
  ledger.attempt('porosity.shrinkage', 'Solidification shrinkage', () => shrinkage(ledger));
  ledger.attempt('intensification.feed-volume', 'Metal to feed', () => {
    const metal = [ledger.value('part.volume'), ledger.value('overflow.volume')];
    const volume = ledger.put(sumOf('intensification.metal', 'Casting with its overflows', 'cm3', metal));
    ledger.apply(feedVolume, { volume, shrinkage: ledger.value('porosity.shrinkage'), cavities: ledger.value('machine.cavities') });
  });
}

/** Aluminium alloys by their silicon; the other families have one figure each. */
function shrinkage(ledger: Ledger): void {
  const family = ledger.alloy.family;
  const silicon = family === 'aluminium' ? ledger.maybe('fill.silicon') : undefined;
  if (silicon === undefined) {
    ledger.look('porosity/shrinkage', 'used', { family }, 'porosity.shrinkage');
    return;
  }
  const pure = ledger.look('porosity/shrinkage', 'greatest', { family }, 'porosity.shrinkage-pure');
  const measured = ledger.look('porosity/shrinkage', 'least', { family }, 'porosity.shrinkage-eutectic');
  ledger.apply(siliconShrinkage, { silicon, pure, measured }, { id: 'porosity.shrinkage' });
}

/** The metal in front of the plunger from full cavities to the end: by what was poured, first all liquid, then all solid. */
export function workBiscuitLeft(ledger: Ledger): void {
  const shared = {
    runner_volume: ledger.value('runner.total-volume'),
    cavities: ledger.value('machine.cavities'),
    volume: ledger.value('intensification.metal'),
    diameter: ledger.value('machine.plunger'),
  };
  const poured = ledger.value('shot.liquid-volume');
  const full = ledger.apply(biscuitWhenFull, { ...shared, poured, shrink: ledger.maybe('alloy.shrink-allowance') });
  ledger.look('sleeve/biscuit', 'least', {}, 'intensification.biscuit-least');
  const solid = ledger.apply(biscuitLeft, { ...shared, mass: ledger.value('shot.mass'), density: ledger.value('alloy.density') });
  ledger.apply(followTravel, { full, left: solid });
}
