// The speed of a check over made-up libraries, beside the bounds of the design:
//   node tests/bench/scale.mjs [--large] [RUNS]     (after npm run build; --large adds 10,000 parts)
// Whole processes, run in turn in one run on one machine; what counts is the ratios.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeLibrary } from './library.mjs';

const cli = join(import.meta.dirname, '..', '..', 'bin', 'diewright.js');
const large = process.argv.includes('--large');
const runs = Number(process.argv.slice(2).find((word) => /^\d+$/.test(word)) ?? 3);
const folder = mkdtempSync(join(tmpdir(), 'diewright-bench-'));

/** Reads every part below a folder with the library for YAML, and does nothing else. */
const READ = `
const { readdirSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const { parseDocument } = require(${JSON.stringify(join(import.meta.dirname, '..', '..', 'node_modules', 'yaml'))});
for (const name of readdirSync(process.argv[1], { recursive: true, encoding: 'utf8' }))
  if (name.endsWith('.part.yaml')) parseDocument(readFileSync(join(process.argv[1], name), 'utf8')).toJS();
`;
/** Runs the command, and prints its own greatest memory in KiB when it ends. */
const CHECK = `process.on('exit', () => process.stderr.write(String(process.resourceUsage().maxRSS)));require(${JSON.stringify(cli)});`;

function timed(args) {
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`ended with ${status}: ${stderr}`);
  return { seconds: Number(process.hrtime.bigint() - start) / 1e9, megabytes: Number(stderr) / 1024 };
}

const read = (library) => timed(['-e', READ, library]);
const check = (library, ...options) =>
  timed(['-e', CHECK, '--', 'diewright', 'check', library, '-q', '--fail-on', 'never', '--format', `json=${join(folder, 'findings.json')}`, ...options]);

const middle = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];

/** A row with the least, middle and greatest of a list, and how it stands to its bound. */
function row(title, list, unit, digits, bound) {
  const text = (number) => number.toFixed(digits).padStart(8);
  const judged =
    bound === undefined ? '' : `  bound ${bound}: ${middle(list) <= bound ? 'kept' : `missed, ${(middle(list) / bound).toFixed(1)} times as much`}`;
  console.log(`${title.padEnd(62)} min ${text(Math.min(...list))}  median ${text(middle(list))}  max ${text(Math.max(...list))} ${unit}${judged}`);
}

/**
 * A general linter for YAML with three trivial rules took 6.1 s where the library alone took 1.28 s, on the same 1,000 files: it is
 * not among the packages, so its time is reckoned from that.
 */
const LINTER = 6.1 / 1.28;

function measure(count, times) {
  const library = join(folder, String(count));
  writeLibrary(library, count);
  const results = [];
  for (let run = 0; run < times; run += 1) results.push({ reading: read(library), checking: check(library) });
  const seconds = results.map(({ checking }) => checking.seconds);
  row(
    `${count} parts: read with yaml alone`,
    results.map(({ reading }) => reading.seconds),
    's',
    2,
  );
  row(`${count} parts: check`, seconds, 's', 2);
  row(
    `${count} parts: check against yaml alone`,
    results.map(({ reading, checking }) => checking.seconds / reading.seconds),
    'x',
    1,
    1.5,
  );
  row(
    `${count} parts: check against a linter of ${LINTER.toFixed(2)} x yaml (reckoned)`,
    results.map(({ reading, checking }) => checking.seconds / (LINTER * reading.seconds)),
    'x',
    1,
    0.3,
  );
  row(
    `${count} parts: check, greatest memory`,
    results.map(({ checking }) => checking.megabytes),
    'MB',
    0,
  );
  return { library, seconds: middle(seconds), megabytes: middle(results.map(({ checking }) => checking.megabytes)) };
}

try {
  console.log(`${runs} runs of each`);
  const thousand = measure(1000, runs);
  row('1000 parts: check without threads', [check(thousand.library, '--threads', '0').seconds], 's', 2);
  if (large) {
    const many = measure(10_000, 1);
    row('time of 10,000 parts against 1,000', [many.seconds / thousand.seconds], 'x', 2, 10.5);
    row('greatest memory of 10,000 parts against 1,000', [many.megabytes / thousand.megabytes], 'x', 2, 1.3);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
