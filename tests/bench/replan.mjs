// Replans a made-up library with and without threads: node tests/bench/replan.mjs [COUNT] (after npm run build)
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeLibrary } from './library.mjs';

const cli = join(import.meta.dirname, '..', '..', 'bin', 'diewright.js');
const count = Number(process.argv[2] ?? 200);
const folder = mkdtempSync(join(tmpdir(), 'diewright-bench-'));
// Prints its own greatest memory when it ends.
const measure = `process.on('exit', () => process.stderr.write(String(process.resourceUsage().maxRSS)));require(${JSON.stringify(cli)});`;
try {
  writeLibrary(folder, count);
  for (const threads of [0, 1, 2, 4]) {
    const args = ['replan', folder, '--alloy', 'AZ91D', '--fail-on', 'never', '-q', '--threads', String(threads), '-f', `json=${join(folder, 'r.json')}`];
    const start = process.hrtime.bigint();
    const { status, stderr } = spawnSync(process.execPath, ['-e', measure, '--', 'diewright', ...args], { encoding: 'utf8' });
    const seconds = Number(process.hrtime.bigint() - start) / 1e9;
    if (status !== 0) throw new Error(`ended with ${status}: ${stderr}`);
    console.log(
      `${count} parts, ${threads} threads: ${seconds.toFixed(1)} s, ${((seconds * 1000) / count).toFixed(1)} ms a part, ${Math.round(Number(stderr) / 1024)} MB`,
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
