import { describe, expect, test } from 'vitest';
import type { Chart } from '../../../src/engine/plan.ts';
import { slowShotStep } from '../../../src/engine/steps/slow-shot/index.ts';
import { workWave } from '../../../src/engine/steps/slow-shot/wave.ts';
import { formatQuantity } from '../../../src/kernel/format.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

/** A cold-chamber machine of one plunger, so that nothing is left to the search. */
function plantOf({ plunger, sleeve, stroke = 480, dry = 5 }: { plunger: number; sleeve: number; stroke?: number; dry?: number }): string {
  return [
    'diewright: plant/1',
    'plant: { name: One machine, invented: true }',
    'machines:',
    '  - id: only',
    '    chamber: cold',
    '    shot: horizontal',
    '    locking_force: 8000 kN',
    '    tie_bar_clearance: [900 mm, 900 mm]',
    '    die_height: [300 mm, 950 mm]',
    '    opening_stroke: 700 mm',
    '    ejector: { force: 300 kN, stroke: 180 mm }',
    '    shot_end:',
    `      plungers: [${plunger} mm]`,
    `      sleeve_length: ${sleeve} mm`,
    `      stroke: ${stroke} mm`,
    '      cylinder_diameter: 140 mm',
    '      pressure_fill: 14 MPa',
    '      pressure_intensified: 32 MPa',
    `      dry_speed: ${dry} m/s`,
    '    dry_cycle: 6 s',
    '',
  ].join('\n');
}

const PINS = {
  'alloy.density': '2.5 g/cm3',
  'overflow.volume': '60 cm3',
  'runner.volume': '150 cm3',
  'sleeve.biscuit-thickness': '25 mm',
  'fill.time': '50 ms',
};
/** 500 cm3 of casting with 60 cm3 of overflows and 150 cm3 of runner, filled in 50 ms; all volumes at 2.5 g/cm3. */
const EXAMPLE: SmallPart = { ...LID, volume: 500, pinned: PINS };
const PLANT = plantOf({ plunger: 70, sleeve: 400 });
const pinned = (more: Readonly<Record<string, string>>, plant = PLANT) => workTo('slow-shot', { ...EXAMPLE, pinned: { ...PINS, ...more } }, plant);
const own = (ledger: ReturnType<typeof pinned>): string[] => [...findingsOf(ledger).keys()].filter((code) => code.startsWith('slow-shot/')).sort();

