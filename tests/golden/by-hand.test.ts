import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadRulebook, type Plan, planPart } from '../../src/index.ts';
import { BRAKE_VALVE_BODY, BRAKE_VALVE_BODY_WORDS } from './by-hand/brake-valve-body.ts';
import { BRAKE_VALVE_BODY_DIE } from './by-hand/brake-valve-body-die.ts';
import { HANDLE_ESCUTCHEON, HANDLE_ESCUTCHEON_WORDS } from './by-hand/handle-escutcheon.ts';

// Each hand calculation is that of one cavity on one machine, whatever the search would take.
const EXAMPLES = [
  {
    name: 'brake-valve-body',
    pins: ['machine.cavities=1', 'machine.model=cold-1600', 'machine.plunger=50 mm'],
    lines: [...BRAKE_VALVE_BODY, ...BRAKE_VALVE_BODY_DIE],
    words: BRAKE_VALVE_BODY_WORDS,
  },
  {
    name: 'handle-escutcheon',
    pins: ['machine.cavities=1', 'machine.model=hot-500', 'machine.plunger=45 mm'],
    lines: HANDLE_ESCUTCHEON,
    words: HANDLE_ESCUTCHEON_WORDS,
  },
];

const plans = new Map<string, Plan>();
beforeAll(async () => {
  const rulebook = await loadRulebook();
  for (const { name, pins } of EXAMPLES) {
    const file = `${name}.part.yaml`;
    const part = { name: file, text: readFileSync(join(import.meta.dirname, '../../examples', name, file), 'utf8') };
    const { plan, diagnostics } = planPart({ part, set: pins.map((pin) => `pinned.${pin}`), rulebook, version: '0' });
    if (plan === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
    plans.set(name, plan);
  }
});

describe.each(EXAMPLES)('$name, worked out by hand', ({ name, lines, words }) => {
  test.each(lines)('$id is $value $unit', ({ id, value, unit }) => {
    const planned = plans.get(name)?.values.get(id);
    expect(planned?.unit).toBe(unit);
    // The three digits that a plan prints; tables keep two or three digits of a middle that is carried here in full.
    expect(Math.abs((planned?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(1e-3 * Math.abs(value));
  });

  test.each(Object.entries(words))('%s: %s', (id, word) => {
    const plan = plans.get(name);
    expect(plan?.texts.get(id) ?? plan?.decisions.get(id)?.value).toBe(word);
  });
});
