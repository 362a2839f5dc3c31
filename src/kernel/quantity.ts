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

/** Spellings that people type beside the printed ones and the UCUM codes, in the folded form of `fold`. */
const SPELLINGS: Readonly<Partial<Record<Unit, readonly string[]>>> = {
  '1': [''],
  '%': ['percent'],
  um: ['µm', 'μm', 'micron', 'microns'],
  in: ['inch', 'inches', '"'],
  ft: ['foot', 'feet'],
  mm: ['millimetre', 'millimeter'],
  m: ['metre', 'meter'],
  mm2: ['sqmm'],
  cm2: ['sqcm'],
  in2: ['sqin'],
  cm3: ['cc', 'ccm'],
  l: ['litre', 'liter', 'litres', 'liters'],
  in3: ['cuin'],
  g: ['gram', 'grams'],
  lb: ['lbs', 'pound', 'pounds'],
  t: ['tonne'],
  oz: ['ounce'],
  s: ['sec', 'second', 'seconds'],
  ms: ['msec'],
  h: ['hour', 'hours', 'hr'],
  'm/s': ['m.s-1', 'mps'],
  'mm/s': ['mm.s-1'],
  'in/s': ['ips'],
  'm/s2': ['m.s-2', 'm/s/s'],
  'cm3/s': ['cm3.s-1', 'cc/s'],
  'l/s': ['l.s-1'],
  'm3/s': ['m3.s-1'],
  'l/min': ['lpm'],
  MPa: ['mpa'],
  Pa: ['pa'],
  kPa: ['kpa'],
  GPa: ['gpa'],
  psi: ['lbf/in2'],
  'kgf/cm2': ['kg/cm2'],
  'N/mm2': ['n.mm-2'],
  kN: ['kn'],
  kgf: ['kp'],
  'kg/m3': ['kg.m-3'],
  'g/cm3': ['g.cm-3', 'g/cc'],
  'kg/dm3': ['kg/l'],
  degC: ['cel', '°c', 'degc'],
  degF: ['°f', 'degf'],
  K: ['kelvin'],
  kW: ['kw'],
  W: ['w'],
  J: ['j'],
  kJ: ['kj'],
  MJ: ['mj'],
  kWh: ['kwh', 'kw.h'],
  'J/kg': ['j.kg-1'],
  'kJ/kg': ['kj.kg-1'],
  'kWh/kg': ['kwh/kg', 'kw.h.kg-1'],
  'J/(kg.K)': ['j/kgk', 'j/kg.k', 'j/kg/k', 'j.kg-1.k-1', 'j/(kgk)'],
  'kJ/(kg.K)': ['kj/kgk', 'kj/kg.k', 'kj.kg-1.k-1'],
  'W/(m.K)': ['w/mk', 'w/m.k', 'w/m/k', 'w.m-1.k-1', 'w/(mk)'],
  'W/(m2.K)': ['w/m2k', 'w/m2.k', 'w.m-2.k-1'],
  'kW/(m2.K)': ['kw/m2k', 'kw/m2.k'],
  '1/K': ['k-1'],
  'um/(m.K)': ['um/m.k', 'um/mk', 'µm/(m.k)', 'um.m-1.k-1'],
  deg: ['°', 'degree', 'degrees'],
  's/mm': ['s.mm-1'],
  's/mm2': ['s.mm-2'],
  'K/%': ['k.%-1'],
  '1/h': ['h-1', 'per hour'],
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

let spelled: { readonly exact: ReadonlyMap<string, Unit>; readonly anyCase: ReadonlyMap<string, Unit> } | undefined;

/** The unit that a spelling stands for, or undefined. Case matters only where it must (`mPa` is refused, `L` is `l`). */
export function readUnit(spelling: string): Unit | undefined {
  const text = fold(spelling);
  if (isUnit(text)) return text;
  spelled ??= spellings();
  const exact = spelled.exact.get(text);
  if (exact !== undefined) return exact;
  // A milli/mega slip must not pass as the other: `mPa`, `mN` and `mJ` are no unit of the table.
  if (/^m(Pa|N|J)/.test(text)) return undefined;
  return spelled.anyCase.get(text.toLowerCase());
}

function spellings(): { exact: Map<string, Unit>; anyCase: Map<string, Unit> } {
  const names = Object.keys(UNITS) as Unit[];
  const typed = names.flatMap((name) => (SPELLINGS[name] ?? []).map((text): [string, Unit] => [text, name]));
  return {
    exact: new Map([...names.map((name): [string, Unit] => [UNITS[name].ucum, name]), ...typed]),
    anyCase: new Map([...names.map((name): [string, Unit] => [name.toLowerCase(), name]), ...typed]),
  };
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
  if (/^[/\d]/.test(spelling) && spelling !== '1' && !/^1\/(?!\d)/.test(spelling)) {
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
    return fail('wrong-dimension', `"${trimmed}" is ${withArticle(dimensionOf(unit))}, but ${withArticle(dimension)} is wanted`, hint);
  }
  return { ok: true, quantity: { value, unit } };
}

function roundForMessage(value: number): number {
  return Number(value.toPrecision(5));
}

/**
 * The quantity's number in another unit of its dimension, without the last binary digits that the factor leaves: 0.18 cm
 * is 1.8 mm and not 1.7999999999999998, which would fall below a bound of 1.8 mm.
 */
export function inUnit({ value, unit: written }: Quantity, unit: Unit): number {
  return written === unit ? value : Number(convert(value, written, unit).toPrecision(15));
}

function withArticle(noun: string): string {
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}
