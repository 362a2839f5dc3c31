import { afterEach, describe, expect, test } from 'vitest';
import { BROKEN, checkJson, folderWith, GOOD, THIN } from './check-folder.ts';

let folder: ReturnType<typeof folderWith>;
afterEach(() => folder.remove());
const using = (files: Readonly<Record<string, string>>) => {
  folder = folderWith(files);
  return folder;
};
const accept = (text: string, ...entries: string[]): string => `${text}accepted:\n${entries.map((entry) => `  - ${entry}\n`).join('')}`;
const ERRORS = ['{ code: wall/least, reason: a foil window }'];

describe('an acceptance in the part file', () => {
  test('lets a run pass, and the finding is printed as accepted by check and plan', () => {
    using({ 'a.part.yaml': accept(THIN, ...ERRORS) });
    const { code, findings } = checkJson(folder);
    expect([code, findings.find((finding) => finding.code === 'wall/least')?.accepted]).toEqual([0, { reason: 'a foil window', where: 'part' }]);
    const text = folder.run(['check']);
    expect(text.out).toMatch(/a\.part\.yaml:15:18: error, accepted: .+ \[wall\/least\]\n(.*\n){3} {2}accepted in the part file: a foil window\n/);
    expect(text.err).toMatch(/, 1 accepted\n$/);
    const plan = folder.run(['plan', 'a.part.yaml', '-f', 'markdown=a.md', '-f', 'json']);
    expect(plan.code).toBe(0);
    expect(JSON.parse(plan.out).findings.find((finding: { code: string }) => finding.code === 'wall/least').accepted).toEqual({
      reason: 'a foil window',
      where: 'part',
    });
    const markdown = folder.read('a.md');
    expect(markdown).toContain('- **error, accepted** `wall/least` at `a.part.yaml:15:18`');
    expect(markdown).toContain('  - **Accepted** in the part file: a foil window\n');
    expect(markdown).toContain('Accepting takes no hazard away: the cautions hold as before');
    expect(markdown).toMatch(/\*\*Findings\*\*: .*1 accepted\./);
  });

  test('holds for its item alone, and one for an item goes before one for all', () => {
    const holes = GOOD.replace(
      'dimensions:',
      '  - { id: deep, diameter: 6.5 mm, depth: 30 mm, kind: through, direction: z }\n  - { id: deeper, diameter: 6.5 mm, depth: 38 mm, kind: through, direction: z }\ndimensions:',
    );
    using({ 'a.part.yaml': holes });
    const found = checkJson(folder).findings.filter(({ item }) => item === 'deep' || item === 'deeper');
    const code = found.find((one) => one.item === 'deep' && found.some((other) => other.item === 'deeper' && other.code === one.code))?.code as string;
    folder.put('a.part.yaml', accept(holes, `{ code: ${code}, item: deep, reason: one }`));
    const reasons = () =>
      new Map(
        checkJson(folder)
          .findings.filter((finding) => finding.code === code)
          .map(({ item, accepted }) => [item, accepted?.reason]),
      );
    expect([reasons().get('deep'), reasons().get('deeper')]).toEqual(['one', undefined]);
    folder.put('a.part.yaml', accept(holes, `{ code: ${code}, reason: all }`, `{ code: ${code}, item: deep, reason: one }`));
    expect([reasons().get('deep'), reasons().get('deeper')]).toEqual(['one', 'all']);
    folder.put('a.part.yaml', accept(holes, `{ code: ${code}, item: dep, reason: one }`));
    const unused = checkJson(folder).findings.find((finding) => finding.code === 'check/unused-acceptance');
    expect(unused?.fix).toMatch(/"deep".* or "deeper"|"deep"/);
  });

  test.each([
    ['a code that is slightly wrong', '{ code: wall/leest, reason: x }', 'spec/unknown-code', 'did you mean "wall/least"?', 2],
    ['a code of nothing', '{ code: zzz/zzzzzz, reason: x }', 'spec/unknown-code', 'no finding has the code', 2],
    ['a fault of the file', '{ code: spec/unknown-key, reason: x }', 'spec/not-acceptable', 'cannot be accepted', 2],
    ['a stale plan', '{ code: check/stale-plan, reason: x }', 'spec/not-acceptable', 'cannot be accepted', 2],
    ['no reason', '{ code: wall/least }', 'spec/missing-field', 'reason is missing', 2],
    [
      'a finding that the plan does not have',
      '{ code: clamp/machine-use, item: H9, reason: x }',
      'check/unused-acceptance',
      'clamp/machine-use of H9 is accepted',
      0,
    ],
    ['the range of a formula that was kept', '{ code: range/gate.area, reason: x }', 'check/unused-acceptance', 'no such finding', 0],
    ['the range of no formula', '{ code: range/no.such, reason: x }', 'spec/unknown-code', 'no finding has the code', 2],
  ])('with %s is said, at its place', (_, entry, code, message, exit) => {
    using({ 'a.part.yaml': accept(GOOD, entry) });
    const run = checkJson(folder);
    const found = run.findings.find((finding) => finding.code === code);
    expect([run.code, found?.at?.file, found?.at?.line]).toEqual([exit, 'a.part.yaml', GOOD.split('\n').length + 1]);
    expect(found?.message).toContain(message);
    expect(folder.run(['plan', '-q', 'a.part.yaml']).code).toBe(exit);
  });
});

