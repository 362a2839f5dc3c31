import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arrange, outerSides, SIDES, type SlideSides, sideOf } from '../../../src/engine/steps/die/arrange.ts';

const none = { room: 0, slides: 0 };
const sides = (of: Partial<SlideSides>): SlideSides => ({ left: none, right: none, bottom: none, top: none, ...of });
const one = { room: 60, slides: 1 };

describe('castings with slides in a die', () => {
  test('one slide: two castings are turned back to back, with nothing between them', () => {
    const placed = arrange(2, 1, sides({ right: one }));
    expect(placed.turned).toEqual([true, false]);
    expect(placed.between).toBe(0);
    expect(placed.edges).toEqual({ left: 60, right: 60, bottom: 0, top: 0 });
    expect(placed.gapColumns).toEqual([0]);
  });
  test('two opposite slides stand between two castings beside each other, and not between two one above the other', () => {
    const opposite = sides({ left: one, right: one });
    expect(arrange(2, 1, opposite)).toMatchObject({ between: 2, gapColumns: [120] });
    expect(arrange(1, 2, opposite)).toMatchObject({ between: 0, gapRows: [0], edges: { left: 60, right: 60 } });
  });
  test('the third casting of a row has its slide in a gap however it is turned', () => {
    expect(arrange(3, 1, sides({ right: one })).between).toBe(1);
  });
  test('a slide that leaves below is turned to the top where nothing speaks against it', () => {
    expect(arrange(1, 1, sides({ bottom: one }))).toMatchObject({ turned: [true], below: 0 });
    expect(arrange(1, 1, sides({ bottom: one, top: one })).below).toBe(1);
  });
  test('every slide of every casting stands at an edge or between castings', () => {
    const side = fc.record({ room: fc.integer({ min: 1, max: 100 }), slides: fc.integer({ min: 0, max: 2 }) });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 4 }),
        fc.record({ left: side, right: side, bottom: side, top: side }),
        (columns, rows, slides) => {
          const placed = arrange(columns, rows, slides);
          const each = SIDES.reduce((sum, name) => sum + slides[name].slides, 0);
          const outer = placed.turned.reduce(
            (sum, turned, i) => SIDES.reduce((all, name) => all + (outerSides(i, columns, rows).includes(sideOf(name, turned)) ? slides[name].slides : 0), sum),
            0,
          );
          expect(placed.between + outer).toBe(each * columns * rows);
        },
      ),
    );
  });
});
