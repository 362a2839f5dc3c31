import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BRAKE_VALVE_BODY, BRAKE_VALVE_BODY_WORDS } from './by-hand/brake-valve-body.ts';
import { BRAKE_VALVE_BODY_DIE } from './by-hand/brake-valve-body-die.ts';
import { HANDLE_ESCUTCHEON, HANDLE_ESCUTCHEON_WORDS } from './by-hand/handle-escutcheon.ts';

interface CommittedPlan {
  readonly values: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly decisions: Readonly<Record<string, { readonly value: string | number }>>;
}

const EXAMPLES = [
  { name: 'brake-valve-body', lines: [...BRAKE_VALVE_BODY, ...BRAKE_VALVE_BODY_DIE], words: BRAKE_VALVE_BODY_WORDS },
  { name: 'handle-escutcheon', lines: HANDLE_ESCUTCHEON, words: HANDLE_ESCUTCHEON_WORDS },
];

describe.each(EXAMPLES)('$name, worked out by hand', ({ name, lines, words }) => {
  const plan = JSON.parse(readFileSync(join(import.meta.dirname, '../../examples', name, 'plan.json'), 'utf8')) as CommittedPlan;

  test.each(lines)('$id is $value $unit', ({ id, value, unit }) => {
    const planned = plan.values[id];
    expect(planned?.unit).toBe(unit);
    // The three digits that a plan prints; tables keep two or three digits of a middle that is carried here in full.
    expect(Math.abs((planned?.value ?? Number.NaN) - value)).toBeLessThanOrEqual(1e-3 * Math.abs(value));
  });

  test.each(Object.entries(words))('%s: %s', (id, word) => {
    expect(plan.texts[id] ?? plan.decisions[id]?.value).toBe(word);
  });
});
