import type { Timeline } from '../../../engine/plan.ts';
import { formatQuantity } from '../../../kernel/format.ts';
import { type AxisRange, axisTitle, rangeAcross, type Scale, scaleOf } from '../axes.ts';
import { BROADER, belowTitle, PAD, titleLines, WIDTH } from '../frame.ts';
import { decimalsOf, lengthText, type PlanValues } from '../numbers.ts';
import type { Box } from '../place.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth, wrapAtMost } from '../text-size.ts';
import { AIR, type Bar, type DrawnRow, type DrawnText, drawableBars, GAP, LEAST_BAR, LINE, MIDDLE, rowAt } from './rows.ts';

/** Between the names and the plot. */
const NAME_GAP = 12;
/** Most width of the names, and how many lines a name may have. */
const NAME_ROOM = 270;
const NAME_LINES = 3;
/** Width that the plot has at least. */
const SURE_WIDTH = 400;
const TOTAL = 'Total';

export interface TimelineLayout {
  readonly height: number;
  readonly title: readonly string[];
  readonly plot: Box;
  readonly range: AxisRange;
  readonly x: Scale;
  readonly axisTitle: string;
  readonly rows: readonly DrawnRow[];
  /** From the beginning to the end of the last bar, whose lower edge is `last`, in the last row; absent where there is no bar. */
  readonly total?: {
    readonly from: number;
    readonly to: number;
    readonly last: number;
    readonly top: number;
    readonly y: number;
    readonly texts: readonly DrawnText[];
  };
  /** Upper edge of the legend, where a bar is strong. */
  readonly legendTop?: number;
}

/** Where everything of a timeline goes, in pixels from its upper left corner. */
export function timelineLayout(figure: Timeline, values: PlanValues): TimelineLayout {
  const title = titleLines(figure.title);
  const kept = figure.rows.map((row) => drawableBars(row.bars));
  const bars = kept.flat();
  const { unit } = figure.x;
  const number = (bar: Bar): string => lengthText(bar.to - bar.from, unit, bar.values, values);
  const begin = Math.min(0, ...bars.map(({ from }) => from));
  const end = Math.max(...bars.map(({ to }) => to));

  const names = figure.rows.map((row) => wrapAtMost(row.title, NAME_LINES, NAME_ROOM, BROADER * SIZE));
  const left = PAD + Math.max(...[...names.flat(), TOTAL].map((name) => textWidth(name, BROADER * SIZE))) + NAME_GAP;
  const coarsest = Math.min(...bars.map((bar) => decimalsOf(bar.values, unit, values) ?? Number.POSITIVE_INFINITY));
  const whole = formatQuantity(end - begin, unit, Number.isFinite(coarsest) ? coarsest : undefined);
  const range = rangeAcross([0, ...bars.flatMap(({ from, to }) => [from, to])], SURE_WIDTH, SIZE);
  const ends = [...bars.map((bar) => ({ at: bar.to, text: number(bar) })), ...(bars.length === 0 ? [] : [{ at: end, text: whole }])];
  const right = rightForNumbers(ends, range, left);
  const x = scaleOf(range, left, right);

  const top = belowTitle(title) + 10;
  const rows: DrawnRow[] = [];
  let at = top + AIR;
  for (const [i, row] of kept.entries()) {
    const drawn = rowAt(at, names[i] ?? [], row, x, number);
    rows.push(drawn);
    at = drawn.bottom;
  }
  const total = bars.length === 0 ? undefined : totalAt(at, lowestEnding(end, kept, rows), x(begin), x(end), whole);
  const bottom = at + LINE + 3 * AIR;
  const legendTop = bottom + GAP + 2 * LINE + 14;
  const strong = rows.some((row) => row.strong);
  return {
    height: Math.ceil(strong ? legendTop + LINE + PAD : legendTop + PAD - 10),
    title,
    plot: { left, top, right, bottom },
    range,
    x,
    axisTitle: axisTitle(figure.x, right - left, SIZE),
    rows,
    ...(total === undefined ? {} : { total }),
    ...(strong ? { legendTop } : {}),
  };
}

/** Lower edge of the bar that ends last, the lowest of several. */
function lowestEnding(end: number, kept: readonly (readonly Bar[])[], rows: readonly DrawnRow[]): number {
  const row = kept.findLastIndex((bars) => bars.some(({ to }) => to === end));
  return Math.max(...(rows[row]?.bars ?? []).map(({ box }) => box.bottom));
}

/** Right edge of a plot that leaves room for each number after the end of its bar, and for the last number of the axis. */
function rightForNumbers(ends: readonly { readonly at: number; readonly text: string }[], range: AxisRange, left: number): number {
  const limits = ends.map(({ at, text }) => {
    const share = (at - range.from) / (range.to - range.from);
    return left + (WIDTH - PAD - left - GAP - LEAST_BAR - textWidth(text, BROADER * SIZE)) / share;
  });
  return Math.min(...limits, WIDTH - PAD - textWidth(range.ticks.at(-1)?.text ?? '', SIZE) / 2);
}

function totalAt(at: number, last: number, from: number, to: number, text: string): NonNullable<TimelineLayout['total']> {
  const top = at + AIR;
  const y = top + AIR + LINE / 2;
  return {
    from,
    to,
    last,
    top,
    y,
    texts: [
      { text: TOTAL, spot: { x: PAD, y: y + MIDDLE, anchor: 'start' } },
      { text, spot: { x: to + GAP, y: y + MIDDLE, anchor: 'start' } },
    ],
  };
}
