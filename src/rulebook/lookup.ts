import { Refusal } from '../kernel/apply.ts';
import { formatNumber } from '../kernel/format.ts';
import { mergeSources, weakest } from '../kernel/status.ts';
import { type RangeVerdict, Traced } from '../kernel/traced.ts';
import { convert, type Unit } from '../kernel/units.ts';
import type { Axis, Figure, Table, TableRow } from './types.ts';

export type AxisValue = string | Traced;

export interface Reading<U extends Unit> {
  readonly result: Traced<U>;
  readonly warnings: readonly string[];
}

/**
 * Reads one column of a table at the given axes and files the figure under `id`.
 * @throws Refusal when the table has no figure there, or an axis value lies outside and the table refuses.
 */
export function readTable<U extends Unit>(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>, id: string, unit: U): Reading<U> {
  const gives = table.gives.find((candidate) => candidate.name === column);
  if (gives === undefined) throw new TypeError(`table ${table.id} has no column ${column}`);
  const parents = Object.values(axes).filter((value): value is Traced => value instanceof Traced);
  const warnings: string[] = [];
  let rows: readonly TableRow[] = table.rows;
  for (const axis of table.axes) {
    if (axis.kind !== 'word') continue;
    const wanted = axes[axis.name];
    if (typeof wanted !== 'string') throw new TypeError(`table ${table.id}: axis ${axis.name} needs a word`);
    rows = rows.filter((row) => row.at[axis.name] === wanted);
  }
  let verdict: RangeVerdict = 'inside';
  for (const axis of table.axes) {
    if (axis.kind !== 'number' || axis.reading !== 'up-to') continue;
    const picked = pickStep(table, axis, rows, numberOn(table, axis, axes), parents);
    rows = picked.rows;
    if (picked.warning !== undefined) {
      warnings.push(picked.warning);
      verdict = 'clamped';
    }
  }
  const linear = table.axes.find((axis): axis is Axis & { kind: 'number' } => axis.kind === 'number' && axis.reading === 'linear');
  const figures = rows.map((row) => ({ row, figure: row.cells[column] })).filter((entry): entry is { row: TableRow; figure: Figure } => entry.figure != null);
  if (figures.length === 0) throw noFigure(table, column, axes, parents);
  let figure: Figure;
  if (linear === undefined) figure = (figures[0] as { figure: Figure }).figure;
  else {
    const read = interpolate(table, linear, figures, numberOn(table, linear, axes), parents);
    figure = read.figure;
    if (read.verdict !== 'inside') {
      verdict = read.verdict;
      warnings.push(read.warning as string);
    }
  }
  const result = Traced.table(id, convert(figure.value, gives.unit, unit), unit, {
    table: table.id,
    source: figure.source,
    status: figure.status,
    parents,
    range: verdict,
    note: withHouse(figure.note, table.house),
  });
  return { result, warnings };
}

/** A figure of a house table says so wherever it is printed. */
function withHouse(note: string | undefined, house: string | undefined): string | undefined {
  return house === undefined ? note : [...(note === undefined ? [] : [note]), `house rules: ${house}`].join('; ');
}

function numberOn(table: Table, axis: Axis & { kind: 'number' }, axes: Readonly<Record<string, AxisValue>>): number {
  const wanted = axes[axis.name];
  if (!(wanted instanceof Traced)) throw new TypeError(`table ${table.id}: axis ${axis.name} needs a traced number`);
  return convert(wanted.value, wanted.unit, axis.unit);
}

function pickStep(
  table: Table,
  axis: Axis & { kind: 'number' },
  rows: readonly TableRow[],
  value: number,
  parents: readonly Traced[],
): { rows: TableRow[]; warning?: string } {
  const bounds = [...new Set(rows.map((row) => row.at[axis.name] as number))].sort((a, b) => a - b);
  const bound = bounds.find((candidate) => value <= candidate);
  if (bound !== undefined) return { rows: rows.filter((row) => row.at[axis.name] === bound) };
  const last = bounds[bounds.length - 1];
  if (last === undefined) return { rows: [] };
  const sentence = `${axis.name} ${formatNumber(value)} ${axis.unit} lies above ${formatNumber(last)} ${axis.unit}, the end of table ${table.id}`;
  if (axis.outside === 'refuse')
    throw new Refusal(`range/${table.id}`, sentence, 'no published figure: decide it with the die caster and pin the value', parents);
  return { rows: rows.filter((row) => row.at[axis.name] === last), warning: `${sentence}; its last row was used` };
}

function interpolate(
  table: Table,
  axis: Axis & { kind: 'number' },
  entries: readonly { row: TableRow; figure: Figure }[],
  value: number,
  parents: readonly Traced[],
): { figure: Figure; verdict: RangeVerdict; warning?: string } {
  const points = entries.map(({ row, figure }) => ({ x: row.at[axis.name] as number, figure })).sort((a, b) => a.x - b.x);
  type Point = (typeof points)[number];
  const first = points[0] as Point;
  const last = points[points.length - 1] as Point;
  const outside = value < first.x || value > last.x;
  const sentence = `${axis.name} ${formatNumber(value)} ${axis.unit} lies outside ${formatNumber(first.x)} to ${formatNumber(last.x)} ${axis.unit}, the range of table ${table.id}`;
  if (outside && axis.outside === 'refuse')
    throw new Refusal(`range/${table.id}`, sentence, 'no published figure: decide it with the die caster and pin the value', parents);
  if (outside && axis.outside === 'clamp') {
    return { figure: value < first.x ? first.figure : last.figure, verdict: 'clamped', warning: `${sentence}; the figure at its end was used` };
  }
  const upper = Math.max(1, points.findIndex((point) => point.x >= value) === -1 ? points.length - 1 : points.findIndex((point) => point.x >= value));
  const a = points[Math.min(upper, points.length - 1) - 1] ?? first;
  const b = points[Math.min(upper, points.length - 1)] ?? first;
  const share = b.x === a.x ? 0 : (value - a.x) / (b.x - a.x);
  // At a printed point the figure is that point's own; the neighbour adds neither value nor mark.
  if (share === 0 || share === 1) return { figure: share === 0 ? a.figure : b.figure, verdict: 'inside' };
  const figure: Figure = {
    value: a.figure.value + share * (b.figure.value - a.figure.value),
    status: weakest(a.figure.status, b.figure.status),
    source: mergeSources(a.figure.source, b.figure.source),
    note: `interpolated between ${formatNumber(a.x)} and ${formatNumber(b.x)} ${axis.unit}`,
  };
  return outside ? { figure, verdict: 'extrapolated', warning: `${sentence}; the figure is an extrapolation` } : { figure, verdict: 'inside' };
}

function noFigure(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>, parents: readonly Traced[]): Refusal {
  const where = Object.entries(axes).map(([name, value]) => `${name} ${value instanceof Traced ? `${formatNumber(value.value)} ${value.unit}` : value}`);
  return new Refusal(
    `table/no-figure`,
    `table ${table.id} has no ${column} for ${where.join(', ')}`,
    'decide it with the die caster and pin the value',
    parents,
  );
}
