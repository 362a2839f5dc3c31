import fc from 'fast-check';
import { expect } from 'vitest';
import { loadRulebook, type Plan, planPart, type Rulebook } from '../../../src/index.ts';
import { yamlOf } from '../parts.ts';

let rulebook: Rulebook | undefined;
/** The rulebook of all law tests; call it in `beforeAll`. */
export async function ready(): Promise<Rulebook> {
  rulebook ??= await loadRulebook();
  return rulebook;
}

/** The plan of a part file, as text or as an object. @throws Error with all faults when it cannot be planned */
export function planOf(part: unknown, set: readonly string[] = []): Plan {
  if (rulebook === undefined) throw new Error('call ready() first');
  const text = typeof part === 'string' ? part : yamlOf(part);
  const { plan, diagnostics } = planPart({ part: { name: 'made-up.part.yaml', text }, set, rulebook, version: '0' });
  if (plan === undefined) throw new Error(`${diagnostics.map((d) => d.message).join('\n')}\n${text}`);
  return plan;
}

/** The value of an id, NaN where the plan has none. */
export const at = (plan: Plan, id: string): number => plan.values.get(id)?.value ?? Number.NaN;

/** The item ids of a value that goes by item, in the order of the plan. */
export const itemsOf = (plan: Plan, id: string): string[] =>
  [...plan.values.keys()].filter((one) => one.startsWith(`${id}[`) && one.endsWith(']')).map((one) => one.slice(id.length + 1, -1));

/** The sum of a value over its items. */
export const sumOf = (plan: Plan, id: string): number => itemsOf(plan, id).reduce((sum, item) => sum + at(plan, `${id}[${item}]`), 0);

/** Runs a property with a fixed seed, so that a failure comes again; not made smaller, for that takes hundreds of plans. */
export function forEvery<T>(arbitrary: fc.Arbitrary<T>, holds: (value: T) => void, numRuns = 25): void {
  fc.assert(
    fc.property(arbitrary, (value) => {
      holds(value);
    }),
    { seed: 20261125, numRuns, endOnFailure: true },
  );
}

/** Equal within a share of the greater. */
export function expectNear(a: number, b: number, share: number, what: string): void {
  const gap = Math.abs(a - b);
  if (!(gap <= share * Math.max(Math.abs(a), Math.abs(b)))) expect.fail(`${what}: ${a} and ${b}`);
}

/** Words and findings of a plan without the quantities that they quote from the file. */
export function wordsOf(plan: Plan): object {
  return {
    texts: [...plan.texts]
      .map(
        ([id, text]) =>
          `${id} ${text.replace(/[\d.]+ (in|mm|cm|um|deg|rad|oz|lb|g|MPa|kPa|bar|N\/mm2|ksi|m\/s|ft\/s|in\/s|cm\/s|degC|degF|ms|s|min|h)[23]?(?![a-zA-Z/])/g, 'a size')}`,
      )
      .sort(),
    decisions: [...plan.decisions.values()].map(({ id, value, alternatives }) => `${id} ${value} ${alternatives.map((other) => other.value)}`).sort(),
    findings: plan.findings.map(({ code, severity, item }) => `${severity} ${code} ${item ?? ''}`).sort(),
    unchecked: plan.unchecked.map(({ id }) => id).sort(),
  };
}

/** Two plans with the same values within a share, the same words, decisions and findings. */
export function expectSamePlan(a: Plan, b: Plan, share: number): void {
  expect([...b.values.keys()].sort()).toEqual([...a.values.keys()].sort());
  for (const [id, value] of a.values) {
    expect(b.values.get(id)?.unit, id).toBe(value.unit);
    expectNear(value.value, at(b, id), share, id);
  }
  expect(wordsOf(b)).toEqual(wordsOf(a));
}
