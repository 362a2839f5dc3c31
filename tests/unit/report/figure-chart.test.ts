import { describe, expect, test } from 'vitest';
import type { Chart } from '../../../src/engine/plan.ts';
import { layoutOf } from '../../../src/report/figure/chart/layout.ts';
import { CURVE_COLOURS } from '../../../src/report/figure/chart/style.ts';
import { figureSvg } from '../../../src/report/figure/index.ts';
import { overlap, textBox } from '../../../src/report/figure/place.ts';
import { GROUND } from '../../../src/report/figure/style.ts';
import { contrast, distance, VISIONS } from './colour.ts';
import { FIGURES, GAS_TIME, ODD, PRESSURE_FLOW, STROKE_PROFILE } from './hand-made-figures.ts';
import { elementsOf, textsOf } from './svg.ts';

describe('what a figure says', () => {
  test('axes carry quantity and unit, and end at round ticks that hold every point', () => {
    const { ranges } = layoutOf(PRESSURE_FLOW);
    expect([ranges.x.from, ranges.x.to, ranges.y.from, ranges.y.to]).toEqual([0, 50, 0, 50]);
    expect(ranges.x.ticks.map(({ text }) => text)).toEqual(['0', '5', '10', '15', '20', '25', '30', '35', '40', '45', '50']);
    expect(textsOf(figureSvg(PRESSURE_FLOW))).toEqual(expect.arrayContaining(['Flow of metal, l/s', 'Metal pressure, MPa']));
  });

  test('a ratio has no unit after its name', () => {
    const pure: Chart = { ...GAS_TIME, y: { title: 'Share filled', unit: '1' } };
    expect(textsOf(figureSvg(pure))).toContain('Share filled');
  });

  test('the right axis has as many steps as the left, so one grid serves both, and the legend names it', () => {
    const { ranges } = layoutOf(STROKE_PROFILE);
    expect(ranges.right?.ticks).toHaveLength(ranges.y.ticks.length);
    expect(ranges.right?.to).toBeGreaterThanOrEqual(66);
    expect(textsOf(figureSvg(STROKE_PROFILE))).toEqual(expect.arrayContaining(['Metal pressure, MPa', 'Metal pressure (right axis)']));
  });

  test('the grid of two axes is the one that leaves least of both empty: a share ends at 100 %', () => {
    const cooling: Chart = {
      ...STROKE_PROFILE,
      right: { title: 'Share that is solid', unit: '%' },
      curves: [
        { title: 'Temperature', points: [[0, 634] as const, [9, 300] as const] },
        { title: 'Solid', points: [[0, 0] as const, [2, 100] as const], axis: 'right' },
      ],
      marks: [],
    };
    const { y, right } = layoutOf(cooling).ranges;
    expect([y.to, right?.to, right?.ticks.map(({ text }) => text)]).toEqual([800, 100, ['0', '25', '50', '75', '100']]);
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
    const gaps = ODD.find(({ id }) => id === 'gaps') as Chart;
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

describe.each([
  ['light', 0],
  ['dark', 1],
] as const)('colours, %s', (_, scheme) => {
  const curves = CURVE_COLOURS.map((pair) => pair[scheme]);

  test('curves and their labels stand out from the ground', () => {
    for (const colour of curves) expect(contrast(colour, GROUND[scheme]), colour).toBeGreaterThanOrEqual(4.5);
  });

  test.each(Object.entries(VISIONS))('curves differ in %s vision', (_name, matrix) => {
    curves.forEach((one, i) => {
      for (const other of curves.slice(i + 1)) expect(distance(one, other, matrix), `${one} and ${other}`).toBeGreaterThan(20);
    });
  });
});
