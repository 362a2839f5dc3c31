import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Overlay } from '../../../src/engine/overlay.ts';

const key = fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f');
const entries = fc.array(fc.tuple(key, fc.nat({ max: 9 })), { maxLength: 8 });

describe('a map over another', () => {
  test('is as one map in which all was set in turn, and leaves the ones below alone', () => {
    fc.assert(
      fc.property(entries, entries, entries, (lowest, middle, top) => {
        const below = new Map(lowest);
        const over = new Overlay(below);
        for (const [name, value] of middle) over.set(name, value);
        const before = [...over];
        const highest = new Overlay(over);
        for (const [name, value] of top) highest.set(name, value);
        const plain = new Map([...lowest, ...middle, ...top]);
        expect([...highest]).toEqual([...plain]);
        expect([...highest.entries()]).toEqual([...plain.entries()]);
        expect([...highest.keys()]).toEqual([...plain.keys()]);
        expect([...highest.values()]).toEqual([...plain.values()]);
        expect(highest.size).toBe(plain.size);
        const seen: [string, number][] = [];
        highest.forEach((value, name) => {
          seen.push([name, value]);
        });
        expect(seen).toEqual([...plain]);
        for (const name of ['a', 'b', 'c', 'd', 'e', 'f'] as const) {
          expect(highest.get(name)).toBe(plain.get(name));
          expect(highest.has(name)).toBe(plain.has(name));
        }
        expect([...over]).toEqual(before);
        expect([...below]).toEqual([...new Map(lowest)]);
      }),
    );
  });
});
