import { describe, expect, test } from 'vitest';
import { BARE_PLANT, plantWith } from './plant-with.ts';
import { figure, findingsOf, LID, type SmallPart, workTo } from './work-to.ts';

const PINS = { 'machine.cavities': '1' };
const plan = (plant: string, pins: Readonly<Record<string, string>> = {}, part: SmallPart = LID, last = 'lubricant') =>
  workTo(last, { ...part, production: 'per_year: 100000, life: 400000', pinned: { ...PINS, ...pins } }, plant);
/** Every machine of the plant with a line more. */
const machines = (line: string, plant = BARE_PLANT): string => plant.replace(/^ {4}dry_cycle:/gm, `    ${line}\n    dry_cycle:`);

describe('the spray of the plant', () => {
  const bare = plan(BARE_PLANT);
  test('its times, dilution and flow go before those of the tables', () => {
    const own = plan(plantWith('spray: { kind: water-based, dilution: 90, flow: 40 l/min, time: 4.5 s, blow: 1.2 s }'));
    expect(['cycle.spray-each', 'cycle.blow-each', 'lubricant.dilution', 'lubricant.head-flow'].map((id) => figure(own, id))).toEqual([4.5, 1.2, 90, 40]);
    expect(own.value('cycle.spray-each').source).toEqual(['PLANT']);
    expect(figure(own, 'cycle.time')).toBeLessThan(figure(bare, 'cycle.time'));
    expect([bare.text('lubricant.plant-spray'), bare.values.has('lubricant.head-flow')]).toEqual(['not given', false]);
  });
  test('a head that gives too little is a finding with the time that it would take', () => {
    const weak = findingsOf(plan(plantWith('spray: { kind: water-based, flow: 0.2 l/min }'))).get('lubricant/head-flow');
    expect(weak?.message).toContain('the spray head of the plant gives 0.2 l/min');
    expect(weak?.fix).toMatch(/^Spray for \d+(\.\d)? s/);
    expect(findingsOf(plan(plantWith('spray: { kind: water-based, flow: 200 l/min }'))).has('lubricant/head-flow')).toBe(false);
  });
  test('a minimal quantity is water-free and leaves its heat to the lines', () => {
    const mist = plan(plantWith('spray: { kind: minimal-quantity }'));
    expect([mist.decisions.get('lubricant.kind')?.value, figure(mist, 'heat.share-spray')]).toEqual(['water-free', 0]);
    expect(figure(mist, 'heat.share-lines')).toBeGreaterThan(figure(bare, 'heat.share-lines') + 15);
    expect([mist.values.has('heat.spray-rate'), mist.values.has('lubricant.cooling-spray')]).toEqual([false, false]);
    expect(figure(mist, 'cooling.length-needed[ejector half]')).toBeGreaterThan(figure(bare, 'cooling.length-needed[ejector half]'));
    expect(figure(mist, 'cycle.spray-each')).toBe(figure(mist, 'cycle.spray-least'));
    expect([...findingsOf(mist).keys()].filter((code) => /^(heat\/shares|cycle\/spray|lubricant\/head-flow)$/.test(code))).toEqual([]);
    // 2 um of undiluted lubricant on the whole face, of which half of the mist stays.
    expect(figure(mist, 'lubricant.concentrate')).toBeCloseTo((figure(mist, 'lubricant.area') * 2e-4) / 0.5, 9);
    expect(['lubricant.spray', 'lubricant.dilution', 'lubricant.water-free'].filter((id) => mist.values.has(id))).toEqual([]);
    expect(mist.unchecked.map(({ id }) => id).filter((id) => id.startsWith('lubricant'))).toEqual([]);
  });
});

describe('what a machine has beside it', () => {
  const side = (pulls: number): string =>
    Array.from({ length: pulls }, (_, i) => `  - { id: H${i}, diameter: 12 mm, depth: 60 mm, kind: blind, direction: ${['x', '-x', 'y', '-y'][i]} }`).join(
      '\n',
    );
  const pulled: SmallPart = {
    ...LID,
    quality: `use: general }\nholes:\n${side(3)}\nwalls: []\nmachining: []\nfillets: []\nribs: []\ninserts: []\nundercuts: []\ndimensions: []\nproduction: { per_year: 100000`,
  };

  test('core circuits are held against the slides on cylinders', () => {
    const few = workTo('cycle', { ...pulled, pinned: { ...PINS, 'parting.slide-drive': 'hydraulic cylinder' } }, machines('core_circuits: 2'));
    expect(figure(few, 'parting.hydraulic-cores')).toBe(3);
    expect(findingsOf(few).get('parting/core-circuits')?.message).toMatch(
      /^A casting has 3 slides on hydraulic cylinders, and machine .* has 2 core circuits$/,
    );
    const enough = workTo('cycle', { ...pulled, pinned: { ...PINS, 'parting.slide-drive': 'hydraulic cylinder' } }, machines('core_circuits: 4'));
    expect(findingsOf(enough).has('parting/core-circuits')).toBe(false);
    expect(findingsOf(plan(BARE_PLANT)).has('parting/core-circuits')).toBe(false);
  });

  test('vacuum that is planned asks for a unit', () => {
    const part = { ...LID, quality: 'use: structural' };
    const none = findingsOf(plan(machines('vacuum: false'), {}, part)).get('vent/vacuum-unit');
    expect(none?.message).toMatch(/^The cavity is to be evacuated to \d+ mbar, and machine .* has no vacuum unit$/);
    expect(findingsOf(plan(machines('vacuum: true'), {}, part)).has('vent/vacuum-unit')).toBe(false);
    expect(findingsOf(plan(BARE_PLANT, {}, part)).has('vent/vacuum-unit')).toBe(false);
    expect(findingsOf(plan(machines('vacuum: false'), { 'vent.kind': 'chill' })).has('vent/vacuum-unit')).toBe(false);
  });

  test('a machine with a vacuum unit is found where one of the plant has it', () => {
    const part = { ...LID, quality: 'use: structural, cold_shut: some' };
    const plain = plan(BARE_PLANT, {}, part).text('machine.model');
    const other = machines('vacuum: true').replace(new RegExp(`(id: ${plain}\\n[^]*?)vacuum: true`), '$1vacuum: false');
    const ledger = plan(other, {}, part);
    expect([ledger.text('machine.model') === plain, ledger.text('machine.vacuum')]).toEqual([false, 'yes']);
  });

  test('taking out by hand takes the slow end of the trade', () => {
    const [robot, hand] = ['robot', 'by hand'].map((word) => plan(machines(`extraction: ${word}`), { 'machine.model': 'cold-4000' }, LID, 'cycle')) as [
      ReturnType<typeof plan>,
      ReturnType<typeof plan>,
    ];
    expect(figure(hand, 'cycle.extract')).toBeGreaterThanOrEqual(figure(hand, 'cycle.extract-greatest'));
    expect(figure(hand, 'cycle.extract')).toBeGreaterThan(figure(robot, 'cycle.extract'));
    expect(figure(robot, 'cycle.extract')).toBe(figure(plan(BARE_PLANT, { 'machine.model': 'cold-4000' }, LID, 'cycle'), 'cycle.extract'));
  });
});
