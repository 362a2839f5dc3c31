import { describe, expect, it } from 'vitest';
import { Place } from '../../../src/kernel/place.ts';

const TEXT = 'ab\ncde\n\nf';
const place = (start: number, end: number): Place => new Place({ name: 'part.yaml', text: TEXT }, 'wall', () => [start, end]);
const shown = (start: number, end: number): number[] => Object.values(place(start, end).position());

describe('line and column', () => {
  it.each([
    // start, end, line, column, end line, end column; the break itself is the last character of its line
    [0, 2, 1, 1, 1, 3],
    [2, 3, 1, 3, 2, 1],
    [3, 6, 2, 1, 2, 4],
    [6, 7, 2, 4, 3, 1],
    [7, 8, 3, 1, 4, 1],
    [8, 9, 4, 1, 4, 2],
    [0, 9, 1, 1, 4, 2],
  ])('%i to %i', (start, end, ...expected) => {
    expect(shown(start, end)).toEqual(expected);
  });
  it('never end before they begin', () => {
    expect(shown(5, 3)).toEqual([2, 3, 2, 3]);
  });
});

describe('a piece of a place', () => {
  it('is found where it is written', () => {
    expect(Object.values(place(3, 6).within('de', 1, 2).position())).toEqual([2, 3, 2, 4]);
    expect(Object.values(place(3, 6).within('cde', 0, 1).position())).toEqual([2, 1, 2, 2]);
    expect(place(3, 6).within('de', 1, 2).path).toBe('wall');
  });
  it('is the whole place where it is written in another way or elsewhere', () => {
    expect(Object.values(place(3, 6).within('ab', 0, 1).position())).toEqual([2, 1, 2, 4]);
  });
});
