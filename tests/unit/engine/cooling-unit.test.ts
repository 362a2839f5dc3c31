import { describe, expect, test } from 'vitest';
import { BARE_PLANT, plantWith } from './plant-with.ts';
import { figure, findingsOf, LID, type SmallPart, workTo } from './work-to.ts';

const UNITS = [
  'cooling:',
  '  - { id: tower, medium: water, temperature: [18 degC, 70 degC], flow: 400 l/min, pressure: 6 bar }',
  '  - { id: tempering, medium: pressurised water, temperature: [35 degC, 150 degC], flow: 180 l/min, pressure: 5 bar }',
  '  - { id: oil unit, medium: oil, temperature: [140 degC, 290 degC], flow: 160 l/min, pressure: 8 bar }',
];
const PINS = { 'machine.cavities': '1' };
const cool = (plant: string, part: SmallPart = LID, pins: Readonly<Record<string, string>> = {}) =>
  workTo('cooling', { ...part, production: 'per_year: 100000', pinned: { ...PINS, ...pins } }, plant);
const only = (...units: readonly string[]): string => plantWith('cooling:', ...units);
const [, TOWER, , OIL] = UNITS as [string, string, string, string];

describe('the coolant comes from the units of the plant', () => {
  const ledger = cool(plantWith(...UNITS));
  test('the coldest water lays out the lines, and a unit that gives it as planned is chosen', () => {
    expect([ledger.text('cooling.medium'), figure(ledger, 'cooling.coolant-least')]).toEqual(['water', 18]);
    const coolant = figure(ledger, 'cooling.coolant-temperature');
    const unit = ledger.decisions.get('cooling.unit');
    expect(['tower', 'tempering']).toContain(unit?.value);
    expect([coolant >= figure(ledger, 'cooling.unit-coldest'), coolant <= figure(ledger, 'cooling.unit-hottest')]).toEqual([true, true]);
    expect(unit?.because).toMatch(/^the smallest unit of the plant that runs the coolant as planned/);
    expect(figure(ledger, 'cooling.pressure-greatest')).toBeCloseTo(figure(ledger, 'cooling.unit-pressure') / 2, 9);
    expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('cooling/unit'))).toEqual([]);
  });
  test('colder water asks for less line than warm water', () => {
    const warm = cool(plantWith(...UNITS.map((line) => line.replace('18 degC', '60 degC').replace('35 degC', '60 degC'))));
    const needed = (one: typeof ledger): number => figure(one, 'cooling.length-needed[ejector half]');
    expect(needed(warm)).toBeGreaterThan(1.1 * needed(ledger));
  });
  test('a plant with oil alone cools with oil, and magnesium asks for oil whatever the plant has', () => {
    expect(cool(only(OIL)).text('cooling.medium')).toBe('oil');
    const magnesium = cool(only(TOWER), { ...LID, alloy: 'AZ91D' });
    expect([magnesium.text('cooling.medium'), magnesium.text('cooling.unit')]).toEqual(['oil', 'none']);
    expect(findingsOf(magnesium).get('cooling/unit')).toMatchObject({
      severity: 'error',
      message: expect.stringMatching(/^The plant lists no unit for oil; the lines are to carry/),
    });
  });
  test('pressurised water needs no further unit above 95 degC, open water does', () => {
    const hot = { 'cooling.coolant-temperature': '120 degC' };
    expect(findingsOf(cool(plantWith(...UNITS), LID, hot)).has('cooling/pressurised')).toBe(false);
    expect(findingsOf(cool(BARE_PLANT, LID, hot)).has('cooling/pressurised')).toBe(true);
  });
  test('a pin is kept, and one that the plant does not have is a finding', () => {
    expect(cool(plantWith(...UNITS), LID, { 'cooling.unit': 'tempering' }).decisions.get('cooling.unit')?.kind).toBe('pinned');
    expect(findingsOf(cool(plantWith(...UNITS), LID, { 'cooling.unit': 'towers' })).get('spec/unknown-word')?.message).toContain('did you mean "tower"?');
  });
});

describe('a unit that falls short', () => {
  test.each([
    [
      'cooling/unit-flow',
      '- { id: trickle, medium: water, temperature: [18 degC, 90 degC], flow: 5 l/min, pressure: 6 bar }',
      /Plan a unit for \d+ l\/min or more/,
    ],
    ['cooling/pressure-drop', '- { id: weak, medium: water, temperature: [18 degC, 90 degC], flow: 400 l/min, pressure: 0.2 bar }', /l\/min a circuit/],
    [
      'cooling/unit-temperature',
      '- { id: chiller, medium: water, temperature: [5 degC, 15 degC], flow: 400 l/min, pressure: 6 bar }',
      /Plan a unit that gives \d+ degC/,
    ],
  ])('%s says so with its number', (code, unit, fix) => {
    const ledger = cool(only(`  ${unit}`));
    expect(findingsOf(ledger).get(code)?.fix).toMatch(fix);
    expect(ledger.decisions.get('cooling.unit')?.because).toContain('comes nearest');
  });
});

test('a plant without units is planned with the figures of the tables', () => {
  const ledger = cool(BARE_PLANT);
  expect([
    ledger.text('cooling.plant-media'),
    ledger.texts.has('cooling.unit'),
    figure(ledger, 'cooling.coolant-least'),
    figure(ledger, 'cooling.pressure-greatest'),
  ]).toEqual(['not given', false, 30, 2]);
});
