import { type ScaleLinear, scaleLinear } from 'd3-scale';
import type { Figure } from '../../engine/plan.ts';
import { FONT_SIZE } from './style.ts';
import { textWidth } from './text-size.ts';

/** An axis of a figure before it has a place: where it begins and ends, and its round ticks. */
export interface AxisRange {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly value: number; readonly text: string }[];
}

export type Scale = ScaleLinear<number, number>;

export interface Ranges {
  readonly x: AxisRange;
  readonly y: AxisRange;
  readonly right?: AxisRange;
}

const TICKS_ACROSS = 8;
const TICKS_UP = 6;
/** Least pixels between two numbers below the plot, and the width that every plot has. */
const NUMBER_GAP = 12;
const SURE_WIDTH = 500;

/** Ranges of the axes that hold every curve, area and mark, ending at round ticks. */
export function rangesOf(figure: Figure): Ranges {
  const { areas, curves, marks } = figure;
  const left = [...areas, ...curves.filter((curve) => curve.axis !== 'right')].flatMap(({ points }) => points);
  const right = curves.filter((curve) => curve.axis === 'right').flatMap(({ points }) => points);
  const x = rangeAcross([...[...left, ...right].map(([at]) => at), ...marks.map((mark) => mark.x)]);
  const y = roundRange([...left.map(([, at]) => at), ...marks.flatMap((mark) => (mark.y === undefined ? [] : [mark.y]))], TICKS_UP);
  const heights = right.map(([, at]) => at);
  return figure.right === undefined ? { x, y } : { x, y, right: rangeInSteps(heights, y.ticks.length - 1) };
}

/** As many ticks as there is room for their numbers. */
function rangeAcross(values: readonly number[]): AxisRange {
  for (let count = TICKS_ACROSS; ; count -= 1) {
    const range = roundRange(values, count);
    const widest = Math.max(...range.ticks.map(({ text }) => textWidth(text, FONT_SIZE)));
    if (count === 1 || (widest + NUMBER_GAP) * (range.ticks.length - 1) <= SURE_WIDTH) return range;
  }
}

function roundRange(values: readonly number[], count: number): AxisRange {
  const scale = scaleLinear().domain(extentOf(values)).nice(count);
  const [from, to] = scale.domain() as [number, number];
  return axisRange(from, to, scale.ticks(count));
}

/** A range with as many steps as the axis on the other side has, so that one grid serves both. */
function rangeInSteps(values: readonly number[], steps: number): AxisRange {
  const [least, greatest] = extentOf(values);
  const power = 10 ** Math.floor(Math.log10((greatest - least) / steps));
  for (const factor of [1, 2, 2.5, 5, 10, 20]) {
    const step = factor * power;
    const first = Math.floor(least / step + 1e-9);
    if ((first + steps) * step < greatest - 1e-9 * step) continue;
    const ticks = Array.from({ length: steps + 1 }, (_, i) => (first + i) * step);
    return axisRange(first * step, (first + steps) * step, ticks);
  }
  throw new RangeError('no round step is wide enough');
}

/** Least and greatest value, with zero where it is near: an axis that begins elsewhere makes small changes look large. */
function extentOf(values: readonly number[]): [number, number] {
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

function axisRange(from: number, to: number, ticks: readonly number[]): AxisRange {
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
