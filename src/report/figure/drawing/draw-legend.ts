import { PAD, WIDTH } from '../frame.ts';
import { element, type Pen, rounded, text } from '../pen.ts';
import { MIDDLE_OF_DIGITS } from '../place.ts';
import { LARGE_SIZE as SIZE } from '../style.ts';
import { textWidth } from '../text-size.ts';
import { drawCentre, drawStroke } from './draw-shapes.ts';
import { type DrawingLayout, LINE } from './layout.ts';
import { type LegendRole, SAMPLE, TEXT_OFFSET } from './legend.ts';
import { faceOf } from './looks.ts';
import { TEXT_GAP } from './scale-bar.ts';

const SAMPLE_HEIGHT = 16;
const BAR_HEIGHT = 7;
/** From the middle of a line to the base of its text. */
const MIDDLE = MIDDLE_OF_DIGITS * SIZE;

/** A sample of each role that is drawn, with its name. */
export function drawRoles(pen: Pen, figure: string, { legend, legendTop }: DrawingLayout): void {
  for (const [i, row] of legend.entries()) {
    const y = legendTop + (i + 0.5) * LINE;
    for (const entry of row) {
      drawSample(pen, figure, entry, PAD + entry.x, y);
      text(pen, entry.text, { x: PAD + entry.x + TEXT_OFFSET, y: y + MIDDLE });
    }
  }
}

function drawSample(pen: Pen, figure: string, { role, sample }: LegendRole, x: number, y: number): void {
  const [look, fill] = [`shape ${role}`, faceOf(figure, role)];
  if (sample === 'path' && role === 'line') drawStroke(pen, look, `M${rounded(x)},${rounded(y)}h${SAMPLE}`);
  else if (sample === 'circle') {
    const [cx, r] = [x + SAMPLE / 2, SAMPLE_HEIGHT / 2];
    element(pen, 'circle', { class: look, fill, cx, cy: y, r });
    if (role === 'bar') drawCentre(pen, [cx, y], r + 3);
  } else element(pen, 'rect', { class: look, fill, x, y: y - SAMPLE_HEIGHT / 2, width: SAMPLE, height: SAMPLE_HEIGHT });
}

/** In the lower right corner, half dark and half light. */
export function drawScaleBar(pen: Pen, { scaleBar, legendTop }: DrawingLayout): void {
  if (scaleBar === undefined) return;
  const { length, text: words } = scaleBar;
  const x = WIDTH - PAD - textWidth(words, SIZE) - TEXT_GAP - length;
  const y = legendTop + LINE / 2;
  element(pen, 'rect', { class: 'scale', x, y: y - BAR_HEIGHT / 2, width: length, height: BAR_HEIGHT });
  element(pen, 'rect', { class: 'scale-dark', x, y: y - BAR_HEIGHT / 2, width: length / 2, height: BAR_HEIGHT });
  text(pen, words, { x: x + length + TEXT_GAP, y: y + MIDDLE });
}
