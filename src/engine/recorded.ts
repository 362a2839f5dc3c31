import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import type { Items } from './items.ts';
import type { Decision } from './plan.ts';

/** What a ledger holds, for another one to be laid over it. */
export interface Recorded {
  readonly values: Map<string, Traced>;
  readonly texts: Map<string, string>;
  readonly textPlaces: Map<string, Place>;
  readonly decisions: Map<string, Decision>;
  readonly filedItems: Items;
}
