import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { STARTER_PART } from '../../src/spec/starters.ts';

const BIN = resolve(import.meta.dirname, '../../bin/diewright.js');

/** A folder of its own for one test file, with the starter part in it as `cover.part.yaml`. */
export function makeFolder() {
  const path = mkdtempSync(join(tmpdir(), 'diewright-test-'));
  writeFileSync(join(path, 'cover.part.yaml'), STARTER_PART);
  return {
    path,
    file: (name: string) => join(path, name),
    write: (name: string, text: string | Buffer) => writeFileSync(join(path, name), text),
    read: (name: string) => readFileSync(join(path, name), 'utf8'),
    remove: () => rmSync(path, { recursive: true, force: true }),
    /** The built command, started in the folder, with nothing of this environment but what Node needs. */
    run: (args: readonly string[], options: { readonly input?: string; readonly env?: Readonly<Record<string, string>> } = {}) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [BIN, ...args], {
        cwd: path,
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
