import { LINE } from '../frame.ts';
import { element, type Pen, text } from '../pen.ts';
import { FONT_SIZE } from '../style.ts';
import type { Layout } from './layout.ts';
import { SAMPLE, TEXT_OFFSET } from './legend-entries.ts';

/** Below the plot: a sample of each area and curve with its name. */
export function drawLegend(pen: Pen, layout: Layout): void {
  layout.legend.forEach((row, i) => {
    const y = layout.legendTop + i * (LINE + 2);
    for (const entry of row) {
      const x = layout.plot.left + entry.x;
      if (entry.kind === 'area')
        element(pen, 'rect', { class: entry.lineClass, 'stroke-dasharray': entry.dash, x, y: y + 2, width: SAMPLE, height: FONT_SIZE - 1 });
      else element(pen, 'path', { class: entry.lineClass, 'stroke-dasharray': entry.dash, d: `M${Math.round(x)},${Math.round(y + 8)}h${SAMPLE}` });
      text(pen, entry.text, { x: x + TEXT_OFFSET, y: y + FONT_SIZE - 1 });
    }
  });
}
