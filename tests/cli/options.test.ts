import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { XMLParser } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { makeFolder } from './folder.ts';
import { runHere } from './run-here.ts';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const part = (name: string): string => join(examples, name, `${name}.part.yaml`);

interface Json {
  readonly format: string;
  readonly castings?: number;
  readonly loweredVelocity?: number;
  readonly fits: boolean;
  readonly candidates: readonly {
    readonly cavities: number;
    readonly machine: string;
    readonly plunger: number;
    readonly cost: number;
    readonly planned: boolean;
  }[];
  readonly counts: readonly { readonly name: string; readonly lost: string }[];
  readonly machines: readonly { readonly name: string; readonly lost: string }[];
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

describe('options of a die with several parts', () => {
  const pair = join(examples, 'latch-lever-pair', 'latch-lever-pair.die.yaml');
  const housing = join(examples, 'lamp-housing', 'lamp-housing.die.yaml');
  const options = async (die: string, ...args: string[]): Promise<Json> =>
    JSON.parse((await runHere(['options', die, ...args, '--format', 'json'])).out) as Json;

  test('are machines and plungers for the set; the planned one is that of its plan, and pinning another in the die file gives its cost', async () => {
    const json = await options(housing);
    const plan = JSON.parse(readFileSync(join(examples, 'lamp-housing', 'plan.json'), 'utf8')) as { values: Record<string, { value: number }> };
    expect([json.castings, json.fits, json.loweredVelocity, json.counts.map(({ name }) => name)]).toEqual([2, true, undefined, ['1']]);
    const planned = json.candidates.find((one) => one.planned);
    expect([planned?.cost, planned?.plunger]).toEqual([plan.values['cost.per-part']?.value, plan.values['machine.plunger']?.value]);
    expect(json.machines.filter(({ lost }) => lost === '').map(({ name }) => name)).toEqual([planned?.machine]);
    const other = json.candidates.find(({ machine }) => machine !== planned?.machine) as Json['candidates'][number];
    const names = readdirSync(dirname(housing)).filter((name) => name.endsWith('.yaml'));
    const folder = makeFolder(Object.fromEntries(names.map((name) => [name, readFileSync(join(dirname(housing), name), 'utf8')])));
    const pins = `pinned: { machine.model: ${other.machine}, machine.plunger: ${other.plunger} mm }`;
    folder.write('lamp-housing.die.yaml', `${folder.read('lamp-housing.die.yaml')}\n${pins}\n`);
    const { out } = folder.run(['plan', 'lamp-housing.die.yaml', '--format', 'json', '--fail-on', 'never', '-q']);
    folder.remove();
    expect((JSON.parse(out) as typeof plan).values['cost.per-part']?.value).toBeCloseTo(other.cost, 9);
  });

  test('the JSON is as its schema says; another alloy is a line whose masses follow the density', async () => {
    const json = await options(pair, '--alloys', 'AZ91D');
    const check = new Ajv2020({ strict: true, allErrors: true }).compile(JSON.parse((await runHere(['schema', 'options'])).out) as object);
    expect(check(json), JSON.stringify(check.errors)).toBe(true);
    const [own, light] = json.variants as [Json['variants'][number], Json['variants'][number]];
    expect(json.loweredVelocity).toBeLessThan(43.1);
    expect([own.alloy, light.alloy]).toEqual(['Zamak 5', 'AZ91D']);
    // 1.81 over 6.6 g/cm3 or near.
    expect(light.mass / own.mass).toBeGreaterThan(0.25);
    expect(light.mass / own.mass).toBeLessThan(0.3);
  });

  test('Markdown speaks of sets and of no count of cavities', async () => {
    const { out } = await runHere(['options', pair, '--alloys', 'AZ91D']);
    expect(out).toContain('Castings of a shot: 8, made together as one set');
    expect(out).toContain('Cost of a good set');
    expect(out).toContain('pinned: { machine.model: ID, machine.plunger: D mm }');
    expect(out).toContain('All candidates are compared with these gates');
    expect(out).not.toMatch(/good part\b|Cavities|1 cavity|count of the plan/);
  });

  test('a part that the die names and that cannot be read is told at its place', async () => {
    const folder = makeFolder({ 'alone.die.yaml': readFileSync(pair, 'utf8') });
    const { code, err } = folder.run(['options', 'alone.die.yaml']);
    folder.remove();
    expect(code).toBe(2);
    expect(err).toContain('alone.die.yaml:5:');
    expect(err).toContain('left-lever.part.yaml');
  });
});
