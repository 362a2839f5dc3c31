import { describe, expect, test } from 'vitest';
import { applyBaseline, baselineOf, canBeKnown, type FilesOfRun } from '../../../../src/engine/check/baseline.ts';
import { type CheckedFinding, isFailing, sortFindings, toChecked } from '../../../../src/engine/check/checked.ts';
import { fingerprintsOf } from '../../../../src/engine/check/fingerprints.ts';
import { Place } from '../../../../src/kernel/place.ts';
import type { BaselineEntry } from '../../../../src/spec/index.ts';

const finding = (changes: Partial<CheckedFinding> = {}): CheckedFinding => ({
  of: 'a.part.yaml',
  file: 'a.part.yaml',
  line: 3,
  column: 5,
  endLine: 3,
  endColumn: 9,
  path: 'holes[0].depth',
  code: 'hole/deep',
  severity: 'warning',
  message: 'the hole is deep',
  ...changes,
});
const print = (one: CheckedFinding): string => fingerprintsOf([one])[0] as string;
const entry = (of: CheckedFinding, changes: Partial<BaselineEntry> = {}): BaselineEntry => ({
  code: of.code,
  file: of.of,
  message: of.message,
  fingerprint: print(of),
  reason: 'known',
  ...changes,
});
const files = (judged: readonly string[], there: readonly string[] = judged): FilesOfRun => ({
  judged: (file) => judged.includes(file),
  there: (file) => there.includes(file),
});
const HERE = files(['a.part.yaml']);

describe('fingerprints', () => {
  test('stay when lines and figures move, and where an entry with a name moves in its list', () => {
    const one = finding({ item: 'H1' });
    expect(print({ ...one, line: 9, column: 1, message: 'another figure', path: 'holes[4].depth' })).toBe(print(one));
  });

  test.each([
    ['the checked file', { of: 'b' }],
    ['the file it stands in', { file: 'b' }],
    ['the code', { code: 'x/y' }],
    ['the item', { item: 'H2' }],
    ['the place without an item', { path: 'holes[1].depth' }],
  ])('differ by %s', (_, change) => expect(print(finding(change))).not.toBe(print(finding())));

  test('number what is otherwise equal, in its order', () => {
    const three = fingerprintsOf([finding(), finding(), finding()]);
    expect(new Set(three).size).toBe(3);
    expect(three[0]).toBe(print(finding()));
    expect(fingerprintsOf([finding({ code: 'x/y' }), finding(), finding()]).slice(1)).toEqual(three.slice(0, 2));
  });
});

describe('a baseline held against a run', () => {
  test('marks what it knows and nothing else', () => {
    const [known, other] = [finding(), finding({ code: 'wall/least' })];
    const { findings, stale } = applyBaseline([known, other], [entry(known)], HERE);
    expect(findings).toEqual([{ ...known, accepted: { reason: 'known', where: 'baseline' } }, other]);
    expect(stale).toEqual([]);
  });

  test('leaves what the part file accepts as it is, and counts it as met', () => {
    const accepted = finding({ accepted: { reason: 'of the part', where: 'part' } });
    expect(applyBaseline([accepted], [entry(accepted)], HERE)).toEqual({ findings: [accepted], stale: [] });
  });

  test.each([
    ['a fault of the input', finding({ fault: true })],
    ['a stale plan', finding({ code: 'check/stale-plan' })],
  ])('never takes %s', (_, one) => {
    const { findings, stale } = applyBaseline([one], [entry(one)], HERE);
    expect([findings, stale.length, canBeKnown(one)]).toEqual([[one], 1, false]);
  });

  test('an entry whose code was changed by hand takes nothing', () => {
    const one = finding();
    const { findings, stale } = applyBaseline([one], [entry(one, { code: 'wall/least' })], HERE);
    expect([findings, stale.length]).toEqual([[one], 1]);
  });

  test('says which entry is stale, and where', () => {
    const gone = finding();
    const at = new Place({ name: 'known.yaml', text: 'x' }, 'findings[0]', () => [0, 1]);
    const [stale, ...others] = applyBaseline([], [entry(gone, { at })], HERE).stale;
    expect(others).toEqual([]);
    expect(stale).toEqual({
      code: 'check/stale-baseline',
      severity: 'warning',
      message: 'the baseline accepts hole/deep in a.part.yaml, which is no longer found',
      at,
      fix: 'remove the entry, or write the baseline again',
    });
    const [named] = applyBaseline([], [entry(gone, { item: 'H1' })], HERE).stale;
    expect(named?.message).toBe('the baseline accepts hole/deep of H1 in a.part.yaml, which is no longer found');
    expect(named).not.toHaveProperty('at');
  });

  test.each([
    ['checked', files(['a.part.yaml']), 1],
    ['there, but not checked', files([], ['a.part.yaml']), 0],
    ['gone', files([]), 1],
  ])('an entry without finding whose file is %s', (_, run, count) => {
    expect(applyBaseline([], [entry(finding())], run).stale).toHaveLength(count);
  });
});

