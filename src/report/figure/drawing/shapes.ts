import type { Drawing, FigurePoint, Shape } from '../../../engine/plan.ts';
import { isDrawable } from '../numbers.ts';

export type Dimension = Drawing['dimensions'][number];

/** A box in the unit of the drawing; y grows upward. */
export interface Bounds {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Points on a circle that stand for it where only its extent counts. */
const AROUND = 24;

/** A drawing smaller than this has no size, in its unit. */
export const LEAST_SIZE = 1e-9;

/** The shapes that can be drawn; of a path, the points that can. None where all of them together have no size. */
export function drawableShapes(shapes: readonly Shape[]): Shape[] {
  const finite = finiteShapes(shapes);
  const bounds = boundsOf(finite.flatMap(hullPoints));
  return bounds === undefined || Math.max(bounds.right - bounds.left, bounds.top - bounds.bottom) < LEAST_SIZE ? [] : finite;
}

function finiteShapes(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((shape): Shape[] => {
    if (shape.shape === 'path') {
      const points = shape.points.filter(isPoint);
      return points.length > 1 ? [{ ...shape, points }] : [];
    }
    const sizes = shape.shape === 'box' ? [shape.width, shape.height] : [shape.diameter];
    return isPoint([shape.x, shape.y]) && sizes.every((size) => size >= 0 && isDrawable(size)) ? [shape] : [];
  });
}

/** The dimensions whose two points differ. */
export function drawableDimensions(dimensions: readonly Dimension[]): Dimension[] {
  return dimensions.filter(({ from, to }) => isPoint(from) && isPoint(to) && lengthOf({ from, to }) > 0);
}

export function lengthOf({ from, to }: Pick<Dimension, 'from' | 'to'>): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

function isPoint([x, y]: FigurePoint): boolean {
  return isDrawable(x) && isDrawable(y);
}

/** Points that span the shape: nothing of it lies outside their hull. */
export function hullPoints(shape: Shape): readonly FigurePoint[] {
  switch (shape.shape) {
    case 'path':
      return shape.points;
    case 'box': {
      const [left, right, bottom, top] = [shape.x - shape.width / 2, shape.x + shape.width / 2, shape.y - shape.height / 2, shape.y + shape.height / 2];
      return [
        [left, bottom],
        [right, bottom],
        [right, top],
        [left, top],
      ];
    }
    case 'circle': {
      // On a circle that much wider, so that the sides of the polygon touch the circle.
      const radius = shape.diameter / 2 / Math.cos(Math.PI / AROUND);
      return Array.from({ length: AROUND }, (_, i): FigurePoint => {
        const turn = ((i + 0.5) * 2 * Math.PI) / AROUND;
        return [shape.x + radius * Math.cos(turn), shape.y + radius * Math.sin(turn)];
      });
    }
  }
}

/** The least box that holds all points; absent where there is none. */
export function boundsOf(points: readonly FigurePoint[]): Bounds | undefined {
  const first = points[0];
  if (first === undefined) return undefined;
  let [left, bottom] = first;
  let [right, top] = first;
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
}
