import { describe, expect, test } from 'vitest';
import { create } from 'xmlbuilder2';
import type { Figure } from '../../../src/engine/plan.ts';
import { figureSvg } from '../../../src/report/figure/index.ts';
import { layoutOf } from '../../../src/report/figure/layout.ts';
import { overlap, textBox } from '../../../src/report/figure/place.ts';
import { CURVE_COLOURS, GROUND, INK } from '../../../src/report/figure/style.ts';
import { FIGURES, GAS_TIME, ODD, PRESSURE_FLOW, STROKE_PROFILE } from './hand-made-figures.ts';

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
}

/** Every element of a drawing, read by the package's own reader; it throws for what is not well formed. */
function elementsOf(svg: string): Element[] {
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

function textsOf(svg: string): string[] {
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

function width13(text: string): number {
  let width = 0;
  for (const character of text) {
    const advance = ADVANCES.find(([, characters]) => characters.includes(character))?.[0];
    if (advance === undefined) throw new Error(`no width of ${character}`);
    width += 13 * advance;
  }
  return width;
}

/** Where a text lies along its own direction, and across it. A title is bold, so 13 % broader. */
function textSpan({ attributes, text }: Element): { along: [number, number]; across: number; turned: boolean } {
  const look = (attributes['class'] ?? '').split(' ');
  const width = width13(text) * (look.includes('title') ? (1.13 * 15) / 13 : 1);
  const turned = attributes['transform'] !== undefined;
  const [at, across] = turned ? [-Number(attributes['y']), Number(attributes['x'])] : [Number(attributes['x']), Number(attributes['y'])];
  const from = look.includes('middle') ? at - width / 2 : look.includes('end') ? at - width : at;
  return { along: [from, from + width], across, turned };
}

/** Points of a path: absolute moves and lines, and symbols relative to their translation. */
function pathPoints({ attributes }: Element): [number, number][] {
  const [dx = 0, dy = 0] =
    /translate\((\S+) (\S+)\)/
      .exec(attributes['transform'] ?? '')
      ?.slice(1)
      .map(Number) ?? [];
  return [...(attributes['d'] ?? '').matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x) + dx, Number(y) + dy]);
}

const ALL = [...FIGURES, ...ODD];

describe.each(ALL)('$id', (figure) => {
  const svg = figureSvg(figure);
  const elements = elementsOf(svg);
  const root = elements.find(({ name }) => name === 'svg') as Element;
  const width = Number(root.attributes['width']);
  const height = Number(root.attributes['height']);

  test('is a picture with a name and a description, and loads and runs nothing', () => {
    expect(root.attributes).toMatchObject({ role: 'img', viewBox: `0 0 ${width} ${height}`, 'aria-labelledby': `${figure.id}-title ${figure.id}-text` });
    expect(elements.slice(1, 3).map(({ name, attributes }) => [name, attributes['id']])).toEqual([
      ['title', `${figure.id}-title`],
      ['desc', `${figure.id}-text`],
    ]);
    expect(elements[1]?.text).toBe(figure.title);
    expect(svg).not.toMatch(/<script|<foreignObject|<image|href|url\(|@import|\bon\w+=/i);
    expect(svg.match(/https?:\/\/[^"]+/g)).toEqual(['http://www.w3.org/2000/svg']);
    expect(svg).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u202a-\u202e]/);
  });

  test('is the same on every run, in numbers of two decimals at most', () => {
    expect(figureSvg(figure)).toBe(svg);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|="[^"]*\d\.\d{3}|"-0"/);
  });

  test('everything lies inside the view box', () => {
    const outside: string[] = [];
    const look = (x: number, y: number, what: string): void => {
      if (!(x >= 0 && x <= width && y >= 0 && y <= height)) outside.push(`${what} at ${x}, ${y}`);
    };
    let points = 0;
    for (const element of elements) {
      const number = (key: string): number => Number(element.attributes[key]);
      if (element.name === 'path') for (const [x, y] of pathPoints(element)) look(x, y, 'path');
      if (element.name === 'line') for (const i of [1, 2]) look(number(`x${i}`), number(`y${i}`), 'line');
      if (element.name === 'rect') look(number('x') || 0, number('y') || 0, 'rectangle');
      if (element.name !== 'text') continue;
      const { along, across, turned } = textSpan(element);
      for (const end of along) look(turned ? across : end, turned ? -end : across, element.text);
      points += 1;
    }
    expect(points).toBeGreaterThan(10);
    expect(outside).toEqual([]);
  });
});

