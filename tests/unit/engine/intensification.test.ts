import { describe, expect, test } from 'vitest';
import { intensificationStep } from '../../../src/engine/steps/intensification/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'fill.time': '35 ms', 'overflow.volume': '50 cm3', 'runner.volume': '100 cm3', 'machine.cavities': '1' };
const CASE: SmallPart = { ...LID, volume: 250, pinned: PINNED };
const pinnedTo = (pins: Readonly<Record<string, string>>, more: Partial<SmallPart> = {}) =>
  workTo('intensification', { ...CASE, ...more, pinned: { ...PINNED, ...pins } });

describe('cold chamber, worked by hand', () => {
  const ledger = workTo('intensification', CASE);

  test.each([
    // Published 30 to 80 ms at 1.2 mm, carried to a gate of 1.4 mm: (1.4 / 1.2)^2 = 1.3611.
    ['gate.thickness', 1.4, 1e-9],
    ['intensification.gate-freeze-least', 40.833, 1e-4],
    ['intensification.gate-freeze-greatest', 108.889, 1e-4],
    ['intensification.rise-needed', 40.833, 1e-4],
    // A gate that stays liquid for the 50 ms of the slowest machine: 1.2 sqrt(50 / 30).
    ['intensification.gate-for-slow', 1.5492, 1e-4],
    ['intensification.gate-for-fast', 0.6928, 1e-4],
    // A380: 8.5 % silicon in the middle, 6.6 - 2.2 x 8.5 / 11.6.
    ['porosity.shrinkage', 4.988, 1e-4],
    // 300 cm3 of casting and overflows.
    ['intensification.feed-volume', 14.964, 1e-4],
    ['intensification.hold', 5.5, 1e-9],
  ])('%s is %d', (id, expected, relative) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThanOrEqual(relative * expected);
  });

  test('the setting gives the metal pressure planned, below what the machine can', () => {
    const ratio = (figure(ledger, 'machine.cylinder-diameter') / figure(ledger, 'machine.plunger')) ** 2;
    expect(figure(ledger, 'intensification.hydraulic-pressure') * ratio).toBeCloseTo(figure(ledger, 'clamp.pressure-reached'), 9);
    expect(figure(ledger, 'intensification.hydraulic-pressure')).toBeLessThanOrEqual(figure(ledger, 'machine.pressure-intensified'));
  });

  test('the order of freezing is gate, runner, biscuit', () => {
    const travel = (4 * 14964) / (Math.PI * figure(ledger, 'machine.plunger') ** 2);
    expect(figure(ledger, 'intensification.feed-travel')).toBeCloseTo(travel, 3);
    const order = ['gate.thickness', 'runner.segment-depth[gate run]', 'intensification.main-depth', 'sleeve.biscuit-thickness'].map((id) =>
      figure(ledger, id),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(findingsOf(ledger).has('intensification/freeze-order')).toBe(false);
  });
});

test('24.5 cm3 are fed for 500 cm3 at 4.9 %, 6.37 mm of a 70 mm plunger', () => {
  const ledger = pinnedTo({ 'overflow.volume': '60 cm3', 'porosity.shrinkage': '4.9 %' }, { volume: 440 });
  expect(figure(ledger, 'intensification.feed-volume')).toBeCloseTo(24.5, 9);
  const travel = figure(ledger, 'intensification.feed-travel') * (figure(ledger, 'machine.plunger') / 70) ** 2;
  expect(Math.abs(travel - 6.37)).toBeLessThan(0.005);
});

