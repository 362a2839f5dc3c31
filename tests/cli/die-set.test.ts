import { mkdirSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { schemaText, starterText } from '../../src/index.ts';
import { STARTER_PART } from '../../src/spec/starters.ts';
import { makeFolder } from './folder.ts';

const LID = STARTER_PART.replace('name: Cover', 'name: Lid').replace('number: C-100 ', 'number: C-101 ');
const DIE = `diewright: die/1
die: { name: Cover with lid }
parts:
  - { file: cover.part.yaml }
  - { file: lids/lid.part.yaml, count: 2 }
`;

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder({ 'cover.part.yaml': STARTER_PART, 'pair.die.yaml': DIE });
  mkdirSync(folder.file('lids'));
  folder.write('lids/lid.part.yaml', LID);
});
afterAll(() => folder.remove());
const plan = (...args: string[]) => folder.run(['plan', ...args]);

describe('plan of a die file', () => {
  test('gives the plan of the die and those of its parts, as Markdown and as JSON of its form', async () => {
    const { code, err } = plan('pair.die.yaml', '-f', 'json=pair.plan.json', '-f', 'markdown=pair.plan.md', '--fail-on', 'never');
    expect([code, err.includes('internal')]).toEqual([0, false]);
    const json = JSON.parse(folder.read('pair.plan.json'));
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true, strictRequired: false }).compile(JSON.parse(await schemaText('die-plan')));
    expect([validate(json), validate.errors]).toEqual([true, null]);
    expect([json.format, json.die.name, json.parts.map(({ id }: { id: string }) => id)]).toEqual(['die-plan/1', 'Cover with lid', ['cover', 'lid']]);
    expect([json.values['set.count[lid]'].value, json.values['set.castings'].value]).toEqual([2, 3]);
    expect(json.parts[1].plan.part.file).toBe('lids/lid.part.yaml');
    const markdown = folder.read('pair.plan.md');
    expect(markdown.match(/^# .*/gm)).toEqual([
      '# Casting plan: die Cover with lid',
      '# In this die: Cover, C-100, revision A',
      '# In this die: Lid, C-101, revision A',
    ]);
    for (const [, file] of markdown.matchAll(/\]\(([^)]*\.svg)\)/g)) expect(() => folder.read(file as string)).not.toThrow();
  });

  test('reads it from standard input, and sets a field of every part', () => {
    const { code, out } = folder.run(['plan', '-', '-f', 'json', '--set', 'alloy=Zamak 3', '--fail-on', 'never', '-q'], { input: DIE });
    expect(code).toBe(0);
    expect(JSON.parse(out).alloy.family).toBe('zinc');
  });

  test('too many for one machine are told as sets that lack hours, not as cavities', () => {
    const { err } = plan('pair.die.yaml', '-f', 'json=busy.json', '--set', 'production.per_year=4000000', '--fail-on', 'never');
    const [said] = JSON.parse(folder.read('busy.json')).findings.filter(({ code }: { code: string }) => code.endsWith('/hours'));
    expect([said.code, said.message.startsWith('With one set to a shot')]).toEqual(['set/hours', true]);
    expect(err).toMatch(/Make \d+ times as many castings in a shot/);
  });

  test('explains a value of the die down to the parts', () => {
    const { code, out } = folder.run(['explain', 'clamp.locking-force', 'pair.die.yaml']);
    expect(code).toBe(0);
    expect(out).toContain('set.area[lid]');
    expect(out).toContain('part.projected-area in the plan of lid');
  });

  test('explains what stands in the plans of its parts, part by part', () => {
    const value = folder.run(['explain', 'draft.wall-angle[inner]', 'pair.die.yaml']);
    expect([value.code, value.out.match(/^In \w+:$/gm)]).toEqual([0, ['In cover:', 'In lid:']]);
    const limit = folder.run(['explain', 'wall/least', 'pair.die.yaml']);
    expect([limit.code, limit.out.match(/^wall\/least in .*$/gm)]).toEqual([0, ['wall/least in cover.part.yaml', 'wall/least in lids/lid.part.yaml']]);
  });

  test('a committed plan of it is held fresh by check, and a changed part is found out', () => {
    expect(plan('pair.die.yaml', '-f', 'json=pair.plan.json', '--fail-on', 'never', '-q').code).toBe(0);
    const check = () => folder.run(['check', 'pair.die.yaml', '-f', 'json']);
    const stale = () => JSON.parse(check().out).findings.filter((one: { code: string }) => one.code === 'check/stale-plan');
    expect(stale()).toEqual([]);
    // As another version would have made it, which says so of the die and of each part.
    expect(plan('pair.die.yaml', '-f', 'markdown=pair.plan.md', '--fail-on', 'never', '-q').code).toBe(0);
    folder.write('pair.plan.md', folder.read('pair.plan.md').replaceAll(/(?<=worked out by diewright )\S+/g, '99.0.0'));
    expect(folder.read('pair.plan.md').match(/99\.0\.0/g)).toHaveLength(3);
    expect(stale()).toEqual([]);
    folder.write('lids/lid.part.yaml', LID.replace('volume: 150 cm3', 'volume: 151 cm3'));
    expect(
      stale()
        .map(({ message }: { message: string }) => message)
        .join('\n'),
    ).toMatch(/shot\.mass was [\d.]+ kg, is [\d.]+ kg/);
    folder.write('lids/lid.part.yaml', LID.replace('tolerance: 0.5 mm', 'tolerance: 0.55 mm'));
    const [json] = stale().filter(({ at }: { at: { file: string } }) => at.file.endsWith('.json'));
    expect(json.message).toContain('lid: dimension.tolerance');
    folder.write('lids/lid.part.yaml', LID);
  });

  test('sheets of the die are written', () => {
    const { code, out } = plan('pair.die.yaml', '--sheet', 'die', '--sheet', 'quote=quote.md', '--fail-on', 'never', '-q');
    expect(code).toBe(0);
    expect(out).toContain('Cover with lid');
    expect(folder.read('quote.md')).toContain('Cover with lid');
    for (const sheet of [out, folder.read('quote.md')]) {
      expect(sheet).toContain('The castings of a shot, 1 of cover, 2 of lid, are one set');
      expect(sheet).toMatch(/\| Castings of a shot \| cover: castings 1, .*lid: castings 2, /);
      expect(sheet).not.toMatch(/cavities 1[,|]/);
    }
    expect(folder.read('quote.md')).toContain('| A good set |');
  });
});

