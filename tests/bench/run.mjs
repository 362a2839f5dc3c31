// Whole-process times as ratios to `node -e 0`, measured in turn in one run: npm run bench
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const cli = join(root, 'bin', 'diewright.js');
const part = join(root, 'examples', 'gearbox-housing', 'gearbox-housing.part.yaml');
const runs = Number(process.argv[2] ?? 21);
/** Bytes; a plan in JSON has more than the mebibyte that is usual. */
const MOST_PRINTED = 2 ** 26;

const commands = [
  { name: 'node -e 0', args: ['-e', '0'], bound: undefined },
  { name: 'diewright --version', args: [cli, '--version'], bound: 1.3 },
  { name: 'diewright plan (one part)', args: [cli, 'plan', part, '--fail-on', 'never'], bound: 2 },
  { name: 'diewright plan --format json', args: [cli, 'plan', part, '--fail-on', 'never', '--format', 'json'], bound: 2 },
  { name: 'diewright calc gate.area', args: [cli, 'calc', 'gate.area', 'volume=768 cm3', 'velocity=45 m/s', 'time=50 ms'], bound: undefined },
];

const times = commands.map(() => []);
for (let run = -2; run < runs; run += 1) {
  commands.forEach((command, index) => {
    const start = process.hrtime.bigint();
    const { status, stderr, error } = spawnSync(process.execPath, command.args, { encoding: 'utf8', maxBuffer: MOST_PRINTED });
    const elapsed = Number(process.hrtime.bigint() - start) / 1e6;
    if (status !== 0) throw error ?? new Error(`${command.name} ended with ${status}: ${stderr}`);
    if (run >= 0) times[index].push(elapsed);
  });
}

const sorted = times.map((list) => [...list].sort((a, b) => a - b));
const median = (list) => list[Math.floor(list.length / 2)];
const base = times[0];
console.log(`${runs} runs of each, in turn, after 2 not counted; milliseconds, and ratio to node -e 0 run by run`);
commands.forEach((command, index) => {
  const ratios = times[index].map((time, run) => time / base[run]).sort((a, b) => a - b);
  const list = sorted[index];
  const bound = command.bound === undefined ? '' : `  (bound ${command.bound})`;
  console.log(
    `${command.name.padEnd(32)} min ${list[0].toFixed(0).padStart(4)}  median ${median(list).toFixed(0).padStart(4)}  max ${list[list.length - 1].toFixed(0).padStart(4)}   ratio ${median(ratios).toFixed(2)}${bound}`,
  );
});
