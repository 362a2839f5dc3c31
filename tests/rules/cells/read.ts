/** A place on the axes of a table. */
export type At = Readonly<Record<string, string | number>>;

/** A cell typed a second time, in the unit of its table, with the mark that it must carry. */
export interface TypedCell {
  readonly table: string;
  readonly at: At;
  readonly column: string;
  /** null: the cell must be empty. */
  readonly value: number | null;
  /** Share of the value by which the cell may differ, because a converted figure is rounded. */
  readonly within: number;
  readonly status: string;
  /** The work that it was typed from, or how it came about. */
  readonly from: string;
}

/** A figure that was converted may differ by half its last printed digit, but never by as much as hides a change of 5 %. */
const MOST = 0.024;
const ROUNDING = 1e-9;

/** Half the last printed digit as a share: `0.035` may be anything from 0.0345 to 0.0355. */
function half(printed: string): number {
  if (printed.includes('/')) return 0.001;
  const decimals = printed.split('.')[1]?.length ?? 0;
  return Math.min(MOST, (0.5 * 10 ** -decimals) / Number(printed));
}

const number = (printed: string): number => {
  const [over, under = '1'] = printed.split('/');
  return Number(over) / Number(under);
};

/** Whether a factor only shifts the decimal point, which rounds nothing. */
const shifts = (times: number): boolean => Math.abs(Math.log10(times) - Math.round(Math.log10(times))) < ROUNDING;

/** The columns that a head names, with the figures beside them: `rise..` of `10-50` is rise_least 10 and rise_greatest 50. */
function split(head: string, figure: string): [column: string, printed: string][] {
  if (!head.endsWith('..')) return [[head, figure]];
  const stem = head === '..' ? '' : `${head.slice(0, -2)}_`;
  const [least = '', greatest = ''] = figure.split('-');
  return [
    [`${stem}least`, least],
    [`${stem}greatest`, greatest],
  ];
}

/**
 * Reads a table as it is printed. The first line names axes (`family:` a word, `area#` a number) and columns (`rise..` for its
 * least and greatest, `..` for least and greatest); `-` stands for no figure, `_` in a word for a space, `1/3` for a fraction.
 * @param times what one of the printed unit is in the unit of the table
 */
export function grid(table: string, from: string, text: string, times = 1): TypedCell[] {
  const [heads = [], ...rows] = text
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/));
  return rows.flatMap((row) => {
    if (row.length !== heads.length) throw new Error(`${table}: ${row.length} entries under ${heads.length} heads in "${row.join(' ')}"`);
    const at: Record<string, string | number> = {};
    const cells: TypedCell[] = [];
    for (const [i, head] of heads.entries()) {
      const entry = row[i] as string;
      if (head.endsWith(':')) at[head.slice(0, -1)] = entry.replaceAll('_', ' ');
      else if (head.endsWith('#')) at[head.slice(0, -1)] = Number(entry);
      else if (entry !== '-')
        for (const [column, printed] of split(head, entry)) {
          if (printed === '') continue;
          const within = shifts(times) && !printed.includes('/') ? ROUNDING : half(printed);
          cells.push({ table, at, column, value: number(printed) * times, within, status: 'source', from });
        }
    }
    return cells;
  });
}

/** Whether a figure of the rules is the typed one. */
export const matches = (typed: Pick<TypedCell, 'value' | 'within'>, value: number): boolean =>
  typed.value !== null && Math.abs(value - typed.value) <= Math.abs(typed.value) * typed.within;
