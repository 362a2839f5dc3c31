import * as z from 'zod';
import { printable } from '../kernel/printable.ts';
import { inUnit, readQuantity } from '../kernel/quantity.ts';
import { orList } from '../kernel/spelling.ts';
import { dimensionOf, type Unit, unitsOf } from '../kernel/units.ts';
import { BOUNDS, type Bound, type BoundName } from './bounds.ts';

/** A quantity of the file in the unit that the field is kept in. */
export interface Reading<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
  /** As the user wrote it, with one space between number and unit. */
  readonly written: string;
}

/** What a failed field hands on through the schema; the message is completed with the name of the field. */
export interface LeafFault {
  readonly code: string;
  readonly fix?: string;
}

/** Pattern of a number and a unit for editors; the reader itself says more precisely what is wrong. */
export const QUANTITY_PATTERN = '^\\s*[+\\-\u2212]?(\\d+\\.?\\d*|\\.\\d+)([eE][+\\-\u2212]?\\d+)?\\s*[^\\d\\s.,].*$';
const ID_PATTERN = '^[\\p{L}\\p{N}][\\p{L}\\p{N} ._+#()/-]*$';
const ID = new RegExp(ID_PATTERN, 'u');
/** Longest text that a quantity or a word can be. */
const LONGEST = 80;

type UnitOf<B extends BoundName> = (typeof BOUNDS)[B]['unit'];
type Context = z.core.$RefinementCtx;

function fail(ctx: Context, input: unknown, code: string, message: string, fix?: string): never {
  const params: LeafFault = fix === undefined ? { code } : { code, fix };
  ctx.issues.push({ code: 'custom', input, message, params: params as unknown as Record<string, unknown> });
  return z.NEVER;
}

/**
 * A field with a unit. `bare` allows a number without one, taken in the field's own unit; `whole` asks for a count.
 * The text is converted to the unit of `bound` and held against its limits.
 */
export function quantity<B extends BoundName>(bound: B, about: string, example: string, options: { readonly bare?: boolean; readonly whole?: boolean } = {}) {
  const limits = BOUNDS[bound] as Bound<UnitOf<B>>;
  const { bare = false, whole = false } = options;
  return z
    .string()
    .transform((text, ctx): Reading<UnitOf<B>> => readInto(text, limits, bare, whole, ctx))
    .meta(
      bare
        ? { description: about, examples: [Number(example)], type: ['number', 'string'] }
        : { description: about, examples: [example], pattern: QUANTITY_PATTERN },
    );
}

function readInto<U extends Unit>(text: string, limits: Bound<U>, bare: boolean, whole: boolean, ctx: Context): Reading<U> {
  const { unit } = limits;
  if (text.length > LONGEST) return fail(ctx, text, 'not-a-quantity', `"${printable(text)}" is too long for a number and a unit`);
  if (text.trim() === '') return fail(ctx, text, 'not-a-quantity', 'the text is empty');
  if (whole && /^\s*\+?\d{1,3}(\.\d{3})+\s*$/.test(text)) {
    const digits = text.trim().replaceAll('.', '');
    return fail(ctx, text, 'digit-grouping', `"${text.trim()}" may group digits with a point`, `write "${digits}", or leave out the point and what follows it`);
  }
  const parsed = readQuantity(text, dimensionOf(unit), bare ? unit : undefined);
  if (!parsed.ok) {
    const { code, message, fix } = parsed.fault;
    return fail(ctx, text, code, message, code === 'bare-number' ? addUnit(text.trim(), unit) : isGeneral(fix, unit) ? undefined : fix);
  }
  const { quantity: given } = parsed;
  if (whole && given.unit !== '1') return fail(ctx, text, 'wrong-dimension', `"${text}" is a share, but a number of pieces is wanted`, 'write a whole number');
  const value = inUnit(given, unit);
  const written = spaced(text, given.unit);
  if (!Number.isFinite(value)) return fail(ctx, text, 'not-finite', `${written} is not a finite number`);
  if (value < 0 || (value === 0 && limits.zero === undefined)) {
    return fail(ctx, text, 'not-positive', `${written} is not ${limits.zero === undefined ? 'above 0' : '0 or more'}`, 'check the sign and the number');
  }
  if (value > limits.greatest) return fail(ctx, text, 'too-large-value', `${written} is too large: ${limits.why}`, 'check the number and its unit');
  if (value !== 0 && value < limits.least) return fail(ctx, text, 'too-small-value', `${written} is too small: ${limits.why}`, 'check the number and its unit');
  if (whole && !Number.isInteger(value)) return fail(ctx, text, 'not-whole', `${written} is not a whole number`, `write ${Math.max(1, Math.round(value))}`);
  return { value, unit, written };
}

