import type { Drawing, FigurePoint } from '../../../engine/plan.ts';
import { begin, NOTHING, PAD, WIDTH } from '../frame.ts';
import type { PlanValues } from '../numbers.ts';
import { finish, text } from '../pen.ts';
import { Placer } from '../place.ts';
import { LARGE_SIZE } from '../style.ts';
import { drawDimensions } from './draw-dimensions.ts';
import { drawRoles, drawScaleBar } from './draw-legend.ts';
import { drawLabel, drawShape } from './draw-shapes.ts';
import { drawingLayout } from './layout.ts';
import { drawingStyle, drawPatterns, type FaceRole, LOOKS } from './looks.ts';
import { hullPoints } from './shapes.ts';

/** Shapes to scale with their dimensions, a legend of what they stand for, and a bar to measure with. */
export function drawingSvg(figure: Drawing, values: PlanValues): string {
  const layout = drawingLayout(figure, values);
  const { shapes, fit } = layout;
  const pen = begin(figure, layout.height, layout.title, drawingStyle());
  const roles = new Set(shapes.map(({ role }) => role));
  drawPatterns(
    pen,
    figure.id,
    (Object.keys(LOOKS) as FaceRole[]).filter((role) => roles.has(role)),
  );
  for (const shape of shapes) drawShape(pen, figure.id, shape, fit);
  if (shapes.length === 0) text(pen, NOTHING, { x: PAD, y: fit.frame.top + LARGE_SIZE });

  const placer = new Placer({ ...fit.frame, left: 4, right: WIDTH - 4 });
  for (const shape of shapes) {
    const pixels = hullPoints(shape).map((point: FigurePoint) => fit.pixel(point));
    const [xs, ys] = [pixels.map(([x]) => x), pixels.map(([, y]) => y)];
    placer.keep({ left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) });
  }
  for (const shape of shapes) if (shape.shape === 'box' && shape.label !== undefined) drawLabel(pen, shape, shape.label, fit);
  drawDimensions(pen, layout.dimensions, placer);
  drawRoles(pen, figure.id, layout);
  drawScaleBar(pen, layout);
  return finish(pen);
}
