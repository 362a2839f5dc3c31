import type { Chart } from '../../../engine/plan.ts';
import { type AxisRange, axisTitle, type Scale, scaleOf } from '../axes.ts';
import { belowTitle, LINE, PAD, titleLines, WIDTH } from '../frame.ts';
import type { Box } from '../place.ts';
import { FONT_SIZE } from '../style.ts';
import { shorten, textWidth } from '../text-size.ts';
import { type LegendEntry, legendEntries, legendRows } from './legend-entries.ts';
import { type Ranges, rangesOf } from './ranges.ts';
import { type Flag, flagsFor } from './upright.ts';

const PLOT_HEIGHT = 330;
/** Between the end of a curve and its name. */
export const NAME_GAP = 6;
/** A plot is never narrower than this share of the room. */
const LEAST_SHARE = 0.66;
/** Between an axis and its numbers. */
export const TICK_GAP = 7;

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly title: readonly string[];
  readonly plot: Box;
  readonly ranges: Ranges;
  readonly x: Scale;
  readonly y: Scale;
  readonly right?: Scale;
  readonly axisTitles: { readonly x: string; readonly y: string; readonly right?: string };
  /** Upright lines with the row of their label; row 0 is next to the plot. */
  readonly upright: readonly { readonly x: number; readonly text: string; readonly flag: Flag }[];
  readonly legend: readonly (readonly LegendEntry[])[];
  readonly legendTop: number;
}

/** Where everything of a figure goes, in pixels from its upper left corner. */
export function layoutOf(figure: Chart): Layout {
  const ranges = rangesOf(figure);
  const title = titleLines(figure.title);
  const left = PAD + LINE + widestTick(ranges.y) + TICK_GAP;
  const lastTick = ranges.x.ticks.at(-1)?.text ?? '';
  const right =
    ranges.right === undefined
      ? Math.min(WIDTH - PAD - textWidth(lastTick, FONT_SIZE) / 2, rightForNames(figure, ranges.x, left))
      : WIDTH - PAD - (LINE + widestTick(ranges.right) + TICK_GAP);
  const x = scaleOf(ranges.x, left, right);

  const lines = figure.marks
    .filter((mark) => mark.y === undefined && Number.isFinite(mark.x))
    .map((mark) => ({ x: x(mark.x), text: shorten(mark.title, 0.45 * (right - left), FONT_SIZE) }));
  const flags = flagsFor(lines, FONT_SIZE, left, WIDTH - PAD);
  const rows = lines.length === 0 ? 0 : 1 + Math.max(...flags.map((flag) => flag.row));

  const top = belowTitle(title) + 10 + rows * LINE;
  const bottom = top + PLOT_HEIGHT;
  const legendTop = bottom + TICK_GAP + 2 * LINE + 14;
  const legend = legendRows(legendEntries(figure), WIDTH - PAD - left);
  const height = Math.round(legend.length === 0 ? legendTop : legendTop + legend.length * (LINE + 2)) + PAD - 8;
  return {
    width: WIDTH,
    height,
    title,
    plot: { left, top, right, bottom },
    ranges,
    x,
    y: scaleOf(ranges.y, bottom, top),
    ...(ranges.right === undefined ? {} : { right: scaleOf(ranges.right, bottom, top) }),
    axisTitles: {
      x: axisTitle(figure.x, right - left),
      y: axisTitle(figure.y, PLOT_HEIGHT),
      ...(figure.right === undefined ? {} : { right: axisTitle(figure.right, PLOT_HEIGHT) }),
    },
    upright: lines.map((line, i) => ({ ...line, flag: flags[i] as Flag })),
    legend,
    legendTop,
  };
}

/** Right edge of a plot that leaves room for the names of curves beyond their ends; a very long name gets none. */
function rightForNames({ curves }: Chart, range: AxisRange, left: number): number {
  const limits = curves.map(({ title, points }) => {
    const share = ((points.at(-1)?.[0] ?? range.from) - range.from) / (range.to - range.from);
    return left + (WIDTH - PAD - left - NAME_GAP - textWidth(title, FONT_SIZE)) / share;
  });
  return Math.min(...limits.filter((limit) => limit >= left + LEAST_SHARE * (WIDTH - PAD - left)), WIDTH - PAD);
}

function widestTick(range: AxisRange): number {
  return Math.max(...range.ticks.map(({ text }) => textWidth(text, FONT_SIZE)));
}
