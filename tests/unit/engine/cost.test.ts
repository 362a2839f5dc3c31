import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import type { Chart } from '../../../src/engine/plan.ts';
import { costStep } from '../../../src/engine/steps/cost/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PRODUCTION = 'per_year: 60000, life: 300000, hours_per_year: 4000';
const PLANT = readFileSync(join(import.meta.dirname, '../../../rules/plants/typical.yaml'), 'utf8');
const WITHOUT = PLANT.slice(0, PLANT.indexOf('prices:\n'));
/** The typical machines with prices of one's own. */
const withPrices = (lines: string): string => `${WITHOUT}prices:\n  currency: EUR\n  date: 2026-03-31\n${lines}`;
const lid = (pins: Readonly<Record<string, string>> = {}, plant?: string, more: Partial<SmallPart> = {}): Ledger =>
  workTo('cost', { ...LID, production: PRODUCTION, ...more, pinned: { 'machine.cavities': '1', ...pins } }, plant);
const shown = (ledger: Ledger): string => JSON.stringify(costStep.show(ledger));
const shares = (ledger: Ledger): number[] => [...ledger.values].filter(([id]) => id.startsWith('cost.share[') && !id.includes('total')).map(([, v]) => v.value);

describe('a lid, worked by hand', () => {
  // Part 1 kg, shot 1.8 kg, 5 % rejects, 3 % loss: 1.0586 kg of new metal; 95 an hour, 60 s at 90 %, one cavity.
  const pins = {
    'part.mass': '1 kg',
    'shot.mass': '1.8 kg',
    'cycle.time': '60 s',
    'machine.hourly-rate': '95',
    'cost.die': '60000',
    'die.sets': '3',
    'metal.melting-energy': '1 kWh/kg',
    'cost.machining-features': '4',
  };
  const ledger = lid(pins, undefined);

  test.each([
    ['metal.yield', 100 / 1.8],
    ['metal.new-per-part', 1 + (1.8 / 0.95) * (0.03 / 0.97)],
    ['metal.melted-per-part', 1.8 / 0.95 / 0.97],
    ['metal.returns-per-part', 1.8 / 0.95 - 1],
    ['cost.metal', 2],
    ['cost.melt-loss', 2 * (1.8 / 0.95) * (0.03 / 0.97)],
    ['cost.melting', (1.8 / 0.95 / 0.97) * 0.08],
    ['cost.machine', (95 * 60) / 0.9 / 3600 / 0.95],
    ['cost.trimming', (36 * 9) / 3600 / 0.95],
    ['cost.machining', (50 * 24) / 3600],
    ['cost.set', 27000],
    ['cost.die-per-part', (60000 + 2 * 27000) / 300000],
    ['cost.trim-die-per-part', 7200 / 300000],
  ])('%s is %d', (id, expected) => {
    expect(figure(ledger, id)).toBeCloseTo(expected, 9);
  });

  test('the whole is the sum of its lines, and the shares are the whole', () => {
    const lines = ['metal', 'melt-loss', 'melting', 'machine', 'trimming', 'machining'].map((name) => figure(ledger, `cost.${name}`));
    const dies = figure(ledger, 'cost.die-per-part') + figure(ledger, 'cost.trim-die-per-part');
    const without = lines.reduce((sum, line) => sum + line, 0);
    expect(figure(ledger, 'cost.without-die')).toBeCloseTo(without, 9);
    expect(figure(ledger, 'cost.per-part')).toBeCloseTo(without + dies, 9);
    expect(shares(ledger).reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 9);
    expect(figure(ledger, 'cost.share[total]')).toBeCloseTo(100, 9);
    expect(figure(ledger, 'cost.dies-share')).toBeCloseTo((100 * dies) / (without + dies), 9);
    expect(figure(ledger, 'cost.per-year')).toBeCloseTo(60000 * figure(ledger, 'cost.per-part'), 6);
    expect(figure(ledger, 'cost.life')).toBeCloseTo(300000 * figure(ledger, 'cost.per-part'), 6);
  });

  test('the closed form gives back the cost of the planned count, and nothing near its best is dearer than 2 %', () => {
    expect(figure(ledger, 'cost.with-cavities[1]')).toBeCloseTo(figure(ledger, 'cost.per-part'), 9);
    expect(figure(ledger, 'cost.at-best')).toBeLessThanOrEqual(figure(ledger, 'cost.with-cavities[1]'));
  });

  test('the die is as pinned, with no range of an estimate', () => {
    expect(ledger.values.get('cost.die')?.kind).toBe('pinned');
    expect(ledger.values.has('cost.die-low')).toBe(false);
    expect(shown(ledger)).toContain('pinned by the engineer');
  });
});

