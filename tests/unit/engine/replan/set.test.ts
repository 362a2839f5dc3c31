import { describe, expect, test } from 'vitest';
import type { FindingChange, PartChange, Side } from '../../../../src/engine/replan/change.ts';
import { inOrder, isUnchanged, summarise } from '../../../../src/engine/replan/set.ts';

// The sums of a replanned set, worked by hand on made-up parts with round figures.
const side = (changes: Partial<Side> = {}, figures: Readonly<Record<string, number>> = {}): Side => ({
  alloy: 'A380',
  family: 'aluminium',
  plant: 'Works',
  castable: true,
  errors: 0,
  kind: 'cold-chamber',
  machine: 'C4',
  steel: 'H13',
  currency: 'money',
  figures: {
    'machine.cavities': 1,
    'machine.locking-force': 4000,
    'cycle.hours': 1000,
    'production.hours-per-year': 4000,
    'metal.new-per-part': 0.5,
    'cost.per-year': 50_000,
    ...figures,
  },
  ...changes,
});
const part = (file: string, changes: Partial<PartChange> = {}): PartChange => ({
  file,
  part: { name: file },
  perYear: 10_000,
  before: side(),
  after: side(),
  standing: 'stays castable',
  remarks: [],
  appeared: [],
  vanished: [],
  groups: [],
  leftOut: { small: 0, further: 0 },
  cautions: { appeared: [], vanished: [] },
  ...changes,
});
const finding = (code: string, severity: FindingChange['severity'] = 'error'): FindingChange => ({ code, title: `title of ${code}`, severity, message: 'm' });
const die = (verdict: string) => ({ verdict, because: '', elements: [], unchecked: [] });
const byId = <T extends { readonly id: string }>(list: readonly T[]): Readonly<Record<string, T>> => Object.fromEntries(list.map((one) => [one.id, one]));

describe('counts', () => {
  test('castings a year, and parts that do not say; a die counts once with all its castings', () => {
    const { perYear: _, ...silent } = part('c');
    const { compared, sharedDies, failed } = summarise([part('a'), part('b', { castings: 3, parts: [] }), silent], [{ file: 'x', message: 'm', code: 'c' }]);
    expect(compared).toEqual({ parts: 3, castings: 40_000, withoutVolume: 1 });
    expect([sharedDies, failed]).toEqual([1, 1]);
  });

  test('nothing at all', () => {
    const { compared, totals, machines, stoppers, alloys, currency } = summarise([], []);
    expect(compared).toEqual({ parts: 0, castings: 0, withoutVolume: 0 });
    expect(totals.map(({ before, after, percent, parts }) => [before, after, percent, parts])).toEqual(Array.from({ length: 4 }, () => [0, 0, undefined, 0]));
    expect([machines, stoppers, alloys, currency]).toEqual([[], [], [], undefined]);
    expect(summarise([], [])).not.toHaveProperty('currency');
  });

  test('how the parts stand, each standing by name', () => {
    const { standings } = summarise([part('a'), part('b', { standing: 'no longer castable' }), part('c', { standing: 'no longer castable' })], []);
    expect(standings.map(({ id, title, parts }) => [id, title, parts])).toEqual([
      ['no-longer-castable', 'No longer castable', 2],
      ['not-castable-before-or-after', 'Not castable before or after', 0],
      ['becomes-castable', 'Becomes castable', 0],
      ['stays-castable', 'Stays castable', 1],
    ]);
  });

  test('what moves: kind, machine within the kind, cavities, steel; only of parts castable in both plans', () => {
    const { moves } = summarise(
      [
        part('a', { after: side({ kind: 'hot-chamber', machine: 'H2' }) }),
        part('b', { after: side({ machine: 'C6' }, { 'machine.cavities': 2 }) }),
        part('c', { after: side({ steel: 'H11' }) }),
        part('d', { before: side({ castable: false }), after: side({ kind: 'hot-chamber', steel: 'H11', machine: 'H2' }, { 'machine.cavities': 4 }) }),
        part('e', { before: side({ kind: 'hot-chamber' }), after: side({ castable: false, machine: 'C9' }) }),
      ],
      [],
    );
    expect(moves.map(({ id, parts }) => [id, parts])).toEqual([
      ['kind', 1],
      ['machine', 1],
      ['cavities', 1],
      ['steel', 1],
      ['nothing', 5],
    ]);
    expect(moves.map(({ title }) => title)).toEqual([
      'Another kind of machine',
      'Another machine of the same kind',
      'Another count of cavities',
      'Another cavity steel',
      'Nothing that is listed changes',
    ]);
  });

  test('what becomes of the dies', () => {
    const { dies } = summarise([part('a', { die: die('new die') }), part('b', { die: die('recut') }), part('c', { die: die('recut') }), part('d')], []);
    expect(dies.map(({ id, title, parts }) => [id, title, parts])).toEqual([
      ['new-die', 'New die', 1],
      ['new-inserts', 'New cavity inserts in the existing die', 0],
      ['recut', 'Existing die recut', 2],
      ['as-it-is', 'Existing die as it is', 0],
      ['not-judged', 'Existing die not judged', 0],
    ]);
  });

  test('pairs of alloys and plants, the most frequent first, then by name', () => {
    const to = (file: string, alloy: string, plant = 'Works') => part(file, { after: side({ alloy, plant }) });
    const { alloys, plants } = summarise([to('a', 'Zamak 3'), to('b', 'AZ91D'), to('c', 'Zamak 3'), to('d', 'A360', 'Hall'), to('e', 'A360', 'Hall')], []);
    expect(alloys).toEqual([
      { before: 'A380', after: 'A360', parts: 2 },
      { before: 'A380', after: 'Zamak 3', parts: 2 },
      { before: 'A380', after: 'AZ91D', parts: 1 },
    ]);
    expect(plants).toEqual([
      { before: 'Works', after: 'Works', parts: 3 },
      { before: 'Works', after: 'Hall', parts: 2 },
    ]);
    const from = (file: string, alloy: string) => part(file, { before: side({ alloy }) });
    expect(summarise([from('a', 'B'), from('b', 'A')], []).alloys.map(({ before }) => before)).toEqual(['A', 'B']);
  });
});

