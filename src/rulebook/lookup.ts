import { Refusal } from '../kernel/apply.ts';
import { formatBeside, formatNumber } from '../kernel/format.ts';
import { mergeSources, weakest } from '../kernel/status.ts';
import { type RangeVerdict, Traced } from '../kernel/traced.ts';
import { convert, type Unit } from '../kernel/units.ts';
import type { Axis, Figure, Table, TableRow } from './types.ts';

export type AxisValue = string | Traced;

export interface Reading<U extends Unit> {
  readonly result: Traced<U>;
  readonly warnings: readonly string[];
}

/** A figure as a table has it, or as it lies between two of them. */
interface Found {
  readonly figure: Figure;
  /** In which the column is written. */
  readonly unit: Unit;
  readonly verdict: RangeVerdict;
  readonly warnings: readonly string[];
}

/**
 * Reads one column of a table at the given axes and files the figure under `id`.
 * @throws Refusal when the table has no figure there, or an axis value lies outside and the table refuses.
 */
export function readTable<U extends Unit>(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>, id: string, unit: U): Reading<U> {
  const { figure, unit: written, verdict, warnings } = find(table, column, axes);
  const result = Traced.table(id, convert(figure.value, written, unit), unit, {
    table: table.id,
    source: figure.source,
    status: figure.status,
    parents: parentsOf(axes),
    range: verdict,
    note: withHouse(figure.note, table.house),
  });
  return { result, warnings };
}

/** The number that `readTable` gives, without where it comes from. */
export function readNumber(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>, unit: Unit): number {
  const { figure, unit: written } = find(table, column, axes);
  return convert(figure.value, written, unit);
}

function find(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>): Found {
  const gives = table.gives.find((candidate) => candidate.name === column);
  if (gives === undefined) throw new TypeError(`table ${table.id} has no column ${column}`);
  const { unit } = gives;
  let rows: readonly TableRow[] = table.rows;
  for (const axis of table.axes) {
    if (axis.kind !== 'word') continue;
    const wanted = axes[axis.name];
    if (typeof wanted !== 'string') throw new TypeError(`table ${table.id}: axis ${axis.name} needs a word`);
    rows = rows.filter((row) => row.at[axis.name] === wanted);
  }
  const warnings: string[] = [];
  for (const axis of table.axes) {
    if (axis.kind !== 'number' || axis.reading !== 'up-to') continue;
    const picked = pickStep(table, axis, rows, numberOn(table, axis, axes), axes);
    rows = picked.rows;
    if (picked.warning !== undefined) warnings.push(picked.warning);
  }
  const verdict: RangeVerdict = warnings.length > 0 ? 'clamped' : 'inside';
  const filled = rows.filter((row) => row.cells[column] != null);
  const [first] = filled;
  if (first === undefined) throw noFigure(table, column, axes);
  const linear = table.axes.find((axis): axis is Axis & { kind: 'number' } => axis.kind === 'number' && axis.reading === 'linear');
  if (linear === undefined) return { figure: first.cells[column] as Figure, unit, verdict, warnings };
  const read = interpolate(table, linear, filled, column, axes);
  return read.verdict === 'inside'
    ? { figure: read.figure, unit, verdict, warnings }
    : { figure: read.figure, unit, verdict: read.verdict, warnings: [...warnings, read.warning as string] };
}

