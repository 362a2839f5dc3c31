// The process that judges faults for code.mjs: node code-judge.mjs SCRIPT PASSES CASES, told `{ id }` and answering
// `{ result, fresh }`, and `{}` once it can be told.
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
const { atLoad, reached } = JSON.parse(readFileSync(file, 'utf8'));
const declared = new Set(atLoad);
const all = Object.entries(reached)
  .map(([name, { passes, cost }]) => ({ run: cases.get(name), group: name.replace(/ \d+\.\d+$/, '').split(' > ')[0], passes, cost }))
  .sort((a, b) => a.cost - b.cost);

/**
 * The cases that pass a fault: of those of one file that pass it equally often the quickest, then the next quickest of each, and so on, for
 * they tend to see the same.
 */
function readersOf(id) {
  const alike = new Map();
  for (const one of all.filter(({ passes }) => id in passes)) {
    const key = `${one.group} ${one.passes[id]}`;
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  const groups = [...alike.values()];
  const longest = Math.max(0, ...groups.map(({ length }) => length));
  return Array.from({ length: longest }, (_, i) => groups.flatMap((group) => group[i] ?? [])).flat();
}

/** Whether a case comes to the same twice without a fault; what it comes to is kept. One that does not, such as one about time, judges none. */
async function isSteady(one) {
  if (one.steady === undefined) {
    one.text = await one.run().catch(() => undefined);
    one.steady = one.text !== undefined && (await isAsBefore(one));
  }
  return one.steady;
}

/** Whether a case comes to what it came to without a fault. */
const isAsBefore = ({ run, text }) =>
  run().then(
    (other) => other === text,
    () => false,
  );

async function judged(id) {
  let readers = 0;
  for (const by of readersOf(id)) {
    if (!(await isSteady(by))) continue;
    program.set(Number(id), by.passes[id] * MOST_PASSES + 10_000);
    const same = await isAsBefore(by);
    program.set(-1, 0);
    if (!same) return { result: 'caught', by };
    readers += 1;
    if (readers === Number(most)) break;
  }
  return { result: readers > 0 ? 'survived' : declared.has(id) ? 'declared' : 'unreached' };
}

process.on('message', async ({ id }) => {
  const { result, by } = await judged(id);
  process.send({ result, fresh: by === undefined || (await isAsBefore(by)) });
});
process.send({});
