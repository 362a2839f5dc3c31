import { beforeAll, describe, expect, test } from 'vitest';
import { findEntries, nearIds } from '../../../src/engine/catalogue.ts';
import { LISTINGS, listing } from '../../../src/engine/listings.ts';
import { loadRulebook } from '../../../src/index.ts';
import { FORMULAS } from '../../../src/physics/index.ts';
import type { Rulebook } from '../../../src/rulebook/types.ts';
import { builtInPlant, type PlantData, type PlantSpec } from '../../../src/spec/index.ts';

let rulebook: Rulebook;
let plant: PlantSpec;
beforeAll(async () => {
  rulebook = await loadRulebook();
  plant = builtInPlant(rulebook.plants['typical'] as PlantData);
});
const kinds = (id: string): string[] => findEntries(rulebook, id).map(({ kind }) => kind);

describe('what an id names', () => {
  test.each([
    ['clamp.locking-force', ['value', 'formula']],
    ['parting.slide-drive[S1]', ['value']],
    ['machine.kind', ['value', 'choice']],
    ['wall/least', ['limit']],
    ['A380', ['alloy']],
    ['EN AC-46000', ['alloy']],
    ['NADCA-FAMILY', ['source']],
    ['draft', ['term']],
    ['constructor', []],
    ['no/such', []],
  ])('%s: %j', (id, expected) => expect(kinds(id)).toEqual(expected));

  test('a caution and a table', () => {
    const [caution, table] = [Object.keys(rulebook.cautions)[0] as string, Object.keys(rulebook.tables)[0] as string];
    expect([kinds(caution), kinds(table)]).toEqual([['caution'], ['table']]);
  });

  test('a designation of several alloys names them all', () => {
    const alloys = findEntries(rulebook, '46500').map((entry) => (entry.kind === 'alloy' ? entry.alloy.id : entry.kind));
    expect(alloys).toEqual(['A380', 'EN AC-46000']);
  });

  test('an item of a value is named without its item', () => {
    expect(findEntries(rulebook, 'parting.slide-drive[S1]')[0]).toMatchObject({ kind: 'value', id: 'parting.slide-drive' });
  });

  test('a limit that a house has switched off is still explained', () => {
    const limit = rulebook.limits['wall/least'] as Rulebook['limits'][string];
    const { 'wall/least': _, ...limits } = rulebook.limits;
    const off = { ...rulebook, limits, switchedOff: { 'wall/least': limit } };
    expect(findEntries(off, 'wall/least')).toEqual([{ kind: 'limit', limit }]);
    expect(findEntries({ ...rulebook, limits }, 'wall/least')).toEqual([]);
  });

  test('a word of the trade comes with the values whose titles hold it', () => {
    const [term] = findEntries(rulebook, 'Biscuit').filter(({ kind }) => kind === 'term');
    if (term?.kind !== 'term') throw new Error('no such term');
    expect(term.values.length).toBeGreaterThan(3);
    for (const id of term.values) expect(findEntries(rulebook, id)[0]).toMatchObject({ word: { title: expect.stringMatching(/biscuit/i) } });
  });

  test('a source comes with all that cites it, counted by another way', () => {
    for (const key of ['NADCA-FAMILY', 'GODFREY-WING-COST', 'GL-GATE-AREA']) {
      const [entry] = findEntries(rulebook, key);
      if (entry?.kind !== 'source') throw new Error(`no source ${key}`);
      const cites = (what: unknown): boolean => new RegExp(`"${key}[" ]`).test(JSON.stringify(what));
      const counted = {
        formula: FORMULAS.filter(({ source }) => cites(source)).length,
        table: Object.values(rulebook.tables).filter(({ rows }) => cites(rows)).length,
        choice: Object.values(rulebook.choices).filter(({ rows }) => cites(rows)).length,
        limit: Object.values(rulebook.limits).filter(({ source }) => cites(source)).length,
        caution: Object.values(rulebook.cautions).filter(({ source }) => cites(source)).length,
        alloy: Object.values(rulebook.alloys).filter(({ chamber, composition, properties }) => cites([chamber, composition, properties])).length,
      };
      const found = (kind: string) => entry.citedBy.filter((what) => what.startsWith(`${kind} `)).length;
      expect(Object.fromEntries(Object.keys(counted).map((kind) => [kind, found(kind)]))).toEqual(counted);
      expect(entry.citedBy.length).toBe(Object.values(counted).reduce((sum, count) => sum + count, 0));
      expect(entry.citedBy.length).toBeGreaterThan(0);
    }
  });
});

test.each([
  ['clamp.lockin-force', 'clamp.locking-force'],
  ['wall/leest', 'wall/least'],
  ['A38O', 'A380'],
  ['EN AC-4600', 'EN AC-46000'],
  ['biscit', 'biscuit'],
  ['NADCA-FAMLY', 'NADCA-FAMILY'],
  ['finish.trimmin', 'finish.trimming'],
])('%s is near to %s', (slip, meant) => expect(nearIds(rulebook, slip)).toContain(meant));

test('further ids can be near too', () => {
  expect(nearIds(rulebook, 'my-furthr-id')).toEqual([]);
  expect(nearIds(rulebook, 'my-furthr-id', ['my-further-id'])).toEqual(['my-further-id']);
});

