import { describe, expect, test } from 'vitest';
import { gooseneckStep } from '../../../src/engine/steps/gooseneck.ts';
import { figure, findingsOf, LEVER, LID, workTo } from './work-to.ts';

describe('a small zinc part in a hot chamber', () => {
  const ledger = workTo('gooseneck', LEVER);

  test('the area falls from the plunger to the gates, and the metal gathers speed', () => {
    const areas = ['gooseneck.plunger-area', 'gooseneck.channel-area', 'gooseneck.nozzle-area', 'gooseneck.runner-area', 'pq2.gate-area'].map((id) =>
      figure(ledger, id),
    );
    expect(areas).toEqual([...areas].sort((a, b) => b - a));
    const speeds = ['pot.plunger-speed', 'gooseneck.channel-speed', 'gooseneck.nozzle-speed', 'gooseneck.runner-speed', 'gate.velocity'].map((id) =>
      figure(ledger, id),
    );
    expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
  });
  test('the nozzle has at least 1.1 times the area of the main runner, the channel 1.1 times that of the nozzle', () => {
    expect(figure(ledger, 'gooseneck.nozzle-area') / figure(ledger, 'gooseneck.main-area')).toBeCloseTo(1.1, 6);
    expect(figure(ledger, 'gooseneck.channel-area') / figure(ledger, 'gooseneck.nozzle-area')).toBeCloseTo(1.1, 6);
  });
  test('the same metal passes every section', () => {
    const flow = figure(ledger, 'shot.flow');
    expect((figure(ledger, 'gooseneck.plunger-area') * figure(ledger, 'pot.plunger-speed')) / 1000).toBeCloseTo(flow, 6);
    expect((figure(ledger, 'gooseneck.nozzle-area') * figure(ledger, 'gooseneck.nozzle-speed')) / 1000).toBeCloseTo(flow, 6);
  });
  test('the pot is some tens of kelvin above the liquidus, the nozzle in between', () => {
    expect(figure(ledger, 'gooseneck.superheat')).toBeCloseTo(figure(ledger, 'pot.temperature') - figure(ledger, 'alloy.liquidus'), 9);
    expect(figure(ledger, 'gooseneck.superheat')).toBeGreaterThan(20);
    expect(figure(ledger, 'gooseneck.nozzle-least')).toBeLessThan(figure(ledger, 'gooseneck.nozzle-greatest'));
  });
  test('what limits the shot is the bound that is used most', () => {
    const uses = ['gooseneck.use-speed', 'pq2.machine-use', 'gooseneck.use-class-pressure', 'gooseneck.use-stroke', 'gooseneck.use-time'].map((id) =>
      figure(ledger, id),
    );
    expect(figure(ledger, 'gooseneck.greatest-use')).toBe(Math.max(...uses));
    const words = ['plunger speed', 'pressure while filling', 'pressure on the full die', 'shot stroke', 'fill time'];
    expect(ledger.texts.get('gooseneck.nearest-bound')).toBe(words[uses.indexOf(Math.max(...uses))]);
    expect(figure(ledger, 'gooseneck.use-stroke')).toBeCloseTo((100 * figure(ledger, 'pot.stroke-needed')) / figure(ledger, 'machine.shot-stroke'), 9);
  });
  test('the section says that there is no intensifier', () => {
    expect(JSON.stringify(gooseneckStep.show(ledger))).toContain('no intensifier');
  });
});

test('a shot just inside its nearest bound is noted', () => {
  const base = workTo('gooseneck', LEVER);
  const time = (figure(base, 'fill.longest-time') * 0.98).toFixed(4);
  const ledger = workTo('gooseneck', { ...LEVER, pinned: { 'fill.time': `${time} ms` } });
  expect(figure(ledger, 'gooseneck.use-time')).toBeCloseTo(98, 1);
  const finding = findingsOf(ledger).get('gooseneck/margin');
  expect(finding?.message).toContain('fill time');
});

test('the pressure of the plunger is held against the range of the family', () => {
  const ledger = workTo('gooseneck', { ...LEVER, pinned: { 'machine.metal-pressure': '45 MPa' } });
  expect(findingsOf(ledger).get('gooseneck/pressure-window')?.fix).toContain('34 MPa');
});

test('a cold chamber has no gooseneck', () => {
  const ledger = workTo('gooseneck', LID);
  findingsOf(ledger);
  expect(gooseneckStep.show(ledger)).toEqual([]);
  expect(ledger.unchecked.filter(({ id }) => id.startsWith('gooseneck/'))).toEqual([]);
});
