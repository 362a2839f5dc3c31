import type { Listing } from '../engine/listings.ts';
import { alignRows } from './columns.ts';
import { jsonText } from './json-text.ts';
import { visibleLine } from './visible.ts';

/** Aligned columns under their names; the names alone when there is no row. */
export function listText(listing: Listing): string {
  const cell = (value: string | readonly string[] | undefined): string => visibleLine(typeof value === 'string' ? value : (value ?? []).join(', '));
  const rows = listing.rows.map((row) => listing.columns.map((column) => cell(row[column])));
  return `${alignRows([listing.columns, ...rows]).join('\n')}\n`;
}

/** A JSON array of records. */
export function listJson(listing: Listing): string {
  return jsonText(listing.rows);
}
