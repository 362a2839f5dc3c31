import { describe, expect, test } from 'vitest';
import { cycleRateStep } from '../../../src/engine/steps/cycle-rate/index.ts';
import { CASE, PINNED, pinnedTo, ratedOf, SMALL, YEAR } from './cycle-parts.ts';
import { figure, findingsOf, LID } from './work-to.ts';

describe('rate and hours', () => {
  const rated = ratedOf(CASE);
  const elements = figure(rated, 'cycle.elements-time');
  test('without lines the elements are the cycle', () => {
    expect(figure(rated, 'cycle.time')).toBe(elements);
    expect([figure(rated, 'cycle.wait'), rated.text('cycle.limited-by')]).toEqual([0, 'dwell']);
    expect(figure(rated, 'cycle.shots')).toBeCloseTo(3600 / elements, 9);
    expect(figure(rated, 'cycle.good-parts')).toBeCloseTo((3600 / elements) * 0.95, 9);
    expect(figure(rated, 'cycle.gain')).toBeCloseTo(100 / (elements - 1), 9);
  });
  test('lines that need longer make the machine wait', () => {
    const slow = ratedOf(CASE, elements + 6);
    expect(figure(slow, 'cycle.time')).toBeCloseTo(elements + 6, 9);
    expect(figure(slow, 'cycle.wait')).toBeCloseTo(6, 9);
    expect(slow.text('cycle.limited-by')).toBe('cooling lines');
    const quick = ratedOf(CASE, elements - 6);
    expect(figure(quick, 'cycle.time')).toBe(elements);
  });
  test('hours follow from the volume, and come back from the longest cycle', () => {
    const twice = ratedOf({ ...CASE, production: YEAR.replace('120000', '240000') });
    expect(figure(twice, 'cycle.hours')).toBeCloseTo(2 * figure(rated, 'cycle.hours'), 6);
    expect(figure(rated, 'cycle.hours')).toBeCloseTo((120000 * elements) / (3600 * 0.8 * 0.95), 6);
    expect(figure(rated, 'cycle.longest') / elements).toBeCloseTo(4000 / figure(rated, 'cycle.hours'), 9);
  });
  test('start-up: a run a month and a stop a shift', () => {
    const warming = 12 * 17.5 + (figure(rated, 'cycle.hours') / 8) * 5.5;
    expect(figure(rated, 'cycle.start-up-shots')).toBeCloseTo(warming, 6);
    expect(figure(rated, 'cycle.start-up-share')).toBeCloseTo((100 * warming * 0.95) / 120000, 9);
  });
  test('a part without a yearly volume has its rate and no hours', () => {
    const ledger = ratedOf({ ...LID, pinned: PINNED });
    expect(ledger.values.has('cycle.shots')).toBe(true);
    expect(ledger.values.has('cycle.hours')).toBe(false);
    expect(JSON.stringify(cycleRateStep.show(ledger))).not.toContain('cycle.hours');
  });
  test('shows cycle, rate, hours and start-up', () => {
    const shown = JSON.stringify(cycleRateStep.show(rated));
    for (const id of ['cycle.time', 'cycle.shots', 'machine.size-rate-least', 'machine.rate', 'cycle.hours', 'cycle.longest', 'cycle.start-up-share'])
      expect(shown).toContain(`"${id}"`);
  });
});

