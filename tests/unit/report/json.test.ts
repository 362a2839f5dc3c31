import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { planJson, plansJson } from '../../../src/report/json.ts';
import { planJsonSchema } from '../../../src/report/plan-schema.ts';
import { handMade, NASTY } from './hand-made.ts';
import { GAS_TIME } from './hand-made-figures.ts';

const text = planJson(handMade());
const data = JSON.parse(text);

/** Every number of a document with the path that leads to it. */
function numbers(value: unknown, path: readonly string[] = []): string[] {
  if (typeof value === 'number') return [path.join('/')];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, [...path, key]));
}

describe('plan as JSON', () => {
  test('keys come in the order of the contract', () => {
    expect(Object.keys(data)).toEqual([
      'format',
      'tool',
      'standing',
      'part',
      'alloy',
      'plant',
      'decisions',
      'texts',
      'values',
      'sections',
      'findings',
      'cautions',
      'unchecked',
      'judged',
      'unverified',
      'checkFirst',
      'sources',
    ]);
    expect(data.format).toBe('plan/1');
  });

  test('numbers stand in values, in decisions that have a value, and in lines and columns only', () => {
    const places = numbers(data).map((path) => path.replace(/^values\/[^/]+\/value$/, 'VALUE').replace(/\/(line|column)$/, '/AT'));
    const elsewhere = places.filter((path) => path !== 'VALUE' && !path.endsWith('/at/AT'));
    expect(elsewhere).toEqual(['decisions/machine.cavities/value']);
    expect(places.filter((path) => path === 'VALUE')).toHaveLength(9);
  });

  test('a formula value names its formula, a table value its table, and both their parents', () => {
    expect(data.values['test.force']).toEqual({
      title: 'Title of test.force',
      value: 720,
      unit: 'kN',
      kind: 'formula',
      formula: 'test.force',
      parents: ['test.pressure', 'test.area'],
      source: ['KEY-A table 3'],
      status: 'memory',
      range: 'inside',
    });
    expect(data.values['test.pressure'].table).toBe('test/pressure');
    expect(data.values['test.double'].parents).toEqual(['test.force']);
  });

  test('an input says what was written, where, and of which item', () => {
    expect(data.values['hole.diameter[H1]']).toMatchObject({ written: '8.5 mm', item: 'H1', at: { file: 'cover.part.yaml', line: 5, column: 25 } });
  });

  test('every parent is there, even one that no section filed', () => {
    for (const value of Object.values(data.values) as { parents: string[] }[]) for (const parent of value.parents) expect(data.values).toHaveProperty([parent]);
    expect(data.values['test.unfiled'].value).toBe(3);
  });

  test('a decision gives its number with a unit where a value has its id, else its word', () => {
    expect(data.decisions['machine.cavities']).toMatchObject({ value: 2, unit: '1', alternatives: [{ value: '1', because: 'too slow' }] });
    expect(data.decisions['machine.kind'].value).toBe('cold-chamber');
    expect(data.decisions['machine.kind']).not.toHaveProperty('unit');
  });

  test('unverified lists what rests on memory, and nothing else', () => {
    expect(data.unverified).toEqual(['test.pressure', 'test.force', 'test.double']);
    expect(data.checkFirst[0]).toEqual({ id: 'test.pressure', status: 'memory' });
  });

  test('two spaces, a line break at the end, and no character that a terminal acts on', () => {
    expect(text.startsWith('{\n  "format"')).toBe(true);
    expect(text.endsWith('}\n')).toBe(true);
    const nasty = planJson(handMade({ part: { name: `${NASTY}\u009b\u2028`, file: 'a' } }));
    expect(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028\u202a-\u202e]/.test(nasty)).toBe(false);
    expect(JSON.parse(nasty).part.name).toBe(`${NASTY}\u009b\u2028`);
  });

  test('a figure is named only, and fits the schema', () => {
    const drawn = JSON.parse(planJson(handMade({ sections: [{ id: 'shot', title: 'Shot', blocks: [GAS_TIME] }] })));
    expect(drawn.sections.shot.blocks).toEqual([{ kind: 'figure', id: 'gas-time', title: GAS_TIME.title }]);
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(planJsonSchema());
    expect(validate(drawn), JSON.stringify(validate.errors)).toBe(true);
  });

  test('several plans are one document, in the order given', () => {
    const two = JSON.parse(plansJson([handMade(), handMade({ part: { name: 'Other', file: 'b' } })]));
    expect(two.format).toBe('plans/1');
    expect(two.plans.map((plan: { part: { name: string } }) => plan.part.name)).toEqual(['Cover', 'Other']);
  });

  test('it fits its own JSON Schema, and a changed one does not', () => {
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(planJsonSchema());
    expect(validate(data), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...data, further: 1 })).toBe(false);
    const { hold: _hold, ...standing } = data.standing;
    expect(validate({ ...data, standing })).toBe(false);
    expect(validate({ ...data, values: { ...data.values, 'test.force': { ...data.values['test.force'], value: '720' } } })).toBe(false);
  });
});
