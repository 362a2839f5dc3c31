import type { Split } from './splits.ts';

/** The run along or before each gate; the others are named where they are laid out. */
export const GATE_RUN = 'gate run';
/** The run that begins at biscuit or sprue. */
export const MAIN_RUN = 'main runner';
/** The run from a sprue to one of several gates of a single cavity. */
export const APPROACH = 'approach';

/** A place where the runner parts: one split, or several drawn as one at the foot of a sprue. */
export type Node = readonly Split[];

/** The runs of a shot by name, from the feeder down, and where they part. */
export interface Runs {
  /** From the feeder to the gates. */
  readonly all: readonly string[];
  /** Those that end where the runner parts between cavities. */
  readonly parting: readonly string[];
  /** The run that ends at a gate or at the run along it. */
  readonly cavityRun: string;
  readonly nodes: readonly Node[];
}
