import { afterEach, describe, expect, test } from 'vitest';
import { STARTER_PLANT } from '../../src/spec/starters.ts';
import { checkJson, folderWith, GOOD } from './check-folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());

/** A part with its plans beside it, planned from inside its own folder as the examples are. */
function planned(part = 'p/a.part.yaml', outputs = ['json=plan.json', 'markdown=plan.md'], ...more: string[]): void {
  folder = folderWith({ [part]: GOOD });
  const [cwd = '', name = ''] = part.split('/');
  const { code, err } = folder.run(['plan', '-q', name, ...outputs.flatMap((output) => ['-f', output]), ...more], { cwd });
  if (code !== 0) throw new Error(err);
}
const stale = (...args: string[]) => checkJson(folder, ...args).findings.filter(({ code }) => code === 'check/stale-plan');
const edit = (name: string, from: string | RegExp, to: string): void => {
  const text = folder.read(name);
  const edited = text.replace(from, to);
  if (edited === text) throw new Error(`nothing to edit in ${name}`);
  folder.put(name, edited);
};

describe('a fresh plan', () => {
  test('is found fresh from any folder and by any path', () => {
    planned();
    for (const args of [[], ['p'], [`${folder.path}/p/a.part.yaml`]]) expect(checkJson(folder, ...args)).toMatchObject({ code: 0, exit: 0 });
    expect(folder.run(['check', '-q', '-f', 'json', '../p'], { cwd: 'p' }).out).not.toContain('stale');
    expect(folder.run(['check', '-q', '-f', 'json'], { cwd: 'p' }).out).not.toContain('stale');
  });

  test.each([
    ['named after the part', 'p/a.part.yaml', ['json=a.plan.json', 'markdown=a.plan.md'], []],
    ['with workings and without figures', 'p/a.part.yaml', ['markdown=plan.md'], ['--workings', '--figures', 'none']],
    ['with the wave in the sleeve', 'p/a.part.yaml', ['json=plan.json', 'markdown=plan.md'], ['--wave']],
    ['with the wave, in Markdown alone', 'p/a.part.yaml', ['markdown=plan.md'], ['--wave']],
    ['with a space in its name', 'p/a b.part.yaml', ['json=plan.json', 'markdown=plan.md'], []],
  ])('%s is fresh', (_, part, outputs, more) => {
    planned(part, outputs, ...more);
    expect(stale()).toEqual([]);
    edit(part, 'volume: 150 cm3', 'volume: 151 cm3');
    expect(stale()).toHaveLength(outputs.length);
  });

  test('of another version, with other line ends, other white space and the last digit of a number rounded otherwise', () => {
    planned();
    edit('p/plan.json', /"version": "[^"]+"/, '"version": "99.0.0"');
    edit('p/plan.md', /worked out by diewright \S+/, 'worked out by diewright 99.0.0');
    edit('p/plan.md', /\n/g, '\r\n');
    const plan = JSON.parse(folder.read('p/plan.json'));
    plan.values['clamp.locking-force'].value *= 1 + 1e-12;
    folder.put('p/plan.json', JSON.stringify(plan));
    expect(stale()).toEqual([]);
  });

  test('with the plant and the fields of the run', () => {
    planned();
    folder.put('works/plant.yaml', STARTER_PLANT);
    folder.run(
      [
        'plan',
        '-q',
        'a.part.yaml',
        '--plant',
        '../works/plant.yaml',
        '--set',
        'geometry.volume=160 cm3',
        '-f',
        'json=plan.json',
        '-f',
        'markdown=plan.md',
        '--fail-on',
        'never',
      ],
      { cwd: 'p' },
    );
    const run = ['--plant', 'works/plant.yaml', '--set', 'geometry.volume=160 cm3'];
    expect(stale(...run)).toEqual([]);
    const [one] = stale('--set', 'geometry.volume=160 cm3');
    expect(one?.fix).toContain("--set 'geometry.volume=160 cm3'");
    expect(stale('--plant', 'works/plant.yaml')).toHaveLength(2);
  });

  test('several parts in one plan file, and several parts in one folder', () => {
    folder = folderWith({ 'p/a.part.yaml': GOOD, 'p/b.part.yaml': GOOD.replace('name: Cover', 'name: Lid'), 'p/c.part.yaml': GOOD });
    folder.run(['plan', '-q', 'a.part.yaml', 'b.part.yaml', '-f', 'json=plan.json', '-f', 'markdown=plan.md'], { cwd: 'p' });
    expect(stale()).toEqual([]);
    edit('p/b.part.yaml', 'volume: 150 cm3', 'volume: 151 cm3');
    const found = stale();
    expect(found.map(({ checked, at }) => [checked, at?.file])).toEqual([
      ['p/b.part.yaml', 'p/plan.json'],
      ['p/b.part.yaml', 'p/plan.md'],
    ]);
    expect(found[0]?.fix).toContain('diewright plan p/a.part.yaml p/b.part.yaml --format json=p/plan.json --format markdown=p/plan.md');
  });

  test('some other text called plan.md is none of ours', () => {
    folder = folderWith({ 'p/a.part.yaml': GOOD, 'p/plan.md': '# Our plan for the year\n' });
    expect(checkJson(folder).code).toBe(0);
  });
});

