// What the work itself costs once the program runs: a plan with its search, and a library of parts against reading it.
//   node tests/bench/warm.mjs [PARTS]
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { loadRulebook, planPart } from '../../dist/index.js';
import { writeLibrary } from './library.mjs';

const root = join(import.meta.dirname, '..', '..');
const count = Number(process.argv[2] ?? 200);
const rulebook = await loadRulebook();
const examples = readdirSync(join(root, 'examples')).flatMap((name) => {
  try {
    const file = `${name}.part.yaml`;
    return [{ name: file, text: readFileSync(join(root, 'examples', name, file), 'utf8') }];
  } catch {
    return [];
  }
});

const spread = (list) => {
  const sorted = [...list].sort((a, b) => a - b);
  return { min: sorted[0], median: sorted[Math.floor(sorted.length / 2)], max: sorted[sorted.length - 1] };
};
const show = (title, { min, median, max }, unit, bound = '') =>
  console.log(
    `${title.padEnd(64)} min ${min.toFixed(1).padStart(8)}  median ${median.toFixed(1).padStart(8)}  max ${max.toFixed(1).padStart(8)} ${unit}${bound}`,
  );

console.log('A plan with its search on the built-in plant, warm, one value for each example (its median of 9 after 4)');
const plans = examples.map((part) => {
  const times = [];
  for (let run = -4; run < 9; run += 1) {
    const start = performance.now();
    planPart({ part, rulebook, version: '0' });
    if (run >= 0) times.push(performance.now() - start);
  }
  return spread(times).median;
});
show('plan', spread(plans), 'ms', '  (bound 10)');

const folder = mkdtempSync(join(tmpdir(), 'diewright-bench-'));
writeLibrary(folder, count);
const texts = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.part.yaml'))
  .map((name) => readFileSync(join(folder, name), 'utf8'));
const start = performance.now();
for (const text of texts) parseDocument(text).toJS();
const reading = performance.now() - start;
// Once before, so that the files are in memory.
spawnSync(process.execPath, [join(root, 'bin', 'diewright.js'), '--version']);
const began = performance.now();
const run = spawnSync(process.execPath, [
  join(root, 'bin', 'diewright.js'),
  'check',
  folder,
  '-q',
  '--fail-on',
  'never',
  '--format',
  `json=${join(folder, 'findings.json')}`,
]);
const checking = performance.now() - began;
console.log(
  `${count} parts: yaml alone ${reading.toFixed(0)} ms, check ${checking.toFixed(0)} ms, ratio ${(checking / reading).toFixed(1)}  (bound 1.5)${run.status === 0 ? '' : `  exit ${run.status}`}`,
);
rmSync(folder, { recursive: true, force: true });
