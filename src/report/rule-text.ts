import type { Binding, Caution, Choice, Given, Limit, Source } from '../engine/rule-data.ts';
import { type Field, fieldsText } from './fields.ts';
import { counted, originText } from './words.ts';

/** What `explain` prints of a limit. */
export function limitText(limit: Limit, here?: string): string {
  return fieldsText(`${limit.id}: ${limit.title}`, [
    ['kind', `limit, ${limit.severity} when broken${limit.each === undefined ? '' : `; judged for each ${limit.each}`}`],
    ['here', here],
    usesField(limit.uses),
    ['applies when', limit.when === 'true' ? 'always' : limit.when],
    ['must hold', limit.require],
    ['message', limit.message],
    ['why', limit.why],
    ['do', limit.fix],
    ['source', originText(limit.source, limit.status)],
    ['holds for', limit.examples.filter((example) => example.holds).map((example) => givenText(example.given))],
    ['broken by', limit.examples.filter((example) => !example.holds).map((example) => givenText(example.given))],
  ]);
}

/** What `explain` prints of a decision table: its rows in the order in which they are tried. */
export function choiceText(choice: Choice, here?: string): string {
  const rows = choice.rows.flatMap((row, i): Field[] => [
    [`row ${i + 1}`, `${row.choose}, when ${row.when === 'true' ? 'no row above holds' : row.when}`],
    ['', row.because],
    ['', originText(row.source, row.status)],
  ]);
  return fieldsText(`${choice.id}: ${choice.title}`, [
    [
      'kind',
      `${choice.verdict === true ? 'verdict on figures, which cannot be pinned' : 'decision'}, the first of ${counted(choice.rows.length, 'row')} that holds`,
    ],
    ['here', here],
    usesField(choice.uses),
    ...rows,
    ['examples', choice.examples.map((example) => `${givenText(example.given)}: ${example.chooses}`)],
  ]);
}

/** What `explain` prints of a caution. */
export function cautionText(caution: Caution, here?: string): string {
  return fieldsText(`${caution.id}: ${caution.title}`, [
    ['kind', 'caution'],
    ['here', here],
    usesField(caution.uses),
    ['applies when', caution.when === 'true' ? 'always' : caution.when],
    ['do', caution.text],
    ['defer to', caution.defer],
    ['source', originText(caution.source, caution.status)],
  ]);
}

/** What `explain` prints of an entry of the bibliography, with the ids of what cites it. */
export function sourceText(source: Source, citedBy: readonly string[]): string {
  return fieldsText(`${source.key}: ${source.title}`, [
    ['kind', source.vendor === true ? 'source, a vendor page' : 'source'],
    ['author', source.author],
    ['publisher', source.publisher],
    ['edition', source.edition],
    ['year', source.year],
    ['read', source.read],
    ['errata', source.errata?.join('\n')],
    ['cited by', citedBy],
  ]);
}

function usesField(uses: readonly Binding[]): Field {
  return ['uses', uses.map((use) => `${use.name} = ${use.id}${use.unit === undefined || use.unit === '1' ? '' : ` in ${use.unit}`}`)];
}

function givenText(given: Given): string {
  return Object.entries(given)
    .map(([name, value]) => `${name} = ${value}`)
    .join(', ');
}
