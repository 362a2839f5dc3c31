import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runHere } from './run-here.ts';

const PART = join(import.meta.dirname, '../../examples/gearbox-housing/gearbox-housing.part.yaml');
const plan = async (...args: string[]) => JSON.parse((await runHere(['plan', PART, '--quiet', '--format', 'json', '--fail-on', 'never', ...args])).out);

test('the wave is computed when it is asked for, and not otherwise', async () => {
  const [plain, waved] = [await plan(), await plan('--wave')];
  expect(plain.values['slow-shot.wave-trapped']).toBeUndefined();
  expect(plain.texts['slow-shot.wave']).toBe('not computed');
  expect(waved.values['slow-shot.wave-trapped']).toMatchObject({ unit: 'cm3', kind: 'formula', formula: 'slow-shot.wave-trapped', status: 'memory' });
  expect(waved.decisions['slow-shot.wave'].value).toBe('drives the air out');
  // All the rest of the plan is the same.
  const without = (values: Record<string, unknown>) => Object.keys(values).filter((id) => !id.startsWith('slow-shot.wave'));
  expect(without(waved.values)).toEqual(without(plain.values));
});

test('calc runs a wave by hand and says how', async () => {
  const given = ['diameter=70 mm', 'fill=52.37 %', 'length=400 mm', 'hole_travel=87.5 mm', 'hole_speed=0.25 m/s', 'ramp_end=120 mm', 'speed=0.3 m/s'];
  const { code, out } = await runHere(['calc', 'slow-shot.wave-trapped', ...given]);
  expect(code).toBe(0);
  expect(out).toContain('V_w by time steps of dA/dt');
  expect(out).toContain('with D = 70 mm, f = 52.37 %');
  expect(out).toMatch(/V_w = 84\.\d cm3 by time steps/);
});

test('explain says what is stepped', async () => {
  const { out } = await runHere(['explain', 'slow-shot.wave-head']);
  expect(out.replace(/\s+/g, ' ')).toContain('h_w by time steps of dA/dt + d(A*u)/dx = 0');
});
