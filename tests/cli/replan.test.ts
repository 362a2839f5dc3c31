import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { JOURNAL } from '../../src/cli/replan/journal.ts';
import { STARTER_PART, STARTER_PLANT } from '../../src/spec/starters.ts';
import { partText } from '../bench/library.mjs';
import { makeFolder } from './folder.ts';

const EXAMPLES = join(import.meta.dirname, '../../examples');

let folder: ReturnType<typeof makeFolder>;
beforeAll(() => {
  folder = makeFolder();
  mkdirSync(folder.file('lib/deep/node_modules'), { recursive: true });
  for (const [name, number] of [
    ['lib/one', 1],
    ['lib/two', 2],
    ['lib/deep/three', 4],
  ] as const)
    folder.write(`${name}.part.yaml`, partText(number));
  folder.write('lib/deep/node_modules/not.part.yaml', partText(9));
  folder.write('lib/notes.yaml', 'no part');
  folder.write('plant.yaml', STARTER_PLANT);
  mkdirSync(folder.file('empty'));
});
afterAll(() => folder.remove());

/** Runs with the findings of the parts left out of the exit code. */
const replan = (...args: string[]) => folder.run(['replan', '--fail-on', 'never', ...args]);

function rows(csv: string): string[][] {
  const lines: string[][] = [[]];
  for (const [, quoted, bare = '', end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    lines.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end !== ',') lines.push([]);
  }
  return lines.slice(0, -1);
}

