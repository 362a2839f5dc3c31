import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { distinct, lookUp, realInFolder, realOf } from '../../../src/cli/find/look-up.ts';

let top: string;
const at = (name: string): string => join(top, name);
beforeAll(() => {
  top = realOf(mkdtempSync(join(tmpdir(), 'diewright-test-')));
  for (const folder of ['a/deep', 'a/.hidden', 'a/node_modules', 'elsewhere']) mkdirSync(at(folder), { recursive: true });
  for (const name of ['a/one.part.yaml', 'a/deep/two.part.yaml', 'a/.hidden/x.part.yaml', 'a/node_modules/x.part.yaml', 'elsewhere/three.part.yaml'])
    writeFileSync(at(name), '');
  symlinkSync('../elsewhere', at('a/link'));
  symlinkSync('one.part.yaml', at('a/same.part.yaml'));
});
afterAll(() => rmSync(top, { recursive: true, force: true }));

const found = async (argument: string, links: boolean): Promise<readonly string[] | string> => {
  const looked = await lookUp(argument, { searched: ['**/*.part.yaml'], links });
  return 'paths' in looked ? [...looked.paths].sort().map((path) => path.slice(top.length + 1)) : looked.kind;
};

describe('what an argument stands for', () => {
  test('a folder is searched at any depth, through links where that is asked for', async () => {
    expect(await found(at('a'), false)).toEqual(['a/deep/two.part.yaml', 'a/one.part.yaml']);
    expect(await found(at('a'), true)).toEqual(['a/deep/two.part.yaml', 'a/link/three.part.yaml', 'a/one.part.yaml', 'a/same.part.yaml']);
  });

  test('a file, a pattern, and nothing', async () => {
    expect(await found(at('a/one.part.yaml'), true)).toBe('file');
    expect(await found(at('a/gone.part.yaml'), true)).toBe('nothing');
    expect((await lookUp(`${top}/a/*.none`, { searched: [], links: true })).kind).toBe('pattern');
  });

  test('ways to one file', () => {
    expect(realOf(at('a/same.part.yaml'))).toBe(at('a/one.part.yaml'));
    expect(realInFolder(at('a/same.part.yaml'))).toBe(at('a/same.part.yaml'));
    expect(realInFolder(at('a/link/three.part.yaml'))).toBe(at('elsewhere/three.part.yaml'));
    const kept = distinct(
      ['bb', 'a', 'B', 'A'],
      (word) => word.toLowerCase(),
      (x, y) => (x < y ? -1 : 1),
    );
    expect(kept).toEqual(['A', 'B', 'bb']);
  });
});
