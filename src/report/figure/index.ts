import type { Figure } from '../../engine/plan.ts';
import { drawAxes } from './draw-axes.ts';
import { areaPixels, curvePixels, drawAreas, drawCurves, labelCurves } from './draw-curves.ts';
import { drawLegend } from './draw-legend.ts';
import { drawPoints, drawUpright, pointMarks, symbolBox } from './draw-marks.ts';
import { layoutOf } from './layout.ts';
import { drawing, element, finish, text } from './pen.ts';
import { Placer } from './place.ts';
import { styleSheet } from './style.ts';

/** A figure of a plan as one SVG document: light or dark as the reader has it, text as text, nothing loaded from elsewhere. */
export function figureSvg(figure: Figure): string {
  const layout = layoutOf(figure);
  const { width, height, plot } = layout;
  const root = drawing(width, height, figure.id, figure.title, figure.text);
  root.ele('style').txt(styleSheet());
  element(root, 'rect', { class: 'ground', width, height });
  for (const [i, words] of layout.title.entries()) text(root, words, { x: 16, y: 32 + 20 * i }, 'title');
  drawAxes(root, layout);
  drawAreas(root, figure, layout);
  drawUpright(root, layout);
  drawCurves(root, figure, layout);

  const placer = new Placer({ ...plot, left: plot.left + 2, right: width - 8 });
  const points = pointMarks(figure, layout);
  for (const { at } of points) placer.keep(symbolBox(at));
  if (layout.right !== undefined) placer.keep({ ...plot, left: plot.right, right: width });
  for (const pixels of curvePixels(figure, layout)) placer.curve(pixels);
  for (const pixels of areaPixels(figure, layout)) placer.thin(pixels);
  for (const { x } of layout.upright) {
    placer.thin([
      [x, plot.top],
      [x, plot.bottom],
    ]);
  }
  drawPoints(root, points, layout, placer);
  labelCurves(root, figure, layout, placer);
  drawLegend(root, layout);
  return finish(root);
}
