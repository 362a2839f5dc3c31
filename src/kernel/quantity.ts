import { didYouMean, orList } from './spelling.ts';
import { convert, type Dimension, dimensionOf, isUnit, UNITS, type Unit, unitsOf } from './units.ts';

/** A number with the unit it was written in. */
export interface Quantity<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
}

/** Why a text is not a quantity: a code of the reader, what was wrong, and what to write instead. */
export interface QuantityFault {
  readonly code: 'not-a-quantity' | 'bare-number' | 'digit-grouping' | 'decimal-comma' | 'not-finite' | 'unknown-unit' | 'ambiguous-unit' | 'wrong-dimension';
  readonly message: string;
  readonly fix?: string;
}

export type Parsed = { readonly ok: true; readonly quantity: Quantity } | { readonly ok: false; readonly fault: QuantityFault };

/** Spellings that people type, and UCUM codes, beside the printed ones. Keys are in the folded form of `fold`. */
const ALIASES: Readonly<Record<string, Unit>> = {
  '': '1',
  percent: '%',
  µm: 'um',
  μm: 'um',
  micron: 'um',
  microns: 'um',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  foot: 'ft',
  feet: 'ft',
  millimetre: 'mm',
  millimeter: 'mm',
  metre: 'm',
  meter: 'm',
  sqmm: 'mm2',
  sqcm: 'cm2',
  sqin: 'in2',
  cc: 'cm3',
  ccm: 'cm3',
  litre: 'l',
  liter: 'l',
  litres: 'l',
  liters: 'l',
  cuin: 'in3',
  gram: 'g',
  grams: 'g',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  tonne: 't',
  ounce: 'oz',
  sec: 's',
  second: 's',
  seconds: 's',
  msec: 'ms',
  hour: 'h',
  hours: 'h',
  hr: 'h',
  'm.s-1': 'm/s',
  mps: 'm/s',
  'mm.s-1': 'mm/s',
  ips: 'in/s',
  'm.s-2': 'm/s2',
  'm/s/s': 'm/s2',
  'cm3.s-1': 'cm3/s',
  'l.s-1': 'l/s',
  'm3.s-1': 'm3/s',
  lpm: 'l/min',
  'cc/s': 'cm3/s',
  mpa: 'MPa',
  pa: 'Pa',
  kpa: 'kPa',
  gpa: 'GPa',
  'lbf/in2': 'psi',
  'kg/cm2': 'kgf/cm2',
  'n.mm-2': 'N/mm2',
  kn: 'kN',
  mn: 'MN',
  kp: 'kgf',
  'kg.m-3': 'kg/m3',
  'g.cm-3': 'g/cm3',
  'g/cc': 'g/cm3',
  'kg/l': 'kg/dm3',
  cel: 'degC',
  '°c': 'degC',
  degc: 'degC',
  '°f': 'degF',
  degf: 'degF',
  kelvin: 'K',
  kw: 'kW',
  w: 'W',
  j: 'J',
  kj: 'kJ',
  mj: 'MJ',
  kwh: 'kWh',
  'kw.h': 'kWh',
  'j.kg-1': 'J/kg',
  'kj.kg-1': 'kJ/kg',
  'j/kgk': 'J/(kg.K)',
  'j/kg.k': 'J/(kg.K)',
  'j/kg/k': 'J/(kg.K)',
  'j.kg-1.k-1': 'J/(kg.K)',
  'j/(kgk)': 'J/(kg.K)',
  'kj/kgk': 'kJ/(kg.K)',
  'kj/kg.k': 'kJ/(kg.K)',
  'kj.kg-1.k-1': 'kJ/(kg.K)',
  'w/mk': 'W/(m.K)',
  'w/m.k': 'W/(m.K)',
  'w/m/k': 'W/(m.K)',
  'w.m-1.k-1': 'W/(m.K)',
  'w/(mk)': 'W/(m.K)',
  'w/m2k': 'W/(m2.K)',
  'w/m2.k': 'W/(m2.K)',
  'w.m-2.k-1': 'W/(m2.K)',
  'kw/m2k': 'kW/(m2.K)',
  'kw/m2.k': 'kW/(m2.K)',
  'k-1': '1/K',
  'um/m.k': 'um/(m.K)',
  'um/mk': 'um/(m.K)',
  'µm/(m.k)': 'um/(m.K)',
  'um.m-1.k-1': 'um/(m.K)',
  '°': 'deg',
  degree: 'deg',
  degrees: 'deg',
  's.mm-1': 's/mm',
  's.mm-2': 's/mm2',
  'k.%-1': 'K/%',
  'h-1': '1/h',
  'per hour': '1/h',
  '[in_i]': 'in',
  '[ft_i]': 'ft',
  '[in_i]2': 'in2',
  '[in_i]3': 'in3',
  '[in_i]/s': 'in/s',
  '[lb_av]': 'lb',
  '[oz_av]': 'oz',
  '[psi]': 'psi',
  '[degf]': 'degF',
  '[lbf_av]': 'lbf',
  '[lb_av]/[in_i]3': 'lb/in3',
  'in^2': 'in2',
  'in^3': 'in3',
};

/** Words for a force that name two different units in the trade. */
const TON_FORCE = /^(us |short |metric )?(t|tf|ton|tons|tonf|tonne|tonnes|ton-force)$/;