describe('what a figure says', () => {
  test('axes carry quantity and unit, and end at round ticks that hold every point', () => {
    const { ranges } = layoutOf(PRESSURE_FLOW);
    expect([ranges.x.from, ranges.x.to, ranges.y.from, ranges.y.to]).toEqual([0, 50, 0, 50]);
    expect(ranges.x.ticks.map(({ text }) => text)).toEqual(['0', '5', '10', '15', '20', '25', '30', '35', '40', '45', '50']);
    expect(textsOf(figureSvg(PRESSURE_FLOW))).toEqual(expect.arrayContaining(['Flow of metal, l/s', 'Metal pressure, MPa']));
  });

  test('a ratio has no unit after its name', () => {
    const pure: Figure = { ...GAS_TIME, y: { title: 'Share filled', unit: '1' } };
    expect(textsOf(figureSvg(pure))).toContain('Share filled');
  });

  test('the right axis has as many steps as the left, so one grid serves both, and the legend names it', () => {
    const { ranges } = layoutOf(STROKE_PROFILE);
    expect(ranges.right?.ticks).toHaveLength(ranges.y.ticks.length);
    expect(ranges.right?.to).toBeGreaterThanOrEqual(66);
    expect(textsOf(figureSvg(STROKE_PROFILE))).toEqual(expect.arrayContaining(['Metal pressure, MPa', 'Metal pressure (right axis)']));
  });

  test.each(FIGURES)('$id names every curve and mark beside it, and every curve and area in the legend', (figure) => {
    const texts = textsOf(figureSvg(figure));
    const count = (title: string): number => texts.filter((text) => text === title || text.startsWith(`${title} (`)).length;
    for (const { title } of figure.areas) expect(count(title), title).toBe(1);
    for (const { title } of figure.curves.filter((curve) => /^[\w %,-]+$/.test(curve.title))) expect(count(title), title).toBeGreaterThanOrEqual(2);
    for (const { title } of figure.marks.filter((mark) => /^[\w %,-]+$/.test(mark.title))) expect(count(title), title).toBeGreaterThanOrEqual(1);
  });

  test('signs of a name are escaped, and characters that act are named', () => {
    const svg = figureSvg(GAS_TIME);
    expect(svg).toContain('A|B *x* _y_ &lt;b&gt;bold&lt;/b&gt; &amp;amp; [l](u) ~s~ $m$ `c` &lt;U+001B&gt;[31mred&lt;U+202E&gt;');
    expect(svg).not.toContain('<b>');
  });

  test('what looks like a reference of XML or HTML is shown as it stands', () => {
    const svg = figureSvg({ ...GAS_TIME, title: 'a &nbsp; b &#60; c & d &lt; e', text: ']]> <!-- " \'' });
    expect(svg).toContain('<title id="gas-time-title">a &amp;nbsp; b &amp;#60; c &amp; d &amp;lt; e</title>');
    expect(svg).toContain('<desc id="gas-time-text">]]&gt; &lt;!-- " \'</desc>');
  });

  test('curves are told apart by pattern as well as by colour, and dashed ones read as dashed', () => {
    const looks = elementsOf(figureSvg(PRESSURE_FLOW)).filter(({ name, attributes }) => name === 'path' && /^curve/.test(attributes['class'] ?? ''));
    const drawn = looks.slice(0, PRESSURE_FLOW.curves.length).map(({ attributes }) => attributes['stroke-dasharray'] ?? '');
    expect(new Set(drawn).size).toBe(drawn.length);
    expect(drawn[0]).toBe('');
    const longest = (pattern: string): number => Math.max(...pattern.split(' ').map(Number));
    PRESSURE_FLOW.curves.forEach((curve, i) => {
      if (i > 0) expect(longest(drawn[i] ?? '') >= 10, curve.title).toBe(curve.dashed !== true);
    });
  });

  test('a curve has a gap where a sample is no number', () => {
    const gaps = ODD.find(({ id }) => id === 'gaps') as Figure;
    const path = elementsOf(figureSvg(gaps)).find(({ attributes }) => attributes['class'] === 'curve c1');
    expect(path?.attributes['d']?.match(/M/g)).toHaveLength(2);
  });
});

