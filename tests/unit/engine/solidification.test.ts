import { describe, expect, test } from 'vitest';
import { show } from '../../../src/engine/steps/solidification/show.ts';
import { figure, findingsOf, LEVER, LID, workTo } from './work-to.ts';

describe('an aluminium lid in a cold chamber', () => {
  const ledger = workTo('solidification', { ...LID, greatest: 6 });

  test('the slowest of wall, thickest wall, runner, biscuit and hold sets the time in the die', () => {
    const times = ['cooling.ejection-time', 'cooling.thick-time', 'cooling.runner-time', 'cooling.biscuit-time', 'intensification.hold'].map((id) =>
      figure(ledger, id),
    );
    expect(figure(ledger, 'cooling.dwell')).toBe(Math.max(...times));
    expect(ledger.texts.get('solidification.governs')).toBe('biscuit');
    expect(ledger.texts.get('cooling.slowest')).toBe('biscuit');
    expect(figure(ledger, 'cooling.rest-time')).toBe([...times.slice(0, 4)].sort((a, b) => b - a)[1]);
  });
  test('the biscuit freezes between a cooled tip and steel, so faster than between steel alone', () => {
    expect(figure(ledger, 'cooling.biscuit-time')).toBeGreaterThan(figure(ledger, 'cooling.biscuit-tip-time'));
    expect(figure(ledger, 'cooling.biscuit-time')).toBeLessThan(figure(ledger, 'cooling.biscuit-steel-time'));
    expect(figure(ledger, 'cooling.biscuit-wall')).toBeLessThan(figure(ledger, 'sleeve.biscuit-thickness'));
  });
  test('the planned time lies between those for the best and the worst heat transfer, and the solid wall before it', () => {
    const [fast, planned, slow] = ['-fast', '', '-slow'].map((end) => figure(ledger, `cooling.ejection-time${end}`)) as [number, number, number];
    expect([fast < planned, planned < slow, figure(ledger, 'cooling.solidification-time') < planned]).toEqual([true, true, true]);
  });
  test('both bounds lie below the heat solution', () => {
    for (const bound of ['cooling.interface-time', 'cooling.contact-time']) {
      expect(figure(ledger, bound)).toBeLessThan(figure(ledger, 'cooling.solidification-time'));
    }
  });
  test('the wall, ready before the biscuit, is colder when the die opens, but not as cold as the die', () => {
    expect(figure(ledger, 'cooling.opening-temperature')).toBeLessThan(figure(ledger, 'cooling.eject-temperature'));
    expect(figure(ledger, 'cooling.opening-temperature')).toBeGreaterThan(figure(ledger, 'fill.die-temperature'));
  });
  test('aluminium of 2.8 mm is in the die for about as long as the trade says', () => {
    expect(figure(ledger, 'cooling.dwell')).toBeGreaterThan(5);
    expect(figure(ledger, 'cooling.dwell')).toBeLessThan(15);
    expect(figure(ledger, 'cooling.ejection-time') / figure(ledger, 'cooling.handbook-time')).toBeGreaterThan(0.6);
    expect(figure(ledger, 'cooling.ejection-time') / figure(ledger, 'cooling.handbook-time')).toBeLessThan(1.7);
  });
  test('the section shows every time, and a figure of the wall', () => {
    const blocks = show(ledger);
    const table = blocks.find((block) => block.kind === 'table');
    expect(table?.kind === 'table' && table.rows.map(([name]) => name)).toEqual([
      'Nominal wall',
      'Thickest wall',
      'Gate',
      'Overflow',
      'Runner: main runner',
      'Biscuit',
    ]);
    const drawn = blocks.find((block) => block.kind === 'figure');
    if (drawn?.kind !== 'figure' || drawn.form !== 'chart') throw new Error('no chart');
    for (const curve of drawn.curves) for (const point of curve.points) expect(point.every(Number.isFinite)).toBe(true);
    expect(drawn.curves.find((curve) => curve.axis === 'right')?.points.at(-1)?.[1]).toBe(100);
  });
});

describe('other shots', () => {
  test('a hot chamber has no biscuit; small zinc parts are out after some seconds', () => {
    const ledger = workTo('solidification', LEVER);
    expect(figure(ledger, 'cooling.biscuit-time')).toBe(0);
    expect(figure(ledger, 'cooling.dwell')).toBeGreaterThan(1.5);
    expect(figure(ledger, 'cooling.dwell')).toBeLessThan(6);
  });
  test('with several cavities on one sprue its shell counts, or a run to the castings, whichever is the thicker wall; not the foot', () => {
    const ledger = workTo('solidification', { ...LEVER, pinned: { 'machine.cavities': '6' } });
    expect(ledger.value('runner.segment-length', 'main runner').value).toBe(0);
    // A foot of twice the area at the top, which is 1.1 times the metal at the foot: 0.2086 of the root of the area at the top.
    const shell = 0.2086 * Math.sqrt(figure(ledger, 'runner.segment-area[sprue]'));
    expect(Math.abs(figure(ledger, 'cooling.sprue-shell') / shell - 1)).toBeLessThan(1e-3);
    expect(shell).toBeGreaterThan(figure(ledger, 'cooling.bar-wall'));
    expect(ledger.texts.get('cooling.runner-run')).toBe('sprue');
    expect(figure(ledger, 'cooling.runner-wall')).toBe(figure(ledger, 'cooling.sprue-shell'));
    const one = workTo('solidification', { ...LEVER, pinned: { 'machine.cavities': '1', 'gate.count': '1' } });
    expect(one.texts.get('cooling.runner-run')).toBe('main runner');
    expect(figure(one, 'cooling.runner-depth')).toBe(one.value('runner.segment-depth', 'main runner').value);
  });
  test('a heavy spot that keeps the die closed is said, with the wall that would be ready with the rest', () => {
    const ledger = workTo('solidification', { ...LEVER, greatest: 9 });
    expect(ledger.texts.get('solidification.governs')).toBe('thickest wall');
    const finding = findingsOf(ledger).get('cooling/thick-governs');
    expect(finding?.severity).toBe('note');
    expect(finding?.fix).toContain(`${Number(figure(ledger, 'cooling.thick-for-rest').toFixed(1))} mm`);
  });
  test('a pinned time in the die is kept', () => {
    const ledger = workTo('solidification', { ...LID, pinned: { 'cooling.dwell': '7 s' } });
    expect(figure(ledger, 'cooling.dwell')).toBe(7);
  });
  test('an alloy without heat data has no such section, and the plan says what is missing', () => {
    const ledger = workTo('solidification', { ...LID, alloy: 'C99700' });
    expect(ledger.values.has('cooling.dwell')).toBe(false);
    expect(ledger.unchecked.some(({ missing }) => missing.includes('alloy.latent-heat'))).toBe(true);
    expect(show(ledger)).toEqual([]);
  });
});
