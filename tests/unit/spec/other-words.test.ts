import { expect, test } from 'vitest';
import { otherWordFor } from '../../../src/spec/other-words.ts';

test('a word of drawings stands for the key that the mapping knows', () => {
  expect(otherWordFor('Weight', ['volume', 'mass'])).toBe('mass');
  expect(otherWordFor('qty', ['id', 'per_year'])).toBe('per_year');
});

test('a key that the mapping does not know is not proposed', () => {
  expect(otherWordFor('weight', ['volume', 'envelope'])).toBeUndefined();
  expect(otherWordFor('constructor', ['volume'])).toBeUndefined();
});
