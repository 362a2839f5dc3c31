import type { Figure } from '../../engine/plan.ts';
import { element, type Pen, picture, text } from './pen.ts';
import { TITLE_SIZE } from './style.ts';
import { wrapAtMost } from './text-size.ts';

/** Width of every figure, in pixels. */
export const WIDTH = 800;
export const PAD = 16;
/** What stands in a figure in which there is nothing to be seen. */
export const NOTHING = 'Nothing to draw';
/** From one line of text to the next in a chart. */
export const LINE = 18;
/** From one line of a title to the next. */
const TITLE_LINE = 20;
/** Bold letters against plain ones. */
export const BROADER = 1.12;

/** A title in as many lines as it needs, or in `most`, the last one cut. */
export function titleLines(title: string, most = Number.POSITIVE_INFINITY): string[] {
  return wrapAtMost(title, most, WIDTH - 2 * PAD, BROADER * TITLE_SIZE);
}

/** Lower edge of a title of so many lines. */
export function belowTitle(lines: readonly string[]): number {
  return PAD + lines.length * TITLE_LINE;
}

/** The root of a figure: name and description for who cannot see it, style, ground, title. */
export function begin(figure: Figure, height: number, title: readonly string[], style: string): Pen {
  const root = picture(WIDTH, height, figure.id, figure.title, figure.text);
  root.ele('style').txt(style);
  element(root, 'rect', { class: 'ground', width: WIDTH, height });
  for (const [i, words] of title.entries()) text(root, words, { x: PAD, y: 32 + TITLE_LINE * i }, 'title');
  return root;
}
