import { describe, expect, test } from 'vitest';
import { finishStep } from '../../../src/engine/steps/finish/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'machine.cavities': '1' };
const finish = (part: SmallPart, pins: Readonly<Record<string, string>> = {}, more: Partial<SmallPart> = {}) =>
  workTo('finish', { ...part, ...more, pinned: { ...PINNED, ...part.pinned, ...pins } });
const shown = (ledger: ReturnType<typeof finish>): string => JSON.stringify(finishStep.show(ledger));
const decided = (ledger: ReturnType<typeof finish>, id: string): string | undefined => ledger.decisions.get(id)?.value;

describe('trim force, worked by hand', () => {
  // Flash 800 x 0.2, gate 60 x 2, six overflow gates 12 x 1 mm: 352 mm2; 195 MPa and 1.3 make 89.2 kN.
  const worked = {
    'gate.area': '120 mm2',
    'gate.thickness': '2 mm',
    'overflow.number': '6',
    'overflow.gate-area': '72 mm2',
    'overflow.gate-width': '12 mm',
    'finish.shear-strength': '195 MPa',
    'vent.kind': 'chill',
  };
  const ledger = finish({ ...LID, partingLine: 932 }, worked);

  test.each([
    ['finish.gate-section', 120],
    ['finish.overflow-section', 72],
    ['finish.flash-length', 800],
    ['finish.flash-section', 160],
    ['finish.cavity-section', 352],
    ['finish.trim-force', 89.232],
  ])('%s is %d', (id, expected) => {
    expect(figure(ledger, id)).toBeCloseTo(expected, 9);
  });

  test('the press is the next size up, below the usual 15 to 20 US tons', () => {
    expect(figure(ledger, 'finish.press')).toBe(100);
    expect(Math.abs(figure(ledger, 'finish.press-least') - 15 * 8.89644)).toBeLessThan(0.5);
    expect(Math.abs(figure(ledger, 'finish.press-greatest') - 20 * 8.89644)).toBeLessThan(0.5);
    expect(findingsOf(ledger).has('finish/press-usual')).toBe(false);
  });
  test('without flash the gates are still cut', () => {
    const bare = finish({ ...LID, partingLine: 932 }, { ...worked, 'finish.flash-thickness': '0 mm' });
    expect(figure(bare, 'finish.cavity-section')).toBeCloseTo(192, 9);
    expect(figure(bare, 'finish.trim-force')).toBeCloseTo((1.3 * 195 * 192) / 1000, 9);
  });
  test('plain vents count with their own depth, on top of the flash', () => {
    const plain = finish({ ...LID, partingLine: 932 }, { ...worked, 'vent.kind': 'plain', 'vent.width': '100 mm', 'vent.depth': '0.1 mm' });
    expect(figure(plain, 'finish.vent-section')).toBeCloseTo(10, 9);
    expect(figure(plain, 'finish.cavity-section')).toBeCloseTo(362, 9);
  });
});

describe('forces of usual parts', () => {
  test('a small zinc part takes tens of kilonewtons, an aluminium lid a hundred and more', () => {
    const lever = figure(finish(LEVER), 'finish.trim-force');
    const lid = figure(finish(LID), 'finish.trim-force');
    expect(lever).toBeGreaterThan(10);
    expect(lever).toBeLessThan(60);
    expect(lid).toBeGreaterThan(80);
    expect(lid).toBeLessThan(300);
  });
  test('the shot takes as often the force of a casting as it has cavities', () => {
    const ledger = finish(LEVER, { 'machine.cavities': '4' });
    expect(figure(ledger, 'finish.trim-force')).toBeCloseTo(4 * figure(ledger, 'finish.cavity-force'), 9);
  });
  test('an alloy without shear strength gets an estimate that says so, and not a low one', () => {
    const ledger = finish({ ...LID, alloy: 'EN AC-46100' });
    expect(figure(ledger, 'finish.shear-strength')).toBe(170);
    expect(ledger.value('finish.shear-strength').note).toContain('estimate');
    expect(figure(finish({ ...LID, alloy: 'AM60B' }), 'finish.shear-strength')).toBeCloseTo(132, 9);
  });
  test('the remains are within what die trimming leaves', () => {
    const ledger = finish(LID);
    expect(figure(ledger, 'finish.line-greatest')).toBeLessThan(figure(ledger, 'finish.die-trim'));
    expect(ledger.value('finish.thick-gate').status).toBe('memory');
  });
});

describe('the drive of the press is asked', () => {
  test('both rules stand in the plan until it is known', () => {
    const ledger = finish(LID);
    expect(decided(ledger, 'finish.press-drive')).toBe('to be asked');
    expect(ledger.decisions.get('finish.press-drive')?.alternatives.map((other) => other.value)).toEqual(['mechanical', 'hydraulic']);
    expect(shown(ledger)).toContain('comes under 29 CFR 1910.217');
    expect(shown(ledger)).toContain('29 CFR 1910.212 and ANSI B11.2');
  });
  test('an answer is taken, and nothing is asked any more', () => {
    const ledger = finish(LID, { 'finish.press-drive': 'hydraulic' });
    expect(decided(ledger, 'finish.press-drive')).toBe('hydraulic');
    expect(shown(ledger)).not.toContain('Ask before the press is planned');
  });
  test('where no press is planned none is asked for', () => {
    const ledger = finish(LEVER, { 'finish.trimming': 'broken off and dressed by hand' });
    expect(decided(ledger, 'finish.press-drive')).toBe('no press');
    expect(shown(ledger)).toContain('No press is planned');
  });
});

