import { describe, expect, test } from 'vitest';
import { ventBalanceStep } from '../../../src/engine/steps/vent-balance/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'fill.time': '35 ms', 'overflow.volume': '50 cm3', 'runner.volume': '100 cm3', 'machine.cavities': '1', 'vent.runner-gas': '100 cm3' };
const CASE: SmallPart = { ...LID, volume: 250, pinned: PINNED };
const pinnedTo = (pins: Readonly<Record<string, string>>, more: Partial<SmallPart> = {}) =>
  workTo('vent-balance', { ...CASE, ...more, pinned: { ...PINNED, ...pins } });
const near = (actual: number, expected: number, within: number): void => expect(Math.abs(actual - expected)).toBeLessThanOrEqual(within);

describe('chill vents of an aluminium casting, worked by hand', () => {
  const ledger = workTo('vent-balance', CASE);
  // Gap 0.65 mm, 28 mm of passage: 4 x 0.012 x 28 / 1.3 = 1.034; Fanno flow gives 151 m/s there (151.8 at 1). 400 cm3 in 35 ms: 75.7 mm2.
  test.each([
    ['vent.passage-friction', 1.0338, 1e-3],
    ['vent.critical-area', 75.73, 0.3],
    ['vent.area', 76.19, 0.01],
    ['vent.area-ratio', 1.006, 0.004],
    ['vent.start-pressure', 1013, 0],
    ['vent.back-pressure', 1, 0],
  ])('%s is %d', (id, expected, within) => near(figure(ledger, id), expected, within));

  test('the residual pressure is the start times the ratio, and the gas left follows from it', () => {
    const times = figure(ledger, 'vent.residual-pressure');
    expect(times).toBeGreaterThan(1.4);
    expect(times).toBeLessThan(1.62);
    near(figure(ledger, 'vent.residual-bar'), 1.013 * times, 1e-9);
    near(figure(ledger, 'vent.gas-left'), 10 * times ** (1 / 1.4), 1e-9);
  });

  test('plain vents would fit on the parting line for a third of what they need and leave many times the air', () => {
    near(figure(ledger, 'vent.kind-area[plain]'), figure(ledger, 'vent.width-available') * 0.11, 1e-9);
    expect(figure(ledger, 'vent.kind-ratio[plain]')).toBeLessThan(0.35);
    expect(figure(ledger, 'vent.kind-bar[plain]')).toBeGreaterThan(5);
  });

  test('vacuum of the standard class would start at 250 mbar, its tank at 100 mbar', () => {
    expect([figure(ledger, 'vent.kind-start[vacuum]'), figure(ledger, 'vent.kind-behind[vacuum]')]).toEqual([250, 100]);
    expect(figure(ledger, 'vent.kind-ratio[vacuum]')).toBe(1);
    near(figure(ledger, 'vent.kind-bar[vacuum]'), 0.25, 0.01);
  });

  test('1.5 and 2 times the critical area leave less, and the area for twice the air is smaller than planned', () => {
    near(figure(ledger, 'vent.area-pays-least'), 1.5 * figure(ledger, 'vent.critical-area'), 1e-9);
    expect(figure(ledger, 'vent.residual-pays-greatest')).toBeLessThan(figure(ledger, 'vent.residual-pays-least'));
    expect(figure(ledger, 'vent.residual-pays-least')).toBeLessThan(figure(ledger, 'vent.residual-bar'));
    expect(figure(ledger, 'vent.residual-greatest')).toBe(2);
    expect(figure(ledger, 'vent.area-for-pressure')).toBeLessThan(figure(ledger, 'vent.area'));
    expect(findingsOf(ledger).has('vent/residual-pressure')).toBe(false);
  });

  test('the figure has the planned kind solid, the others dashed, and the mark at nine tenths of the stroke', () => {
    const [drawing] = ventBalanceStep.show(ledger).flatMap((block) => (block.kind === 'figure' && block.form === 'chart' ? [block] : []));
    expect(drawing?.id).toBe('cavity-gas');
    expect(drawing?.curves.map((curve) => [curve.title, curve.dashed ?? false])).toEqual([
      ['chill vents, planned', false],
      ['plain vents', true],
      ['vacuum', true],
    ]);
    const [mark] = drawing?.marks ?? [];
    expect([mark?.x, mark?.y]).toEqual([0.9 * 35, figure(ledger, 'vent.residual-bar')]);
    const [own, plain] = drawing?.curves ?? [];
    expect(own?.points[0]).toEqual([0, 1.013]);
    // The curve runs through the mark: the two points beside it bracket it.
    const after = own?.points.findIndex(([time]) => time > 31.5) ?? -1;
    const [before, next] = [own?.points[after - 1], own?.points[after]];
    expect(before?.[1]).toBeLessThanOrEqual((mark?.y ?? 0) + 1e-3);
    expect(next?.[1]).toBeGreaterThanOrEqual((mark?.y ?? 0) - 1e-3);
    // Plain vents leave the drawing, at one height and not later than the planned kind ends.
    const top = Math.max(...(plain?.points.map(([, pressure]) => pressure) ?? []));
    expect(top).toBeLessThan(figure(ledger, 'vent.kind-bar[plain]'));
    expect(plain?.points.at(-1)?.[1]).toBe(top);
  });
});

