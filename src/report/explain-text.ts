import type { Entry } from '../engine/catalogue.ts';
import type { Change } from '../engine/rule-data.ts';
import { alloyText } from './alloy-text.ts';
import { fieldsText } from './fields.ts';
import { formulaText } from './formula-text.ts';
import { hereText } from './here-text.ts';
import { cautionText, choiceText, limitText, sourceText } from './rule-text.ts';
import { tableText } from './table-text.ts';

const MOST_VALUES = 5;

/** What `explain` prints of each thing that an id names, with an empty line between; `changes` tell what is not as built in. */
export function entriesText(entries: readonly Entry[], changes?: readonly Change[]): string {
  return entries.map((entry) => entryText(entry, changes)).join('\n');
}

function entryText(entry: Entry, changes: readonly Change[] | undefined): string {
  switch (entry.kind) {
    case 'value':
      return fieldsText(`${entry.id}: ${entry.word.title}`, [
        ['kind', 'text' in entry.word ? 'plan value, a word' : 'plan value, a number'],
        ['unit', 'text' in entry.word || entry.word.unit === '1' ? undefined : entry.word.unit],
        ['items', entry.word.each === true ? `one for each item, such as ${entry.id}[ID]` : undefined],
        ['in a plan', `diewright explain ${entry.id} FILE`],
      ]);
    case 'formula':
      return formulaText(entry.formula);
    case 'choice':
      return choiceText(entry.choice, hereText(changes, 'choice', entry.choice.id));
    case 'limit':
      return limitText(entry.limit, hereText(changes, 'limit', entry.limit.id));
    case 'caution':
      return cautionText(entry.caution, hereText(changes, 'caution', entry.caution.id));
    case 'table':
      return tableText(entry.table, hereText(changes, 'table', entry.table.id));
    case 'alloy':
      return alloyText(entry.alloy, hereText(changes, 'alloy', entry.alloy.id));
    case 'term':
      return fieldsText(entry.term.term, [
        ['kind', 'word of the trade'],
        ['means', entry.term.meaning],
        ['also', entry.term.also?.join(', ')],
        ['in plans', valuesText(entry.term.term, entry.values)],
      ]);
    case 'source':
      return sourceText(entry.source, entry.citedBy);
  }
}

/** The first plan values that speak of a word, and how all of them are listed. */
function valuesText(term: string, ids: readonly string[]): string | undefined {
  if (ids.length === 0) return undefined;
  const shown = ids.slice(0, MOST_VALUES).join(', ');
  return ids.length <= MOST_VALUES ? shown : `${shown}, and ${ids.length - MOST_VALUES} more: diewright list values "${term}"`;
}

/** What `explain` prints of a finding code. */
export function codeText(code: string, meaning: string): string {
  return fieldsText(code, [
    ['kind', 'code of a finding'],
    ['means', meaning],
  ]);
}
