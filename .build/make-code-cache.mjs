// Run by the build: works the program once as a user would, then keeps the bytecode of all that was compiled.
import { copyFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');
const loader = join(root, 'dist', 'load-program.cjs');
copyFileSync(join(root, '.build', 'load-program.cjs'), loader);
const { compile, load } = createRequire(import.meta.url)(loader);
const script = compile();
const program = load(script);
const sink = { isTTY: false, write: () => {} };
const io = { env: {}, out: sink, err: sink, stdin: (async function* () {})(), settled: async () => true };
for (const example of ['gearbox-housing', 'door-latch-lever']) {
  const part = join(root, 'examples', example, `${example}.part.yaml`);
  readFileSync(part);
  for (const format of ['markdown', 'json']) await program.run(['plan', part, '--fail-on', 'never', '--format', format], io);
}
await program.run(['calc', 'gate.area', 'volume=768 cm3', 'velocity=45 m/s', 'time=50 ms'], io);
writeFileSync(join(root, 'dist', 'program.cjs.cache'), script.createCachedData());
rmSync(loader);
