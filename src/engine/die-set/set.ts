import type { Side } from '../steps/die/arrange.ts';

/** A casting in its place: a box by its centre and size in mm, from the centre of the field of all castings, y upwards. */
export interface Casting {
  /** Of the part. */
  readonly member: string;
  /** What the plan calls it: `left lever 2`, or `left lever` where there is one only. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** Quarter turns against the clock, from where its longer side lies across. */
  readonly turns: 0 | 1 | 2 | 3;
  /** Sides on which no other casting follows. */
  readonly edges: readonly Side[];
}

/** How the castings stand in the die. */
export interface SetLayout {
  readonly castings: readonly Casting[];
  readonly width: number;
  readonly height: number;
  /** Whether there is room for a sprue in the middle of the field. */
  readonly amid: boolean;
  /** Slides that leave to a side on which another casting follows: casting and side. */
  readonly inner: readonly { readonly casting: string; readonly side: Side; readonly item: string; readonly hydraulic: boolean }[];
}
