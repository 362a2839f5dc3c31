import { describe, expect, it } from 'vitest';
import { inUnit, readQuantity, readUnit } from '../../../src/kernel/quantity.ts';
import type { Dimension } from '../../../src/kernel/units.ts';

const read = (text: string, dimension: Dimension = 'length') => readQuantity(text, dimension);
/** What is wrong with a text, and what to write instead. */
const fault = (text: string, dimension: Dimension = 'length') => {
  const parsed = read(text, dimension);
  return parsed.ok ? undefined : [parsed.fault.code, parsed.fault.message, parsed.fault.fix];
};

describe('a quantity', () => {
  it.each([
    ['2.8 mm', 2.8, 'mm'],
    ['  2.8mm ', 2.8, 'mm'],
    ['.5 in', 0.5, 'in'],
    ['5. mm', 5, 'mm'],
    ['+5 mm', 5, 'mm'],
    ['-5 mm', -5, 'mm'],
    ['\u22125 mm', -5, 'mm'],
    ['5\u00a0mm', 5, 'mm'],
    ['5\u202fmm', 5, 'mm'],
    ['1e2 mm', 100, 'mm'],
    ['1.5E-1 mm', 0.15, 'mm'],
    ['1200 mm', 1200, 'mm'],
    ['12 MM', 12, 'mm'],
  ])('%j is %d %s', (text, value, unit) => {
    expect(read(text)).toEqual({ ok: true, quantity: { value, unit } });
  });

  it.each([
    ['1,200 mm', '"1,200 mm" groups digits with a comma', 'write "1200 mm"'],
    ['-12,345,678.5 mm', '"-12,345,678.5 mm" groups digits with a comma', 'write "-12345678.5 mm"'],
    ['1 200 mm', '"1 200 mm" groups digits', 'write "1200 mm"'],
    ["12'345'678 mm", `"12'345'678 mm" groups digits`, 'write "12345678 mm"'],
    ['1_000_000 mm', '"1_000_000 mm" groups digits', 'write "1000000 mm"'],
    ['+100 000 mm', '"+100 000 mm" groups digits', 'write "+100000 mm"'],
  ])('%j groups digits', (text, message, fix) => {
    expect(fault(text)).toEqual(['digit-grouping', message, fix]);
  });

  it.each([
    ['2,8 mm', 'write "2.8 mm"'],
    ['12,75 mm', 'write "12.75 mm"'],
    ['-2,8 mm', 'write "-2.8 mm"'],
    ['1234,5 mm', 'write "1234.5 mm"'],
    ['1,2345 mm', 'write "1.2345 mm"'],
  ])('%j uses a decimal comma', (text, fix) => {
    expect(fault(text)).toEqual(['decimal-comma', `"${text}" uses a decimal comma`, fix]);
  });

  it.each(['NaN', '-inf mm', '+Infinity mm', '.inf', '.NaN mm', '1e999 mm'])('%j is not finite', (text) => {
    expect(fault(text)?.[0]).toBe('not-finite');
  });

  it.each(['', 'mm', 'about 5 mm', 'x nan', 'a 2,8 mm', 'at 1,200 mm', '1/2 in', '5 6 mm', '1 1/2 in', '5 2/3'])('%j is no quantity', (text) => {
    expect(fault(text)?.[0]).toBe('not-a-quantity');
  });
  it('names a way to write one, with a unit of the dimension', () => {
    expect(fault('mm')?.[2]).toBe('write a number and a unit, such as "12 mm"');
    expect(fault('hot', 'temperature')?.[2]).toBe('write a number and a unit, such as "12 degC"');
    expect(fault('1/2 in')?.[2]).toBe('write the number as a decimal, such as "0.5 in"');
  });

  it('is refused bare unless the field has a unit for it', () => {
    expect(fault('12')).toEqual(['bare-number', '12 has no unit', expect.stringMatching(/^write "12 mm" \(length: .*mm.*\)$/)]);
    expect(readQuantity('12', 'number', '1')).toEqual({ ok: true, quantity: { value: 12, unit: '1' } });
    expect(readQuantity('12 1', 'number', '1')).toEqual({ ok: true, quantity: { value: 12, unit: '1' } });
    expect(readQuantity('12 1/h', 'number')).toMatchObject({ ok: false, fault: { code: 'wrong-dimension' } });
  });

  it('asks which ton a force is in; tons of a mass are no such question', () => {
    for (const text of ['100 t', '100 ton', '100 US tons', '100 metric tons', '100 tonf'])
      expect(fault(text, 'force')?.slice(0, 1).concat(fault(text, 'force')?.[2])).toEqual([
        'ambiguous-unit',
        'write "980.66 kN" for metric tons or "889.64 kN" for US tons',
      ]);
    expect(fault('100 kN', 'force')).toBeUndefined();
    expect(fault('100 tons', 'length')?.[0]).not.toBe('ambiguous-unit');
  });

  it('in another dimension says which it is, and tells temperatures from differences', () => {
    expect(fault('5 kN')).toEqual(['wrong-dimension', '"5 kN" is a force, but a length is wanted', expect.stringMatching(/^write it in .*mm/)]);
    expect(fault('5 mm', 'area')?.[1]).toBe('"5 mm" is a length, but an area is wanted');
    const hint = 'a temperature is written in degC or degF, a temperature difference in K';
    expect(fault('5 K', 'temperature')?.[2]).toBe(hint);
    expect(fault('5 degC', 'temperature difference')?.[2]).toBe(hint);
    expect(fault('5 mm', 'temperature')?.[2]).toMatch(/^write it in .*degC/);
    expect(fault('5 degC')?.[2]).toMatch(/^write it in .*mm/);
  });

  it('in a unit of nobody names those that there are', () => {
    expect(fault('5 parsec')?.slice(0, 1)).toEqual(['unknown-unit']);
    expect(fault('5 mmm')?.[1]).toContain('did you mean');
  });
});

describe('a unit', () => {
  it.each([
    ['cm2', 'cm2'],
    ['cm\u00b2', 'cm2'],
    ['cm^3', 'cm3'],
    ['W/(m2\u00b7K)', 'W/(m2.K)'],
    ['W/(m2*K)', 'W/(m2.K)'],
    ['MPa', 'MPa'],
    ['mpa', 'MPa'],
    ['KN', 'kN'],
    ['L', 'l'],
  ])('%j is %s', (text, unit) => {
    expect(readUnit(text)).toBe(unit);
  });
  it.each(['mPa', 'mN', 'mJ', 'parsec'])('%j is none', (text) => {
    expect(readUnit(text)).toBeUndefined();
  });
  it('keeps the number that was written, and drops the last digits that a factor leaves', () => {
    expect(inUnit({ value: 0.18, unit: 'cm' }, 'mm')).toBe(1.8);
    expect(inUnit({ value: 0.1 + 0.2, unit: 'mm' }, 'mm')).toBe(0.1 + 0.2);
  });
});
