import { textWidth } from '../text-size.ts';

/** A label beside an upright line: in which row above the plot, and on which side of its line. */
export interface Flag {
  readonly row: number;
  readonly side: 'right' | 'left';
}

interface Line {
  readonly x: number;
  readonly text: string;
}

const GAP = 4;
/** Every choice of sides is looked at up to so many lines. */
const MOST_TRIED = 9;

/**
 * Rows for the labels of upright lines above the plot, such that no label meets another one or the line of another one,
 * in as few rows as possible. A label stands beside the upper end of its line; a line passes through all rows below that.
 * So a label must be above the end of every line that it reaches over.
 */
export function flagsFor(lines: readonly Line[], size: number, left: number, right: number): Flag[] {
  const tried = lines.length <= MOST_TRIED ? 2 ** lines.length : 1;
  let best: { readonly flags: Flag[]; readonly cost: number } | undefined;
  for (let choice = 0; choice < tried; choice += 1) {
    const spans = lines.map((line, i) => spanOf(line, size, fits(line, size, right) && ((choice >> i) & 1) === 0 ? 'right' : 'left'));
    if (spans.some(([from]) => from < left)) continue;
    const rows = rowsFor(lines, spans);
    if (rows === undefined) continue;
    const flipped = spans.filter(([, , side]) => side === 'left').length;
    const cost = 100 * Math.max(...rows) + 10 * rows.reduce((sum, row) => sum + row, 0) + flipped;
    if (best === undefined || cost < best.cost) best = { flags: spans.map(([, , side], i) => ({ row: rows[i] as number, side })), cost };
  }
  // So crowded that lines have to pass behind labels: a row for each.
  return best?.flags ?? lines.map((line, i) => ({ row: lines.length - 1 - i, side: fits(line, size, right) ? 'right' : 'left' }));
}

type Span = readonly [from: number, to: number, side: Flag['side']];

function spanOf({ x, text }: Line, size: number, side: Flag['side']): Span {
  const width = textWidth(text, size);
  return side === 'right' ? [x + GAP, x + GAP + width, side] : [x - GAP - width, x - GAP, side];
}

function fits(line: Line, size: number, right: number): boolean {
  return spanOf(line, size, 'right')[1] <= right;
}

/** The lowest row for each label, or undefined when two labels reach over each other's lines. */
function rowsFor(lines: readonly Line[], spans: readonly Span[]): number[] | undefined {
  const over = (i: number, j: number): boolean => {
    const [from, to] = spans[i] as Span;
    const { x } = lines[j] as Line;
    return i !== j && x > from - GAP && x < to + GAP;
  };
  const rows: number[] = [];
  const waiting = new Set(lines.keys());
  while (waiting.size > 0) {
    const free = [...waiting].find((i) => ![...waiting].some((j) => over(i, j)));
    if (free === undefined) return undefined;
    waiting.delete(free);
    rows[free] = lowestRow(free, lines, spans, rows, over);
  }
  return rows;
}

function lowestRow(i: number, lines: readonly Line[], spans: readonly Span[], rows: readonly number[], over: (i: number, j: number) => boolean): number {
  const [from, to] = spans[i] as Span;
  let row = 0;
  for (let j = 0; j < lines.length; j += 1) {
    const other = rows[j];
    if (other !== undefined && over(i, j)) row = Math.max(row, other + 1);
  }
  const taken = (at: number): boolean => spans.some(([start, end], j) => j !== i && rows[j] === at && from < end + 2 * GAP && start < to + 2 * GAP);
  while (taken(row)) row += 1;
  return row;
}
