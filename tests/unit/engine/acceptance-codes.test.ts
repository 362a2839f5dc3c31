import { expect, test } from 'vitest';
import { isAcceptable } from '../../../src/engine/acceptance.ts';
import { rulebook } from './parts.ts';

test('every limit can be accepted, also those on the set of castings of a die', () => {
  expect(Object.keys(rulebook().limits).filter((id) => !isAcceptable(id))).toEqual([]);
});

test.each(['set/form', 'set/value', 'set/unknown-field', 'set/unknown-item', 'spec/unknown-key', 'check/stale-plan'])('%s is mended, not accepted', (code) => {
  expect(isAcceptable(code)).toBe(false);
});
