import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOut, type SideSlide, type ToPlace } from '../../../../src/engine/die-set/layout.ts';
import type { SetLayout } from '../../../../src/engine/die-set/set.ts';
import { ordersOf, spread } from '../../../../src/engine/die-set/shelves.ts';
import { turned, turnedWay } from '../../../../src/engine/die-set/turn.ts';
import { SIDES } from '../../../../src/engine/steps/die/arrange.ts';

const casting = (id: string, a: number, b: number, slides: readonly SideSlide[] = []): ToPlace => ({
  member: id.split(' ')[0] as string,
  id,
  a,
  b,
  area: (a * b) / 100,
  slides,
});
const slide = (side: SideSlide['side'], room = 60): SideSlide => ({ item: 'S1', side, room, hydraulic: false });
const centre = ({ castings }: SetLayout, of: readonly ToPlace[], axis: 'x' | 'y'): number => {
  const area = (id: string) => of.find((one) => one.id === id)?.area ?? 0;
  return castings.reduce((sum, one) => sum + one[axis] * area(one.id), 0) / of.reduce((sum, one) => sum + one.area, 0);
};

describe('turning', () => {
  test('a quarter against the clock leads right to top, and four lead back', () => {
    expect(SIDES.map((side) => turned(side, 1))).toEqual(['bottom', 'top', 'right', 'left']);
    expect(SIDES.map((side) => turned(turned(side, 3), 1))).toEqual([...SIDES]);
    expect([turnedWay([1, 0], 1), turnedWay([1, 0], 2), turnedWay([0, 1], 1), turnedWay([0, 1], 3)]).toEqual([
      [0, 1],
      [-1, 0],
      [-1, 0],
      [1, 0],
    ]);
  });

  test('a side and the way to it are turned alike', () => {
    const way = { right: [1, 0], top: [0, 1], left: [-1, 0], bottom: [0, -1] } as const;
    for (const side of SIDES) for (const turns of [0, 1, 2, 3] as const) expect(turnedWay(way[side], turns)).toEqual([...way[turned(side, turns)]]);
  });
});

describe('rows of castings', () => {
  test('are about as wide as each other', () => {
    const size = (width: number) => ({ width, height: 10 });
    expect(spread([50, 40, 30, 20, 10], 2, size)).toEqual([
      [50, 20, 10],
      [40, 30],
    ]);
  });

  test('are tried in every order that looks different', () => {
    expect(ordersOf(['a', 'a', 'b'], (one) => one).map((order) => order.join(''))).toEqual(['aab', 'aba', 'baa']);
    expect(ordersOf(['a', 'a', 'a', 'a', 'b', 'b', 'b', 'b'], (one) => one)).toHaveLength(1);
  });
});

describe('the layout of castings of several parts', () => {
  test('two alike stand side by side, as far apart as the steel', () => {
    const layout = layOut([casting('left', 80, 50), casting('right', 80, 50)], 40);
    expect([layout.width, layout.height]).toEqual([140, 80]);
    expect(layout.castings.map(({ x, y }) => [x, y]).sort(([a = 0], [b = 0]) => a - b)).toEqual([
      [-45, 0],
      [45, 0],
    ]);
    expect(layout.amid).toBe(true);
  });

  test('slides leave to the outside, and not below, where a turn can bring that about', () => {
    const layout = layOut([casting('body', 170, 110, [slide('left')]), casting('lid', 170, 110)], 60);
    expect(layout.inner).toEqual([]);
    const body = layout.castings.find(({ id }) => id === 'body');
    const side = turned('left', body?.turns ?? 0);
    expect(body?.edges).toContain(side);
    expect(side).not.toBe('bottom');
  });

  test('a slide that has nowhere to go is told of, and gets its room', () => {
    const crossed = [slide('left'), slide('right'), slide('top'), slide('bottom')];
    const layout = layOut([casting('one', 100, 100, crossed), casting('two', 100, 100, crossed)], 50);
    expect(layout.inner).toHaveLength(2);
    expect(layout.width).toBe(100 + 60 + 50 + 60 + 100);
  });

  test('the heavier casting does not pull the pressure centre off where a like one can stand across', () => {
    const of = [casting('big 1', 120, 100), casting('big 2', 120, 100), casting('small 1', 60, 40), casting('small 2', 60, 40)];
    const layout = layOut(of, 40);
    expect(Math.hypot(centre(layout, of, 'x'), centre(layout, of, 'y'))).toBeLessThan(1e-6);
  });

  test('no two castings come closer than the steel, and all lie in the field', () => {
    const one = fc.record({ a: fc.integer({ min: 20, max: 200 }), ratio: fc.double({ min: 0.3, max: 1, noNaN: true }), count: fc.integer({ min: 1, max: 3 }) });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 4 }), fc.integer({ min: 20, max: 80 }), fc.constantFrom(...SIDES), (parts, steel, side) => {
        const of = parts.flatMap(({ a, ratio, count }, p) =>
          Array.from({ length: count }, (_, i) => casting(`p${p} ${i}`, a, a * ratio, p === 0 ? [slide(side)] : [])),
        );
        const { castings, width, height } = layOut(of, steel);
        expect(castings.map(({ id }) => id).sort()).toEqual(of.map(({ id }) => id).sort());
        expect(width).toBeGreaterThanOrEqual(height);
        for (const [i, x] of castings.entries()) {
          expect(Math.abs(x.x) + x.width / 2).toBeLessThanOrEqual(width / 2 + 1e-3);
          expect(Math.abs(x.y) + x.height / 2).toBeLessThanOrEqual(height / 2 + 1e-3);
          for (const y of castings.slice(i + 1)) {
            const across = Math.abs(x.x - y.x) - (x.width + y.width) / 2;
            const upright = Math.abs(x.y - y.y) - (x.height + y.height) / 2;
            expect(Math.max(across, upright)).toBeGreaterThanOrEqual(steel - 1e-3);
          }
        }
      }),
      { numRuns: 150 },
    );
  });
});
