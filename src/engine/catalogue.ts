import type { Formula } from '../kernel/formula.ts';
import { nearestWords } from '../kernel/spelling.ts';
import { sourceKey } from '../kernel/status.ts';
import { FORMULAS, formulaById } from '../physics/index.ts';
import { findAlloy } from '../rulebook/alloys.ts';
import type { Alloy, Caution, Choice, Limit, Origin, Rulebook, Source, Table } from '../rulebook/types.ts';
import { ALL_TERMS, findTerm, type Term } from './terms.ts';
import type { Word } from './vocabulary/define.ts';
import { VOCABULARY, wordOf } from './vocabulary/index.ts';

/** What an id can name. One id may name several things: a formula and the plan value that it gives. */
export type Entry =
  | { readonly kind: 'value'; readonly id: string; readonly word: Word }
  | { readonly kind: 'formula'; readonly formula: Formula }
  | { readonly kind: 'choice'; readonly choice: Choice }
  | { readonly kind: 'limit'; readonly limit: Limit }
  | { readonly kind: 'caution'; readonly caution: Caution }
  | { readonly kind: 'table'; readonly table: Table }
  | { readonly kind: 'alloy'; readonly alloy: Alloy }
  | { readonly kind: 'term'; readonly term: Term; readonly values: readonly string[] }
  | { readonly kind: 'source'; readonly source: Source; readonly citedBy: readonly string[] };

/** Everything that an id names, or a designation for an alloy, or a word of the trade; empty when it names nothing. */
export function findEntries(rulebook: Rulebook, id: string): Entry[] {
  const entries: Entry[] = [];
  const word = wordOf(id);
  const formula = formulaById(id);
  const alloys = findAlloy(rulebook, id);
  if (word !== undefined) entries.push({ kind: 'value', id: id.replace(/\[.*\]$/s, ''), word });
  if (formula !== undefined) entries.push({ kind: 'formula', formula });
  const choice = own(rulebook.choices, id);
  if (choice !== undefined) entries.push({ kind: 'choice', choice });
  const limit = own(rulebook.limits, id) ?? own(rulebook.switchedOff ?? {}, id);
  if (limit !== undefined) entries.push({ kind: 'limit', limit });
  const caution = own(rulebook.cautions, id);
  if (caution !== undefined) entries.push({ kind: 'caution', caution });
  const table = own(rulebook.tables, id);
  if (table !== undefined) entries.push({ kind: 'table', table });
  if ('found' in alloys) entries.push({ kind: 'alloy', alloy: alloys.found });
  if ('ambiguous' in alloys) entries.push(...alloys.ambiguous.map((alloy): Entry => ({ kind: 'alloy', alloy })));
  const source = own(rulebook.sources, id);
  if (source !== undefined) entries.push({ kind: 'source', source, citedBy: citedBy(rulebook, id) });
  const term = findTerm(id);
  if (term !== undefined) entries.push({ kind: 'term', term, values: valuesNaming(term) });
  return entries;
}

/** Ids near to one that names nothing, nearest first. */
export function nearIds(rulebook: Rulebook, id: string, further: readonly string[] = []): string[] {
  const known = new Set([
    ...Object.keys(VOCABULARY),
    ...FORMULAS.map((formula) => formula.id),
    ...Object.keys(rulebook.choices),
    ...Object.keys(rulebook.limits),
    ...Object.keys(rulebook.cautions),
    ...Object.keys(rulebook.tables),
    ...Object.values(rulebook.alloys).flatMap((alloy) => [alloy.id, ...alloy.designations.map((d) => d.code)]),
    ...Object.keys(rulebook.sources),
    ...ALL_TERMS.flatMap(({ term, also = [] }) => [term, ...also]),
    ...further,
  ]);
  return nearestWords(id, [...known]);
}

/** Ids of the plan values whose titles hold the word. */
function valuesNaming({ term }: Term): string[] {
  const word = term.toLowerCase();
  return Object.entries(VOCABULARY as Readonly<Record<string, Word>>).flatMap(([id, { title }]) => (title.toLowerCase().includes(word) ? [id] : []));
}

function own<T>(record: Readonly<Record<string, T>>, id: string): T | undefined {
  return Object.hasOwn(record, id) ? record[id] : undefined;
}

/** Ids of everything whose figures or statements cite a source. */
function citedBy(rulebook: Rulebook, key: string): string[] {
  const cites = (...origins: readonly Origin[]): boolean => origins.some((origin) => origin.source.some((ref) => sourceKey(ref) === key));
  const figures = (table: Table): Origin[] => table.rows.flatMap((row) => Object.values(row.cells).filter((figure) => figure !== null));
  return [
    ...FORMULAS.filter((formula) => cites(formula)).map((formula) => `formula ${formula.id}`),
    ...Object.values(rulebook.tables)
      .filter((table) => cites(...figures(table)))
      .map((table) => `table ${table.id}`),
    ...Object.values(rulebook.choices)
      .filter((choice) => cites(...choice.rows))
      .map((choice) => `choice ${choice.id}`),
    ...Object.values(rulebook.limits)
      .filter((limit) => cites(limit))
      .map((limit) => `limit ${limit.id}`),
    ...Object.values(rulebook.cautions)
      .filter((caution) => cites(caution))
      .map((caution) => `caution ${caution.id}`),
    ...Object.values(rulebook.alloys)
      .filter((alloy) => cites(alloy.chamber, alloy.composition, ...Object.values(alloy.properties)))
      .map((alloy) => `alloy ${alloy.id}`),
  ];
}
