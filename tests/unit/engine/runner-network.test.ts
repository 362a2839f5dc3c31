import { describe, expect, test } from 'vitest';
import type { Ledger } from '../../../src/engine/ledger.ts';
import { runnerNetworkStep } from '../../../src/engine/steps/runner-network/index.ts';
import { partAtOnce, splitsOf } from '../../../src/engine/steps/runner-network/splits.ts';
import { figure, findingsOf, LEVER, LID, type SmallPart, workTo } from './work-to.ts';

const PINNED = { 'fill.time': '35 ms', 'overflow.volume': '50 cm3', 'machine.cavities': '1' };
const CASE: SmallPart = { ...LID, volume: 250, pinned: PINNED };
const pinnedTo = (pins: Readonly<Record<string, string>>, more: Partial<SmallPart> = {}) =>
  workTo('runner-network', { ...CASE, ...more, pinned: { ...PINNED, ...pins } });

const ledgerText = (ledger: Ledger): string => JSON.stringify(runnerNetworkStep.show(ledger));
const of = (ledger: Ledger, what: string, run: string): number => figure(ledger, `runner.segment-${what}[${run}]`);

describe('one cavity with one gate, worked by hand', () => {
  const ledger = pinnedTo({});
  // Gate 197.7 mm2, runner 1.25 times; one stage of 20 %; 88.4 mm of steel, and 35 mm of steel and sleeve wall beside the biscuit.
  test.each([
    ['runner.segment-area[gate run]', 247.1],
    ['runner.segment-area[main runner]', 308.9],
    ['runner.approach', 123.4],
    ['runner.segment-length[main runner]', 123.4],
    ['runner.segment-volume[main runner]', 38.12],
    // 141.2 mm along the gate, falling to 15 %: 247.1 x 1.15 / 2 x 141.2.
    ['runner.segment-volume[gate run]', 20.06],
    ['runner.network-volume', 58.18],
    ['runner.main-ratio', 1.5625],
    ['runner.flow-angle', (Math.atan(1 / 1.25) * 180) / Math.PI],
    // 9.29 l/s through 308.9 and 247.1 mm2.
    ['runner.segment-speed[main runner]', 30.08],
    ['runner.segment-speed[gate run]', 37.6],
  ])('%s is %d', (id, expected) => {
    expect(Math.abs(figure(ledger, id) / expected - 1)).toBeLessThan(5e-4);
  });

  test('the gate is too wide for a fan in the room beside the cavity, so the runner goes along it', () => {
    expect(figure(ledger, 'runner.fan-length-least')).toBeGreaterThan(figure(ledger, 'runner.fan-room'));
    expect(ledger.decisions.get('runner.gate-feed')?.value).toBe('tangential');
    expect(ledger.values.has('runner.fan-length')).toBe(false);
  });

  test('the shot goes on counting the runner by its share of the area', () => {
    expect(figure(ledger, 'runner.total-volume')).toBe(figure(ledger, 'runner.volume'));
    expect(figure(ledger, 'runner.network-ratio')).toBeCloseTo(figure(ledger, 'runner.network-volume') / figure(ledger, 'runner.volume'), 12);
  });
});

