import { beforeAll, describe, expect, test } from 'vitest';
import { fileOf, IMPERIAL, METRIC, made } from './made.ts';
import { expectSamePlan, forEvery, planOf, ready } from './plans.ts';

beforeAll(ready);

describe('a part in other units is the same part', () => {
  test('inches, radians and minutes against millimetres, degrees and hours, with everything that a file can hold', () => {
    forEvery(made, (part) => expectSamePlan(planOf(fileOf(part, METRIC)), planOf(fileOf(part, IMPERIAL)), 1e-9), 40);
  });

  test('its mass in ounces, pounds and grams', () => {
    forEvery(made, (part) => {
      const tenThousandths = Math.round((part.sizes.envelope[0] * part.sizes.envelope[1] * part.sizes.wall.nominal) / 1e9) + 900;
      const plans = [METRIC, IMPERIAL, { ...METRIC, mass: (n: number) => `${n / 1e4} lb` }].map((units) => {
        const file = fileOf(part, units) as { geometry: object };
        const { volume: _, ...geometry } = file.geometry as Record<string, unknown>;
        return planOf({ ...file, geometry: { ...geometry, mass: units.mass(tenThousandths) } });
      });
      for (const plan of plans.slice(1)) expectSamePlan(plans[0] as (typeof plans)[number], plan, 1e-9);
    });
  });

  // 125 ft/s are 38.1 m/s and 410 degF are 210 degC without a rounding.
  const PINS = [
    ['gate.velocity', ['38.1 m/s', '125 ft/s', '1500 in/s', '3810 cm/s']],
    ['fill.die-temperature', ['210 degC', '410 degF']],
    ['clamp.pressure', ['60 MPa', '600 bar', '60000 kPa', '60 N/mm2', `${60 / 6.894757293168361} ksi`]],
    ['gate.thickness', ['1.27 mm', '0.05 in', '1270 um']],
    ['fill.time', ['42 ms', '0.042 s', '0.0007 min']],
  ] as const;
  test.each(PINS)('%s pinned in every unit', (id, texts) => {
    forEvery(
      made,
      (part) => {
        const [first, ...others] = texts.map((text) => planOf(fileOf(part, METRIC), [`pinned.${id}=${text}`]));
        expect(others.length).toBeGreaterThan(0);
        for (const other of others) expectSamePlan(first as NonNullable<typeof first>, other, 1e-9);
      },
      6,
    );
  });
});
