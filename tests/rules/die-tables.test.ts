import { describe, expect, it } from 'vitest';
import { figureAt } from './tables.ts';

type Row = readonly [id: string, at: Readonly<Record<string, string | number>>, column: string, value: number, status: string];

const hardness = (component: string, steel: string, group: string, least: number, greatest: number): Row[] => [
  ['die/hardness', { component, steel, group }, 'least', least, 'source'],
  ['die/hardness', { component, steel, group }, 'greatest', greatest, 'source'],
];
const grade = (name: string, element: string, least: number | undefined, greatest: number): Row[] => [
  ...(least === undefined ? [] : [['die/grade', { grade: name, element }, 'least', least, 'source'] as const]),
  ['die/grade', { grade: name, element }, 'greatest', greatest, 'source'],
];
const life = (
  family: string,
  average: number,
  greatest: number,
  die: readonly [number, number],
  cores: readonly [number, number],
  status = 'source',
): Row[] => [
  ['die/life', { family }, 'average', average, status],
  ['die/life', { family }, 'greatest', greatest, status],
  ['die/life', { family }, 'brochure_least', die[0], 'memory'],
  ['die/life', { family }, 'brochure_greatest', die[1], 'memory'],
  ['die/life', { family }, 'core_least', cores[0], 'memory'],
  ['die/life', { family }, 'core_greatest', cores[1], 'memory'],
];

/** Typed a second time from the works themselves. */
const published: Readonly<Record<string, readonly Row[]>> = {
  'table of die component materials': [
    ...hardness('cavity', 'H13 premium', 'zinc', 46, 50),
    ...hardness('cavity', 'H11', 'aluminium', 42, 48),
    ...hardness('cavity', 'H13 superior', 'aluminium', 42, 48),
    ...hardness('cavity', '1.2367', 'copper', 38, 44),
    ...hardness('cavity', 'H21', 'copper', 44, 48),
    ...hardness('cores', 'H13', 'zinc', 46, 52),
    ...hardness('cores', 'H13', 'aluminium', 44, 48),
    ...hardness('cores', '1.2367', 'copper', 40, 46),
    ...hardness('core pins', 'H13', 'zinc', 48, 52),
    ...hardness('core pins', '1.2367', 'aluminium', 37, 40),
    ...hardness('sprue parts', 'H13', 'zinc', 48, 52),
    ...hardness('sprue parts', 'H13', 'aluminium', 46, 48),
    ...hardness('sprue parts', '1.2367', 'aluminium', 44, 46),
    ...hardness('sprue parts', '1.2367', 'copper', 42, 46),
    ...hardness('nozzle', '420', 'zinc', 40, 44),
    ...hardness('nozzle', 'H13', 'aluminium', 42, 48),
    ...hardness('shot sleeve', 'H13', 'zinc', 46, 50),
    ...hardness('shot sleeve', 'H13', 'aluminium', 42, 48),
    ...hardness('shot sleeve', '1.2367', 'copper', 42, 46),
    ...hardness('ejector pins', 'H13 nitrided', 'zinc', 46, 50),
    ['die/hardness', { component: 'cavity', steel: 'P20', group: 'zinc' }, 'brinell_least', 290, 'source'],
    ['die/hardness', { component: 'cavity', steel: 'P20', group: 'zinc' }, 'brinell_greatest', 330, 'source'],
    ['die/hardness', { component: 'holder block', steel: '4140', group: 'zinc' }, 'brinell_least', 300, 'source'],
  ],
  'acceptance criteria #207-2006, slides': [
    ...grade('grade A', 'C', 0.37, 0.42),
    ...grade('grade A', 'S', undefined, 0.005),
    ...grade('grade A', 'Mo', 1.2, 1.75),
    ...grade('grade A', 'V', 0.8, 1.2),
    ...grade('grade B', 'P', undefined, 0.015),
    ...grade('grade B', 'S', undefined, 0.003),
    ...grade('grade B', 'V', 0.8, 1),
    ...grade('grade C', 'Si', 0.1, 0.5),
    ...grade('grade C', 'Cr', 4.7, 5.3),
    ...grade('grade C', 'Mo', 2, 3.3),
    ...grade('grade C', 'V', 0.4, 0.7),
    ...grade('grade D', 'C', 0.35, 0.42),
    ...grade('grade D', 'Mo', 1.1, 1.6),
    ...grade('grade D', 'V', 0.3, 0.6),
    ...grade('grade E', 'Cr', 4.7, 5.7),
    ...grade('grade E', 'Si', 0.1, 0.55),
  ],
  'die life: trade data sheet, component table, steelmaker from memory': [
    ...life('zinc', 500000, 1000000, [500000, 2000000], [50000, 200000]),
    ...life('zinc-aluminium', 500000, 1000000, [500000, 2000000], [50000, 200000], 'practice'),
    ...life('aluminium', 125000, 100000, [60000, 200000], [40000, 150000]),
    ...life('magnesium', 200000, 100000, [100000, 400000], [50000, 200000]),
    ...life('copper', 20000, 10000, [5000, 50000], [1000, 5000]),
  ],
  'hot steel, plates and the rest': [
    ['die/elastic', { temperature: 20 }, 'modulus', 212, 'source'],
    ['die/elastic', { temperature: 250 }, 'modulus', 197, 'source'],
    ['die/elastic', { temperature: 500 }, 'modulus', 175, 'source'],
    ['die/elastic', { temperature: 500 }, 'expansion', 13, 'practice'],
    ['die/hot-yield', { steel: 'H13 premium', temperature: 20 }, 'yield', 1172, 'source'],
    ['die/hot-yield', { steel: 'H13 premium', temperature: 500 }, 'yield', 850, 'memory'],
    ['die/heat-check', {}, 'early', 0.7, 'practice'],
    ['die/block', {}, 'bow_greatest', 0.05, 'practice'],
    ['die/block', {}, 'flash_gap', 0.1, 'practice'],
    ['die/block', {}, 'bottom_ratio_greatest', 2, 'practice'],
    ['die/block', {}, 'density', 7.8, 'practice'],
    ['die/block', {}, 'envelope_share', 0.9, 'practice'],
    ['die/preheat', { family: 'aluminium' }, 'greatest', 300, 'memory'],
    ['die/preheat', { family: 'copper' }, 'least', 300, 'memory'],
  ],
};

describe.each(Object.entries(published))('%s', (_, rows) => {
  it.each(rows.map((row) => [...row]))('%s %o %s is %s', (id, at, column, value, status) => {
    expect(figureAt(id, at, column)).toMatchObject({ value, status });
  });
});

it('hotter steel is softer and less stiff, and a steel of higher grade is no softer', () => {
  const at = (steel: string, temperature: number): number => figureAt('die/hot-yield', { steel, temperature }, 'yield')?.value ?? Number.NaN;
  for (const steel of ['P20', 'H11', 'H13 premium', '1.2367']) expect(at(steel, 600)).toBeLessThan(at(steel, 500));
  expect([at('H11', 500) < at('H13 premium', 500), at('H13 premium', 500) < at('1.2367', 500), at('P20', 500) < at('H11', 500)]).toEqual([true, true, true]);
});
