import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth } from '../text-size.ts';
import type { Bounds, Dimension } from './shapes.ts';

/** The sides of the shapes on which dimension lines stand. */
export type Side = 'above' | 'below' | 'left' | 'right';
/** Where the line of a dimension stands: on a side, or slanting beside the shapes. */
export type Place = Side | 'aslant';
export const SIDES: readonly Side[] = ['above', 'below', 'left', 'right'];
/** Around the shapes: edges and centre lines reach over their bounds. */
export const RIM = 6;

/** From one dimension line to the next, and from the shapes to the first. */
export const PITCH = 27;
export const FIRST = 16;
/** Length of an arrowhead, and of the tail that it has where it points in from outside. */
export const ARROW = 9;
export const TAIL = 8;
/** A line shorter than this has its arrowheads outside. */
const ROOM_FOR_ARROWS = 2 * ARROW + 6;
/** Between what stands in one row. */
const GAP = 8;

/** A level line goes above or below, an upright one to the left or right, to the side that it is nearer to. */
export function placeOf({ from, to }: Dimension, { left, right, bottom, top }: Bounds): Place {
  const [across, up] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  if (up <= 1e-6 * across) return from[1] + to[1] >= bottom + top ? 'above' : 'below';
  if (across <= 1e-6 * up) return from[0] + to[0] <= left + right ? 'left' : 'right';
  return 'aslant';
}

/** A dimension on its way along one side, in pixels in the direction of its text. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export function arrowsOutside({ from, to }: Pick<Span, 'from' | 'to'>): boolean {
  return to - from < ROOM_FOR_ARROWS;
}

/** Base point of the middle of the text: over the middle of the line, but within the limits. */
export function middleOf({ from, to, text }: Span, least: number, greatest: number): number {
  const half = textWidth(text, SIZE) / 2;
  return Math.max(Math.min((from + to) / 2, greatest - half), least + half);
}

/** Rows for the spans of one side, the shortest next to the shapes: in one row neither lines nor texts meet. */
export function rowsFor(spans: readonly Span[], least: number, greatest: number): number[] {
  const reach = spans.map((span): readonly [number, number] => {
    const [half, middle] = [textWidth(span.text, SIZE) / 2, middleOf(span, least, greatest)];
    const tail = arrowsOutside(span) ? ARROW + TAIL : 0;
    return [Math.min(span.from - tail, middle - half), Math.max(span.to + tail, middle + half)];
  });
  const length = (i: number): number => (spans[i] as Span).to - (spans[i] as Span).from;
  const order = [...spans.keys()].sort((i, j) => length(i) - length(j) || (spans[i] as Span).from - (spans[j] as Span).from || i - j);
  const rows: number[] = [];
  for (const i of order) {
    const [from, to] = reach[i] as readonly [number, number];
    const taken = (row: number): boolean => reach.some(([start, end], j) => rows[j] === row && start < to + GAP && from < end + GAP);
    let row = 0;
    while (taken(row)) row += 1;
    rows[i] = row;
  }
  return rows;
}
