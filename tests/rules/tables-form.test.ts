import { describe, expect, it } from 'vitest';
import { STATUSES } from '../../src/kernel/status.ts';
import { isUnit } from '../../src/kernel/units.ts';
import { figure, type Row, type TableFile, tables } from './tables.ts';

const wordsOf = (row: Row, table: TableFile): string =>
  Object.entries(table.axes)
    .flatMap(([name, axis]) => ('values' in axis ? [[row[name]].flat().join('+')] : []))
    .join(' ');

describe.each(tables.map((table) => [table.id, table] as const))('table %s', (_id, table) => {
  const axes = Object.entries(table.axes);

  it('names known units and says what each column means', () => {
    for (const column of Object.values(table.gives))
      expect([isUnit(column.unit), column.meaning.length > 3, Object.keys(column).length]).toEqual([true, true, 2]);
    for (const [, axis] of axes) if (!('values' in axis)) expect(isUnit(axis.unit)).toBe(true);
  });

  it('uses every word of its axes and no other, and no other keys', () => {
    for (const [name, axis] of axes) {
      if (!('values' in axis)) continue;
      expect(new Set(table.rows.flatMap((row) => [row[name]].flat()))).toEqual(new Set(axis.values));
    }
    const known = [...Object.keys(table.axes), ...Object.keys(table.gives), 'status', 'source', 'note'];
    for (const row of table.rows) expect(known).toEqual(expect.arrayContaining(Object.keys(row)));
  });

  it('has numeric axes that rise strictly within each group of words', () => {
    for (const [name, axis] of axes) {
      if ('values' in axis) continue;
      const last = new Map<string, number>();
      for (const row of table.rows) {
        const at = row[name] as number;
        expect(Number.isFinite(at)).toBe(true);
        expect(at).toBeGreaterThan(last.get(wordsOf(row, table)) ?? Number.NEGATIVE_INFINITY);
        last.set(wordsOf(row, table), at);
      }
    }
  });

  it('marks every figure, and names a source for each that is not memory or practice', () => {
    for (const row of table.rows) {
      for (const column of Object.keys(table.gives)) {
        const found = figure(table, row, column);
        if (found === undefined) continue;
        expect(STATUSES).toContain(found.status);
        if (found.status === 'source' || found.status === 'derived') expect(found.source.length).toBeGreaterThan(0);
        for (const reference of found.source) expect(reference).toMatch(/^[A-Z][A-Za-z0-9-]+( .+)?$/);
      }
    }
  });

  it('keeps least below greatest, and the figure used between them', () => {
    for (const row of table.rows) {
      for (const greatest of Object.keys(table.gives)) {
        if (!/(^|_)greatest$/.test(greatest)) continue;
        const stem = greatest.slice(0, -'greatest'.length);
        const [low, high] = [`${stem}least`, greatest].map((column) => figure(table, row, column)?.value);
        if (low === undefined || high === undefined) continue;
        expect(low).toBeLessThanOrEqual(high);
        for (const middle of ['used', 'typical', 'usual', 'usual_least', 'usual_greatest']) {
          const value = figure(table, row, stem + middle)?.value;
          // The usual machining stock reaches below the least that was remembered: the two sources disagree.
          if (value === undefined || (table.id === 'machining/stock' && middle === 'usual_least')) continue;
          expect(value).toBeGreaterThanOrEqual(low);
          expect(value).toBeLessThanOrEqual(high);
        }
      }
    }
  });
});

/** Values of a column along a numeric axis, one list for each group of words. */
function along(id: string, axis: string, column: string): number[][] {
  const table = tables.find((candidate) => candidate.id === id) as TableFile;
  const groups = new Map<string, Row[]>();
  for (const row of table.rows) groups.set(wordsOf(row, table), [...(groups.get(wordsOf(row, table)) ?? []), row]);
  return [...groups.values()].map((rows) =>
    rows.sort((a, b) => (a[axis] as number) - (b[axis] as number)).flatMap((row) => figure(table, row, column)?.value ?? []),
  );
}

/** Physical sense, no source needed: larger things get larger figures, and thin walls need more overflow. */
it.each([
  ['tolerance/parting-line', 'area', 'amount', 1],
  ['tolerance/moving-component', 'area', 'amount', 1],
  ['tolerance/moving-component-uk', 'area', 'amount', 1],
  ['tolerance/iso-8062-3', 'nominal', 'width', 1],
  ['wall/by-area', 'area', 'least', 1],
  ['wall/by-area', 'area', 'normal', 1],
  ['hole/greatest-depth', 'diameter', 'depth', 1],
  ['hole/caution-depth', 'diameter', 'depth', 1],
  ['hole/handbook-depth', 'diameter', 'ratio', 1],
  ['fill/frommer', 'wall', 'greatest', 1],
  ['fill/handbook', 'wall', 'least', 1],
  ['fill/handbook', 'wall', 'velocity_least', -1],
  ['gate/wall-velocity', 'wall', 'greatest', -1],
  ['overflow/share', 'wall', 'share', -1],
])('%s: along %s, %s goes one way only', (id, axis, column, sign) => {
  for (const values of along(id, axis, column))
    for (let i = 1; i < values.length; i++) expect(sign * ((values[i] as number) - (values[i - 1] as number))).toBeGreaterThanOrEqual(0);
});
