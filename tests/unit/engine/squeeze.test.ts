import { describe, expect, test } from 'vitest';
import { pq2Step } from '../../../src/engine/steps/pq2/index.ts';
import { squeezeStep } from '../../../src/engine/steps/squeeze.ts';
import { plantWith } from './pq2-plant.ts';
import { figure, findingsOf, LID, type SmallPart, workTo } from './work-to.ts';

/** A structural part to be solution treated, with walls of 5 and 6 mm: the table chooses a vertical shot. */
const NODE: SmallPart = {
  alloy: 'A360',
  volume: 900,
  wall: 6,
  least: 5,
  area: 300,
  envelope: [260, 180, 90],
  quality: 'use: structural, heat_treatment: T6',
};
const PLANT = plantWith({ vertical: true, plungers: [70, 80], sleeve: 360 });
const with_ = (part: SmallPart, pinned: Readonly<Record<string, string>>): SmallPart => ({ ...part, pinned: { ...part.pinned, ...pinned } });
const codes = (part: SmallPart): string[] => [...findingsOf(workTo('pq2', part, PLANT)).keys()].filter((code) => code.startsWith('squeeze/'));

describe('vertical shot', () => {
  const ledger = workTo('pq2', NODE, PLANT);

  test('is what the decision table chooses here', () => {
    expect(ledger.texts.get('machine.kind')).toBe('cold-chamber-vertical-shot');
  });

  // Figures of the survey article on squeeze casting; gate thickness, usual metal pressure and cycle are common practice.
  test.each([
    ['squeeze.gate-velocity-greatest', 0.5],
    ['squeeze.pressure-least', 50],
    ['squeeze.pressure-greatest', 140],
    ['squeeze.hold-least', 30],
    ['squeeze.hold-greatest', 120],
    ['squeeze.superheat-least', 6],
    ['squeeze.superheat-greatest', 55],
    ['squeeze.die-least', 190],
    ['squeeze.die-greatest', 315],
    ['squeeze.section-least', 3],
    ['squeeze.section-usual', 5],
    ['squeeze.metal-pressure-least', 70],
    ['squeeze.metal-pressure-greatest', 100],
    ['squeeze.gate-least', 3],
    ['squeeze.gate-greatest', 10],
    ['squeeze.cycle-least', 1.5],
    ['squeeze.cycle-greatest', 3],
  ])('%s is %d', (id, expected) => {
    expect(figure(ledger, id)).toBe(expected);
    expect(JSON.stringify(squeezeStep.show(ledger))).toContain(`"${id}"`);
  });

  test('plans hold time at the low end, gate thickness inside its range and the pressure of the clamp', () => {
    expect(figure(ledger, 'squeeze.hold')).toBe(30);
    expect(figure(ledger, 'squeeze.pressure')).toBe(figure(ledger, 'clamp.pressure-reached'));
    expect(figure(ledger, 'gate.thickness')).toBeGreaterThanOrEqual(3);
    expect(figure(ledger, 'gate.thickness')).toBeLessThanOrEqual(10);
    expect(figure(ledger, 'squeeze.superheat')).toBeCloseTo(figure(ledger, 'fill.gate-temperature') - figure(ledger, 'alloy.liquidus'), 9);
  });

  test('says what a squeeze fill would take: outline 880 mm, half of it as gate, no thicker than the wall', () => {
    // 440 x 6 mm; flow volume at 0.5 m/s through it.
    expect(figure(ledger, 'squeeze.largest-gate')).toBeCloseTo(2640, 6);
    expect(figure(ledger, 'squeeze.shortest-time')).toBeCloseTo((1000 * figure(ledger, 'gate.flow-volume')) / (0.5 * 2640), 6);
    expect(figure(ledger, 'squeeze.gate-area') / figure(ledger, 'gate.area')).toBeCloseTo(figure(ledger, 'gate.velocity') / 0.5, 9);
  });

  test('has a window of pressure and flow with the gate velocities of structural parts', () => {
    expect(figure(ledger, 'gate.velocity-greatest')).toBe(35);
    expect(figure(ledger, 'pq2.greatest-pressure')).toBeCloseTo((2500 * 35 ** 2) / (2e6 * 0.25), 9);
    expect(ledger.texts.get('pq2.place')).toBe('inside');
  });
});

