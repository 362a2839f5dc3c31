import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');
const SOURCES = ['src', 'bin'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(ts|js|mjs|cjs)$/.test(name))
    .map((name) => ({ name: `${folder}/${name}`, text: readFileSync(join(root, folder, name), 'utf8') })),
);

/** The files that import a module of Node, with or without its prefix, at once or when needed. */
const importers = (module: string): string[] =>
  SOURCES.filter(({ text }) => new RegExp(`(from|import|require)\\s*\\(?\\s*['"](node:)?${module}(/[a-z]+)?['"]`).test(text)).map(({ name }) => name);

test('no source file can reach the network', () => {
  for (const module of ['http', 'https', 'http2', 'net', 'tls', 'dgram', 'dns', 'inspector', 'cluster', 'undici'])
    expect(importers(module), module).toEqual([]);
  const calls = SOURCES.filter(({ text }) => /\b(fetch|WebSocket|EventSource|XMLHttpRequest)\s*\(/.test(text)).map(({ name }) => name);
  expect(calls).toEqual([]);
});

test('no source file makes code of a text', () => {
  for (const module of ['vm', 'repl', 'wasi']) expect(importers(module), module).toEqual([]);
  expect(SOURCES.filter(({ text }) => /\beval\s*\(|new Function\s*\(|Function\s*\(\s*['"`]/.test(text)).map(({ name }) => name)).toEqual([]);
});

test('one place starts a program, which is git, without a shell', () => {
  expect(importers('child_process')).toEqual(['src/cli/check/git.ts']);
  const { text } = SOURCES.find(({ name }) => name === 'src/cli/check/git.ts') as { text: string };
  expect([...text.matchAll(/\bexec\w*\(|\bspawn\w*\(|\bfork\(/g)].map(([call]) => call)).toEqual(['execFile(']);
  expect(text).toContain("execFile('git', ['-c', 'core.fsmonitor=false', ...args]");
  expect(text).not.toMatch(/\bshell\b/);
  // The one word of the user's follows the end of options, in a form that is no path.
  expect(text).toMatch(/'--end-of-options', `\$\{revision\}\^\{commit\}`/);
  expect([...text.matchAll(/\$\{revision\}/g)]).toHaveLength(1);
});
