import type { Alloy, AlloyProperty } from '../engine/rule-data.ts';
import { formatNumber } from '../kernel/format.ts';
import type { Unit } from '../kernel/units.ts';
import { alignRows } from './columns.ts';
import { type Field, fieldsText } from './fields.ts';
import { originText, refText } from './words.ts';

/** What `explain` prints of an alloy: its names, what may cast it, composition, properties, ratings, notes. */
export function alloyText(alloy: Alloy, here?: string): string {
  return fieldsText(`${alloy.id}: ${alloy.name}, ${alloy.family} alloy`, [
    ['here', here],
    ['designations', alloy.designations.map((d) => `${d.system} ${d.code}${d.near === true ? ' (near, not the same)' : ''}`)],
    ['chamber', `${alloy.chamber.allows.join(' or ')}${withNote(alloy.chamber.note)} (${originText(alloy.chamber.source, alloy.chamber.status)})`],
    ['composition', compositionLines(alloy)],
    [
      'properties',
      alignRows(
        Object.entries(alloy.properties).map(([name, property]) => [
          name.replaceAll('_', ' '),
          rangeText(property, property.unit),
          originText(property.source, property.status),
          [property.note, property.house === undefined ? undefined : `house rules: ${property.house}`].filter((text) => text !== undefined).join('; '),
        ]),
      ),
    ],
    ['also published', Object.entries(alloy.properties).flatMap(([name, property]) => othersOf(name, property))],
    ...ratingFields(alloy),
    ['notes', alloy.notes.join('\n')],
  ]);
}

function compositionLines(alloy: Alloy): string[] {
  const { balance, limits, unit, note, source, status } = alloy.composition;
  const rows = Object.entries(limits).map(([element, [least, greatest]]) => [element, limitText(least, greatest), unit]);
  return [`${balance}: the balance${withNote(note)} (${originText(source, status)})`, ...alignRows(rows)];
}

function limitText(least: number | null, greatest: number | null): string {
  if (greatest === null) return least === null ? 'not stated' : `${formatNumber(least)} or more`;
  return least === null || least === 0 ? `up to ${formatNumber(greatest)}` : `${formatNumber(least)} to ${formatNumber(greatest)}`;
}

function rangeText(
  figure: { readonly value?: number | undefined; readonly least?: number | undefined; readonly greatest?: number | undefined },
  unit: Unit,
): string {
  const { value, least, greatest } = figure;
  const numbers =
    value !== undefined
      ? formatNumber(value)
      : least !== undefined && greatest !== undefined
        ? `${formatNumber(least)} to ${formatNumber(greatest)}`
        : limitText(least ?? null, greatest ?? null);
  return unit === '1' ? numbers : `${numbers} ${unit}`;
}

function othersOf(name: string, property: AlloyProperty): string[] {
  return (property.others ?? []).map(
    (other) =>
      `${name.replaceAll('_', ' ')} ${rangeText(other, property.unit)}${withNote(other.note)} (${(other.source ?? []).map(refText).join(', ') || 'no source'})`,
  );
}

/** Ratings are a record of words and numbers, with one level of groups that have sources of their own. */
function ratingFields(alloy: Alloy): Field[] {
  if (alloy.ratings === undefined) return [];
  const lines = (record: Readonly<Record<string, unknown>>): string =>
    Object.entries(record)
      .filter(([, value]) => !isRecord(value) && !(Array.isArray(value) && value.length === 0))
      .map(([name, value]) => `${name.replaceAll('_', ' ')} ${Array.isArray(value) ? value.join(', ') : String(value)}`)
      .join('; ');
  const groups = Object.entries(alloy.ratings).filter((entry): entry is [string, Record<string, unknown>] => isRecord(entry[1]));
  return [['ratings', lines(alloy.ratings)], ...groups.map(([name, record]): Field => [`ratings, ${name.replaceAll('_', ' ')}`, lines(record)])];
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function withNote(note: string | undefined): string {
  return note === undefined ? '' : `, ${note}`;
}
