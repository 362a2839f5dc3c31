import { describe, expect, test } from 'vitest';
import { lubricantStep } from '../../../src/engine/steps/lubricant/index.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const lubricate = (part: SmallPart, pins: Readonly<Record<string, string>> = {}, more: Partial<SmallPart> = {}) =>
  workTo('lubricant', { ...part, ...more, pinned: { 'machine.cavities': '1', ...part.pinned, ...pins } });
const shown = (ledger: ReturnType<typeof lubricate>): string => JSON.stringify(lubricantStep.show(ledger));

describe('spray for the film, worked by hand', () => {
  // 1 m2, 2 um, 30 % active matter, half stays: 13.3 mL; 40 to 1 makes 0.55 l, 80 to 1 makes 1.08 l.
  test.each([
    ['40', 546.7],
    ['80', 1080],
  ])('diluted %s to 1', (dilution, expected) => {
    const ledger = lubricate(LID, { 'lubricant.area': '10000 cm2', 'lubricant.dilution': dilution });
    expect(figure(ledger, 'lubricant.concentrate')).toBeCloseTo(13.333, 2);
    expect(figure(ledger, 'lubricant.film-spray')).toBeCloseTo(expected, 0);
  });
});

describe('heat of the spray against its water', () => {
  const ledger = lubricate(LID);
  const heat = figure(ledger, 'heat.per-shot') - (ledger.values.get('heat.tip')?.value ?? 0);

  test('each kilogram that boils takes 2.57 MJ', () => {
    expect(figure(ledger, 'lubricant.evaporation-heat')).toBeCloseTo(2570.5, 9);
    const water = (heat * figure(ledger, 'heat.share-spray')) / 100 / 2.5705;
    expect(figure(ledger, 'lubricant.boiled-water')).toBeCloseTo(water, 6);
  });
  test('the planned spray brings both film and cooling, and the check says what must boil', () => {
    const spray = figure(ledger, 'lubricant.spray');
    expect(spray).toBe(Math.max(figure(ledger, 'lubricant.film-spray'), figure(ledger, 'lubricant.cooling-spray')));
    expect(figure(ledger, 'lubricant.boiled-share')).toBeLessThanOrEqual(figure(ledger, 'lubricant.efficiency') + 1e-9);
    expect(figure(ledger, 'lubricant.boiled-of-film')).toBeGreaterThanOrEqual(figure(ledger, 'lubricant.boiled-share') - 1e-9);
    expect(shown(ledger)).toContain('Check of the heat balance');
  });
  test('a lid takes some tenths of a litre a shot, and some tens of litres an hour', () => {
    expect(figure(ledger, 'lubricant.spray')).toBeGreaterThan(150);
    expect(figure(ledger, 'lubricant.spray')).toBeLessThan(1500);
    const pace = figure(ledger, 'cycle.shots') / figure(ledger, 'cycle.spray-interval');
    expect(figure(ledger, 'lubricant.hourly-spray')).toBeCloseTo((figure(ledger, 'lubricant.spray') * pace) / 1000, 9);
    expect(figure(ledger, 'lubricant.hourly-concentrate') / figure(ledger, 'lubricant.hourly-spray')).toBeCloseTo(1 / 61, 9);
  });
  test('zinc is sprayed less often, so each spraying takes the heat of several shots', () => {
    const lever = lubricate(LEVER);
    const interval = figure(lever, 'cycle.spray-interval');
    const each = (figure(lever, 'heat.per-shot') * figure(lever, 'heat.share-spray')) / 100 / 2.5705;
    expect(interval).toBeGreaterThan(1);
    expect(figure(lever, 'lubricant.boiled-water')).toBeCloseTo(interval * each, 6);
  });
  test('a spray that takes no heat is that of the film', () => {
    const film = lubricate(LID, { 'heat.share-spray': '0 %' });
    expect(film.values.has('lubricant.boiled-share')).toBe(false);
    expect(figure(film, 'lubricant.spray')).toBe(figure(film, 'lubricant.film-spray'));
    expect(figure(film, 'lubricant.film-left')).toBeCloseTo(2, 9);
    expect(shown(film)).toContain('No heat is reckoned for the spray');
  });
});

