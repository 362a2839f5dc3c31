import type { Table } from '../engine/rule-data.ts';
import { formatNumber } from '../kernel/format.ts';
import type { Status } from '../kernel/status.ts';
import { alignRows } from './columns.ts';
import { fieldsText } from './fields.ts';
import { originText, STATUS_WORDS } from './words.ts';

/** Signs behind a figure that does not come straight from a source; spelt out below the table. */
const SIGNS: Readonly<Record<Status, string>> = { source: '', derived: ' d', practice: ' p', memory: ' m' };

/** What `explain` prints of a table: axes and figures, the status of each figure, notes, sources. */
export function tableText(table: Table, here?: string): string {
  const notes: string[] = [];
  const signs = new Set<Status>();
  const origins = new Set<string>();
  const rows = table.rows.map((row) => [
    ...table.axes.map((axis) => axisCell(row.at[axis.name])),
    ...table.gives.map((column) => {
      const figure = row.cells[column.name];
      if (figure == null) return '–';
      signs.add(figure.status);
      origins.add(originText(figure.source, figure.status));
      if (figure.note !== undefined && !notes.includes(figure.note)) notes.push(figure.note);
      return `${formatNumber(figure.value)}${SIGNS[figure.status]}${figure.note === undefined ? '' : ` [${notes.indexOf(figure.note) + 1}]`}`;
    }),
  ]);
  return fieldsText(`${table.id}: ${table.title}`, [
    ['about', table.about],
    ['here', here],
    [
      'axes',
      table.axes.map((axis) =>
        axis.kind === 'word' ? `${axis.name}: ${axis.values.join(', ')}` : `${axis.name} in ${axis.unit}: ${READING[axis.reading]}; outside: ${axis.outside}`,
      ),
    ],
    ['gives', table.gives.map((column) => `${column.name}${column.unit === '1' ? '' : ` in ${column.unit}`}: ${column.meaning}`)],
    ['figures', alignRows([[...table.axes.map((axis) => axis.name), ...table.gives.map((column) => column.name)], ...rows])],
    ['signs', [...signs].filter((status) => status !== 'source').map((status) => `${SIGNS[status].trim()}: ${STATUS_WORDS[status]}`)],
    ['remarks', notes.map((note, i) => `[${i + 1}] ${note}`).join('\n')],
    ['notes', table.notes.join('\n')],
    ['source', [...origins]],
  ]);
}

const READING = { 'up-to': 'each row holds up to its own figure', linear: 'read between the rows on a straight line' } as const;

function axisCell(at: string | number | null | undefined): string {
  if (at === undefined || at === null) return '–';
  if (typeof at === 'string') return at;
  return at === Number.POSITIVE_INFINITY ? 'above' : formatNumber(at);
}
