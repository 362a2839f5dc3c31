import { curveLinearClosed, line } from 'd3-shape';
import type { Chart } from '../../../engine/plan.ts';
import { element, type Pen, straight, text } from '../pen.ts';
import type { Pixel, Placer, Spot } from '../place.ts';
import { FONT_SIZE } from '../style.ts';
import { shorten } from '../text-size.ts';
import { type Layout, NAME_GAP } from './layout.ts';
import { curveLooks } from './legend-entries.ts';
import { areaClass, areaEdge } from './style.ts';

/** The shaded areas with a thin edge. */
export function drawAreas(pen: Pen, figure: Chart, layout: Layout): void {
  figure.areas.forEach((area, i) => {
    const d = path(layout, layout.y, true)(area.points);
    if (d !== null) element(pen, 'path', { class: areaClass(i), 'stroke-dasharray': areaEdge(i), d });
  });
}

export function drawCurves(pen: Pen, figure: Chart, layout: Layout): void {
  const looks = curveLooks(figure);
  figure.curves.forEach((curve, i) => {
    const d = path(layout, scaleFor(curve, layout))(curve.points);
    if (d !== null) element(pen, 'path', { class: looks[i]?.lineClass, 'stroke-dasharray': looks[i]?.dash, d });
  });
}

type Curve = Chart['curves'][number];

function scaleFor(curve: Curve, layout: Layout): Layout['y'] {
  return curve.axis === 'right' ? (layout.right ?? layout.y) : layout.y;
}

/** Writer of path data; a curve has a gap where a sample is no number. */
function path(layout: Layout, y: Layout['y'], closed = false) {
  const writer = line<readonly [number, number]>(
    ([at]) => layout.x(at),
    ([, at]) => y(at),
  )
    .defined(([at, height]) => Number.isFinite(at) && Number.isFinite(height))
    .digits(2);
  return closed ? writer.curve(curveLinearClosed) : writer;
}

/** The finite samples of each curve in pixels. */
export function curvePixels(figure: Chart, layout: Layout): Pixel[][] {
  return figure.curves.map((curve) => pixelsOf(curve.points, layout.x, scaleFor(curve, layout)));
}

/** The edges of each area in pixels, closed. */
export function areaPixels(figure: Chart, layout: Layout): Pixel[][] {
  return figure.areas.map(({ points }) => pixelsOf([...points, ...points.slice(0, 1)], layout.x, layout.y));
}

function pixelsOf(points: Curve['points'], x: Layout['x'], y: Layout['y']): Pixel[] {
  return points.map(([at, height]): Pixel => [x(at), y(height)]).filter(([at, height]) => Number.isFinite(at) && Number.isFinite(height));
}

/** Shares of the way along a curve at which its label is tried: at the end first, for that is where the eye looks. */
const ALONG = [1, 0.97, 0.9, 0.82, 0.74, 0.66, 0.58, 0.5, 0.42, 0.34, 0.26, 0.18, 0.1, 0.03];
const ABOVE = 7;
const BELOW = FONT_SIZE + 5;

/**
 * Each curve's name at its end, or further back along it where the end is crowded. The lowest end comes first, since the
 * names beyond the others can move up.
 */
export function labelCurves(pen: Pen, figure: Chart, layout: Layout, placer: Placer): void {
  const looks = curveLooks(figure);
  const room = 0.45 * (layout.plot.right - layout.plot.left);
  const named = curvePixels(figure, layout).flatMap((pixels, i) => {
    const end = pixels.at(-1);
    return end === undefined ? [] : [{ pixels, end, words: shorten(figure.curves[i]?.title ?? '', room, FONT_SIZE), look: looks[i]?.labelClass }];
  });
  for (const { pixels, end, words, look } of named.sort((one, other) => other.end[1] - one.end[1])) {
    const spot = placer.place(words, FONT_SIZE, spotsAlong(pixels, end));
    if (spot.x === end[0] + NAME_GAP + LEADER) straight(pen, 'leader', end, [spot.x - 2, spot.y - 0.36 * FONT_SIZE]);
    text(pen, words, spot, look);
  }
}

/** How far the name beyond the end of a curve may be moved up (less than 0) or down, in the order of trying. */
const NEAR = [0, -4, -8, 4, 8];
const FAR = [-16, 16, -24, 24, -34, 34, -44, 44, -56, -68];
/** A name moved by more than this has a line that leads to it, and stands further off to make room for that. */
const LEADER = 10;

/** What is tried first: beyond the end; then along the curve; then beyond the end at the end of a leading line. */
function spotsAlong(pixels: readonly Pixel[], [endX, endY]: Pixel): Spot[] {
  const beyond = (shift: number): Spot => ({
    x: endX + NAME_GAP + (Math.abs(shift) > LEADER ? LEADER : 0),
    y: endY + shift + 0.36 * FONT_SIZE,
    anchor: 'start',
  });
  return [
    ...NEAR.map(beyond),
    ...ALONG.flatMap((share): Spot[] => {
      const [x, y] = pixels[Math.round(share * (pixels.length - 1))] as Pixel;
      return (['end', 'start', 'middle'] as const).flatMap((anchor) => {
        const away = anchor === 'end' ? x - 5 : anchor === 'start' ? x + 5 : x;
        return [
          { x: away, y: y - ABOVE, anchor },
          { x: away, y: y + BELOW, anchor },
        ];
      });
    }),
    ...FAR.map(beyond),
  ];
}
