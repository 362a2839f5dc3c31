import { expect, test } from 'vitest';
import { columnsOf } from '../../../src/report/columns.ts';
import { listText } from '../../../src/report/list-text.ts';

const LISTING = {
  columns: ['id', 'unit', 'title', 'inputs'],
  rows: [
    { id: 'gate.area', unit: 'mm2', title: 'Area of the gate that passes the metal in the fill time', inputs: ['volume cm3', 'velocity m/s', 'time ms'] },
    { id: 'fill.time', unit: 'ms', title: 'Fill time', inputs: [] },
  ],
};
const words = (text: string): string[] =>
  text
    .split(/\s+/)
    .filter((word) => word !== '')
    .sort();

test('without a width a row is one line', () => {
  expect(listText(LISTING).trimEnd().split('\n')).toHaveLength(3);
});

test.each([120, 80, 60, 40])('at %i columns no line is longer, and nothing is lost', (width) => {
  const text = listText(LISTING, width);
  expect(Math.max(...text.split('\n').map(columnsOf))).toBeLessThanOrEqual(width);
  expect(words(text)).toEqual(words(listText(LISTING)));
});

test('a last column that keeps room is wrapped in its place', () => {
  const text = listText({ columns: ['id', 'title'], rows: [{ id: 'gate.area', title: 'Area of the gate that passes the metal' }] }, 36);
  expect(text).toBe('id         title\ngate.area  Area of the gate that\n           passes the metal\n');
});
