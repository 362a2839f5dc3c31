import type { Rulebook } from '../src/index.ts';

/** The rules with a table in which every cell is empty: what hangs on it falls out of a plan, or is worked out otherwise. */
export function withoutFigures(rulebook: Rulebook, id: string): Rulebook {
  const table = rulebook.tables[id];
  if (table === undefined) throw new Error(`there is no table ${id}`);
  const rows = table.rows.map((row) => ({ ...row, cells: Object.fromEntries(Object.keys(row.cells).map((name) => [name, null])) }));
  return { ...rulebook, tables: { ...rulebook.tables, [id]: { ...table, rows } } };
}