describe('decisions', () => {
  test.each<[string, SmallPart, Readonly<Record<string, string>>, string, string]>([
    ['aluminium cover', LID, {}, 'finish.trimming', 'trim press'],
    ['thick gate', LID, { 'gate.thickness': '4 mm' }, 'finish.trimming', 'sawn, then trimmed'],
    ['small zinc part', { ...LEVER, quality: 'use: general', volume: 5 }, { 'gate.thickness': '0.4 mm' }, 'finish.trimming', 'broken off and tumbled'],
    ['small plated part', { ...LEVER, volume: 5 }, { 'gate.thickness': '0.4 mm' }, 'finish.trimming', 'trim press'],
    ['aluminium', LID, {}, 'finish.cooling', 'water quench'],
    ['magnesium', { ...LID, alloy: 'AZ91D' }, {}, 'finish.cooling', 'air'],
    ['zinc', LEVER, {}, 'finish.cooling', 'air'],
    ['T5', { ...LID, quality: 'use: structural, heat_treatment: T5' }, {}, 'finish.cooling', 'water quench'],
    ['T6 without vacuum', { ...LID, quality: 'heat_treatment: T6' }, { 'vent.kind': 'chill' }, 'finish.heat-treatment', 'not by this process'],
    ['T6 with vacuum', { ...LID, quality: 'heat_treatment: T6' }, {}, 'finish.heat-treatment', 'as asked'],
    ['T5', { ...LID, quality: 'heat_treatment: T5' }, {}, 'finish.heat-treatment', 'as asked'],
    ['zinc with T6', { ...LEVER, quality: 'heat_treatment: T6' }, {}, 'finish.heat-treatment', 'not for this alloy'],
    ['pressure-tight', { ...LID, quality: 'use: pressure-tight' }, {}, 'finish.impregnation', 'what fails the leak test'],
    ['general', LID, {}, 'finish.impregnation', 'none'],
  ])('%s: %s', (_, part, pins, id, expected) => {
    expect(decided(finish(part, pins), id)).toBe(expected);
  });

  test('a year of leak failures follows the published share', () => {
    const ledger = finish({ ...LID, quality: 'use: pressure-tight', production: 'per_year: 240000' });
    expect(figure(ledger, 'finish.leakers')).toBeCloseTo(7200, 9);
    expect(figure(ledger, 'finish.leakers-left')).toBeCloseTo(360, 9);
  });
  test('all of them are lost where nothing is impregnated', () => {
    const ledger = finish({ ...LID, quality: 'use: pressure-tight', production: 'per_year: 240000' }, { 'finish.impregnation': 'none' });
    expect(figure(ledger, 'finish.leakers-left')).toBeCloseTo(7200, 9);
    expect(ledger.values.has('finish.impregnated')).toBe(false);
  });
  test('a blister test is planned where little gas is allowed, and nowhere else', () => {
    expect(figure(finish({ ...LID, quality: 'use: structural' }), 'finish.blister-least')).toBe(480);
    expect(finish(LID).values.has('finish.blister-least')).toBe(false);
  });
});

describe('what is shown', () => {
  test('a pressure-tight part is leak tested after machining, against its leak rate', () => {
    const plan = shown(finish({ ...LID, quality: 'use: pressure-tight, leak_rate: 5 cm3/min at 10 bar' }));
    expect(plan).toContain('every casting, after machining');
    expect(plan).toContain('5 cm3/min at 10 bar');
    expect(shown(finish(LID))).not.toContain('test fixture');
  });
  test('a plated part is looked at before plating', () => {
    expect(shown(finish(LEVER))).toContain('before plating');
    expect(shown(finish(LEVER))).toContain('magnify');
  });
});

describe('limits, each with what helps', () => {
  test.each<[string, SmallPart, Readonly<Record<string, string>>, string]>([
    ['finish/press-usual', LEVER, { 'machine.cavities': '24' }, 'press of'],
    ['finish/heat-treatment-family', { ...LEVER, quality: 'heat_treatment: T6' }, {}, 'heat_treatment: none'],
    ['finish/quench-magnesium', { ...LID, alloy: 'AZ91D' }, { 'finish.cooling': 'water quench' }, 'finish.cooling as air'],
    ['finish/quench-t5', { ...LID, quality: 'heat_treatment: T5' }, { 'finish.cooling': 'air' }, 'water quench'],
    ['finish/leak-rate', { ...LID, quality: 'use: pressure-tight' }, {}, 'quality.leak_rate'],
    ['finish/break-off', LEVER, { 'finish.trimming': 'broken off and tumbled' }, 'trim press'],
    ['finish/flash', LID, { 'finish.flash-thickness': '0.8 mm' }, '0.2 mm'],
    ['finish/press-greatest', { ...LID, partingLine: 9000 }, { 'finish.flash-thickness': '2 mm' }, 'saw the runner off first'],
    ['finish/press-greatest', LID, { 'finish.press': '63 kN' }, 'Plan a press of 14'],
  ])('%s', (code, part, pins, fix) => {
    expect(findingsOf(finish(part, pins)).get(code)?.fix).toContain(fix);
  });
  test('none of them fires on an ordinary cover', () => {
    expect([...findingsOf(finish(LID)).keys()].filter((code) => code.startsWith('finish/'))).toEqual([]);
  });
});

test('lead has no shear strength: the force is missing, the rest of the section is there', () => {
  const ledger = finish({ ...LEVER, alloy: 'Pb-5Sb', quality: 'use: general' });
  expect(ledger.values.has('finish.trim-force')).toBe(false);
  expect(decided(ledger, 'finish.impregnation')).toBe('none');
  expect(ledger.unchecked.some((entry) => entry.id === 'finish.shear-strength')).toBe(true);
});
