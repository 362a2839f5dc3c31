import { describe, expect, test } from 'vitest';
import { findTerm, TERMS } from '../../../src/engine/terms.ts';

describe('words of the trade', () => {
  test('stand in alphabetical order, each once, in a sentence', () => {
    const names = TERMS.map(({ term }) => term.toLowerCase());
    expect(names).toEqual([...names].sort());
    expect(new Set([...names, ...TERMS.flatMap(({ also = [] }) => also)]).size).toBe(names.length + TERMS.flatMap(({ also = [] }) => also).length);
    for (const { term, meaning } of TERMS) {
      expect(meaning, term).toMatch(/^[A-Z].*\.$/);
      expect(meaning.length, term).toBeGreaterThan(25);
    }
  });

  test.each([
    ['biscuit', 'biscuit'],
    ['Biscuits', 'biscuit'],
    ['cavities', 'cavity'],
    ['sprue', 'runner'],
    ['tie bars', 'tie bars'],
  ])('%s is found under %s', (word, term) => {
    expect(findTerm(word)?.term).toBe(term);
  });

  test('a word that is none is not found', () => {
    expect(findTerm('flywheel')).toBeUndefined();
    expect(findTerm('')).toBeUndefined();
  });
});