describe('limits, each with the number that helps', () => {
  test('a gate that freezes before any machine has the pressure up', () => {
    const ledger = pinnedTo({ 'gate.thickness': '0.5 mm' });
    // 30 (0.5 / 1.2)^2 = 5.2 ms; the 10 ms of the fastest machine ask for 0.69 mm.
    const finding = findingsOf(ledger).get('intensification/rise-time');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain('0.693 mm');
    expect(findingsOf(ledger).has('intensification/rise-machine')).toBe(false);
    expect(findingsOf(pinnedTo({ 'gate.thickness': '0.7 mm' })).has('intensification/rise-time')).toBe(false);
  });
  test('a gate that only a fast machine serves is a note, a thick one none', () => {
    // The fill phase of this shot presses harder than the class asks for, so that no rise is waited for.
    expect(findingsOf(pinnedTo({})).has('intensification/rise-machine')).toBe(false);
    expect(findingsOf(pinnedTo({ 'clamp.pressure': '110 MPa' })).get('intensification/rise-machine')?.severity).toBe('note');
    expect(findingsOf(pinnedTo({ 'clamp.pressure': '110 MPa', 'gate.thickness': '1.6 mm' })).has('intensification/rise-machine')).toBe(false);
  });
  test('a fill phase that comes near what is planned leaves the rise nothing to add', () => {
    const base = pinnedTo({});
    const fill = figure(base, 'intensification.fill-pressure');
    const machine = { 'machine.model': base.text('machine.model'), 'machine.plunger': `${figure(base, 'machine.plunger')} mm` };
    const at = (share: number) => findingsOf(pinnedTo({ ...machine, 'clamp.pressure': `${fill / share} MPa` }));
    expect(at(0.96).has('intensification/rise-machine')).toBe(false);
    // A wall of 2.8 mm takes a gate of up to 2.24 mm.
    expect(at(0.85).get('intensification/rise-machine')?.fix).toContain('up to some 2.24 mm at its wall of 2.8 mm');
  });
  test('a biscuit thinner than the main runner; that it is below the least is said once', () => {
    const findings = findingsOf(pinnedTo({ 'sleeve.biscuit-thickness': '11 mm' }));
    expect(findings.get('intensification/freeze-order')?.fix).toContain('12 mm');
    expect(findings.get('sleeve/biscuit')?.severity).toBe('error');
    expect(findings.has('intensification/biscuit-left')).toBe(false);
  });
  test('a pressure far from the published range', () => {
    expect(findingsOf(pinnedTo({ 'clamp.pressure': '25 MPa' })).get('intensification/pressure')?.fix).toContain('40 MPa');
    expect(findingsOf(pinnedTo({})).has('intensification/pressure')).toBe(false);
  });
  test('an unusual time under pressure', () => {
    expect(findingsOf(pinnedTo({ 'intensification.hold': '0.5 s' })).get('intensification/hold')?.fix).toContain('3.0 s');
    expect(findingsOf(pinnedTo({})).has('intensification/hold')).toBe(false);
  });
  test('lock and plates go by the fill phase just where a limit says that it cannot be set lower', () => {
    const kinds = new Set<string>();
    const small: SmallPart = { ...LID, pinned: { 'machine.plunger': '70 mm' } };
    for (const ledger of [pinnedTo({}), pinnedTo({ 'clamp.pressure': '110 MPa' }), workTo('intensification', LID), workTo('intensification', small)]) {
      const findings = findingsOf(ledger);
      const at = (id: string): number => figure(ledger, id);
      const held = findings.has('intensification/fill-pressure-held');
      if (findings.has('intensification/fill-pressure-lock')) continue;
      kinds.add(held ? 'held' : findings.has('intensification/fill-pressure') ? 'to be lowered' : 'as planned');
      expect(at('intensification.standing-pressure')).toBe(at(held ? 'intensification.fill-pressure' : 'clamp.sizing-pressure'));
      expect(at('intensification.standing-force')).toBe(at(held ? 'intensification.static-force' : 'clamp.locking-force'));
      expect(at('intensification.standing-load') / at('clamp.tie-bar-load')).toBeCloseTo(at('intensification.standing-force') / at('clamp.locking-force'), 9);
      expect(ledger.values.has('intensification.hydraulic-pressure')).toBe(!held);
    }
    expect([...kinds].sort()).toEqual(['as planned', 'held', 'to be lowered']);
  });
  test('a fill phase that presses harder than planned is a matter of the lock', () => {
    const ledger = pinnedTo({});
    const [static_, planned] = [figure(ledger, 'intensification.fill-pressure'), figure(ledger, 'clamp.pressure-reached')];
    expect(static_).toBeGreaterThan(1.1 * planned);
    const force = (figure(ledger, 'clamp.locking-force') * static_) / planned;
    const lockable = force <= 0.9 * figure(ledger, 'machine.locking-force');
    const findings = findingsOf(ledger);
    expect(findings.has('intensification/fill-pressure')).toBe(lockable);
    expect(findings.has('intensification/fill-pressure-lock')).toBe(!lockable);
    expect(findingsOf(pinnedTo({ 'clamp.pressure': '60 MPa' })).has('intensification/fill-pressure')).toBe(false);
  });
});

describe('hot chamber', () => {
  const ledger = workTo('intensification', LEVER);
  test('has its static pressure and no rise, no setting, no biscuit', () => {
    for (const id of ['intensification.rise-needed', 'intensification.hydraulic-pressure', 'intensification.biscuit-left'])
      expect(ledger.values.has(id)).toBe(false);
    expect(figure(ledger, 'intensification.fill-pressure')).toBeCloseTo(figure(ledger, 'machine.metal-pressure'), 9);
    expect(JSON.stringify(intensificationStep.show(ledger))).toContain('no intensifier');
  });
  test('zinc freezes sooner than aluminium by 0.40 over 0.47 and shrinks by 3.5 %', () => {
    const thickness = figure(ledger, 'gate.thickness');
    expect(figure(ledger, 'intensification.gate-freeze-least')).toBeCloseTo((30 * (thickness / 1.2) ** 2 * 0.4) / 0.47, 9);
    expect(figure(ledger, 'porosity.shrinkage')).toBe(3.5);
    expect(ledger.value('porosity.shrinkage').status).toBe('memory');
  });
});

