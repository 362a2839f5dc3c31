import { didYouMean, orList } from '../kernel/spelling.ts';
import { parseExpression } from './expression.ts';
import type { Spot } from './spot.ts';
import type { Binding, Caution, Choice, Given, Limit } from './types.ts';

// Runs the examples that stand in the rules, by the library for CEL.

type Case = Given;

export function checkLimit(spot: Spot, limit: Limit): void {
  oneOfEach(
    spot,
    limit.examples.map((example) => example.holds),
    ['that holds', 'that does not hold'],
  );
  limit.examples.forEach(({ given, holds }, i) => {
    if (!givenIsSound(spot, i, given)) return;
    const applies = run(limit.when, spot.uses, given);
    const required = run(limit.require, spot.uses, given);
    const comes = applies !== true || required === true;
    if (comes === holds) return;
    const says = `${inWords(given)} ${comes ? 'holds' : 'does not hold'}, but the example says that it ${holds ? 'holds' : 'does not'}`;
    spot.report('example', ['examples', i], says, 'correct the rule or the example', [
      `when: ${limit.when} gives ${shown(applies)}`,
      ...(applies === true ? [`require: ${limit.require} gives ${shown(required)}`] : []),
    ]);
  });
}

export function checkChoice(spot: Spot, choice: Choice): void {
  const words = [...new Set(choice.rows.map((row) => row.choose))];
  choice.examples.forEach(({ given, chooses }, i) => {
    if (!givenIsSound(spot, i, given)) return;
    const at = choice.rows.findIndex((row) => run(row.when, spot.uses, given) === true);
    const chosen = choice.rows[at]?.choose;
    if (chosen === chooses) return;
    const near = words.includes(chooses) ? '' : didYouMean(chooses, words);
    const says = `${inWords(given)} chooses ${chosen === undefined ? 'nothing' : `${chosen} (row ${at + 1})`}, but the example says ${chooses}${near}`;
    spot.report('example', ['examples', i], says, 'correct the rows or the example');
  });
}

export function checkCaution(spot: Spot, caution: Caution): void {
  const always = caution.when === 'true';
  oneOfEach(
    spot,
    caution.examples.map((example) => example.applies),
    always ? ['in which it applies'] : ['in which it applies', 'in which it does not apply'],
  );
  caution.examples.forEach(({ given, applies }, i) => {
    if (!givenIsSound(spot, i, given)) return;
    const comes = run(caution.when, spot.uses, given);
    if ((comes === true) === applies) return;
    spot.report(
      'example',
      ['examples', i],
      `with ${inWords(given)}, when: ${caution.when} gives ${shown(comes)}, but the example says ${applies}`,
      'correct the trigger or the example',
    );
  });
}

/** `kinds` names the example that is true, and after it the one that is false, where one is needed. */
function oneOfEach(spot: Spot, given: readonly boolean[], kinds: readonly string[]): void {
  kinds.forEach((kind, i) => {
    if (!given.includes(i === 0)) spot.report('example', ['examples'], `no example ${kind}`, 'give at least one of each', undefined, 'key');
  });
}

/** An example gives bound names only, each in its kind: a number for a value with a unit, else a text. */
function givenIsSound(spot: Spot, index: number, given: Case): boolean {
  let sound = true;
  for (const [name, value] of Object.entries(given)) {
    const use = spot.uses.find((candidate) => candidate.name === name);
    const names = spot.uses.map((candidate) => candidate.name);
    const report = (message: string, fix: string): void =>
      spot.report('example', ['examples', index, 'given', name], message, fix, undefined, use === undefined ? 'key' : undefined);
    if (use === undefined) report(`the example gives "${name}", which is no name of uses${didYouMean(name, names)}`, `write ${orList(names)}`);
    else if (use.unit !== undefined && typeof value !== 'number')
      report(`"${name}" is bound in ${use.unit}, so a number is wanted here`, 'write a number without a unit');
    else if (use.unit === undefined && typeof value !== 'string')
      report(`"${name}" is bound to a text, but ${String(value)} is none`, `write '${String(value)}' in quotes`);
    else continue;
    sound = false;
  }
  return sound;
}

function run(expression: string, uses: readonly Binding[], given: Case): unknown {
  try {
    return parseExpression(expression, uses)({ ...given });
  } catch (error) {
    const { summary, message } = error as Error & { summary?: string };
    return new Error((summary ?? message).split('\n')[0]);
  }
}

function shown(result: unknown): string {
  return result instanceof Error ? `no answer: ${result.message}` : String(result);
}

/** `f = 3900, rated = 4000`. */
export function inWords(given: Case): string {
  return Object.entries(given)
    .map(([name, value]) => `${name} = ${value}`)
    .join(', ');
}