describe('a lubricant without water', () => {
  const wet = lubricate(LID);
  const dry = lubricate(LID, { 'lubricant.kind': 'water-free' });

  test('is sprayed in minimal quantities, which take no heat: the lines take it', () => {
    expect(dry.text('lubricant.spray-way')).toBe('minimal-quantity');
    expect([figure(dry, 'heat.share-spray'), dry.values.has('lubricant.spray'), dry.values.has('lubricant.dilution')]).toEqual([0, false, false]);
    expect(figure(dry, 'heat.share-lines')).toBeCloseTo(figure(wet, 'heat.share-lines') + figure(wet, 'heat.share-spray'), 9);
    expect(figure(dry, 'cycle.spray-each')).toBe(figure(dry, 'cycle.spray-least'));
    expect(shown(dry)).toContain('Minimal quantities are sprayed');
  });
  test('with water, which is planned anyway, changes nothing', () => {
    const pinned = lubricate(LID, { 'lubricant.kind': 'water-based emulsion' });
    for (const id of ['heat.share-spray', 'lubricant.spray', 'cycle.spray-each']) expect(figure(pinned, id)).toBe(figure(wet, id));
  });
});

describe('plunger', () => {
  test.each<[string, SmallPart, string, string | undefined]>([
    ['hot chamber', LEVER, 'none', undefined],
    ['ordinary cold chamber', LID, 'oil', 'lubricant.oil-greatest'],
    ['structural', { ...LID, quality: 'use: structural' }, 'wax beads', 'lubricant.bead-melting'],
  ])('%s', (_, part, expected, id) => {
    const ledger = lubricate(part);
    expect(ledger.texts.get('lubricant.plunger')).toBe(expected);
    if (id !== undefined) expect(ledger.values.has(id)).toBe(true);
    expect(shown(ledger).includes('No amount for a shot is published')).toBe(id !== undefined);
  });
});

describe('limits, each with the number that helps', () => {
  test.each<[string, SmallPart, Readonly<Record<string, string>>, string]>([
    ['lubricant/dilution', LID, { 'lubricant.dilution': '10' }, 'Dilute 30 to 1'],
    ['lubricant/dilution', LID, { 'lubricant.dilution': '200' }, 'Dilute 100 to 1'],
    ['lubricant/surface-least', LID, { 'fill.die-temperature': '120 degC' }, '150 degC'],
    ['lubricant/surface-greatest', LID, { 'fill.die-temperature': '300 degC' }, '250 degC'],
    ['lubricant/surface-special', LID, { 'fill.die-temperature': '450 degC' }, '400 degC'],
    ['lubricant/boiled-share', LID, { 'lubricant.spray': '100 ml' }, 'mL or more each time'],
    ['lubricant/film-least', LID, { 'lubricant.spray': '50 ml' }, 'mL each time'],
    ['lubricant/film-greatest', LID, { 'lubricant.spray': '1.5 l' }, 'Dilute 100 to 1'],
  ])('%s', (code, part, pins, fix) => {
    expect(findingsOf(lubricate(part, pins)).get(code)?.fix).toContain(fix);
  });
  test('none of them fires on an ordinary cover or lever', () => {
    for (const part of [LID, LEVER]) expect([...findingsOf(lubricate(part)).keys()].filter((code) => code.startsWith('lubricant/'))).toEqual([]);
  });
});

test('for a family without data the amounts are missing, not made up', () => {
  const ledger = lubricate({ ...LEVER, alloy: 'Pb-5Sb', quality: 'use: general' });
  expect(ledger.values.has('lubricant.spray')).toBe(false);
  expect(ledger.unchecked.some((entry) => entry.id === 'lubricant.film-spray' || entry.id === 'lubricant.area')).toBe(true);
});
