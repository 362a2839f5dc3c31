import { describe, expect, test } from 'vitest';
import type { Drawing, ShapeRole } from '../../../src/engine/plan.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { LOOKS } from '../../../src/report/figure/drawing/looks.ts';
import { figureSvg } from '../../../src/report/figure/index.ts';
import { GROUND } from '../../../src/report/figure/style.ts';
import { contrast, distance, VISIONS } from './colour.ts';
import { CROWDED, DRAWINGS, FLAT, FOUR_CAVITIES, ODD_DRAWINGS } from './hand-made-drawings.ts';
import { boxOf, clashesIn, type Element, elementsOf, pathPoints, sizeOf, textsOf } from './svg.ts';

const svg = figureSvg(FOUR_CAVITIES);
const elements = elementsOf(svg);
const number = (element: Element | undefined, key: string): number => Number(element?.attributes[key]);
const odd = (id: string): Drawing => ODD_DRAWINGS.find((figure) => figure.id === id) as Drawing;

/** Shapes of a role as drawn; the last is the sample of the legend. */
const shapes = (role: ShapeRole, of = elements): Element[] => of.filter(({ attributes }) => (attributes['class'] ?? '').startsWith(`shape ${role}`));
const block = shapes('steel')[0];
const scale = number(block, 'width') / 520;

describe('scale', () => {
  test('is the same across and up, and y grows upward', () => {
    expect(number(block, 'height') / 560).toBeCloseTo(scale, 3);
    const [lowerLeft, , , upperLeft] = shapes('bar');
    expect(number(lowerLeft, 'cy')).toBeGreaterThan(number(upperLeft, 'cy'));
    expect((number(lowerLeft, 'cy') - number(upperLeft, 'cy')) / 640).toBeCloseTo(scale, 3);
    expect((2 * number(lowerLeft, 'r')) / 110).toBeCloseTo(scale, 3);
  });

  test('is given by a bar of a round length', () => {
    const bar = elements.find(({ attributes }) => attributes['class'] === 'scale');
    const text = textsOf(svg).at(-1);
    expect(text).toBe('200 mm');
    expect(number(bar, 'width') / 200).toBeCloseTo(scale, 3);
    for (const figure of [...DRAWINGS, odd('one-shape'), odd('great-drawing'), odd('small-drawing')])
      expect(textsOf(figureSvg(figure)).at(-1), figure.id).toMatch(/^[125]0* (mm|cm)$|^[125]\.00e[+-]\d+ mm$/);
  });

  test.each([...DRAWINGS, ...ODD_DRAWINGS])('$id is 800 pixels wide and 700 high at most', (figure) => {
    const root = elementsOf(figureSvg(figure))[0];
    expect(number(root, 'width')).toBe(800);
    expect(number(root, 'height')).toBeLessThanOrEqual(700);
  });
});

describe('roles', () => {
  test('of the legend are those that are drawn, in the order given', () => {
    const titles = FOUR_CAVITIES.roles.map(({ title }) => title);
    expect(textsOf(svg).filter((text) => titles.includes(text))).toEqual(titles);
    expect(textsOf(figureSvg(FLAT)).filter((text) => titles.includes(text))).toEqual(['Die block', 'Cavity', 'Cooling line']);
    expect(textsOf(figureSvg(CROWDED))).not.toContain('Named twice');
    expect(elementsOf(figureSvg(FLAT)).flatMap(({ name, attributes }) => (name === 'pattern' ? [attributes['id']] : []))).toEqual([
      'flat-plate-steel',
      'flat-plate-cavity',
      'flat-plate-line',
    ]);
  });

  test('differ by pattern: no two have the same tile, and an outline has none', () => {
    const patterns = Object.values(LOOKS).map(({ pattern }) => pattern);
    expect(new Set(patterns).size).toBe(patterns.length);
    for (const { attributes } of shapes('outline')) expect(attributes['fill']).toBe('none');
  });

  test('a line along a path is a stroke, and any other path is closed', () => {
    expect(shapes('line').map(({ attributes }) => attributes['class'])).toEqual(['shape line stroke', 'shape line stroke', 'shape line stroke']);
    for (const { attributes } of shapes('line')) expect(attributes['d']).not.toContain('Z');
    expect(shapes('feeder')[0]?.attributes['d']).toMatch(/Z$/);
  });

  test.each([
    ['light', 0],
    ['dark', 1],
  ] as const)('have edges that stand out, %s', (_, scheme) => {
    for (const [role, { edge }] of Object.entries(LOOKS)) expect(contrast(edge[scheme], GROUND[scheme]), role).toBeGreaterThanOrEqual(3);
  });

  test.each([
    ['light', 0],
    ['dark', 1],
  ] as const)('have faces that differ in every vision, %s', (_, scheme) => {
    const faces = Object.values(LOOKS).map(({ fill }) => fill[scheme]);
    for (const [name, matrix] of Object.entries(VISIONS))
      faces.forEach((one, i) => {
        for (const other of faces.slice(i + 1)) expect(distance(one, other, matrix), `${one} and ${other}, ${name}`).toBeGreaterThan(9);
      });
  });
});