describe('sleeve of 70 x 400 mm, 52.37 % full, worked by hand', () => {
  const ledger = workTo('slow-shot', EXAMPLE, PLANT);
  test.each([
    // Critical speeds 0.458 (linear), 0.455 (energy), 0.490 m/s (momentum); 0.490 / 0.455 = 1.077.
    ['slow-shot.linear-speed', 0.458, 0.0005],
    ['sleeve.critical-speed-energy', 0.455, 0.0005],
    ['sleeve.critical-speed-momentum', 0.49, 0.0005],
    ['slow-shot.balance-difference', 7.8, 0.15],
    ['slow-shot.speed', 0.455, 0.0005],
    ['sleeve.travel-when-full', 190.5, 0.05],
    ['sleeve.travel-at-gate', 229.5, 0.05],
    // 2.910 m/s, the ramp from 0.455 m/s at 150 m/s2 takes 27.54 mm.
    ['sleeve.fast-speed', 2.91, 0.0005],
    ['slow-shot.fast-acceleration', 150, 1e-9],
    ['slow-shot.change-over', 201.95, 0.05],
    ['slow-shot.travel-fast', 229.5, 0.05],
    // The die is 0.6 % larger than the casting: 560 x 1.018 = 570.1 cm3 on 38.48 cm2 behind the gate.
    ['slow-shot.travel-filled', 377.65, 0.05],
    ['slow-shot.travel-end', 375, 1e-9],
    // 2 + 0.0048 x 806.2 s; between 30 and 75 % fill, 50 to 20 K: 35.1 K at 52.37 %.
    ['slow-shot.ladle-time', 5.87, 0.005],
    ['slow-shot.loss-by-fill', 35.1, 0.05],
    // Pour hole of 1.25 diameters, closed at 0.3 m/s: 583 ms; a quarter of the 103 mm to the full sleeve for the ramp.
    ['slow-shot.travel-hole-closed', 87.5, 1e-9],
    ['slow-shot.time-start', 583.3, 0.05],
    ['slow-shot.travel-ramp-end', 113.25, 0.05],
    // 25.75 mm at a mean of 0.3775 m/s; 88.7 mm at 0.455 m/s; the sum is 0.847 s.
    ['slow-shot.time-ramp', 68.2, 0.2],
    ['slow-shot.time-steady', 195, 0.5],
    ['slow-shot.time', 0.847, 0.001],
    // 148.15 mm, the last 12.5 of them at a mean of 1.68 m/s: 135.65 / 2.91 + 12.5 / 1.6825 = 54.0 ms.
    ['slow-shot.fill-duration', 54.04, 0.1],
  ] as const)('%s is %d', (id, expected, tolerance) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThanOrEqual(tolerance);
  });

  test('no rule of the slow shot objects', () => {
    expect(own(ledger)).toEqual([]);
  });

  test('the section gives positions, the sequence and one line on the wave that was not computed', () => {
    const text = JSON.stringify(slowShotStep.show(ledger));
    for (const id of [
      'sleeve.travel-when-full',
      'sleeve.travel-at-gate',
      'slow-shot.change-over',
      'slow-shot.travel-end',
      'slow-shot.time-brake',
      'slow-shot.time',
    ]) {
      expect(text).toContain(id);
    }
    expect(text).toContain('not computed');
    expect(text).not.toContain('slow-shot.wave-trapped');
  });

  test('the figure runs over the whole travel, with speeds and positions of the plan', () => {
    const drawn = slowShotStep.show(ledger).filter((block): block is Chart => block.kind === 'figure' && block.form === 'chart');
    expect(drawn.map(({ id }) => id)).toEqual(['shot-profile']);
    const { curves, marks, right } = drawn[0] as Chart;
    const [speed, pressure] = curves.map((curve) => curve.points) as [Chart['curves'][number]['points'], Chart['curves'][number]['points']];
    expect(speed.map(([x]) => x)).toEqual(speed.map(([x]) => x).sort((a, b) => a - b));
    expect(Math.max(...speed.map(([, v]) => v))).toBeCloseTo(figure(ledger, 'sleeve.fast-speed'), 9);
    expect(speed[0]).toEqual([0, 0]);
    expect(speed.at(-1)?.[0]).toBeCloseTo(figure(ledger, 'slow-shot.travel-filled'), 9);
    expect(right?.unit).toBe('MPa');
    expect(pressure.at(-1)?.[1]).toBe(figure(ledger, 'clamp.pressure-reached'));
    expect(marks.map(({ x, values }) => x === figure(ledger, values[0] as string))).toEqual(marks.map(() => true));
    expect(marks.map(({ x }) => x)).toEqual(marks.map(({ x }) => x).sort((a, b) => a - b));
  });
});

// The same part with other plungers: fill 69.0, 41.6, 34.2 %.
test.each([
  [60, 69.0],
  [80, 41.6],
  [90, 34.2],
])('plunger %d mm, %d %% full: slower the fuller, and the lower of the two balances', (plunger, fill) => {
  const ledger = pinned({}, plantOf({ plunger, sleeve: 400 }));
  expect(Math.abs(figure(ledger, 'sleeve.fill') - fill)).toBeLessThan(0.05);
  expect(figure(ledger, 'slow-shot.speed')).toBe(Math.min(figure(ledger, 'sleeve.critical-speed-energy'), figure(ledger, 'sleeve.critical-speed-momentum')));
});

