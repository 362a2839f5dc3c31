import type { AxisRange, Scale } from '../axes.ts';
import { LINE } from '../frame.ts';
import { type Pen, straight, text } from '../pen.ts';
import { FONT_SIZE } from '../style.ts';
import { type Layout, TICK_GAP } from './layout.ts';

/** From the base line of a text to the middle of its digits. */
const MIDDLE = 0.36 * FONT_SIZE;

/** Grid, axes, round ticks with their numbers, and titles with units. */
export function drawAxes(pen: Pen, layout: Layout): void {
  const { plot, x, y, ranges, axisTitles } = layout;
  for (const { value } of ranges.y.ticks) straight(pen, 'grid', [plot.left, y(value)], [plot.right, y(value)]);
  for (const { value } of ranges.x.ticks) straight(pen, 'grid', [x(value), plot.top], [x(value), plot.bottom]);
  straight(pen, 'axis', [plot.left, plot.bottom], [plot.right, plot.bottom]);
  straight(pen, 'axis', [plot.left, plot.top], [plot.left, plot.bottom]);

  for (const { value, text: words } of ranges.x.ticks) text(pen, words, { x: x(value), y: plot.bottom + TICK_GAP + FONT_SIZE - 1, anchor: 'middle' }, 'tick');
  const middle = (plot.top + plot.bottom) / 2;
  text(pen, axisTitles.x, { x: (plot.left + plot.right) / 2, y: plot.bottom + TICK_GAP + 2 * LINE, anchor: 'middle' }, 'axis-title');
  upAxis(pen, y, ranges.y, plot.left - TICK_GAP, 'end');
  text(pen, axisTitles.y, { x: LINE + 6, y: middle, anchor: 'middle' }, 'axis-title', true);
  if (layout.right === undefined || ranges.right === undefined) return;
  straight(pen, 'axis', [plot.right, plot.top], [plot.right, plot.bottom]);
  upAxis(pen, layout.right, ranges.right, plot.right + TICK_GAP, 'start');
  text(pen, axisTitles.right ?? '', { x: layout.width - LINE + 4, y: middle, anchor: 'middle' }, 'axis-title', true);
}

function upAxis(pen: Pen, scale: Scale, range: AxisRange, x: number, anchor: 'start' | 'end'): void {
  for (const { value, text: words } of range.ticks) text(pen, words, { x, y: scale(value) + MIDDLE, anchor }, 'tick');
}
