import { beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../../../src/engine/plan.ts';
import { loadRulebook } from '../../../../src/index.ts';
import { DIES, planExample } from '../../../golden/examples.ts';

const plans = new Map<string, Plan>();
beforeAll(async () => {
  const rulebook = await loadRulebook();
  for (const example of DIES) plans.set(example.name, planExample(example, rulebook).plan as Plan);
});
const at = (name: string, id: string): number => plans.get(name)?.values.get(id)?.value ?? Number.NaN;

describe.each([
  ['lamp-housing', ['lamp-body', 'lamp-lid']],
  ['pump-parts', ['pump-body', 'pump-badge']],
])('inserts of %s', (name, parts) => {
  test('two castings on a field too long for one insert have one each', () => {
    expect(at(name, 'die.insert-width')).toBeGreaterThan(at(name, 'die.insert-shared'));
    expect(plans.get(name)?.decisions.get('die.insert-layout')?.value).toBe('insert for each cavity');
    expect([at(name, 'die.castings'), at(name, 'die.insert-count')]).toEqual([2, 2]);
  });
  test('side by side they come to the inserts together, with half the steel between them for each', () => {
    const across = parts.map((part) => at(name, `set.insert-width[${part}]`));
    expect(across.reduce((sum, one) => sum + one, 0)).toBeCloseTo(at(name, 'die.insert-width'), 6);
    expect(Math.max(...parts.map((part) => at(name, `set.insert-height[${part}]`)))).toBeCloseTo(at(name, 'die.insert-height'), 6);
  });
});