describe('limits', () => {
  test('a large sleeve filled low: more than is usually set, warned of and not cut down', () => {
    const ledger = pinned({}, plantOf({ plunger: 90, sleeve: 400 }));
    const finding = findingsOf(ledger).get('slow-shot/window-greatest');
    expect(finding?.severity).toBe('warning');
    expect(figure(ledger, 'slow-shot.speed')).toBeGreaterThan(0.7);
    // The plunger that it names brings the linear rule down to the window: 0.1149 (1 - f) sqrt(D) = 0.5.
    const smaller = figure(ledger, 'slow-shot.plunger-for-window');
    const fill = figure(ledger, 'slow-shot.fill-for-window');
    expect(0.1149 * (1 - fill / 100) * Math.sqrt(smaller)).toBeCloseTo(0.5, 9);
    expect(finding?.fix).toContain(`${smaller.toFixed(0)} mm, which fills it to ${formatQuantity(fill, '%')}`);
    // And it fills the sleeve as it says: a plan with it has that fill.
    expect(figure(pinned({}, plantOf({ plunger: smaller, sleeve: 400 })), 'sleeve.fill')).toBeCloseTo(fill, 6);
  });
  test('the fill that is named is that of the plunger that is named, whose biscuit is smaller', () => {
    const pins = { 'overflow.volume': '60 cm3', 'runner.volume': '150 cm3', 'fill.time': '50 ms' };
    const with_ = (plunger: number) => workTo('slow-shot', { ...LID, volume: 500, pinned: pins }, plantOf({ plunger, sleeve: 400 }));
    const large = with_(120);
    const smaller = figure(large, 'slow-shot.plunger-for-window');
    expect(figure(large, 'sleeve.biscuit-thickness')).toBeGreaterThan(1.2 * figure(with_(smaller), 'sleeve.biscuit-thickness'));
    expect(figure(with_(smaller), 'sleeve.fill')).toBeCloseTo(figure(large, 'slow-shot.fill-for-window'), 6);
    expect(figure(with_(smaller), 'slow-shot.linear-speed')).toBeCloseTo(0.5, 6);
    for (const [id, fill] of [
      ['sleeve.plunger-for-fill', 50],
      ['sleeve.plunger-for-least', 30],
    ] as const)
      expect(figure(with_(figure(large, id)), 'sleeve.fill')).toBeCloseTo(fill, 6);
    const finding = findingsOf(large).get('sleeve/fill-least');
    expect(finding?.fix).toContain(`about ${figure(large, 'sleeve.plunger-for-least').toFixed(0)} mm fills 30 %`);
    expect(finding?.fix).toContain(`about ${figure(large, 'sleeve.plunger-for-fill').toFixed(0)} mm, or`);
  });
  test('where the fill is enough, the least asks for no other plunger', () => {
    expect(figure(pinned({}), 'sleeve.plunger-for-least')).toBe(70);
    expect(figure(pinned({}), 'slow-shot.plunger-for-window')).toBe(70);
    expect(figure(pinned({}), 'slow-shot.fill-for-window')).toBe(figure(pinned({}), 'sleeve.fill'));
  });
  test('a pinned speed below the critical one, and one above it', () => {
    expect(own(pinned({ 'slow-shot.speed': '0.25 m/s' }))).toContain('slow-shot/below-critical');
    expect(own(pinned({ 'slow-shot.speed': '0.6 m/s' }))).toEqual(['slow-shot/above-critical', 'slow-shot/window-greatest']);
    expect(own(pinned({ 'slow-shot.speed': '0.49 m/s' }))).toEqual([]);
  });
  test('a small runner leaves no way to accelerate: change-over at the full sleeve, and the acceleration that would do is named', () => {
    const ledger = pinned({ 'runner.volume': '30 cm3' });
    expect(figure(ledger, 'slow-shot.change-over')).toBe(figure(ledger, 'sleeve.travel-when-full'));
    expect(figure(ledger, 'slow-shot.fast-acceleration')).toBe(267);
    const finding = findingsOf(ledger).get('slow-shot/change-over');
    expect(finding?.fix).toContain(`${figure(ledger, 'slow-shot.acceleration-needed').toFixed(0)} m/s2`);
    // With that runner the fast speed is there when the metal is at the gate.
    const runner = /runner of about (\d+) cm3/.exec(finding?.fix ?? '')?.[1];
    expect(Number(runner)).toBeGreaterThan(30);
    const heeded = pinned({ 'runner.volume': `${Number(runner) + 1} cm3` });
    expect(own(heeded)).not.toContain('slow-shot/change-over');
  });
  test('a change-over that is pinned before the sleeve is full', () => {
    expect(own(pinned({ 'slow-shot.change-over': '150 mm' }))).toContain('slow-shot/change-over-early');
  });
  test('a pour hole that is still open when the sleeve is full', () => {
    expect(findingsOf(pinned({ 'slow-shot.travel-hole-closed': '200 mm' })).get('slow-shot/pour-hole')?.severity).toBe('error');
  });
  test('a stroke that ends before the shot', () => {
    const finding = findingsOf(pinned({}, plantOf({ plunger: 70, sleeve: 400, stroke: 360 }))).get('slow-shot/stroke');
    expect(finding?.message).toBe('The plunger must travel 375 mm to leave a biscuit of 25 mm; its stroke is 360 mm');
  });
  test('braking that makes the fill longer than the longest time', () => {
    const longest = figure(workTo('slow-shot', EXAMPLE, PLANT), 'fill.longest-time');
    const ledger = pinned({ 'fill.time': `${longest.toFixed(3)} ms` });
    expect(findingsOf(ledger).get('slow-shot/fill-duration')?.severity).toBe('warning');
    expect(own(pinned({ 'fill.time': `${(0.85 * longest).toFixed(3)} ms` }))).not.toContain('slow-shot/fill-duration');
  });
  test('a plunger that is braked before it has reached its speed: told as a limit, with no time of a phase that is not there', () => {
    // 40 cm3 with 60 of overflows fill within 26 mm behind the gate, and the ramp to 6 m/s takes 67 mm at 267 m/s2.
    const ledger = workTo('slow-shot', { ...EXAMPLE, volume: 40, pinned: { ...PINS, 'sleeve.fast-speed': '6 m/s' } }, PLANT);
    expect(own(ledger)).toContain('slow-shot/fast-reached');
    expect(figure(ledger, 'slow-shot.travel-fast')).toBeGreaterThan(figure(ledger, 'slow-shot.travel-brake'));
    expect(ledger.maybe('slow-shot.time-fast')).toBeUndefined();
    expect(ledger.unchecked.find(({ id }) => id === 'slow-shot.time-fast')?.missing).toBe('the fast speed is not reached before braking begins');
    expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('range/slow-shot.phase-time'))).toEqual([]);
  });
  test('the loss that a low fill brings', () => {
    // Metal of A380 held at 635 degC is at the gate with 600, 5 K above its liquidus; a third of the sleeve takes some 10 K more than planned.
    const plant = plantOf({ plunger: 90, sleeve: 400 });
    expect(own(pinned({ 'fill.holding-temperature': '635 degC' }, plant))).toContain('slow-shot/temperature-loss');
    expect(own(pinned({}, plant))).not.toContain('slow-shot/temperature-loss');
    expect(JSON.stringify(slowShotStep.show(pinned({}, plant)))).toContain('pin fill.temperature-loss');
  });
});

