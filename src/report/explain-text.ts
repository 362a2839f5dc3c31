import type { Entry } from '../engine/catalogue.ts';
import { alloyText } from './alloy-text.ts';
import { fieldsText } from './fields.ts';
import { formulaText } from './formula-text.ts';
import { cautionText, choiceText, limitText, sourceText } from './rule-text.ts';
import { tableText } from './table-text.ts';

/** What `explain` prints of each thing that an id names, with an empty line between. */
export function entriesText(entries: readonly Entry[]): string {
  return entries.map(entryText).join('\n');
}

function entryText(entry: Entry): string {
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
      return choiceText(entry.choice);
    case 'limit':
      return limitText(entry.limit);
    case 'caution':
      return cautionText(entry.caution);
    case 'table':
      return tableText(entry.table);
    case 'alloy':
      return alloyText(entry.alloy);
    case 'term':
      return fieldsText(entry.term.term, [
        ['kind', 'word of the trade'],
        ['means', entry.term.meaning],
      ]);
    case 'source':
      return sourceText(entry.source, entry.citedBy);
  }
}

/** What `explain` prints of a finding code. */
export function codeText(code: string, meaning: string): string {
  return fieldsText(code, [
    ['kind', 'code of a finding'],
    ['means', meaning],
  ]);
}
