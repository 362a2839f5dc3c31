/** One check of a formula against a figure that was not worked out with it. */
export interface Case {
  readonly formula: string;
  /** In the units that the formula declares; inputs with a default may be left out. */
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  /** What the printed digits allow; at least one of the two. */
  readonly tolerance: { readonly relative?: number; readonly absolute?: number };
  /** The published source by name, or `derived, worked by hand: …`. */
  readonly from: string;
}

/** Millimetres in an inch, for figures printed in inches. */
export const INCH = 25.4;
/** MPa in 1 kgf/cm2. */
export const KGF_PER_CM2 = 0.0980665;
