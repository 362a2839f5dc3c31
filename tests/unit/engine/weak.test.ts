import { describe, expect, test } from 'vitest';
import { weakFigures } from '../../../src/engine/weak.ts';
import type { Status } from '../../../src/kernel/status.ts';
import { Traced } from '../../../src/kernel/traced.ts';

function value(id: string, status: Status, ...parents: Traced[]): Traced {
  return Traced.table(id, 1, 'mm', { table: 't', source: [], status, parents });
}

function weak(...values: Traced[]): [string, number][] {
  return weakFigures(new Map(values.map((v) => [v.id, v]))).map(({ figure, count }) => [figure.id, count]);
}

describe('unverified figures', () => {
  test('a figure counts where memory enters, not where it is passed on', () => {
    const sourced = value('a.sourced', 'source');
    const remembered = value('a.remembered', 'memory', sourced);
    const passed = value('a.passed', 'source', remembered);
    expect(weak(sourced, remembered, passed)).toEqual([['a.remembered', 1]]);
  });

  test('memory stands before practice, then the figure that more values rest on', () => {
    const practice = value('a.practice', 'practice');
    const few = value('a.few', 'memory');
    const many = value('a.many', 'memory');
    const users = [
      value('u.one', 'source', practice),
      value('u.two', 'source', practice),
      value('u.three', 'source', few, many, practice),
      value('u.four', 'source', many),
    ];
    expect(weak(practice, few, many, ...users)).toEqual([
      ['a.many', 2],
      ['a.few', 1],
      ['a.practice', 3],
    ]);
  });

  test('the same figure in another unit is one figure, and one that no section filed counts too', () => {
    const length = value('a.length', 'memory');
    const users = [value('u.one', 'source', length), value('u.two', 'source', length.in('m'))];
    expect(weak(...users)).toEqual([['a.length', 2]]);
  });

  test('each value counts once, however many ways lead to the figure', () => {
    const root = value('a.root', 'memory');
    const left = value('u.left', 'source', root);
    const right = value('u.right', 'source', root);
    expect(weak(root, left, right, value('u.top', 'source', left, right))).toEqual([['a.root', 3]]);
  });
});
