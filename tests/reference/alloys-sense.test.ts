import { describe, expect, it } from 'vitest';
import { STATUSES } from '../../src/kernel/status.ts';
import { isUnit } from '../../src/kernel/units.ts';
import { ALLOYS, type Alloy, EACH, FILES, type Figure, type Ratings, UNIT, value } from './alloys.ts';

describe('physical sense and honest marks', () => {
  const DENSITY: Record<string, [number, number]> = {
    zinc: [6.5, 7.2],
    'zinc-aluminium': [4.8, 6.5],
    aluminium: [2.5, 2.9],
    magnesium: [1.7, 1.9],
    copper: [8, 9],
  };
  const BALANCE = { zinc: 'Zn', 'zinc-aluminium': 'Zn', aluminium: 'Al', magnesium: 'Mg', copper: 'Cu', lead: 'Pb', tin: 'Sn' } as Record<string, string>;
  const CHAMBERS: Record<string, string> = {
    'Zamak 7': 'hot cold',
    'ZA-8': 'hot cold',
    'ZA-12': 'cold',
    'ZA-27': 'cold',
    AZ91D: 'hot cold',
    AM60B: 'cold hot',
    AM50A: 'cold hot',
    magnesium: 'cold',
    zinc: 'hot cold',
    aluminium: 'cold',
    copper: 'cold',
    lead: 'hot',
    tin: 'hot',
  };
  const figures = (alloy: Alloy): (Figure & { of: string })[] => [
    ...Object.entries(alloy.properties).flatMap(([name, p]) => [p, ...(p.others ?? [])].map((f) => ({ ...f, of: name }))),
    { ...alloy.composition, of: 'composition' },
  ];

  it('one file a family, 43 alloys', () => {
    expect(FILES.map((name) => name.replace('.yaml', '')).sort()).toEqual(Object.keys(BALANCE).sort());
    expect(new Set(EACH.map(([, a]) => a.family))).toEqual(new Set(Object.keys(BALANCE)));
    expect(ALLOYS.size).toBe(43);
  });
  it.each(EACH)('%s', (id, alloy) => {
    const p = alloy.properties;
    expect(alloy.name).toBe(id);
    expect(alloy.composition.balance).toBe(BALANCE[alloy.family]);
    for (const [name, figure] of Object.entries(p)) {
      expect(figure.unit, name).toBe(UNIT[name]);
      expect(isUnit(figure.unit)).toBe(true);
    }
    if (p.solidus !== undefined) expect(value(id, 'solidus')).toBeLessThan(value(id, 'liquidus'));
    if (p.casting_temperature !== undefined) expect(value(id, 'liquidus')).toBeLessThan(p.casting_temperature.greatest ?? 0);
    const range = DENSITY[alloy.family];
    if (range !== undefined) {
      expect(value(id, 'density')).toBeGreaterThanOrEqual(range[0]);
      expect(value(id, 'density')).toBeLessThanOrEqual(range[1]);
      expect(value(id, 'yield_strength')).toBeLessThan(value(id, 'tensile_strength'));
    }
    let sum = 0;
    for (const [element, [least, greatest]] of Object.entries(alloy.composition.limits)) {
      expect(least, element).toBeGreaterThanOrEqual(0);
      if (greatest !== null) expect(greatest, element).toBeGreaterThan(least);
      expect(greatest ?? 100, element).toBeLessThanOrEqual(100);
      sum += least;
    }
    expect(sum).toBeLessThanOrEqual(100);
    expect(alloy.chamber.allows.join(' ')).toBe(CHAMBERS[id] ?? CHAMBERS[alloy.family]);
    expect(alloy.notes.length).toBeGreaterThan(0);
  });
  it.each(EACH)('%s: every figure has a status, and a source unless it is practice or memory', (_id, alloy) => {
    for (const f of figures(alloy)) {
      expect(STATUSES, f.of).toContain(f.status);
      if (f.of !== 'composition') expect(f.value ?? f.greatest, f.of).toBeGreaterThan(0);
      if (f.least !== undefined) expect(f.least, f.of).toBeLessThan(f.greatest ?? 0);
      for (const ref of f.source) expect(ref).toMatch(/^[A-Za-z0-9][A-Za-z0-9-]*( \S.*)?$/);
      if (f.status === 'memory') expect(f.source, `${f.of}: a remembered figure cites nothing`).toEqual([]);
      if (f.status === 'source') expect(f.source.length, f.of).toBeGreaterThan(0);
      if (f.status === 'derived' && f.source.length === 0) expect(f.note, f.of).toContain('rule of mixtures of the elements');
    }
    if (alloy.chamber.status === 'source') expect(alloy.chamber.source.length).toBeGreaterThan(0);
    const { sourced, ...remembered } = alloy.ratings ?? { status: 'memory', source: [], scale: '' };
    expect(remembered).toMatchObject({ status: 'memory', source: [] });
    if (sourced !== undefined) expect((sourced as Ratings).source.length).toBeGreaterThan(0);
    for (const rating of Object.values({ ...sourced, ...remembered })) {
      if (typeof rating === 'number') expect([1, 2, 3, 4, 5]).toContain(rating);
    }
    expect(Object.keys(sourced ?? {}).filter((k) => k !== 'source' && k !== 'status' && k in remembered)).toEqual([]);
  });
  it('ratings read in a source are those of the two reprinted NADCA tables: four of Zn and ZA, five of Al', () => {
    const held = EACH.flatMap(([id, a]) =>
      a.ratings?.sourced === undefined
        ? []
        : [
            [
              id,
              Object.values(a.ratings.sourced)
                .filter((v) => typeof v === 'number')
                .join(''),
            ] as const,
          ],
    );
    expect(Object.fromEntries(held)).toEqual({
      'Zamak 3': '1111',
      'Zamak 5': '2211',
      'ZA-8': '2322',
      'ZA-12': '3333',
      '360': '12322',
      '380': '22214',
      '384': '22125',
      '413': '11112',
    });
  });
  it('no exact designation names two alloys, but yellow brass, which the trade uses for both C85700 and C85800', () => {
    const systems = ['ASTM', 'UNS', 'EN number', 'EN symbol', 'JIS', 'AA', 'DIN', 'BS', 'trade'];
    const claims = new Map<string, string[]>();
    for (const [id, alloy] of EACH) {
      const codes = alloy.designations.map((d) => d.code.toLowerCase());
      expect(new Set(codes).size, `${id} lists a code twice`).toBe(codes.length);
      for (const d of alloy.designations) {
        expect(systems).toContain(d.system);
        if (d.near !== true) claims.set(d.code.toLowerCase(), [...(claims.get(d.code.toLowerCase()) ?? []), id]);
      }
      expect(claims.get(id.toLowerCase()), `${id} is found by its own name`).toEqual([id]);
    }
    for (const [id, alloy] of EACH) {
      for (const d of alloy.designations.filter((near) => near.near === true)) {
        for (const other of claims.get(d.code.toLowerCase()) ?? []) {
          expect(other, `${d.code} is near ${id}, not its own`).not.toBe(id);
          expect(ALLOYS.get(other)?.family, `${d.code} near ${id}`).toBe(alloy.family);
        }
      }
    }
    expect([...claims].filter(([, ids]) => ids.length > 1)).toEqual([['yellow brass', ['C85700', 'C85800']]]);
    const known = {
      Z33520: 'Zamak 3',
      Z33525: 'Zamak 3',
      ZnAl4: 'Zamak 3',
      '46000': 'EN AC-46000',
      'AlSi9Cu3(Fe)': 'EN AC-46000',
      '390': 'B390',
      A13800: 'A380',
      ADC12: 'ADC12',
      M11916: 'AZ91D',
      C85800: 'C85800',
    };
    for (const [code, id] of Object.entries(known)) expect(claims.get(code.toLowerCase())).toEqual([id]);
  });
});
