import type { Ledger } from './ledger.ts';
import type { Block, Cell, Phrase } from './plan.ts';
import { fullId, type TextId, type ValueId, wordOf } from './vocabulary/index.ts';

/**
 * One section of a plan. `work` reads and files values through the ledger; `show` lays out what is there and works out
 * nothing. The order of working differs from the order of printing, so the two are apart.
 */
export interface Step {
  /** The topic: the same word names the section, the file, the folders under rules/ and the tests. */
  readonly id: string;
  readonly title: string;
  readonly work: (ledger: Ledger) => void;
  readonly show: (ledger: Ledger) => readonly Block[];
}

/** A list of values, those that are there; nothing when none is. */
export function valuesBlock(ledger: Ledger, ids: readonly (ValueId | readonly [ValueId, string])[]): Block[] {
  const known = ids.map((id) => (typeof id === 'string' ? id : fullId(id[0], id[1]))).filter((id) => ledger.values.has(id));
  return known.length === 0 ? [] : [{ kind: 'values', ids: known }];
}

/** A cell that shows a value, or a dash when it is not there. */
export function cell(ledger: Ledger, id: ValueId, item?: string): Cell {
  const full = fullId(id, item);
  return ledger.values.has(full) ? { value: full } : '–';
}

/** A cell that shows a text fact, or a dash. */
export function textCell(ledger: Ledger, id: TextId, item?: string): Cell {
  return ledger.texts.get(fullId(id, item)) ?? '–';
}

/** A table, or nothing when it has no rows. */
export function tableBlock(title: string, columns: readonly string[], rows: readonly (readonly Cell[])[]): Block[] {
  return rows.length === 0 ? [] : [{ kind: 'table', title, columns, rows }];
}

export function textBlock(...phrase: Phrase): Block {
  return { kind: 'text', phrase };
}

/** The title of a value id, for labels. */
export function titleOf(id: string): string {
  const word = wordOf(id);
  if (word === undefined) return id;
  return id.endsWith(']') ? `${word.title}, ${id.slice(id.indexOf('[') + 1, -1)}` : word.title;
}
