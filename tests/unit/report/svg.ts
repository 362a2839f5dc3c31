import { create } from 'xmlbuilder2';
import { type Box, overlap } from '../../../src/report/figure/place.ts';

export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

/** Every element of a drawing, read by the package's own reader; it throws for what is not well formed. */
export function elementsOf(svg: string): Element[] {
  const found: Element[] = [];
  create(svg).each(
    ({ node }) => {
      if (node.nodeType !== 1) return;
      const { attributes } = node as unknown as { attributes: Iterable<{ name: string; value: string }> };
      found.push({
        name: node.nodeName,
        attributes: Object.fromEntries([...attributes].map(({ name, value }) => [name, value])),
        text: node.textContent ?? '',
      });
    },
    true,
    true,
  );
  return found;
}

export function textsOf(svg: string): string[] {
  return elementsOf(svg).flatMap(({ name, text }) => (name === 'text' ? [text] : []));
}

/** Advance widths of DejaVu Sans 2.37, as broad a system font as there is, in shares of the font size, rounded up. */
const ADVANCES: readonly (readonly [width: number, characters: string])[] = [
  [0.28, "'ijl"],
  [0.34, 'IJ ,./:;\\|'],
  [0.42, 'f-()[]t!r'],
  [0.5, '"*_`'],
  [0.58, '?szLcFk'],
  [0.66, 'vxyPTYaeo$0123456789ESbdghnpqu{}K'],
  [0.76, 'ABCRVXZUHN'],
  [0.84, '&DGOQw#+<=>^~'],
  [1, 'M%m@W…'],
];

function widthOf(text: string): number {
  let width = 0;
  for (const character of text) {
    const advance = ADVANCES.find(([, characters]) => characters.includes(character))?.[0];
    if (advance === undefined) throw new Error(`no width of ${character}`);
    width += advance;
  }
  return width;
}

/** Size of the text of a figure, as its style sheet says. */
export function sizeOf(svg: string): number {
  return Number(/text \{[^}]*font-size: (\d+)px/.exec(svg)?.[1]);
}

/** The box of a text in a font as broad as there is. Bold letters are 13 % broader. */
export function boxOf({ attributes, text }: Element, size: number): Box {
  const look = (attributes['class'] ?? '').split(' ');
  const own = look.includes('title') ? 15 : size;
  const width = own * widthOf(text) * (look.includes('title') || look.includes('heavy') ? 1.13 : 1);
  const [x, y] = [Number(attributes['x']), Number(attributes['y'])];
  const from = look.includes('middle') ? -width / 2 : look.includes('end') ? -width : 0;
  if (attributes['transform'] === undefined) return { left: x + from, right: x + from + width, top: y - 0.78 * own, bottom: y + 0.24 * own };
  return { left: x - 0.78 * own, right: x + 0.24 * own, top: y - from - width, bottom: y - from };
}

/** Texts of a figure that lie over one another. */
export function clashesIn(svg: string): string[] {
  const boxes = elementsOf(svg).flatMap((element) => (element.name === 'text' ? [{ text: element.text, box: boxOf(element, sizeOf(svg)) }] : []));
  return boxes.flatMap((one, i) => boxes.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) > 0 ? [`${one.text} / ${other.text}`] : [])));
}

/** Points of a path: absolute moves and lines, and symbols relative to their translation. */
export function pathPoints({ attributes }: Element): [number, number][] {
  const [dx = 0, dy = 0] =
    /translate\((\S+) (\S+)\)/
      .exec(attributes['transform'] ?? '')
      ?.slice(1)
      .map(Number) ?? [];
  return [...(attributes['d'] ?? '').matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x) + dx, Number(y) + dy]);
}
