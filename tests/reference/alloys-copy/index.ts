/* Every figure of the alloys beside its second copy. */
import type { Status } from '../../../src/kernel/status.ts';
import { EACH, type Figure, type Ratings, UNIT } from '../alloys.ts';
import { COMPOSITIONS } from './compositions.ts';
import { OTHERS } from './others.ts';
import { FREEZING, PROPERTIES } from './properties.ts';
import { RATINGS } from './ratings.ts';

/** A figure, or the two ends of a range, with its mark. */
export type Copy = Pick<Figure, 'value' | 'least' | 'greatest' | 'status'>;

/** The stored figures of one name of an alloy, and what the second copy has in their place. */
export interface Pair {
  readonly alloy: string;
  readonly kind: 'property' | 'other figure' | 'composition' | 'rating';
  readonly name: string;
  readonly stored: readonly Copy[];
  readonly typed: readonly Copy[];
}

const MARKS: Readonly<Record<string, Status>> = { d: 'derived', p: 'practice', m: 'memory' };
/** The columns of `PROPERTIES`; shrinkage in freezing stands apart. */
export const COLUMNS: readonly string[] = Object.keys(UNIT).slice(0, -1);

/** `6-10m` as a figure: numbers and mark. */
function copy(text: string): Copy {
  const status = MARKS[text.slice(-1)] ?? 'source';
  const figure = text.replace(/[a-z]$/, '');
  if (figure.startsWith('<')) return { greatest: Number(figure.slice(1)), status };
  const [first, second] = figure.split('-').map(Number);
  return second === undefined ? { value: Number(first), status } : { least: Number(first), greatest: second, status };
}

/** The lines of a copy: name of the alloy, and what stands behind it. */
const lines = (text: string): (readonly [alloy: string, ...parts: string[]])[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [alloy = '', ...parts] = line.split('|').map((part) => part.trim());
      return [alloy, ...parts] as const;
    });

type ByName = Record<string, readonly Copy[]>;
const byAlloy = (rows: readonly (readonly [alloy: string, names: ByName])[]): ReadonlyMap<string, ByName> => new Map(rows);

const properties = byAlloy(
  lines(PROPERTIES).map(([alloy, ...groups]) => {
    const entries = groups.join(' ').split(' ');
    if (entries.length !== COLUMNS.length) throw new Error(`${alloy}: ${entries.length} entries under ${COLUMNS.length} columns`);
    const named = COLUMNS.flatMap((name, i) => (entries[i] === '-' ? [] : [[name, [copy(entries[i] as string)]] as const]));
    const freezing = FREEZING[alloy];
    const rest: ByName = freezing === undefined ? {} : { solidification_shrinkage: [{ value: freezing, status: 'source' }] };
    return [alloy, { ...Object.fromEntries(named), ...rest }];
  }),
);

const named = (part: string): [name: string, ...figures: string[]] => part.split(' ') as [string, ...string[]];
const others = byAlloy(
  lines(OTHERS).map(([alloy, text = '']) => [
    alloy,
    Object.fromEntries(
      text.split(', ').map((part) => {
        const [name, ...figures] = named(part);
        return [name, figures.map(copy)];
      }),
    ),
  ]),
);

/** `<0.1` is 0 to 0.1, `>54` is 54 without an upper end. */
function limit(text: string, status: Status): Copy {
  if (text.startsWith('<')) return { least: 0, greatest: Number(text.slice(1)), status };
  if (text.startsWith('>')) return { least: Number(text.slice(1)), status };
  const [least, greatest] = text.split('-').map(Number);
  return { least: least as number, greatest: greatest as number, status };
}
const compositions = byAlloy(
  lines(COMPOSITIONS).map(([alloy, text = '', mark = '']) => [
    alloy,
    Object.fromEntries(
      text.split(', ').map((part) => {
        const [element, figure = ''] = named(part);
        return [element, [limit(figure, MARKS[mark] ?? 'source')]];
      }),
    ),
  ]),
);

