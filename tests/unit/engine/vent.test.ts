import { describe, expect, test } from 'vitest';
import { ventStep } from '../../../src/engine/steps/vent.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'fill.time': '35 ms', 'overflow.volume': '50 cm3', 'runner.volume': '100 cm3' };
const CASE: SmallPart = { ...LID, volume: 250, pinned: PINNED };

describe('vents of an aluminium casting, worked by hand', () => {
  // 250 cavity + 50 overflows = 300 cm3 in 35 ms; the runner is full by then. Vent 0.11 mm deep, land 25 mm: 4 x 0.012 x 25 / 0.22 = 5.4545.
  // Choked with that friction about 97.8 m/s (table of hand-worked Fanno flow: 100.7 m/s at 5, 78.6 m/s at 10): 87.6 mm2, 797 mm of width.
  const ledger = workTo('vent', CASE);
  test.each([
    ['vent.gas-volume', 300, 1e-9],
    ['vent.die-gas-volume', 400, 1e-9],
    ['vent.depth', 0.11, 1e-9],
    ['vent.land', 25, 1e-9],
    ['vent.friction-length', 5.4545, 1e-4],
    ['vent.choked-velocity', 97.8, 1e-3],
    ['vent.plain-area', 87.64, 1e-3],
    ['vent.plain-width', 796.7, 1e-3],
  ])('%s is %d', (id, expected, tolerance) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThanOrEqual(tolerance * expected);
  });

  test('the Fanno velocity lies between the figures worked by hand for 5 and for 10', () => {
    expect(figure(ledger, 'vent.choked-velocity')).toBeLessThan(100.7);
    expect(figure(ledger, 'vent.choked-velocity')).toBeGreaterThan(78.6);
  });

  test('plain vents do not fit, so chill vents are planned: 300 cm3 in 35 ms at 150 m/s are 57.1 mm2, 88 mm at a gap of 0.65 mm', () => {
    expect(ledger.text('vent.kind')).toBe('chill');
    expect(ledger.decisions.get('vent.kind')?.because).toContain('more width');
    expect(Math.abs(figure(ledger, 'vent.area') - 57.14)).toBeLessThan(0.01);
    expect(Math.abs(figure(ledger, 'vent.width') - 87.9)).toBeLessThan(0.1);
    expect(ledger.text('vent.vacuum')).toBe('none');
  });

  test('the air of the sleeve stands beside it, not in it', () => {
    expect(figure(ledger, 'vent.sleeve-air')).toBe(0);
    expect(figure(ledger, 'vent.all-gas-volume')).toBeCloseTo(400 + figure(ledger, 'sleeve.air-volume'), 9);
    expect(figure(ledger, 'vent.all-gas-area')).toBeCloseTo((1000 * figure(ledger, 'vent.all-gas-volume')) / (35 * 150), 9);
    expect(JSON.stringify(ventStep.show(ledger))).toContain('vent.all-gas-area');
  });

  test('gas that leaves at the flow of the metal takes the same area, however long the runner', () => {
    const long = workTo('vent', { ...CASE, pinned: { ...PINNED, 'runner.volume': '300 cm3' } });
    expect(figure(long, 'vent.area')).toBe(figure(ledger, 'vent.area'));
    expect(figure(ledger, 'vent.area')).toBeCloseTo((1e6 * (300 / 35)) / 1000 / 150, 6);
  });

  test('the area is held against the 20 to 50 % of the trade', () => {
    expect(figure(ledger, 'vent.gate-share')).toBeCloseTo((100 * figure(ledger, 'vent.area')) / figure(ledger, 'gate.area'), 9);
    expect(figure(ledger, 'vent.gate-share')).toBeGreaterThan(20);
    expect(figure(ledger, 'vent.gate-share')).toBeLessThan(50);
  });
});

describe('600 cm3 of gas in 35 ms, worked by hand', () => {
  // 250 cavity + 50 overflows + 300 sleeve and runner gas: 50.4 mm2 at 340, 85.7 at 200, 171.4 mm2 at 100 m/s; 714 mm of width for 85.7 mm2 at 0.12 mm.
  test.each([
    ['340 m/s', 50.4],
    ['200 m/s', 85.7],
    ['100 m/s', 171.4],
  ])('at %s: %d mm2', (velocity, expected) => {
    const ledger = workTo('vent', { ...CASE, pinned: { ...PINNED, 'vent.runner-gas': '100 cm3', 'vent.sleeve-air': '200 cm3', 'vent.velocity': velocity } });
    expect(figure(ledger, 'vent.gas-volume')).toBe(600);
    expect(Math.abs(figure(ledger, 'vent.area') - expected)).toBeLessThan(0.05);
  });

  test('85.7 mm2 of plain vents 0.12 mm deep are 714 mm wide, too wide for the parting line', () => {
    const pins = {
      ...PINNED,
      'vent.runner-gas': '100 cm3',
      'vent.sleeve-air': '200 cm3',
      'vent.velocity': '200 m/s',
      'vent.choked-velocity': '200 m/s',
      'vent.depth': '0.12 mm',
      'vent.kind': 'plain',
    };
    const ledger = workTo('vent', { ...CASE, pinned: pins });
    expect(Math.abs(figure(ledger, 'vent.width') - 714)).toBeLessThan(0.5);
    expect(figure(ledger, 'vent.number')).toBe(29);
    const findings = findingsOf(ledger);
    expect(findings.get('vent/room')?.severity).toBe('warning');
    expect(ledger.decisions.get('vent.kind')?.because).toContain('the table says chill');
  });

  test('without friction the velocity is the 200.9 m/s of air at 300 K', () => {
    const ledger = workTo('vent', { ...CASE, pinned: { ...PINNED, 'vent.friction-length': '0.0001' } });
    expect(Math.abs(figure(ledger, 'vent.choked-velocity') - 200.9)).toBeLessThan(2);
  });
});

