import { describe, expect, it } from 'vitest';
import { codes, review } from '../unit/engine/parts.ts';

const WALL = {
  geometry: '{ volume: 412 cm3, envelope: [238 mm, 142 mm, 60 mm], projected_area: { z: 240 cm2 }, wall: { nominal: 3 mm } }',
};

describe('ribs, fillets, inserts and machined faces', () => {
  const found = (fields: Readonly<Record<string, string>>, kind: string): string[] =>
    codes(review({ ...WALL, ...fields })).filter((code) => code.startsWith(`${kind}/`));
  // Chinese die-casting design manual, table 2-22: b = 4, h = 15, 3 degrees: 0.527 b - 0.055 h = 1.283 mm.
  it('the tip of a rib 4 mm wide and 15 mm high takes 1.28 mm', () => {
    const ledger = review({ ...WALL, ribs: '[{ id: R, root_width: 4 mm, height: 15 mm, draft: 3 deg }]' });
    expect(ledger.value('rib.tip-radius-greatest', 'R').value).toBeCloseTo(1.28, 2);
  });
  it.each([
    ['root_width: 4 mm, height: 15 mm, draft: 3 deg, tip_radius: 1.2 mm, root_fillet: 2.4 mm', []],
    ['root_width: 4 mm, height: 16 mm', ['rib/height[R]']],
    ['root_width: 2 mm, height: 8 mm', ['rib/root-width[R]']],
    ['root_width: 4 mm, height: 15 mm, draft: 1 deg', ['rib/draft[R]']],
    ['root_width: 4 mm, height: 15 mm, draft: 3 deg, tip_radius: 1.5 mm', ['rib/tip-radius[R]']],
    ['root_width: 4 mm, height: 15 mm, draft: 3 deg, root_fillet: 1 mm', ['rib/root-fillet[R]']],
  ])('a rib of { %s }: %j', (text, expected) => {
    expect(found({ ribs: `[{ id: R, ${text} }]` }, 'rib')).toEqual(expected);
  });
  it.each([
    ['4 mm', []],
    ['2 mm', ['fillet/least-radius[F]']],
    ['0.3 mm', ['fillet/absolute-least[F]']],
  ])('a fillet of %s between 3 and 5 mm: %j', (radius, expected) => {
    expect(found({ fillets: `[{ id: F, radius: ${radius}, walls: [3 mm, 5 mm] }]` }, 'fillet')).toEqual(expected);
  });
  it.each([
    ['length: 24 mm, cover: 2.5 mm', 'none', []],
    ['length: 24 mm, cover: 2 mm', 'none', ['insert/advised-cover[I]']],
    ['length: 24 mm, cover: 1 mm', 'none', ['insert/cover[I]']],
    ['length: 18 mm', 'none', ['insert/embedment[I]']],
    ['length: 24 mm', 'T5', ['insert/heat-treatment[I]']],
  ])('an insert with { %s }, heat treatment %s: %j', (text, treatment, expected) => {
    expect(found({ inserts: `[{ id: I, material: steel, diameter: 12 mm, ${text} }]`, quality: `{ heat_treatment: ${treatment} }` }, 'insert')).toEqual(
      expected,
    );
  });
  it.each([
    ['0.25 mm', []],
    ['0.2 mm', ['machining/least[M]']],
    ['0.6 mm', ['machining/usual[M]']],
    ['0.8 mm', ['machining/opens-porosity[M]']],
  ])('%s of machining stock: %j', (stock, expected) => {
    expect(found({ machining: `[{ id: M, stock: ${stock} }]` }, 'machining')).toEqual(expected);
  });
});

describe('the certificate of the melt', () => {
  const found = (shares: string, alloy: string): string[] =>
    codes(review({ ...WALL, certificate: `{ ${shares} }` }, alloy)).filter((code) => code.startsWith('certificate/'));
  it.each([
    ['A380', 'Fe: 0.9 %, Mn: 0.3 %, Cr: 0.05 %', []],
    ['A380', 'Fe: 1.4 %', ['certificate/greatest[Fe]']],
    ['A380', 'Si: 6 %', ['certificate/least[Si]']],
    ['A380', 'Fe: 0.4 %, Mn: 0.1 %', ['certificate/aluminium-iron[Fe]']],
    ['A380', 'Fe: 1.2 %, Mn: 0.3 %, Cr: 0.1 %', ['certificate/sludge[Fe]']],
    ['Zamak 3', 'Pb: 0.004 %, Cd: 0.004 %, Sn: 0.001 %, Mg: 0.03 %', []],
    ['Zamak 3', 'Pb: 0.008 %', ['certificate/zinc-corrosion[Pb]']],
    ['Zamak 3', 'Mg: 0.01 %', ['certificate/zinc-magnesium[Mg]']],
    ['Zamak 3', 'Fe: 0.08 %', ['certificate/zinc-iron[Fe]']],
    ['AZ91D', 'Fe: 0.004 %, Ni: 0.001 %, Cu: 0.02 %, Mn: 0.25 %', []],
    ['AZ91D', 'Ni: 0.003 %', ['certificate/magnesium-corrosion[Ni]']],
    ['AM60B', 'Fe: 0.0049 %, Mn: 0.25 %', []],
    ['AM50A', 'Fe: 0.0039 %, Mn: 0.26 %', []],
    ['AZ91D', 'Fe: 0.0049 %, Mn: 0.15 %', ['certificate/magnesium-iron-ratio[Fe]']],
  ])('%s with { %s }: %j', (alloy, shares, expected) => {
    expect(found(shares, alloy)).toEqual(expected);
  });
  it('is missed when there is none', () => {
    expect(review(WALL).unchecked.find((entry) => entry.id === 'certificate')?.missing).toContain('no certificate');
  });
});
