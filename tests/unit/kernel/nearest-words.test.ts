import { describe, expect, test } from 'vitest';
import { nearestWords } from '../../../src/kernel/spelling.ts';

const KNOWN = ['clamp.locking-force', 'clamp.opening-force', 'clamp.use', 'gate.area', 'gate.wall'];

describe('near words', () => {
  test('words that hold the text come first, the shortest at the top', () => {
    expect(nearestWords('clamp', KNOWN)).toEqual(['clamp.use', 'clamp.locking-force', 'clamp.opening-force']);
  });

  test('slips of the keyboard, nearest first', () => {
    expect(nearestWords('gate.aera', KNOWN)).toEqual(['gate.area']);
    expect(nearestWords('GATE.WAL', KNOWN)).toEqual(['gate.wall']);
  });

  test('nothing is near to a word of another kind, and no more than asked are given', () => {
    expect(nearestWords('zinc', KNOWN)).toEqual([]);
    expect(nearestWords('.', KNOWN, 2)).toHaveLength(2);
  });
});