describe('600 cm3 of gas with friction 3, against figures computed apart from this program', () => {
  // Vents of A / A_c = 0.5, 1, 2 into the air: 4.64, 1.62, 1.09 times the start at nine tenths of the stroke.
  test.each([
    [0.5, 4.64, 0.02],
    [1, 1.62, 0.006],
    [2, 1.09, 0.006],
  ])('area ratio %d leaves %d times', (ratio, expected, within) => {
    const critical = (1000 * 400) / (35 * 117.7);
    const ledger = pinnedTo({ 'vent.kind': 'plain', 'vent.friction-length': '3', 'vent.area': `${ratio * critical} mm2` });
    near(figure(ledger, 'vent.critical-area'), critical, 0.05);
    near(figure(ledger, 'vent.residual-pressure'), expected, within);
  });

  test('too small a vent is a warning that says how large it must be', () => {
    const ledger = pinnedTo({ 'vent.kind': 'plain', 'vent.friction-length': '3', 'vent.area': '50 mm2' });
    const finding = findingsOf(ledger).get('vent/residual-pressure');
    expect(finding?.severity).toBe('warning');
    const needed = figure(ledger, 'vent.area-for-pressure');
    expect(finding?.fix).toContain(`${needed.toFixed(0)} mm2`);
    // The advice followed brings the pressure to what is wanted.
    const after = pinnedTo({ 'vent.kind': 'plain', 'vent.friction-length': '3', 'vent.area': `${Math.ceil(needed)} mm2` });
    expect(findingsOf(after).has('vent/residual-pressure')).toBe(false);
  });

  test('vents several times the critical area are a note that says what is enough', () => {
    const ledger = pinnedTo({ 'vent.area': '400 mm2' });
    expect(findingsOf(ledger).get('vent/oversized')?.fix).toContain('151 mm2');
  });

  test('pressure-tight parts want less than vents of the critical area leave, so theirs are larger', () => {
    const ledger = pinnedTo({}, { quality: 'use: pressure-tight' });
    expect(figure(ledger, 'vent.residual-greatest')).toBe(1.3);
    expect(figure(ledger, 'vent.area')).toBeCloseTo(1.4 * figure(ledger, 'vent.choked-area'), 9);
    // What all air of the sleeve would ask for stands beside it, with the same reserve.
    const each = figure(ledger, 'vent.area') / figure(ledger, 'vent.gas-volume');
    expect(figure(ledger, 'vent.all-gas-area') / figure(ledger, 'vent.all-gas-volume')).toBeCloseTo(each, 9);
    expect(findingsOf(ledger).has('vent/residual-pressure')).toBe(false);
    const critical = pinnedTo({ 'vent.area': `${figure(ledger, 'vent.choked-area')} mm2` }, { quality: 'use: pressure-tight' });
    expect(findingsOf(critical).get('vent/residual-pressure')?.message).toContain('chill vents');
  });
});

describe('a die under vacuum', () => {
  const ledger = pinnedTo({}, { quality: 'use: structural' });

  test('starts at the high end of its class with the tank at the low end: 50 and 20 mbar', () => {
    expect([figure(ledger, 'vent.start-pressure'), figure(ledger, 'vent.back-pressure')]).toEqual([50, 0.4]);
    near(figure(ledger, 'vent.residual-bar'), 0.05 * figure(ledger, 'vent.residual-pressure'), 1e-12);
    expect(figure(ledger, 'vent.residual-pressure')).toBeLessThan(1.1);
  });

  test('the air of the sleeve is drawn off too, e-fold by e-fold: V / (A v) ln(1013 / 50)', () => {
    // What the plunger swept until the pour hole was closed, 1.25 plungers long, has gone back out of it.
    const swept = (Math.PI * figure(ledger, 'machine.plunger') ** 2 * 1.25 * figure(ledger, 'machine.plunger')) / 4000;
    const volume = figure(ledger, 'vent.all-gas-volume') - swept;
    near(figure(ledger, 'vent.evacuated-volume'), volume, 1e-9);
    expect(volume).toBeGreaterThan(figure(ledger, 'vent.gas-volume'));
    near(figure(ledger, 'vent.evacuation-time'), ((1000 * volume) / (figure(ledger, 'vent.area') * 168.72)) * Math.log(1013 / 50), 0.5);
    near(figure(ledger, 'vent.tank-volume'), (volume / 1000) * (963 / 50), 1e-6);
  });

  test('too narrow a passage does not get there in the slow shot', () => {
    const narrow = pinnedTo({ 'vent.area': '8 mm2' }, { quality: 'use: structural' });
    expect(findingsOf(narrow).get('vent/evacuation-time')?.severity).toBe('warning');
  });
});

test('a zinc lever is balanced too, with vents of its own depth', () => {
  const ledger = workTo('vent-balance', LEVER);
  near(figure(ledger, 'vent.kind-friction[plain]'), 7.0588, 1e-3);
  expect(figure(ledger, 'vent.residual-bar')).toBeGreaterThan(1);
  expect(figure(ledger, 'vent.residual-bar')).toBeLessThan(3);
});

test('without gas to count there is no section', () => {
  const ledger = workTo('vent-balance', { ...CASE, alloy: 'CY44A', pinned: {} });
  expect(ventBalanceStep.show(ledger)).toEqual([]);
});
