import { symbol, symbolCircle, symbolDiamond, symbolSquare, symbolTriangle } from 'd3-shape';
import type { Chart } from '../../../engine/plan.ts';
import { LINE } from '../frame.ts';
import { element, type Pen, rounded, straight, text } from '../pen.ts';
import { type Box, nearestIn, type Pixel, type Placer, type Spot, textBox } from '../place.ts';
import { FONT_SIZE } from '../style.ts';
import { shorten } from '../text-size.ts';
import type { Layout } from './layout.ts';

const SHAPES = [symbolCircle, symbolDiamond, symbolSquare, symbolTriangle];
/** Area of a symbol in square pixels, and half its reach. */
const SYMBOL_AREA = 75;
const REACH = 7;

/** Upright lines through the plot, their labels in rows above it. */
export function drawUpright(pen: Pen, layout: Layout): void {
  const { plot } = layout;
  for (const { x, flag } of layout.upright) straight(pen, 'upright', [x, plot.bottom], [x, plot.top - 4 - flag.row * LINE - FONT_SIZE + 1]);
  for (const { x, text: words, flag } of layout.upright) {
    const right = flag.side === 'right';
    text(pen, words, { x: right ? x + 4 : x - 4, y: plot.top - 7 - flag.row * LINE, anchor: right ? 'start' : 'end' }, 'label');
  }
}

interface PointMark {
  readonly title: string;
  readonly at: Pixel;
}

/** The marks that are points, in pixels. */
export function pointMarks(figure: Chart, layout: Layout): PointMark[] {
  return figure.marks.flatMap(({ title, x, y }) => {
    if (y === undefined || !Number.isFinite(x) || !Number.isFinite(y)) return [];
    return [{ title, at: [layout.x(x), layout.y(y)] as const }];
  });
}

/** The box that a point's symbol fills. */
export function symbolBox([x, y]: Pixel): Box {
  return { left: x - REACH, top: y - REACH, right: x + REACH, bottom: y + REACH };
}

/** Points with symbols of different shapes, each with its label beside it; a thin line leads to one that is further off. */
export function drawPoints(pen: Pen, points: readonly PointMark[], layout: Layout, placer: Placer): void {
  const room = 0.4 * (layout.plot.right - layout.plot.left);
  const labels = points.map(({ title, at }) => {
    const words = shorten(title, room, FONT_SIZE);
    return { words, at, spot: placer.place(words, FONT_SIZE, spotsAround(at), at) };
  });
  for (const { words, at, spot } of labels) {
    const end = nearestIn(textBox(words, FONT_SIZE, spot), at);
    if (Math.hypot(end[0] - at[0], end[1] - at[1]) > 1.8 * REACH) straight(pen, 'leader', at, end);
  }
  points.forEach(({ at: [x, y] }, i) => {
    const d = symbol(SHAPES[i % SHAPES.length], SYMBOL_AREA).digits(2)();
    element(pen, 'path', { class: 'mark', transform: `translate(${rounded(x)} ${rounded(y)})`, d: d ?? undefined });
  });
  for (const { words, spot } of labels) text(pen, words, spot, 'label');
}

const DISTANCES = [10, 26, 46, 70];
const HALF = 0.36 * FONT_SIZE;

function spotsAround([x, y]: Pixel): Spot[] {
  return DISTANCES.flatMap((away): Spot[] => {
    const aslant = 0.75 * away;
    const beside = Math.max(aslant, DISTANCES[0] as number);
    return [
      { x: x + away, y: y + HALF, anchor: 'start' },
      { x: x + beside, y: y - aslant, anchor: 'start' },
      { x: x + beside, y: y + aslant + 2 * HALF, anchor: 'start' },
      { x: x - away, y: y + HALF, anchor: 'end' },
      { x: x - beside, y: y - aslant, anchor: 'end' },
      { x: x - beside, y: y + aslant + 2 * HALF, anchor: 'end' },
      { x, y: y - away - 3, anchor: 'middle' },
      { x, y: y + away + 2 * HALF + 1, anchor: 'middle' },
    ];
  });
}
