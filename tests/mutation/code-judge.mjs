// The process that judges faults for code.mjs: node code-judge.mjs SCRIPT PASSES CASES, told `{ id }` and answering
// `{ result, fresh }`, and first of all `{ ready }`.
// result: caught, survived, unreached by any case, or declared: run only when the program is loaded. fresh: whether the case
// that caught it comes afterwards, without the fault, to what it was; else something in the caches of the program had spoilt it.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { casesOf } from './code-cases.mjs';

/** A loop that a fault makes endless passes its switch this many times more than without the fault. */
const MOST_PASSES = 10;

const [, , script, file, most] = process.argv;
const program = await import(pathToFileURL(script).href);
const cases = await casesOf(program);
const { atLoad, perTest } = JSON.parse(readFileSync(file, 'utf8'));
const declared = new Set(atLoad);

const known = [];
for (const [name, run] of cases) {
  const passes = perTest[name];
  if (passes === undefined || Object.keys(passes).length === 0) continue;
  try {
    const text = await run();
    const start = process.cpuUsage();
    const again = await run();
    const { user, system } = process.cpuUsage(start);
    if (again === text) known.push({ name, run, text, cost: user + system, passes });
  } catch {
    // A case that fails without a fault, such as one about time, judges none.
  }
}
known.sort((a, b) => a.cost - b.cost);

async function judged(id) {
  const readers = known.filter(({ passes }) => id in passes).slice(0, Number(most));
  if (readers.length === 0) return { result: declared.has(id) ? 'declared' : 'unreached' };
  for (const by of readers) {
    program.set(Number(id), by.passes[id] * MOST_PASSES + 10_000);
    const same = await isAsBefore(by);
    program.set(-1, 0);
    if (!same) return { result: 'caught', by };
  }
  return { result: 'survived' };
}

/** Whether a case comes to what it came to without a fault. */
const isAsBefore = ({ run, text }) =>
  run().then(
    (other) => other === text,
    () => false,
  );

process.on('message', async ({ id }) => {
  const { result, by } = await judged(id);
  process.send({ result, fresh: by === undefined || (await isAsBefore(by)) });
});
process.send({ ready: `${known.length} of ${cases.size} cases judge` });
