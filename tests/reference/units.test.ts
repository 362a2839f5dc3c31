import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { readQuantity, readUnit } from '../../src/kernel/quantity.ts';
import { convert, dimensionOf, UNITS, type Unit, unitsOf } from '../../src/kernel/units.ts';

/** The independent library. Its names differ from ours in a few places. */
const math = create(all ?? {});
const MATHJS: Partial<Record<Unit, string>> = {
  mm2: 'mm^2',
  cm2: 'cm^2',
  m2: 'm^2',
  in2: 'in^2',
  mm3: 'mm^3',
  cm3: 'cm^3',
  dm3: 'dm^3',
  m3: 'm^3',
  in3: 'in^3',
  ml: 'mL',
  l: 'L',
  t: 'tonne',
  lb: 'lbm',
  'm/s2': 'm/s^2',
  'cm3/s': 'cm^3/s',
  'l/s': 'L/s',
  'l/min': 'L/minute',
  'm3/s': 'm^3/s',
  'in3/s': 'in^3/s',
  'N/mm2': 'N/mm^2',
  'kg/m3': 'kg/m^3',
  'g/cm3': 'g/cm^3',
  'kg/dm3': 'kg/dm^3',
  'lb/in3': 'lbm/in^3',
  MJ: 'MJ',
  kWh: 'kW hour',
  'kWh/kg': 'kW hour/kg',
  'J/(kg.K)': 'J/(kg K)',
  'kJ/(kg.K)': 'kJ/(kg K)',
  'W/(m.K)': 'W/(m K)',
  'W/(m2.K)': 'W/(m^2 K)',
  'kW/(m2.K)': 'kW/(m^2 K)',
  '1/K': '1/K',
  'W/m2': 'W/m^2',
  'kW/m2': 'kW/m^2',
  'kJ/m2': 'kJ/m^2',
  'MJ/m2': 'MJ/m^2',
  'kg/h': 'kg/hour',
  'Pa.s': 'Pa s',
  'mPa.s': 'mPa s',
  's/mm2': 's/mm^2',
  '1/h': '1/hour',
  h: 'hour',
  min: 'minute',
};
/** Not in the other library as a unit: dimensionless, per cent, and what rests on it. */
const NOT_THERE: readonly Unit[] = ['1', '%', 'K/%', 'um/(m.K)'];

describe('units against mathjs', () => {
  const pairs = (Object.keys(UNITS) as Unit[])
    .filter((unit) => !NOT_THERE.includes(unit))
    .flatMap((from) =>
      unitsOf(dimensionOf(from))
        .filter((to) => to !== from && !NOT_THERE.includes(to))
        .map((to) => [from, to] as const),
    );

  test.each(pairs)('%s in %s', (from, to) => {
    const theirs = math.unit(17.25, other(from).unit).toNumber(other(to).unit) * (other(from).times / other(to).times);
    expect(Math.abs(convert(17.25, from, to) / theirs - 1)).toBeLessThan(1e-9);
  });

  /** The other library's unit, and how many of it ours is. */
  function other(unit: Unit): { unit: string; times: number } {
    if (unit === 'ksi') return { unit: 'psi', times: 1000 };
    if (unit === 'oz') return { unit: 'lbm', times: 1 / 16 };
    if (unit === 'kgf') return { unit: 'N', times: 9.80665 };
    if (unit === 'kgf/cm2') return { unit: 'N/cm^2', times: 9.80665 };
    return { unit: MATHJS[unit] ?? unit, times: 1 };
  }
});

describe('published conversions', () => {
  // International yard and pound agreement 1959 and standard gravity: exact by definition; NIST SP 811, appendix B.
  test.each([
    [1, 'in', 'mm', 25.4],
    [1, 'in2', 'mm2', 645.16],
    [10000, 'psi', 'MPa', 68.94757293],
    [1250, 'degF', 'degC', 676.6666667],
    [250, 'degF', 'degC', 121.1111111],
    [800, 'kgf', 'N', 7845.32],
    [1, 'lb/in3', 'g/cm3', 27.67990471],
    [21.8, 'um/(m.K)', '1/K', 21.8e-6],
    [4.8, 'K/%', 'K/%', 4.8],
    [0.099, 'lb/in3', 'g/cm3', 2.740310566],
  ] as const)('%d %s = %s', (value, from, to, expected) => {
    expect(convert(value, from, to)).toBeCloseTo(expected, 6);
  });

  test('a temperature difference is not a temperature', () => {
    expect(() => convert(10, 'K', 'degC')).toThrow(RangeError);
    const read = readQuantity('10 K', 'temperature');
    expect(read.ok ? '' : read.fault.code).toBe('wrong-dimension');
  });
});

describe('spellings', () => {
  test.each([
    ['°C', 'degC'],
    ['degC', 'degC'],
    ['Cel', 'degC'],
    ['cm^3', 'cm3'],
    ['cm³', 'cm3'],
    ['cm3', 'cm3'],
    ['L/s', 'l/s'],
    ['l/s', 'l/s'],
    ['J/kgK', 'J/(kg.K)'],
    ['J/(kg.K)', 'J/(kg.K)'],
    ['J.kg-1.K-1', 'J/(kg.K)'],
    ['kgf/cm2', 'kgf/cm2'],
    ['psi', 'psi'],
    ['[psi]', 'psi'],
    ['in', 'in'],
    ['[in_i]', 'in'],
    ['in2', 'in2'],
    ['s/mm', 's/mm'],
    ['K/%', 'K/%'],
    ['W/mK', 'W/(m.K)'],
    ['µm', 'um'],
    ['m.s-1', 'm/s'],
    ['kg.m-3', 'kg/m3'],
    ['Mpa', 'MPa'],
  ] as const)('%s is %s', (spelling, unit) => {
    expect(readUnit(spelling)).toBe(unit);
  });

  test('every UCUM code of the table reads as its own unit', () => {
    for (const [name, unit] of Object.entries(UNITS)) expect([unit.ucum, readUnit(unit.ucum)]).toEqual([unit.ucum, name]);
  });

  test.each([
    ['8,000 psi', 'pressure', 'digit-grouping', '8000 psi'],
    ['8 000 psi', 'pressure', 'digit-grouping', '8000 psi'],
    ['2,8 mm', 'length', 'decimal-comma', '2.8 mm'],
    ['2.8', 'length', 'bare-number', '2.8 mm'],
    ['400 t', 'force', 'ambiguous-unit', '3922.7 kN'],
    ['400 tons', 'force', 'ambiguous-unit', '3558.6 kN'],
    ['mPa 3', 'pressure', 'not-a-quantity', 'number and a unit'],
    ['3 mPa', 'pressure', 'unknown-unit', 'MPa'],
    ['1/2 in', 'length', 'not-a-quantity', '0.5 in'],
    ['NaN mm', 'length', 'not-finite', 'measured value'],
    ['3 furlong', 'length', 'unknown-unit', 'mm'],
    ['20 degC', 'temperature difference', 'wrong-dimension', 'K'],
  ] as const)('%s as a %s is refused: %s', (text, dimension, code, fix) => {
    const read = readQuantity(text, dimension);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.fault.code).toBe(code);
    expect(`${read.fault.message} ${read.fault.fix ?? ''}`).toContain(fix);
  });
});
