// Fuzzes the program: node tests/fuzz/run.mjs [RUNS] [SEED]. Not part of CI; the tests run a few thousand cases with a fixed seed.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const [runs = '20000', seed = String(Math.floor(Math.random() * 2 ** 31))] = process.argv.slice(2);
if (!/^\d+$/.test(runs) || !/^-?\d+$/.test(seed)) {
  process.stderr.write('usage: node tests/fuzz/run.mjs [RUNS] [SEED], both whole numbers\n');
  process.exit(2);
}
process.stdout.write(`fuzz: ${runs} runs, seed ${seed}\n`);
const root = fileURLToPath(new URL('../..', import.meta.url));
// Each property is told as it ends: a long run that is interrupted has shown something.
const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--config', '.build/vitest.config.ts', '--reporter=verbose', 'tests/fuzz/fuzz.test.ts'];
const { status } = spawnSync(process.execPath, vitest, {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, DIEWRIGHT_FUZZ_RUNS: runs, DIEWRIGHT_FUZZ_SEED: seed },
});
process.exit(status ?? 1);
