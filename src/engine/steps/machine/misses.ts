import { type Tried, workOn } from './evaluate.ts';
import { brokenAll, type Stop } from './stops.ts';

/** A candidate that no search could take, with all that stands in its way before machine and die are worked out to the end. */
export interface Miss {
  readonly tried: Tried;
  readonly broken: readonly Stop[];
  /** By how much its limits are missed, added up, as a share. */
  readonly distance: number;
}

/** What a limit that cannot be measured counts, such as one between words, and what could not be worked out. */
const UNMEASURED = 1;

/**
 * The misses of a search that found nothing, the nearest first: by how far they would have to be changed to fit. Only the smallest count
 * of cavities is looked at, because every limit that stops a candidate eases with fewer cavities.
 */
export function nearestMisses(tried: readonly Tried[]): Miss[] {
  const fewest = Math.min(...tried.map(({ candidate }) => candidate.cavities));
  const misses = tried
    // What was inferred from a larger machine is further off than that one.
    .flatMap((entry): (Miss & { readonly failed: boolean })[] => {
      const { candidate, trial, reached, stop, inferred } = entry;
      if (candidate.cavities !== fewest || stop === undefined || inferred === true) return [];
      const failed = stop.limit === undefined;
      const broken = reached === 'whole' || trial === undefined ? [stop] : [...(failed ? [stop] : []), ...brokenAll(workOn(trial, reached))];
      return [{ tried: entry, failed, broken, distance: broken.reduce((sum, { miss }) => sum + (miss ?? UNMEASURED), 0) }];
    });
  const size = ({ tried: { candidate } }: Miss): number => candidate.machine.lockingForce.value;
  return misses.sort(
    (a, b) =>
      // What could not be worked out hides limits that the others are held against.
      Number(a.failed) - Number(b.failed) || a.distance - b.distance || size(a) - size(b) || a.tried.candidate.plunger.value - b.tried.candidate.plunger.value,
  );
}
