import { describe, expect, test } from 'vitest';
import { heatStep } from '../../../src/engine/steps/heat/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const heatOf = (part: SmallPart, pins: Readonly<Record<string, string>> = {}) => workTo('heat', { ...part, pinned: { ...part.pinned, ...pins } });
const near = (value: number, expected: number, relative = 1e-9): void => expect(Math.abs(value - expected)).toBeLessThanOrEqual(relative * Math.abs(expected));

describe('a lid in A380, followed by hand', () => {
  const ledger = heatOf(LID);
  const at = (id: string): number => figure(ledger, id);

  test('heat per kilogram is the sum of its parts, about 700 kJ', () => {
    near(at('heat.liquid') + at('alloy.latent-heat') + at('heat.mushy') + at('heat.solid'), at('heat.per-mass'));
    expect(at('heat.per-mass')).toBeGreaterThan(640);
    expect(at('heat.per-mass')).toBeLessThan(780);
  });
  test('castings leave no hotter than they may, thick metal between that and the solidus', () => {
    expect(at('heat.leaves[casting]')).toBeLessThanOrEqual(at('cooling.eject-temperature'));
    near(at('heat.leaves[thick metal]'), (at('cooling.eject-temperature') + at('alloy.solidus')) / 2);
    expect(at('heat.each[casting]')).toBeGreaterThan(at('heat.each[thick metal]'));
  });
  test('the shot is the sum of its metal, and its masses are those of the shot', () => {
    near(at('heat.casting') + at('heat.overflow') + at('heat.runner') + at('heat.biscuit'), at('heat.per-shot'));
    near(at('part.mass') + at('overflow.mass') + at('heat.runner-mass') + at('heat.biscuit-mass'), at('shot.mass'), 1e-6);
    near(at('heat.casting'), at('part.mass') * at('heat.each[casting]'));
    near(at('heat.die'), at('heat.per-shot') - at('heat.biscuit') / 2);
  });
  test('the face is two sides of the wall, the overflows, the runner and the end of the biscuit', () => {
    near(at('heat.casting-face'), (20 * 412) / 2.8);
    const plunger = at('machine.plunger');
    const [each, number] = [at('overflow.area') / at('overflow.number'), at('overflow.number')];
    const sides = (number * 4 * Math.sqrt(each) * at('overflow.depth')) / 10;
    near(at('heat.face-area'), at('heat.casting-face') + 2 * at('overflow.area') + sides + at('heat.runner-face') + (Math.PI * plunger ** 2) / 400);
    near(at('heat.per-area'), (10000 * at('heat.die')) / at('heat.face-area'));
  });
  test('shares make 100 %, lines get what the others leave', () => {
    expect([at('heat.share-spray'), at('heat.share-surroundings'), at('heat.share-lines')]).toEqual([30, 10, 60]);
    near(at('heat.lines-rate') + at('heat.spray-planned') + at('heat.surroundings-planned'), at('heat.die-rate'));
    near(at('heat.rate'), at('heat.per-shot') / at('cycle.elements-time'));
    expect(ledger.value('heat.share-spray').kind).toBe('assumption');
    expect(ledger.text('heat.duty')).toBe('cool');
  });
  test('what spray and surroundings could take lies near the shares of practice', () => {
    const share = (100 * at('heat.losses')) / at('heat.die-rate');
    expect(share).toBeGreaterThan(15);
    expect(share).toBeLessThan(55);
  });
  test('is shown with its metal, its faces and where the heat goes', () => {
    const shown = JSON.stringify(heatStep.show(ledger));
    for (const text of ['Metal of a shot', 'Die face that takes the heat', 'Where the heat of the die goes', 'gives no surface area'])
      expect(shown).toContain(text);
  });
});

test('half the cycle brings twice the heat rate', () => {
  const [slow, fast] = ['60 s', '30 s'].map((time) => heatOf(LID, { 'cycle.elements-time': time }));
  near(figure(fast as never, 'heat.rate'), 2 * figure(slow as never, 'heat.rate'));
  near(figure(fast as never, 'heat.lines-rate'), 2 * figure(slow as never, 'heat.lines-rate'));
});

