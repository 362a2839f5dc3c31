// What code.mjs judges faults by: the plans of the examples, alone and in their dies.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const examples = join(import.meta.dirname, '..', '..', 'examples');
const read = (name) => ({ name, text: readFileSync(join(examples, name), 'utf8') });

export const CASES = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(part|die)\.yaml$/.test(name))
  .sort();

/** Gives for a case the plan in JSON, or the faults of the input; and, when asked for, its figures. */
export async function planner({ planDie, planPart, loadRulebook, renderFigures, renderPlans }) {
  const rulebook = await loadRulebook();
  return async (name) => {
    const partText = (entry) => read(join(dirname(name), entry.file.value));
    const request = { rulebook, version: '0' };
    const { plan, diagnostics } = name.endsWith('.die.yaml') ? planDie({ ...request, die: read(name), partText }) : planPart({ ...request, part: read(name) });
    if (plan === undefined) return { text: JSON.stringify(diagnostics.map(({ code, message }) => ({ code, message }))), figures: async () => '' };
    return { text: await renderPlans('json', [plan]), figures: async () => JSON.stringify(await renderFigures(plan)) };
  };
}
