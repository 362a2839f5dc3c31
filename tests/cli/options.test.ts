import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { XMLParser } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { makeFolder } from './folder.ts';
import { runHere } from './run-here.ts';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const part = (name: string): string => join(examples, name, `${name}.part.yaml`);

interface Json {
  readonly format: string;
  readonly fits: boolean;
  readonly candidates: readonly {
    readonly cavities: number;
    readonly machine: string;
    readonly plunger: number;
    readonly cost: number;
    readonly planned: boolean;
  }[];
  readonly counts: readonly { readonly name: string; readonly lost: string }[];
  readonly misses: readonly { readonly broken: readonly { readonly fix: string }[] }[];
  readonly variants: readonly { readonly alloy: string; readonly mass: number; readonly plant: string; readonly cost: number }[];
}

describe('options', () => {
  test('the planned candidate is that of the plan, and pinning another one gives its cost', async () => {
    const { code, out } = await runHere(['options', part('brake-valve-body'), '--format', 'json']);
    expect(code).toBe(0);
    const json = JSON.parse(out) as Json;
    const plan = JSON.parse(readFileSync(join(examples, 'brake-valve-body', 'plan.json'), 'utf8')) as { values: Record<string, { value: number }> };
    const planned = json.candidates.find((one) => one.planned);
    expect(planned?.cost).toBe(plan.values['cost.per-part']?.value);
    expect(planned?.cavities).toBe(plan.values['machine.cavities']?.value);
    const other = json.candidates.find((one) => one.cavities === 1) as Json['candidates'][number];
    const pins = [`machine.cavities=${other.cavities}`, `machine.model=${other.machine}`, `machine.plunger=${other.plunger} mm`];
    const pinned = await runHere([
      'plan',
      part('brake-valve-body'),
      '--format',
      'json',
      '--fail-on',
      'never',
      '-q',
      ...pins.flatMap((pin) => ['--set', `pinned.${pin}`]),
    ]);
    expect((JSON.parse(pinned.out) as typeof plan).values['cost.per-part']?.value).toBeCloseTo(other.cost, 9);
    expect(json.counts.map(({ name }) => name)).toEqual(['1', '2', '4', '6', '8', '12', '16']);
    expect(json.counts.filter(({ lost }) => lost === '')).toHaveLength(1);
  });

  test('the JSON is as its schema says, with candidates and without', async () => {
    const check = new Ajv2020({ strict: true, allErrors: true }).compile(JSON.parse((await runHere(['schema', 'options'])).out) as object);
    for (const name of ['bearing-bracket', 'filter-manifold']) {
      const { out } = await runHere(['options', part(name), '--alloys', 'AZ91D', '--format', 'json']);
      expect(check(JSON.parse(out)), JSON.stringify(check.errors)).toBe(true);
    }
  });

  test('other alloys and plants are lines of their own; a mass follows the density', async () => {
    const { code, out } = await runHere(['options', part('bearing-bracket'), '--alloys', 'A380, Zamak 3', '--format', 'json']);
    expect(code).toBe(0);
    const { variants } = JSON.parse(out) as Json;
    expect(variants.map(({ alloy }) => alloy)).toEqual(['ZA-12', 'A380', 'Zamak 3']);
    const [own, light] = variants as [Json['variants'][number], Json['variants'][number]];
    // 6.03 and 2.74 g/cm3 or near: the same shape weighs less than half.
    expect(light.mass / own.mass).toBeGreaterThan(0.4);
    expect(light.mass / own.mass).toBeLessThan(0.5);
  });

  test('Markdown to a file has its drawing beside it', async () => {
    const folder = makeFolder();
    const file = folder.file('options.md');
    expect((await runHere(['options', part('bearing-bracket'), '--most', '3', '--format', `markdown=${file}`])).code).toBe(0);
    const text = readFileSync(file, 'utf8');
    expect(text).toContain('![Cost of a good part over the number of cavities](options-cavities.svg)');
    expect(text).toContain('## What stopped the others');
    const svg = new XMLParser({ ignoreAttributes: false }).parse(readFileSync(folder.file('options-cavities.svg'), 'utf8')) as { svg?: object };
    expect(svg.svg).toBeDefined();
  });

  test('where nothing fits the nearest misses say what would let them fit, and the exit says so', async () => {
    const { code, out } = await runHere(['options', part('filter-manifold'), '--format', 'json']);
    expect(code).toBe(1);
    const json = JSON.parse(out) as Json;
    expect(json.fits).toBe(false);
    expect(json.misses.length).toBeGreaterThan(2);
    for (const { broken } of json.misses) for (const { fix } of broken) expect(fix).not.toBe('');
    expect((await runHere(['options', part('filter-manifold'), '--fail-on', 'never'])).code).toBe(0);
  });

  test.each([
    [['--alloys', 'Unobtainium'], 'spec/unknown-alloy'],
    [['--format', 'pdf'], 'cli/unknown-format'],
    [['--most', 'many'], 'cli/usage'],
    [['--plant', 'nowhere.yaml'], 'nowhere.yaml'],
  ])('%j is refused', async (args, words) => {
    const { code, err } = await runHere(['options', part('bearing-bracket'), ...args]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
