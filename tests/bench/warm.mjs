// What the work itself costs once the program runs: a plan with its search. node tests/bench/warm.mjs
// Processor time of all threads, those that collect and compile included, because other programs do not add to that.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadRulebook, planPart } from '../../dist/index.js';

const root = join(import.meta.dirname, '..', '..');
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
    const start = process.cpuUsage();
    planPart({ part, rulebook, version: '0' });
    const { user, system } = process.cpuUsage(start);
    if (run >= 0) times.push((user + system) / 1000);
  }
  return spread(times).median;
});
show('plan', spread(plans), 'ms', '  (bound 10)');
