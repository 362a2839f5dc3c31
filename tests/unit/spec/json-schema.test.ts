import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { jsonSchema } from '../../../src/spec/index.ts';
import { BASE_CELL, BASE_DIE, BASE_PART, BASE_PLANT } from '../../cli/bad-input/base.ts';
import { BAD_INPUT } from '../../cli/bad-input/cases.ts';

const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, strictTuples: false, allErrors: true });
const validate = { part: ajv.compile(jsonSchema('part')), die: ajv.compile(jsonSchema('die')), plant: ajv.compile(jsonSchema('plant')) };
/** Faults of shape, which an editor can show; the rest is for the reader alone. */
const SHAPE = ['unknown-key', 'missing-field', 'wrong-type', 'unknown-word', 'bare-number', 'wrong-format', 'wrong-id', 'thread', 'pin-form'];

describe('the JSON Schema', () => {
  it.each(['part', 'plant'] as const)('of a %s file names itself and closes every mapping', (kind) => {
    const schema = jsonSchema(kind) as Record<string, unknown>;
    expect(schema).toMatchObject({ $schema: 'https://json-schema.org/draft/2020-12/schema', $id: `urn:diewright:${kind}/1`, type: 'object' });
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      const { type, properties, additionalProperties, description, items, prefixItems } = node as Record<string, unknown>;
      if (properties !== undefined && type === 'object') expect(additionalProperties, path).toBe(false);
      for (const [key, inner] of Object.entries((properties ?? {}) as object)) {
        expect((inner as { description?: string }).description ?? (inner as { enum?: unknown }).enum, `${path}.${key} is described`).toBeTruthy();
        visit(inner, `${path}.${key}`);
      }
      for (const inner of Array.isArray(prefixItems) ? prefixItems : []) visit(inner, `${path}[]`);
      if (items !== undefined) visit(items, `${path}[]`);
      expect(description === undefined || typeof description === 'string').toBe(true);
    };
    visit(schema, kind);
  });

  it('takes the files that the reader takes', () => {
    expect([validate.part(parse(BASE_PART)), validate.part.errors]).toEqual([true, null]);
    expect([validate.die(parse(BASE_DIE)), validate.die.errors]).toEqual([true, null]);
    expect([validate.plant(parse(BASE_PLANT)), validate.plant.errors]).toEqual([true, null]);
    expect([validate.plant(parse(BASE_CELL)), validate.plant.errors]).toEqual([true, null]);
    const variants = [
      'revision: B|revision: 2',
      'die_opening: z|die_opening: auto',
      'direction: z|direction: [0, 1, 0.5]',
      '412 cm3|412 cm\u00b3',
      '2.2 mm|.22e1mm',
      'thread: M8|thread: M8 \u00d7 1.25',
    ];
    for (const variant of variants) {
      const [from = '', to = ''] = variant.split('|');
      expect([variant, validate.part(parse(BASE_PART.replace(from, to)))]).toEqual([variant, true]);
    }
  });

  it('refuses every fault of shape that the reader refuses', () => {
    const wrong = BAD_INPUT.filter((bad) => SHAPE.includes(bad.code.slice('spec/'.length)));
    expect(wrong.length).toBeGreaterThan(70);
    for (const bad of wrong) {
      const data: unknown = parse(new TextDecoder().decode(bad.bytes()), { logLevel: 'silent' });
      // A key that ordinary objects cannot carry, and a comparison of two numbers inside one text.
      if (bad.name.startsWith('__proto__') || bad.name === 'thread finer than its pitch') continue;
      expect([bad.name, validate[bad.kind](data)]).toEqual([bad.name, false]);
    }
  });
});
