import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { planDie } from '../../../../src/die.ts';
import type { Plan } from '../../../../src/engine/plan.ts';
import { loadRulebook, type Rulebook } from '../../../../src/index.ts';
import { DIES, planExample, version } from '../../../golden/examples.ts';

let rulebook: Rulebook;
const plans = new Map<string, Plan>();
beforeAll(async () => {
  rulebook = await loadRulebook();
  for (const example of DIES) plans.set(example.name, planExample(example, rulebook).plan as Plan);
});
const plan = (name: string): Plan => plans.get(name) as Plan;
const parts = (name: string): readonly Plan[] => (plan(name).parts ?? []).map((part) => part.plan);
const value = (of: Plan, id: string): number => of.values.get(id)?.value ?? Number.NaN;

describe.each(['lamp-housing', 'pump-parts', 'latch-lever-pair'])('pins of %s', (name) => {
  test('reach through the die and make the stroke of the plate that all castings share', () => {
    const die = plan(name);
    const free = value(die, 'ejection.stroke') + 5 + value(die, 'die.plate') + value(die, 'die.steel-below') - 25;
    for (const part of parts(name)) {
      expect(value(part, 'ejection.pin-length')).toBeCloseTo(free, 9);
      expect(value(part, 'ejection.pin-slenderness')).toBeLessThanOrEqual(101);
    }
    expect(Math.max(...parts(name).map((part) => value(part, 'ejection.stroke')))).toBe(value(die, 'ejection.stroke'));
  });
  test('return as the plan of the die decides, which every part repeats', () => {
    expect(plan(name).decisions.has('ejection.return')).toBe(true);
    const back = plan(name).texts.get('ejection.return') as string;
    for (const part of parts(name)) {
      expect(part.texts.get('ejection.return')).toBe(back);
      expect(part.decisions.has('ejection.return')).toBe(false);
      expect(JSON.stringify(part.sections)).toContain(`comes back by ${back}`);
    }
  });
});

describe('a slide of one casting', () => {
  const folder = join(import.meta.dirname, '..', '..', '..', '..', 'examples', 'lamp-housing');
  const read = (name: string): string => readFileSync(join(folder, name), 'utf8');

  test('asks for early return of the plate, whichever part stands first in the die file', () => {
    const listed = read('lamp-housing.die.yaml');
    const [body, lid] = [/ {2}- .*lamp-body.*\n/.exec(listed)?.[0] ?? '', / {2}- .*lamp-lid.*\n/.exec(listed)?.[0] ?? ''];
    const turned = listed.replace(body, '').replace(lid, `${lid}${body}`);
    expect([body, turned === listed]).not.toContain('');
    for (const text of [listed, turned]) {
      const die = planDie({ die: { name: 'lamp.die.yaml', text }, partText: ({ file }) => ({ name: file.value, text: read(file.value) }), rulebook, version });
      expect(die.plan?.texts.get('ejection.return')).toBe('early return');
      expect(die.plan?.parts?.map((part) => part.plan.texts.get('ejection.return'))).toEqual(['early return', 'early return']);
    }
  });
});
