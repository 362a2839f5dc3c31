import { expect, test } from 'vitest';
import { Refusal } from '../../../src/kernel/apply.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { withoutFigures } from '../../without-figures.ts';
import { LEVER, rulebook, workTo } from './work-to.ts';

const pin = (diameter: number, rules = rulebook) =>
  workTo('parting', LEVER, undefined, rules).lookIfAny(
    'ejection/pin-size',
    'diameter',
    { rounding: 'up', wanted: Traced.choice('ejection.pin-needed', diameter, 'mm', { note: 'for this test', status: 'practice' }) },
    'ejection.pin-diameter',
  );

test('of a table that has no figure there is none; beyond the ends of one that has there is a refusal', () => {
  expect(pin(2.4)?.value).toBe(2.5);
  expect(pin(2.4, withoutFigures(rulebook, 'ejection/pin-size'))).toBeUndefined();
  expect(() => pin(90)).toThrow(Refusal);
});
