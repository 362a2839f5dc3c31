import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import extractTSConfig from 'dependency-cruiser/config-utl/extract-ts-config';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const require = createRequire(import.meta.url);
const config = require(join(root, '.dependency-cruiser.cjs'));

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|js|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the walls of the house', () => {
  test('imports go downward only, without a cycle', async () => {
    const { output } = await cruise(['src'], { ...config.options, ruleSet: { forbidden: config.forbidden }, validate: true, baseDir: root }, undefined, {
      tsConfig: extractTSConfig(join(root, 'tsconfig.json')),
    });
    if (typeof output === 'string') throw new Error(output);
    const broken = output.summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`);
    expect(output.summary.totalCruised).toBeGreaterThan(80);
    expect(broken).toEqual([]);
  });

  test('no source file grows past 250 lines', () => {
    const lines = sources('src').map((path) => ({ path, count: readFileSync(path, 'utf8').split('\n').length }));
    expect(lines.filter((file) => file.count > 250).map((file) => file.path.slice(root.length + 1))).toEqual([]);
  });

  test('the top level holds what it should', () => {
    const allowed = [
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'bin',
      'dist',
      'examples',
      'node_modules',
      'package-lock.json',
      'package.json',
      'rules',
      'src',
      'tests',
      'tsconfig.json',
    ];
    const found = readdirSync(root).filter((name) => !name.startsWith('.'));
    expect(found.filter((name) => !allowed.includes(name))).toEqual([]);
  });

  test('only src/cli writes to the terminal or ends the process', () => {
    const offenders = sources('src').filter(
      (path) => !path.includes(`${join('src', 'cli')}`) && /\bconsole\.|process\.(exit|std|env|argv|cwd)/.test(readFileSync(path, 'utf8')),
    );
    expect(offenders).toEqual([]);
  });

  test('no clock and no chance outside the command line', () => {
    const offenders = sources('src').filter((path) => /\bDate\.now|new Date\(|Math\.random|performance\.now/.test(readFileSync(path, 'utf8')));
    expect(offenders).toEqual([]);
  });
});
