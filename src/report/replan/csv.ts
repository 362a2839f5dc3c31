import type { PartChange } from '../../engine/replan/change.ts';
import { visible } from '../visible.ts';
import type { Replanning } from './head.ts';
import { figureOf, machineOf } from './words.ts';

type Cell = string | number | undefined;

const FIGURES = [
  ['machine.cavities', 'cavities'],
  ['cycle.time', 'cycle s'],
  ['cycle.hours', 'machine hours a year'],
  ['part.mass', 'mass kg'],
  ['metal.new-per-part', 'new metal of a part kg'],
  ['cost.per-part', 'cost of a part'],
  ['cost.per-year', 'cost a year'],
] as const;

const WORDS = ['alloy', 'plant', 'castable', 'kind', 'machine', 'steel', 'currency'] as const;

const COLUMNS = [
  'file',
  'part',
  'number',
  'revision',
  'planned',
  'standing',
  'castings a year',
  ...WORDS.flatMap((word) => [`${word} before`, `${word} after`]),
  ...FIGURES.flatMap(([, title]) => [`${title} before`, `${title} after`]),
  'existing die',
  'because',
  'to be cut or made new',
  'cost of a new die',
  'cost of a set of inserts',
  'new errors',
  'new warnings',
  'parts of the die',
  'castings of a set',
  'remarks',
];

/**
 * One row a part, and one a die with several parts, which has the figures of a set of its castings; by RFC 4180. What could not
 * be planned comes last. Numbers have six digits, for sums.
 */
export function* partCsv({ parts, failures }: Replanning): Iterable<string> {
  const line = (row: readonly Cell[]): string => `${row.map(field).join(',')}\r\n`;
  yield line(COLUMNS);
  for (const part of parts) yield line(rowOf(part));
  const failed = failures.map(({ file, message }) => COLUMNS.map((column): Cell => ({ file, planned: 'no', remarks: message })[column as string]));
  for (const row of failed) yield line(row);
}

function rowOf(change: PartChange): Cell[] {
  const { file, part, standing, perYear, castings, before, after, die, dieMissing } = change;
  const all = [change, ...(change.parts ?? [])];
  const appeared = all.flatMap((one) => one.appeared);
  const yes = (value: boolean): string => (value ? 'yes' : 'no');
  const word = (side: PartChange['before'], key: (typeof WORDS)[number]): Cell =>
    key === 'castable' ? yes(side.castable) : key === 'machine' ? machineOf(side) : side[key];
  const codes = (wanted: string): string => [...new Set(appeared.filter(({ severity }) => severity === wanted).map(({ code }) => code))].join(' ');
  const touched = die?.verdict === 'new die' ? undefined : die?.elements.filter(({ stays }) => !stays);
  return [
    file,
    part.name,
    part.number,
    part.revision,
    'yes',
    standing,
    perYear === undefined ? undefined : perYear * (castings ?? 1),
    ...WORDS.flatMap((key) => [word(before, key), word(after, key)]),
    // The sets of a die are no cavities; its castings are.
    ...FIGURES.flatMap(([id]) => (castings !== undefined && id === 'machine.cavities' ? [castings, castings] : [figureOf(before, id), figureOf(after, id)])),
    die?.verdict,
    die?.because ?? dieMissing,
    touched?.map(({ title, verdict }) => `${title}: ${verdict}`).join('; '),
    die?.verdict === 'new die' ? after.figures['cost.die'] : undefined,
    die?.verdict === 'new inserts' ? after.figures['cost.set'] : undefined,
    codes('error'),
    codes('warning'),
    change.parts?.map((one) => one.file).join(' '),
    castings,
    all.flatMap(({ remarks }) => remarks).join(' '),
  ];
}

/** Signs that a spreadsheet begins to work out at, wide ones too; a programme that parts cells at ; sees more beginnings. */
const WORKED_OUT = /(^|[;\n])([\s"]*)(?=[=+\-@\uff1d\uff0b\uff0d\uff20])/g;
const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** A number bare, to six digits; a text in quotes where it needs them, and with an apostrophe before what a spreadsheet would work out. */
function field(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(Number(cell.toPrecision(6)));
  const text = visible(cell);
  const safe = PLAIN_NUMBER.test(cell) ? text : text.replace(WORKED_OUT, "$1$2'");
  return /[",\r\n;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
