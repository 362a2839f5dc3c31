// How often each case passes each switch, for code.mjs: node code-passes.mjs SCRIPT FILE. Cases that fail are left out.
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { casesOf } from './code-cases.mjs';

const [, , script, file] = process.argv;
const program = await import(pathToFileURL(script).href);
const cases = await casesOf(program);

/** What was passed since it was asked for last. */
function taken() {
  const passes = {};
  for (const [id, passed] of program.counts.entries()) if (passed > 0) passes[id] = passed;
  program.counts.fill(0);
  return passes;
}

const atLoad = Object.keys(taken());
const perTest = {};
for (const [name, run] of cases) {
  const passed = await run().then(
    () => true,
    () => false,
  );
  const passes = taken();
  if (passed) perTest[name] = passes;
}
writeFileSync(file, JSON.stringify({ atLoad, perTest }));
