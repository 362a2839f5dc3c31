import { wordFor } from '../../choose.ts';
import type { Ledger } from '../../ledger.ts';
import { degreesBetween, degreesOff, type Feature, sideOf, type Vector } from './directions.ts';

/** The cores of one die opening: fixed ones, those that share a slide, and what no core reaches. */
export interface Cores {
  readonly fixed: readonly Feature[];
  readonly slides: readonly SlideGroup[];
  readonly unreachable: readonly Feature[];
}

/** Features whose cores leave the same way on the same side, and so share a slide. */
export interface SlideGroup {
  readonly direction: Vector;
  readonly text: string;
  readonly features: readonly Feature[];
}

/** Sorts the features for a die opening by the tables of the rulebook; nothing is filed. */
export function coresFor(ledger: Ledger, features: readonly Feature[], opening: Vector): Cores {
  const along = ledger.value('parting.along').value;
  const reach = ledger.value('parting.slide-reach').value;
  const words = new Map<string, string | undefined>();
  const placeOf = (feature: Feature): string | undefined => {
    const off = degreesOff(feature.direction, opening);
    const key = `${feature.kind}/${feature.id}`;
    if (!words.has(key)) words.set(key, wordFor(ledger, `parting.${feature.kind}-place`, { off, along, reach }, feature.id));
    return words.get(key);
  };
  return {
    fixed: features.filter((feature) => placeOf(feature) === 'fixed core'),
    slides: groupSlides(
      features.filter((feature) => placeOf(feature) === 'slide'),
      along,
    ),
    unreachable: features.filter((feature) => !['fixed core', 'slide'].includes(placeOf(feature) ?? '')),
  };
}

/**
 * Groups features by the way their cores leave. Through holes come last: they join a slide that is there anyway, on
 * either end, and only then ask for one of their own.
 */
export function groupSlides(features: readonly Feature[], along: number): SlideGroup[] {
  const groups: { direction: Vector; text: string; casting: string | undefined; features: Feature[] }[] = [];
  const join = (feature: Feature, fits: (group: Vector) => boolean): void => {
    const group = groups.find((candidate) => candidate.casting === feature.casting && fits(candidate.direction));
    if (group === undefined) groups.push({ direction: feature.direction, text: sideOf(feature, along), casting: feature.casting, features: [feature] });
    else group.features.push(feature);
  };
  for (const feature of features) if (!feature.through) join(feature, (group) => degreesBetween(group, feature.direction) <= along);
  for (const feature of features) {
    if (!feature.through) continue;
    const same = groups.some((group) => group.casting === feature.casting && degreesBetween(group.direction, feature.direction) <= along);
    join(feature, (group) => (same ? degreesBetween(group, feature.direction) : degreesOff(feature.direction, group)) <= along);
  }
  return groups;
}
