import { describe, expect, it } from 'vitest';
import { heldCells, noticed, reasonNotTyped } from './cells/held.ts';
import { NOT_TYPED, TYPED_CELLS } from './cells/index.ts';
import { grid, matches, type TypedCell } from './cells/read.ts';
import { figureAt } from './tables.ts';

const byTable = new Map<string, TypedCell[]>();
for (const cell of TYPED_CELLS) byTable.set(cell.table, [...(byTable.get(cell.table) ?? []), cell]);

describe.each([...byTable])('%s, typed a second time', (_, cells) => {
  it.each(cells.map((cell) => [JSON.stringify(cell.at), cell.column, cell.value, cell] as const))('%s %s is %s', (_at, column, value, cell) => {
    const found = figureAt(cell.table, cell.at, column);
    if (value === null) return expect(found).toBeUndefined();
    expect(matches(cell, found?.value ?? Number.NaN), `${found?.value}, but ${cell.from} has ${value}`).toBe(true);
    expect(found?.status).toBe(cell.status);
    // The cell names the work that it was typed from, and no other.
    if (cell.status === 'source') for (const reference of found?.source ?? []) expect(cell.from).toContain(reference.split(' ')[0]);
  });
});

describe('the second copy', () => {
  const held = heldCells();
  const named = (cell: (typeof held)[number]): string => `${cell.table} row ${cell.row + 1} ${cell.column} = ${cell.value}`;

  it('holds every published cell of every table', () => {
    const open = held.filter((cell) => cell.status === 'source' && cell.typed.length === 0 && reasonNotTyped(cell) === undefined);
    expect(open.map(named)).toEqual([]);
  });
  it('notices a change of 5 % of every figure that it holds', () => {
    const typed = held.filter((cell) => cell.typed.length > 0 && cell.value !== 0);
    expect(typed.filter((cell) => [0.95, 1.05].some((factor) => !noticed(cell, cell.value * factor))).map(named)).toEqual([]);
  });
  it('types no cell twice', () => {
    expect(
      held
        .filter((cell) => cell.typed.filter(({ at }, i, all) => all.findIndex((one) => JSON.stringify(one.at) === JSON.stringify(at)) !== i).length > 0)
        .map(named),
    ).toEqual([]);
  });
  it('leaves out only published cells that there are, with a reason', () => {
    for (const { table, column, reason } of NOT_TYPED) {
      expect(held.some((cell) => cell.table === table && cell.column === column && cell.status === 'source' && cell.typed.length === 0)).toBe(true);
      expect(reason.length).toBeGreaterThan(20);
    }
  });
});

describe('the reader of grids', () => {
  const one = (text: string, times?: number): TypedCell[] => grid('t/t', 'work', text, times);
  it('reads axes, ranges, fractions and gaps', () => {
    expect(one('use: wall# a.. .. b\nfor_all 2.5 1-2 -4 -').map(({ at, column, value }) => [at, column, value])).toEqual([
      [{ use: 'for all', wall: 2.5 }, 'a_least', 1],
      [{ use: 'for all', wall: 2.5 }, 'a_greatest', 2],
      [{ use: 'for all', wall: 2.5 }, 'greatest', 4],
    ]);
    expect(one('share\n1/4')[0]?.value).toBe(0.25);
  });
  it('allows half the last printed digit of a converted figure, and nothing else', () => {
    const [inch] = one('wall\n0.080', 25.4);
    expect([2.032, 2.03, 2.04, 2.05].map((value) => matches(inch as TypedCell, value))).toEqual([true, true, true, false]);
    const [plain] = one('wall\n2.0');
    expect([2, 2.001].map((value) => matches(plain as TypedCell, value))).toEqual([true, false]);
    const [milliseconds] = one('time\n0.02', 1000);
    expect([20, 20.1].map((value) => matches(milliseconds as TypedCell, value))).toEqual([true, false]);
  });
  it('refuses a row of another length', () => {
    expect(() => one('a b\n1')).toThrow('1 entries under 2 heads');
  });
});