describe('faults', () => {
  const failing = (die: string): string => {
    const { code, out, err } = folder.run(['plan', '-'], { input: die });
    expect([code, out]).toEqual([2, '']);
    expect(err).not.toMatch(/\n\s+at .+:\d+:\d+/);
    return err;
  };

  test('a part file that is not there is told at its place, with the nearest name', () => {
    const text = failing(DIE.replace('lids/lid', 'lids/led'));
    expect(text).toContain('stdin:5:13: error: part file lids/led.part.yaml: there is no such file; did you mean "lids/lid.part.yaml"? [file/not-found]');
  });

  test('faults of all its files come together', () => {
    folder.write('bad.part.yaml', STARTER_PART.replace('150 cm3', '150'));
    const text = failing(`${DIE}  - { file: bad.part.yaml }\n  - { file: none.part.yaml }\n`);
    expect(text).toContain('bad.part.yaml:12:11: error:');
    expect(text).toContain('[file/not-found]');
  });

  test('two alloys are two pots', () => {
    folder.write('zinc.part.yaml', STARTER_PART.replace('alloy: A380', 'alloy: Zamak 5'));
    const text = failing(`${DIE}  - { file: zinc.part.yaml }\n`);
    expect(text).toContain('zinc.part.yaml:8:8: error: the parts of a die are cast from one pot, but these are of A380 and Zamak 5 [die/alloys-differ]');
  });

  test('a pin that is for a die of the part alone is said not to be used', () => {
    folder.write('pinned.part.yaml', `${STARTER_PART}pinned: { machine.cavities: 4, gate.thickness: 1.8 mm }\n`);
    const { code, err, out } = folder.run(['plan', '-', '-f', 'json', '--fail-on', 'never'], { input: `${DIE}  - { file: pinned.part.yaml }\n` });
    expect(code).toBe(0);
    expect(err).toContain('pinned machine.cavities is for a die of this part alone, and is not used in this one [die/pin-of-part]');
    const pinned = JSON.parse(out).parts[2].plan.values['gate.thickness'];
    expect([pinned.value, pinned.kind]).toEqual([1.8, 'pinned']);
  });
});

describe('the starter', () => {
  test('plans beside the starter of a part', async () => {
    folder.write('new.die.yaml', await starterText('die'));
    const { code, err } = plan('new.die.yaml', '-f', 'findings', '--fail-on', 'never');
    expect(code).toBe(0);
    expect(err).not.toContain('spec/');
  });
});
