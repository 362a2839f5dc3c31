import { describe, expect, test } from 'vitest';
import { packRulebook, unpackRulebook } from '../../../src/rulebook/pack.ts';
import { rulebook } from '../engine/parts.ts';

describe('the rulebook as the build keeps it', () => {
  const compiled = rulebook();
  const text = packRulebook(compiled);
  const unpacked = unpackRulebook(text);

  test('is the rulebook that was compiled, in the same order', () => {
    for (const section of Object.keys(compiled) as (keyof typeof compiled)[]) {
      const [got, want] = [unpacked[section] as object, compiled[section] as object];
      expect(Object.keys(got)).toEqual(Object.keys(want));
      expect(Object.entries(got)).toEqual(Object.entries(want));
      expect(Object.values(got)).toEqual(Object.values(want));
    }
  });

  test('is ASCII, whatever the rules hold', () => {
    const title = 'Größe – 長さ 🙂';
    const table = { ...Object.values(compiled.tables)[0], id: 'a/b', title } as (typeof compiled.tables)[string];
    const packed = packRulebook({ ...compiled, tables: { 'a/b': table } });
    expect(packed).toMatch(/^[\x00-\x7f]*$/);
    expect(unpackRulebook(packed).tables['a/b']).toEqual(table);
  });

  test('knows what it has, reads a record once, and holds nothing else', () => {
    const { tables } = unpacked;
    expect(tables['gate/velocity']).toBe(tables['gate/velocity']);
    expect('gate/velocity' in tables && Object.hasOwn(tables, 'gate/velocity')).toBe(true);
    for (const id of ['no/table', 'constructor', '__proto__', 'toString']) {
      expect(id in tables).toBe(false);
      expect(Object.hasOwn(tables, id)).toBe(false);
      expect(tables[id]).toBe(undefined);
    }
  });
});