describe('a baseline written', () => {
  test('has the open errors and warnings, with their items, to be reviewed', () => {
    const [error, warning, note] = [
      finding({ code: 'wall/least', severity: 'error' }),
      finding({ item: 'H1' }),
      finding({ code: 'x/note', severity: 'note' }),
    ] as const;
    const reason = 'there when this baseline was written; not reviewed yet';
    const { item: _, ...whole } = entry(error, { reason });
    expect(baselineOf([error, warning, note], [], HERE)).toEqual([entry(warning, { reason, item: 'H1' }), whole]);
    expect(baselineOf([error], [], HERE)[0]).not.toHaveProperty('item');
  });

  test('leaves out what the part file accepts and what no baseline can take, but not what a baseline took', () => {
    const of = (where: 'part' | 'baseline') => finding({ accepted: { reason: 'r', where } });
    expect(baselineOf([of('part')], [], HERE)).toEqual([]);
    expect(baselineOf([of('baseline')], [], HERE)).toHaveLength(1);
    expect(baselineOf([finding({ fault: true }), finding({ code: 'check/stale-plan' })], [], HERE)).toEqual([]);
  });

  test('keeps reasons, and entries of files that were not checked; drops what is gone', () => {
    const [known, elsewhere, gone] = [finding(), finding({ of: 'b.part.yaml', file: 'b.part.yaml' }), finding({ code: 'x/gone' })] as const;
    const before = [entry(known, { reason: 'reviewed', message: 'an old figure' }), entry(elsewhere), entry(gone)];
    expect(baselineOf([known], before, files(['a.part.yaml'], ['a.part.yaml', 'b.part.yaml']))).toEqual([
      entry(known, { reason: 'reviewed' }),
      entry(elsewhere),
    ]);
    expect(baselineOf([known], before, HERE)).toHaveLength(1);
  });

  test('is in the order of file, code, item and fingerprint', () => {
    const all = [finding({ of: 'b', code: 'a/a' }), finding({ code: 'b/b' }), finding({ code: 'a/a', item: 'H2' }), finding({ code: 'a/a', item: 'H1' })];
    const order = (findings: readonly CheckedFinding[]) => baselineOf(findings, [], HERE).map(({ file, code, item }) => `${file} ${code} ${item}`);
    const sorted = ['a.part.yaml a/a H1', 'a.part.yaml a/a H2', 'a.part.yaml b/b undefined', 'b a/a undefined'];
    expect([order(all), order([...all].reverse())]).toEqual([sorted, sorted]);
    const same = baselineOf([finding(), finding(), finding()], [], HERE).map(({ fingerprint }) => fingerprint);
    expect(same).toEqual([...same].sort());
  });
});

describe('findings of a check', () => {
  const base = finding({ item: 'b' });
  test.each([
    ['file', { file: '0' }, { line: 1 }],
    ['line', { line: 2 }, { column: 1 }],
    ['column', { column: 4 }, { code: 'a/a' }],
    ['code', { code: 'hole/a' }, { message: 'a' }],
    ['message', { message: 'a' }, { of: '0' }],
    ['checked file', { of: '0' }, { item: 'a' }],
    ['item', { item: 'a' }, { item: 'bb' }],
  ])('are sorted by %s before what comes after it', (_, first, weaker) => {
    const [one, other] = [
      { ...base, ...first },
      { ...base, ...weaker },
    ];
    expect(sortFindings([other, one])).toEqual([one, other]);
    expect(sortFindings([one, other])).toEqual([one, other]);
  });

  test('without item come first, and nothing given is changed', () => {
    const given = [base, finding()];
    expect(sortFindings(given)).toEqual([finding(), base]);
    expect(given).toEqual([base, finding()]);
  });

  test.each([
    ['error', 'error', true],
    ['warning', 'error', false],
    ['note', 'error', false],
    ['error', 'warning', true],
    ['warning', 'warning', true],
    ['note', 'warning', false],
    ['error', 'never', false],
  ] as const)('%s by the threshold %s', (severity, threshold, fails) => {
    expect(isFailing(finding({ severity }), threshold)).toBe(fails);
    expect(isFailing(finding({ severity, accepted: { reason: 'r', where: 'part' } }), threshold)).toBe(false);
    expect(isFailing(finding({ severity, fault: true }), threshold)).toBe(false);
  });

  test('stand where the diagnostic does, by the name given for its file', () => {
    const at = new Place({ name: 'x/plant.yaml', text: 'one\ntwo\n' }, 'machines[0]', () => [4, 7]);
    const diagnostic = { code: 'a/b', severity: 'note', message: 'm', notes: ['n'], fix: 'f', item: 'i', at } as const;
    const place = { line: 2, column: 1, endLine: 2, endColumn: 4, path: 'machines[0]' };
    const rest = { code: 'a/b', severity: 'note', message: 'm', notes: ['n'], fix: 'f', item: 'i' };
    expect(toChecked(diagnostic, 'a.part.yaml')).toMatchObject({ of: 'a.part.yaml', file: 'x/plant.yaml', ...place, ...rest });
    expect(toChecked(diagnostic, 'a.part.yaml', undefined, new Map([['x/plant.yaml', 'plant.yaml']])).file).toBe('plant.yaml');
  });

  test('without a place stand at the beginning of the checked file', () => {
    const shown = { line: 'text', marks: '^' };
    expect(toChecked({ code: 'a/b', severity: 'error', message: 'm' }, 'a.part.yaml', shown)).toMatchObject({
      of: 'a.part.yaml',
      file: 'a.part.yaml',
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 1,
      path: '',
      shown,
    });
  });
});
