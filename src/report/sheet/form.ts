import type { TextId, ValueId } from '../../engine/vocabulary/index.ts';

/** A number or a text of the plan. */
export type Id = ValueId | TextId;

/** One value or text in a cell, with the words around it; left out where the plan does not hold it. */
export interface Piece {
  readonly id: Id;
  /** The item, for an id with items, where the line does not go through them. */
  readonly item?: string;
  /** What stands before it: `width`. */
  readonly label?: string;
  /** The upper end of a range, printed as `least to greatest`. */
  readonly to?: ValueId;
  /** What stands after it: `across`. */
  readonly after?: string;
  /** Left out where the plan holds one of these: the depth of a plain vent means nothing to a chill vent. */
  readonly unless?: readonly Id[];
}

/** The items that a line goes through: the slides, the named dimensions. */
export interface Each {
  /** Every item that has this value or text. */
  readonly id: Id;
  /** Texts of that id whose items are left out, such as a tolerance that holds. */
  readonly except?: readonly string[];
  /** So many are printed; the sheet says how many more the plan holds. */
  readonly most: number;
  /** One after the other instead of each on a line of its own. */
  readonly inline?: true;
}

/** One row of a sheet. A row of which the plan holds nothing is left out, unless it has a note. */
export interface Line {
  readonly title: string;
  readonly pieces: readonly Piece[];
  readonly each?: Each;
  /** What the planned value is held against. */
  readonly within?: readonly Piece[];
  /** What stands after the pieces, in words. */
  readonly note?: string;
}

/** A row of a sheet as a table of the plan has it: this table of this section. */
export interface PlanTable {
  readonly section: string;
  readonly title: string;
}