describe('a stale plan', () => {
  test('says which values and decisions differ, the gravest first, old and new, and how many more', () => {
    planned();
    edit('p/a.part.yaml', 'volume: 150 cm3', 'volume: 260 cm3');
    const { code, findings } = checkJson(folder, '--fail-on', 'error');
    const [json, markdown] = findings.filter((finding) => finding.code === 'check/stale-plan');
    expect(code).toBe(1);
    expect(json).toMatchObject({ severity: 'error', checked: 'p/a.part.yaml', at: { file: 'p/plan.json', line: 1, column: 1 } });
    expect(json?.message).toMatch(/^the plan is stale: \d+ decisions?, .*\d+ values, .*differ; /);
    expect(json?.message).toMatch(/ was [^;]+, is [^;]+; .* and \d+ more$/);
    expect(json?.message).toMatch(/shot\.mass was [\d.]+ kg, is [\d.]+ kg/);
    expect(markdown?.message).toMatch(/^the plan in Markdown is stale, \d+ lines are no longer in a fresh one and \d+ new; line \d+ was ".+", is ".+"$/);
  });

  test('and the command it gives renews it', () => {
    planned('p/a b.part.yaml', ['json=plan.json', 'markdown=plan.md'], '--workings', '--figures', 'none', '--wave');
    edit('p/a b.part.yaml', 'volume: 150 cm3', 'volume: 160 cm3');
    const command = /renew it with: diewright (.+)$/.exec(stale()[0]?.fix ?? '')?.[1] ?? '';
    expect(command).toBe("plan 'p/a b.part.yaml' --format json=p/plan.json --format markdown=p/plan.md --figures none --workings --wave --fail-on never");
    const words = command.match(/'[^']*'|\S+/g) ?? [];
    expect(folder.run(words.map((word) => word.replaceAll("'", ''))).code).toBe(0);
    expect(stale()).toEqual([]);
  });

  test('though every value holds, when lines have moved', () => {
    planned('p/a.part.yaml', ['json=plan.json']);
    edit('p/a.part.yaml', 'diewright: part/1', '# another comment\ndiewright: part/1');
    expect(stale()[0]?.message).toMatch(/^the plan is stale, though its decisions and values hold: \d+ places in the file differ; .*values\.part\.volume; /);
  });

  test('for a hair more than rounding, with the digits that show it', () => {
    planned('p/a.part.yaml', ['json=plan.json']);
    const plan = JSON.parse(folder.read('p/plan.json'));
    plan.values['clamp.locking-force'].value *= 1 + 1e-7;
    plan.decisions['machine.kind'].value = 'hot-chamber';
    delete plan.values['fill.time'];
    plan.values['no.such'] = { title: 'x', value: 1, unit: 'mm' };
    plan.cautions.pop();
    folder.put('p/plan.json', JSON.stringify(plan));
    const [found] = stale();
    expect(found?.message).toMatch(
      /^the plan is stale: 1 decision, 3 values and 1 other entry differ; machine\.kind was hot-chamber, is cold-chamber; clamp\.locking-force was (\d+\.\d{6,}) kN, is (?!\1)\d+\.\d{6,} kN; fill\.time is new, [\d.]+ ms; no\.such is gone, was 1 mm; cautions$/,
    );
  });

  test.each([
    ['the marks of a merge', (text: string) => text.replace('  "tool"', '<<<<<<< ours\n  "tool"'), 'marks of a merge', 3],
    ['half a file', (text: string) => text.slice(0, 500), 'not JSON', undefined],
    ['an empty file', () => '', 'not JSON', 1],
    ['a list', () => '[]', 'not a mapping', 1],
    ['another form', (text: string) => text.replace('plan/1', 'plan/9'), '"format": "plan/1"', 1],
    ['no part', (text: string) => text.replace('"file": "a.part.yaml"', '"file": 3'), 'file of its part', 1],
    ['an escape that JSON lacks', (text: string) => text.replace('"file": "a.part.yaml"', '"file": "\\x/a.part.yaml"'), 'not JSON', undefined],
    ['a value without a number', (text: string) => text.replace('"value": 150,', '"value": "150",'), 'no number', 1],
    ['a byte that is no text', () => Buffer.from([0x7b, 0xe4, 0x7d]), 'not a text in UTF-8', 1],
  ])('that cannot be read, %s, is a finding and no fault', (_, change, word, line) => {
    planned('p/a.part.yaml', ['json=plan.json']);
    folder.write('p/plan.json', change(folder.read('p/plan.json')));
    const { code, findings } = checkJson(folder);
    const [found] = findings.filter((finding) => finding.code === 'check/unreadable-plan');
    expect(found).toMatchObject({ severity: 'error', checked: 'p/a.part.yaml', at: { file: 'p/plan.json' } });
    expect(found?.message).toContain(word);
    if (line !== undefined) expect(found?.at?.line).toBe(line);
    expect(code).toBe(1);
  });

  test('does not hide the findings of the part, and a broken part has no plan to compare', () => {
    planned();
    edit('p/a.part.yaml', 'least: 2.5 mm', 'least: 0.6 mm');
    expect(checkJson(folder).findings.some(({ code }) => code === 'wall/least')).toBe(true);
    edit('p/a.part.yaml', 'geometry:', 'geometri:');
    expect(stale()).toEqual([]);
  });
});