const ratings = byAlloy(
  RATINGS.flatMap(([names, rows]) =>
    rows.split(', ').map((row) => {
      const [alloy = '', digits = ''] = row.split('=');
      const read = Math.max(0, digits.indexOf('|'));
      const rating = (digit: string, i: number): Copy => ({ value: Number(digit), status: i < read ? 'source' : 'memory' });
      return [alloy, Object.fromEntries([...digits.replace('|', '')].map((digit, i) => [names.split(' ')[i], [rating(digit, i)]]))] as const;
    }),
  ),
);

const bare = ({ value, least, greatest, status }: Figure): Copy => ({
  ...(value === undefined ? {} : { value }),
  ...(least === undefined ? {} : { least }),
  ...(greatest === undefined ? {} : { greatest }),
  status,
});

/** The ratings of an alloy as figures; those that were read carry their own mark. */
function storedRatings(all: Ratings | undefined): ByName {
  if (all === undefined) return {};
  const of = (one: object, status: Status): [string, Copy[]][] =>
    Object.entries(one).flatMap(([name, value]) => (typeof value === 'number' ? [[name, [{ value, status }]]] : []));
  return Object.fromEntries([...of(all, all.status), ...(all.sourced === undefined ? [] : of(all.sourced, all.sourced.status as Status))]);
}

const pairs = (alloy: string, kind: Pair['kind'], stored: ByName, typed: ByName = {}): Pair[] =>
  [...new Set([...Object.keys(stored), ...Object.keys(typed)])].map((name) => ({ alloy, kind, name, stored: stored[name] ?? [], typed: typed[name] ?? [] }));

/** Every figure of every alloy, with its second copy. */
export const PAIRS: readonly Pair[] = EACH.flatMap(([id, alloy]) => {
  const each = Object.entries(alloy.properties);
  const further = each.flatMap(([name, one]) => (one.others === undefined ? [] : [[name, one.others.map(bare)] as const]));
  const limits = Object.entries(alloy.composition.limits).map(([element, [least, greatest]]) => {
    const { status } = alloy.composition;
    return [element, [greatest === null ? { least, status } : { least, greatest, status }]] as const;
  });
  return [
    ...pairs(id, 'property', Object.fromEntries(each.map(([name, one]) => [name, [bare(one)]])), properties.get(id)),
    ...pairs(id, 'other figure', Object.fromEntries(further), others.get(id)),
    ...pairs(id, 'composition', Object.fromEntries(limits), compositions.get(id)),
    ...pairs(id, 'rating', storedRatings(alloy.ratings), ratings.get(id)),
  ];
});

/** The alloys that the second copy has something on; each must be a stored one. */
export const COPIED: ReadonlySet<string> = new Set([properties, others, compositions, ratings].flatMap((one) => [...one.keys()]));

const ENDS = ['value', 'least', 'greatest'] as const;
const inOrder = (all: readonly Copy[]): string[] => all.map((one) => [...ENDS.map((end) => one[end] ?? '-'), one.status].join(' ')).sort();

/** Whether the stored figures are those of the second copy; figures of several works stand in any order. */
export const agrees = ({ stored, typed }: Pick<Pair, 'stored' | 'typed'>): boolean => inOrder(stored).join() === inOrder(typed).join();

/** One number of an alloy, and whether the second copy notices it written as something else. */
export interface AlloyFigure {
  readonly alloy: string;
  readonly kind: Pair['kind'];
  /** The property, element or rating. */
  readonly of: string;
  readonly name: string;
  readonly status: Status;
  readonly value: number;
  readonly noticed: (value: number) => boolean;
}

/** Every number of every alloy. */
export const ALLOY_FIGURES: readonly AlloyFigure[] = PAIRS.flatMap((pair) =>
  pair.stored.flatMap((one, i) =>
    ENDS.flatMap((end): AlloyFigure[] => {
      const value = one[end];
      if (value === undefined) return [];
      const changed = (other: number): Copy[] => pair.stored.map((each, k) => (k === i ? { ...each, [end]: other } : each));
      const name = `${pair.alloy}, ${pair.kind} ${pair.name}, ${end}`;
      return [
        {
          alloy: pair.alloy,
          kind: pair.kind,
          of: pair.name,
          name,
          status: one.status,
          value,
          noticed: (other) => pair.typed.length > 0 && !agrees({ stored: changed(other), typed: pair.typed }),
        },
      ];
    }),
  ),
);
