import { describe, expect, test } from 'vitest';
import type { Shown } from '../../../../src/engine/replan/change.ts';
import { changesOf, findingsOnlyIn, shownOf } from '../../../../src/engine/replan/compare.ts';
import { CONSEQUENCES, consequenceOf } from '../../../../src/engine/replan/consequence.ts';
import type { KeptFinding, KeptValue, Snapshot } from '../../../../src/engine/replan/snapshot.ts';

const value = (number: number, unit = 'mm2', title = 'A value'): KeptValue => ({ title, value: number, unit, status: 'derived', source: [] });
const decision = (word: string, because = `because of ${word}`, title = 'A decision') => ({ title, value: word, because, kind: 'choice' });

interface Given {
  readonly decisions?: Readonly<Record<string, ReturnType<typeof decision>>>;
  readonly texts?: Readonly<Record<string, string>>;
  readonly values?: Readonly<Record<string, KeptValue>>;
}
const plan = ({ decisions = {}, texts = {}, values = {} }: Given): Snapshot => ({
  part: { name: 'Cover', file: 'a.part.yaml' },
  alloy: { id: 'A380', family: 'aluminium' },
  plant: { name: 'Works', invented: false },
  decisions: new Map(Object.entries(decisions)),
  texts: new Map(Object.entries(texts)),
  values: new Map(Object.entries(values)),
  findings: [],
  cautions: [],
  pins: [],
});
const between = (before: Given, after: Given, options = { leastChange: 0, everyValue: true }) => changesOf(plan(before), plan(after), options);
const listed = (before: Given, after: Given, options?: { leastChange: number; everyValue: boolean }) =>
  between(before, after, options).groups.flatMap(({ id, changes }) => changes.map((change) => ({ group: id, ...change })));

describe('changes of a plan', () => {
  test('are none where both say the same', () => {
    const same = { decisions: { 'machine.kind': decision('a') }, texts: { x: 'y' }, values: { 'gate.area': value(1) } };
    expect(between(same, same)).toEqual({ groups: [], small: 0, further: 0 });
    // Why something was decided may be said otherwise: it is the decision that counts.
    expect(listed(same, { ...same, decisions: { 'machine.kind': decision('a', 'another reason') } })).toEqual([]);
  });

  test('come group by group in order of consequence, and in a group by their place', () => {
    const before = { 'cost.per-part': value(1), 'gate.velocity': value(1), 'gate.area': value(1), 'machine.locking-force': value(1) };
    const after = { 'cost.per-part': value(2), 'gate.velocity': value(2), 'gate.area': value(2), 'machine.locking-force': value(2) };
    expect(listed({ values: before }, { values: after }).map(({ group, id }) => `${group} ${id}`)).toEqual([
      'machine machine.locking-force',
      'gate gate.area',
      'gate gate.velocity',
      'cost cost.per-part',
    ]);
    const [group] = between({ values: { 'gate.area': value(1) } }, { values: { 'gate.area': value(2) } }).groups;
    expect([group?.id, group?.title]).toEqual(['gate', 'Gates and runner']);
  });

  test('of a decision say why the plan after has decided so, also where it decides no longer', () => {
    const [kept] = listed({ decisions: { 'machine.kind': decision('a') } }, { decisions: { 'machine.kind': decision('b') } });
    expect(kept).toEqual({ group: 'kind', id: 'machine.kind', title: 'A decision', before: { word: 'a' }, after: { word: 'b' }, because: 'because of b' });
    const [gone] = listed({ decisions: { 'machine.kind': decision('a', 'r', 'Was') } }, {});
    expect(gone).toEqual({ group: 'kind', id: 'machine.kind', title: 'Was', before: { word: 'a' }, because: 'the plan after does not decide it' });
    const [came] = listed({}, { decisions: { 'machine.kind': decision('b') } });
    expect(came).toEqual({ group: 'kind', id: 'machine.kind', title: 'A decision', after: { word: 'b' }, because: 'because of b' });
  });

  test('of a decided number show it with its unit, once', () => {
    const plunger = (number: number) => ({ decisions: { 'machine.plunger': decision(`${number} mm`) }, values: { 'machine.plunger': value(number, 'mm') } });
    expect(listed(plunger(50), plunger(60))).toEqual([
      expect.objectContaining({ id: 'machine.plunger', before: { value: 50, unit: 'mm' }, after: { value: 60, unit: 'mm' }, because: 'because of 60 mm' }),
    ]);
    expect(listed(plunger(50), { ...plunger(50), decisions: { 'machine.plunger': decision('fifty') } })).toEqual([]);
    expect(listed(plunger(50), { ...plunger(50), values: { 'machine.plunger': value(50, 'cm') } })).toHaveLength(1);
    // Decided as a word before, as a number after.
    expect(listed({ decisions: { 'machine.plunger': decision('50 mm') } }, plunger(50))).toHaveLength(1);
  });

  test('of a word that is a decision too are told once, of other words and values by what came, went or is otherwise', () => {
    const before = { decisions: { 'vent.kind': decision('plain') }, texts: { 'vent.kind': 'plain', gone: 'a', same: 's' }, values: { lost: value(1) } };
    const after = { decisions: { 'vent.kind': decision('chill') }, texts: { 'vent.kind': 'chill', came: 'b', same: 's' }, values: { found: value(2) } };
    const found = Object.fromEntries(listed(before, after).map(({ id, before: was, after: is }) => [id, [was, is]]));
    expect(found).toEqual({
      'vent.kind': [{ word: 'plain' }, { word: 'chill' }],
      gone: [{ word: 'a' }, undefined],
      came: [undefined, { word: 'b' }],
      lost: [{ value: 1, unit: 'mm2' }, undefined],
      found: [undefined, { value: 2, unit: 'mm2' }],
    });
    expect(listed(before, after).find(({ id }) => id === 'gone')).not.toHaveProperty('because');
  });

  test('are titled as plans title them: values by their own, words by the vocabulary, with the item', () => {
    const titles = (before: Given, after: Given) => listed(before, after).map(({ title }) => title);
    expect(titles({ values: { 'gate.area': value(1, 'mm2', 'Was') } }, { values: { 'gate.area': value(2, 'mm2', 'Is') } })).toEqual(['Is']);
    expect(titles({ values: { 'gate.area': value(1, 'mm2', 'Was') } }, {})).toEqual(['Was']);
    const texts = (word: string) => ({ texts: { 'vent.kind': word, 'parting.slide-drive[S1]': word, unheard: word } });
    expect(titles(texts('a'), texts('b'))).toEqual(['Drive of the slide, S1', 'Kind of venting', 'unheard']);
  });
});

