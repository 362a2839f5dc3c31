import { describe, expect, test } from 'vitest';
import { porosityStep } from '../../../src/engine/steps/porosity.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'fill.time': '35 ms', 'overflow.volume': '50 cm3', 'runner.volume': '100 cm3', 'machine.cavities': '1' };
const CASE: SmallPart = { ...LID, volume: 250, pinned: PINNED };
const pinnedTo = (pins: Readonly<Record<string, string>>, more: Partial<SmallPart> = {}) =>
  workTo('porosity', { ...CASE, ...more, pinned: { ...PINNED, ...pins } });

describe('an aluminium casting vented to the air, worked by hand', () => {
  const ledger = workTo('porosity', CASE);
  // 400 cm3 of air at 300 K over 0.813 kg: at 0 degC and 1013.25 mbar 44.8 cm3 in 100 g, of which 25 to 75 %.
  const content = (0.25 * 400 * (1013 / 1013.25) * (273.15 / 300)) / 8.13;
  test.each([
    ['porosity.trapped-low', 25],
    ['porosity.trapped-high', 75],
    ['porosity.gas-content-low', content],
    ['porosity.gas-content-high', 3 * content],
    // 11.2 cm3 x 2.71 g/cm3 under 39.2 MPa at the solidus of 540 degC.
    ['porosity.gas-low', content * 2.71 * (0.101325 / 39.2) * (813.15 / 273.15)],
    ['porosity.gas-high', 3 * content * 2.71 * (0.101325 / 39.2) * (813.15 / 273.15)],
    // Gate of half the wall: half is fed, at best half times sqrt(80 / 30).
    ['porosity.fed-least', 50],
    ['porosity.fed-greatest', 81.65],
    ['porosity.unfed-high', 4.98793 / 2],
    ['porosity.unfed-low', 4.98793 * (1 - 0.8165)],
  ])('%s is %d', (id, expected) => {
    expect(Math.abs(figure(ledger, id) / expected - 1)).toBeLessThan(2e-4);
  });

  test('low and high are the sums', () => {
    for (const end of ['low', 'high'])
      expect(figure(ledger, `porosity.${end}`)).toBe(figure(ledger, `porosity.gas-${end}`) + figure(ledger, `porosity.unfed-${end}`));
    expect(figure(ledger, 'porosity.low')).toBeGreaterThan(0.5);
    expect(figure(ledger, 'porosity.high')).toBeLessThan(4);
  });

  test('the trapped volume is the same gas as the pores', () => {
    expect(figure(ledger, 'porosity.gas-volume') / (0.813 / 0.00271)).toBeCloseTo(figure(ledger, 'porosity.gas-high') / 100, 8);
  });

  test('vacuum of the standard class beside it holds a quarter of the gas', () => {
    expect(figure(ledger, 'porosity.content-high[evacuated]') / figure(ledger, 'porosity.content-high[vented]')).toBeCloseTo(250 / 1013, 9);
  });
});

test('in a poor shot the pores stay under the pressure of the fill phase, where that is the lower one', () => {
  const ledger = pinnedTo({ 'clamp.pressure': '90 MPa' });
  const fill = figure(ledger, 'intensification.fill-pressure');
  expect(fill).toBeLessThan(90);
  expect(figure(ledger, 'porosity.low-pressure')).toBe(fill);
  expect(figure(ledger, 'porosity.gas-high') / figure(ledger, 'porosity.gas-low')).toBeCloseTo((3 * 90) / fill, 6);
});

test('vents that leave a third of the gas raise the low end', () => {
  const ledger = pinnedTo({ 'vent.area': '24 mm2' });
  expect(figure(ledger, 'vent.gas-left')).toBeGreaterThan(30);
  expect(figure(ledger, 'porosity.trapped-low')).toBe(figure(ledger, 'vent.gas-left'));
});

describe('gas against what the use allows', () => {
  test('a part to be welded under high vacuum holds less than the 5 cm3 allowed', () => {
    const ledger = pinnedTo({}, { quality: 'use: general, welded: true' });
    expect(ledger.text('porosity.need')).toBe('little-gas');
    expect(figure(ledger, 'porosity.gas-allowed')).toBe(5);
    expect(figure(ledger, 'porosity.gas-content-high')).toBeLessThan(5);
    const findings = findingsOf(ledger);
    expect(findings.has('porosity/gas-content') || findings.has('porosity/gas-content-likely')).toBe(false);
  });
  test('the same part vented to the air is an error that says which vacuum it needs', () => {
    const ledger = pinnedTo({ 'vent.kind': 'chill' }, { quality: 'heat_treatment: T6' });
    const finding = findingsOf(ledger).get('porosity/gas-content');
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toContain(`${((1013 * 5) / figure(ledger, 'porosity.gas-content-high')).toFixed(0)} mbar`);
  });
  test('a weak vacuum is good enough for a good shot only', () => {
    const ledger = pinnedTo({ 'vent.vacuum': 'standard' }, { quality: 'use: structural' });
    expect(findingsOf(ledger).has('porosity/gas-content')).toBe(false);
    expect(findingsOf(ledger).get('porosity/gas-content-likely')?.severity).toBe('warning');
  });
  test('an ordinary part is not judged by it', () => {
    const ledger = workTo('porosity', CASE);
    expect(ledger.text('porosity.need')).toBe('none');
    expect(ledger.values.has('porosity.gas-allowed')).toBe(false);
    const findings = findingsOf(ledger);
    expect([...findings.keys()].filter((code) => code.startsWith('porosity/gas'))).toEqual([]);
    expect(ledger.unchecked.filter((entry) => entry.id.startsWith('porosity/'))).toEqual([]);
  });
});

test('zinc in a hot chamber: gas under its static pressure, shrinkage of the family', () => {
  const ledger = workTo('porosity', LEVER);
  expect(figure(ledger, 'porosity.low-pressure')).toBe(figure(ledger, 'clamp.pressure-reached'));
  expect(figure(ledger, 'porosity.high')).toBeGreaterThan(figure(ledger, 'porosity.low'));
  expect(JSON.stringify(porosityStep.show(ledger))).not.toContain('ordinary');
});