describe('dimensions', () => {
  const labels = elements.filter(({ name, attributes }) => name === 'text' && (attributes['class'] ?? '').startsWith('label'));

  test('name and length stand at lines outside all shapes', () => {
    expect(labels.map(({ text }) => text)).toEqual([
      'Block, 520 mm',
      'Block, 560 mm',
      'Between tie bars, 610 mm',
      'Between tie bars, 530 mm',
      'Steel around, 70 mm',
      'Cavity, 140 mm',
      'Platen, 980 mm',
    ]);
    const platen = shapes('outline')[0];
    const [left, top] = [number(platen, 'x'), number(platen, 'y')];
    const [right, bottom] = [left + number(platen, 'width'), top + number(platen, 'height')];
    for (const label of labels) {
      const box = boxOf(label, sizeOf(svg));
      expect(box.right < left || box.left > right || box.bottom < top || box.top > bottom, label.text).toBe(true);
    }
    const lines = elements.filter(({ attributes }) => attributes['class'] === 'dimension');
    expect(lines).toHaveLength(7);
    for (const line of lines) {
      const [x1, x2, y1, y2] = ['x1', 'x2', 'y1', 'y2'].map((key) => number(line, key)) as [number, number, number, number];
      expect(Math.max(x1, x2) < left || Math.min(x1, x2) > right || Math.max(y1, y2) < top || Math.min(y1, y2) > bottom).toBe(true);
    }
  });

  test('lines are as long as what they measure, with an arrowhead at either end and a line to each point', () => {
    const lines = elements.filter(({ attributes }) => attributes['class'] === 'dimension');
    const lengths = lines.map((line) => Math.hypot(number(line, 'x2') - number(line, 'x1'), number(line, 'y2') - number(line, 'y1')) / scale);
    for (const [i, length] of [520, 560, 610, 530, 70, 140, 980].entries()) expect(Math.abs((lengths[i] ?? 0) - length)).toBeLessThan(0.1);
    const arrows = elements.filter(({ attributes }) => attributes['class'] === 'arrow');
    expect(arrows).toHaveLength(14);
    lines.forEach((line, i) => {
      const tips = arrows.slice(2 * i, 2 * i + 2).map((arrow) => pathPoints(arrow)[0]);
      expect(tips).toEqual([
        [number(line, 'x1'), number(line, 'y1')],
        [number(line, 'x2'), number(line, 'y2')],
      ]);
    });
    expect(elements.filter(({ attributes }) => attributes['class'] === 'extension')).toHaveLength(14);
  });

  test('a short line has its arrowheads outside', () => {
    const flat = elementsOf(figureSvg(FLAT));
    const line = flat.find(({ attributes }) => attributes['class'] === 'dimension');
    const tips = flat.filter(({ attributes }) => attributes['class'] === 'arrow').map((arrow) => pathPoints(arrow)[0]?.[1] ?? 0);
    expect(Math.abs(number(line, 'y2') - number(line, 'y1'))).toBeGreaterThan(Math.abs((tips[0] ?? 0) - (tips[1] ?? 0)) + 20);
  });

  test.each([...DRAWINGS, ...ODD_DRAWINGS])('words of $id do not lie over one another', (figure) => {
    expect(clashesIn(figureSvg(figure))).toEqual([]);
  });

  test('a long name is cut, and the length stays', () => {
    expect(textsOf(figureSvg(CROWDED)).filter((text) => text.includes('…, '))).toEqual([
      expect.stringMatching(/^A\|B .*…, 140 cm$/),
      expect.stringMatching(/^Upright with .*…, 530 cm$/),
    ]);
  });

  test('a slanting line stands outside as well, and gives its own length', () => {
    expect(textsOf(figureSvg(CROWDED))).toEqual(expect.arrayContaining(['Diagonal of the block, 764 cm', 'Between opposite bars, 963 cm']));
  });

  test('of so many that they leave no room, the longest are drawn', () => {
    const texts = textsOf(figureSvg(odd('many-shapes'))).filter((text) => text.startsWith('Pitch'));
    expect(texts).toHaveLength(12);
    expect(texts.filter((text) => text.endsWith(' 150 mm'))).toHaveLength(3);
  });

  test('digits are those of the value that a dimension shows', () => {
    const width = Traced.assumption('die.width', 520, 'mm', { note: 'test', status: 'practice' }).printedWith(2);
    const [first, ...others] = FOUR_CAVITIES.dimensions;
    const figure = { ...FOUR_CAVITIES, dimensions: [...(first === undefined ? [] : [{ ...first, values: ['die.width'] }]), ...others] };
    expect(textsOf(figureSvg(figure, new Map([['die.width', width]])))).toEqual(expect.arrayContaining(['Block, 520.00 mm', 'Block, 560 mm']));
  });
});

describe('what cannot be drawn', () => {
  test.each(['no-shapes', 'one-point', 'not-numbers-drawn'])('%s says that there is nothing', (id) => {
    const found = elementsOf(figureSvg(odd(id)));
    expect(found.filter(({ name }) => name === 'text').map(({ text }) => text)).toEqual([FOUR_CAVITIES.title, 'Nothing to draw']);
  });

  test('a path goes on where a point of it is no number', () => {
    const [path] = shapes('feeder', elementsOf(figureSvg(odd('some-numbers'))));
    expect(pathPoints(path as Element)).toHaveLength(3);
  });
});