test('a given surface area stands, and is held against volume and wall', () => {
  const lid = (area: string) => heatOf(LID, { 'heat.casting-face': area });
  expect(findingsOf(lid('2800 cm2')).has('heat/face')).toBe(false);
  expect(findingsOf(lid('900 cm2')).get('heat/face')?.fix).toContain('9.2 mm');
});

test('zinc in a hot chamber has no biscuit, no tip, and a sixth of the heat per kilogram', () => {
  const ledger = heatOf(LEVER);
  for (const id of ['heat.biscuit', 'heat.tip', 'heat.biscuit-face']) expect(ledger.values.has(id)).toBe(false);
  near(figure(ledger, 'heat.die'), figure(ledger, 'heat.per-shot'));
  expect(figure(ledger, 'heat.per-mass')).toBeGreaterThan(140);
  expect(figure(ledger, 'heat.per-mass')).toBeLessThan(175);
});

test('several cavities bring as many times the heat of castings and overflows', () => {
  const [one, four] = ['1', '4'].map((cavities) => heatOf(LEVER, { 'machine.cavities': cavities, 'cooling.opening-temperature': '280 degC' }));
  near(figure(four as never, 'heat.casting'), 4 * figure(one as never, 'heat.casting'));
  near(figure(four as never, 'heat.cavity-face'), 4 * figure(one as never, 'heat.cavity-face'));
});

describe('the split', () => {
  test('a pinned spray leaves the lines less, and an odd split is noted with the share to plan', () => {
    const ledger = heatOf(LID, { 'heat.share-spray': '55 %' });
    near(figure(ledger, 'heat.share-lines'), 35);
    expect(findingsOf(ledger).get('heat/shares')?.fix).toContain('40 %');
    expect(findingsOf(heatOf(LID)).has('heat/shares')).toBe(false);
  });
  test('in a cycle long enough nothing is left for the lines', () => {
    const ledger = heatOf(LID, { 'cycle.elements-time': '600 s' });
    expect(ledger.text('heat.duty')).toBe('heat');
    near(figure(ledger, 'heat.missing'), figure(ledger, 'heat.losses') - figure(ledger, 'heat.die-rate'), 1e-2);
    expect(findingsOf(ledger).get('cooling/heating')?.severity).toBe('warning');
    expect(findingsOf(heatOf(LID)).has('cooling/heating')).toBe(false);
  });
  test('a spray that takes more than the shots bring is another case: no cycle mends it', () => {
    const ledger = heatOf(LID, { 'cycle.spray': '100 s' });
    expect(figure(ledger, 'heat.losses') - figure(ledger, 'heat.surroundings-rate')).toBeGreaterThan(figure(ledger, 'heat.die-rate'));
    const findings = findingsOf(ledger);
    expect(findings.has('cooling/heating')).toBe(false);
    // 34.32 - 3.17 = 31.15 kW against 9.31 kW.
    expect(findings.get('cooling/spray-heat')?.fix).toContain('Spray 70 % less');
  });
  test('a long cycle in which spray and surroundings take most of it is noted', () => {
    const ledger = workTo('cooling', { ...LID, pinned: { 'cycle.elements-time': '250 s' } });
    expect(ledger.text('heat.duty')).toBe('cool');
    expect(findingsOf(ledger).has('heat/little-left')).toBe(true);
    expect(findingsOf(workTo('cooling', LID)).has('heat/little-left')).toBe(false);
  });
});

test('lead, whose record has no heat data, loses the balance and says so', () => {
  const ledger = heatOf({ ...LEVER, alloy: 'Pb-5Sb', quality: 'use: general' });
  expect(ledger.values.has('heat.per-shot')).toBe(false);
  expect(ledger.unchecked.some(({ id }) => id === 'heat.per-mass')).toBe(true);
  const ours = /table (heat\/|cooling\/(line|layout|medium|coolant|flow|parts|core|pressure))/;
  expect(ledger.findings.filter(({ message }) => ours.test(message))).toEqual([]);
  expect(ledger.text('heat.duty')).toBe('cool');
});