describe('a short gate gets a fan', () => {
  const ledger = pinnedTo({ 'gate.thickness': '2.2 mm' });
  test('at the usual spread, from the width of the runner to that of the gate', () => {
    expect(ledger.decisions.get('runner.gate-feed')?.alternatives.map((one) => one.value)).toEqual(['tangential']);
    const spread = figure(ledger, 'gate.each-width') - of(ledger, 'width', 'gate run');
    expect(figure(ledger, 'runner.fan-length')).toBeCloseTo(spread / (2 * Math.tan((22.5 * Math.PI) / 180)), 6);
    expect(figure(ledger, 'runner.fan-angle')).toBeCloseTo(45, 6);
    expect(findingsOf(ledger).has('runner/fan-angle')).toBe(false);
  });
  test('takes its length off the main runner, and ends with the area of the gate', () => {
    expect(of(ledger, 'length', 'main runner') + of(ledger, 'length', 'gate run')).toBeCloseTo(figure(ledger, 'runner.approach'), 9);
    expect(of(ledger, 'end', 'gate run')).toBe(figure(ledger, 'gate.each-area'));
  });
  test('a fan pinned for a wide gate spreads too far: a warning with the length it needs', () => {
    const pinned = pinnedTo({ 'gate.thickness': '0.8 mm', 'runner.gate-feed': 'fan' });
    expect(figure(pinned, 'runner.fan-length')).toBe(figure(pinned, 'runner.fan-room'));
    const finding = findingsOf(pinned).get('runner/fan-angle');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fix).toContain(`${Math.round(figure(pinned, 'runner.fan-length-least'))} mm`);
  });
  test('a gate no wider than the runner is led to straight', () => {
    const narrow = pinnedTo({ 'gate.thickness': '2.5 mm', 'gate.width': '20 mm' });
    expect(figure(narrow, 'runner.fan-length')).toBe(of(narrow, 'width', 'gate run'));
    expect(figure(narrow, 'runner.fan-angle')).toBe(0);
  });
});

