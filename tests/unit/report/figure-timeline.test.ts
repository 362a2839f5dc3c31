import { describe, expect, test } from 'vitest';
import type { Timeline } from '../../../src/engine/plan.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { figureSvg } from '../../../src/report/figure/index.ts';
import { GROUND } from '../../../src/report/figure/style.ts';
import { BAR_COLOURS } from '../../../src/report/figure/timeline/style.ts';
import { contrast } from './colour.ts';
import { CYCLE_TIME, ODD_TIMELINES, SHIFTS, TIMELINES } from './hand-made-timelines.ts';
import { boxOf, clashesIn, type Element, elementsOf, sizeOf, textsOf } from './svg.ts';

const svg = figureSvg(CYCLE_TIME);
const elements = elementsOf(svg);
const bars = elements.filter(({ name, attributes }) => name === 'rect' && /^(bar|strong)$/.test(attributes['class'] ?? ''));
/** Bars in the order of their rows; the last is the sample of the legend. */
const drawn = bars.slice(0, -1).sort((one, other) => Number(one.attributes['y']) - Number(other.attributes['y']));
const size = (bar: Element | undefined, key: string): number => Number(bar?.attributes[key]);

const odd = (id: string): Timeline => ODD_TIMELINES.find((figure) => figure.id === id) as Timeline;

describe('bars', () => {
  test('a row each, over a time axis with round ticks that holds the total', () => {
    expect(drawn).toHaveLength(CYCLE_TIME.rows.length);
    const ticks = elements.filter(({ attributes }) => (attributes['class'] ?? '').startsWith('tick')).map(({ text }) => text);
    expect(ticks).toEqual(['0', '5', '10', '15', '20', '25', '30', '35']);
    expect(textsOf(svg)).toContain('Time, s');
  });

  test('are as long as what they stand for, but for those too short to be seen', () => {
    const long = CYCLE_TIME.rows.map(({ bars: [bar] }) => (bar === undefined ? 0 : bar.to - bar.from));
    const scale = size(drawn[4], 'width') / (long[4] ?? 0);
    drawn.forEach((bar, i) => {
      expect(size(bar, 'width'), CYCLE_TIME.rows[i]?.title ?? '').toBeCloseTo(Math.max(4, scale * (long[i] ?? 0)), 1);
    });
    expect(size(drawn[3], 'width')).toBe(4);
  });

  test('each has its number beside it, and the total stands at the end', () => {
    const numbers = elements.filter(({ name, attributes }) => name === 'text' && (attributes['class'] ?? '').startsWith('label'));
    for (const [i, words] of ['2.4 s', '3.1 s', '1.35 s', '0.04 s', '8.2 s', '2.2 s', '1.5 s', '0.9 s', '3 s', '6.4 s', '1.8 s'].entries()) {
      const [bar, number] = [
        drawn[i],
        numbers.find(({ text, attributes }) => text === words && Math.abs(Number(attributes['y']) - size(drawn[i], 'y') - 14) < 2),
      ];
      expect(Number(number?.attributes['x']) - size(bar, 'x') - size(bar, 'width'), words).toBeCloseTo(7, 1);
    }
    expect(textsOf(svg)).toEqual(expect.arrayContaining(['Total', '30.9 s']));
  });

  test('that govern differ by lightness, pattern and weight, and the legend says so', () => {
    expect(bars.filter(({ attributes }) => attributes['class'] === 'strong')).toHaveLength(2);
    expect(drawn[4]?.attributes['fill']).toBe('url(#cycle-time-strong)');
    expect(elements.find(({ text, name }) => name === 'text' && text === '8.2 s')?.attributes['class']).toBe('label heavy');
    expect(textsOf(svg)).toContain('Governs the time');
    expect(textsOf(figureSvg(odd('zero-length')))).not.toContain('Governs the time');
  });

  test.each(['light', 'dark'])('stand out from the ground, and those that govern from the others, %s', (name) => {
    const scheme = name === 'light' ? 0 : 1;
    const { plain, strong } = BAR_COLOURS;
    for (const { edge } of [plain, strong]) expect(contrast(edge[scheme], GROUND[scheme])).toBeGreaterThanOrEqual(3);
    expect(contrast(strong.fill[scheme], plain.fill[scheme])).toBeGreaterThanOrEqual(3);
  });
});

describe('words', () => {
  test.each([...TIMELINES, ...ODD_TIMELINES])('of $id do not lie over one another', (figure) => {
    expect(clashesIn(figureSvg(figure))).toEqual([]);
  });

  test('a long name wraps and is cut in its third line, and stays left of the plot', () => {
    const shifts = figureSvg(SHIFTS);
    expect(textsOf(shifts)).toEqual(expect.arrayContaining(['A name of many words that', 'says more than any row has', 'room for, and goes on and…']));
    const left = Math.min(...elementsOf(shifts).flatMap(({ attributes }) => (attributes['class'] === 'axis' ? [Number(attributes['x1'])] : [])));
    const names = elementsOf(shifts).filter(({ name, attributes }) => name === 'text' && attributes['x'] === '16' && attributes['class'] !== 'title');
    expect(names.length).toBeGreaterThan(10);
    for (const element of names) expect(boxOf(element, sizeOf(shifts)).right, element.text).toBeLessThan(left);
  });

  test('numbers that have no room beside their bars stand together behind, before or below them', () => {
    const texts = textsOf(figureSvg(SHIFTS));
    expect(texts.filter((text) => text === '1 s, 1 s, 1 s')).toHaveLength(2);
    expect(texts.join(' ').match(/0\.311 s/g)).toHaveLength(40);
    expect(texts).toContain('0 s');
  });
});

describe('digits', () => {
  const value = (id: string, number: number, decimals?: number): [string, Traced] => {
    const traced = Traced.assumption(id, number, 's', { note: 'test', status: 'practice' });
    return [id, decimals === undefined ? traced : traced.printedWith(decimals)];
  };
  const figure: Timeline = {
    ...CYCLE_TIME,
    rows: [
      { title: 'Rough', bars: [{ from: 0, to: 1.349, values: ['cycle.slow-shot'] }] },
      { title: 'Fine', bars: [{ from: 1.349, to: 1.3896, values: ['cycle.fill'] }] },
    ],
  };

  test('are those of the value that a bar shows, and the total is no finer than its bars', () => {
    const texts = textsOf(figureSvg(figure, new Map([value('cycle.slow-shot', 1.349, 1), value('cycle.fill', 0.0406)])));
    expect(texts).toEqual(expect.arrayContaining(['1.3 s', '0.0406 s', '1.4 s']));
  });

  test('are three where no value says otherwise', () => {
    expect(textsOf(figureSvg(figure))).toEqual(expect.arrayContaining(['1.35 s', '0.0406 s', '1.39 s']));
  });
});

describe('what cannot be drawn', () => {
  test.each(['no-rows', 'no-bars', 'not-numbers'])('%s says that there is nothing', (id) => {
    const texts = textsOf(figureSvg(odd(id)));
    expect(texts).toContain('Nothing to draw');
    expect(texts).not.toContain('Total');
  });

  test('a bar without length is seen, and one before 0 counts in the total', () => {
    expect(textsOf(figureSvg(odd('zero-length')))).toContain('0 s');
    expect(textsOf(figureSvg(odd('early'))).filter((text) => text === '7 s')).toHaveLength(2);
  });
});
