import { describe, expect, it } from 'vitest';
import { didYouMean, nearestWord, nearestWords, orList } from '../../../src/kernel/spelling.ts';

describe('the nearest word', () => {
  it('is the same word in another case before any other', () => {
    expect(nearestWord('MAT', ['mad', 'mat'])).toBe('mat');
  });
  it('is found within a third of the longer word, and one slip is always allowed', () => {
    expect(nearestWord('ax', ['ab'])).toBe('ab');
    expect(nearestWord('xx', ['ab'])).toBeUndefined();
    // Three slips in nine letters, and four.
    expect(nearestWord('materiXYZ', ['materials'])).toBe('materials');
    expect(nearestWord('materWXYZ', ['materials'])).toBeUndefined();
    // The longer of both counts: one slip too many for five letters is not for six.
    expect(nearestWord('shotX', ['shotab'])).toBe('shotab');
    expect(nearestWord('shotab', ['shotX'])).toBe('shotX');
  });
  it('is the one that goes on where another is as near', () => {
    expect(nearestWord('AM60', ['A360', 'AM60B'])).toBe('AM60B');
    expect(nearestWord('AM60', ['AM60B-X', 'A360'])).toBe('A360');
    expect(nearestWord('am60', ['AX60', 'AM60B'])).toBe('AM60B');
  });
  it('is none where nothing is known', () => {
    expect(nearestWord('wall', [])).toBeUndefined();
    expect(didYouMean('wall', [])).toBe('');
    expect(didYouMean('wal', ['wall'])).toBe('; did you mean "wall"?');
  });
});

describe('several near words', () => {
  it('allow two slips in short words and a third of long ones', () => {
    expect(nearestWords('xyll', ['wall'])).toEqual(['wall']);
    expect(nearestWords('xyzl', ['wall'])).toEqual([]);
    expect(nearestWords('materiXYZ', ['materials'])).toEqual(['materials']);
    expect(nearestWords('materWXYZ', ['materials'])).toEqual([]);
  });
  it('come nearest first, then shortest, then by the alphabet; three of them', () => {
    expect(nearestWords('wall', ['fall', 'ball', 'wall-x', 'wall', 'halls'])).toEqual(['wall', 'wall-x', 'ball']);
    expect(nearestWords('wall', ['wxyl', 'wxll'])).toEqual(['wxll', 'wxyl']);
  });
  it('do not mind capitals', () => {
    expect(nearestWords('WALL', ['The-Wall'])).toEqual(['The-Wall']);
    expect(nearestWords('HXLE', ['HOLE'])).toEqual(['HOLE']);
  });
});

describe('a list of choices', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a or b'],
    [['a', 'b', 'c'], 'a, b or c'],
  ])('%j reads "%s"', (words, text) => {
    expect(orList(words)).toBe(text);
  });
});
