import { describe, expect, test } from 'vitest';
import { missesBound } from '../../../src/engine/missed.ts';
import { Traced } from '../../../src/kernel/traced.ts';

const of = (value: number) => Traced.choice('sleeve.fill', value, '%', { note: 'for this test', status: 'practice' });

describe('a figure beside its bound', () => {
  test.each([
    [18.5, 30, 'least', true],
    [30, 30, 'least', false],
    [41, 30, 'least', false],
    [80, 75, 'most', true],
    [75, 75, 'most', false],
    [74.999999999999, 75, 'least', false],
    // The slack goes with the bound.
    [999_999.9999, 1_000_000, 'least', false],
    [999_999.9, 1_000_000, 'least', true],
    [0.000_999, 0.001, 'least', true],
  ] as const)('%d held against %d as the %s', (value, bound, side, missed) => {
    expect(missesBound(of(value), of(bound), side)).toBe(missed);
  });

  test('is in the same unit', () => {
    expect(() => missesBound(of(1), Traced.choice('fill.time', 1, 'ms', { note: 'x', status: 'practice' }), 'least')).toThrow(TypeError);
  });
});