describe('what moves the cost', () => {
  const base = lid();
  const cost = figure(base, 'cost.per-part');

  test.each([
    ['a longer cycle', { 'cycle.time': `${2 * figure(base, 'cycle.time')} s` }],
    ['dearer metal', { 'cost.metal-price': '3' }],
    ['more rejects', { 'cavities.reject-share': '10 %' }],
    ['a dearer die', { 'cost.die': `${2 * figure(base, 'cost.die')}` }],
    ['more loss in the furnace', { 'metal.melt-loss': '6 %' }],
  ])('%s makes it dearer', (_, pins) => {
    expect(figure(lid(pins), 'cost.per-part')).toBeGreaterThan(cost);
  });

  test('the estimate of the die has a range around it and grows with core pulls, finish and precision', () => {
    expect(figure(base, 'cost.die-low')).toBeLessThan(figure(base, 'cost.die'));
    expect(figure(base, 'cost.die-high')).toBeGreaterThan(figure(base, 'cost.die'));
    expect(figure(lid({ 'parting.core-pulls': '2' }), 'cost.die-hours')).toBeGreaterThan(figure(base, 'cost.die-hours') + 2 * 65);
    const plain = lid({}, undefined, { quality: 'finish: functional' });
    expect(figure(lid({}, undefined, { quality: 'finish: superior' }), 'cost.die-hours')).toBeCloseTo(1.3 * figure(plain, 'cost.die-hours'), 6);
    expect(figure(base, 'cost.tolerance-added')).toBe(0);
  });

  test('fewer parts pay more for the dies: five years where no life is given, one set where no volume is', () => {
    const years = lid({}, undefined, { production: 'per_year: 20000, hours_per_year: 4000' });
    expect(figure(years, 'cost.die-parts')).toBe(100000);
    expect(figure(years, 'cost.sets')).toBe(1);
    const none = workTo('cost', { ...LID, pinned: { 'cavities.reject-share': '5 %' } });
    if (none.values.has('cost.die-parts')) {
      expect(figure(none, 'cost.die-parts')).toBeCloseTo(figure(none, 'die.life') * 0.95, 6);
      expect(figure(none, 'cost.sets')).toBe(1);
    } else expect(none.unchecked.some(({ id }) => id === 'cost.per-part')).toBe(true);
  });

  test('leaks are sealed, and what still leaks is paid by the rest', () => {
    const tight = lid({}, undefined, { quality: 'use: pressure-tight' });
    expect(figure(tight, 'cost.impregnation')).toBeCloseTo(0.03 * 2, 9);
    expect(figure(tight, 'cost.leakers')).toBeCloseTo((figure(tight, 'cost.spent') * 0.0015) / 0.9985, 9);
    expect(base.values.has('cost.impregnation')).toBe(false);
  });

  test('all castings are sealed where that is decided, and all that leak are lost where none is', () => {
    const tight = (way: string) => lid({ 'finish.impregnation': way }, undefined, { quality: 'use: pressure-tight' });
    const every = tight('every casting');
    expect(figure(every, 'cost.impregnation')).toBeCloseTo(2, 9);
    expect(figure(every, 'cost.leakers')).toBeCloseTo((figure(every, 'cost.spent') * 0.0015) / 0.9985, 9);
    const none = tight('none');
    expect(none.values.has('cost.impregnation')).toBe(false);
    expect(figure(none, 'cost.leakers')).toBeCloseTo((figure(none, 'cost.spent') * 0.03) / 0.97, 9);
    expect(figure(none, 'cost.spent')).toBeCloseTo(figure(every, 'cost.spent') - 2, 9);
  });

  test('a part that holds no pressure is sealed where that is decided, and none of it leaks', () => {
    const every = lid({ 'finish.impregnation': 'every casting' });
    expect(figure(every, 'cost.impregnation')).toBeCloseTo(2, 9);
    expect(every.values.has('cost.leakers')).toBe(false);
    expect(figure(every, 'cost.without-die') - figure(base, 'cost.without-die')).toBeCloseTo(2, 9);
  });
});

