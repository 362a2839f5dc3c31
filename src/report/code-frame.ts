import type { Place, SourceText } from '../kernel/place.ts';
import { printable } from '../kernel/printable.ts';
import { columnsOf } from './columns.ts';

const TAB = 4;
/** Columns of the whole frame, line number included; two more stand before it, and a terminal has 80. */
const WIDTH = 78;
/** Of a long line, so many characters on either side of the place are looked at: more than a frame can show. */
const REACH = 1000;

/** One character of a line as it is shown, and whether the finding points at it. */
interface Cell {
  readonly text: string;
  readonly columns: number;
  readonly selected: boolean;
}

/** The lines of a frame, uncoloured; `marks` lies under the characters that the finding points at. */
export interface CodeFrame {
  readonly before?: string;
  readonly line: string;
  readonly marks: string;
}

/** The line a place stands in, the line before it, and carets under the place; undefined where the text has no such line. */
export function codeFrame(place: Place): CodeFrame | undefined {
  const { line, column, endLine, endColumn } = place.position();
  const lines = linesOf(place.source);
  const text = lines[line - 1];
  if (text === undefined) return undefined;
  const end = endLine > line ? text.length : Math.max(endColumn - 1, column);
  const start = Math.min(column - 1, text.length);
  const before = Math.max(0, start - REACH);
  const near = (whole: string): string => whole.slice(before, start + REACH);
  const cells = cellsOf(near(text), start - before, Math.min(end, start + REACH) - before);
  const gutter = String(line).length;
  const room = WIDTH - gutter - 3;
  const from = windowStart(cells, room);
  const label = (name: string): string => `${name.padStart(gutter)} | `;
  const cut = cutCells(cells, from, room);
  const previous = line > 1 ? lines[line - 2] : undefined;
  return {
    ...(previous === undefined ? {} : { before: (label(String(line - 1)) + join(cutCells(cellsOf(near(previous), 0, 0), from, room))).trimEnd() }),
    line: (label(String(line)) + join(cut)).trimEnd(),
    marks: (label('') + cut.map((cell) => (cell.selected ? '^' : ' ').repeat(cell.columns)).join('')).trimEnd(),
  };
}

const known = new WeakMap<SourceText, readonly string[]>();

function linesOf(source: SourceText): readonly string[] {
  let lines = known.get(source);
  if (lines === undefined) {
    lines = source.text.split(/\r?\n/);
    known.set(source, lines);
  }
  return lines;
}

/** The characters of a line; those from `start` to before `end` are selected, and at least one column is. */
function cellsOf(text: string, start: number, end: number): Cell[] {
  const cells: Cell[] = [];
  let offset = 0;
  let column = 0;
  for (const character of text) {
    const shown = character === '\t' ? ' '.repeat(TAB - (column % TAB)) : printable(character);
    const columns = columnsOf(shown);
    cells.push({ text: shown, columns, selected: offset >= start && offset < end });
    offset += character.length;
    column += columns;
  }
  if (end > start && !cells.some((cell) => cell.selected)) cells.push({ text: ' ', columns: 1, selected: true });
  return cells;
}

/** The column at which the cut of a long line begins, so that what is selected can be seen with what stands before it. */
function windowStart(cells: readonly Cell[], room: number): number {
  let selectedFrom = 0;
  let selected = 0;
  let total = 0;
  for (const cell of cells) {
    if (cell.selected) {
      if (selected === 0) selectedFrom = total;
      selected += cell.columns;
    }
    total += cell.columns;
  }
  const needed = selectedFrom + Math.min(selected, Math.floor(room / 3));
  return total <= room || needed < room ? 0 : selectedFrom - Math.floor(room / 3);
}

/** The cells from column `from` on, at most `room` columns, with an ellipsis where characters are left out. */
function cutCells(cells: readonly Cell[], from: number, room: number): Cell[] {
  const dots: Cell = { text: '…', columns: 1, selected: false };
  let column = 0;
  const rest = cells.filter((cell) => {
    column += cell.columns;
    return column > from;
  });
  const list = from > 0 && rest.length > 0 ? [dots, ...rest.slice(1)] : rest;
  if (widthOf(list) <= room) return list;
  let used = 0;
  const fitting = list.findIndex((cell) => {
    used += cell.columns;
    return used >= room;
  });
  return [...list.slice(0, fitting), dots];
}

function widthOf(cells: readonly Cell[]): number {
  return cells.reduce((sum, cell) => sum + cell.columns, 0);
}

function join(cells: readonly Cell[]): string {
  return cells.map((cell) => cell.text).join('');
}
