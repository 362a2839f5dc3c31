import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HOUSE_WORDS } from '../../../src/engine/house-words.ts';
import { findAlloy } from '../../../src/rulebook/alloys.ts';
import { type HouseRules, layHouseRules } from '../../../src/rulebook/house.ts';
import { rulebook } from '../engine/parts.ts';
import { BAD_RULES } from './bad-rules/cases.ts';
import { type Files, GOOD_ALLOY, GOOD_CAUTION, GOOD_CHOICE, GOOD_LIMIT, GOOD_SOURCES, GOOD_TABLE } from './bad-rules/make.ts';

const folder = (files: Files, name = 'house', at?: string) => ({
  name,
  ...(at === undefined ? {} : { at }),
  files: Object.entries(files).map(([path, text]) => ({ name: path, text })),
});
const lay = (house: HouseRules) => layHouseRules(rulebook(), house, HOUSE_WORDS);

const GOOD: Files = {
  'limits/wall/house.yaml': GOOD_LIMIT,
  'tables/draft/constant.yaml': GOOD_TABLE,
  'choices/cooling.yaml': GOOD_CHOICE,
  'cautions/handling.yaml': GOOD_CAUTION,
  'alloys/aluminium.yaml': GOOD_ALLOY,
  'sources.yaml': GOOD_SOURCES,
};

