import type { Timeline } from '../../../src/engine/plan.ts';
import { NASTY } from './hand-made.ts';

type Row = Timeline['rows'][number];

/** Rows one after the other; the lengths are invented and stand for no machine. */
function inTurn(lengths: readonly (readonly [title: string, length: number, strong?: boolean])[]): Row[] {
  let at = 0;
  return lengths.map(([title, length, strong]) => {
    const from = at;
    at += length;
    return { title, bars: [{ from, to: at, ...(strong === true ? { strong } : {}), values: [] }] };
  });
}

/** A cycle in which 40 ms stand beside 8 s. */
export const CYCLE_TIME: Timeline = {
  kind: 'figure',
  form: 'timeline',
  id: 'cycle-time',
  title: 'One cycle, element by element',
  text: 'Bars follow one another from the closing of the die to the end of blowing; the dwell governs.',
  x: { title: 'Time', unit: 's' },
  rows: inTurn([
    ['Die closes', 2.4],
    ['Ladle pours', 3.1],
    ['Slow shot', 1.35],
    ['Fill', 0.04],
    ['Dwell, from the end of the fill to the opening of the die', 8.2, true],
    ['Die opens', 2.2],
    ['Cores are pulled', 1.5],
    ['Ejection', 0.9],
    ['Casting is taken out', 3],
    ['Spray', 6.4],
    ['Blow', 1.8],
  ]),
};

/** Rows with several bars, alone, apart, close together, over one another, and so many that their numbers need lines of their own. */
export const SHIFTS: Timeline = {
  ...CYCLE_TIME,
  id: 'shifts',
  title: NASTY,
  rows: [
    { title: 'Apart', bars: [1, 9, 17].map((from) => ({ from, to: from + 2, values: [] })) },
    { title: 'Close', bars: [2, 3.2, 4.4].map((from) => ({ from, to: from + 1, values: [] })) },
    {
      title: 'Close, at the end',
      bars: [22, 23.2, 24.4].map((from) => ({ from, to: from + 1, ...(from === 24.4 ? { strong: true as const } : {}), values: [] })),
    },
    { title: 'Over one another', bars: [8, 4, 5].map((from, i) => ({ from, to: from + 9 - i, values: [] })) },
    { title: 'Many', bars: Array.from({ length: 40 }, (_, i) => ({ from: i * 0.64, to: i * 0.64 + 0.311, values: [] })) },
    { title: 'None', bars: [] },
    { title: NASTY, bars: [{ from: 3, to: 3, values: [] }] },
    { title: `A name of many words that says more than any row has room for, ${'and goes on '.repeat(20)}`, bars: [{ from: 25, to: 25.4, values: [] }] },
    { title: 'Word'.repeat(60), bars: [{ from: 0, to: 25.4, values: [] }] },
  ],
};

const only = (id: string, bars: Row['bars']): Timeline => ({ ...CYCLE_TIME, id, rows: [{ title: 'Only row', bars }] });

/** What no step should draw, and must not break the drawing. */
export const ODD_TIMELINES: readonly Timeline[] = [
  { ...CYCLE_TIME, id: 'no-rows', rows: [] },
  only('no-bars', []),
  only('zero-length', [{ from: 0, to: 0, values: [] }]),
  only(
    'not-numbers',
    [
      [Number.NaN, 3],
      [1, Number.POSITIVE_INFINITY],
      [5, 2],
      [0, 1e300],
    ].map(([from = 0, to = 0]) => ({ from, to, strong: true as const, values: [] })),
  ),
  only('early', [{ from: -3, to: 4, strong: true, values: [] }]),
  only('great', [{ from: 0, to: 8.64e9, strong: true, values: [] }]),
  only('small', [{ from: 2e-7, to: 9e-7, values: [] }]),
  {
    ...CYCLE_TIME,
    id: 'many-rows',
    title: 'A title that goes on '.repeat(12),
    x: { title: 'Time that passes while '.repeat(12), unit: 'ms' },
    rows: inTurn(
      Array.from({ length: 60 }, (_, i) => [`Element ${i + 1}${' of the cycle'.repeat(i % 7)}`, i % 9 === 0 ? 1e-3 : 3.333 * i, i % 20 === 3] as const),
    ),
  },
];

export const TIMELINES: readonly Timeline[] = [CYCLE_TIME, SHIFTS];
