import type { Chart } from '../../../engine/plan.ts';
import { type AxisRange, axisRange, extentOf, rangeAcross, roundRange } from '../axes.ts';

export interface Ranges {
  readonly x: AxisRange;
  readonly y: AxisRange;
  readonly right?: AxisRange;
}

const TICKS_UP = 6;
/** Counts of ticks that are tried where a grid serves two axes, the usual one first. */
const TICKS_TRIED = [TICKS_UP, 5, 4, 7, 8];
/** Width that every plot has at least, in pixels. */
const SURE_WIDTH = 500;

/** Ranges of the axes that hold every curve, area and mark, ending at round ticks. */
export function rangesOf(figure: Chart): Ranges {
  const { areas, curves, marks } = figure;
  const left = [...areas, ...curves.filter((curve) => curve.axis !== 'right')].flatMap(({ points }) => points);
  const right = curves.filter((curve) => curve.axis === 'right').flatMap(({ points }) => points);
  const x = rangeAcross([...[...left, ...right].map(([at]) => at), ...marks.map((mark) => mark.x)], SURE_WIDTH);
  const heights = [...left.map(([, at]) => at), ...marks.flatMap((mark) => (mark.y === undefined ? [] : [mark.y]))];
  if (figure.right === undefined) return { x, y: roundRange(heights, TICKS_UP) };
  return {
    x,
    ...rangesBeside(
      heights,
      right.map(([, at]) => at),
    ),
  };
}

/** Ranges of the left and the right axis with one grid for both, such that the curves leave as little of it empty as may be. */
function rangesBeside(left: readonly number[], right: readonly number[]): { readonly y: AxisRange; readonly right: AxisRange } {
  const tried = TICKS_TRIED.map((count) => {
    const y = roundRange(left, count);
    const ranges = { y, right: rangeInSteps(right, y.ticks.length - 1) };
    return { ranges, empty: emptyShare(ranges.y, left) + emptyShare(ranges.right, right) };
  });
  return tried.reduce((best, one) => (one.empty < best.empty - 1e-9 ? one : best)).ranges;
}

function emptyShare({ from, to }: AxisRange, values: readonly number[]): number {
  const [least, greatest] = extentOf(values);
  return 1 - (greatest - least) / (to - from);
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
