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

const atLoad = Object.keys(taken());
const reached = {};
let ran = 0;
for (const [name, run] of cases) {
  ran += 1;
  if (ran % 500 === 0) process.stderr.write(`${ran} of ${cases.length} cases run\n`);
  program.set(-1, 0);
  const start = process.cpuUsage();
  const passed = await run().then(
    () => true,
    () => false,
  );
  const { user, system } = process.cpuUsage(start);
  const passes = taken();
  if (passed && Object.keys(passes).length > 0) reached[name] = { passes, cost: user + system };
}
process.stderr.write(`${Object.keys(reached).length} of ${cases.length} cases pass a fault\n`);
writeFileSync(file, JSON.stringify({ atLoad, reached }));
