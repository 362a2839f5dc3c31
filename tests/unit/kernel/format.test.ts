import { describe, expect, it } from 'vitest';
import { formatBeside, formatNumber, formatQuantity } from '../../../src/kernel/format.ts';

describe('numbers as a plan prints them', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [2.8349, '2.83'],
    [-2.8349, '-2.83'],
    [999.4, '999'],
    [0.0001, '0.0001'],
    [0.00009999, '1.00e-4'],
    [-0.00009, '-9.00e-5'],
    // Four digits from 1000 on, three again from 10000 on.
    [1000, '1000'],
    [1234.4, '1234'],
    [12345, '12300'],
    [99996, '100000'],
    [123456, '123000'],
    // Given, and not worked out.
    [1125000, '1125000'],
    [-12340, '-12340'],
    [12340.5, '12300'],
    [1234567, '1230000'],
    [123456789, '123000000'],
    [999999999, '1000000000'],
    [1e9, '1.00e+9'],
    [-1e9, '-1.00e+9'],
    [Number.NaN, 'NaN'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
  ])('%s is %s', (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  it.each([
    [2.345, 0, '2'],
    [2.346, 2, '2.35'],
    [0, 2, '0.00'],
    [-0.4, 0, '0'],
    [-0.004, 2, '0.00'],
    [-0.006, 2, '-0.01'],
    [-10, 0, '-10'],
    [-0.05, 2, '-0.05'],
  ])('%s with %s decimals is %s', (value, digits, text) => {
    expect(formatNumber(value, digits)).toBe(text);
  });

  it('stands before its unit with a space, and alone in dimension one', () => {
    expect(formatQuantity(12.5, 'mm')).toBe('12.5 mm');
    expect(formatQuantity(12.5, '1')).toBe('12.5');
    expect(formatQuantity(12.5, 'kN', 0)).toBe('13 kN');
  });

  it.each([
    [0.49995, 0.5, '0.49995'],
    [0.4, 0.5, '0.4'],
    [400.04, 400, '400.04'],
    [0.5, 0.5, '0.5'],
    [0.3 - 0.2, 0.1, '0.09999999999999998'],
  ])('%s beside the bound %s is %s', (value, bound, text) => {
    expect(formatBeside(value, bound, '1')).toBe(text);
    expect(formatBeside(value, bound, 'mm')).toBe(`${text} mm`);
  });
});