describe('lists', () => {
  test.each(LISTINGS)('%s: every row has the columns, and every row of what there is is there', (name) => {
    const { columns, rows } = listing(name, { rulebook, plant });
    expect(rows.length).toBeGreaterThan(5);
    const allowed = name === 'terms' ? [...columns, 'also'] : columns;
    for (const row of rows) {
      expect(Object.keys(row).filter((key) => !allowed.includes(key))).toEqual([]);
      expect(
        Object.values(row)
          .flat()
          .every((text) => typeof text === 'string'),
      ).toBe(true);
    }
  });

  test('count what there is', () => {
    const count = (name: (typeof LISTINGS)[number]) => listing(name, { rulebook, plant }).rows.length;
    expect(count('alloys')).toBe(Object.keys(rulebook.alloys).length);
    expect(count('machines')).toBe(plant.machines.length);
    expect(count('formulas')).toBe(FORMULAS.length);
    expect(count('tables')).toBe(Object.keys(rulebook.tables).length);
    expect(count('rules')).toBe(Object.keys(rulebook.limits).length + Object.keys(rulebook.cautions).length);
    expect(count('choices')).toBe(Object.keys(rulebook.choices).length);
    expect(count('sources')).toBe(Object.keys(rulebook.sources).length);
  });

  test('only rows that hold the word, in any case, in any column', () => {
    const ids = (name: (typeof LISTINGS)[number], filter: string) => listing(name, { rulebook, plant }, filter).rows.map((row) => row['id']);
    expect(ids('alloys', '46000')).toEqual(['EN AC-46000']);
    expect(ids('alloys', 'MAGNESIUM').length).toBeGreaterThan(4);
    expect(ids('machines', 'hot-1250')).toEqual(['hot-1250']);
    expect(ids('formulas', 'no such word')).toEqual([]);
  });

  test('rows as they are printed', () => {
    const row = (name: (typeof LISTINGS)[number], id: string) =>
      listing(name, { rulebook, plant }).rows.find((one) => [one['id'], one['key'], one['term']].includes(id));
    expect(row('machines', 'cold-630')).toEqual({
      id: 'cold-630',
      chamber: 'cold',
      shot: 'horizontal',
      'locking force': '630 kN',
      'between tie bars': '280 mm x 280 mm',
      plungers: ['30 mm', '35 mm', '40 mm', '45 mm'],
    });
    expect(row('formulas', 'gate.area')).toEqual({ id: 'gate.area', unit: 'mm2', title: 'Gate area', inputs: ['volume cm3', 'velocity m/s', 'time ms'] });
    // A default, what follows from other inputs, and a yes or a no.
    expect(row('formulas', 'clamp.castings-across')?.['inputs']).toEqual(['low mm (0)', 'room mm (0)', 'overhang mm (0)']);
    expect(row('formulas', 'cooling.nusselt-dittus-boelter')?.['inputs']).toEqual(['reynolds', 'prandtl', expect.stringMatching(/^heating \((?!1\))/)]);
    expect(row('values', 'parting.slide-drive[…]')).toEqual({ id: 'parting.slide-drive[…]', unit: 'text', title: 'Drive of the slide' });
    expect(row('values', 'gate.area')).toEqual({ id: 'gate.area', unit: 'mm2', title: 'Gate area of one cavity' });
    expect(row('choices', 'vent.kind')).toEqual({ id: 'vent.kind', here: 'built in', title: 'Kind of venting', words: ['vacuum', 'plain', 'chill'] });
    expect(row('alloys', 'EN AC-46000')).toMatchObject({ family: 'aluminium', chamber: ['cold'], here: 'built in' });
    const caution = listing('rules', { rulebook, plant }).rows.find(({ kind }) => kind === 'caution');
    expect([caution?.['when broken'], caution?.['here']]).toEqual(['', 'built in']);
    expect(row('rules', 'wall/least')).toMatchObject({ kind: 'limit', 'when broken': 'error', here: 'built in' });
  });

  test('designations that are only near are not listed', () => {
    const near = Object.values(rulebook.alloys).flatMap(({ id, designations }) =>
      designations.filter((one) => one.near === true).map(({ system, code }) => [id, `${system} ${code}`] as const),
    );
    expect(near.length).toBeGreaterThan(0);
    const { rows } = listing('alloys', { rulebook, plant });
    for (const [id, designation] of near) expect(rows.find((row) => row['id'] === id)?.['designations']).not.toContain(designation);
    for (const { id, designations } of Object.values(rulebook.alloys)) {
      const own = designations.filter((one) => one.near !== true).map(({ system, code }) => `${system} ${code}`);
      expect(rows.find((row) => row['id'] === id)?.['designations']).toEqual(own);
    }
  });

  test('a limit that is switched off is listed as off', () => {
    const limit = rulebook.limits['wall/least'] as Rulebook['limits'][string];
    const { 'wall/least': _, ...limits } = rulebook.limits;
    const { rows } = listing('rules', { rulebook: { ...rulebook, limits, switchedOff: { 'wall/least': limit } }, plant });
    expect(rows.find(({ id }) => id === 'wall/least')?.['when broken']).toBe('off');
    expect(rows.filter(({ id }) => id === 'wall/least')).toHaveLength(1);
  });

  test('sources with author and year', () => {
    const { rows } = listing('sources', { rulebook, plant });
    const authored = Object.values(rulebook.sources).find(({ author }) => author !== undefined);
    expect(rows.find(({ key }) => key === authored?.key)?.['title']).toBe(`${authored?.author}: ${authored?.title}`);
    const bare = Object.values(rulebook.sources).find(({ author }) => author === undefined);
    expect(rows.find(({ key }) => key === bare?.key)?.['title']).toBe(bare?.title);
  });
});