describe('prices of the plant', () => {
  test('without prices there is no section and one line of what was not checked', () => {
    const ledger = lid({}, WITHOUT);
    expect(costStep.show(ledger)).toEqual([]);
    findingsOf(ledger);
    const ours = ledger.unchecked.filter(({ id }) => /^(cost|metal)[./]/.test(id));
    expect(ours).toEqual([{ id: 'cost.per-part', title: 'Cost of a good part', missing: 'the plant file gives no prices' }]);
    expect([...ledger.values.keys()].filter((id) => /^cost\./.test(id))).toEqual([]);
  });

  test('invented ones are said to be invented, with currency and day', () => {
    expect(shown(lid())).toMatch(/prices and rates are invented/);
    expect(shown(lid())).toContain('no particular currency');
    expect(shown(lid())).toContain('2026-01-01');
  });

  test('what the plant does not price is listed beside a cost without it', () => {
    const ledger = lid({ 'cost.die': '50000', 'cost.machining-features': '3' }, withPrices('  metal: { aluminium: { price: 2 } }\n'));
    for (const id of ['cost.melting', 'cost.trimming', 'cost.machining']) expect(ledger.values.has(id)).toBe(false);
    for (const line of ['Energy for melting and holding', 'Trimming', 'Machining'])
      expect(shown(ledger)).toContain(`["${line}","the plant file gives no price"]`);
    expect(figure(ledger, 'cost.per-part')).toBeGreaterThan(0);
    expect(figure(ledger, 'cost.best-cavities')).toBeGreaterThan(0);
  });

  test('no die and no pin: the part without its dies, and no more', () => {
    const ledger = lid({}, withPrices('  metal: { aluminium: { price: 2 } }\n'));
    expect(ledger.values.has('cost.without-die')).toBe(true);
    expect(ledger.values.has('cost.per-part')).toBe(false);
    expect(ledger.unchecked.find(({ id }) => id === 'cost.die')?.missing).toMatch(/pinned cost\.die/);
  });

  test('an alloy goes before its family, under any designation; one that is unknown is reported', () => {
    const alloys =
      "  metal: { aluminium: { price: 2 } }\n  alloys: [{ id: 'EN AC-46500', price: 5 }, { id: A38O, price: 4 }, { id: A380.0, price: 3, melt_loss: 1 % }]\n";
    const ledger = lid({}, withPrices(alloys));
    expect(figure(ledger, 'cost.metal-price')).toBe(3);
    expect(figure(ledger, 'metal.melt-loss')).toBe(1);
    const finding = ledger.findings.find(({ code }) => code === 'spec/unknown-alloy');
    expect([finding?.severity, finding?.message]).toEqual(['warning', 'no alloy is called "A38O"; its price is not used']);
    expect(finding?.at).toBeDefined();
  });

  test('a metal without price gives no cost and says which', () => {
    const ledger = lid({}, withPrices('  metal: { zinc: { price: 2 } }\n'));
    expect(ledger.values.has('cost.per-part')).toBe(false);
    expect(ledger.unchecked.find(({ id }) => id === 'cost.metal')?.missing).toContain('price of A380 or of aluminium');
  });

  test('returns that are sold cost what they fetch less than ingot, and all metal is new', () => {
    const ledger = lid({}, withPrices('  metal: { aluminium: { price: 2 } }\n  returns_sold: 60 %\n  dross: 0.5\n'));
    expect(figure(ledger, 'metal.new-per-part')).toBe(figure(ledger, 'metal.melted-per-part'));
    expect(figure(ledger, 'cost.returns')).toBeCloseTo(figure(ledger, 'metal.returns-per-part') * 2 * 0.4, 9);
    const bought = 2 * figure(ledger, 'metal.melted-per-part');
    const fetched = 1.2 * figure(ledger, 'metal.returns-per-part') + 0.5 * 0.03 * figure(ledger, 'metal.melted-per-part');
    const lines = figure(ledger, 'cost.metal') + figure(ledger, 'cost.melt-loss') + figure(ledger, 'cost.returns');
    expect(lines).toBeCloseTo(bought - fetched, 9);
  });

  test('one machine of its kind takes its rate apart in the remembered proportion', () => {
    const ledger = lid();
    const machines = WITHOUT.slice(0, WITHOUT.indexOf('machines:'));
    const model = ledger.texts.get('machine.model') as string;
    const from = WITHOUT.indexOf(`  - id: ${model}\n`);
    const to = WITHOUT.indexOf('  - id:', from + 5);
    const one = `${machines}machines:\n${WITHOUT.slice(from, to)}${PLANT.slice(PLANT.indexOf('prices:\n'))}`;
    const alone = lid({}, one);
    expect(alone.texts.get('machine.model')).toBe(model);
    const [rate, force] = [figure(alone, 'machine.hourly-rate'), figure(alone, 'machine.locking-force')];
    expect(figure(alone, 'cost.rate-base')).toBeCloseTo((rate * 62) / (62 + 0.0052 * force), 9);
  });
});