describe('the wave', () => {
  test('of the planned profile drives the air out', () => {
    const ledger = workTo('slow-shot', EXAMPLE, PLANT);
    workWave(ledger);
    expect(ledger.decisions.get('slow-shot.wave')?.value).toBe('drives the air out');
    expect(figure(ledger, 'slow-shot.wave-share')).toBeLessThan(1);
    expect(Math.abs(figure(ledger, 'slow-shot.wave-head') - 100)).toBeLessThan(3);
    expect(own(ledger)).toEqual([]);
    const drawn = slowShotStep.show(ledger).filter((block): block is Chart => block.kind === 'figure' && block.form === 'chart');
    expect(drawn.map(({ id }) => id)).toEqual(['shot-profile', 'wave']);
  });
  test('of a slow one closes over air, and of a fast one is thrown back from the roof', () => {
    const slow = pinned({ 'slow-shot.speed': '0.25 m/s' });
    workWave(slow);
    expect(slow.decisions.get('slow-shot.wave')?.value).toBe('closes over air');
    expect(own(slow)).toContain('slow-shot/wave-closes');
    const fast = pinned({ 'slow-shot.speed': '0.7 m/s' });
    workWave(fast);
    expect(fast.decisions.get('slow-shot.wave')?.value).toBe('thrown back from the roof');
    expect(own(fast)).toContain('slow-shot/wave-roof');
  });
});

test('a hot chamber and a vertical sleeve have no slow shot, and no rule of it is left open', () => {
  const hot = workTo('gooseneck', LEVER);
  expect(slowShotStep.show(hot)).toEqual([]);
  const vertical = workTo('gooseneck', { ...LID, pinned: { 'machine.kind': 'cold-chamber-vertical-shot' } });
  expect(slowShotStep.show(vertical)).toEqual([]);
  for (const ledger of [hot, vertical]) {
    findingsOf(ledger);
    expect([...ledger.values.keys()].filter((id) => id.startsWith('slow-shot.'))).toEqual([]);
    expect(ledger.unchecked.filter(({ id }) => id.startsWith('slow-shot/'))).toEqual([]);
  }
});