describe('what changes', () => {
  test('a folder: half a page for the set, a table of all parts, each part; standard error stays empty', () => {
    const { code, out, err } = replan('lib', '--alloy', 'AZ91D');
    expect([code, err]).toEqual([0, '']);
    expect(out.startsWith('# Replanning of 3 parts in AZ91D\n')).toBe(true);
    expect(out.indexOf('## Summary')).toBeLessThan(1500);
    for (const heading of ['## All parts', '## Part by part', '| Machine hours a year |', '`lib/deep/three.part.yaml`']) expect(out).toContain(heading);
    expect(out).not.toContain('node_modules');
    expect(out).not.toContain(folder.path);
    expect(out).toContain('qualified die casting engineer must review it');
  });

  test('folders, files and patterns are the same set, in the same order, with the same bytes', () => {
    const whole = replan('lib', '--alloy', 'AZ91D').out;
    expect(replan('lib/**/*.part.yaml', '--alloy', 'AZ91D').out).toBe(whole);
    expect(replan('lib/two.part.yaml', 'lib/deep', 'lib/one.part.yaml', 'lib/', '--alloy', 'AZ91D').out).toBe(whole);
    expect(replan('lib', '--alloy', 'AZ91D', '--threads', '2').out).toBe(whole);
    expect(replan('lib', '--alloy', 'AZ91D', '--threads', '0').out).toBe(whole);
    expect(replan('lib', '--set', 'alloy=AZ91D').out.replace('Set: alloy=AZ91D', '')).toBe(whole.replace('Set: alloy=AZ91D', ''));
  });

  test('several formats in one run; the JSON is as its schema says', () => {
    const { code, err } = replan('lib', '--alloy', 'AZ91D', '-f', 'markdown=r.md', '-f', 'json=r.json', '-f', 'csv=r.csv');
    expect([code, err]).toEqual([0, 'wrote r.md\nwrote r.json\nwrote r.csv\n']);
    const data = JSON.parse(folder.read('r.json'));
    const valid = new Ajv2020({ strict: true, allErrors: true }).compile(JSON.parse(folder.run(['schema', 'replan']).out));
    valid(data);
    expect(valid.errors ?? []).toEqual([]);
    expect(data.format).toBe('replan/1');
    expect(folder.read('r.json')).toBe(`${JSON.stringify(data, undefined, 2)}\n`);
    expect(data.parts.map((part: { file: string }) => part.file)).toEqual(['lib/deep/three.part.yaml', 'lib/one.part.yaml', 'lib/two.part.yaml']);
    const [head = [], ...lines] = rows(folder.read('r.csv'));
    expect(lines.map(([file]) => file)).toEqual(['lib/deep/three.part.yaml', 'lib/one.part.yaml', 'lib/two.part.yaml']);
    expect(lines.every((line) => line.length === head.length)).toBe(true);
    expect(lines.every((line) => line[head.indexOf('alloy after')] === 'AZ91D')).toBe(true);
  });

  test('the order of consequence: the machine before the gates, the gates before the cost', () => {
    const [part] = JSON.parse(replan('lib/one.part.yaml', '--alloy', 'Zamak 3', '-f', 'json').out).parts;
    const ids = part.groups.map(({ id }: { id: string }) => id);
    const wanted = [
      'kind',
      'machine',
      'cavities',
      'steel',
      'cores',
      'tolerance',
      'gate',
      'vent',
      'overflow',
      'shot',
      'cycle',
      'ejection',
      'finish',
      'furnace',
      'hours',
      'cost',
      'other',
    ];
    expect(ids).toEqual(wanted.filter((id) => ids.includes(id)));
    expect(ids.length).toBeGreaterThan(7);
    const kind = part.groups[0].changes[0];
    expect(kind).toMatchObject({ id: 'machine.kind', before: { word: 'cold-chamber' }, after: { word: 'hot-chamber' } });
    expect(kind.because.length).toBeGreaterThan(20);
  });

  test('the threshold: small changes are counted, further values only listed when asked for', () => {
    const read = (...args: string[]) => JSON.parse(replan('lib/one.part.yaml', '--alloy', 'A413', '-f', 'json', ...args).out).parts[0];
    const count = (part: { groups: { changes: unknown[] }[] }) => part.groups.reduce((sum, { changes }) => sum + changes.length, 0);
    const [usual, all] = [read(), read('--least-change', '0', '--every-value')];
    expect(all.leftOut).toEqual({ small: 0, further: 0 });
    expect(count(all)).toBe(count(usual) + usual.leftOut.small + usual.leftOut.further);
    expect(usual.leftOut.small).toBeGreaterThan(0);
  });

  test('a plant alone is itself what changes; with an alloy it is the plant of both plans', () => {
    const alone = JSON.parse(replan('cover.part.yaml', '--plant', 'plant.yaml', '-f', 'json').out);
    expect(alone.set.plants[0].before).not.toBe(alone.set.plants[0].after);
    const both = JSON.parse(replan('cover.part.yaml', '--plant', 'plant.yaml', '--alloy', 'A413', '-f', 'json').out);
    expect(both.set.plants[0].before).toBe(both.set.plants[0].after);
    const named = JSON.parse(replan('cover.part.yaml', '--plant-before', 'plant.yaml', '-f', 'json').out);
    expect([named.set.plants[0].before, named.set.plants[0].after]).toEqual([alone.set.plants[0].after, alone.set.plants[0].before]);
  });

  test('--same-cavities keeps the count of cavities', () => {
    const { parts } = JSON.parse(replan('lib', '--set', 'production.per_year=3000000', '--same-cavities', '-f', 'json').out);
    for (const { before, after } of parts) expect(after.figures['machine.cavities']).toBe(before.figures['machine.cavities']);
  });

  test('a pin that was there before is named, one that is set for the plan after is not', () => {
    folder.write('pinned.part.yaml', `${partText(1)}pinned: { gate.velocity: 40 m/s }\n`);
    const remarks = (...args: string[]): string => JSON.parse(replan('pinned.part.yaml', ...args, '-f', 'json').out).parts[0].remarks.join(' ');
    expect(remarks('--alloy', 'AZ91D', '--set', 'pinned.machine.kind=cold-chamber')).toContain('kept: gate.velocity.');
    expect(remarks('--set', 'pinned.machine.kind=cold-chamber')).toBe('');
  });

  test('the melt certificate of the alloy before is not held against the alloy after', () => {
    folder.write('melt.part.yaml', `${partText(1).replace(/^certificate.*\n/m, '')}certificate: { Fe: 0.8 %, Mn: 0.3 % }\n`);
    const [part] = JSON.parse(replan('melt.part.yaml', '--alloy', 'Zamak 3', '-f', 'json').out).parts;
    expect(part.appeared.filter(({ code }: { code: string }) => code.includes('certificate'))).toEqual([]);
    expect(part.remarks.join(' ')).toContain('melt certificate');
  });
});

describe('spreadsheets', () => {
  test.each([
    ['=1+1', "'=1+1"],
    ['+cmd', "'+cmd"],
    ['-cmd', "'-cmd"],
    ['@sum', "'@sum"],
    ['-5', '-5'],
    ['a, "b"', 'a, "b"'],
  ])('the name %j', (name, wanted) => {
    folder.write('named.part.yaml', STARTER_PART.replace('name: Cover', `name: ${JSON.stringify(name)}`));
    const [head = [], line = []] = rows(replan('named.part.yaml', '--alloy', 'A413', '-f', 'csv').out);
    expect(line[head.indexOf('part')]).toBe(wanted);
  });
});