/** The unit that the field is kept in is a better guess than the first one of its dimension. */
function addUnit(text: string, unit: Unit): string {
  const others = unitsOf(dimensionOf(unit)).filter((other) => other !== '1' && other !== unit);
  return `write "${text} ${unit}"${others.length === 0 ? '' : `, or another unit: ${orList(others)}`}`;
}

/** Advice for any quantity of the dimension, where the example of the field says more. */
function isGeneral(fix: string | undefined, unit: Unit): boolean {
  return fix === undefined || fix.includes('such as "12 ') || (dimensionOf(unit) === 'number' && /(one of|it in) 1 or/.test(fix));
}

/** `2.8mm` and `2.8   mm` as `2.8 mm`; a bare number with the unit that it was taken in. */
function spaced(text: string, unit: Unit): string {
  const [, number = '', rest = ''] = /^([+\-\u2212]?[\d.]+(?:e[+\-\u2212]?\d+)?)(.*)$/is.exec(text.trim()) ?? [];
  const spelling = rest.replace(/\s+/g, ' ').trim() || (unit === '1' ? '' : unit);
  return spelling === '' ? number : `${number} ${spelling}`;
}

/** An amount in the currency of the plant: a bare number, because no other file of the tool knows currencies. */
export function money<B extends MoneyBound>(bound: B, about: string, example: string) {
  const limits = BOUNDS[bound] as Bound<'1'>;
  return z
    .string()
    .transform((text, ctx): Reading<'1'> => {
      const unit = isNumber(text) ? undefined : /^[+\-\u2212]?(?:\d+\.?\d*|\.\d+)\s*([%\p{L}\p{Sc}].*)$/u.exec(text.trim())?.[1];
      if (unit === undefined || text.length > LONGEST) return readInto(text, limits, true, false, ctx);
      const code = unit === '%' ? 'wrong-dimension' : 'unknown-unit';
      return fail(
        ctx,
        text,
        code,
        `"${printable(text.trim())}" is no bare number`,
        'write the number alone; the currency stands in "prices: { currency: ... }"',
      );
    })
    .meta({ description: about, examples: [Number(example)], type: ['number', 'string'] });
}
function isNumber(text: string): boolean {
  return /^[+\-\u2212]?(\d+\.?\d*|\.\d+)(e[+\-\u2212]?\d+)?$/i.test(text.trim());
}
type MoneyBound = { [B in BoundName]: UnitOf<B> extends '1' ? B : never }[BoundName];

/** A day of the calendar such as `2026-03-31`. */
export function day(about: string, example: string) {
  return z
    .string()
    .transform((value, ctx) => {
      const written = value.trim();
      const [, year, month, date] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(written) ?? [];
      if (year === undefined) return fail(ctx, value, 'date', `"${printable(written, LONGEST)}" is not a day`, `write it like "${example}": year, month, day`);
      if (Number(month) < 1 || Number(month) > 12 || Number(date) < 1 || Number(date) > daysOf(Number(year), Number(month))) {
        return fail(ctx, value, 'date', `${written} is not in the calendar`, `check year, month and day; write it like "${example}"`);
      }
      return written;
    })
    .meta({ description: about, examples: [example], pattern: '^\\d{4}-\\d{2}-\\d{2}$' });
}

