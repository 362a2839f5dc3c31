import type { Timeline } from '../../../engine/plan.ts';
import { begin, NOTHING } from '../frame.ts';
import type { PlanValues } from '../numbers.ts';
import { element, finish, type Pen, straight, text } from '../pen.ts';
import { MIDDLE_OF_DIGITS } from '../place.ts';
import { LARGE_SIZE } from '../style.ts';
import { type TimelineLayout, timelineLayout } from './layout.ts';
import { GAP, LINE } from './rows.ts';
import { timelineStyle } from './style.ts';

const STRONG = 'Governs the time';
/** Half the height of the strokes that end the line of the total. */
const END = 6;

/** Rows of bars over a time axis: what lasts how long, what governs, and the total. */
export function timelineSvg(figure: Timeline, values: PlanValues): string {
  const layout = timelineLayout(figure, values);
  const pen = begin(figure, layout.height, layout.title, timelineStyle());
  const strong = `${figure.id}-strong`;
  if (layout.legendTop !== undefined) drawStripes(pen, strong);
  drawAxis(pen, layout);
  drawTotal(pen, layout);
  for (const row of layout.rows) {
    for (const { box, strong: governs } of [...row.bars].sort((one, other) => Number(one.strong) - Number(other.strong))) {
      const { left: x, top: y } = box;
      const [width, height] = [box.right - x, box.bottom - y];
      element(pen, 'rect', { class: governs ? 'strong' : 'bar', fill: governs ? `url(#${strong})` : undefined, x, y, width, height });
    }
    for (const { text: words, spot } of row.name) text(pen, words, spot, row.strong ? 'heavy' : '');
    for (const { text: words, spot } of row.numbers) text(pen, words, spot, row.strong ? 'label heavy' : 'label');
  }
  if (layout.total === undefined) text(pen, NOTHING, { x: layout.plot.left + GAP, y: layout.plot.bottom - GAP }, 'label');
  drawLegend(pen, layout, strong);
  return finish(pen);
}

/** The tile of the strong bars: dark with light stripes. */
function drawStripes(pen: Pen, id: string): void {
  const tile = element(element(pen, 'defs'), 'pattern', { id, patternUnits: 'userSpaceOnUse', width: 8, height: 8, patternTransform: 'rotate(45)' });
  element(tile, 'rect', { class: 'tile', width: 8, height: 8 });
  straight(tile, 'stripe', [4, 0], [4, 8]);
}

function drawAxis(pen: Pen, { plot, range, x, axisTitle }: TimelineLayout): void {
  for (const { value } of range.ticks) straight(pen, 'grid', [x(value), plot.top], [x(value), plot.bottom]);
  straight(pen, 'axis', [plot.left, plot.bottom], [plot.right, plot.bottom]);
  straight(pen, 'axis', [x(0), plot.top], [x(0), plot.bottom]);
  const y = plot.bottom + GAP + LARGE_SIZE - 1;
  for (const { value, text: words } of range.ticks) text(pen, words, { x: x(value), y, anchor: 'middle' }, 'tick');
  text(pen, axisTitle, { x: (plot.left + plot.right) / 2, y: y + LINE + 2, anchor: 'middle' }, 'axis-title');
}

/** A line from the beginning to the end of the last bar with its length, and an upright line from there up to that bar. */
function drawTotal(pen: Pen, { plot, total }: TimelineLayout): void {
  if (total === undefined) return;
  const { from, to, last, top, y } = total;
  straight(pen, 'end-line', [to, last], [to, y - END]);
  straight(pen, 'row', [plot.left, top], [plot.right, top]);
  straight(pen, 'total', [from, y], [to, y]);
  for (const end of [from, to]) straight(pen, 'total', [end, y - END], [end, y + END]);
  for (const { text: words, spot } of total.texts) text(pen, words, spot, 'label heavy');
}

function drawLegend(pen: Pen, { plot, legendTop }: TimelineLayout, strong: string): void {
  if (legendTop === undefined) return;
  element(pen, 'rect', { class: 'strong', fill: `url(#${strong})`, x: plot.left, y: legendTop + 2, width: 34, height: LARGE_SIZE });
  text(pen, STRONG, { x: plot.left + 42, y: legendTop + 2 + LARGE_SIZE * (0.5 + MIDDLE_OF_DIGITS) });
}