test('a vertical shot has its own time under pressure', () => {
  const ledger = pinnedTo({ 'machine.kind': 'cold-chamber-vertical-shot' }, { quality: 'use: structural' });
  expect(ledger.values.has('intensification.hold')).toBe(false);
  expect(ledger.values.has('intensification.gate-freeze-least')).toBe(true);
});

describe('the metal of the shot, from the ladle to the biscuit', () => {
  test.each([
    ['aluminium', {}],
    // Copper alloys have the published least of 15 mm and not the greater one of aluminium; a small plunger travels far for a large casting.
    ['a copper alloy with a small plunger', { alloy: 'C87800', pinned: { ...PINNED, 'machine.plunger': '50 mm' } }],
    ['two cavities of magnesium', { alloy: 'AZ91D', pinned: { ...PINNED, 'machine.cavities': '2', 'machine.kind': 'cold-chamber' } }],
  ] as const)('%s: what is poured is what is in castings, runner and the biscuit that is left', (_, more) => {
    const ledger = workTo('slow-shot', { ...CASE, ...more });
    const at = (id: string): number => figure(ledger, id);
    const area = (Math.PI * at('machine.plunger') ** 2) / 4000;
    const castings = at('machine.cavities') * (at('part.volume') + at('overflow.volume'));
    const solid = castings + at('runner.total-volume') + area * at('intensification.biscuit-left');
    expect((solid * at('alloy.density')) / 1000).toBeCloseTo(at('shot.mass'), 9);
    expect((at('shot.liquid-volume') * at('gate.liquid-density')) / 1000).toBeCloseTo(at('shot.mass'), 9);
    // The positions of the plunger say the same as the balance: nothing is fed twice.
    expect(at('machine.sleeve-length') - at('slow-shot.travel-filled')).toBeCloseTo(at('intensification.biscuit-full'), 9);
    expect(at('slow-shot.travel-end') - at('slow-shot.travel-filled')).toBeCloseTo(at('intensification.follow-travel'), 9);
    expect(at('intensification.biscuit-left')).toBeCloseTo(at('sleeve.biscuit-thickness'), 9);
    expect(at('intensification.follow-travel')).toBeGreaterThan(at('intensification.feed-travel'));
    expect(findingsOf(ledger).has('intensification/biscuit-left')).toBe(false);
  });

  test('a dose that is short leaves less, and the finding says what to pour', () => {
    const whole = workTo('intensification', CASE);
    // 25 mm are planned; 12 mm less of the plunger's area is missing.
    const area = (Math.PI * figure(whole, 'machine.plunger') ** 2) / 4000;
    const short = figure(whole, 'shot.mass') - (12 * area * figure(whole, 'alloy.density')) / 1000;
    const ledger = pinnedTo({
      'shot.mass': `${short} kg`,
      'machine.model': whole.text('machine.model'),
      'machine.plunger': `${figure(whole, 'machine.plunger')} mm`,
    });
    expect(figure(ledger, 'intensification.biscuit-left')).toBeCloseTo(13, 6);
    const least = short + (2 * area * figure(whole, 'alloy.density')) / 1000;
    expect(findingsOf(ledger).get('intensification/biscuit-left')?.fix).toContain(`${least.toFixed(2)} kg`);
  });

  test('the plan tells the travel apart that feeds the castings', () => {
    const text = JSON.stringify(intensificationStep.show(workTo('intensification', CASE)));
    for (const id of ['biscuit-full', 'follow-travel', 'feed-travel', 'biscuit-left']) expect(text).toContain(`intensification.${id}`);
  });
});

test('the whole static pressure of a hot chamber stands on the full die, above the class of the part too, and locks it', () => {
  // 12 MPa on 89 mm of cylinder over a plunger of 55 mm: 31.4 MPa, and 19.6 are asked of a part for general use.
  const pinned = { ...LEVER.pinned, 'machine.cavities': '1', 'machine.model': 'hot-1250', 'machine.plunger': '55 mm' };
  const ledger = workTo('intensification', { ...LEVER, quality: 'use: general', pinned });
  const reached = (12 * 89 ** 2) / 55 ** 2;
  expect(figure(ledger, 'clamp.pressure')).toBeLessThan(reached);
  expect(figure(ledger, 'clamp.pressure-reached')).toBeCloseTo(reached, 9);
  expect(figure(ledger, 'clamp.opening-force')).toBeCloseTo((figure(ledger, 'clamp.sizing-pressure') * figure(ledger, 'clamp.projected-area')) / 10, 9);
  expect(figure(ledger, 'clamp.sizing-pressure')).toBeGreaterThanOrEqual(reached - 1e-9);
  expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('intensification/fill-pressure'))).toEqual([]);
  expect(ledger.unchecked.filter(({ missing }) => missing.includes('lowered'))).toEqual([]);
});
