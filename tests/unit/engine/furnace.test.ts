import { describe, expect, test } from 'vitest';
import { furnaceStep } from '../../../src/engine/steps/furnace/index.ts';
import { BARE_PLANT, plantWith } from './plant-with.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const FURNACES = [
  'furnaces:',
  '  - { id: ladle box, kind: holding, families: [aluminium], capacity: 60 kg, temperature: [640 degC, 760 degC] }',
  '  - { id: cold one, kind: holding, families: [aluminium], capacity: 900 kg, temperature: [450 degC, 600 degC] }',
  '  - { id: doser, kind: dosing, alloys: [A380], capacity: 1200 kg, temperature: [640 degC, 780 degC] }',
  '  - { id: tower, kind: melting, families: [aluminium], capacity: 1500 kg, melt_rate: 800 kg/h, temperature: [640 degC, 800 degC], energy: 0.7 kWh/kg }',
  '  - { id: small tower, kind: melting, families: [aluminium], capacity: 500 kg, melt_rate: 30 kg/h, temperature: [640 degC, 800 degC], energy: 1.4 kWh/kg }',
  '  - { id: zinc pot, kind: melting and holding, families: [zinc, zinc-aluminium], capacity: 800 kg, melt_rate: 300 kg/h, temperature: [400 degC, 480 degC] }',
];
const production = 'per_year: 100000, life: 400000';
const plan = (part: SmallPart = LID, plant = plantWith(...FURNACES), pins: Readonly<Record<string, string>> = {}) =>
  workTo('cost', { ...part, production, pinned: { 'machine.cavities': '1', ...pins } }, plant);
const of = (ledger: ReturnType<typeof plan>, id: string) => ledger.decisions.get(id);

describe('metal an hour', () => {
  const ledger = plan();
  test('is the shot at the planned pace, and new metal with returns makes up what is melted', () => {
    const [shot, shots] = [figure(ledger, 'shot.mass'), figure(ledger, 'cycle.shots')];
    expect(figure(ledger, 'furnace.poured')).toBeCloseTo(shot * shots, 9);
    expect(figure(ledger, 'furnace.melted')).toBeCloseTo(figure(ledger, 'furnace.returned') + figure(ledger, 'furnace.new-metal'), 9);
  });
  test('agrees with the balance of a good part that the cost is made of', () => {
    const good = figure(ledger, 'cycle.good-parts');
    expect(figure(ledger, 'furnace.new-metal')).toBeCloseTo(good * figure(ledger, 'metal.new-per-part'), 6);
    expect(figure(ledger, 'furnace.melted')).toBeCloseTo(good * figure(ledger, 'metal.melted-per-part'), 6);
    expect(figure(ledger, 'furnace.returned')).toBeCloseTo(good * figure(ledger, 'metal.returns-per-part'), 6);
  });
  test('is all new where returns are sold', () => {
    const sold = plan(LID, plantWith(...FURNACES).replace('  energy: 0.08', '  energy: 0.08\n  returns_sold: 60 %'));
    expect(sold.values.has('furnace.returned')).toBe(false);
    expect(figure(sold, 'furnace.new-metal')).toBe(figure(sold, 'furnace.melted'));
  });
});

describe('the furnaces of the plant', () => {
  const ledger = plan();
  test('the smallest that holds the metal hot enough and long enough is planned; the others say why not', () => {
    expect(of(ledger, 'furnace.holding')?.value).toBe('doser');
    const why = new Map(of(ledger, 'furnace.holding')?.alternatives.map(({ value, because }) => [value, because]));
    expect(why.get('ladle box')).toContain('holds 60 kg, poured out too soon');
    expect(why.get('cold one')).toMatch(/^holds 450 degC to 600 degC, and the metal is held at/);
    expect(why.has('zinc pot')).toBe(false);
  });
  test('the smallest that melts enough is planned, with its energy', () => {
    expect(of(ledger, 'furnace.melting')?.value).toBe('tower');
    expect(figure(ledger, 'metal.melting-energy')).toBe(0.7);
    expect(of(ledger, 'furnace.melting')?.alternatives).toContainEqual({ value: 'small tower', because: 'melts 30 kg/h' });
    expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('furnace/'))).toEqual([]);
    expect(JSON.stringify(furnaceStep.show(ledger))).toContain('furnace.melt-use');
  });
  test('a hot chamber machine holds the metal in its pot', () => {
    const lever = plan(LEVER);
    expect([lever.text('furnace.holding'), lever.decisions.has('furnace.holding'), of(lever, 'furnace.melting')?.value]).toEqual([
      'pot of the machine',
      false,
      'zinc pot',
    ]);
    expect(JSON.stringify(furnaceStep.show(lever))).toContain('pot of the hot chamber machine');
  });
  test('a furnace that melts and holds is used for both where it melts enough', () => {
    const both = '  - { id: both, kind: melting and holding, families: [aluminium], capacity: 700 kg, melt_rate: 900 kg/h, temperature: [640 degC, 760 degC] }';
    const one = plan(LID, plantWith(...FURNACES, both));
    expect([of(one, 'furnace.holding')?.value, of(one, 'furnace.melting')?.value, of(one, 'furnace.melting')?.because]).toEqual([
      'both',
      'both',
      'the holding furnace melts enough for this part',
    ]);
  });
  test('a pin is kept, and one that the plant does not have is a finding', () => {
    expect(of(plan(LID, plantWith(...FURNACES), { 'furnace.melting': 'small tower' }), 'furnace.melting')?.because).toBe(
      'pinned by the engineer; the smallest of the plant that melts enough for this part is tower',
    );
    const findings = findingsOf(plan(LID, plantWith(...FURNACES), { 'furnace.holding': 'dozer' }));
    expect(findings.get('spec/unknown-word')?.message).toContain('did you mean "doser"?');
  });
  test('an alloy that no table has is named at its line', () => {
    const finding = findingsOf(plan(LID, plantWith(...FURNACES.map((line) => line.replace('[A380]', '[A380, A999]'))))).get('spec/unknown-alloy');
    expect(finding?.message).toBe('furnace doser: no alloy is called "A999"; it is passed over');
    expect(finding?.at?.path).toBe('furnaces[2].alloys[1]');
  });
});

describe('what no furnace of the plant does', () => {
  const only = (...lines: readonly string[]): string => plantWith('furnaces:', ...lines);
  const [, box, cold, , , small, zinc] = FURNACES as [string, string, string, string, string, string, string];
  test.each([
    ['furnace/holding', only(zinc), /Add a holding or dosing furnace for aluminium with a window around \d{3} degC/],
    ['furnace/melting', only(zinc), /Add a melting furnace for aluminium of \d+ kg\/h or more/],
    ['furnace/temperature', only(cold), /Hold the metal between 450 degC and 600 degC/],
    ['furnace/hold', only(box), /Plan a furnace of \d{2,4} kg or more/],
    ['furnace/melt-rate', only(small, box), /Melt \d{2,4} kg\/h or more/],
  ])('%s gives the number', (code, plant, fix) => {
    expect(findingsOf(plan(LID, plant)).get(code)?.fix).toMatch(fix);
  });
});

test('a plant without furnaces says nothing of them', () => {
  const ledger = plan(LID, BARE_PLANT);
  expect([...ledger.values.keys()].filter((id) => id.startsWith('furnace.'))).toEqual([]);
  expect([ledger.text('furnace.given'), furnaceStep.show(ledger).length]).toEqual(['no', 0]);
  expect([...findingsOf(ledger).keys()].filter((code) => code.startsWith('furnace/'))).toEqual([]);
});
