import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comparePlans } from '../../../src/engine/compare/plans.ts';
import { baseName, sameData, sameNumber } from '../../../src/engine/compare/same.ts';
import type { PlanRecord } from '../../../src/spec/index.ts';

const BASE: PlanRecord = JSON.parse(
  JSON.stringify({
    format: 'plan/1',
    tool: { version: '1' },
    part: { name: 'Cover', file: 'a.part.yaml' },
    decisions: {
      'fill.group': { title: 'Group', value: 'a' },
      'machine.kind': { title: 'Kind', value: 'cold-chamber', because: 'iron' },
      'machine.cavities': { title: 'Cavities', value: 2, unit: '1' },
    },
    texts: { 'alloy.family': 'aluminium', 'machine.kind': 'cold-chamber' },
    values: {
      'a.small': { title: 'A', value: 10, unit: 'mm', kind: 'formula', at: { file: 'a.part.yaml', line: 3 } },
      'b.large': { title: 'B', value: 10, unit: 'mm', kind: 'formula' },
      'part.volume': { title: 'Volume', value: 150, unit: 'cm3', kind: 'input' },
      'fill.time': { title: 'Fill time', value: 40, unit: 'ms', kind: 'formula' },
    },
    findings: [
      { code: 'wall/least', severity: 'error', message: 'thin' },
      { code: 'hole/deep', severity: 'warning', message: 'H1: 3', item: 'H1' },
      { code: 'hole/deep', severity: 'warning', message: 'H2: 3', item: 'H2' },
    ],
    sections: { clamp: { title: 'Clamp' }, fill: { title: 'Fill' } },
    cautions: [{ id: 'x' }],
  }),
);
const plan = (changes: Partial<PlanRecord> = {}): PlanRecord => ({ ...BASE, ...changes });
const values = (changes: object): PlanRecord => plan({ values: { ...plan().values, ...changes } as PlanRecord['values'] });
const ids = (before: PlanRecord, after: PlanRecord): string[] => comparePlans(before, after).map(({ kind, id }) => `${kind} ${id}`);

describe('two plans', () => {
  test('that say the same differ in nothing, whichever version, folder or order of keys', () => {
    const other = JSON.parse(JSON.stringify(plan({ tool: { version: '2' }, part: { file: 'x/y/a.part.yaml', name: 'Cover' } })));
    other.values['a.small'].at.file = '../a.part.yaml';
    other.values = Object.fromEntries(Object.entries(other.values).reverse());
    expect(comparePlans(plan(), other)).toEqual([]);
  });

  test('differ the gravest first: main decision, error, key figure, input, warning, other decision, other values by share, words, the rest', () => {
    const after = plan({
      decisions: {
        'fill.group': { title: 'Group', value: 'b' },
        'machine.kind': plan().decisions['machine.kind'] as never,
        'machine.cavities': { title: 'Cavities', value: 1, unit: '1' },
      },
      texts: { ...plan().texts, 'alloy.family': 'zinc' },
      values: {
        'a.small': { title: 'A', value: 11, unit: 'mm', kind: 'formula', at: { file: 'a.part.yaml', line: 3 } },
        'b.large': { title: 'B', value: 30, unit: 'mm', kind: 'formula' },
        'part.volume': { title: 'Volume', value: 151, unit: 'cm3', kind: 'input' },
        'fill.time': { title: 'Fill time', value: 41, unit: 'ms', kind: 'formula' },
      } as PlanRecord['values'],
      findings: plan().findings.slice(2),
      cautions: [],
    });
    expect(ids(plan(), after)).toEqual([
      'decision machine.cavities',
      'finding wall/least',
      'value fill.time',
      'value part.volume',
      'finding hole/deep of H1',
      'decision fill.group',
      'value b.large',
      'value a.small',
      'text alloy.family',
      'entry cautions',
    ]);
  });

  test('with another unit, a value that is new or gone, and a place or a source that has moved', () => {
    expect(comparePlans(plan(), values({ 'b.large': { title: 'B', value: 10, unit: 'cm', kind: 'formula' } }))).toEqual([
      { kind: 'value', id: 'b.large', title: 'B', before: { value: 10, unit: 'mm' }, after: { value: 10, unit: 'cm' } },
    ]);
    expect(comparePlans(plan(), values({ 'c.new': { title: 'C', value: 1, unit: '1' } }))).toEqual([
      { kind: 'value', id: 'c.new', title: 'C', after: { value: 1, unit: '1' } },
    ]);
    expect(ids(values({ 'c.old': { title: 'C', value: 1, unit: '1' } }), plan())).toEqual(['value c.old']);
    const small = plan().values['a.small'];
    expect(ids(plan(), values({ 'a.small': { ...small, at: { file: 'a.part.yaml', line: 4 } } }))).toEqual(['place values.a.small']);
    expect(ids(plan(), values({ 'a.small': { ...small, source: ['KEY'] } }))).toEqual(['entry values.a.small']);
    expect(ids(plan(), plan({ sections: { fill: { title: 'Fill' }, clamp: { title: 'Other' } } }))).toEqual(['entry sections.clamp']);
  });

  test('with a finding that is graver now, and one that only says another figure', () => {
    const [first, second, third] = plan().findings as [never, never, never];
    expect(ids(plan(), plan({ findings: [first, { ...(second as object), severity: 'error' } as never, third] }))).toEqual(
      ['finding hole/deep of H1', 'finding hole/deep of H1'].reverse(),
    );
    expect(ids(plan(), plan({ findings: [first, second, { ...(third as object), message: 'H2: 4' } as never] }))).toEqual(['entry findings.hole/deep']);
  });
});

describe('the same', () => {
  test('numbers differ from a part in a thousand million on', () => {
    expect([sameNumber(1, 1 + 1e-12), sameNumber(0, 0), sameNumber(1e9, 1e9 + 0.1), sameNumber(1, 1 + 1e-8), sameNumber(0, 1e-300)]).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });

  test('any data is the same as its copy, and as nothing that has one more key or entry', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (data) => {
        expect(sameData(data, JSON.parse(JSON.stringify(data)))).toBe(true);
        expect(sameData([data], [data, data])).toBe(false);
        expect(sameData({ data }, { data, more: 1 })).toBe(false);
        expect([sameData({ data }, null), sameData(null, { data })]).toEqual([false, false]);
        expect(sameData({ data, at: 1 }, { data, at: 2 }, 'at')).toBe(true);
      }),
    );
  });

  test('the folder of a file does not count, its name does', () => {
    expect([sameData({ file: 'x/a' }, { file: '../a' }), sameData({ file: 'a' }, { file: 'b' }), sameData({ name: 'x/a' }, { name: 'a' })]).toEqual([
      true,
      false,
      false,
    ]);
    expect([baseName('a'), baseName('x/y/a'), baseName('x\\a'), baseName('')]).toEqual(['a', 'a', 'a', '']);
  });
});
