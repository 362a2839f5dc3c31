import { create } from 'xmlbuilder2';
import type { XMLBuilder } from 'xmlbuilder2/lib/interfaces.js';
import { visibleLine } from '../visible.ts';
import type { Anchor, Pixel } from './place.ts';

export type Pen = XMLBuilder;

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Two decimals of a pixel: no eye sees more, and every machine gives the same bytes. */
export function rounded(value: number): string {
  const text = String(Math.round(value * 100) / 100);
  return text === '-0' ? '0' : text;
}

/**
 * Text for the writer, with nothing that acts. The writer takes what looks like a reference, such as `&nbsp;`, for one
 * and leaves it alone, so that ampersands are written out here; it escapes the other signs.
 */
function plain(words: string): string {
  return visibleLine(words).replaceAll('&', '&amp;');
}

/** An element; numbers are rounded, attributes without a value left out. */
export function element(pen: Pen, name: string, attributes: Attributes = {}): Pen {
  const written = Object.entries(attributes).flatMap(([key, value]) =>
    value === undefined || value === '' ? [] : [[key, typeof value === 'number' ? rounded(value) : plain(value)]],
  );
  return pen.ele(name, Object.fromEntries(written));
}

const ANCHOR_CLASS: Readonly<Record<Anchor, string>> = { start: '', middle: 'middle', end: 'end' };

export function text(pen: Pen, words: string, at: { readonly x: number; readonly y: number; readonly anchor?: Anchor }, look = '', turned = false): void {
  const { x, y, anchor = 'start' } = at;
  const names = [look, ANCHOR_CLASS[anchor]].filter((name) => name !== '').join(' ');
  const transform = turned ? `rotate(-90 ${rounded(x)} ${rounded(y)})` : undefined;
  element(pen, 'text', { class: names, x, y, transform }).txt(plain(words));
}

export function straight(pen: Pen, look: string, [x1, y1]: Pixel, [x2, y2]: Pixel): void {
  element(pen, 'line', { class: look, x1, y1, x2, y2 });
}

/** The root of a picture with what a reader who cannot see it is told. */
export function picture(width: number, height: number, id: string, title: string, description: string): Pen {
  const root = create({ version: '1.0', encoding: 'UTF-8' }).ele('http://www.w3.org/2000/svg', 'svg', {
    viewBox: `0 0 ${width} ${height}`,
    width: String(width),
    height: String(height),
    role: 'img',
    'aria-labelledby': `${id}-title ${id}-text`,
  });
  root.ele('title', { id: `${id}-title` }).txt(plain(title));
  root.ele('desc', { id: `${id}-text` }).txt(plain(description));
  return root;
}

export function finish(root: Pen): string {
  return `${root.end({ prettyPrint: true })}\n`;
}
