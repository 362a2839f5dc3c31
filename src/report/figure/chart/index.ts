import type { Chart } from '../../../engine/plan.ts';
import { begin } from '../frame.ts';
import { finish } from '../pen.ts';
import { Placer } from '../place.ts';
import { drawAxes } from './draw-axes.ts';
import { areaPixels, curvePixels, drawAreas, drawCurves, labelCurves } from './draw-curves.ts';
import { drawLegend } from './draw-legend.ts';
import { drawPoints, drawUpright, pointMarks, symbolBox } from './draw-marks.ts';
import { layoutOf } from './layout.ts';
import { chartStyle } from './style.ts';

/** Curves over two axes with areas, marks and a legend. */
export function chartSvg(figure: Chart): string {
  const layout = layoutOf(figure);
  const { width, plot } = layout;
  const root = begin(figure, layout.height, layout.title, chartStyle());
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
