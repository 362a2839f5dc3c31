import { beforeAll, describe, expect, test } from 'vitest';
import type { Plan } from '../../../../src/engine/plan.ts';
import { loadRulebook } from '../../../../src/index.ts';
import { DIES, planExample } from '../../../golden/examples.ts';

const plans = new Map<string, Plan>();
beforeAll(async () => {
  const rulebook = await loadRulebook();
  for (const example of DIES) plans.set(example.name, planExample(example, rulebook).plan as Plan);
});
const plan = (name: string): Plan => plans.get(name) as Plan;
const at = (name: string, id: string): number => plan(name).values.get(id)?.value ?? Number.NaN;

describe('the runner of the pump parts: two gates on the body, one on the badge', () => {
  const pump = (id: string): number => at('pump-parts', id);

  test('each gate has a run of half the area, as long as half of the gates together', () => {
    expect(pump('set.gate-count[pump-body]')).toBe(2);
    expect(pump('runner.segment-count[gate run of pump-body]')).toBe(2);
    expect(pump('runner.segment-area[gate run of pump-body]')).toBeCloseTo(pump('set.runner-area[pump-body]') / 2, 9);
    expect(pump('runner.segment-length[gate run of pump-body]')).toBeCloseTo(pump('set.gate-width[pump-body]') / 2, 9);
    expect(plan('pump-parts').texts.get('runner.segment-feeds[run to pump-body]')).toContain('split');
  });
  test('their run before the split has what both take and the loss of a split', () => {
    const both = 2 * pump('runner.segment-area[gate run of pump-body]');
    expect(both / pump('runner.segment-area[run to pump-body]')).toBeCloseTo(1 - pump('runner.branch-loss') / 100, 9);
  });
  test('a single gate keeps its one run', () => {
    expect(pump('runner.segment-count[gate run of pump-badge]')).toBe(1);
    expect(pump('runner.segment-length[gate run of pump-badge]')).toBe(pump('set.gate-width[pump-badge]'));
  });
});

describe.each(['pump-parts', 'lamp-housing'])('the way of the main runner of %s', (name) => {
  test('is what block, strip and biscuit leave between biscuit and castings', () => {
    // One row: from the edge of the biscuit to the castings.
    const way = at(name, 'die.steel-around') + at(name, 'die.feeder-strip') / 2 - at(name, 'clamp.feeder-diameter') / 2;
    expect(at(name, 'runner.segment-length[main runner]')).toBeCloseTo(way, 9);
    const distance = at(name, 'clamp.feeder-distance') - at(name, 'die.field-height') / 2 - at(name, 'clamp.feeder-diameter') / 2;
    expect(at(name, 'runner.approach')).toBeCloseTo(distance, 9);
  });
  test('ends at the near edge of a single row, and the plan says so', () => {
    expect(JSON.stringify(plan(name).sections)).toContain('From biscuit to the near edge of the castings, which stand in one row');
  });
});
