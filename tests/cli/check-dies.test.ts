import { afterEach, describe, expect, test } from 'vitest';
import { checkJson, folderWith, GOOD, THIN } from './check-folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());

const DIE = `diewright: die/1
die: { name: Two covers }
parts:
  - { file: parts/one.part.yaml }
  - { file: parts/two.part.yaml }
`;
const FILES = { 'pair.die.yaml': DIE, 'parts/one.part.yaml': GOOD, 'parts/two.part.yaml': GOOD, 'parts/alone.part.yaml': GOOD };
const files = (...args: string[]): string[] => checkJson(folder, ...args).files.map(({ file }) => file);

describe('parts that a die of the run is planned with', () => {
  test('are judged in that die, and not once more as if each had one of its own', () => {
    folder = folderWith(FILES);
    expect(files()).toEqual(['pair.die.yaml', 'parts/alone.part.yaml']);
  });

  test('their findings are told, at their own places', () => {
    folder = folderWith({ ...FILES, 'parts/two.part.yaml': THIN });
    const { findings } = checkJson(folder);
    expect(findings.filter(({ at }) => at?.file === 'parts/two.part.yaml').map(({ code }) => code)).toContain('wall/least');
  });

  test('are checked by themselves when they are named, and when no die of the run has them', () => {
    folder = folderWith(FILES);
    expect(files('pair.die.yaml', 'parts/one.part.yaml')).toEqual(['pair.die.yaml', 'parts/one.part.yaml']);
    expect(files('parts')).toEqual(['parts/alone.part.yaml', 'parts/one.part.yaml', 'parts/two.part.yaml']);
  });

  test('are checked by themselves beside a die that cannot be read', () => {
    folder = folderWith({ ...FILES, 'pair.die.yaml': 'diewright: die/1\nparts: []\n' });
    expect(files()).toEqual(['pair.die.yaml', 'parts/alone.part.yaml', 'parts/one.part.yaml', 'parts/two.part.yaml']);
  });

  test('--since: a die is checked again when a part of it has changed', () => {
    folder = folderWith(FILES);
    folder.git('init', '-q');
    folder.git('add', '-A');
    folder.git('commit', '-qm', 'first', '--no-gpg-sign');
    expect(files('--since', 'HEAD')).toEqual([]);
    folder.put('parts/two.part.yaml', THIN);
    expect(files('--since', 'HEAD')).toEqual(['pair.die.yaml']);
  });
});
