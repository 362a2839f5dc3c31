import { describe, expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import type { Timeline } from '../../../src/engine/plan.ts';
import { cycleStep } from '../../../src/engine/steps/cycle/index.ts';
import { CASE, cycleOf, give, pinnedTo, ratedOf, SMALL } from './cycle-parts.ts';
import { figure, findingsOf, workTo } from './work-to.ts';

const timelineOf = (ledger: Ledger): Timeline => {
  const found = cycleStep.show(ledger).find((block) => block.kind === 'figure');
  if (found?.kind !== 'figure' || found.form !== 'timeline') throw new Error('no timeline');
  return found;
};

const COLD_PATH = ['close', 'lock', 'ladle', 'delay', 'slow-shot', 'fill', 'dwell', 'open', 'eject', 'extract', 'spray', 'blow', 'signals'];
const HOT_PATH = ['close', 'lock', 'slow-shot', 'fill', 'dwell', 'open', 'eject', 'extract', 'spray', 'blow', 'signals'];
const sumOver = (ledger: Ledger, names: readonly string[]): number => names.reduce((sum, name) => sum + figure(ledger, `cycle.${name}`), 0);

describe('cold chamber, worked by hand', () => {
  const ledger = workTo('cycle', CASE);
  test.each([
    // Dry cycle of 4.3 s: 32, 6.5, 38.5 and 23 % of it.
    ['cycle.close', 1.376],
    ['cycle.lock', 0.2795],
    ['cycle.open', 1.6555],
    ['cycle.eject', 0.989],
    // 238 x 142 mm casting and a strip of 150 mm for the biscuit of an 80 mm plunger: 530 mm.
    ['cycle.shot-size', 530],
    ['cycle.extract', 5.24],
    ['cycle.spray-rule', 4.68],
    // The trade sprays 6 s or more on such machines, at every shot for aluminium.
    ['cycle.spray', 6],
    ['cycle.spray-other', 4.5],
    ['cycle.blow', 2],
    ['cycle.ladle', 5.36],
    ['cycle.delay', 1],
    ['cycle.signals', 2.5],
    ['cycle.dwell', 10],
  ])('%s is %d', (id, expected) => {
    expect(figure(ledger, id)).toBeCloseTo(expected, 9);
  });
  test('slow shot and fill are those of their sections, in seconds', () => {
    expect(figure(ledger, 'cycle.slow-shot')).toBe(figure(ledger, 'slow-shot.time'));
    expect(figure(ledger, 'cycle.fill')).toBeCloseTo(figure(ledger, 'fill.time') / 1000, 12);
  });
  test('the dry cycle is counted once, and the sum is that of the elements', () => {
    expect(sumOver(ledger, ['close', 'lock', 'open', 'eject'])).toBeCloseTo(figure(ledger, 'machine.dry-cycle'), 9);
    expect(sumOver(ledger, COLD_PATH)).toBeCloseTo(figure(ledger, 'cycle.elements-time'), 9);
    const parts = sumOver(ledger, ['dwell', 'part-machine', 'part-metal', 'part-spray', 'part-handling']);
    expect(parts).toBeCloseTo(figure(ledger, 'cycle.elements-time'), 9);
    expect(sumOver(ledger, ['share-dwell', 'share-machine', 'share-metal', 'share-spray', 'share-handling'])).toBeCloseTo(100, 9);
  });
  test('the die is open for all but lock, shot and dwell', () => {
    const shut = sumOver(ledger, ['lock', 'ladle', 'delay', 'slow-shot', 'fill', 'dwell']);
    expect(figure(ledger, 'cycle.open-time')).toBeCloseTo(figure(ledger, 'cycle.elements-time') - shut, 9);
  });
  test('elements carry their own marks', () => {
    expect(ledger.value('cycle.extract').status).toBe('memory');
    expect(ledger.value('cycle.signals').status).toBe('practice');
    expect(ledger.value('cycle.signals').kind).toBe('assumption');
    expect(ledger.value('cycle.dwell').status).toBe('source');
  });
  test('the dwell of 10 s governs; with less the spray does', () => {
    expect(ledger.text('cycle.governs')).toBe('dwell');
    expect(pinnedTo({ 'cooling.dwell': '5 s' }).text('cycle.governs')).toBe('spray');
  });
  test('the cycle rises with the dwell one for one, and with nothing else of it', () => {
    const longer = pinnedTo({ 'cooling.dwell': '17 s' });
    expect(figure(longer, 'cycle.elements-time') - figure(ledger, 'cycle.elements-time')).toBeCloseTo(7, 9);
    expect(figure(longer, 'cycle.open-time')).toBeCloseTo(figure(ledger, 'cycle.open-time'), 9);
  });
  test('the textbook is short of the plan, by its rules added up', () => {
    const expected = 5.36 + figure(ledger, 'cycle.fill') + 0.47 * 2.8 + 5.24 + 4.68 / 2 + 4.3;
    expect(figure(ledger, 'cycle.textbook-least')).toBeCloseTo(expected, 9);
    expect(expected).toBeLessThan(figure(ledger, 'cycle.elements-time'));
  });
  test('shows every element, what governs, and the trade beside it', () => {
    const shown = JSON.stringify(cycleStep.show(ledger));
    for (const name of COLD_PATH) expect(shown).toContain(`"cycle.${name}"`);
    for (const id of ['cycle.governs', 'cycle.dwell-greatest', 'cycle.trade-spray-least', 'cycle.measured', 'cycle.textbook-least'])
      expect(shown).toContain(id);
    // Ladling and rest are in it, so it is not called the fill.
    expect(figure(ledger, 'cycle.part-metal')).toBeCloseTo(sumOver(ledger, ['ladle', 'delay', 'slow-shot', 'fill']), 9);
    expect(shown).toContain('"From the ladle to full cavities",{"value":"cycle.part-metal"}');
  });
});

describe('a ladle that dips while the die is open', () => {
  const overlapped = pinnedTo({ 'cycle.path': 'overlapped' });
  test('leaves the pouring between closing and shot', () => {
    expect(figure(overlapped, 'cycle.ladle')).toBeCloseTo(2.68, 9);
    expect(figure(overlapped, 'cycle.dip')).toBeCloseTo(2.68, 9);
    expect(figure(overlapped, 'cycle.elements-time')).toBeCloseTo(figure(workTo('cycle', CASE), 'cycle.elements-time') - 2.68, 9);
  });
  test('is a row of its own beside the spray', () => {
    const rows = timelineOf(overlapped).rows;
    const [spray, dip] = ['cycle.spray', 'cycle.dip'].map((id) => rows.find((row) => row.bars.some((bar) => bar.values.includes(id)))?.bars[0]);
    expect(dip?.from).toBeCloseTo(spray?.from ?? Number.NaN, 9);
  });
});

describe('hot chamber', () => {
  const one = { ...SMALL, pinned: { ...SMALL.pinned, 'machine.cavities': '1' } };
  const ledger = workTo('cycle', one);
  test('has no ladle and no wait for calm metal', () => {
    for (const id of ['cycle.ladle', 'cycle.delay', 'cycle.ladle-least']) expect(ledger.values.has(id)).toBe(false);
    expect(sumOver(ledger, HOT_PATH)).toBeCloseTo(figure(ledger, 'cycle.elements-time'), 9);
    expect(figure(ledger, 'cycle.recovery')).toBe(1);
    expect(JSON.stringify(cycleStep.show(ledger))).toContain('"From the start of the shot to full cavities"');
  });
  test('zinc is sprayed every third shot and counts with a third', () => {
    expect(figure(ledger, 'cycle.spray-each')).toBe(3);
    expect(figure(ledger, 'cycle.spray')).toBe(1);
  });
  test('a plated lever is picked, a plain one falls', () => {
    expect([ledger.text('cycle.removal'), figure(ledger, 'cycle.extract')]).toEqual(['picked', 3]);
    const plain = workTo('cycle', { ...one, quality: 'use: general, finish: functional' });
    expect([plain.text('cycle.removal'), figure(plain, 'cycle.extract')]).toEqual(['falls', 1]);
  });
});

test('a vertical sleeve has its ladle, and the shot of the trade', () => {
  const ledger = pinnedTo({ 'machine.kind': 'cold-chamber-vertical-shot', 'machine.model': 'cold-vertical-3500' });
  expect(figure(ledger, 'cycle.ladle')).toBeCloseTo(2 + 0.0048 * figure(ledger, 'shot.liquid-volume'), 9);
  expect(figure(ledger, 'cycle.slow-shot')).toBe((figure(ledger, 'cycle.inject-least') + figure(ledger, 'cycle.inject-greatest')) / 2);
  expect(ledger.values.has('cycle.elements-time')).toBe(true);
});

describe('cores and inserts', () => {
  const plain = workTo('cycle', CASE);
  const withCores = cycleOf(CASE, (ledger) => {
    ledger.setText('parting.slide-drive', 'hydraulic cylinder', { item: 'S1' });
    ledger.setText('parting.slide-drive', 'angle pin', { item: 'S2' });
    give(ledger, 'slide.stroke[S1]', 39, 'mm');
    give(ledger, 'slide.stroke[S2]', 20, 'mm');
    give(ledger, 'parting.core-pulls', 2, '1');
  });
  test('a hydraulic core moves twice, one on an angle pin moves with the die, each asks for a second of spray', () => {
    // 39 mm at 65 mm/s and 0.5 s for the switch, out and in; 4.68 + 2 s of spray.
    expect(figure(withCores, 'cycle.cores-out')).toBeCloseTo(1.1, 9);
    expect(figure(withCores, 'cycle.cores-in')).toBeCloseTo(1.1, 9);
    expect(figure(withCores, 'cycle.elements-time') - figure(plain, 'cycle.elements-time')).toBeCloseTo(2.2 + 0.68, 9);
  });
  test('the slides of every cavity are sprayed', () => {
    const two = cycleOf({ ...CASE, pinned: { ...CASE.pinned, 'machine.cavities': '2' } }, (ledger) => give(ledger, 'parting.core-pulls', 2, '1'));
    expect(figure(two, 'cycle.core-pulls')).toBe(4);
    const size = figure(two, 'cycle.shot-width') + figure(two, 'cycle.shot-length');
    expect(figure(two, 'cycle.spray-rule')).toBeCloseTo(1.5 + 0.006 * size + 4, 9);
  });
  test('inserts are placed one after the other', () => {
    const ledger = cycleOf(CASE, (changed) => give(changed, 'parting.inserts', 2, '1'));
    expect(figure(ledger, 'cycle.inserts')).toBeCloseTo(3 + 2 * 3.5, 9);
    expect(figure(ledger, 'cycle.elements-time') - figure(plain, 'cycle.elements-time')).toBeCloseTo(10, 9);
    expect(findingsOf(ledger).get('cycle/inserts')?.fix).toContain('6.5 s');
    expect(findingsOf(plain).has('cycle/inserts')).toBe(false);
    expect(plain.unchecked.map((entry) => entry.id)).not.toContain('cycle/inserts');
  });
});

test('no dwell, no sum: the gap is named', () => {
  const ledger = cycleOf(CASE, (changed) => changed.values.delete('cooling.dwell'));
  expect(ledger.values.has('cycle.elements-time')).toBe(false);
  expect(ledger.unchecked.find((entry) => entry.id === 'cycle.elements-time')?.missing).toContain('cycle.dwell');
  expect(figure(ledger, 'cycle.open-time')).toBeGreaterThan(10);
  expect(cycleStep.show(ledger).some((block) => block.kind === 'figure')).toBe(false);
});

describe.each([
  ['cold chamber', CASE, undefined],
  ['cold chamber, waiting for its lines', CASE, 60],
  ['hot chamber', SMALL, undefined],
  ['hot chamber, waiting for its lines', SMALL, 15],
] as const)('the timeline of a %s', (_, part, cooling) => {
  const ledger = ratedOf(part, cooling);
  const { rows, id, form } = timelineOf(ledger);
  const path = rows.filter((row) => !row.title.startsWith('Beside: '));
  const beside = rows.filter((row) => row.title.startsWith('Beside: '));
  test('is one bar a row, in order, without gap or overlap, and ends at the cycle time', () => {
    expect([id, form]).toEqual(['cycle', 'timeline']);
    let end = 0;
    for (const row of path) {
      expect(row.bars).toHaveLength(1);
      expect(row.bars[0]?.from).toBeCloseTo(end, 9);
      expect(row.bars[0]?.to ?? 0).toBeGreaterThanOrEqual(row.bars[0]?.from ?? 0);
      end = row.bars[0]?.to ?? Number.NaN;
    }
    expect(end).toBeCloseTo(figure(ledger, 'cycle.time'), 9);
  });
  test('each bar is as long as its value', () => {
    for (const bar of path.flatMap((row) => row.bars)) expect(bar.to - bar.from).toBeCloseTo(figure(ledger, bar.values[0] as string), 9);
  });
  test('marks what governs, and puts the pressure inside the dwell', () => {
    const strong = path.flatMap((row) => row.bars).filter((bar) => bar.strong);
    expect(strong.length).toBeGreaterThan(0);
    expect(strong.some((bar) => bar.values[0] === 'cycle.wait')).toBe(cooling !== undefined);
    const dwell = path.find((row) => row.bars[0]?.values[0] === 'cycle.dwell')?.bars[0];
    const hold = beside.find((row) => row.bars[0]?.values[0] === 'cycle.hold')?.bars[0];
    expect(hold?.from).toBe(dwell?.from);
    expect(hold?.to ?? Number.NaN).toBeLessThanOrEqual((dwell?.to ?? 0) + 1e-9);
  });
});
