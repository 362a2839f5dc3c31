import type { Context } from './context.ts';
import { EXIT } from './exits.ts';
import { badInput } from './fault.ts';
import type { Surroundings } from './settings.ts';

/**
 * Checks the house rules and adjustments of the settings for these inputs, without planning anything, and runs the
 * examples in the rules: one line for each set of rules that is sound on standard output, faults on standard error. Gives the exit code.
 * @throws BadInput when no house rules are set anywhere, or a file cannot be read.
 */
export async function checkHouseRules(surroundings: Surroundings, inputs: readonly string[], context: Context): Promise<number> {
  const seen = new Set<string>();
  let sound = true;
  for (const input of inputs.length === 0 ? [undefined] : inputs) {
    const settings = await surroundings.settings(input);
    const { rules, adjusted, project } = settings;
    const key = JSON.stringify([rules.value, adjusted.value.length === 0 ? '' : project]);
    if ((rules.value.length === 0 && adjusted.value.length === 0) || seen.has(key)) continue;
    seen.add(key);
    const { files, rules: count, examples, diagnostics } = await surroundings.testRules(settings);
    const names = [...rules.value.map(({ at }) => at), ...(adjusted.value.length === 0 ? [] : [project])].join(', ');
    if (diagnostics.length > 0) await context.report(diagnostics);
    else context.io.out.write(`${names}: ${files} files, ${count} rules with conditions; all ${examples} examples come out as they say\n`);
    sound &&= diagnostics.length === 0;
  }
  if (seen.size === 0) throw badInput('cli/usage', 'no house rules are set, so there is nothing to check', 'name a folder with --rules, or in diewright.yaml');
  return sound ? EXIT.made : EXIT.badInput;
}
