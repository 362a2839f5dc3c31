import { afterEach, describe, expect, test } from 'vitest';
import { STARTER_PLANT } from '../../src/spec/starters.ts';
import { partText } from '../bench/library.mjs';
import { BROKEN, folderWith, GOOD, THIN } from './check-folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());

const FORMATS = ['text=o.txt', 'json=o.json', 'sarif=o.sarif', 'junit=o.xml', 'github=o.github', 'markdown=o.md'];

/** Exit code, standard error and every format of a check with so many threads. */
function checked(threads: number, ...args: string[]): readonly unknown[] {
  const { code, err } = folder.run(['check', ...args, '--threads', String(threads), ...FORMATS.flatMap((format) => ['-f', format])]);
  return [code, err, ...FORMATS.map((format) => folder.read(format.slice(format.indexOf('=') + 1)))];
}

describe('threads of a check', () => {
  test('the same bytes in every format for every count of them', () => {
    const parts = Object.fromEntries(Array.from({ length: 7 }, (_, i) => [`lib/${i}.part.yaml`, partText(i + 1)]));
    folder = folderWith({ ...parts, 'a.part.yaml': GOOD, 'b.part.yaml': BROKEN, 'c.part.yaml': THIN, 'plant.yaml': STARTER_PLANT });
    const alone = checked(0, '.');
    expect([alone[0], String(alone[1])]).toEqual([2, expect.stringMatching(/^11 files checked: /)]);
    for (const threads of [1, 2, 3, 12]) expect(checked(threads, '.'), `${threads} threads`).toEqual(alone);
  });

  test('each project has its own plant and rules, and a plant that is wrong is told once, with the first of its parts', () => {
    folder = folderWith({
      'one/diewright.yaml': 'diewright: project/1\nplant: machines.yaml\n',
      'one/machines.yaml': STARTER_PLANT.replace('machines:', 'machine:'),
      'one/a.part.yaml': GOOD,
      'one/b.part.yaml': GOOD,
      'two/diewright.yaml': 'diewright: project/1\nadjusted:\n  - { rule: clamp/oversized, severity: off, reason: machines are assigned by the hall plan }\n',
      'two/c.part.yaml': GOOD,
    });
    const alone = checked(0, '.');
    expect(alone[0]).toBe(2);
    const { findings } = JSON.parse(String(alone[3])) as {
      readonly findings: readonly { readonly checked?: string; readonly at?: { readonly file: string } }[];
    };
    const ofPlant = findings.filter(({ at }) => at?.file === 'one/machines.yaml');
    expect(ofPlant.length).toBeGreaterThan(0);
    expect([...new Set(ofPlant.map(({ checked: of }) => of))]).toEqual(['one/a.part.yaml']);
    for (const threads of [1, 2, 3]) expect(checked(threads, '.'), `${threads} threads`).toEqual(alone);
  });

  test('what no file could make good ends the run as it does without threads', () => {
    folder = folderWith({ 'a.part.yaml': GOOD, 'b.part.yaml': GOOD, 'c.part.yaml': GOOD });
    const run = (threads: number) => folder.run(['check', '.', '--set', 'geometry.wal.least=1 mm', '--threads', String(threads)]);
    expect([run(0).code, run(0).out]).toEqual([2, '']);
    expect(run(2)).toEqual(run(0));
    expect(folder.run(['check', '.', '--threads', 'many']).code).toBe(2);
  });
});
