import { nearestWord, orList } from '../kernel/spelling.ts';
import { weakest } from '../kernel/status.ts';
import type { Bound } from '../rulebook/condition.ts';
import type { Choice, ChoiceRow } from '../rulebook/types.ts';
import { bind } from './bind.ts';
import { evaluated } from './evaluated.ts';
import { type Ledger, Missing } from './ledger.ts';
import type { Decision } from './plan.ts';
import { fullId } from './vocabulary/index.ts';

/**
 * Takes a decision by its table: the first row whose condition holds. Rows further down that hold too are the
 * alternatives. A pinned word is kept if the table knows it; then the row chosen is named as what the tool would do.
 * With an `item` the decision is that item's own (`parting.slide-drive[S1]`), decided on the item's values; a pin
 * without an item holds for every item that has none of its own.
 * @throws Missing when a value that the table uses is not known.
 */
export function choose(ledger: Ledger, tableId: string, item?: string): Decision {
  const table = tableOf(ledger, tableId);
  const id = fullId(tableId, item);
  const bound = bind(ledger, table.uses, item);
  if (bound.missing.length > 0) {
    const pinned = pinnedWithout(ledger, table, id, tableId, item, bound.missing);
    if (pinned === undefined) throw new Missing(bound.missing[0] as string);
    ledger.record(pinned);
    return pinned;
  }
  const holding = ledger.explains ? rowsHolding(ledger, table, bound.values) : firstHolding(ledger, table, bound.values);
  const row = holding[0];
  if (row === undefined) throw new Missing(id);
  const pin = pinOf(ledger, tableId, item);
  if (pin === undefined && !ledger.explains) {
    // What is tried is judged by the word alone.
    const word: Decision = {
      id,
      title: table.title,
      kind: 'choice',
      value: row.choose,
      because: row.because,
      status: row.status,
      source: row.source,
      parents: [],
      alternatives: [],
    };
    ledger.record(word);
    return word;
  }
  const parents = bound.numbers;
  const common = {
    id,
    title: item === undefined ? table.title : `${table.title}, ${item}`,
    status: weakest(row.status, ...parents.map((p) => p.status)),
    source: row.source,
    parents: parents.map((p) => p.id),
  };
  const alternatives = holding
    .slice(1)
    .filter((other) => other.choose !== row.choose)
    .map((other) => ({ value: other.choose, because: other.because }));
  const because = table.house === undefined ? row.because : `${row.because} (house rules: ${table.house})`;
  let decision: Decision = { ...common, kind: 'choice', value: row.choose, because, alternatives };

  if (pin !== undefined) {
    ledger.usedPins.add(pin.id);
    const words = wordsOf(table);
    if (words.includes(pin.text)) {
      const pinned =
        pin.text === row.choose ? `pinned by the engineer; the table agrees: ${because}` : `pinned by the engineer; the table says ${row.choose}: ${because}`;
      decision = {
        ...common,
        kind: 'pinned',
        status: 'source',
        source: ['PART'],
        value: pin.text,
        because: pinned,
        alternatives: pin.text === row.choose ? alternatives : [{ value: row.choose, because }],
        at: pin.at,
      };
    } else {
      const near = nearestWord(pin.text, words);
      ledger.findings.push({
        code: 'spec/unknown-word',
        severity: 'error',
        message: `"${pin.text}" is not a choice for ${id}${near === undefined ? '' : `; did you mean "${near}"?`}`,
        at: pin.at,
        fix: `write ${orList(words)}`,
      });
    }
  }
  ledger.record(decision);
  return decision;
}

/** A pinned word that the table knows stands, even where a value is missing that the table would judge by. */
function pinnedWithout(ledger: Ledger, table: Choice, id: string, tableId: string, item: string | undefined, missing: readonly string[]): Decision | undefined {
  const pin = pinOf(ledger, tableId, item);
  if (pin === undefined || !wordsOf(table).includes(pin.text)) return undefined;
  ledger.usedPins.add(pin.id);
  return {
    id,
    title: item === undefined ? table.title : `${table.title}, ${item}`,
    kind: 'pinned',
    status: 'source',
    source: ['PART'],
    parents: [],
    value: pin.text,
    because: `pinned by the engineer; the table cannot say without ${missing.join(', ')}`,
    alternatives: [],
    at: pin.at,
  };
}

/**
 * The word that a table, or a pin that it knows, would give for these numbers; nothing is filed. For steps that try
 * several layouts before one is decided.
 */
export function wordFor(ledger: Ledger, tableId: string, values: Bound, item?: string): string | undefined {
  const table = tableOf(ledger, tableId);
  const pin = pinOf(ledger, tableId, item)?.text;
  if (pin !== undefined && wordsOf(table).includes(pin)) return pin;
  // A table of house rules may use facts of the part besides these numbers.
  const known = table.house === undefined ? values : { ...bind(ledger, table.uses, item).values, ...values };
  return firstHolding(ledger, table, known)[0]?.choose;
}

function tableOf(ledger: Ledger, id: string): Choice {
  const table = ledger.rulebook.choices[id];
  if (table === undefined) throw new TypeError(`no decision table ${id}`);
  return table;
}

function rowsHolding(ledger: Ledger, table: Choice, values: Bound): ChoiceRow[] {
  return table.rows.filter((row) => evaluated(ledger.rulebook, row.when, values) === true);
}

/** The row that decides, without those further down that hold too. */
function firstHolding(ledger: Ledger, table: Choice, values: Bound): ChoiceRow[] {
  const row = table.rows.find((one) => evaluated(ledger.rulebook, one.when, values) === true);
  return row === undefined ? [] : [row];
}

function wordsOf(table: Choice): string[] {
  return [...new Set(table.rows.map((row) => row.choose))];
}

/** None of a verdict: what figures say is not the engineer's to set. */
function pinOf(ledger: Ledger, id: string, item: string | undefined) {
  if (ledger.rulebook.choices[id]?.verdict === true) return undefined;
  return ledger.part.pinned.get(fullId(id, item)) ?? ledger.part.pinned.get(id);
}
