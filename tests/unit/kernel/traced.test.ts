import { describe, expect, it } from 'vitest';
import { Place } from '../../../src/kernel/place.ts';
import type { Status } from '../../../src/kernel/status.ts';
import { printTraced, Traced } from '../../../src/kernel/traced.ts';

const at = new Place({ name: 'a.part.yaml', text: 'a: 1\n' }, 'a', () => [3, 4]);
const given = Traced.input('part.depth', 12.34567, 'mm', { at, written: '12.34567 mm', source: 'PART' });
const resting = (status: Status): Traced<'mm'> => Traced.assumption(`a.${status}`, 1, 'mm', { note: 'of the test', status });
const read = (range: 'inside' | 'clamped' | 'extrapolated', parents: readonly Traced[] = []): Traced<'mm'> =>
  Traced.table(`t.${range}`, 1, 'mm', { table: 'a/b', source: ['WORK'], status: 'source', range, parents });

describe('a traced number', () => {
  it('is finite', () => {
    expect(() => Traced.trial('a.b', Number.NaN, 'mm')).toThrow('a.b is not a finite number');
    expect(() => Traced.trial('a.b', Number.POSITIVE_INFINITY, 'mm')).toThrow(RangeError);
  });

  it('says where it comes from', () => {
    expect(given).toMatchObject({ kind: 'input', status: 'source', source: ['PART'], range: 'inside', parents: [], at, written: '12.34567 mm' });
    expect(Traced.default('hole.count', 1, '1', { note: 'left out', source: 'PART', at })).toMatchObject({
      kind: 'default',
      status: 'source',
      source: ['PART'],
      range: 'inside',
      parents: [],
      at,
      note: 'left out',
    });
    expect(Traced.choice('a.b', 2, '1', { note: 'why', status: 'derived', parents: [given] })).toMatchObject({
      kind: 'choice',
      source: [],
      range: 'inside',
      parents: [given],
      note: 'why',
    });
    expect(Traced.assumption('a.b', 2, '1', { note: 'why', status: 'practice', source: ['WORK'] })).toMatchObject({
      kind: 'assumption',
      source: ['WORK'],
      parents: [],
    });
    expect(read('inside')).toMatchObject({ kind: 'table', table: 'a/b', source: ['WORK'], range: 'inside', parents: [] });
    expect(Traced.trial('a.b', 3, 'kN')).toMatchObject({ kind: 'formula', status: 'derived', source: [], range: 'inside', parents: [] });
  });

  it('that is pinned keeps what was worked out instead', () => {
    expect(Traced.pinned('a.b', 2, 'mm', { source: 'PART' })).toMatchObject({ kind: 'pinned', status: 'source', note: 'pinned by the engineer' });
    expect(Traced.pinned('a.b', 2, 'mm', { source: 'PART', instead: given }).note).toBe('pinned by the engineer; worked out: 12.34567 mm');
  });

  it('is no better than the weakest that it rests on', () => {
    const weakest = (own: Status, ...parents: Status[]): Status =>
      Traced.choice('a.b', 1, '1', { note: '', status: own, parents: parents.map(resting) }).status;
    expect([weakest('source'), weakest('derived', 'source'), weakest('source', 'practice'), weakest('practice', 'memory', 'source')]).toEqual([
      'source',
      'derived',
      'practice',
      'memory',
    ]);
    expect(weakest('memory', 'source')).toBe('memory');
  });

  it('has the worst range of what it rests on', () => {
    expect([read('inside', [read('clamped')]).range, read('clamped', [read('inside')]).range]).toEqual(['clamped', 'clamped']);
    expect([read('clamped', [read('extrapolated')]).range, read('extrapolated', [read('clamped')]).range]).toEqual(['extrapolated', 'extrapolated']);
    expect(read('inside', [read('extrapolated'), read('clamped')]).range).toBe('extrapolated');
    expect(read('inside', [read('inside')]).range).toBe('inside');
  });

  it('in another unit, under another id and with other decimals is the same figure', () => {
    expect(given.in('cm')).toMatchObject({ id: 'part.depth', unit: 'cm', kind: 'input', source: ['PART'] });
    expect(given.in('cm').value).toBeCloseTo(1.234567, 12);
    expect(given.in('mm')).toBe(given);
    expect(given.as('other.id')).toMatchObject({ id: 'other.id', value: 12.34567, note: undefined, written: '12.34567 mm' });
    expect(given.as('other.id', 'why').note).toBe('why');
    expect(given.as('other.id', 'why').as('third.id').note).toBe('why');
    expect(read('inside').printedWith(2).decimals).toBe(2);
  });

  it('is printed as it was written, else with its decimals, else with three digits', () => {
    const worked = Traced.trial('a.b', 12.34567, 'mm');
    expect([printTraced(given), printTraced(worked), printTraced(worked.printedWith(2)), printTraced(worked.printedWith(2), 1)]).toEqual([
      '12.34567 mm',
      '12.3 mm',
      '12.35 mm',
      '12.3 mm',
    ]);
  });
});