describe('limits, each with the number that helps', () => {
  test('more hours than the year has, with the cavities and the cycle that would do', () => {
    const ledger = ratedOf({ ...CASE, production: YEAR.replace('120000', '900000') });
    const finding = findingsOf(ledger).get('cycle/hours');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain(`at least ${figure(ledger, 'cycle.cavities-needed')} cavities`);
    expect(figure(ledger, 'cycle.cavities-needed')).toBe(Math.ceil(figure(ledger, 'cycle.hours') / 4000));
    expect(finding?.fix).toContain(`${figure(ledger, 'cycle.longest').toFixed(1)} s`);
    expect(findingsOf(ratedOf(CASE)).has('cycle/hours')).toBe(false);
  });
  test('more cavities than the volume needs', () => {
    const spare = (state: string) => {
      const ledger = ratedOf({ ...SMALL, pinned: { ...SMALL.pinned, 'machine.cavities': '4' } });
      ledger.setText('cost.state', state);
      return findingsOf(ledger).get('cycle/cavities-spare')?.fix;
    };
    // With prices the cheapest count speaks, and it may be a larger one.
    expect(spare('not worked out')).toContain('machine.cavities to 1');
    expect(spare('worked out')).toBeUndefined();
    expect(findingsOf(ratedOf(SMALL)).has('cycle/cavities-spare')).toBe(false);
  });
  test('a spraying shorter than the trade has', () => {
    expect(findingsOf(pinnedTo({ 'cycle.spray-each': '2.5 s' })).get('cycle/spray')?.fix).toContain('6.0 s');
    expect(findingsOf(pinnedTo({})).has('cycle/spray')).toBe(false);
  });
  test('a die that opens under pressure', () => {
    const finding = findingsOf(pinnedTo({ 'cooling.dwell': '4 s' })).get('cycle/hold');
    expect(finding?.message).toContain('5.5 s');
    expect(findingsOf(pinnedTo({})).has('cycle/hold')).toBe(false);
  });
  test('a die that stays shut for most of the cycle: the fix makes it the published share', () => {
    const ledger = pinnedTo({ 'cooling.dwell': '60 s' });
    const rest = figure(ledger, 'cycle.elements-time') - 60;
    expect(findingsOf(ledger).get('cycle/dwell-share')?.fix).toContain(`${(1.5 * rest).toFixed(1)} s`);
    expect(findingsOf(pinnedTo({})).has('cycle/dwell-share')).toBe(false);
  });
  test('a cycle longer than any of the trade, and a rate below that of the size', () => {
    const findings = findingsOf(ratedOf({ ...CASE, pinned: { ...PINNED, 'cooling.dwell': '230 s' } }));
    expect(findings.get('cycle/whole')?.fix).toContain('240 s');
    expect(findings.get('cycle/rate-slow')?.fix).toContain('60.0 s');
    for (const code of ['cycle/whole', 'cycle/rate-slow', 'cycle/rate-fast']) expect(findingsOf(ratedOf(CASE)).has(code)).toBe(false);
  });
  test('a cycle pinned below what its elements take', () => {
    const ledger = ratedOf({ ...CASE, pinned: { ...PINNED, 'cycle.time': '20 s' } });
    expect(ledger.text('cycle.limited-by')).toBe('pin');
    expect(findingsOf(ledger).get('cycle/below-elements')?.fix).toContain(`${(figure(ledger, 'cycle.elements-time') - 20).toFixed(1)} s`);
    expect(findingsOf(ratedOf(CASE)).has('cycle/below-elements')).toBe(false);
  });
  test('a rate far above that of the size', () => {
    const pins = { ...PINNED, 'cooling.dwell': '6 s', 'cycle.extract': '1 s', 'cycle.signals': '0.1 s', 'cycle.ladle': '1 s' };
    expect(findingsOf(ratedOf({ ...CASE, pinned: pins })).get('cycle/rate-fast')?.fix).toContain('30.0 s');
  });
  test('lots so short that starting them is the scrap', () => {
    const finding = findingsOf(ratedOf({ ...CASE, production: YEAR.replace('120000', '2000') })).get('cycle/start-up');
    expect(finding?.severity).toBe('warning');
    // 2000 / 0.95 shots, 5 % of them, 17.5 at each start.
    expect(finding?.fix).toContain('6.0 runs');
    expect(findingsOf(ratedOf(CASE)).has('cycle/start-up')).toBe(false);
  });
});
