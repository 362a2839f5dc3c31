import type { Place, SourceText } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import type { Acceptance, Located, Pin } from './part.ts';

/** A part of the die and how many of its castings a shot has. */
export interface DieEntry {
  /** What the plan calls it, such as `left-lever`. */
  readonly id: string;
  /** The part file as written, seen from the die file. */
  readonly file: Located<string>;
  readonly count: Traced<'1'>;
  readonly at: Place;
}

/** A die description, read and checked; the part files it names are read by others. */
export interface DieSpec {
  readonly source: SourceText;
  /** The whole file. */
  readonly at: Place;
  readonly name: string;
  readonly number?: string;
  readonly revision?: string;
  readonly note?: string;
  readonly parts: readonly DieEntry[];
  readonly pinned: ReadonlyMap<string, Pin>;
  readonly accepted: readonly Acceptance[];
}
