// The process that judges faults for code.mjs: node code-judge.mjs SCRIPT PASSES PLANS, told `{ id }` and answering `{ result, fresh }`.
// result: caught, survived, unreached by any plan, or declared: run only when the program is loaded. fresh: whether a plan made
// afterwards without the fault is still the committed one.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { CASES, planner } from './code-cases.mjs';

/** A loop that a fault makes endless passes its switch this many times more than without the fault. */
const MOST_PASSES = 10;

const [, , script, file, plans] = process.argv;
const program = await import(pathToFileURL(script).href);
const planned = await planner(program);
const { atLoad, perTest } = JSON.parse(readFileSync(file, 'utf8'));
const declared = new Set(atLoad);

const known = [];
for (const name of CASES) {
  const { text, figures } = await planned(name);
  const start = process.cpuUsage();
  await planned(name);
  known.push({ name, text, figures: await figures(), cost: process.cpuUsage(start).user, passes: perTest[name] ?? {} });
}
known.sort((a, b) => a.cost - b.cost);

async function judged(id) {
  const readers = known.filter(({ passes }) => id in passes).slice(0, Number(plans));
  if (readers.length === 0) return declared.has(id) ? 'declared' : 'unreached';
  for (const one of readers) {
    program.set(Number(id), one.passes[id] * MOST_PASSES + 10_000);
    const same = await isSame(one).catch(() => false);
    program.set(-1, 0);
    if (!same) return 'caught';
  }
  return 'survived';
}

async function isSame({ name, text, figures }) {
  const other = await planned(name);
  return other.text === text && (await other.figures()) === figures;
}

/** The quickest plan again: what a fault leaves in the caches of the program would spoil the verdicts after it. */
const isFresh = async () => (await planned(known[0].name)).text === known[0].text;

process.on('message', async ({ id }) => {
  const result = await judged(id);
  process.send({ result, fresh: result !== 'caught' || (await isFresh()) });
});
process.send({});
