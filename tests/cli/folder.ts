import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { STARTER_PART } from '../../src/spec/starters.ts';

const BIN = resolve(import.meta.dirname, '../../bin/diewright.js');

/** A folder of its own for one test file, with the starter part in it as `cover.part.yaml` unless other files are named. */
export function makeFolder(files: Readonly<Record<string, string>> = { 'cover.part.yaml': STARTER_PART }) {
  const path = mkdtempSync(join(tmpdir(), 'diewright-test-'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(path, name), text);
  return {
    path,
    file: (name: string) => join(path, name),
    write: (name: string, text: string | Buffer) => writeFileSync(join(path, name), text),
    read: (name: string) => readFileSync(join(path, name), 'utf8'),
    remove: () => rmSync(path, { recursive: true, force: true }),
    /** The built command, started in the folder, with nothing of this environment but what Node needs. */
    run: (args: readonly string[], options: { readonly input?: string; readonly env?: Readonly<Record<string, string>>; readonly cwd?: string } = {}) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [BIN, ...args], {
        cwd: join(path, options.cwd ?? '.'),
        encoding: 'utf8',
        input: options.input ?? '',
        env: { PATH: process.env['PATH'] ?? '', ...options.env },
        maxBuffer: 20_000_000,
      });
      return { code: status, out: stdout, err: stderr };
    },
  };
}

export { BIN };
