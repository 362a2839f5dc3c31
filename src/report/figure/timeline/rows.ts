import type { Timeline } from '../../../engine/plan.ts';
import type { Scale } from '../axes.ts';
import { PAD, WIDTH } from '../frame.ts';
import { isDrawable } from '../numbers.ts';
import { type Box, MIDDLE_OF_DIGITS, type Spot } from '../place.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth, wrapPieces } from '../text-size.ts';

/** From one line of text to the next. */
export const LINE = 20;
const BAR_HEIGHT = 18;
/** Least width of a bar, so that what is over in milliseconds is seen beside what lasts for seconds. */
export const LEAST_BAR = 4;
/** Between a bar and its number. */
export const GAP = 7;
/** Above and below what stands in a row. */
export const AIR = 4;
/** From the middle of a line to the base line of its text. */
export const MIDDLE = MIDDLE_OF_DIGITS * SIZE;

export type Bar = Timeline['rows'][number]['bars'][number];

export interface DrawnText {
  readonly text: string;
  readonly spot: Spot;
}

export interface DrawnRow {
  readonly top: number;
  readonly bottom: number;
  /** Whether one of its bars is strong. */
  readonly strong: boolean;
  readonly name: readonly DrawnText[];
  readonly bars: readonly { readonly box: Box; readonly strong: boolean }[];
  readonly numbers: readonly DrawnText[];
}

/** The bars that last from one number to a later one, the earliest first. */
export function drawableBars(bars: readonly Bar[]): Bar[] {
  return bars.filter(({ from, to }) => isDrawable(from) && isDrawable(to) && from <= to).sort((one, other) => one.from - other.from || one.to - other.to);
}

/** One row: its name in the lines given, its bars, and how long each lasts. */
export function rowAt(top: number, lines: readonly string[], bars: readonly Bar[], x: Scale, number: (bar: Bar) => string): DrawnRow {
  const [left, right] = x.range() as [number, number];
  const barTop = top + AIR + (Math.max(lines.length, 1) * LINE - BAR_HEIGHT) / 2;
  const boxes = bars.map((bar) => ({ ...barSpan(x(bar.from), x(bar.to), right), top: barTop, bottom: barTop + BAR_HEIGHT }));
  const numbers = numbersOf(boxes, bars.map(number), left);
  const lowest = Math.max(barTop + BAR_HEIGHT, ...numbers.map(({ spot }) => spot.y + LINE / 2 - MIDDLE));
  return {
    top,
    bottom: Math.max(top + AIR + lines.length * LINE, lowest) + AIR,
    strong: bars.some((bar) => bar.strong === true),
    name: lines.map((text, i) => ({ text, spot: { x: PAD, y: top + AIR + (i + 0.5) * LINE + MIDDLE, anchor: 'start' } })),
    bars: boxes.map((box, i) => ({ box, strong: bars[i]?.strong === true })),
    numbers,
  };
}

/** A bar that is wide enough to be seen and does not leave the plot. */
function barSpan(from: number, to: number, right: number): { readonly left: number; readonly right: number } {
  const end = Math.max(to, Math.min(from + LEAST_BAR, right));
  return { left: Math.min(from, end - LEAST_BAR), right: end };
}

/** Each number after its bar; where bars stand too close, all of them after the last, before the first, or below. */
function numbersOf(boxes: readonly Box[], texts: readonly string[], left: number): DrawnText[] {
  const [first, last] = [boxes[0], boxes.at(-1)];
  if (first === undefined || last === undefined) return [];
  const end = WIDTH - PAD;
  const y = (first.top + first.bottom) / 2 + MIDDLE;
  const after = (text: string, at: number): DrawnText => ({ text, spot: { x: at + GAP, y, anchor: 'start' } });
  const limits = boxes.map((_, i) => Math.min(end, ...boxes.slice(i + 1).map((box) => box.left - GAP)));
  const beside = boxes.map((box, i) => after(texts[i] ?? '', box.right));
  if (beside.every(({ text, spot }, i) => spot.x + textWidth(text, SIZE) <= (limits[i] ?? end))) return beside;

  const together = texts.join(', ');
  const furthest = Math.max(...boxes.map((box) => box.right));
  if (furthest + GAP + textWidth(together, SIZE) <= end) return [after(together, furthest)];
  if (first.left - GAP - textWidth(together, SIZE) >= left + GAP) return [{ text: together, spot: { x: first.left - GAP, y, anchor: 'end' } }];
  const lines = wrapPieces(
    texts.map((text, i) => (i === texts.length - 1 ? text : `${text},`)),
    end - left - GAP,
    SIZE,
  );
  return lines.map((text, i) => ({ text, spot: { x: left + GAP, y: first.bottom + (i + 0.5) * LINE + MIDDLE, anchor: 'start' } }));
}
