import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { figureSvg } from '../../../src/report/figure/index.ts';
import { FAINT, GROUND, INK } from '../../../src/report/figure/style.ts';
import { planJson } from '../../../src/report/json.ts';
import { markdownText } from '../../../src/report/markdown/index.ts';
import { planJsonSchema } from '../../../src/report/plan-schema.ts';
import { visibleLine } from '../../../src/report/visible.ts';
import { contrast } from './colour.ts';
import { handMade } from './hand-made.ts';
import { DRAWINGS, FOUR_CAVITIES, ODD_DRAWINGS } from './hand-made-drawings.ts';
import { FIGURES, ODD, PRESSURE_FLOW } from './hand-made-figures.ts';
import { CYCLE_TIME, ODD_TIMELINES, TIMELINES } from './hand-made-timelines.ts';
import { boxOf, type Element, elementsOf, pathPoints, sizeOf } from './svg.ts';

const ALL = [...FIGURES, ...ODD, ...TIMELINES, ...ODD_TIMELINES, ...DRAWINGS, ...ODD_DRAWINGS];

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
    expect(elements[1]?.text).toBe(visibleLine(figure.title));
    expect(svg).not.toMatch(/<script|<foreignObject|<image|href|url\((?!#)|@import|\bon\w+=/i);
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
    let texts = 0;
    for (const element of elements) {
      const number = (key: string): number => Number(element.attributes[key] ?? 0);
      if (element.name === 'path') for (const [x, y] of pathPoints(element)) look(x, y, 'path');
      if (element.name === 'line') for (const i of [1, 2]) look(number(`x${i}`), number(`y${i}`), 'line');
      if (element.name === 'rect') for (const i of [0, 1]) look(number('x') + i * number('width'), number('y') + i * number('height'), 'rectangle');
      if (element.name === 'circle') for (const r of [-number('r'), number('r')]) look(number('cx') + r, number('cy') + r, 'circle');
      if (element.name !== 'text') continue;
      const box = boxOf(element, sizeOf(svg));
      look(box.left, box.top, element.text);
      look(box.right, box.bottom, element.text);
      texts += 1;
    }
    expect(texts).toBeGreaterThan(1);
    expect(outside).toEqual([]);
  });

  test('what fills a shape is in the same document, under a name of its own', () => {
    const ids = elements.flatMap(({ attributes: { id } }) => (id === undefined ? [] : [id]));
    expect(new Set(ids).size).toBe(ids.length);
    const used = elements.flatMap(({ attributes: { fill } }) => /^url\(#(.*)\)$/.exec(fill ?? '')?.[1] ?? []);
    expect(used.filter((id) => !ids.includes(id) || !id.startsWith(`${figure.id}-`))).toEqual([]);
  });

  test('the dark scheme gives a colour to all that the light one does, and every class that is used has a rule', () => {
    const [light, dark, ...more] = elements.find(({ name }) => name === 'style')?.text.split(/@media \(prefers-color-scheme: dark\) \{/) ?? [];
    expect(more).toEqual([]);
    const coloured = (sheet = ''): string[] => [...sheet.matchAll(/([^{}]+) \{ [^{}]*#[0-9a-f]{6}/g)].map(([, names = '']) => names.trim()).sort();
    expect(coloured(dark)).toEqual(coloured(light));
    expect(coloured(light).length).toBeGreaterThan(5);
    const named = new Set([...(light ?? '').matchAll(/\.([a-z][\w-]*)/g)].map(([, name]) => name));
    const used = new Set(elements.flatMap(({ attributes }) => (attributes['class'] ?? '').split(' ').filter((name) => name !== '')));
    expect([...used].filter((name) => !named.has(name))).toEqual([]);
  });
});

test('figures that can share a page have names of their own', () => {
  expect(new Set(ALL.map(({ id }) => id)).size).toBe(ALL.length);
});

test.each([0, 1] as const)('text stands out from the ground (scheme %i)', (scheme) => {
  for (const colour of [INK, FAINT]) expect(contrast(colour[scheme], GROUND[scheme])).toBeGreaterThanOrEqual(4.5);
});

test.each([PRESSURE_FLOW, CYCLE_TIME, FOUR_CAVITIES])('JSON names a $form, and Markdown links it or says what it shows', (figure) => {
  const plan = handMade({ sections: [{ id: 'shot', title: 'Shot', blocks: [figure] }] });
  const drawn = JSON.parse(planJson(plan));
  expect(drawn.sections.shot.blocks).toEqual([{ kind: 'figure', id: figure.id, title: figure.title }]);
  const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(planJsonSchema());
  expect(validate(drawn), JSON.stringify(validate.errors)).toBe(true);
  expect(markdownText(plan, { figures: new Map([[figure.id, `plan-${figure.id}.svg`]]) })).toContain(`\n![${figure.text}](plan-${figure.id}.svg)\n`);
  expect(markdownText(plan)).toContain(`\nFigure "${figure.title}", drawn with \`--format markdown=FILE\`: ${figure.text}\n`);
});
