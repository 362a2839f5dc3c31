import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PartChange } from '../../src/engine/replan/change.ts';
import { inOrder, isUnchanged, summarise } from '../../src/engine/replan/set.ts';
import { loadRulebook, type Rulebook } from '../../src/index.ts';
import { type Replanned, type ReplanRequest, replanPart } from '../../src/replan.ts';
import { setFields } from '../../src/spec/set-field.ts';
import { partText } from '../bench/library.mjs';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

const COMPARE = { leastChange: 2, everyValue: false };

function replan(text: string, set: readonly string[], options: Partial<ReplanRequest['compare']> = {}, name = 'a.part.yaml'): Replanned {
  return replanPart({ part: { name, text }, before: { rulebook }, after: { rulebook, set }, compare: { ...COMPARE, ...options }, version: 'test' });
}

const part = fc
  .record({ number: fc.integer({ min: 1, max: 100_000 }), seed: fc.integer({ min: 1, max: 50 }) })
  .map(({ number, seed }) => partText(number, seed));
const alloy = fc.constantFrom('A380', 'AZ91D', 'Zamak 3', 'ZA-12', 'AM60B', 'EN AC-46000');

describe('two plans of one part', () => {
  test('the alloy that a part has changes nothing', () => {
    fc.assert(
      fc.property(part, (text) => {
        const own = /^alloy: (.*?) +#/m.exec(text)?.[1];
        const { change } = replan(text, [`alloy=${own}`], { leastChange: 0, everyValue: true });
        expect(change).toBeDefined();
        expect(change && isUnchanged(change)).toBe(true);
        expect(change?.before).toEqual(change?.after);
        expect(change?.die?.verdict ?? 'as it is').toBe('as it is');
      }),
      { numRuns: 12 },
    );
  });

  test('there and back again gives the file back, byte for byte', () => {
    fc.assert(
      fc.property(part, alloy, fc.constantFrom('plain', 'single', 'double'), (text, other, quotes) => {
        const quoted = { plain: '$1', single: "'$1'", double: '"$1"' }[quotes];
        const written = text.replace(/^alloy: (.*?)(?= +#)/m, `alloy: ${quoted}`).replace(/^ {2}mass: .*$/m, '  volume: 300 cm3');
        const own = /^alloy: ["']?(.*?)["']? +#/m.exec(written)?.[1] ?? '';
        const there = setFields({ name: 'a', text: written }, [`alloy=${JSON.stringify(other)}`]).source;
        expect(there.text).not.toBe(other === own ? '' : written);
        expect(setFields(there, [`alloy=${JSON.stringify(own)}`]).source.text).toBe(written);
      }),
      { numRuns: 60 },
    );
  });

  test('a part given by its mass keeps its volume, and its mass comes back', () => {
    const given = partText(1).replace(/^ {2}(mass|volume): .*$/m, '  mass: 1.12 kg');
    const light = replan(given, ['alloy=AZ91D']);
    expect(light.change?.remarks.join(' ')).toContain('the same shape weighs');
    const volumes = [light.change?.before, light.change?.after].map((side) => (side?.figures['part.mass'] ?? 0) / (side?.alloy === 'AZ91D' ? 1.81 : 1));
    expect(light.change?.after.figures['part.mass']).toBeLessThan(light.change?.before.figures['part.mass'] ?? 0);
    expect(volumes[1]).toBeGreaterThan(0);
    const own = /^alloy: (.*?) +#/m.exec(given)?.[1] ?? '';
    const back = replan(light.after?.source.text ?? '', [`alloy=${own}`]);
    expect(back.after?.source.text).toBe(given);
  });

  test('a change and its reverse find the same differences, the other way round', () => {
    fc.assert(
      fc.property(part, (given) => {
        const text = given.replace(/^ {2}mass: .*$/m, '  volume: 300 cm3').replace(/^certificate.*\n/m, '');
        const own = /^alloy: (.*?) +#/m.exec(text)?.[1] ?? '';
        const there = replan(text, ['alloy=AM60B'], { leastChange: 0, everyValue: true });
        const back = replan(there.after?.source.text ?? '', [`alloy=${own}`], { leastChange: 0, everyValue: true });
        const ids = (one: Replanned): string[] => (one.change?.groups ?? []).flatMap(({ changes }) => changes.map(({ id }) => id)).sort();
        expect(ids(back)).toEqual(ids(there));
        expect(back.change?.after).toEqual(there.change?.before);
        expect(back.change?.vanished.map(({ code }) => code).sort()).toEqual(there.change?.appeared.map(({ code }) => code).sort());
      }),
      { numRuns: 8 },
    );
  });
});

describe('a set of parts', () => {
  let parts: PartChange[];
  beforeAll(() => {
    parts = Array.from({ length: 24 }, (_, i) => replan(partText(i + 1, 3), ['alloy=AZ91D'], {}, `p${i}.part.yaml`).change).flatMap((change) => change ?? []);
    // Some that stay castable for certain, and one without a volume.
    for (const [i, text] of [partText(30, 3), partText(31, 3), partText(32, 3).replace(/^production.*\n/m, '')].entries())
      parts.push(...[replan(text, ['alloy=A413'], {}, `q${i}.part.yaml`).change].flatMap((change) => change ?? []));
    expect(parts.length).toBe(27);
  });

  test('its summary does not hang on the order of its files', () => {
    const whole = JSON.stringify(summarise(parts, []));
    fc.assert(
      fc.property(fc.shuffledSubarray(parts, { minLength: 27 }), (shuffled) => {
        expect(JSON.stringify(summarise(shuffled, []))).toBe(whole);
        expect(inOrder(shuffled)).toEqual(inOrder(parts));
      }),
      { numRuns: 20 },
    );
  });

  test('its totals are the sums over its parts, and count the others', () => {
    const set = summarise(parts, []);
    const both = parts.filter(({ before, after }) => before.castable && after.castable);
    for (const id of ['cycle.hours', 'cost.per-year'] as const) {
      const having = both.filter(({ before, after }) => before.figures[id] !== undefined && after.figures[id] !== undefined);
      const total = set.totals.find((one) => one.id === id);
      expect(total?.parts).toBe(having.length);
      expect(total?.leftOut).toBe(parts.length - having.length);
      expect(total?.before).toBeCloseTo(
        having.reduce((sum, { before }) => sum + (before.figures[id] ?? 0), 0),
        6,
      );
      expect(total?.after).toBeCloseTo(
        having.reduce((sum, { after }) => sum + (after.figures[id] ?? 0), 0),
        6,
      );
    }
    const hours = set.totals.find(({ id }) => id === 'cycle.hours');
    expect(set.machines.reduce((sum, { before }) => sum + before.hours, 0)).toBeCloseTo(
      both.reduce((sum, { before }) => sum + (before.figures['cycle.hours'] ?? 0), 0),
      6,
    );
    expect(hours?.before).toBeGreaterThan(0);
  });

  test('every part is counted in one standing, and every die in one verdict', () => {
    const set = summarise(parts, []);
    expect(set.standings.reduce((sum, { parts: count }) => sum + count, 0)).toBe(parts.length);
    expect(set.dies.reduce((sum, { parts: count }) => sum + count, 0)).toBe(parts.filter(({ die }) => die !== undefined).length);
    expect(set.compared.withoutVolume).toBe(parts.filter(({ perYear }) => perYear === undefined).length);
    expect(set.compared.withoutVolume).toBeGreaterThan(0);
  });
});
