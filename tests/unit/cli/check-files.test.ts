import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkFiles } from '../../../src/cli/check/check-files.ts';
import { BadInput } from '../../../src/cli/fault.ts';
import { type Ground, Surroundings } from '../../../src/cli/settings.ts';
import { STARTER_PART } from '../../../src/spec/starters.ts';
import { makeFolder } from '../../cli/folder.ts';
import { noIo } from '../../cli/run-here.ts';

let folder: ReturnType<typeof makeFolder>;
const NAMES = ['a.part.yaml', 'b.part.yaml', 'c.part.yaml'];
beforeAll(() => {
  folder = makeFolder(Object.fromEntries(NAMES.map((name) => [name, STARTER_PART])));
});
afterAll(() => folder.remove());

/** Surroundings in which something goes wrong for one file. */
class Broken extends Surroundings {
  constructor(private readonly error: (path: string) => Error | undefined) {
    super({}, noIo());
  }
  override async ground(path = ''): Promise<Ground> {
    const error = this.error(path);
    if (error !== undefined) throw error;
    return super.ground(path);
  }
}

const check = (error: (path: string) => Error | undefined) =>
  checkFiles(
    NAMES.map((name) => ({ path: folder.file(name), kind: 'part' as const })),
    { options: {}, set: [], shown: false },
    new Broken(error),
    { threads: 0, done: () => undefined },
  );

describe('what goes wrong with one file', () => {
  test('a fault of the program is told with the file, and stops no other', async () => {
    const { files, findings, broken } = await check((path) => (path.includes('b.part') ? new TypeError('it fell over\n    at somewhere') : undefined));
    expect([broken, files.map(({ judged }) => judged)]).toEqual([true, [true, false, true]]);
    const [told, ...others] = findings.filter(({ code }) => code === 'check/left-undone');
    expect(others).toEqual([]);
    expect(told).toMatchObject({ of: folder.file('b.part.yaml'), fault: true, severity: 'error' });
    expect(told?.message).toContain('it fell over');
    expect(told?.message).not.toContain('at somewhere');
    expect(new Set(findings.map(({ of }) => of)).size).toBe(3);
  });

  test('what no file could make good is thrown, of the first file that meets it', async () => {
    const refuse = (path: string): Error | undefined =>
      path.includes('a.part') ? undefined : new BadInput([{ code: 'spec/x', severity: 'error', message: path.slice(-11) }]);
    await expect(check(refuse)).rejects.toThrow('b.part.yaml');
  });

  test('nothing goes wrong', async () => {
    const { files, broken } = await check(() => undefined);
    expect([broken, files.every(({ judged }) => judged)]).toEqual([false, true]);
  });
});
