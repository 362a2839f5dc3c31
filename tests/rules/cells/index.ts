import { DESIGN } from './design.ts';
import { OTHER } from './other.ts';
import type { TypedCell } from './read.ts';
import { SHOT } from './shot.ts';
import { STEEL } from './steel.ts';

/** Every cell of the tables that is typed a second time. */
export const TYPED_CELLS: readonly TypedCell[] = [...DESIGN, ...SHOT, ...STEEL, ...OTHER];

/** Published cells that no list holds: table and column, each with its reason. */
export const NOT_TYPED: readonly { readonly table: string; readonly column: string; readonly reason: string }[] = [];