describe('a baseline', () => {
  test('of today lets the run pass, shows what it knows as accepted, and leaves out what is new', () => {
    using({ 'a.part.yaml': THIN, 'b.part.yaml': GOOD });
    const written = folder.run(['check', '--write-baseline', 'known.yaml']);
    expect([written.code, written.err]).toEqual([0, expect.stringMatching(/^wrote known\.yaml: \d+ known\n2 files checked: /)]);
    const { code, findings } = checkJson(folder, '--baseline', 'known.yaml');
    expect(code).toBe(0);
    expect(findings.filter(({ severity, accepted }) => severity !== 'note' && accepted === undefined)).toEqual([]);
    expect(findings.find((finding) => finding.code === 'wall/least')?.accepted).toEqual({
      reason: 'there when this baseline was written; not reviewed yet',
      where: 'baseline',
    });
    folder.put('b.part.yaml', THIN);
    const more = checkJson(folder, '--baseline', 'known.yaml');
    expect([more.code, more.findings.filter((one) => one.code === 'wall/least' && one.accepted === undefined).map(({ checked }) => checked)]).toEqual([
      1,
      ['b.part.yaml'],
    ]);
  });

  test('holds when lines move, holes change their order and figures change', () => {
    const holes = GOOD.replace(
      'dimensions:',
      '  - { id: deep, diameter: 6.5 mm, depth: 30 mm, kind: through, direction: z, tolerance: 0.02 mm }\n  - { id: deeper, diameter: 6.5 mm, depth: 38 mm, kind: through, direction: z, tolerance: 0.02 mm }\ndimensions:',
    );
    using({ 'a.part.yaml': holes });
    folder.run(['check', '--write-baseline', 'known.yaml']);
    const before = checkJson(folder, '--baseline', 'known.yaml').findings;
    expect(before.filter(({ item, accepted }) => item?.startsWith('deep') && accepted !== undefined).length).toBeGreaterThan(1);
    const lines = holes.split('\n');
    const at = lines.findIndex((line) => line.includes('id: deep,'));
    const moved = [...lines.slice(0, 5), '# a comment', ...lines.slice(5, at), lines[at + 1], lines[at]?.replace('30 mm', '30.5 mm'), ...lines.slice(at + 2)];
    folder.put('a.part.yaml', moved.join('\n'));
    const after = checkJson(folder, '--baseline', 'known.yaml');
    expect(after.findings.filter(({ severity, accepted }) => severity !== 'note' && accepted === undefined)).toEqual([]);
    expect(after.findings.map(({ fingerprint }) => fingerprint).sort()).toEqual(before.map(({ fingerprint }) => fingerprint).sort());
  });

  test('keeps reasons when it is written again, drops what is gone and keeps what was not checked', () => {
    using({ 'a.part.yaml': THIN, 'b/b.part.yaml': THIN });
    folder.run(['check', '--write-baseline', 'known.yaml']);
    folder.put('known.yaml', folder.read('known.yaml').replace(/reason: .*/, 'reason: agreed, see the drawing'));
    folder.run(['check', 'b', '--set', 'geometry.wall.least=2.5 mm', '--write-baseline', 'known.yaml']);
    const text = folder.read('known.yaml');
    expect(text).toContain('agreed, see the drawing');
    expect(text).toContain('file: a.part.yaml');
    expect(text).not.toContain('file: b/b.part.yaml');
  });

  test('names an entry that matches nothing any more, where it stands, and one whose file is gone', () => {
    using({ 'a.part.yaml': THIN, 'b.part.yaml': THIN });
    folder.run(['check', '--write-baseline', 'known.yaml']);
    folder.put('a.part.yaml', GOOD);
    const { code, findings } = checkJson(folder, '--baseline', 'known.yaml');
    const stale = findings.filter((finding) => finding.code === 'check/stale-baseline');
    expect([code, stale[0]?.severity, stale[0]?.at?.file]).toEqual([0, 'warning', 'known.yaml']);
    expect(folder.read('known.yaml').split('\n')[(stale[0]?.at?.line ?? 0) - 1]).toMatch(/^ {2}- code: /);
    expect(folder.run(['check', '-q', '--baseline', 'known.yaml', '--fail-on', 'warning']).code).toBe(1);
    // What was not looked at is not known to be gone.
    expect(checkJson(folder, 'b.part.yaml', '--baseline', 'known.yaml').findings.some((finding) => finding.code === 'check/stale-baseline')).toBe(false);
    folder.put('b.part.yaml', BROKEN);
    expect(checkJson(folder, 'b.part.yaml', '--baseline', 'known.yaml').findings.some((finding) => finding.code === 'check/stale-baseline')).toBe(false);
  });

  test('takes neither faults of a file nor stale plans, and not what the part file accepts', () => {
    using({ 'a.part.yaml': BROKEN, 'p/b.part.yaml': accept(THIN, ...ERRORS), 'p/plan.json': '{}' });
    const run = folder.run(['check', '--write-baseline', 'known.yaml']);
    expect(run.code).toBe(2);
    const text = folder.read('known.yaml');
    for (const code of ['spec/', 'check/', 'wall/least']) expect(text, code).not.toContain(`code: ${code}`);
    folder.put('a.part.yaml', GOOD);
    expect(checkJson(folder, '--baseline', 'known.yaml').code).toBe(1);
  });

  test.each([
    ['no YAML', 'a: [\n', 'spec/yaml-syntax'],
    ['a part file', GOOD, 'spec/wrong-format'],
    ['an entry without a reason', 'diewright: baseline/1\nfindings:\n  - { code: a/b, file: x, message: y, fingerprint: "0" }\n', 'spec/missing-field'],
    ['a slip in a key', 'diewright: baseline/1\nfindings:\n  - { code: a/b, file: x, mesage: y, fingerprint: "0", reason: z }\n', 'spec/unknown-key'],
  ])('that is %s is bad input, with its place', (_, text, code) => {
    using({ 'a.part.yaml': GOOD, 'known.yaml': text });
    const run = folder.run(['check', '--baseline', 'known.yaml']);
    expect([run.code, run.out]).toEqual([2, '']);
    expect(run.err).toMatch(/^known\.yaml:\d+:\d+: error: /);
    expect(run.err).toContain(`[${code}]`);
    expect(folder.read('known.yaml')).toBe(text);
  });

  test('holds texts that YAML could misread', () => {
    using({ 'a "b": #c.part.yaml': THIN, 'new\nline.part.yaml': THIN });
    expect(folder.run(['check', '--write-baseline', 'known.yaml']).code).toBe(0);
    expect(checkJson(folder, '--baseline', 'known.yaml').code).toBe(0);
  });
});