describe('vents of a zinc lever, worked by hand', () => {
  // 22 + 11 = 33 cm3, no sleeve. Depth 0.085 mm: friction length 4 x 0.012 x 25 / 0.17 = 7.06.
  const ledger = workTo('vent', { ...LEVER, pinned: { 'runner.volume': '2.677 cm3' } });
  test('gas, friction and depth', () => {
    expect(Math.abs(figure(ledger, 'vent.gas-volume') - 33)).toBeLessThan(0.01);
    expect(Math.abs(figure(ledger, 'vent.friction-length') - 7.0588)).toBeLessThan(0.001);
    expect(figure(ledger, 'vent.depth')).toBeCloseTo(0.085, 9);
    expect(ledger.values.has('vent.all-gas-volume')).toBe(false);
  });
  test('the gap of the chill vent says that it is published for aluminium', () => {
    expect(ledger.text('vent.kind')).toBe('chill');
    expect(ledger.value('vent.chill-gap').note).toContain('published for aluminium');
  });
});

describe('kind of venting and vacuum', () => {
  const kindOf = (part: SmallPart) => {
    const ledger = workTo('vent', part);
    return [ledger.text('vent.kind'), ledger.text('vent.vacuum')];
  };

  test.each([
    ['use: structural', 'vacuum', 'high'],
    ['use: general, heat_treatment: T6', 'vacuum', 'high'],
    ['use: general, welded: true', 'vacuum', 'high'],
    ['use: general, heat_treatment: T5', 'chill', 'none'],
    ['use: pressure-tight', 'chill', 'none'],
  ])('%s: %s, %s', (quality, kind, vacuum) => {
    expect(kindOf({ ...CASE, quality })).toEqual([kind, vacuum]);
  });

  test('high vacuum is 20 to 50 mbar, and the area is that of a valve', () => {
    const ledger = workTo('vent', { ...CASE, quality: 'use: structural' });
    expect([figure(ledger, 'vent.vacuum-pressure-least'), figure(ledger, 'vent.vacuum-pressure')]).toEqual([20, 50]);
    expect(figure(ledger, 'vent.velocity')).toBe(170);
    expect(ledger.values.has('vent.width')).toBe(false);
  });

  test('pressure-tight parts have vacuum as an alternative, a good one when it is pinned', () => {
    const ledger = workTo('vent', { ...CASE, quality: 'use: pressure-tight' });
    expect(ledger.decisions.get('vent.kind')?.alternatives.map((a) => a.value)).toContain('vacuum');
    expect(kindOf({ ...CASE, quality: 'use: pressure-tight', pinned: { ...PINNED, 'vent.kind': 'vacuum' } })).toEqual(['vacuum', 'good']);
  });

  test('a small thick part with a long parting line gets plain vents', () => {
    const part: SmallPart = { alloy: 'C85800', volume: 40, wall: 3.5, area: 20, envelope: [60, 50, 40] };
    const ledger = workTo('vent', part);
    expect(ledger.text('vent.kind')).toBe('plain');
    expect(figure(ledger, 'vent.width')).toBeLessThanOrEqual(figure(ledger, 'vent.width-available'));
    expect(figure(ledger, 'vent.velocity')).toBe(figure(ledger, 'vent.choked-velocity'));
  });

  test('a part to be solution treated but pinned to chill vents is an error', () => {
    const ledger = workTo('vent', { ...CASE, quality: 'heat_treatment: T6', pinned: { ...PINNED, 'vent.kind': 'chill' } });
    expect(findingsOf(ledger).get('vent/vacuum-needed')?.severity).toBe('error');
  });

  test('a vent too deep for the metal to freeze in is a warning', () => {
    const ledger = workTo('vent', { ...CASE, pinned: { ...PINNED, 'vent.depth': '0.3 mm' } });
    expect(findingsOf(ledger).get('vent/depth')?.fix).toContain('0.12 mm');
  });
});