describe('several gates and cavities', () => {
  test('two gates: equal shares, their runs together 7.5 % below the main runner', () => {
    const ledger = pinnedTo({ 'gate.count': '2' });
    expect(figure(ledger, 'gate.each-area')).toBe(figure(ledger, 'gate.area') / 2);
    expect(2 * of(ledger, 'area', 'gate run')).toBeCloseTo(0.925 * of(ledger, 'area', 'main runner'), 6);
    expect(of(ledger, 'count', 'gate run')).toBe(2);
    expect(ledger.text('runner.segment-feeds', 'main runner')).toBe('split into gate runs');
  });

  const eight = workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '8' } });
  const runs = ['sprue', 'main runner', 'cavity run', 'gate run'];

  test('eight cavities of a hot chamber: a run of its own to each, from the foot of the sprue', () => {
    expect([figure(eight, 'die.columns'), figure(eight, 'die.rows')]).toEqual([2, 4]);
    expect(runs.map((run) => of(eight, 'count', run))).toEqual([1, 1, 8, 8 * figure(eight, 'gate.count')]);
    expect(figure(eight, 'runner.widest-split')).toBe(2);
    expect(ledgerText(eight)).toContain('part at the foot of the sprue');
  });
  test('the area of all runs together falls from stage to stage, so the metal gets faster', () => {
    expect(of(eight, 'area', 'sprue') / of(eight, 'area', 'main runner')).toBeCloseTo(1.1, 9);
    const total = runs.slice(1).map((run) => of(eight, 'count', run) * of(eight, 'area', run));
    for (const [i, area] of total.entries()) if (i > 0) expect(area / (total[i - 1] as number)).toBeCloseTo(0.925, 9);
    const speeds = runs.map((run) => of(eight, 'speed', run));
    expect(speeds).toEqual([...speeds].sort((a, b) => a - b));
    expect(speeds.at(-1)).toBeLessThan(figure(eight, 'gate.velocity'));
  });
  test('the sprue stands in the middle; the runs end at the cavities, by the mean of their ways', () => {
    expect(of(eight, 'length', 'main runner')).toBe(0);
    // Half the steel across; upright half the steel to the inner rows, a spacing more to the outer ones.
    const steel = figure(eight, 'die.steel-around');
    const spacing = figure(eight, 'part.side-b') + steel;
    expect(of(eight, 'length', 'cavity run')).toBeCloseTo(steel / 2 + (steel / 2 + (steel / 2 + spacing)) / 2, 9);
    expect(figure(eight, 'runner.way-difference')).toBeCloseTo(spacing, 9);
    expect(figure(eight, 'runner.way-lag')).toBeCloseTo(spacing / of(eight, 'speed', 'cavity run'), 9);
  });
  test('twelve cavities: four branches to the rows find room round the sprue, twelve runs do not', () => {
    const twelve = workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '12' } });
    expect(['branch', 'cavity run'].map((run) => of(twelve, 'count', run))).toEqual([4, 12]);
    // Rows of equal spacing: the mean of half a spacing and one and a half.
    expect(of(twelve, 'length', 'branch')).toBeCloseTo(figure(twelve, 'part.side-b') + figure(twelve, 'die.steel-around'), 9);
  });
  test('one cavity with two gates at a sprue: a run to each gate from its foot', () => {
    const one = workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '1', 'gate.count': '2' } });
    expect(['main runner', 'approach', 'gate run'].map((run) => of(one, 'count', run))).toEqual([1, 2, 2]);
    expect(of(one, 'length', 'main runner')).toBe(0);
    expect(of(one, 'length', 'approach') + of(one, 'length', 'gate run')).toBeCloseTo(figure(one, 'runner.approach'), 9);
    expect(of(one, 'area', 'gate run') / of(one, 'area', 'approach')).toBeCloseTo(0.8, 9);
    expect((2 * of(one, 'area', 'approach')) / of(one, 'area', 'main runner')).toBeCloseTo(0.925, 9);
    expect(ledgerText(one)).not.toContain('part at the foot');
  });
  test('two cavities have nothing to part at once, and a cold chamber parts in twos and threes', () => {
    const two = workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '2' } });
    expect(ledgerText(two)).not.toContain('part at the foot');
    expect(two.values.has('runner.way-lag')).toBe(false);
    const four = pinnedTo({ 'machine.cavities': '4' });
    expect([of(four, 'count', 'branch'), of(four, 'count', 'cavity run')]).toEqual([2, 4]);
  });
  test('a runner that is pinned far too small gets a note with the figure to pin', () => {
    expect(figure(eight, 'runner.network-ratio')).toBeCloseTo(1, 9);
    const finding = findingsOf(workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '8', 'runner.volume': '2.7 cm3' } })).get(
      'runner/network-volume',
    );
    expect(finding?.severity).toBe('note');
    const each = figure(eight, 'runner.network-volume') / 8;
    expect(finding?.fix).toContain(`${each.toFixed(0)} cm3`);
  });
  test('the volume is the sum of the runs', () => {
    expect(runs.reduce((sum, run) => sum + of(eight, 'volume', run), 0)).toBeCloseTo(figure(eight, 'runner.network-volume'), 9);
    expect(runs.every((run) => JSON.stringify(runnerNetworkStep.show(eight)).includes(`"${run}`))).toBe(true);
  });
  test('two cavities of a cold chamber: the main runner goes up between them', () => {
    const two = pinnedTo({ 'machine.cavities': '2' }, { volume: 60, area: 60, envelope: [110, 70, 30], partingLine: 360 });
    expect(of(two, 'count', 'cavity run')).toBe(2);
    expect(of(two, 'length', 'main runner')).toBeCloseTo(figure(two, 'runner.approach') + figure(two, 'runner.half-field'), 9);
  });

  test.each([
    [1, 1, []],
    [2, 1, [2]],
    [3, 2, [2, 3]],
    [4, 4, [2, 2, 2, 2]],
    [5, 1, [5]],
  ])('%d columns and %d rows split into %o', (columns, rows, expected) => {
    expect(splitsOf(columns, rows).map((split) => split.branches)).toEqual(expected);
  });
  test('each split knows how many cavities it shares out', () => {
    expect(splitsOf(2, 4)).toEqual([
      { branches: 2, along: 'rows', cavities: 4 },
      { branches: 2, along: 'rows', cavities: 2 },
      { branches: 2, along: 'columns', cavities: 2 },
    ]);
  });
  test.each([
    [1, 1, []],
    [2, 1, [2]],
    [2, 4, [8]],
    [3, 4, [4, 3]],
    [4, 4, [8, 2]],
    [3, 3, [3, 3]],
    [11, 1, [11]],
  ])('%d columns and %d rows part from a sprue that has room for eight runs into %o', (columns, rows, expected) => {
    const nodes = partAtOnce(splitsOf(columns, rows), 8);
    expect(nodes.map((node) => node.reduce((all, { branches }) => all * branches, 1))).toEqual(expected);
  });
  test('five cavities cannot be fed alike', () => {
    const five = workTo('runner-network', { ...LEVER, pinned: { 'machine.cavities': '5' } });
    expect(figure(five, 'runner.widest-split')).toBe(5);
    expect(findingsOf(five).get('runner/balance')?.severity).toBe('note');
  });
});

