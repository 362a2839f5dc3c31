import { beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../../../src/engine/plan.ts';
import { loadRulebook } from '../../../../src/index.ts';
import { DIES, planExample } from '../../../golden/examples.ts';

let plan: Plan;
beforeAll(async () => {
  const pump = DIES.find(({ name }) => name === 'pump-parts');
  plan = planExample(pump as (typeof DIES)[number], await loadRulebook()).plan as Plan;
});
const at = (id: string): number => plan.values.get(id)?.value ?? Number.NaN;

describe('pump parts: the body holds pressure, the badge does not', () => {
  test('one casting of the set is leak-tested and impregnated where it leaks', () => {
    expect(at('set.leak-tested')).toBe(1);
    // The built-in plant asks 2 for a casting; 3 % of the bodies leak.
    expect(at('cost.impregnation-price')).toBe(2);
    expect(at('cost.impregnation')).toBeCloseTo((2 * at('finish.leaking')) / 100, 9);
  });
  test('what still leaks is lost with what was spent on the body', () => {
    expect(at('set.tested-spent')).toBeCloseTo((at('cost.spent') * at('set.flow-share[pump-body]')) / 100, 9);
    const lost = (at('finish.leaking') / 100) * (at('finish.still-leaking') / 100);
    expect(at('cost.leakers')).toBeCloseTo((at('set.tested-spent') * lost) / (1 - lost), 9);
  });
  test('the body bears it, and the parts together what the set costs', () => {
    expect(at('set.cost-sealing[pump-body]')).toBeCloseTo(at('cost.impregnation') + at('cost.leakers'), 9);
    expect(plan.values.has('set.cost-sealing[pump-badge]')).toBe(false);
    expect(at('set.cost[pump-body]') + at('set.cost[pump-badge]')).toBeCloseTo(at('cost.per-part'), 9);
  });
});