describe('exits and bad input', () => {
  test('1 when a part gets a new error, by --fail-on', () => {
    folder.write('hot.part.yaml', STARTER_PART);
    const args = ['replan', 'cover.part.yaml', '--set', 'walls=[{ id: w, side: inside, height: 30 mm, draft: 0.05 deg }]', '-f', 'csv'];
    const [strict, loose] = [folder.run(args), folder.run([...args, '--fail-on', 'never'])];
    expect([strict.code, loose.code]).toEqual([1, 0]);
  });

  test.each([
    [['lib', '--alloy', 'AZ92X'], 'spec/unknown-alloy'],
    [['lib', '--alloy', 'ADC10'], 'spec/ambiguous-alloy'],
    [['lib', '--set', 'alloy=AZ92X'], 'spec/unknown-alloy'],
    [['lib', '--set', 'geometry.wal=3'], 'set/unknown-field'],
    [['lib', '--alloy', 'AZ91D', '--set', 'alloy=A380'], 'given twice'],
    [['lib'], 'nothing would change'],
    [['empty', '--alloy', 'AZ91D'], 'cli/no-parts'],
    [['lib/*.none', '--alloy', 'AZ91D'], 'cli/no-parts'],
    [['nowhere', '--alloy', 'AZ91D'], 'file/not-found'],
    [['-', '--alloy', 'AZ91D'], 'not from standard input'],
    [['lib', '--alloy', 'AZ91D', '-f', 'html'], 'cli/unknown-format'],
    [['lib', '--alloy', 'AZ91D', '-f', 'csv=lib/one.part.yaml'], 'cli/output-twice'],
    [['lib', '--alloy', 'AZ91D', '-f', 'csv', '-f', 'json'], 'cli/output-twice'],
    [['lib', '--alloy', 'AZ91D', '--least-change', 'much'], '--least-change'],
    [['lib', '--alloy', 'AZ91D', '--threads', '1.5'], '--threads'],
    [['lib', '--alloy', 'AZ91D', '--plant', 'lib/notes.yaml'], 'lib/notes.yaml'],
    [['lib', '--before', 'committed'], 'replan/no-committed-plan'],
    [['lib', '--before', 'yesterday'], 'made, committed'],
  ])('%j', (args, word) => {
    const { code, err } = folder.run(['replan', ...args]);
    expect(code).toBe(2);
    expect(err).toContain(word);
    expect(err).not.toContain('    at ');
  });

  test('a sum over no part is told as none, and not as nothing', () => {
    folder.write('alone.part.yaml', 'diewright: part/1\npart: {');
    const { code, out } = replan('alone.part.yaml', '--alloy', 'AZ91D');
    expect(code).toBe(2);
    expect(out).toContain('| Machine hours a year | – | – | – | 0 parts |');
    expect(out).not.toContain('0 h');
  });

  test('one broken file stops no other, and is told', () => {
    mkdirSync(folder.file('mixed'));
    folder.write('mixed/a.part.yaml', 'diewright: part/1\npart: {');
    folder.write('mixed/b.part.yaml', partText(2));
    folder.write('mixed/c.part.yaml', Buffer.from([0xff, 0xfe, 0x00]));
    const { code, out, err } = replan('mixed', '--alloy', 'AZ91D', '-f', 'json');
    expect(code).toBe(2);
    const { set, parts, failures } = JSON.parse(out);
    expect([set.failed, parts.length, failures.map(({ file }: { file: string }) => file)]).toEqual([2, 1, ['mixed/a.part.yaml', 'mixed/c.part.yaml']]);
    expect(err.indexOf('mixed/a.part.yaml')).toBeLessThan(err.indexOf('mixed/c.part.yaml'));
    expect(replan('mixed', '--alloy', 'AZ91D', '--threads', '2', '-f', 'json')).toEqual({ code, out, err });
  });
});

