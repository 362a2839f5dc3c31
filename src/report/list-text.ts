import type { Listing } from '../engine/listings.ts';
import { alignRows, columnsOf, wrap } from './columns.ts';
import { jsonText } from './json-text.ts';
import { visibleLine } from './visible.ts';

/** Narrower than this no column of prose is made. */
const LEAST = 24;

/**
 * Aligned columns under their names; the names alone when there is no row. A row is one line, unless `width` says how many
 * columns the terminal has: then its last cells are wrapped, in their columns where these stay wide enough, or else below.
 */
export function listText(listing: Listing, width?: number): string {
  const cell = (value: string | readonly string[] | undefined): string => visibleLine(typeof value === 'string' ? value : (value ?? []).join(', '));
  const rows = [listing.columns, ...listing.rows.map((row) => listing.columns.map((column) => cell(row[column])))];
  return `${(width === undefined ? alignRows(rows) : fitted(rows, width)).join('\n')}\n`;
}

function fitted(rows: readonly (readonly string[])[], width: number): string[] {
  const widest = (rows[0] as readonly string[]).map((_, i) => Math.max(...rows.map((row) => columnsOf(row[i] as string))));
  const total = widest.reduce((sum, columns) => sum + columns + 2, -2);
  if (total <= width) return alignRows(rows);
  const last = widest.length - 1;
  const room = width - (total - (widest[last] as number));
  if (room >= LEAST) return alignRows(rows.flatMap((row) => wrapLast(row, room)));
  // What is wide stands below the rest of its row, one cell after the other.
  const below = widest.map((columns, i) => i > 0 && columns > LEAST);
  const lines = alignRows(rows.map((row) => row.filter((_, i) => !below[i])));
  return lines.flatMap((line, r) => [
    ...(columnsOf(line) > width ? wrap(line.replace(/ {2,}/g, '  '), width) : [line]),
    ...(rows[r] as readonly string[]).filter((text, i) => below[i] && text !== '').flatMap((text) => wrap(text, width, '    ')),
  ]);
}

function wrapLast(row: readonly string[], room: number): string[][] {
  const lines = wrap(row.at(-1) as string, room);
  return lines.map((line, i) => [...(i === 0 ? row.slice(0, -1) : row.slice(0, -1).map(() => '')), line]);
}

/** A JSON array of records. */
export function listJson(listing: Listing): string {
  return jsonText(listing.rows);
}
