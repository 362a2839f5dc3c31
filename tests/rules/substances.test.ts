import { describe, expect, it } from 'vitest';
import { type Case, Ledger } from '../../src/engine/ledger.ts';
import { fileGiven } from '../../src/engine/steps/given.ts';
import { parseExpression } from '../../src/rulebook/expression.ts';
import type { Limit } from '../../src/rulebook/types.ts';
import { readPart } from '../../src/spec/index.ts';
import { FAMILIES, rulebook } from './cautions.ts';

const limits = Object.values(rulebook.limits);

type Composition = { readonly pb: number; readonly cd: number; readonly family: string; readonly markets: string };

/** Ids of the limits that apply to this metal and market and are broken. */
function broken(given: Composition): string[] {
  const values = (limit: Limit): Record<string, number | string> =>
    Object.fromEntries(limit.uses.map((use) => [use.name, given[use.name as keyof Composition]]));
  return limits
    .filter((limit) => parseExpression(limit.when, limit.uses)(values(limit)) === true && parseExpression(limit.require, limit.uses)(values(limit)) !== true)
    .map((limit) => limit.id.replace('substances/', ''))
    .sort();
}

const EVERY_MARKET = 'eu-electrical eu-vehicle jewellery food-contact drinking-water';

describe('substance limits', () => {
  it('ASTM B86-13 alloy 3 (Pb 0.005, Cd 0.004 %) passes everywhere without an exemption', () => {
    expect(broken({ pb: 0.005, cd: 0.004, family: 'zinc', markets: EVERY_MARKET })).toEqual([]);
  });

  it('aluminium with 0.35 % lead needs an exemption, fails its revision and passes its old text', () => {
    expect(broken({ pb: 0.35, cd: 0, family: 'aluminium', markets: 'eu-electrical' })).toEqual([
      'reach-lead',
      'rohs-lead-aluminium',
      'rohs-lead-aluminium-revised',
    ]);
  });

  it('brass with 1.5 % lead needs exemption 6(c) and the duty to inform', () => {
    expect(broken({ pb: 1.5, cd: 0, family: 'copper', markets: 'eu-electrical' })).toEqual(['reach-lead', 'rohs-lead-copper']);
  });

  it('judges nothing where no market is named', () => {
    for (const family of FAMILIES) expect(broken({ pb: 90, cd: 90, family, markets: '' })).toEqual([]);
  });

  it.each([
    ['rohs-lead', 'zinc', 'eu-electrical', 'pb', 0.1],
    ['rohs-lead-aluminium', 'aluminium', 'eu-electrical', 'pb', 0.1],
    ['rohs-lead-aluminium-revised', 'aluminium', 'eu-electrical', 'pb', 0.3],
    ['rohs-lead-aluminium-old', 'aluminium', 'eu-electrical', 'pb', 0.4],
    ['rohs-lead-copper', 'copper', 'eu-electrical', 'pb', 0.1],
    ['rohs-lead-copper-exemption', 'copper', 'eu-electrical', 'pb', 4],
    ['rohs-cadmium', 'zinc', 'eu-electrical', 'cd', 0.01],
    ['elv-lead', 'magnesium', 'eu-vehicle', 'pb', 0.1],
    ['elv-lead-exemption', 'aluminium', 'eu-vehicle', 'pb', 0.1],
    ['elv-lead-exemption', 'copper', 'eu-vehicle', 'pb', 0.1],
    ['elv-lead-aluminium', 'aluminium', 'eu-vehicle', 'pb', 0.4],
    ['elv-lead-copper', 'copper', 'eu-vehicle', 'pb', 4],
    ['elv-cadmium', 'zinc', 'eu-vehicle', 'cd', 0.01],
    ['jewellery-lead', 'tin', 'jewellery', 'pb', 0.05],
    ['jewellery-cadmium', 'zinc', 'jewellery', 'cd', 0.01],
    ['drinking-water-lead', 'copper', 'drinking-water', 'pb', 0.25],
    ['reach-lead', 'zinc', 'eu-vehicle', 'pb', 0.1],
  ] as const)('%s for %s breaks just above its bound', (id, family, markets, element, bound) => {
    const metal = { pb: 0, cd: 0, family, markets };
    expect(broken({ ...metal, [element]: bound })).not.toContain(id);
    expect(broken({ ...metal, [element]: bound * 1.001 })).toContain(id);
    expect(broken({ ...metal, [element]: bound * 1.001, markets: 'food-contact' })).not.toContain(id);
  });

  it('grade an exemption that is needed as a note, metal beyond it as a warning', () => {
    const grade = new Map(limits.map((limit) => [limit.id.replace('substances/', ''), limit.severity]));
    const notes = [...grade].filter(([, severity]) => severity === 'note').map(([id]) => id);
    expect(notes.sort()).toEqual(['elv-lead-exemption', 'reach-lead', 'rohs-lead-aluminium', 'rohs-lead-copper']);
    expect([...grade.values()]).not.toContain('error');
  });

  it('say by market and family alone where they apply, so that a silent composition is open only in a market that asks', () => {
    for (const limit of limits) {
      const names = limit.uses.filter((use) => use.unit !== undefined).map((use) => use.name);
      for (const name of names) expect(limit.when, limit.id).not.toMatch(new RegExp(`\\b${name}\\b`));
    }
  });

  it('call the 2025 revision secondary and a remembered figure remembered', () => {
    const limit = (id: string): Limit => rulebook.limits[`substances/${id}`] as Limit;
    expect(limit('rohs-lead-aluminium-revised').why).toMatch(/secondary texts/);
    for (const id of ['elv-lead', 'elv-lead-aluminium', 'elv-cadmium', 'drinking-water-lead', 'reach-lead']) {
      expect([limit(id).status, limit(id).why]).toEqual(['memory', expect.stringContaining('remembered')]);
    }
  });
});

describe('lead and cadmium of an alloy record', () => {
  const filed = (alloy: string): Ledger => {
    const text = `diewright: part/1\npart: { name: Clip }\nalloy: ${alloy}\ngeometry:\n  volume: 12 cm3\n  envelope: [40 mm, 30 mm, 12 mm]\n  projected_area: { z: 10 cm2 }\n  wall: { nominal: 2 mm }\n`;
    const { part } = readPart({ name: 'clip.part.yaml', text });
    const ledger = new Ledger({ part, alloy: rulebook.alloys[alloy], rulebook } as unknown as Case);
    fileGiven(ledger);
    return ledger;
  };

  it('are filed in per cent with the mark of the composition', () => {
    const zinc = filed('Zamak 7');
    expect([zinc.maybe('alloy.lead-greatest')?.value, zinc.maybe('alloy.cadmium-greatest')?.value]).toEqual([0.003, 0.002]);
    const lead = filed('EN AC-46000').value('alloy.lead-greatest');
    expect([lead.value, lead.unit, lead.kind, lead.status]).toEqual([0.35, '%', 'table', 'source']);
    expect(lead.source).toEqual(rulebook.alloys['EN AC-46000']?.composition.source);
  });

  it('are not filed where the composition says nothing of them', () => {
    expect(filed('A380').maybe('alloy.lead-greatest')).toBeUndefined();
    expect(filed('EN AC-46000').maybe('alloy.cadmium-greatest')).toBeUndefined();
  });
});