const SUPERSCRIPTS: Readonly<Record<string, string>> = { '²': '2', '³': '3', '⁻': '-', '¹': '1' };

function fold(text: string): string {
  return text
    .replace(/[²³⁻¹]/g, (c) => SUPERSCRIPTS[c] as string)
    .replace(/[·*]/g, '.')
    .replace(/\^/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

let byLowerCase: ReadonlyMap<string, Unit> | undefined;

/** The unit that a spelling stands for, or undefined. Case matters only where it must (`mPa` is refused, `L` is `l`). */
export function readUnit(spelling: string): Unit | undefined {
  const text = fold(spelling);
  if (isUnit(text)) return text;
  const alias = ALIASES[text] ?? ALIASES[text.toLowerCase()];
  if (alias !== undefined && !(alias === 'MPa' && text.startsWith('mP'))) return alias;
  byLowerCase ??= new Map((Object.keys(UNITS) as Unit[]).map((name) => [name.toLowerCase(), name]));
  // A milli/mega slip must not pass as the other: units that differ only in case from another are matched exactly.
  if (/^m(pa|n|j)/i.test(text)) return undefined;
  return byLowerCase.get(text.toLowerCase());
}

const NUMBER = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)/i;

/**
 * Reads `"2.8 mm"`. `dimension` is what the field needs; `bare` is the unit that a bare number is taken in, where the
 * field allows one. The fault names what to write instead.
 */
export function readQuantity(text: string, dimension: Dimension, bare?: Unit): Parsed {
  const trimmed = text
    .replace(/\u2212/g, '-')
    .replace(/\u00a0|\u202f/g, ' ')
    .trim();
  const fail = (code: QuantityFault['code'], message: string, fix?: string): Parsed => ({
    ok: false,
    fault: fix === undefined ? { code, message } : { code, message, fix },
  });
  const example = unitsOf(dimension)[dimension === 'length' ? 1 : 0] ?? '1';
  if (/^[+-]?(nan|inf|infinity|\.nan|\.inf)\b/i.test(trimmed)) {
    return fail('not-finite', `"${trimmed}" is not a finite number`, `write a measured value such as "12 ${example}"`);
  }
  if (/^[+-]?\d{1,3}(,\d{3})+(\.\d+)?(?![\d,])/.test(trimmed)) {
    return fail('digit-grouping', `"${trimmed}" groups digits with a comma`, `write "${trimmed.replace(/,(?=\d{3})/g, '')}"`);
  }
  if (/^[+-]?\d+,\d+/.test(trimmed)) {
    return fail('decimal-comma', `"${trimmed}" uses a decimal comma`, `write "${trimmed.replace(',', '.')}"`);
  }
  if (/^[+-]?\d{1,3}([ _']\d{3})+(?!\d)/.test(trimmed)) {
    return fail('digit-grouping', `"${trimmed}" groups digits`, `write "${trimmed.replace(/(\d)[ _'](?=\d{3})/g, '$1')}"`);
  }
  const match = NUMBER.exec(trimmed);
  if (match === null) {
    return fail('not-a-quantity', `"${trimmed}" does not begin with a number`, `write a number and a unit, such as "12 ${example}"`);
  }
  const value = Number(match[1]);
  if (!Number.isFinite(value)) return fail('not-finite', `"${trimmed}" is not a finite number`);
  const spelling = trimmed.slice((match[1] as string).length).trim();
  if (/^[/\d]/.test(spelling) && spelling !== '1' && !/^1\//.test(spelling)) {
    return fail('not-a-quantity', `"${trimmed}" is not one number and one unit`, 'write the number as a decimal, such as "0.5 in"');
  }
  if (spelling === '') {
    if (bare !== undefined) return { ok: true, quantity: { value, unit: bare } };
    return fail('bare-number', `${trimmed} has no unit`, `write "${trimmed} ${example}" (${dimension}: ${orList(unitsOf(dimension))})`);
  }
  if (dimension === 'force' && TON_FORCE.test(spelling.toLowerCase())) {
    const metric = roundForMessage(value * 9.80665);
    const us = roundForMessage(value * 8.896443230521);
    return fail(
      'ambiguous-unit',
      `"${spelling}" as a force: metric ton-force (9.807 kN) or US ton-force (8.896 kN)?`,
      `write "${metric} kN" for metric tons or "${us} kN" for US tons`,
    );
  }
  const unit = readUnit(spelling);
  if (unit === undefined) {
    const known = unitsOf(dimension);
    return fail('unknown-unit', `unknown unit "${spelling}"${didYouMean(spelling, known)}`, `write one of ${orList(known)}`);
  }
  if (dimensionOf(unit) !== dimension) {
    const pair = [dimensionOf(unit), dimension];
    const temperatures = pair.includes('temperature') && pair.includes('temperature difference');
    const hint = temperatures ? 'a temperature is written in degC or degF, a temperature difference in K' : `write it in ${orList(unitsOf(dimension))}`;
    return fail('wrong-dimension', `"${trimmed}" is a ${dimensionOf(unit)}, but a ${dimension} is wanted`, hint);
  }
  return { ok: true, quantity: { value, unit } };
}

function roundForMessage(value: number): number {
  return Number(value.toPrecision(5));
}

/** The quantity's number in another unit of its dimension. */
export function inUnit(quantity: Quantity, unit: Unit): number {
  return convert(quantity.value, quantity.unit, unit);
}