describe('what is left out', () => {
  const values = (area: number, further: number): Given => ({ values: { 'gate.area': value(area), 'of.no-group': value(further) } });

  test.each([
    ['below the least change', 100, 101.9, 2, 1],
    ['at it, in per cent of the larger one', 98, 100, 2, 0],
    ['downwards too', 100, 98.1, 2, 1],
    ['negative numbers by their size', -100, -101.9, 2, 1],
    ['through nothing', -1, 1, 2, 0],
    ['with none set', 100, 100.001, 0, 0],
  ])('numbers that change by little are counted: %s', (_, before, after, leastChange, small) => {
    expect(between(values(before, 1), values(after, 1), { leastChange, everyValue: false })).toMatchObject({ small, groups: { length: 1 - small } });
  });

  test('what came, went, is in another unit or is a word is never small', () => {
    const one = { values: { 'gate.area': value(100) } };
    const options = { leastChange: 50, everyValue: false };
    for (const other of [{}, { values: { 'gate.area': value(101, 'cm2') } }]) {
      expect(between(one, other, options).small).toBe(0);
      expect(between(other, one, options).small).toBe(0);
    }
    expect(between({ texts: { 'vent.kind': 'a' } }, { texts: { 'vent.kind': 'b' } }, options).small).toBe(0);
  });

  test('what no group names is counted, or listed where every value is asked for; decisions always are', () => {
    const options = (everyValue: boolean) => ({ leastChange: 0, everyValue });
    expect(between(values(1, 1), values(1, 2), options(false))).toEqual({ groups: [], small: 0, further: 1 });
    expect(between(values(1, 1), values(1, 2), options(true))).toMatchObject({
      groups: [{ id: 'other', title: 'Other decisions and values', changes: [{ id: 'of.no-group' }] }],
      further: 0,
    });
    const decided = (word: string): Given => ({ decisions: { 'of.no-group': decision(word) } });
    expect(between(decided('a'), decided('b'), options(false))).toMatchObject({ groups: [{ id: 'other' }], further: 0 });
  });
});

describe('findings', () => {
  const finding = (code: string, severity: KeptFinding['severity'], item?: string): KeptFinding => ({
    code,
    severity,
    message: `${code} of ${item}`,
    ...(item === undefined ? {} : { item }),
  });
  const titles = (code: string) => (code === 'wall/least' ? 'Walls are thick enough' : undefined);

  test('that only one has: by code and item, errors first, each with the title of its rule or else its message', () => {
    const list = [finding('x/note', 'note'), finding('hole/deep', 'warning', 'H1'), finding('hole/deep', 'warning', 'H2'), finding('wall/least', 'error')];
    const other = [{ ...finding('hole/deep', 'warning', 'H1'), message: 'another figure' }];
    expect(findingsOnlyIn(list, other, titles)).toEqual([
      { code: 'wall/least', title: 'Walls are thick enough', severity: 'error', message: 'wall/least of undefined' },
      { code: 'hole/deep', title: 'hole/deep of H2', severity: 'warning', message: 'hole/deep of H2', item: 'H2' },
      { code: 'x/note', title: 'x/note of undefined', severity: 'note', message: 'x/note of undefined' },
    ]);
    expect(findingsOnlyIn(list, list, titles)).toEqual([]);
    expect(list[0]?.code).toBe('x/note');
  });
});

describe('groups of consequences', () => {
  test('name every id once, and find it with its item', () => {
    const ids = CONSEQUENCES.flatMap((group) => group.ids);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [group, { ids: own }] of CONSEQUENCES.entries()) {
      for (const [place, id] of own.entries()) {
        expect(consequenceOf(id)).toEqual({ group, place });
        expect(consequenceOf(`${id}[some item]`)).toEqual({ group, place });
      }
    }
    expect([consequenceOf('gate'), consequenceOf('no.such')]).toEqual([undefined, undefined]);
  });
  test('stand in the order of what they mean: machine, die, how it is run, cost', () => {
    const order = CONSEQUENCES.map(({ id }) => id);
    const places = ['kind', 'machine', 'cavities', 'steel', 'gate', 'shot', 'hours', 'cost'].map((id) => order.indexOf(id));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});

test('a number is shown with the digits that it deserves', () => {
  expect(shownOf('gate.area', undefined)).toBeUndefined();
  expect(shownOf('no.such', value(1))).toEqual({ value: 1, unit: 'mm2' } satisfies Shown);
  expect(shownOf('finish.quench-heat', value(1, 'kJ'))).toEqual({ value: 1, unit: 'kJ', decimals: 0 });
  expect(shownOf('vent.kind', value(1))).toEqual({ value: 1, unit: 'mm2' });
});