describe('limits, each with the number that helps', () => {
  test('a runner that does not narrow, or too fast', () => {
    expect(findingsOf(pinnedTo({ 'runner.step': '2 %' })).get('runner/step')?.fix).toContain('10 %');
    expect(findingsOf(pinnedTo({ 'runner.step': '38 %' })).get('runner/step')?.fix).toContain('30 %');
    expect(findingsOf(pinnedTo({})).has('runner/step')).toBe(false);
  });
  test('branches too small', () => {
    expect(findingsOf(pinnedTo({ 'runner.branch-loss': '15 %' })).get('runner/branch-loss')?.fix).toContain('10 %');
  });
  test('a main runner far larger than its gates', () => {
    expect(findingsOf(pinnedTo({ 'runner.step': '38 %', 'runner.area': '280 mm2' })).get('runner/main-ratio')?.severity).toBe('note');
    expect(findingsOf(pinnedTo({})).has('runner/main-ratio')).toBe(false);
  });
  test('a runner hardly larger than its gate turns the flow too far', () => {
    const ledger = pinnedTo({ 'runner.area': '150 mm2' });
    expect(findingsOf(ledger).get('runner/flow-angle')?.fix).toContain('198 mm2');
  });
});

test('gates in proportion to their segments: 100 cm3 at 47 m/s in 35 ms ask for 60.8 mm2', () => {
  const ledger = pinnedTo({});
  expect(figure(ledger, 'gate.velocity')).toBe(47);
  expect(figure(ledger, 'gate.area-for-volume')).toBeCloseTo(100000 / (47 * 35), 9);
  expect((figure(ledger, 'gate.area-for-volume') * figure(ledger, 'gate.flow-volume')) / 100).toBeCloseTo(figure(ledger, 'gate.area'), 9);
});

describe('the runner against the textbook rule', () => {
  test('is counted with the biscuit that the rule counts, and names the run to shorten', () => {
    const ledger = pinnedTo({ 'machine.cavities': '4' });
    const whole = figure(ledger, 'runner.total-volume') + figure(ledger, 'sleeve.biscuit-volume');
    expect(figure(ledger, 'runner.with-biscuit')).toBeCloseTo(whole / 4, 9);
    const finding = findingsOf(ledger).get('runner/handbook');
    expect(finding?.fix).toContain(`first the ${ledger.texts.get('runner.largest-run')}`);
    expect(finding?.fix).not.toContain('pin runner.volume; until then');
  });
  test('is not told to be laid out where it is pinned', () => {
    const codes = [...findingsOf(pinnedTo({ 'runner.volume': '900 cm3' })).keys()].filter((code) => code.startsWith('runner/handbook'));
    expect(codes).toEqual(['runner/handbook-share']);
  });
  test('a hot chamber has no biscuit to count', () => {
    const ledger = workTo('runner-network', LEVER);
    expect(figure(ledger, 'runner.with-biscuit')).toBeCloseTo(figure(ledger, 'runner.volume'), 9);
  });
});