describe('the section', () => {
  test('is there for no other kind of machine, nor are its rules', () => {
    const lid = workTo('pq2', LID);
    findingsOf(lid);
    expect(squeezeStep.show(lid)).toEqual([]);
    expect([...lid.values.keys()].filter((id) => id.startsWith('squeeze.'))).toEqual([]);
    expect([...findingsOf(lid).keys(), ...lid.unchecked.map((entry) => entry.id)].filter((id) => id.startsWith('squeeze'))).toEqual([]);
  });
});

describe('filled at the velocity of squeeze casting', () => {
  const slow = workTo('pq2', with_(NODE, { 'gate.velocity': '0.4 m/s', 'fill.time': '900 ms' }), PLANT);
  test('has no window of pressure and flow, says why, and leaves no rule of it open', () => {
    findingsOf(slow);
    expect(pq2Step.show(slow)).toHaveLength(1);
    expect(JSON.stringify(pq2Step.show(slow))).toContain('Not judged');
    expect([...slow.values.keys()].filter((id) => id.startsWith('pq2.'))).toEqual([]);
    expect([...findingsOf(slow).keys(), ...slow.unchecked.map((entry) => entry.id)].filter((id) => id.startsWith('pq2'))).toEqual([]);
  });
});

describe('rules', () => {
  test('a fast fill is a note that names the gates and the time of a slow one', () => {
    const fix = findingsOf(workTo('pq2', NODE, PLANT)).get('squeeze/gate-velocity')?.fix;
    expect(fix).toContain('2640 mm2');
    expect(codes(with_(NODE, { 'gate.velocity': '0.5 m/s', 'fill.time': '900 ms' }))).not.toContain('squeeze/gate-velocity');
  });
  test('pressure below the published range is a warning; the pressure given clears it, and the locking force given is the one then needed', () => {
    const low = with_(NODE, { 'clamp.pressure': '40 MPa' });
    const finding = findingsOf(workTo('pq2', low, PLANT)).get('squeeze/pressure');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain('70 MPa');
    const force = Number(/about ([\d.]+) kN/.exec(finding?.fix ?? '')?.[1]);
    const cured = with_(NODE, { 'clamp.pressure': '70 MPa' });
    expect(codes(cured)).not.toContain('squeeze/pressure');
    expect(codes(cured)).not.toContain('squeeze/usual-pressure');
    const ratio = figure(workTo('pq2', cured, PLANT), 'clamp.locking-force') / force;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.001);
  });
  test('inside the published range and below the usual one is a note', () => {
    const planned = codes(with_(NODE, { 'clamp.pressure': '60 MPa' }));
    expect(planned).toContain('squeeze/usual-pressure');
    expect(planned).not.toContain('squeeze/pressure');
  });
  test.each([
    ['squeeze/superheat', { 'fill.holding-temperature': '720 degC' }, 'fill.holding-temperature'],
    ['squeeze/die-temperature', { 'fill.die-temperature': '170 degC' }, 'fill.die-temperature'],
  ])('%s speaks, and the temperature given silences it', (code, pinned, id) => {
    const part = with_(NODE, pinned);
    const fix = findingsOf(workTo('pq2', part, PLANT)).get(code)?.fix;
    expect(codes(part)).toContain(code);
    const advised = /([\d.]+) degC/.exec(fix ?? '')?.[1];
    expect(codes(with_(NODE, { [id]: `${advised} degC` }))).not.toContain(code);
  });
  test('a thin wall is a warning with both published sections', () => {
    const fix = findingsOf(workTo('pq2', { ...NODE, least: 2.5 }, PLANT)).get('squeeze/section')?.fix;
    expect(fix).toContain('3 mm');
    expect(fix).toContain('5 mm');
  });
});
