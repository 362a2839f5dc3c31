// How often each plan passes each switch, for code.mjs: node code-passes.mjs SCRIPT FILE
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { CASES, planner } from './code-cases.mjs';

const [, , script, file] = process.argv;
const switches = {};
globalThis.__stryker__ = switches;
const planned = await planner(await import(pathToFileURL(script).href));
for (const name of CASES) {
  switches.currentTestId = name;
  await (await planned(name)).figures();
}
const { static: atLoad, perTest } = switches.mutantCoverage;
writeFileSync(file, JSON.stringify({ atLoad: Object.keys(atLoad), perTest }));
