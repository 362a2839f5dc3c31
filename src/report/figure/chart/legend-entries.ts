import type { Chart } from '../../../engine/plan.ts';
import { FONT_SIZE } from '../style.ts';
import { shorten, textWidth } from '../text-size.ts';
import { areaClass, areaEdge, curveClass, dashOf } from './style.ts';

/** What one curve or area looks like, and what it is called. */
export interface LegendEntry {
  readonly kind: 'area' | 'curve';
  readonly text: string;
  /** Which axis it is read on, where that is not the left one. */
  readonly axis: string;
  readonly lineClass: string;
  readonly labelClass: string;
  readonly dash: string;
  /** From the left edge of the legend, in pixels. */
  readonly x: number;
}

export const SAMPLE = 34;
/** From the left edge of an entry to its text. */
export const TEXT_OFFSET = SAMPLE + 8;
const ENTRY_GAP = 24;

export type Looks = Omit<LegendEntry, 'x'>;

/** Areas, then curves, in the order of the figure. */
export function legendEntries(figure: Chart): Looks[] {
  const areas = figure.areas.map(
    (area, i): Looks => ({ kind: 'area', text: area.title, axis: '', lineClass: areaClass(i), labelClass: '', dash: areaEdge(i) }),
  );
  return [...areas, ...curveLooks(figure)];
}

export function curveLooks(figure: Chart): Looks[] {
  let whole = 0;
  let dashed = 0;
  return figure.curves.map((curve, i): Looks => {
    const { line, label } = curveClass(i);
    const dash = curve.dashed === true ? dashOf(dashed++, true) : dashOf(whole++, false);
    const axis = curve.axis === 'right' && figure.right !== undefined ? ' (right axis)' : '';
    return { kind: 'curve', text: curve.title, axis, lineClass: line, labelClass: label, dash };
  });
}

/** Entries set one after the other, in as many rows as the width asks for. */
export function legendRows(entries: readonly Looks[], width: number): LegendEntry[][] {
  const rows: LegendEntry[][] = [];
  let row: LegendEntry[] = [];
  let x = 0;
  for (const entry of entries) {
    const text = shorten(entry.text, width - TEXT_OFFSET - textWidth(entry.axis, FONT_SIZE), FONT_SIZE) + entry.axis;
    const wide = TEXT_OFFSET + textWidth(text, FONT_SIZE);
    if (row.length > 0 && x + wide > width) {
      rows.push(row);
      row = [];
      x = 0;
    }
    row.push({ ...entry, text, x });
    x += wide + ENTRY_GAP;
  }
  return row.length === 0 ? rows : [...rows, row];
}
