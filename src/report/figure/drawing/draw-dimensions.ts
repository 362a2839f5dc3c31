import { element, type Pen, straight, text } from '../pen.ts';
import type { Pixel, Placer } from '../place.ts';
import { LARGE_SIZE } from '../style.ts';
import type { DrawnDimension } from './dimensions.ts';
import { pathData } from './draw-shapes.ts';
import { ARROW, arrowsOutside, TAIL } from './sides.ts';

/** Between the point measured and the line that leads from it, and how far that reaches over the dimension line. */
const OFF = 3;
const OVER = 3;
const HALF_ARROW = 3;

/** The lines with their arrowheads, then the texts, each where no other line crosses it if there is such a place. */
export function drawDimensions(pen: Pen, dimensions: readonly DrawnDimension[], placer: Placer): void {
  for (const dimension of dimensions) drawLines(pen, dimension, placer);
  for (const { text: words, spots } of dimensions) {
    const spot = placer.place(words, LARGE_SIZE, spots);
    text(pen, words, spot, 'label', spot.turned);
  }
}

function drawLines(pen: Pen, { ends }: DrawnDimension, placer: Placer): void {
  for (const [measured, end] of ends) {
    const far = toward(measured, end, OVER);
    const length = Math.hypot(end[0] - measured[0], end[1] - measured[1]);
    if (length <= OFF) continue;
    const near = toward(end, measured, -OFF);
    straight(pen, 'extension', near, far);
    placer.thin([near, far]);
  }
  const [one, other] = ends.map(([, end]) => end) as [Pixel, Pixel];
  const outside = arrowsOutside({ from: 0, to: Math.hypot(other[0] - one[0], other[1] - one[1]) });
  const [from, to] = outside ? [toward(other, one, ARROW + TAIL), toward(one, other, ARROW + TAIL)] : [one, other];
  straight(pen, 'dimension', from, to);
  placer.curve([from, to]);
  drawArrow(pen, one, other, outside);
  drawArrow(pen, other, one, outside);
}

/** The point beyond `to` on the way from `from`. */
function toward(from: Pixel, to: Pixel, beyond: number): Pixel {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return to;
  const share = beyond / length;
  return [to[0] + share * (to[0] - from[0]), to[1] + share * (to[1] - from[1])];
}

/** An arrowhead with its tip at one end of the line, within the line or outside it. */
function drawArrow(pen: Pen, tip: Pixel, other: Pixel, outside: boolean): void {
  const [x, y] = toward(other, tip, outside ? ARROW : -ARROW);
  const length = Math.hypot(x - tip[0], y - tip[1]);
  if (length === 0) return;
  const [across, up] = [(HALF_ARROW * (tip[1] - y)) / length, (HALF_ARROW * (x - tip[0])) / length];
  const corners: Pixel[] = [tip, [x + across, y + up], [x - across, y - up]];
  element(pen, 'path', { class: 'arrow', d: pathData(corners, true) });
}
