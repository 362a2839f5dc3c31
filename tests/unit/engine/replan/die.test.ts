import { beforeAll, describe, expect, test } from 'vitest';
import type { DieChange } from '../../../../src/engine/replan/change.ts';
import { loadRulebook, type Rulebook } from '../../../../src/index.ts';
import { replanPart } from '../../../../src/replan.ts';
import { withoutFigures } from '../../../without-figures.ts';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

/** A cover whose sizes are held close enough that a tenth of a per cent of shrinkage matters. */
const PART = `diewright: part/1
part: { name: Cover }
alloy: A380
geometry:
  volume: 150 cm3
  envelope: [200 mm, 140 mm, 40 mm]
  projected_area: { z: 190 cm2 }
  wall: { least: 2.4 mm, nominal: 2.8 mm, greatest: 5 mm }
  parting_line: 700 mm
dimensions:
  - { id: length, nominal: 190 mm, tolerance: 0.5 mm, across: none }
production: { per_year: 30000, life: 150000, hours_per_year: 5000 }
pinned: { machine.cavities: 1 }
`;

function die(set: readonly string[], text = PART): DieChange {
  const done = replanPart({
    part: { name: 'cover.part.yaml', text },
    before: { rulebook },
    after: { rulebook, set },
    compare: { leastChange: 2, everyValue: false },
    version: 'test',
  });
  if (done.change?.die === undefined) throw new Error(JSON.stringify(done.change?.appeared ?? done.diagnostics));
  return done.change.die;
}

const verdictOn = (change: DieChange, id: string): string | undefined => change.elements.find((element) => element.id === id)?.verdict;

describe('what of a die can stay', () => {
  test('metal can be cut away and not be put back: more shrinkage', () => {
    const change = die(['pinned.shrink.allowance=0.75 %']);
    expect(verdictOn(change, 'replan.cavity')).toBe('recut');
    expect(verdictOn(change, 'replan.cores')).toBe('weld or new cores');
    expect(change.verdict).toBe('recut');
    const cavity = change.elements.find(({ id }) => id === 'replan.cavity');
    const shift = cavity?.values.find(({ id }) => id === 'replan.shift-deciding')?.shown;
    // 190 mm times 0.15 %.
    expect(shift !== undefined && 'value' in shift ? shift.value : undefined).toBeCloseTo(0.285, 9);
  });

  test('less shrinkage is the other way round: the cavity would have to become smaller', () => {
    const change = die(['pinned.shrink.allowance=0.45 %']);
    expect(verdictOn(change, 'replan.cavity')).toBe('weld or new insert');
    expect(verdictOn(change, 'replan.cores')).toBe('recut');
    expect(change.verdict).toBe('new inserts');
  });

  test('a shift that the tolerances hardly feel asks for nothing', () => {
    const change = die(['pinned.shrink.allowance=0.61 %']);
    expect(verdictOn(change, 'replan.cavity')).toBe('as it is');
    expect(verdictOn(change, 'replan.cores')).toBe('as it is');
  });

  test('a size that is machined anyway does not count', () => {
    const tight = PART.replace('tolerance: 0.5 mm', 'tolerance: 0.02 mm').replace(
      '  - { id: length',
      '  - { id: loose, nominal: 20 mm, tolerance: 0.5 mm, across: none }\n  - { id: length',
    );
    const done = replanPart({
      part: { name: 'a', text: tight },
      before: { rulebook },
      after: { rulebook, set: ['pinned.shrink.allowance=0.75 %'] },
      compare: { leastChange: 2, everyValue: false },
      version: 'test',
    });
    // Not castable as asked, so the die is judged only when the tolerance is not of the error kind.
    if (done.change?.die !== undefined) expect(verdictOn(done.change.die, 'replan.cavity')).toBe('as it is');
    else expect(done.change?.after.castable).toBe(false);
  });

  test('of several sizes the one decides that takes most of its tolerance', () => {
    const rows = ['short, nominal: 40 mm, tolerance: 0.5 mm', 'long, nominal: 190 mm, tolerance: 0.5 mm', 'wide, nominal: 120 mm, tolerance: 0.6 mm'];
    const several = PART.replace(/ {2}- \{ id: length.*\n/, rows.map((row) => `  - { id: ${row}, across: none }\n`).join(''));
    const cavity = die(['pinned.shrink.allowance=0.75 %'], several).elements.find(({ id }) => id === 'replan.cavity');
    const shift = cavity?.values.find(({ id }) => id === 'replan.shift-deciding')?.shown;
    // 190 mm times 0.15 % of 0.5 mm is more than 120 mm times 0.15 % of 0.6 mm.
    expect(shift !== undefined && 'value' in shift ? shift.value : undefined).toBeCloseTo(0.285, 9);
  });

  test('without toleranced sizes the longest side is held against the usual tolerance', () => {
    const bare = PART.replace(/dimensions:\n.*\n/, '');
    expect(verdictOn(die(['pinned.shrink.allowance=0.9 %'], bare), 'replan.cavity')).toBe('recut');
    expect(verdictOn(die(['pinned.shrink.allowance=0.62 %'], bare), 'replan.cavity')).toBe('as it is');
  });

  test('another count of cavities is another die', () => {
    const change = die(['pinned.machine.cavities=2']);
    expect(change.verdict).toBe('new die');
    expect(change.because).toContain('count of cavities');
  });

  test('another kind of machine is another die', () => {
    const change = die(['alloy=Zamak 3']);
    expect(change.verdict).toBe('new die');
    expect(change.because).toContain('kind of machine');
  });

  test('gates that are too large cannot be cut smaller, gates that are too small can be cut larger', () => {
    const small = PART.replace('pinned: {', 'pinned: { gate.area: 60 mm2,');
    const large = PART.replace('pinned: {', 'pinned: { gate.area: 900 mm2,');
    const fast = die(['pinned.gate.area=180 mm2'], small);
    const slow = die(['pinned.gate.area=180 mm2'], large);
    expect(verdictOn(fast, 'replan.gate')).toBe('recut');
    expect(verdictOn(slow, 'replan.gate')).toBe('weld or new gate insert');
  });

  test('what cannot be judged says why, and stays open', () => {
    const bare = withoutFigures(rulebook, 'cooling/line');
    const done = replanPart({
      part: { name: 'cover.part.yaml', text: PART },
      before: { rulebook: bare },
      after: { rulebook: bare, set: ['pinned.gate.thickness=1.6 mm'] },
      compare: { leastChange: 2, everyValue: false },
      version: 'test',
    });
    const open = done.change?.die?.elements.filter(({ verdict }) => verdict === 'not judged') ?? [];
    expect(open).toEqual([
      { id: 'replan.cooling', title: 'Cooling lines', verdict: 'not judged', stays: false, because: 'needs replan.was-lines', values: [] },
    ]);
  });

  test('every verdict tells its figures, but for those without any', () => {
    for (const element of die(['alloy=A413']).elements) {
      expect(element.because.length, element.id).toBeGreaterThan(10);
      if (element.id !== 'replan.steel') expect(element.values.length, element.id).toBeGreaterThan(0);
    }
  });
});
