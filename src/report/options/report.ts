import type { Options, Variant } from '../../engine/options/options.ts';

/** Everything that a report of the options prints. */
export interface OptionsReport {
  readonly tool: { readonly name: string; readonly version: string };
  /** What every plan of this program says of itself. */
  readonly standing: string;
  readonly part: { readonly name: string; readonly number?: string; readonly revision?: string; readonly file: string };
  /** Castings of a shot of a die with several parts, which are made together as one set; absent for a part. */
  readonly castings?: number;
  readonly alloy: string;
  readonly plant: { readonly name: string; readonly invented: boolean };
  /** Absent where the plant has no machine of the kind. */
  readonly options?: Options;
  /** The part in other alloys and on other plants, the planned one first; empty when none were asked for. */
  readonly variants: readonly Variant[];
}
