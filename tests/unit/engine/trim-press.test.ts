import { describe, expect, test } from 'vitest';
import { collectCautions } from '../../../src/engine/cautions.ts';
import { finishStep } from '../../../src/engine/steps/finish/index.ts';
import { searchMachines } from '../../../src/engine/steps/machine/index.ts';
import { BARE_PLANT, plantWith } from './plant-with.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PRESSES = [
  'trim_presses:',
  '  - { id: small, force: 100 kN, stroke: 350 mm, platen: [900 mm, 900 mm], drive: part-revolution clutch, hourly_rate: 28 }',
  '  - { id: narrow, force: 250 kN, stroke: 400 mm, platen: [300 mm, 900 mm], drive: hydraulic }',
  '  - { id: low, force: 260 kN, stroke: 150 mm, platen: [900 mm, 900 mm], drive: hydraulic }',
  '  - { id: fits, force: 270 kN, stroke: 400 mm, platen: [900 mm, 900 mm], drive: full-revolution clutch, hourly_rate: 44 }',
  '  - { id: large, force: 630 kN, stroke: 600 mm, platen: [1200 mm, 1000 mm] }',
];
const PINS = { 'machine.cavities': '1' };
const lid = (pins: Readonly<Record<string, string>> = {}, plant = plantWith(...PRESSES), part: SmallPart = LID) =>
  workTo('cost', { ...part, production: 'per_year: 100000, life: 400000', pinned: { ...PINS, 'finish.shear-strength': '195 MPa', ...pins } }, plant);

describe('the trim press of the plant', () => {
  const ledger = lid();
  const decision = ledger.decisions.get('finish.press-model');

  test('is the smallest that gives the force and takes the shot, and each smaller one says what it lacks', () => {
    expect([figure(ledger, 'finish.trim-force') > 100, figure(ledger, 'finish.trim-force') < 250]).toEqual([true, true]);
    expect([decision?.value, figure(ledger, 'finish.press'), figure(ledger, 'finish.press-stroke')]).toEqual(['fits', 270, 400]);
    const why = new Map(decision?.alternatives.map(({ value, because }) => [value, because]));
    expect(why.get('small')).toMatch(/^closing force: 100 kN, and the shot asks for 1\d\d kN/);
    expect(why.get('narrow')).toMatch(/^platen, .*: 300 mm, and the shot asks for/);
    expect(why.get('low')).toBe('stroke: 150 mm, and the shot asks for 192 mm');
    expect(why.get('large')).toBe('takes the shot, with 630 kN');
    for (const code of ['finish/press-greatest', 'finish/press-platen', 'finish/press-stroke', 'finish/press-usual'])
      expect(findingsOf(ledger).has(code)).toBe(false);
  });

  test('answers how it is driven, and its own caution follows', () => {
    expect(ledger.decisions.get('finish.press-drive')?.value).toBe('full-revolution clutch');
    const cautions = collectCautions(ledger).map(({ id }) => id);
    expect(cautions).toEqual(expect.arrayContaining(['trimming/press', 'trimming/press-full-revolution']));
    expect(cautions).not.toContain('trimming/press-fluid');
    expect(JSON.stringify(finishStep.show(ledger))).not.toContain('Ask before the press is planned');
  });

  test('sets the rate of trimming', () => {
    expect(figure(ledger, 'cost.trim-rate')).toBe(44);
    expect(figure(lid({ 'finish.press-model': 'large' }), 'cost.trim-rate')).toBe(36);
    expect(figure(lid({}, BARE_PLANT), 'cost.trim-rate')).toBe(36);
  });

  test('is asked for its drive where the plant file does not say', () => {
    const large = lid({ 'finish.press-model': 'large' });
    expect([large.decisions.get('finish.press-model')?.kind, large.decisions.get('finish.press-drive')?.value]).toEqual(['pinned', 'to be asked']);
    expect(large.decisions.get('finish.press-model')?.because).toContain('the smallest that takes the shot is fits');
  });

  test('that the plant does not have is a finding at the pin', () => {
    const findings = findingsOf(lid({ 'finish.press-model': 'fit' }));
    expect(findings.get('spec/unknown-word')?.message).toBe('the plant has no trim press "fit"; did you mean "fits"?');
  });
});

describe('where no press takes the shot', () => {
  test.each([
    ['finish/press-greatest', '- { id: weak, force: 60 kN, stroke: 500 mm, platen: [900 mm, 900 mm] }', /Plan a press of 1\d\d kN or more/],
    [
      'finish/press-platen',
      '- { id: slim, force: 400 kN, stroke: 500 mm, platen: [250 mm, 200 mm] }',
      /Plan a press with a platen of \d+ mm by \d+ mm or more/,
    ],
    ['finish/press-stroke', '- { id: flat, force: 400 kN, stroke: 100 mm, platen: [900 mm, 900 mm] }', /stroke of 192 mm or more/],
  ])('%s gives the number', (code, press, fix) => {
    const ledger = lid({}, plantWith('trim_presses:', `  ${press}`));
    expect(findingsOf(ledger).get(code)?.fix).toMatch(fix);
    expect(ledger.decisions.get('finish.press-model')?.because).toContain('no press of the plant takes the shot');
  });
});

describe('a plant without presses', () => {
  test('is planned as before: the next size of the series, and the drive is asked', () => {
    const ledger = lid({}, BARE_PLANT);
    expect([ledger.text('finish.press-from'), ledger.decisions.has('finish.press-model')]).toEqual(['planning series', false]);
    expect([100, 160, 250]).toContain(figure(ledger, 'finish.press'));
    expect(ledger.decisions.get('finish.press-drive')?.value).toBe('to be asked');
  });

  test('nor is a press of the plant taken where none is used', () => {
    const ledger = lid({ 'finish.trimming': 'broken off and dressed by hand' }, plantWith(...PRESSES), LEVER);
    expect([ledger.text('finish.press-from'), ledger.decisions.get('finish.press-drive')?.value]).toEqual(['planning series', 'no press']);
    expect(figure(ledger, 'cost.trim-rate')).toBe(36);
  });
});

test('the search rules nothing out wrongly, although a smaller shot may go to a cheaper press', () => {
  const dear = PRESSES.map((line) => line.replace('hourly_rate: 44', 'hourly_rate: 400').replace('hourly_rate: 28', 'hourly_rate: 1'));
  const part = { ...LEVER, production: 'per_year: 400000, life: 2000000' };
  const [short, whole] = [false, true].map((all) => searchMachines(workTo('gate', part, plantWith(...dear)), all)?.chosen);
  expect(short?.cost).toBeGreaterThan(0);
  expect([short?.cost, short?.candidate.cavities, short?.candidate.machine.id]).toEqual([whole?.cost, whole?.candidate.cavities, whole?.candidate.machine.id]);
});

test('a large press of an invented plant does not hide that usual ones are smaller', () => {
  const twelve = { 'machine.cavities': '24' };
  const invented = plantWith(...PRESSES).replace('invented: false', 'invented: true');
  const usual = (plant: string): boolean => findingsOf(lid(twelve, plant, LEVER)).has('finish/press-usual');
  expect([usual(invented), usual(plantWith(...PRESSES)), usual(BARE_PLANT)]).toEqual([true, false, true]);
});