describe('totals', () => {
  const { cycle, machines, metal, cost } = (() => {
    const { totals } = summarise(
      [
        part('a', { after: side({}, { 'cycle.hours': 1500, 'metal.new-per-part': 0.3, 'cost.per-year': 60_000 }) }),
        part('b', { perYear: 20_000, before: side({}, { 'cycle.hours': 3000, 'production.hours-per-year': 6000 }), after: side({}, { 'cycle.hours': 2000 }) }),
        part('no longer', { after: side({ castable: false }, { 'cycle.hours': 9999 }) }),
        part('without hours', { before: side({ figures: {} }) }),
      ],
      [],
    );
    const all = byId(totals);
    return { cycle: all['cycle.hours'], machines: all['machines'], metal: all['metal.new-per-part'], cost: all['cost.per-year'] };
  })();

  test('machine hours: 1000 + 3000 before, 1500 + 2000 after', () => {
    expect(cycle).toEqual({
      id: 'cycle.hours',
      title: 'Machine hours a year',
      unit: 'h',
      before: 4000,
      after: 3500,
      percent: -12.5,
      parts: 2,
      leftOut: 2,
    });
  });
  test('machines: each part by the hours it is planned for, 1000/4000 + 3000/6000 before, 1500/4000 + 2000/4000 after', () => {
    expect(machines).toMatchObject({ unit: '1', before: 0.75, after: 0.875, parts: 2, leftOut: 2 });
    expect(machines?.percent).toBeCloseTo(100 / 6, 9);
  });
  test('metal in tonnes: 5 + 10 before, 3 + 10 after', () => {
    expect(metal).toMatchObject({ unit: 't', before: 15, after: 13, parts: 2, leftOut: 2 });
    expect(metal?.percent).toBeCloseTo(-13.3333, 4);
  });
  test('cost', () => expect(cost).toMatchObject({ before: 100_000, after: 110_000, percent: 10, parts: 2, leftOut: 2 }));

  test('no hours a year, or no yearly volume, are left out and not taken for nothing', () => {
    const { perYear: _, ...silent } = part('a', { before: side({}, { 'production.hours-per-year': 0 }) });
    const all = byId(summarise([silent], []).totals);
    expect([all['machines']?.parts, all['metal.new-per-part']?.parts, all['cycle.hours']?.parts]).toEqual([0, 0, 1]);
  });

  test('a change of nothing has no per cent', () => {
    const { totals } = summarise([part('a', { before: side({}, { 'cycle.hours': 0 }) })], []);
    expect(byId(totals)['cycle.hours']).not.toHaveProperty('percent');
  });

  test('costs in another currency are left out; the currency is that of the plans after', () => {
    const { currency, totals } = summarise(
      [
        part('a', { before: side({ currency: 'shells' }), after: side({ currency: 'pearls' }) }),
        part('b', { after: side({ currency: 'pearls' }), before: side({ currency: 'pearls' }) }),
      ],
      [],
    );
    expect(currency).toBe('pearls');
    expect(byId(totals)['cost.per-year']).toMatchObject({ parts: 1, leftOut: 1, before: 50_000 });
  });

  test('the currency is that of the first part that has one, in the order of the files', () => {
    const { currency: _, ...unpriced } = side();
    expect(
      summarise([part('b', { after: side({ currency: 'B' }) }), part('c', { after: side({ currency: 'C' }) }), part('a', { after: unpriced })], []).currency,
    ).toBe('B');
  });
});

