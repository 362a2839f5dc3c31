import { describe, expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import { dieStep } from '../../../src/engine/steps/die/index.ts';
import { dieOf } from './die-of.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart } from './work-to.ts';

const steelOf = (ledger: Ledger): string => ledger.text('die.cavity-steel');
const VOLUME = 'per_year: 60000, life: 600000, hours_per_year: 4000';

describe('steels by family, volume and intricacy', () => {
  test.each<[string, SmallPart, string, string, string]>([
    ['aluminium, simple, no volume given', LID, '', 'H13 premium', 'grade A'],
    ['aluminium, simple, high volume', { ...LID, production: VOLUME }, '', 'H13 superior', 'grade B'],
    ['aluminium, pressure-tight', { ...LID, quality: 'use: pressure-tight' }, '', 'H13 superior', 'grade B'],
    ['aluminium with a slide', LID, 'holes:\n  - { id: A, diameter: 8 mm, depth: 16 mm, kind: blind, direction: x }\n', 'H13 superior', 'grade B'],
    [
      'aluminium with a slide that drilling saves',
      LID,
      'holes:\n  - { id: A, diameter: 1.6 mm, depth: 16 mm, kind: blind, direction: x }\n',
      'H13 premium',
      'grade A',
    ],
    ['zinc, simple, no volume given', LEVER, '', 'P20', 'none'],
    ['zinc, simple, high volume', { ...LEVER, production: VOLUME }, '', 'H13 premium', 'grade A'],
    ['zinc with nine cores', LEVER, 'holes:\n  - { id: A, diameter: 5 mm, depth: 8 mm, kind: blind, direction: z, count: 9 }\n', 'H13 premium', 'grade A'],
    ['ZA-8 in the hot chamber as zinc', { ...LEVER, alloy: 'ZA-8' }, '', 'P20', 'none'],
    ['ZA-12 in the cold chamber as aluminium', { ...LEVER, alloy: 'ZA-12' }, '', 'H13 premium', 'grade A'],
    ['magnesium', { ...LID, alloy: 'AZ91D' }, '', 'H13 premium', 'grade A'],
    ['brass', { ...LEVER, alloy: 'C85800', quality: 'use: general' }, '', '1.2367', 'grade C'],
  ])('%s', (_, part, more, steel, grade) => {
    const ledger = dieOf(part, more);
    expect([steelOf(ledger), ledger.text('die.steel-grade')]).toEqual([steel, grade]);
    expect(ledger.decisions.get('die.cavity-steel')?.because.length).toBeGreaterThan(20);
  });

  test('every component of the chamber has its steel, and the gooseneck no hardness that nobody has printed', () => {
    const [cold, hot] = [dieOf(LID), dieOf(LEVER)];
    expect([cold.text('die.component-steel', 'shot sleeve'), figure(cold, 'die.component-least[shot sleeve]')]).toEqual(['H13', 42]);
    expect([cold.text('die.component-steel', 'core pins'), figure(cold, 'die.component-greatest[core pins]')]).toEqual(['1.2367', 40]);
    expect(cold.decisions.has('die.component-steel[nozzle]')).toBe(false);
    expect([hot.text('die.component-steel', 'nozzle'), figure(hot, 'die.component-greatest[nozzle]')]).toEqual(['420', 44]);
    expect(hot.decisions.get('die.component-steel[gooseneck]')?.status).toBe('memory');
    expect(hot.values.has('die.component-least[gooseneck]')).toBe(false);
    expect([figure(hot, 'die.brinell-least'), figure(hot, 'die.brinell-greatest')]).toEqual([290, 330]);
  });

  test('the composition is that of the grade', () => {
    const ledger = dieOf(LID);
    expect([figure(ledger, 'die.grade-least[Cr]'), figure(ledger, 'die.grade-greatest[Cr]'), figure(ledger, 'die.grade-greatest[S]')]).toEqual([5, 5.5, 0.005]);
    expect(ledger.values.has('die.grade-least[P]')).toBe(false);
  });

  test('a pinned steel is kept and judged', () => {
    const soft = dieOf({ ...LID, pinned: { 'die.cavity-steel': 'P20' } });
    expect(soft.decisions.get('die.cavity-steel')?.kind).toBe('pinned');
    expect(findingsOf(soft).get('die/prehardened')?.fix).toContain('H13 premium');
    expect(findingsOf(dieOf({ ...LEVER, pinned: { 'die.cavity-steel': 'P20' }, production: VOLUME })).has('die/prehardened-volume')).toBe(true);
    expect(findingsOf(dieOf({ ...LID, pinned: { 'die.hardness': '52' } })).get('die/hardness')?.fix).toContain('48');
    expect(findingsOf(dieOf(LID)).has('die/hardness')).toBe(false);
  });
});

describe('face, height and mass of the lid, worked by hand', () => {
  const ledger = dieOf({
    ...LID,
    pinned: { 'machine.plunger': '70 mm', 'ejection.stroke': '54 mm', 'cooling.line-depth': '20 mm', 'cooling.line-diameter': '10 mm' },
  });
  test.each([
    // Steel around 75 + 5 x 2.68; insert edge 75, holder 45 for a field of 238 mm: 120 mm each side.
    ['die.steel-around', 88.4],
    ['die.block-width', 238 + 2 * 88.4],
    ['die.width', 238 + 240],
    // Strip for the biscuit 70 + 2 x 35 = 140 mm, below one width of steel.
    ['die.feeder-strip', 140],
    ['die.breadth', 142 + 120 + 88.4 + 140],
    ['die.insert-edge', 75],
    ['die.insert-width', 388],
    ['die.insert-height', 292],
    // 1.5 x 46 below the cavity. Overflows at 2.8 mm of wall are 16.43 % of 412 cm3, 10 mm deep: 67.69 cm2 beside the 268;
    // 39.2 N/mm2 are planned, but 14 MPa on a cylinder of 165 mm press with 77.786 N/mm2 on a plunger of 70 mm when the metal comes to
    // rest, and set lower the machine would not drive the gates. On 335.69 cm2 that is 2611 kN: a plate of 90 mm.
    ['die.steel-below', 69],
    ['intensification.standing-pressure', 14 * (165 / 70) ** 2],
    ['die.back-force', (1315.888 / 39.2) * 14 * (165 / 70) ** 2],
    ['die.plate', 90],
    ['die.half-height[cover half]', 46 + 69 + 90],
    ['die.half-height[ejector half]', 69 + 90],
    ['die.half-height[ejector box]', 54 + 45 + 12],
    ['die.height', 205 + 159 + 111 + 30],
    ['die.mass', 4.78 * 4.904 * 5.05 * 7.8 * 0.9],
  ])('%s is %d', (id, expected) => {
    expect(Math.abs(figure(ledger, id) - expected)).toBeLessThanOrEqual(1e-6 * expected);
  });

  test('the halves together are the die', () => {
    const halves = ['cover half', 'moving half'].map((half) => figure(ledger, `die.half-mass[${half}]`));
    expect((halves[0] as number) + (halves[1] as number)).toBeCloseTo(figure(ledger, 'die.mass'), 9);
  });

  test('a large plunger takes a wider strip of the least die too', () => {
    const wide = dieOf({ ...LID, pinned: { 'machine.plunger': '80 mm', 'machine.model': 'cold-4000' } });
    expect(figure(wide, 'die.feeder-strip')).toBe(150);
    expect(figure(wide, 'die.block-height')).toBeCloseTo(142 + 2 * 88.4 + 150, 9);
  });
});

describe('height against the machine', () => {
  test('a die that is too low asks for packing', () => {
    const finding = findingsOf(dieOf({ ...LEVER, pinned: { 'machine.model': 'cold-10000', 'machine.kind': 'cold-chamber' } })).get('die/height-least');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toMatch(/packing plate of about \d+ mm/);
  });
  test('one that is too high is an error', () => {
    const finding = findingsOf(dieOf({ ...LID, pinned: { 'die.steel-below': '300 mm', 'machine.model': dieOf(LID).text('machine.model') } })).get(
      'die/height-greatest',
    );
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toMatch(/Take \d+ mm out of the die/);
    expect(findingsOf(dieOf(LID)).has('die/height-greatest')).toBe(false);
  });
  test('too little steel below the cavity', () => {
    expect(findingsOf(dieOf({ ...LID, pinned: { 'die.steel-below': '50 mm' } })).get('die/steel-below')?.fix).toContain('69 mm');
  });
});

describe('support plate and pillars', () => {
  const rows = (count: number, more: Readonly<Record<string, string>> = {}): Ledger =>
    dieOf({ ...LID, pinned: { 'machine.model': 'cold-2500', 'die.pillar-rows': String(count), ...more } });
  test('a row of pillars leaves a sixteenth of the bow', () => {
    const [none, one] = [rows(0), rows(1)];
    expect(figure(none, 'die.plate-bow') / figure(one, 'die.plate-bow')).toBeCloseTo(16, 9);
    expect(figure(none, 'die.plate-bow')).toBeCloseTo(figure(none, 'die.plate-bow-free'), 12);
    expect(none.values.has('die.pillar-load')).toBe(false);
  });
  test('without pillars the parting line gapes, and the fix names rows and plate', () => {
    const finding = findingsOf(rows(0)).get('die/flash-gap');
    expect(finding?.severity).toBe('error');
    expect(finding?.fix).toContain('Plan rows of pillars: 1; or a plate of 154 mm');
  });
  test('the rows planned are just enough', () => {
    const ledger = dieOf({ ...LID, pinned: { 'machine.model': 'cold-2500' } });
    const [planned, allowed] = [figure(ledger, 'die.pillar-rows'), figure(ledger, 'die.bow-greatest')];
    expect(figure(ledger, 'die.plate-bow')).toBeLessThanOrEqual(allowed);
    expect(figure(rows(planned - 1), 'die.plate-bow')).toBeGreaterThan(allowed);
    const findings = findingsOf(ledger);
    for (const code of ['die/bow', 'die/flash-gap', 'die/pillar', 'die/pillar-room']) expect(findings.has(code), code).toBe(false);
  });
  test('a thinner plate than planned bows, one as thick as the fix says does not', () => {
    const finding = findingsOf(rows(1, { 'die.plate': '55 mm' })).get('die/bow');
    expect(finding?.severity).toBe('warning');
    const thicker = /a plate of (\d+) mm/.exec(finding?.fix ?? '')?.[1];
    expect(findingsOf(rows(1, { 'die.plate': `${thicker} mm` })).has('die/bow')).toBe(false);
  });
  test('a thin pillar is pressed too hard', () => {
    expect(findingsOf(rows(1, { 'die.pillar-diameter': '40 mm' })).get('die/pillar')?.severity).toBe('warning');
    expect(findingsOf(rows(6, { 'die.plate': '20 mm', 'die.pillar-diameter': '65 mm' })).has('die/pillar-room')).toBe(true);
  });
});

describe('slender cores', () => {
  const core = (diameter: number, depth: number, kind = 'blind', direction = 'z'): string =>
    `holes:\n  - { id: A, diameter: ${diameter} mm, depth: ${depth} mm, kind: ${kind}, direction: ${direction} }\n`;
  test('a stubby core is stiff, a slender one bends, and the length of the fix holds', () => {
    expect(findingsOf(dieOf(LID, core(10, 20))).has('die/core-bending')).toBe(false);
    const finding = findingsOf(dieOf(LID, core(10, 40))).get('die/core-bending');
    expect(finding?.severity).toBe('note');
    const shorter = /([\d.]+) mm of length/.exec(finding?.fix ?? '')?.[1];
    expect(findingsOf(dieOf(LID, core(10, Math.floor(Number(shorter))))).has('die/core-bending')).toBe(false);
    const thicker = /([\d.]+) mm of diameter/.exec(finding?.fix ?? '')?.[1];
    expect(findingsOf(dieOf(LID, core(Math.ceil(Number(thicker)), 40))).has('die/core-bending')).toBe(false);
  });
  test('a core breaks by its slenderness alone, whatever its size', () => {
    const ledger = dieOf({ ...LID, pinned: { 'heat.surface-peak': '450 degC' } }, core(10, 40));
    const greatest = figure(ledger, 'die.core-slenderness-greatest');
    const stress = (16 * figure(ledger, 'die.stream-pressure') * greatest ** 2) / Math.PI;
    expect(stress).toBeCloseTo(figure(ledger, 'die.core-stress-greatest'), 6);
    expect(findingsOf(ledger).has('die/core-stress')).toBe(false);
  });
  test('the pressure is that of the stream, far below the metal pressure and below that behind the gate', () => {
    const ledger = dieOf(LID, core(10, 20));
    const density = ledger.value('gate.liquid-density').in('kg/m3').value;
    expect(figure(ledger, 'die.stream-pressure')).toBeCloseTo((density * figure(ledger, 'gate.velocity') ** 2) / 2e6, 9);
    expect(figure(ledger, 'die.stream-pressure')).toBeLessThan(figure(ledger, 'gate.die-pressure'));
    expect(figure(ledger, 'die.stream-pressure')).toBeLessThan(figure(ledger, 'clamp.pressure-reached') / 5);
  });
  test('cores on slides are looked at, drilled holes are not', () => {
    expect(dieOf(LID, core(8, 16, 'blind', 'x')).values.has('die.core-bending[A]')).toBe(true);
    expect(dieOf(LID, core(1.5, 16)).values.has('die.core-bending[A]')).toBe(false);
  });
});

describe('life', () => {
  test('sets by life, cavities and rejects, with the range of the sources', () => {
    const ledger = dieOf({ ...LID, production: VOLUME, pinned: { 'machine.cavities': '1' } });
    // 600,000 parts at 5 % rejects are 631,579 shots.
    expect(figure(ledger, 'die.shots-needed')).toBeCloseTo(600000 / 0.95, 6);
    expect(['die.sets', 'die.sets-table', 'die.sets-least', 'die.sets-greatest', 'die.core-sets'].map((id) => figure(ledger, id))).toEqual([6, 7, 4, 11, 5]);
    expect(findingsOf(ledger).get('die/life')?.fix).toContain('6 sets');
  });
  test('lead has no published life and is not judged by one', () => {
    const ledger = dieOf({ ...LEVER, alloy: 'Pb-5Sb', quality: 'use: general' });
    expect(ledger.values.has('die.life')).toBe(false);
    expect(steelOf(ledger)).toBe('P20');
  });
});

describe('heat checking', () => {
  const at = (swing: number, peak: number): Ledger => dieOf({ ...LID, pinned: { 'heat.surface-swing': `${swing} K`, 'heat.surface-peak': `${peak} degC` } });
  test('675 MPa for 200 K with the steel of 250 degC, 975 MPa for 300 K with that of 500 degC', () => {
    expect(figure(at(200, 250), 'die.thermal-stress')).toBeCloseTo(675.4, 1);
    expect(figure(at(300, 500), 'die.thermal-stress')).toBeCloseTo(975, 6);
    expect(figure(at(300, 500), 'die.heat-check-index')).toBeCloseTo(975 / 850, 6);
  });
  test('the swing of the fix keeps early checking off', () => {
    const findings = findingsOf(at(250, 450));
    expect(findings.get('die/heat-check')?.severity).toBe('note');
    expect(findingsOf(at(300, 500)).get('die/heat-check-yield')?.severity).toBe('warning');
    expect(findingsOf(at(300, 500)).has('die/heat-check')).toBe(false);
    const better = figure(at(250, 450), 'die.swing-for-index');
    expect(findingsOf(at(better - 0.01, 450)).has('die/heat-check')).toBe(false);
    expect(findingsOf(at(better + 0.01, 450)).has('die/heat-check')).toBe(true);
  });
});

test('preheat by family, and a cold die is told of', () => {
  expect([figure(dieOf(LID), 'die.preheat'), figure(dieOf(LEVER), 'die.preheat')]).toEqual([215, 175]);
  expect(findingsOf(dieOf({ ...LID, pinned: { 'die.preheat': '60 degC' } })).get('die/preheat')?.fix).toContain('180');
});

describe('zinc-aluminium', () => {
  const za = (alloy: string): Ledger => dieOf({ ...LEVER, alloy, wall: 3, quality: 'use: general' });
  test('ZA-12 is preheated towards the surface that it runs at, ZA-8 as zinc is', () => {
    const [twelve, eight] = [za('ZA-12'), za('ZA-8')];
    expect([figure(twelve, 'die.preheat'), twelve.value('die.preheat-least').status]).toEqual([210, 'practice']);
    expect(figure(twelve, 'die.preheat')).toBeLessThanOrEqual(figure(twelve, 'fill.die-temperature'));
    expect(figure(eight, 'die.preheat')).toBe(175);
  });
  test('the plan says that the life of its dies is that printed for zinc', () => {
    const ledger = za('ZA-12');
    expect(ledger.value('die.life').note).toContain('last less');
    // Beside its value stands how it came about, with the note of the table.
    expect(dieStep.show(ledger).some((block) => block.kind === 'values' && block.ids.includes('die.life'))).toBe(true);
  });
});

test('the section shows steels, slides, the load case and the figure', () => {
  const shown = JSON.stringify(dieStep.show(dieOf(LID, 'holes:\n  - { id: A, diameter: 8 mm, depth: 16 mm, kind: blind, direction: x }\n')));
  for (const words of ['Steels by component', 'Slides in the die', 'Load case', 'die-layout', 'Die life', 'before the first shot'])
    expect(shown).toContain(words);
});