describe('the figure', () => {
  test('marks the planned count on its curve', () => {
    const ledger = lid();
    const chart = costStep.show(ledger).find((block) => block.kind === 'figure') as Chart;
    expect([chart.id, chart.form, chart.curves.length]).toEqual(['cost', 'chart', 1]);
    const [first] = chart.curves[0]?.points ?? [];
    expect(first).toEqual([1, expect.closeTo(figure(ledger, 'cost.per-part'), 9)]);
    const lowest = Math.min(...(chart.curves[0]?.points ?? []).map(([, y]) => y));
    expect(figure(ledger, 'cost.at-best')).toBeLessThanOrEqual(lowest * (1 + 1e-9));
    expect(chart.marks.map(({ title }) => title)).toContain('Planned');
  });
});

describe('limits', () => {
  test('a small die casting of few parts is told what its dies cost', () => {
    const few = lid({}, undefined, { production: 'per_year: 2000, life: 6000, hours_per_year: 4000' });
    const finding = findingsOf(few).get('cost/die-share');
    expect(finding?.severity).toBe('note');
    expect(findingsOf(lid()).has('cost/die-share')).toBe(false);
  });
  test('one cavity for a million levers is far from the cheapest count', () => {
    const many: SmallPart = { ...LEVER, quality: 'use: general', production: 'per_year: 400000, life: 4000000, hours_per_year: 5000' };
    expect(findingsOf(workTo('cost', { ...many, pinned: { 'machine.cavities': '1' } })).get('cost/best-cavities')?.severity).toBe('note');
  });
  test('a shot far above its casting is noted, and dirty metal', () => {
    expect(findingsOf(lid({ 'shot.mass': '4 kg' })).has('cost/yield')).toBe(true);
    expect(findingsOf(lid({ 'metal.melt-loss': '9 %' })).has('cost/metal-loss')).toBe(true);
    const plain = findingsOf(lid());
    expect([plain.has('cost/yield'), plain.has('cost/metal-loss')]).toEqual([false, false]);
  });
});
