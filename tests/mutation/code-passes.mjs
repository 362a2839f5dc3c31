// How often each case passes each switch and what it costs, for code.mjs: node code-passes.mjs SCRIPT FILE [SHARE OF]. Cases that fail or
// pass none are left out; of several shares each takes every so many cases.
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { casesOf } from './code-cases.mjs';

const [, , script, file, share = '0', of = '1'] = process.argv;
const program = await import(pathToFileURL(script).href);
const cases = [...(await casesOf(program))].filter((_, i) => i % Number(of) === Number(share));

/** What was passed since it was asked for last. */
function taken() {
  const passes = {};
  for (const [id, passed] of program.counts.entries()) if (passed > 0) passes[id] = passed;
  program.counts.fill(0);
  return passes;
}

/** What was passed, and the microseconds that it took. */
async function counted(work) {
  const start = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(start);
  return { result, passes: taken(), cost: user + system };
}

/** What is made for several cases is passed by each of them; its cost is that of the first. */
const made = new Map();
async function madeFor(run) {
  const parts = [];
  for await (const need of run.needs?.() ?? []) {
    const { result: isNew, ...rest } = await counted(need);
    if (isNew) made.set(need, rest);
    parts.push(isNew ? rest : { ...made.get(need), cost: 0 });
  }
  return parts;
}

const atLoad = Object.keys(taken());
const reached = {};
let ran = 0;
for (const [name, run] of cases) {
  ran += 1;
  if (ran % 500 === 0) process.stderr.write(`${ran} of ${cases.length} cases run\n`);
  // What a case before it has left in the caches would hide what this one passes.
  program.set(-1, 0);
  try {
    const parts = [...(await madeFor(run)), await counted(run)];
    const passes = {};
    for (const part of parts) for (const [id, passed] of Object.entries(part.passes)) passes[id] = (passes[id] ?? 0) + passed;
    if (Object.keys(passes).length > 0) reached[name] = { passes, cost: parts.reduce((sum, part) => sum + part.cost, 0) };
  } catch {
    taken();
  }
}
process.stderr.write(`${Object.keys(reached).length} of ${cases.length} cases pass a fault\n`);
writeFileSync(file, JSON.stringify({ atLoad, reached }));
