import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { FigureAxis } from '../../engine/plan.ts';
import { FONT_SIZE } from './style.ts';
import { shorten, textWidth } from './text-size.ts';

/** An axis of a figure before it has a place: where it begins and ends, and its round ticks. */
export interface AxisRange {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

export type Scale = ScaleLinear<number, number>;

const TICKS_ACROSS = 8;
/** Least pixels between two numbers below the plot. */
const NUMBER_GAP = 12;

/** As many ticks as there is room for their numbers. */
export function rangeAcross(values: readonly number[], width: number, size = FONT_SIZE): AxisRange {
  for (let count = TICKS_ACROSS; ; count -= 1) {
    const range = roundRange(values, count);
    const widest = Math.max(...range.ticks.map(({ text }) => textWidth(text, size)));
    if (count === 1 || (widest + NUMBER_GAP) * (range.ticks.length - 1) <= width) return range;
  }
}

export function roundRange(values: readonly number[], count: number): AxisRange {
  const scale = scaleLinear().domain(extentOf(values)).nice(count);
  const [from, to] = scale.domain() as [number, number];
  return axisRange(from, to, scale.ticks(count));
}

/** Least and greatest value, with zero where it is near: an axis that begins elsewhere makes small changes look large. */
export function extentOf(values: readonly number[]): [number, number] {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  if (least > greatest) return [0, 1];
  if (least > 0 && least < 0.6 * greatest) least = 0;
  if (greatest < 0 && greatest > 0.6 * least) greatest = 0;
  if (least < greatest) return [least, greatest];
  return least === 0 ? [0, 1] : [Math.min(0, least), Math.max(0, least)];
}

export function axisRange(from: number, to: number, ticks: readonly number[]): AxisRange {
  const step = ticks.length > 1 ? (ticks[1] as number) - (ticks[0] as number) : 1;
  return { from, to, ticks: ticks.map((value) => ({ value, text: tickText(value, step) })) };
}

/** A tick's number with the decimals that its step needs. */
function tickText(value: number, step: number): string {
  const size = Math.abs(step);
  if (size >= 1e6 || size < 1e-5) return value === 0 ? '0' : value.toExponential(2).replace(/\.?0*e/, 'e');
  let decimals = 0;
  while (decimals < 8 && Math.abs(size * 10 ** decimals - Math.round(size * 10 ** decimals)) > 1e-6 * size * 10 ** decimals) decimals += 1;
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

/** Pixels of a value: from `start` at the beginning of the range to `end` at its end. */
export function scaleOf(range: AxisRange, start: number, end: number): Scale {
  return scaleLinear().domain([range.from, range.to]).range([start, end]);
}

/** Quantity and unit, as in `Pressure, MPa`. The unit stays where a long title has to be cut. */
export function axisTitle({ title, unit }: FigureAxis, room: number, size = FONT_SIZE): string {
  const end = unit === '1' ? '' : `, ${unit}`;
  return shorten(title, room - textWidth(end, size), size) + end;
}
