/* Which cells of the tables a second copy holds, and what a change of a figure meets. */
import { figure, rowsAt, type TableFile, tables } from '../tables.ts';
import { NOT_TYPED, TYPED_CELLS } from './index.ts';
import { matches, type TypedCell } from './read.ts';

/** A figure of a table file, with the second copies of it. */
export interface HeldCell {
  readonly table: string;
  readonly row: number;
  readonly column: string;
  readonly value: number;
  readonly status: string;
  readonly typed: readonly TypedCell[];
}

const key = (table: string, row: number, column: string): string => `${table} ${row} ${column}`;

function byCell(): Map<string, TypedCell[]> {
  const found = new Map<string, TypedCell[]>();
  const byId = new Map<string, TableFile>(tables.map((table) => [table.id, table]));
  for (const typed of TYPED_CELLS) {
    const table = byId.get(typed.table);
    const [row, ...more] = table === undefined ? [] : rowsAt(table, typed.at);
    if (table === undefined || row === undefined || more.length > 0) continue;
    const at = key(typed.table, table.rows.indexOf(row), typed.column);
    found.set(at, [...(found.get(at) ?? []), typed]);
  }
  return found;
}

/** Every figure of every table, as it is written. A row for several words is one cell. */
export function heldCells(): readonly HeldCell[] {
  const held = byCell();
  return tables.flatMap((table) =>
    table.rows.flatMap((row, i) =>
      Object.keys(table.gives).flatMap((column): HeldCell[] => {
        const found = figure(table, row, column);
        if (found === undefined) return [];
        return [{ table: table.id, row: i, column, value: found.value, status: found.status ?? 'none', typed: held.get(key(table.id, i, column)) ?? [] }];
      }),
    ),
  );
}

/** Whether a test fails when the figure is written as `value` instead. */
export const noticed = (cell: Pick<HeldCell, 'typed'>, value: number): boolean => cell.typed.some((typed) => !matches(typed, value));

/** The reason why a published cell is in no list, where there is one. */
export const reasonNotTyped = (cell: Pick<HeldCell, 'table' | 'column'>): string | undefined =>
  NOT_TYPED.find(({ table, column }) => table === cell.table && column === cell.column)?.reason;
