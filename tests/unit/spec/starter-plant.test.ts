import { describe, expect, it } from 'vitest';
import { planPart, readPlantText } from '../../../src/index.ts';
import { jsonSchema } from '../../../src/spec/json-schema.ts';
import { STARTER_PART, STARTER_PLANT } from '../../../src/spec/starters.ts';
import { rulebook } from '../engine/work-to.ts';

/** Every key that a plant file can have, at whatever depth; families and value names are not keys of the form. */
function keysOf(schema: unknown): string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { properties, items, prefixItems, additionalProperties } = schema as Record<string, unknown>;
  const own = Object.entries((properties as object | undefined) ?? {});
  return [
    ...own.flatMap(([key, inner]) => [key, ...keysOf(inner)]),
    ...keysOf(items),
    ...keysOf(additionalProperties),
    ...((prefixItems as unknown[] | undefined) ?? []).flatMap(keysOf),
  ];
}

describe('the plant to begin with', () => {
  it('has no fault, with its prices as a comment and without', () => {
    expect(readPlantText({ name: 'plant.yaml', text: STARTER_PLANT })).toEqual([]);
    const at = STARTER_PLANT.indexOf('# prices:');
    const priced = STARTER_PLANT.slice(0, at) + STARTER_PLANT.slice(at).replace(/^# /gm, '');
    expect(readPlantText({ name: 'plant.yaml', text: priced })).toEqual([]);
  });

  it('shows every key that there is', () => {
    const shownElsewhere = ['note', 'dross', 'zinc', 'zinc_aluminium', 'magnesium', 'copper', 'lead', 'tin', 'least', 'melting_energy'];
    const missing = [...new Set(keysOf(jsonSchema('plant')))].filter((key) => !new RegExp(`\\b${key}:`).test(STARTER_PLANT));
    expect(missing.filter((key) => !shownElsewhere.includes(key))).toEqual([]);
  });

  it('plans the part to begin with: from its own furnaces, units and press, and with nothing that the reader finds', () => {
    const { plan, diagnostics } = planPart({
      part: { name: 'cover.part.yaml', text: STARTER_PART },
      plant: { name: 'plant.yaml', text: STARTER_PLANT },
      rulebook,
      version: '0',
    });
    expect(diagnostics.filter(({ code, severity }) => code.startsWith('spec/') || severity === 'error')).toEqual([]);
    const decided = (id: string) => plan?.decisions.get(id)?.value;
    expect([decided('furnace.holding'), decided('furnace.melting'), decided('finish.press-drive')]).toEqual(['doser', 'tower', 'to be asked']);
    expect(['tower water', 'tempering']).toContain(decided('cooling.unit'));
    expect(['trim-160', 'trim-400']).toContain(decided('finish.press-model'));
    expect(diagnostics.filter(({ code }) => /^(furnace|house)\/|^cooling\/unit|^finish\/press|core-circuits|vacuum-unit|head-flow/.test(code))).toEqual([]);
  });
});
