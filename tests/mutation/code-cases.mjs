// What code.mjs judges faults by: the plans of the examples, alone and in their dies, or tests.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const read = (name) => ({ name, text: readFileSync(join(examples, name), 'utf8') });

/**
 * The cases of a program with the switches in it, by name; each gives a text that a fault may change, or fails. `needs` of a case is what
 * has to be made for it first, and stays as long as the same fault is on.
 */
export async function casesOf(program) {
  return new Map(program.blocks === undefined ? await plansOf(program) : await testsOf(program));
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

/** A test passes or fails. What its suites make is made once for each fault, as a run of the tests would. */
async function testsOf(program) {
  const ready = new Map();
  /** Makes something unless that has been done with the same fault on; says whether it was made. */
  const once = (make, undo) => {
    const need = async () => {
      if (ready.get(need) === program.active) return false;
      if (ready.delete(need)) await undo();
      await make();
      ready.set(need, program.active);
      return true;
    };
    return need;
  };
  const hooksOf = new Map();
  const hooks = (suite) => {
    if (!hooksOf.has(suite)) {
      const all = (list) => async () => {
        for (const hook of list) await hook();
      };
      hooksOf.set(suite, once(all(suite.before), all(suite.after)));
    }
    return hooksOf.get(suite);
  };
  const cases = [];
  for (const [b, block] of program.blocks.entries()) {
    let tests = await block.collect();
    const own = () => new Set(tests.flatMap(({ suites }) => suites.slice(1)));
    const collected = once(
      () => {
        tests = block.collect();
      },
      async () => {
        for (const suite of own()) {
          if (ready.delete(hooks(suite))) for (const hook of suite.after) await hook();
          hooksOf.delete(suite);
        }
      },
    );
    for (const [i, { name }] of tests.entries()) {
      const needs = async function* () {
        yield collected;
        for (const suite of tests[i].suites) yield hooks(suite);
      };
      const run = async () => {
        for await (const need of needs()) await need();
        for (const { each } of tests[i].suites) for (const hook of each) await hook();
        await tests[i].run();
        return 'passed';
      };
      cases.push([`${name} ${b}.${i}`, Object.assign(run, { needs })]);
    }
  }
  return cases;
}
