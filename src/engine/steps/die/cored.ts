import type { Ledger } from '../../ledger.ts';
import { type Feature, featuresOf } from '../parting/directions.ts';

/** Holes whose core stands in the die or on a slide; one that the design review has drilled falls away. */
export function coredHoles(ledger: Ledger): string[] {
  return ledger.part.holes.map((hole) => hole.id).filter((id) => isPlanned(ledger, id));
}

/** What a slide forms, and whether any of it is left when drilled holes fall away. */
export function featuresOn(ledger: Ledger, item: string): { readonly features: readonly Feature[]; readonly needed: boolean } {
  const features = featuresOf(ledger.part).filter((feature) => ledger.texts.get(`parting.${feature.kind}-core[${feature.id}]`) === `slide ${item}`);
  return { features, needed: features.some((feature) => feature.kind === 'undercut' || isPlanned(ledger, feature.id)) };
}

function isPlanned(ledger: Ledger, hole: string): boolean {
  const place = ledger.texts.get(`parting.hole-place[${hole}]`);
  return (place === 'fixed core' || place === 'slide') && ledger.texts.get(`hole.making[${hole}]`) !== 'drilled';
}
