import { cpSync, mkdirSync, readdirSync, readFileSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeFolder } from './folder.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');
const DIE = 'lamp-housing.die.yaml';
const PARTS = ['lamp-body.part.yaml', 'lamp-lid.part.yaml'];

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  cpSync(join(EXAMPLES, 'lamp-housing'), folder.file('lib/lamp'), { recursive: true });
  cpSync(join(EXAMPLES, 'reservoir-cover'), folder.file('lib/cover'), { recursive: true });
});
afterAll(() => folder.remove());

const replan = (...args: string[]) => folder.run(['replan', '--fail-on', 'never', ...args]);
const read = (name: string): string => folder.read(`lib/lamp/${name}`);

describe('dies with several parts among the files', () => {
  test('a folder: a part that a die casts is replanned in that die, and not alone', () => {
    const { code, out, err } = replan('lib', '--alloy', 'AZ91D');
    expect([code, err]).toEqual([0, '']);
    expect(out.startsWith('# Replanning of 1 part and 1 die with several parts in AZ91D\n')).toBe(true);
    for (const text of [
      '### Platform lamp body with lid, D-3301',
      '#### Platform lamp body, HT-3301',
      '#### Platform lamp lid, HT-3302',
      '`lib/lamp/lamp-lid.part.yaml`: EN AC-46000 to AZ91D. **Stays castable.**\n',
      '(die with 2 parts, 2 castings a shot)',
      'A die with several parts counts as one part in every table',
    ])
      expect(out).toContain(text);
    expect(out.match(/^### /gm)).toHaveLength(2);
    expect(replan('lib', '--alloy', 'AZ91D', '--threads', '2').out).toBe(out);
  });

  test('the JSON is as its schema says', () => {
    const document = JSON.parse(replan('lib/lamp', '--alloy', 'AZ91D', '-f', 'json').out);
    const validate = new Ajv2020({ strict: false }).compile(JSON.parse(folder.run(['schema', 'replan']).out));
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.parts.map(({ parts }: { parts: { file: string }[] }) => parts.map(({ file }) => file))).toEqual([PARTS.map((name) => `lib/lamp/${name}`)]);
  });

  test('a part that is named is replanned alone too', () => {
    expect(replan('lib/lamp', `lib/lamp/${PARTS[0]}`, '--alloy', 'AZ91D').out).toMatch(/^# Replanning of 1 part and 1 die /);
  });

  test('a part file that is missing is told with the die that names it, and stops no other', () => {
    mkdirSync(folder.file('broken'));
    folder.write(`broken/${DIE}`, read(DIE));
    folder.write(`broken/${PARTS[0]}`, read(PARTS[0] as string));
    const { code, out, err } = replan('broken', 'lib/cover', '--alloy', 'AZ91D');
    expect(code).toBe(2);
    expect(err).toContain(`broken/${DIE}:`);
    expect(err).toContain('lamp-lid.part.yaml');
    expect(out).toContain('## What could not be planned');
    expect(out).toContain('### Reservoir cover');
  });
});

describe('writing', () => {
  test('the parts of the die get the new alloy, the die file stays, and the plans beside it are fresh', () => {
    const die = read(DIE);
    const { code, err } = replan('lib/lamp', '--alloy', 'AZ91D', '--write', '-f', 'csv=out.csv');
    expect([code, /wrote \d+ files/.test(err)]).toEqual([0, true]);
    expect(read(DIE)).toBe(die);
    for (const name of PARTS) expect(read(name)).toBe(readFileSync(join(EXAMPLES, 'lamp-housing', name), 'utf8').replace('EN AC-46000', 'AZ91D'));
    // A plan that lags behind its file would be a finding, and two megabytes are no hindrance.
    const { out, err: said } = folder.run(['check', 'lib/lamp', '--fail-on', 'never']);
    expect(said + out).toMatch(/^1 file checked: /m);
    expect(out).not.toContain('check/stale-plan');
    const again = JSON.parse(replan('lib/lamp', '--before', 'committed', '-f', 'json').out);
    expect(again.set.moves.find(({ id }: { id: string }) => id === 'nothing').parts).toBe(1);
  });

  test('and back again gives every file back, byte for byte', () => {
    expect(replan('lib/lamp', '--alloy', 'EN AC-46000', '--write', '-q', '-f', 'csv').code).toBe(0);
    for (const name of [...PARTS, 'plan.json', 'plan.md']) expect(read(name), name).toBe(readFileSync(join(EXAMPLES, 'lamp-housing', name), 'utf8'));
  });

  test('parts in another folder than their die', () => {
    mkdirSync(folder.file('apart/dies'), { recursive: true });
    for (const name of PARTS) folder.write(`apart/${name}`, read(name));
    folder.write(`apart/dies/${DIE}`, read(DIE).replaceAll(/file: (lamp-\w+)/g, 'file: ../$1'));
    const { code, err } = replan('apart/dies', '--alloy', 'AZ91D', '--write', '-f', 'csv=out.csv');
    expect([code, err]).toEqual([0, expect.stringContaining('wrote 2 files')]);
    for (const name of PARTS) expect(folder.read(`apart/${name}`)).toContain('alloy: AZ91D');
  });

  test('a die that names a folder, or a part outside of its repository, is told, and nothing is written anywhere', () => {
    mkdirSync(folder.file('guest/repo/.git'), { recursive: true });
    mkdirSync(folder.file('guest/repo/lamp-body.part.yaml'));
    folder.write('guest/lamp-lid.part.yaml', read('lamp-lid.part.yaml'));
    folder.write(`guest/repo/${DIE}`, read(DIE).replace('lamp-lid.part.yaml', '../lamp-lid.part.yaml'));
    const before = readdirSync(folder.file('guest')).sort();
    const { code, err } = replan(`guest/repo/${DIE}`, '--alloy', 'AZ91D', '--write', '-f', 'csv=out.csv');
    expect(code).toBe(2);
    for (const id of ['file/is-a-directory', 'file/outside', 'replan/not-written']) expect(err).toContain(id);
    expect(readdirSync(folder.file('guest')).sort()).toEqual(before);
    expect(folder.read('guest/lamp-lid.part.yaml')).toBe(read('lamp-lid.part.yaml'));
  });

  test('two dies that share a part write it once; two different texts of it are refused, and nothing is written', () => {
    mkdirSync(folder.file('shared'));
    for (const name of PARTS) folder.write(`shared/${name}`, read(name));
    folder.write('shared/a.die.yaml', read(DIE));
    folder.write('shared/b.die.yaml', read(DIE));
    expect(replan('shared', '--alloy', 'AZ91D', '--write', '-f', 'csv=out.csv')).toMatchObject({ code: 0, err: expect.stringContaining('wrote 2 files') });
    const texts = PARTS.map((name) => folder.read(`shared/${name}`));
    const { code, err } = replan('shared/a.die.yaml', `shared/${PARTS[0]}`, '--alloy', 'A380', '--same-cavities', '--write', '-q', '-f', 'csv');
    expect([code, err.includes('[replan/two-texts]')]).toEqual([2, true]);
    expect(PARTS.map((name) => folder.read(`shared/${name}`))).toEqual(texts);
  });

  test('a part and a die of one name keep their own plans apart', () => {
    mkdirSync(folder.file('alike'));
    for (const name of PARTS) folder.write(`alike/${name}`, read(name));
    folder.write('alike/lamp-body.die.yaml', read(DIE));
    folder.run(['plan', 'alike/lamp-body.die.yaml', '-f', 'json=alike/lamp-body.plan.json', '--fail-on', 'never', '-q']);
    expect(replan('alike/lamp-body.die.yaml', '--before', 'committed', '-q', '-f', 'csv').code).toBe(0);
    const { err } = replan('alike/lamp-body.part.yaml', '--before', 'committed', '-q', '-f', 'csv');
    expect(err).toContain('[replan/no-committed-plan]');
  });

  test('the plan of something else beside a die is refused', () => {
    renameSync(folder.file('alike/lamp-body.plan.json'), folder.file('alike/kept.json'));
    folder.write('alike/lamp-body.plan.json', folder.read('alike/kept.json').replace('"format": "die-plan/1"', '"format": "die-plan/9"'));
    const { code, err } = replan('alike/lamp-body.die.yaml', '--before', 'committed', '-q', '-f', 'csv');
    expect([code, err.includes('not "die-plan/1"')]).toEqual([2, true]);
  });
});
