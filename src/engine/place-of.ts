import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';

/** Found places, since many rules point at the same values. */
const PLACES = new WeakMap<Traced, Place | null>();

/** Where in the user's files a value was written: its own place, or that of the nearest value it rests on. */
export function placeOf(value: Traced): Place | undefined {
  const known = PLACES.get(value);
  if (known !== undefined) return known ?? undefined;
  const found = nearestPlace(value);
  PLACES.set(value, found ?? null);
  return found;
}

function nearestPlace(value: Traced): Place | undefined {
  let level: readonly Traced[] = [value];
  const seen = new Set<Traced>(level);
  while (level.length > 0) {
    const next: Traced[] = [];
    for (const candidate of level) {
      if (candidate.at !== undefined) return candidate.at;
      for (const parent of candidate.parents) {
        if (seen.has(parent)) continue;
        seen.add(parent);
        next.push(parent);
      }
    }
    level = next;
  }
  return undefined;
}
