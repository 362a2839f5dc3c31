import type { Table } from 'mdast';
import type { Plan } from '../../engine/plan.ts';
import { type Status, weakest } from '../../kernel/status.ts';
import { printTraced } from '../../kernel/traced.ts';
import { BREAK, type Inline, table } from '../markdown/nodes.ts';
import type { Each, Line, Piece } from './form.ts';

/** What a row rests on, in a word: `given` by the user, or the weakest status of its values and decisions. */
export type Mark = Status | 'given' | '';

export interface Row {
  readonly title: string;
  readonly planned: readonly Inline[];
  readonly within: readonly Inline[];
  readonly mark: Mark;
}

export interface Columns {
  readonly title: string;
  readonly planned: string;
  readonly within?: string;
  /** Columns to be filled in by hand. */
  readonly empty?: readonly string[];
}

/** What a part of a cell says, and what it rests on. */
interface Said {
  readonly text: string;
  readonly rests: readonly { readonly status: Status; readonly given: boolean }[];
}

/** The lines of which the plan holds something, as rows. */
export function rowsOf(plan: Plan, lines: readonly Line[]): Row[] {
  return lines.flatMap((line) => {
    const planned = line.each === undefined ? [joined(plan, line.pieces)] : eachOf(plan, line.each, line.pieces);
    const known = planned.filter((said) => said.text !== '');
    const texts = [...known.map((said) => said.text), ...(line.note === undefined ? [] : [line.note])];
    if (texts.length === 0) return [];
    const between: Inline = line.each === undefined || line.each.inline === true ? '; ' : BREAK;
    return [
      {
        title: line.title,
        planned: apart(texts, between),
        within: [joined(plan, line.within ?? []).text || '–'],
        mark: markOf(known.flatMap((said) => said.rests)),
      },
    ];
  });
}

/** The rows under their columns: title, planned, bounds, what it rests on, and what is filled in by hand. */
export function rowsTable(rows: readonly Row[], columns: Columns): Table {
  const empty = columns.empty ?? [];
  const within = columns.within === undefined ? [] : [columns.within];
  return table(
    [columns.title, columns.planned, ...within, 'Status', ...empty],
    rows.map((row) => [[row.title], row.planned, ...within.map(() => row.within), [row.mark === '' ? '–' : row.mark], ...empty.map(() => [])]),
  );
}

function apart(texts: readonly string[], between: Inline): Inline[] {
  return texts.flatMap((text, i) => (i === 0 ? [text] : [between, text]));
}

function joined(plan: Plan, pieces: readonly Piece[], item?: string): Said {
  const said = pieces.flatMap((piece) => say(plan, piece, item));
  return { text: said.map(({ text }) => text).join(', '), rests: said.flatMap(({ rests }) => rests) };
}

function eachOf(plan: Plan, each: Each, pieces: readonly Piece[]): Said[] {
  const items = itemsOf(plan, each);
  const shown = items.slice(0, each.most).map((item): Said => {
    const { text, rests } = joined(plan, pieces, item);
    return { text: `${item}: ${text}`, rests };
  });
  const more = items.slice(each.most);
  return more.length === 0 ? shown : [...shown, { text: `and ${more.length} more, in the plan`, rests: [] }];
}

/** The items of an id that the plan holds, in its order. */
function itemsOf(plan: Plan, { id, except = [] }: Each): string[] {
  const begin = `${id}[`;
  const ids = [...plan.texts.keys(), ...plan.values.keys()].filter((key) => key.startsWith(begin) && key.endsWith(']'));
  return ids.filter((key) => !except.includes(plan.texts.get(key) ?? '')).map((key) => key.slice(begin.length, -1));
}

function say(plan: Plan, piece: Piece, lineItem: string | undefined): Said[] {
  if (piece.unless?.some((id) => plan.values.has(id) || plan.texts.has(id)) === true) return [];
  const item = piece.item ?? lineItem;
  const full = (id: string): string => (item === undefined ? id : `${id}[${item}]`);
  const key = full(piece.id);
  const value = plan.values.get(key);
  const text = value === undefined ? plan.texts.get(key) : printTraced(value);
  if (text === undefined || text === '') return [];
  const end = piece.to === undefined ? undefined : plan.values.get(full(piece.to));
  const range = end === undefined ? text : `${text} to ${printTraced(end)}`;
  const words = [piece.label, range, piece.after].filter((word) => word !== undefined);
  const decision = plan.decisions.get(key);
  const rests = [
    ...[value, end].flatMap((one) => (one === undefined ? [] : [{ status: one.status, given: one.kind === 'input' || one.kind === 'pinned' }])),
    ...(value === undefined && decision !== undefined ? [{ status: decision.status, given: decision.kind === 'input' || decision.kind === 'pinned' }] : []),
  ];
  return [{ text: words.join(' '), rests }];
}

function markOf(rests: Said['rests']): Mark {
  if (rests.length === 0) return '';
  if (rests.every(({ given }) => given)) return 'given';
  return weakest(...rests.map(({ status }) => status));
}
