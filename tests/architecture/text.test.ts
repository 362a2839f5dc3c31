import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
  .split('\n')
  .filter((name) => /\.(ts|mjs|cjs|js|yaml|yml|md|json)$/.test(name) && name !== 'tests/architecture/text.test.ts');

/** What must stand in no file of the project, and why. */
const FORBIDDEN: readonly (readonly [RegExp, string])[] = [
  [/\/(home|root|Users)\/\w/, 'a path of somebody’s machine'],
  [/registry\.[a-z]+\.(org|com|io)/, 'the host of a package registry'],
  [/\b(TODO|FIXME|XXX)\b/, 'work that is left over'],
  [/\b(it|test|describe)\.(only|todo|skip)\(/, 'a test that is switched off or shuts others out'],
  [/\bF[1-6]-[A-Z0-9]+\b.*(source|status)|source: \[(F[1-6]|ALLOY)-/, 'a provisional source key'],
];

test.each(FORBIDDEN)('no file holds %s: %s', (pattern) => {
  const found = files.flatMap((name) =>
    readFileSync(join(root, name), 'utf8')
      .split('\n')
      .flatMap((line, i) => (pattern.test(line) ? [`${name}:${i + 1}: ${line.trim().slice(0, 100)}`] : [])),
  );
  expect(found).toEqual([]);
});

test('there are files to look at', () => {
  expect(files.length).toBeGreaterThan(300);
});