describe('a bad rules folder', () => {
  test('there are enough of them, under different names', () => {
    expect(BAD_RULES.length).toBeGreaterThan(60);
    expect(new Set(BAD_RULES.map((bad) => bad.name)).size).toBe(BAD_RULES.length);
  });

  test.each(BAD_RULES)('$name: $code', ({ code, files, says, others }) => {
    const marked = Object.entries(files).find(([, text]) => text.includes('«'));
    if (marked === undefined) throw new Error('no mark');
    const before = marked[1].split('«')[0] as string;
    const plain = Object.fromEntries(Object.entries(files).map(([path, text]) => [path, text.replace('«', '')]));
    const { rulebook: made, diagnostics } = lay({ folders: [folder(plain, 'house', '../shared/house')] });
    expect(made).toBe(undefined);
    const found = diagnostics.map((d) => `${d.code} ${d.at?.source.name}:${d.at?.position().line}:${d.at?.position().column}`);
    const lines = before.split('\n');
    const column = (lines.at(-1) as string).length + 1;
    expect(found).toContain(`rules/${code} ../shared/house/${marked[0]}:${lines.length}:${column}`);
    expect(diagnostics.map((d) => d.code).filter((other) => other !== `rules/${code}`)).toEqual((others ?? []).map((other) => `rules/${other}`));
    for (const diagnostic of diagnostics) {
      expect(diagnostic.fix, diagnostic.message).toBeTruthy();
      expect(`${diagnostic.message} ${diagnostic.fix}`).not.toMatch(/undefined|\[object|Invalid input|expected string/);
    }
    if (says !== undefined) expect(diagnostics.map((d) => `${d.message} ${d.fix}`).join('\n')).toContain(says);
  });

  test('faults of all files and all folders come at once', () => {
    const { diagnostics } = lay({
      folders: [
        folder({ ...GOOD, 'limits/wall/a.yaml': 'title: x\n' }, 'one'),
        folder({ 'limits/wall/b.yaml': GOOD_LIMIT.replace('wall >=', 'wal >=') }, 'two'),
      ],
    });
    expect(diagnostics.some((d) => d.at?.source.name === 'one/limits/wall/a.yaml')).toBe(true);
    expect(diagnostics.filter((d) => d.at?.source.name === 'two/limits/wall/b.yaml').map((d) => d.code)).toEqual(['rules/expression']);
  });

  test('a folder without a file of rules', () => {
    expect(lay({ folders: [folder({})] }).diagnostics.map((d) => [d.code, d.at?.source.name])).toEqual([['rules/folder-empty', 'house']]);
  });

  test('a lying example shows what each expression gives', () => {
    const { diagnostics } = lay({ folders: [folder({ 'limits/wall/house.yaml': GOOD_LIMIT.replace('wall: 0.5', 'wall: 5.0') })] });
    expect(diagnostics[0]?.notes).toEqual(['when: family == "aluminium" gives true', 'require: wall >= 1.0 gives true']);
  });
});

describe('whatever a house file holds', () => {
  test('reading it never throws, and every fault has a place and says what to do', () => {
    const files = Object.entries(GOOD);
    const pieces = [
      '',
      '0',
      '-1',
      '1e999',
      '{}',
      '[]',
      'null',
      'true',
      '"',
      ': ',
      '\n',
      '  ',
      '{wall',
      'in mm',
      '__proto__',
      'constructor',
      '1.0 +',
      'Ω',
      '&a',
      '*a',
      '- ',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...files),
        fc.array(fc.tuple(fc.nat(), fc.nat({ max: 40 }), fc.constantFrom(...pieces)), { minLength: 1, maxLength: 3 }),
        ([path, text], edits) => {
          let edited = text;
          for (const [at, length, piece] of edits) {
            const start = at % (edited.length + 1);
            edited = edited.slice(0, start) + piece + edited.slice(start + length);
          }
          const { rulebook: made, diagnostics: found } = lay({ folders: [folder({ ...GOOD, [path]: edited })] });
          expect(made === undefined).toBe(found.length > 0);
          for (const fault of found) {
            expect(fault.code).toMatch(/^rules\//);
            expect(`${fault.message} ${fault.fix}`).not.toMatch(/undefined|\[object|Invalid input|Invalid key/);
            const position = fault.at?.position();
            expect(position !== undefined && position.line >= 1 && position.column >= 1, fault.message).toBe(true);
          }
        },
      ),
      { seed: 20260202, numRuns: 1500 },
    );
  });
});

describe('house rules over the built-in ones', () => {
  const { rulebook: made, diagnostics, read } = lay({ folders: [folder(GOOD)] });

  test('the good folder is good, and says what was read and run', () => {
    expect(diagnostics.map((d) => `${d.code} ${d.message}`)).toEqual([]);
    expect(read).toEqual({ files: 6, rules: 3, examples: 6 });
  });

  test('each record is there, with its file; the built-in rulebook is untouched', () => {
    expect(made?.limits['wall/house']?.house).toBe('house/limits/wall/house.yaml');
    expect(made?.tables['draft/constant']?.rows).toHaveLength(3);
    expect(made?.choices['cooling.medium']?.rows).toHaveLength(2);
    expect(made?.choices['cooling.core']).toEqual(rulebook().choices['cooling.core']);
    expect(made?.cautions['handling/house-gloves']?.house).toBe('house/cautions/handling.yaml');
    expect(made && 'found' in findAlloy(made, 'House 226')).toBe(true);
    expect(made?.sources['HOUSE-MELT']?.title).toBe('Melt sheet of the house');
    expect(rulebook().limits['wall/house']).toBe(undefined);
    expect(rulebook().changes).toBe(undefined);
  });

  test('every change is kept with file, line and reason', () => {
    expect(made?.changes?.map(({ what, id, change, line, reason }) => [what, id, change, line, reason])).toEqual([
      ['limit', 'wall/house', 'added', 1, 'because of this and that'],
      ['choice', 'cooling.medium', 'replaced', 2, 'one oil unit serves the whole hall'],
      ['table', 'draft/constant', 'replaced', 1, 'the dies of the house are polished along the draw'],
      ['caution', 'handling/house-gloves', 'added', 2, undefined],
      ['alloy', 'House 226', 'added', 3, undefined],
    ]);
  });

  test('a record of a built-in alloy keeps what it does not speak of', () => {
    const text = `family: aluminium
alloys:
  A380:
    reason: the furnaces of the house hold less
    properties: { casting_temperature: { least: 640, greatest: 660, unit: degC, status: practice } }
`;
    const { rulebook: over } = lay({ folders: [folder({ 'alloys/aluminium.yaml': text })] });
    const before = rulebook().alloys['A380'];
    const after = over?.alloys['A380'];
    expect(after?.properties['casting_temperature']).toMatchObject({ least: 640, status: 'practice', house: 'house/alloys/aluminium.yaml' });
    expect(after?.properties['density']).toEqual(before?.properties['density']);
    expect(after?.composition).toEqual(before?.composition);
    expect(after?.designations).toEqual(before?.designations);
    expect(over?.changes).toMatchObject([{ id: 'A380', change: 'replaced', reason: 'the furnaces of the house hold less', line: 3 }]);
  });

  test('a later folder replaces what an earlier one has, and must say why', () => {
    const first = folder({ 'limits/wall/house.yaml': GOOD_LIMIT }, 'one');
    const silent = lay({ folders: [first, folder({ 'limits/wall/house.yaml': GOOD_LIMIT }, 'two')] });
    expect(silent.diagnostics.map((d) => d.code)).toEqual(['rules/no-reason']);
    expect(silent.diagnostics[0]?.message).toContain('stands in one/limits/wall/house.yaml already');
    const { rulebook: both } = lay({ folders: [first, folder({ 'limits/wall/house.yaml': `reason: newer\n${GOOD_LIMIT}` }, 'two')] });
    expect(both?.changes).toMatchObject([{ id: 'wall/house', change: 'added', file: 'two/limits/wall/house.yaml', reason: 'newer' }]);
  });

  describe('a limit that takes the place of one that the search knows', () => {
    const TIGHT = `title: Locking force within what the house uses
reason: covers flashed above it
uses: { f: clamp.locking-force in kN, rated: machine.locking-force in kN }
when: 'true'
require: f <= 0.75 * rated
severity: warning
message: 'Needs {f} of {rated}'
why: because of this and that
fix: take a larger machine
status: practice
examples:
  - { given: { f: 700, rated: 1000 }, holds: true }
  - { given: { f: 800, rated: 1000 }, holds: false }
`;
    const searchOf = (text: string, id = 'clamp/usual-use') => {
      const { rulebook: over, diagnostics: found } = lay({ folders: [folder({ [`limits/${id}.yaml`]: text })] });
      expect(found).toEqual([]);
      return over?.limits[id]?.search;
    };
    test('is used as that one was, and weighs or stops as it is graded now', () => {
      const known = rulebook().limits['clamp/usual-use']?.search;
      expect(known).toMatchObject({ after: 'clamp', eases: 'machine', waived: true });
      expect(searchOf(TIGHT)).toEqual(known);
      expect(searchOf(TIGHT.replace('severity: warning', 'severity: error'))).toEqual({ after: known?.after, order: known?.order, eases: 'machine' });
      expect(searchOf(TIGHT, 'clamp/machine-use')).toEqual({ ...rulebook().limits['clamp/machine-use']?.search, waived: true });
    });
    test('is used as its own file says, where that says it; one that is added is not, unless it says so', () => {
      const own = `${TIGHT}search: { after: shot, order: 5 }\n`;
      expect(searchOf(own)).toEqual({ after: 'shot', order: 5 });
      const added = (text: string): string => text.replace(/^reason: .*\n/m, '');
      expect(searchOf(added(TIGHT), 'clamp/house-use')).toBe(undefined);
      expect(searchOf(added(own), 'clamp/house-use')).toEqual({ after: 'shot', order: 5 });
    });
  });

  test('CEL beyond what trees are for is evaluated by the library', () => {
    const rule = GOOD_LIMIT.replace('when: family == "aluminium"', 'when: size(family) == 9 && [1.0, 2.0].exists(x, x <= wall + 2.0)').replace(
      '{1.0 + 0.0:1}',
      '{size(family):0}',
    );
    const { rulebook: over, diagnostics: found } = lay({ folders: [folder({ 'limits/wall/house.yaml': rule })] });
    expect(found).toEqual([]);
    const condition = over?.conditions['size(family) == 9 && [1.0, 2.0].exists(x, x <= wall + 2.0)'];
    expect(typeof condition).toBe('function');
    if (typeof condition !== 'function') return;
    expect(condition({ family: 'aluminium', wall: 2 })).toBe(true);
    expect(condition({ family: 'zinc', wall: 2 })).toBe(false);
    expect(condition({ wall: 2 })).toBe(undefined);
    const size = over?.conditions['size(family)'];
    expect(typeof size === 'function' ? size({ family: 'zinc' }) : undefined).toBe(4);
  });
});
