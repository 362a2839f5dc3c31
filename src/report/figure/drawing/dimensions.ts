import type { FigurePoint } from '../../../engine/plan.ts';
import type { Pixel, Spot } from '../place.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth } from '../text-size.ts';
import { type Contents, type Fit, limitsOf, spanOf } from './fit.ts';
import type { Bounds, Dimension } from './shapes.ts';
import { FIRST, middleOf, PITCH, RIM } from './sides.ts';

/** A dimension with its line outside the shapes. */
export interface DrawnDimension {
  /** The points measured, each with the end of the line that belongs to it. */
  readonly ends: readonly (readonly [measured: Pixel, end: Pixel])[];
  readonly text: string;
  /** Where the text may stand, the best first. */
  readonly spots: readonly Spot[];
}

/** From a line to the base of the text above it, and to that of the text below it. */
const UP = 6;
const DOWN = 6 + 0.78 * SIZE;
/** Shares of its play along the line by which a text is moved out of the way of other lines. */
const SHIFTS = [0, -0.3, 0.3, -0.6, 0.6, -0.95, 0.95];

/** A level or upright dimension in its row. Its text stands on the far side of its line, seen from the shapes. */
export function lineBeside(dimension: Contents['dimensions'][number], row: number, fit: Fit): DrawnDimension {
  const { side, from, to, text } = dimension;
  const away = FIRST + row * PITCH;
  const { inner, pixel } = fit;
  const span = spanOf(side, dimension, fit);
  const { least, greatest } = limitsOf(side, fit);
  const middle = middleOf(span, least, greatest);
  const play = Math.max(0, (span.to - span.from - textWidth(text, SIZE)) / 2);
  const along = SHIFTS.slice(0, play > 4 ? SHIFTS.length : 1).map((share) => middle + share * play);
  if (side === 'above' || side === 'below') {
    const y = side === 'above' ? inner.top - away : inner.bottom + away;
    const base = side === 'above' ? y - UP : y + DOWN;
    return { ends: [from, to].map((point) => [pixel(point), [pixel(point)[0], y]]), text, spots: along.map((x) => ({ x, y: base, anchor: 'middle' })) };
  }
  const x = side === 'left' ? inner.left - away : inner.right + away;
  const base = side === 'left' ? x - UP : x + DOWN;
  return {
    ends: [from, to].map((point) => [pixel(point), [x, pixel(point)[1]]]),
    text,
    spots: along.map((at) => ({ x: base, y: -at, anchor: 'middle', turned: true })),
  };
}

/** The slanting line moved along its normal, away from the middle, until all points lie behind it. */
export function aside(
  { from, to }: Dimension,
  points: readonly FigurePoint[],
  bounds: Bounds,
): { line: readonly [FigurePoint, FigurePoint]; away: FigurePoint } {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const normal = [(from[1] - to[1]) / length, (to[0] - from[0]) / length] as const;
  const outward = normal[0] * (from[0] - (bounds.left + bounds.right) / 2) + normal[1] * (from[1] - (bounds.bottom + bounds.top) / 2);
  const sign = outward < 0 ? -1 : 1;
  const away: FigurePoint = [sign * normal[0], sign * normal[1]];
  const lift = Math.max(...points.map(([x, y]) => away[0] * (x - from[0]) + away[1] * (y - from[1])));
  const moved = ([x, y]: FigurePoint): FigurePoint => [x + lift * away[0], y + lift * away[1]];
  return { line: [moved(from), moved(to)], away };
}

/** A slanting dimension, further out than the `row` ones before it. */
export function slantingLine(dimension: Dimension, line: readonly FigurePoint[], away: FigurePoint, text: string, row: number, { pixel }: Fit): DrawnDimension {
  const out = RIM + FIRST + row * PITCH;
  const ends = line.map((point, i): readonly [Pixel, Pixel] => {
    const [x, y] = pixel(point);
    return [pixel(i === 0 ? dimension.from : dimension.to), [x + out * away[0], y - out * away[1]]];
  });
  const middle: Pixel = [ends.reduce((sum, [, [x]]) => sum + x / 2, 0), ends.reduce((sum, [, [, y]]) => sum + y / 2, 0)];
  return { ends, text, spots: spotsBeside(middle, away) };
}

/** Spots for a level text beside a slanting line, on its far side first. */
function spotsBeside([x, y]: Pixel, [across, up]: FigurePoint): Spot[] {
  const outward = across < 0 ? 'end' : 'start';
  return [8, 20, 34, 50, 70].flatMap((far): Spot[] => {
    const at = { x: x + far * across, y: y - far * up + (up < 0 ? 0.78 * SIZE : 0) };
    return [
      { ...at, anchor: outward },
      { ...at, anchor: 'middle' },
      { ...at, anchor: outward === 'start' ? 'end' : 'start' },
    ];
  });
}
