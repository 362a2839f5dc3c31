import type { FigurePoint, Shape } from '../../../engine/plan.ts';
import { element, type Pen, rounded, straight, text } from '../pen.ts';
import type { Pixel } from '../place.ts';
import { LARGE_SIZE } from '../style.ts';
import { shorten } from '../text-size.ts';
import type { Fit } from './fit.ts';
import { faceOf } from './looks.ts';

/** How far the centre lines of a bar reach over it, in pixels. */
const OVER = 4;

/** One shape in the look of its role. A line along a path is a stroke, a bar has centre lines. */
export function drawShape(pen: Pen, figure: string, shape: Shape, { pixel, scale }: Fit): void {
  const look = `shape ${shape.role}`;
  const fill = faceOf(figure, shape.role);
  switch (shape.shape) {
    case 'box': {
      const [x, y] = pixel([shape.x - shape.width / 2, shape.y + shape.height / 2]);
      element(pen, 'rect', { class: look, fill, x, y, width: shape.width * scale, height: shape.height * scale });
      return;
    }
    case 'circle': {
      const [cx, cy] = pixel([shape.x, shape.y]);
      const r = (shape.diameter / 2) * scale;
      element(pen, 'circle', { class: look, fill, cx, cy, r });
      if (shape.role === 'bar') drawCentre(pen, [cx, cy], r + OVER);
      return;
    }
    case 'path': {
      if (shape.role === 'line') drawStroke(pen, look, pathData(shape.points.map(pixel), false));
      else element(pen, 'path', { class: look, fill, d: pathData(shape.points.map(pixel), true) });
    }
  }
}

/** What a box is, in its middle: along its longer side, cut where it does not fit, and left out where nothing of it would be read. */
export function drawLabel(pen: Pen, { x, y, width, height }: Extract<Shape, { shape: 'box' }>, label: string, { pixel, scale }: Fit): void {
  const upright = height > width;
  const room = (upright ? height : width) * scale - 4;
  const words = shorten(label, room, LARGE_SIZE);
  if (words.startsWith('…') || (upright ? width : height) * scale < LARGE_SIZE) return;
  const [cx, cy] = pixel([x, y]);
  const spot = upright ? { x: cx + 0.35 * LARGE_SIZE, y: cy, anchor: 'middle' as const } : { x: cx, y: cy + 0.35 * LARGE_SIZE, anchor: 'middle' as const };
  text(pen, words, spot, 'label', upright);
}

/** A dashed stroke on a strip of the ground, so that it stands out from any face below it. */
export function drawStroke(pen: Pen, look: string, d: string): void {
  element(pen, 'path', { class: 'strip', d });
  element(pen, 'path', { class: `${look} stroke`, d });
}

/** A cross through the middle of a bar. */
export function drawCentre(pen: Pen, [x, y]: Pixel, reach: number): void {
  straight(pen, 'centre', [x - reach, y], [x + reach, y]);
  straight(pen, 'centre', [x, y - reach], [x, y + reach]);
}

export function pathData(pixels: readonly FigurePoint[], closed: boolean): string {
  return `${pixels.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${rounded(x)},${rounded(y)}`).join('')}${closed ? 'Z' : ''}`;
}
