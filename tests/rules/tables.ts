import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** The table files as they are written, read without the tool's own reader, so that the tests do not lean on it. */
type Origin = { status?: string; source?: string[]; note?: string };
type Cell = number | null | undefined | ({ value: number } & Origin);
type Axis = { values: string[] } | { unit: string; steps?: 'up-to'; between?: 'linear'; outside: string };
export type Row = Origin & Record<string, Cell | string | string[]>;

export interface TableFile extends Origin {
  readonly id: string;
  readonly title: string;
  readonly about: string;
  readonly axes: Record<string, Axis>;
  readonly gives: Record<string, { unit: string; meaning: string }>;
  readonly notes?: string[];
  readonly rows: Row[];
}

export interface WrittenFigure {
  readonly value: number;
  readonly status: string | undefined;
  readonly source: readonly string[];
}

const root = new URL('../../rules/tables/', import.meta.url);

/** All table files, in order of their ids. Duplicate keys in a file are a fault of the YAML reader and throw. */
export const tables: readonly TableFile[] = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => ({ ...(parse(readFileSync(new URL(name, root), 'utf8')) as Omit<TableFile, 'id'>), id: name.replace(/\.yaml$/, '') }));

/** The figure of a cell with the mark it inherits: its own, else its row's, else its file's. */
export function figure(table: TableFile, row: Row, column: string): WrittenFigure | undefined {
  const cell = row[column] as Cell;
  if (cell === null || cell === undefined) return undefined;
  const own: { value: number } & Origin = typeof cell === 'number' ? { value: cell } : cell;
  return { value: own.value, status: own.status ?? row.status ?? table.status, source: own.source ?? row.source ?? table.source ?? [] };
}

/** The rows that stand at these axis values; a list of words on an axis stands for one row each. */
export function rowsAt(table: TableFile, at: Record<string, string | number>): Row[] {
  return table.rows.filter((row) =>
    Object.entries(at).every(([axis, wanted]) => {
      const written = row[axis] as unknown;
      return Array.isArray(written) ? written.includes(wanted) : written === wanted;
    }),
  );
}

/** The one figure at these axis values; throws when there is no such table, or not exactly one such row. */
export function figureAt(id: string, at: Record<string, string | number>, column: string): WrittenFigure | undefined {
  const table = tables.find((candidate) => candidate.id === id);
  if (table === undefined) throw new Error(`no table ${id}`);
  const [row, ...more] = rowsAt(table, at);
  if (row === undefined || more.length > 0) throw new Error(`${id} has ${more.length + (row === undefined ? 0 : 1)} rows at ${JSON.stringify(at)}`);
  return figure(table, row, column);
}