function daysOf(year: number, month: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return month === 2 ? (leap ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
}

/** The word or sign of a currency. */
export function currency(about: string, example: string) {
  return z
    .string()
    .transform((value, ctx) => {
      const line = oneLine(value, LONGEST, ctx);
      if (ctx.issues.length === 0 && !/[\p{L}\p{Sc}]/u.test(line)) {
        return fail(ctx, value, 'currency', `"${printable(line)}" names no currency`, `write its word or sign, such as "${example}"`);
      }
      return line;
    })
    .meta({ description: about, examples: [example], pattern: '^[^\\n]*[\\p{L}\\p{Sc}][^\\n]*$' });
}

/** One line of text: a name, a number, a material. A plain number is taken as the text that was written. */
export function text(about: string, example: string) {
  return z
    .string()
    .transform((value, ctx) => oneLine(value, 200, ctx))
    .meta({ description: about, examples: [example], type: ['string', 'number'], pattern: '^[^\\n]*\\S[^\\n]*$' });
}

/** Text of any number of lines. */
export function prose(about: string, example: string) {
  return z.string().meta({ description: about, examples: [example], type: ['string', 'number'] });
}

/** Id of a list entry: what plans, findings and `slide:` call it. */
export function id(example: string) {
  return z
    .string()
    .transform((value, ctx) => {
      const line = oneLine(value, LONGEST, ctx);
      if (ctx.issues.length === 0 && !ID.test(line)) {
        return fail(
          ctx,
          value,
          'wrong-id',
          `"${printable(value)}" cannot be an id`,
          `begin with a letter or digit, and use letters, digits, spaces and . _ + # ( ) / - only, such as "${example}"`,
        );
      }
      return line;
    })
    .meta({ description: 'Name of this entry, used once in its list', examples: [example], type: ['string', 'number'], pattern: ID_PATTERN });
}

function oneLine(value: string, most: number, ctx: Context): string {
  const line = value.trim();
  if (line === '') return fail(ctx, value, 'missing-field', 'the text is empty');
  if (/[\n\t]/.test(line)) return fail(ctx, value, 'not-one-line', 'the text has several lines or a tab, but one line is wanted', 'write it on one line');
  if (line.length > most) return fail(ctx, value, 'not-one-line', `the text has ${line.length} characters, but at most ${most} are read`, 'shorten it');
  return line;
}

/** One word of a list. */
export function word<const W extends readonly [string, ...string[]]>(words: W, about: string) {
  return z.enum(words).meta({ description: about, examples: [words[0]] });
}

/** `true` or `false`. */
export function flag(about: string) {
  return z.boolean().meta({ description: about, examples: [true] });
}

/** A screw thread such as `M8` or `M8x1`. */
export function thread(about: string) {
  return z
    .string()
    .transform((value, ctx) => {
      const plain = value.replace(/\u00d7/g, 'x').replace(/\s/g, '');
      const [, size, pitch] = /^M(\d{1,3}(?:\.\d{1,3})?)(?:x(\d(?:\.\d{1,3})?))?$/.exec(plain) ?? [];
      if (size === undefined || Number(size) < 1 || Number(size) > 150 || (pitch !== undefined && (Number(pitch) <= 0 || Number(pitch) >= Number(size)))) {
        return fail(ctx, value, 'thread', `"${printable(value)}" is not a metric thread`, 'write it like "M8", or "M8x1" with the pitch');
      }
      return plain;
    })
    .meta({ description: about, examples: ['M8'], pattern: '^M\\d{1,3}(\\.\\d{1,3})?(\\s*[x\u00d7]\\s*\\d(\\.\\d{1,3})?)?$' });
}

/** A word, number or quantity, kept as text. */
export function scalar(about: string, example: string) {
  return z
    .unknown()
    .transform((value, ctx) => {
      const written = typeof value === 'boolean' ? String(value) : typeof value === 'string' ? value.trim() : '';
      if (written === '' || written.length > LONGEST || written.includes('\n')) {
        return fail(ctx, value, 'pin-form', 'a pinned value is one word, number or quantity', `write it like "${example}"`);
      }
      return written;
    })
    .meta({ description: about, examples: [example], type: ['string', 'number', 'boolean'] });
}