describe('machines', () => {
  test('hot before cold, then by locking force, then by name; hours and machines on each side', () => {
    const on = (machine: string, force: number, kind = 'cold-chamber', hours = 1000) =>
      side({ machine, kind }, { 'machine.locking-force': force, 'cycle.hours': hours });
    const { machines } = summarise(
      [
        part('a', { before: on('C8', 8000), after: on('C4', 4000, 'cold-chamber', 2000) }),
        part('b', { before: on('C4', 4000), after: on('B4', 4000) }),
        part('c', { before: on('C4', 4000), after: on('H2', 2000, 'a hot one') }),
        part('d', { after: side({ castable: false, machine: 'never' }) }),
      ],
      [],
    );
    expect(machines).toEqual([
      { machine: 'H2', before: { parts: 0, hours: 0, machines: 0 }, after: { parts: 1, hours: 1000, machines: 0.25 } },
      { machine: 'B4', before: { parts: 0, hours: 0, machines: 0 }, after: { parts: 1, hours: 1000, machines: 0.25 } },
      { machine: 'C4', before: { parts: 2, hours: 2000, machines: 0.5 }, after: { parts: 1, hours: 2000, machines: 0.5 } },
      { machine: 'C8', before: { parts: 1, hours: 1000, machines: 0.25 }, after: { parts: 0, hours: 0, machines: 0 } },
    ]);
  });
  test('without hours a machine still counts its parts', () => {
    const { machines } = summarise([part('a', { before: side({ figures: {} }), after: side({ figures: {} }) })], []);
    expect(machines).toEqual([{ machine: 'C4', before: { parts: 1, hours: 0, machines: 0 }, after: { parts: 1, hours: 0, machines: 0 } }]);
  });
});

describe('investment', () => {
  const costs = { 'cost.die': 30_000, 'cost.set': 8000 };
  test('new dies by their cost, new inserts by a set; others cost nothing here', () => {
    const { investment } = summarise(
      [
        part('a', { die: die('new die'), after: side({}, costs) }),
        part('b', { die: die('new inserts'), after: side({}, costs) }),
        part('c', { die: die('new inserts'), after: side({}, costs) }),
        part('d', { die: die('recut'), after: side({}, costs) }),
        part('e'),
      ],
      [],
    );
    expect(investment).toEqual([
      { id: 'cost.die', title: 'New dies', amount: 30_000, parts: 1, leftOut: 0 },
      { id: 'cost.set', title: 'New cavity inserts, one set each', amount: 16_000, parts: 2, leftOut: 0 },
    ]);
  });
  test('without the figure, or in another currency, they are left out and said to be', () => {
    const { investment } = summarise(
      [
        part('a', { die: die('new die'), after: side({}, costs) }),
        part('b', { die: die('new die') }),
        part('c', { die: die('new die'), after: side({ currency: 'shells' }, costs) }),
      ],
      [],
    );
    expect(investment[0]).toMatchObject({ amount: 30_000, parts: 1, leftOut: 2 });
  });
});

describe('what stops parts', () => {
  test('errors of parts that could be cast before, each rule once a part, the most frequent first, then by code', () => {
    const gone = (file: string, ...appeared: FindingChange[]) => part(file, { standing: 'no longer castable', appeared });
    const { stoppers } = summarise(
      [
        gone('a', finding('wall/least'), finding('wall/least'), finding('x/warned', 'warning')),
        gone('b', finding('clamp/force'), finding('wall/least')),
        gone('c', finding('alloy/none')),
        part('d', { appeared: [finding('wall/least')] }),
      ],
      [],
    );
    expect(stoppers).toEqual([
      { code: 'wall/least', title: 'title of wall/least', parts: 2 },
      { code: 'alloy/none', title: 'title of alloy/none', parts: 1 },
      { code: 'clamp/force', title: 'title of clamp/force', parts: 1 },
    ]);
  });
  test('those of the parts of a die count for the die', () => {
    const inner = part('lid', { appeared: [finding('wall/least')] });
    const { stoppers } = summarise([part('die', { standing: 'no longer castable', parts: [inner, inner] })], []);
    expect(stoppers).toEqual([{ code: 'wall/least', title: 'title of wall/least', parts: 1 }]);
  });
});

describe('a part is unchanged', () => {
  const one = part('a');
  test.each([
    ['as it is', {}, true],
    ['with a change', { groups: [{ id: 'g', title: 'g', changes: [] }] }, false],
    ['with a finding', { appeared: [finding('a/b')] }, false],
    ['without a finding', { vanished: [finding('a/b')] }, false],
    ['with a caution', { cautions: { appeared: ['c'], vanished: [] } }, false],
    ['without a caution', { cautions: { appeared: [], vanished: ['c'] } }, false],
    ['with a small change', { leftOut: { small: 1, further: 0 } }, false],
    ['with a further change', { leftOut: { small: 0, further: 1 } }, false],
    ['as a die whose parts are', { parts: [one, one] }, true],
    ['as a die with one that is not', { parts: [one, part('b', { appeared: [finding('a/b')] })] }, false],
  ])('%s: %s', (_, changes, unchanged) => expect(isUnchanged(part('a', changes))).toBe(unchanged));
});

test('parts are taken in the order of their files, and the list given stays', () => {
  const list = [part('b'), part('a'), part('c'), part('a')];
  expect(inOrder(list).map(({ file }) => file)).toEqual(['a', 'a', 'b', 'c']);
  expect(list.map(({ file }) => file)).toEqual(['b', 'a', 'c', 'a']);
  expect(summarise(list, [])).toEqual(summarise([...list].reverse(), []));
});