function parentsOf(axes: Readonly<Record<string, AxisValue>>): Traced[] {
  return Object.values(axes).filter((value): value is Traced => value instanceof Traced);
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

/** The rows of the least bound that the value does not exceed. */
function pickStep(
  table: Table,
  axis: Axis & { kind: 'number' },
  rows: readonly TableRow[],
  value: number,
  axes: Readonly<Record<string, AxisValue>>,
): { rows: readonly TableRow[]; warning?: string } {
  let [bound, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const row of rows) {
    const at = row.at[axis.name] as number;
    if (value <= at && at < bound) bound = at;
    if (at > last) last = at;
  }
  if (rows.length === 0) return { rows };
  const beyond = bound === Number.POSITIVE_INFINITY;
  const picked = rows.filter((row) => row.at[axis.name] === (beyond ? last : bound));
  if (!beyond) return { rows: picked };
  const sentence = `${axis.name} ${formatBeside(value, last, axis.unit)} lies above ${formatNumber(last)} ${axis.unit}, the end of table ${table.id}`;
  if (axis.outside === 'refuse') throw outsideTable(table, sentence, axes);
  return { rows: picked, warning: `${sentence}; its last row was used` };
}

function outsideTable(table: Table, sentence: string, axes: Readonly<Record<string, AxisValue>>): Refusal {
  return new Refusal(`range/${table.id}`, sentence, 'no published figure: decide it with the die caster and pin the value', parentsOf(axes));
}

function interpolate(
  table: Table,
  axis: Axis & { kind: 'number' },
  rows: readonly TableRow[],
  column: string,
  axes: Readonly<Record<string, AxisValue>>,
): { figure: Figure; verdict: RangeVerdict; warning?: string } {
  const value = numberOn(table, axis, axes);
  const points = rows.map((row) => ({ x: row.at[axis.name] as number, figure: row.cells[column] as Figure })).sort((a, b) => a.x - b.x);
  type Point = (typeof points)[number];
  const first = points[0] as Point;
  const last = points[points.length - 1] as Point;
  const outside = value < first.x || value > last.x;
  const sentence = (): string =>
    `${axis.name} ${formatBeside(value, value < first.x ? first.x : last.x, axis.unit)} lies outside ${formatNumber(first.x)} to ${formatNumber(last.x)} ${axis.unit}, the range of table ${table.id}`;
  if (outside && axis.outside === 'refuse') throw outsideTable(table, sentence(), axes);
  if (outside && axis.outside === 'clamp') {
    return { figure: value < first.x ? first.figure : last.figure, verdict: 'clamped', warning: `${sentence()}; the figure at its end was used` };
  }
  const above = points.findIndex((point) => point.x >= value);
  const upper = Math.max(1, above === -1 ? points.length - 1 : above);
  const a = points[Math.min(upper, points.length - 1) - 1] ?? first;
  const b = points[Math.min(upper, points.length - 1)] ?? first;
  const share = b.x === a.x ? 0 : (value - a.x) / (b.x - a.x);
  // At a printed point the figure is that point's own; the neighbour adds neither value nor mark.
  if (share === 0 || share === 1) return { figure: share === 0 ? a.figure : b.figure, verdict: 'inside' };
  const figure: Figure = {
    value: a.figure.value + share * (b.figure.value - a.figure.value),
    status: weakest(a.figure.status, b.figure.status),
    // Who wants the number alone asks for neither.
    get source() {
      return mergeSources(a.figure.source, b.figure.source);
    },
    get note() {
      const between = `interpolated between ${formatNumber(a.x)} and ${formatNumber(b.x)} ${axis.unit}`;
      // What is remarked on either of the two holds for what lies between them.
      return [...new Set([between, a.figure.note, b.figure.note])].filter((note) => note !== undefined).join('; ');
    },
  };
  return outside ? { figure, verdict: 'extrapolated', warning: `${sentence()}; the figure is an extrapolation` } : { figure, verdict: 'inside' };
}

function noFigure(table: Table, column: string, axes: Readonly<Record<string, AxisValue>>): Refusal {
  const where = Object.entries(axes).map(([name, value]) => `${name} ${value instanceof Traced ? `${formatNumber(value.value)} ${value.unit}` : value}`);
  return new Refusal(
    `table/no-figure`,
    `table ${table.id} has no ${column} for ${where.join(', ')}`,
    'decide it with the die caster and pin the value',
    parentsOf(axes),
  );
}
