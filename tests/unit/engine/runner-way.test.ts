import { describe, expect, test } from 'vitest';
import { arrange, type SlideSides } from '../../../src/engine/steps/die/arrange.ts';
import { wayOf } from '../../../src/engine/steps/die/way.ts';
import { runnerNetworkStep } from '../../../src/engine/steps/runner-network/index.ts';
import { dieOf } from './die-of.ts';
import { figure, findingsOf, LID, type SmallPart, workTo } from './work-to.ts';

const none = { room: 0, slides: 0 };
const one = { room: 60, slides: 1 };
const way = (columns: number, rows: number, of: Partial<SlideSides> = {}) => {
  const slides = { left: none, right: none, bottom: none, top: none, ...of };
  return wayOf(arrange(columns, rows, slides), columns, rows, slides);
};

describe('how the runner of a cold chamber comes from below to the castings', () => {
  test.each([
    [1, 1, {}, { way: 'to one casting' }],
    [2, 1, {}, { way: 'between', off: 0 }],
    [2, 2, {}, { way: 'between', off: 0 }],
    [3, 1, {}, { way: 'below' }],
    // One column of two: out beside the lower casting and back to the gap above it; of three the rows are fed from beside.
    [1, 2, {}, { way: 'round', off: 0.5, turns: 2 }],
    [1, 3, {}, { way: 'round', off: 0.5, turns: 1 }],
    [3, 2, {}, { way: 'round', off: 0.5, turns: 2 }],
    // One slide leaves a side free; two opposite ones leave none, and stand in the gap between columns.
    [1, 2, { right: one }, { way: 'round', off: 0.5 }],
    [1, 2, { left: one, right: one }, { way: 'closed' }],
    [2, 1, { left: one, right: one }, { way: 'below' }],
    [2, 2, { left: one, right: one }, { way: 'closed' }],
    [2, 2, { left: one }, { way: 'between' }],
    // The inner columns turn their slides away from the middle.
    [4, 2, { left: one }, { way: 'between' }],
    // The gap that the gates of one column would stand in is taken by slides.
    [1, 2, { top: one, bottom: one }, { way: 'closed' }],
  ] as const)('%d by %d with %o: %o', (columns, rows, slides, expected) => {
    expect(way(columns, rows, slides)).toMatchObject(expected);
  });
});

const hole = (id: string, direction: string): string => `  - { id: ${id}, diameter: 8 mm, depth: 16 mm, kind: blind, direction: ${direction} }\n`;
const SMALL: SmallPart = { ...LID, volume: 60, area: 60, envelope: [118, 86, 58], partingLine: 400 };
const pinned = (part: SmallPart, pins: Readonly<Record<string, string>>): SmallPart => ({ ...part, pinned: { 'machine.model': 'cold-8000', ...pins } });
const OPPOSITE = `holes:\n${hole('A', 'x')}${hole('B', '-x')}`;

describe('two castings with slides on both sides', () => {
  const two = dieOf(pinned(SMALL, { 'machine.cavities': '2' }), OPPOSITE);
  test('stand side by side, and the plan says why not one above the other', () => {
    expect([figure(two, 'die.columns'), figure(two, 'die.rows')]).toEqual([2, 1]);
    expect(two.values.get('die.rows')?.note).toContain('not 1 by 2');
    expect(findingsOf(two).get('die/slide-between')?.message).toContain('1 by 2 leaves the runner no way past the slides');
  });
  test('are fed from below: the runner keeps out of the gap with the slides', () => {
    expect(two.text('die.runner-way')).toBe('below');
    const [steel, side] = [figure(two, 'die.steel-around'), figure(two, 'part.side-a')];
    expect(figure(two, 'runner.segment-length[main runner]')).toBeCloseTo(figure(two, 'runner.approach') - steel, 9);
    const taken = two.values.get('runner.fan-length')?.value ?? 0;
    const across = (side + steel + figure(two, 'die.gap-width')) / 2;
    expect(figure(two, 'runner.segment-length[cavity run]')).toBeCloseTo(across + steel - taken, 9);
    expect(JSON.stringify(runnerNetworkStep.show(two))).toContain('the runs go along under the castings');
  });
  test('pinned one above the other, are refused with the reason', () => {
    const stacked = dieOf(pinned(SMALL, { 'machine.cavities': '2', 'die.columns': '1', 'die.rows': '2' }), OPPOSITE);
    const finding = findingsOf(stacked).get('runner/way');
    expect(finding?.severity).toBe('error');
    expect(finding?.message).toContain('1 by 2');
  });
});

describe('castings one above the other with a side free', () => {
  const FLAT: SmallPart = { ...SMALL, area: 40, envelope: [160, 30, 20] };
  test('two: the way round the lower one is counted', () => {
    const two = workTo('runner-network', pinned(FLAT, { 'machine.cavities': '2' }));
    expect([figure(two, 'die.columns'), figure(two, 'die.rows')]).toEqual([1, 2]);
    const pitch = figure(two, 'part.side-a') + figure(two, 'die.steel-around');
    expect(figure(two, 'runner.way-round')).toBeCloseTo(pitch, 9);
    const straight = figure(two, 'runner.approach') + figure(two, 'runner.half-field');
    expect(figure(two, 'runner.segment-length[main runner]')).toBeCloseTo(straight + pitch, 9);
    expect(findingsOf(two).has('runner/way')).toBe(false);
  });
  test('three: fed from beside, each run ends at the side of its casting', () => {
    const three = workTo('runner-network', pinned(FLAT, { 'machine.cavities': '3', 'die.columns': '1', 'die.rows': '3' }));
    const steel = figure(three, 'die.steel-around');
    expect(figure(three, 'runner.way-round')).toBeCloseTo((figure(three, 'part.side-a') + steel) / 2, 9);
    const taken = three.values.get('runner.fan-length')?.value ?? 0;
    expect(figure(three, 'runner.segment-length[cavity run]')).toBeCloseTo(figure(three, 'part.side-b') + steel + steel / 2 - taken, 9);
  });
});

describe('room for a fan between two castings', () => {
  const two = workTo('runner-network', pinned(SMALL, { 'machine.cavities': '2', 'runner.gate-feed': 'fan' }));
  test('ends at the edge of the main runner that stands in the gap', () => {
    const half = figure(two, 'runner.segment-width[main runner]') / 2;
    expect(figure(two, 'runner.fan-room')).toBeCloseTo(figure(two, 'die.steel-around') / 2 - half, 9);
    expect(figure(two, 'runner.fan-length')).toBeLessThanOrEqual(figure(two, 'runner.fan-room'));
  });
  test('is all of the steel beside a single one', () => {
    const single = workTo('runner-network', pinned(SMALL, { 'machine.cavities': '1' }));
    expect(figure(single, 'runner.fan-room')).toBe(figure(single, 'die.steel-around'));
  });
});

test('a large biscuit has a wider strip, and the runner is measured through it', () => {
  const ledger = workTo('runner-network', pinned(SMALL, { 'machine.cavities': '1', 'machine.plunger': '90 mm' }));
  expect(figure(ledger, 'die.feeder-strip')).toBeGreaterThan(figure(ledger, 'die.feeder-allowance'));
  const toEdge = figure(ledger, 'clamp.feeder-distance') - figure(ledger, 'die.field-height') / 2 - figure(ledger, 'clamp.feeder-diameter') / 2;
  expect(figure(ledger, 'runner.approach')).toBeCloseTo(toEdge, 9);
});
