// What code.mjs judges faults by: the plans of the examples, alone and in their dies, or tests.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const read = (name) => ({ name, text: readFileSync(join(examples, name), 'utf8') });

/** The cases of a program with the switches in it, by name; each gives a text that a fault may change, or fails. */
export async function casesOf(program) {
  return new Map(program.tests === undefined ? await plansOf(program) : testsOf(program));
}

/** The plan in JSON, or the faults of the input, and the figures. */
async function plansOf({ planDie, planPart, loadRulebook, renderFigures, renderPlans }) {
  const rulebook = await loadRulebook();
  const names = readdirSync(examples, { recursive: true, encoding: 'utf8' }).filter((name) => /\.(part|die)\.yaml$/.test(name));
  return names.sort().map((name) => {
    const run = async () => {
      const partText = (entry) => read(join(dirname(name), entry.file.value));
      const request = { rulebook, version: '0' };
      const { plan, diagnostics } = name.endsWith('.die.yaml')
        ? planDie({ ...request, die: read(name), partText })
        : planPart({ ...request, part: read(name) });
      if (plan === undefined) return JSON.stringify(diagnostics.map(({ code, message }) => ({ code, message })));
      return (await renderPlans('json', [plan])) + JSON.stringify(await renderFigures(plan));
    };
    return [name, run];
  });
}

/** A test passes or fails; what its suites make beforehand is made anew for it. */
function testsOf({ tests }) {
  return tests.map(({ name, run, suites }, i) => [
    `${name} ${i}`,
    async () => {
      for (const { before } of suites) for (const hook of before) await hook();
      for (const { each } of suites) for (const hook of each) await hook();
      await run();
      for (const { after } of suites) for (const hook of after) await hook();
      return 'passed';
    },
  ]);
}
