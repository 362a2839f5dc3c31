import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readLocatedYaml } from '../../../src/kernel/located-yaml.ts';
import { partSchema, partSchemaFor } from '../../../src/spec/part-schema.ts';
import { BASE_PART } from '../../cli/bad-input/base.ts';
import { BAD_INPUT } from '../../cli/bad-input/cases.ts';
import { EXAMPLES } from '../../golden/examples.ts';

const EXAMPLE = `diewright: part/1
part: { name: Cap }
alloy: ZP5
geometry: { mass: 40 g, envelope: [30 mm, 20 mm, 10 mm], projected_area: { z: 5 cm2 }, wall: { nominal: 1 mm } }
`;

const data = (text: string): unknown => readLocatedYaml({ name: 'a.part.yaml', text }, { prefix: 'spec', numbersAsText: true }).data;

/** A good file with each of its top-level keys left out in turn. */
const gaps = (name: string, text: string): [string, unknown][] => {
  const whole = data(text) as Readonly<Record<string, unknown>>;
  return Object.keys(whole).map((key) => [`${name} without ${key}`, Object.fromEntries(Object.entries(whole).filter(([other]) => other !== key))]);
};

const FILES: [string, unknown][] = [
  ['every field', data(BASE_PART)],
  ...gaps('every field', BASE_PART),
  ...EXAMPLES.map(({ name, file, folder }): [string, unknown] => [name, data(readFileSync(join(folder, file), 'utf8'))]),
  ...BAD_INPUT.filter((entry) => entry.kind === 'part').map((entry): [string, unknown] => [entry.name, data(Buffer.from(entry.bytes()).toString('utf8'))]),
  ...['walls', 'holes', 'quality', 'pinned', 'nonsense', '__proto__', 'toString'].flatMap((key) =>
    ['null', '[]', '{}', 'word', '[{}]'].map((value): [string, unknown] => [`${key}: ${value}`, data(`${EXAMPLE}${key}: ${value}\n`)]),
  ),
];

describe('the schema of the parts that a file has', () => {
  test.each(FILES.filter(([, given]) => typeof given === 'object' && given !== null))(
    'takes it if the whole schema does, with the same data: %s',
    (_, given) => {
      const whole = partSchema().safeParse(given, { jitless: true });
      const small = partSchemaFor(given as object).safeParse(given, { jitless: true });
      expect(small.success).toBe(whole.success);
      if (!small.success || !whole.success) return;
      expect(small.data).toEqual(whole.data);
      expect(Object.keys(small.data)).toEqual(Object.keys(whole.data));
    },
  );

  test('both kinds of file are among these', () => {
    const taken = FILES.map(([, given]) => partSchema().safeParse(given, { jitless: true }).success);
    expect(taken.filter((is) => is).length).toBeGreaterThan(20);
    expect(taken.filter((is) => !is).length).toBeGreaterThan(60);
  });
});
