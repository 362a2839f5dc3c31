import { expect, test } from 'vitest';
import { otherMass } from '../../../src/engine/other-mass.ts';
import type { Plan } from '../../../src/engine/plan.ts';

const before = (density: number | undefined = 6.6, id = 'Zamak 3') => ({
  alloy: { id },
  values: { get: (key: string) => (key === 'alloy.density' && density !== undefined ? { value: density } : undefined) },
});
const after = (written: string | undefined = '118 g', { kind = 'input', density = 2.64, id = 'A380' } = {}): Plan => {
  const values = new Map<string, unknown>([['part.mass', { kind, written, value: 1 }]]);
  if (density > 0) values.set('alloy.density', { value: density });
  return { alloy: { id }, values } as unknown as Plan;
};

// 2.64 / 6.6 = 0.4: what weighs 118 g in zinc weighs 47.2 g in aluminium of the same shape.
test.each([
  ['118 g', '47.2 g'],
  ['0.118 kg', '0.0472 kg'],
  ['1.18e2 g', '47.2 g'],
  ['1.18E+2 g', '47.2 g'],
  ['1180e-1g', '47.2g'],
  [' 118 g', '47.2 g'],
  ['100.00001 g', '40 g'],
])('%s becomes %s', (written, text) => expect(otherMass(before(), after(written), [])?.text).toBe(text));

test('says what was done', () => {
  expect(otherMass(before(), after(), [])?.remark).toBe(
    'The mass in the file, 118 g, is that of Zamak 3; the same shape weighs 47.2 g in A380, and that was planned with.',
  );
});

test.each([
  ['the alloy stays', before(2.64, 'A380'), after(), []],
  ['no mass is given', before(), after('118 g', { kind: 'formula' }), []],
  [
    'the mass was not written',
    before(),
    {
      ...after(),
      values: new Map([
        ['part.mass', { kind: 'input' }],
        ['alloy.density', { value: 1 }],
      ]),
    } as unknown as Plan,
    [],
  ],
  ['there is no mass', before(), { ...after(), values: new Map([['alloy.density', { value: 1 }]]) } as unknown as Plan, []],
  ['a density is not known before', { ...before(), values: { get: () => undefined } }, after(), []],
  ['a density is not known after', before(), after('118 g', { density: 0 }), []],
  ['the mass was set on purpose', before(), after(), ['alloy=A380', 'geometry.mass=50 g']],
  ['the geometry was', before(), after(), [' geometry = { mass: 50 g }']],
  ['the text is no number', before(), after('about 118 g'), []],
])('nothing is done where %s', (_, was, is, set) => expect(otherMass(was, is, set)).toBeUndefined());

test('other settings set no mass', () => {
  for (const set of ['geometry.volume=5 cm3', 'note=geometry.mass=5', 'geometry.masses=1']) expect(otherMass(before(), after(), [set])).toBeDefined();
});