describe('labels', () => {
  test.each(FIGURES)('of $id do not lie over one another', (figure) => {
    const labels = elementsOf(figureSvg(figure)).filter(({ name, attributes }) => name === 'text' && /label|tick|title/.test(attributes['class'] ?? ''));
    const boxes = labels
      .filter(({ attributes }) => attributes['transform'] === undefined)
      .map(({ attributes, text }) => {
        const look = attributes['class'] ?? '';
        const anchor = look.includes('middle') ? 'middle' : /\bend\b/.test(look) ? 'end' : 'start';
        return { text, box: textBox(text, 13, { x: Number(attributes['x']), y: Number(attributes['y']), anchor }) };
      });
    const clashes = boxes.flatMap((one, i) => boxes.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) > 0 ? [`${one.text} / ${other.text}`] : [])));
    expect(boxes.length).toBeGreaterThan(12);
    expect(clashes).toEqual([]);
  });

  test('of upright lines lie beside their own line and across no other', () => {
    const { upright, plot } = layoutOf(STROKE_PROFILE);
    expect(upright).toHaveLength(6);
    for (const one of upright) {
      const right = one.flag.side === 'right';
      const box = textBox(one.text, 13, { x: right ? one.x + 4 : one.x - 4, y: 0, anchor: right ? 'start' : 'end' });
      expect(box.left).toBeGreaterThan(plot.left);
      for (const other of upright)
        if (other !== one && other.x > box.left && other.x < box.right) expect(other.flag.row, `${one.text} over ${other.text}`).toBeLessThan(one.flag.row);
    }
  });
});

/** Linear light of a colour, sRGB (IEC 61966-2-1). */
function light(colour: string): number[] {
  return [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
}

const mix = (weights: readonly number[], colour: readonly number[]): number => weights.reduce((sum, weight, i) => sum + weight * (colour[i] ?? 0), 0);

/** Contrast ratio, WCAG 2.2 (relative luminance with its coefficients). */
function contrast(one: string, other: string): number {
  const [dark = 0, bright = 0] = [one, other].map((colour) => mix([0.2126, 0.7152, 0.0722], light(colour))).sort((a, b) => a - b);
  return (bright + 0.05) / (dark + 0.05);
}

/** What is seen without one kind of cone: Machado, Oliveira and Fernandes 2009, severity 1; the matrices are typed from memory. */
const VISIONS: Readonly<Record<string, readonly (readonly number[])[]>> = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'without long-wave cones': [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  'without middle-wave cones': [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  'without short-wave cones': [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE 1976 L*a*b* under D65. */
function lab(colour: readonly number[]): number[] {
  const root = (t: number): number => (t > 0.008856 ? Math.cbrt(t) : 7.787 * t + 16 / 116);
  const [x = 0, y = 0, z = 0] = [
    mix([0.4124, 0.3576, 0.1805], colour) / 0.9505,
    mix([0.2126, 0.7152, 0.0722], colour),
    mix([0.0193, 0.1192, 0.9505], colour) / 1.089,
  ].map(root);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

describe.each([
  ['light', 0],
  ['dark', 1],
] as const)('colours, %s', (_, scheme) => {
  const curves = CURVE_COLOURS.map((pair) => pair[scheme]);

  test('text and lines stand out from the ground', () => {
    for (const colour of [INK[scheme], ...curves]) expect(contrast(colour, GROUND[scheme]), colour).toBeGreaterThanOrEqual(4.5);
  });

  test.each(Object.entries(VISIONS))('curves differ in %s vision', (_name, matrix) => {
    const seen = curves.map((colour) => lab(matrix.map((row) => Math.min(1, Math.max(0, mix(row, light(colour)))))));
    seen.forEach((one, i) => {
      seen.slice(i + 1).forEach((other, j) => {
        const distance = Math.hypot(...one.map((value, k) => value - (other[k] ?? 0)));
        expect(distance, `${curves[i]} and ${curves[i + j + 1]}`).toBeGreaterThan(20);
      });
    });
  });
});