describe('writing', () => {
  const files = (path: string): string[] => readdirSync(folder.file(path)).sort();

  test('without --write nothing is written', () => {
    cpSync(join(EXAMPLES, 'instrument-cover'), folder.file('still'), { recursive: true });
    const before = files('still').map((name) => folder.read(`still/${name}`));
    replan('still', '--alloy', 'AM60B', '-q');
    expect(files('still').map((name) => folder.read(`still/${name}`))).toEqual(before);
  });

  test('the part description keeps its remarks and layout; the plans beside it are those that "plan" writes', () => {
    cpSync(join(EXAMPLES, 'gearbox-housing'), folder.file('gear'), { recursive: true });
    const part = folder.read('gear/gearbox-housing.part.yaml');
    const { code, err } = replan('gear', '--alloy', 'Zamak 3', '--write', '-f', 'csv');
    expect(code).toBe(0);
    expect(err).toMatch(/^wrote \d+ files/m);
    expect(folder.read('gear/gearbox-housing.part.yaml')).toBe(part.replace('alloy: A380', 'alloy: Zamak 3'));
    mkdirSync(folder.file('made'));
    folder.write('made/gearbox-housing.part.yaml', folder.read('gear/gearbox-housing.part.yaml'));
    const made = ['-f', 'markdown=made/plan.md', '-f', 'json=made/plan.json', '--fail-on', 'never', '-q'];
    folder.run(['plan', 'made/gearbox-housing.part.yaml', ...made]);
    expect(files('gear')).toEqual(files('made'));
    const own = (text: string): string => text.replaceAll('made/gearbox-housing', 'gearbox-housing');
    for (const name of files('made')) expect(folder.read(`gear/${name}`), name).toBe(own(folder.read(`made/${name}`)));
    expect(replan('gear', '--alloy', 'A380', '--write', '-q', '-f', 'csv').code).toBe(0);
    expect(folder.read('gear/gearbox-housing.part.yaml')).toBe(part);
    for (const name of files('gear')) expect(folder.read(`gear/${name}`), name).toBe(readFileSync(join(EXAMPLES, 'gearbox-housing', name), 'utf8'));
  });

  test('a committed plan is the plan before; a file that was changed since shows', () => {
    const same = JSON.parse(replan('gear', '--before', 'committed', '-f', 'json').out);
    expect(same.set.moves.find(({ id }: { id: string }) => id === 'nothing').parts).toBe(1);
    const other = JSON.parse(replan('gear', '--before', 'committed', '--alloy', 'Zamak 3', '-f', 'json').out);
    const made = JSON.parse(replan('gear', '--alloy', 'Zamak 3', '-f', 'json').out);
    expect(other.parts).toEqual(made.parts);
    writeFileSync(folder.file('gear/plan.json'), folder.read('gear/plan.json').replace('"format": "plan/1"', '"format": "plan/9"'));
    const broken = replan('gear', '--before', 'committed', '-f', 'json');
    expect([broken.code, broken.err.includes('[replan/committed-plan]')]).toEqual([2, true]);
  });

  test('all files or none: with one part that cannot be planned nothing is written', () => {
    mkdirSync(folder.file('half'));
    folder.write('half/a.part.yaml', partText(2));
    folder.write('half/b.part.yaml', 'diewright: part/1\npart: {');
    const { code, err } = replan('half', '--alloy', 'AZ91D', '--write', '-f', 'csv');
    expect([code, err.includes('[replan/not-written]')]).toEqual([2, true]);
    expect(folder.read('half/a.part.yaml')).toBe(partText(2));
    expect(files('half')).toEqual(['a.part.yaml', 'b.part.yaml']);
  });

  test('a mark at the beginning of a file stays, and so do its line ends', () => {
    const text = `\ufeff${partText(2).replaceAll('\n', '\r\n')}`;
    folder.write('marked.part.yaml', text);
    replan('marked.part.yaml', '--alloy', 'AZ91D', '--write', '-q', '-f', 'csv');
    expect(folder.read('marked.part.yaml')).toBe(text.replace(/alloy: .*?(?= +#)/, 'alloy: AZ91D'));
  });

  test('two names of one file are one part, and a link stays a link', () => {
    mkdirSync(folder.file('linked'));
    folder.write('linked/a.part.yaml', partText(2));
    symlinkSync('a.part.yaml', folder.file('linked/b.part.yaml'));
    const { code, out } = replan('linked/a.part.yaml', 'linked/b.part.yaml', '--alloy', 'AZ91D', '--write', '-q', '-f', 'json');
    expect([code, JSON.parse(out).parts.length]).toEqual([0, 1]);
    expect(folder.read('linked/b.part.yaml')).toContain('alloy: AZ91D');
  });

  test('a journal that cannot be read stops every run, and is named', () => {
    mkdirSync(folder.file('stuck/deep'), { recursive: true });
    folder.write('stuck/deep/a.part.yaml', partText(2));
    folder.write(`stuck/${JOURNAL}`, 'x');
    for (const args of [['--alloy', 'AZ91D'], ['--alloy', 'AZ91D', '--write'], ['--take-back']]) {
      const { code, err } = folder.run(['replan', 'stuck/deep', ...args]);
      expect([code, err.includes(`stuck/${JOURNAL}`)]).toEqual([2, true]);
      expect(err).not.toContain(folder.path);
    }
    rmSync(folder.file(`stuck/${JOURNAL}`));
    expect(folder.run(['replan', 'stuck', '--take-back'])).toMatchObject({ code: 0, err: 'no run was broken off on these files\n' });
    expect(existsSync(folder.file(`stuck/${JOURNAL}`))).toBe(false);
  });
});

describe('the project of each part', () => {
  const LIMIT = `title: The wall is what our die casters fill
uses: { wall: part.wall-least in mm }
when: 'true'
require: wall >= 9.0
severity: error
message: 'The thinnest wall is {wall}'
why: Thinner walls were scrapped.
fix: Make it 9 mm.
status: practice
examples:
  - { given: { wall: 9.5 }, holds: true }
  - { given: { wall: 1.5 }, holds: false }
`;
  interface Change {
    readonly file: string;
    readonly appeared: readonly { readonly code: string }[];
    readonly vanished: readonly { readonly code: string }[];
    readonly groups: readonly unknown[];
  }
  const partsIn = (json: string): readonly Change[] => (JSON.parse(json) as { readonly parts: readonly Change[] }).parts;
  /** Codes that appear and vanish, by part. */
  const codesIn = (json: string): Record<string, readonly string[]> =>
    Object.fromEntries(partsIn(json).map(({ file, appeared, vanished }) => [file, [...appeared, ...vanished].map(({ code }) => code)]));
  let place: ReturnType<typeof makeFolder>;
  beforeAll(() => {
    place = makeFolder({});
    for (const name of ['one', 'two', 'strict/limits/wall']) mkdirSync(place.file(name), { recursive: true });
    place.write('strict/limits/wall/house.yaml', LIMIT);
    place.write('hall.yaml', STARTER_PLANT.replace('name: My plant', 'name: Hall of two'));
    place.write('one/diewright.yaml', 'diewright: project/1\nrules: [../strict]\n');
    place.write('two/diewright.yaml', 'diewright: project/1\nplant: ../hall.yaml\n');
    for (const name of ['one/a.part.yaml', 'two/b.part.yaml']) place.write(name, STARTER_PART);
    for (const name of ['one/a', 'two/b']) place.run(['plan', `${name}.part.yaml`, '-f', `json=${name}.plan.json`, '-q', '--fail-on', 'never']);
  });
  afterAll(() => place.remove());

  test.each(['0', '2'])('sets its rules and its plant, with %s threads', (threads) => {
    // Held against the committed plans nothing differs, for "plan" made each by its own project.
    const { code, out, err } = place.run(['replan', 'one', 'two', '--before', 'committed', '--threads', threads, '-f', 'json', '--every-value']);
    expect([code, err]).toEqual([0, '']);
    expect(partsIn(out).map(({ groups }) => groups)).toEqual([[], []]);
    expect(codesIn(out)).toEqual({ 'one/a.part.yaml': [], 'two/b.part.yaml': [] });
    expect(JSON.parse(place.read('one/a.plan.json')).findings).toContainEqual(expect.objectContaining({ code: 'wall/house' }));
    expect(JSON.parse(place.read('two/b.plan.json')).plant.name).toBe('Hall of two');
  });

  test('--rules stands in the place of the rules of every project', () => {
    const { out } = place.run(['replan', 'one', 'two', '--rules', 'strict', '-f', 'json', '--fail-on', 'never']);
    expect(codesIn(out)).toEqual({ 'one/a.part.yaml': [], 'two/b.part.yaml': ['wall/house'] });
  });

  test('a project file that is wrong is told once, before anything is planned', () => {
    const before = place.read('two/diewright.yaml');
    place.write('two/diewright.yaml', 'diewright: project/1\nfail_on: no\n');
    place.write('two/c.part.yaml', STARTER_PART);
    const { code, out, err } = place.run(['replan', 'one', 'two', '--alloy', 'A360']);
    expect([code, out, err.match(/spec\/unknown-word/g)?.length]).toEqual([2, '', 1]);
    place.write('two/diewright.yaml', before);
    rmSync(place.file('two/c.part.yaml'));
  });
});
