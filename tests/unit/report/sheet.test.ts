import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Table } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import ts from 'typescript';
import { beforeAll, describe, expect, test } from 'vitest';
import { STANDING } from '../../../src/engine/standing.ts';
import { VOCABULARY, wordOf } from '../../../src/engine/vocabulary/index.ts';
import { loadRulebook, type Plan, planPart, type Rulebook, renderPlans, renderSheets, SHEETS, type SheetName } from '../../../src/index.ts';
import { printTraced, Traced } from '../../../src/kernel/traced.ts';
import { DIE_LINES } from '../../../src/report/sheet/die.ts';
import type { Line, Piece } from '../../../src/report/sheet/form.ts';
import { sheetText, sheetTree } from '../../../src/report/sheet/index.ts';
import { rowsOf, rowsTable } from '../../../src/report/sheet/lines.ts';
import { planRows } from '../../../src/report/sheet/parts.ts';
import { LEFT_OUT, QUOTE_ASSUMPTIONS, QUOTE_COST, QUOTE_LINES } from '../../../src/report/sheet/quote.ts';
import { READERS } from '../../../src/report/sheet/readers.ts';
import { SHOT_LINES } from '../../../src/report/sheet/shot.ts';
import { INSPECTION, TRIAL_RECORD, TRIAL_STEPS } from '../../../src/report/sheet/trial.ts';
import { STARTER_PART } from '../../../src/spec/starters.ts';
import { handMade, NASTY } from './hand-made.ts';
import { printedLines, textOf } from './page.ts';

const ROOT = join(import.meta.dirname, '../../..');
const EXAMPLES = readdirSync(join(ROOT, 'examples')).filter((name) => existsSync(join(ROOT, 'examples', name, `${name}.part.yaml`)));
const LINES: Readonly<Record<SheetName, readonly Line[]>> = {
  die: DIE_LINES,
  shot: SHOT_LINES,
  trial: [...TRIAL_STEPS, ...TRIAL_RECORD],
  quote: [...QUOTE_LINES, ...QUOTE_COST, ...QUOTE_ASSUMPTIONS],
};
/** Lines of small type (8.5 pt) that a page holds within margins of 12 mm: tried by printing the sheets of all examples. */
const LETTER = 66;
const A4 = 70;

let rulebook: Rulebook;
const plans = new Map<string, Plan>();
beforeAll(async () => {
  rulebook = await loadRulebook();
  for (const name of EXAMPLES) plans.set(name, planned(readFileSync(join(ROOT, 'examples', name, `${name}.part.yaml`), 'utf8'), `${name}.part.yaml`));
});

function planned(text: string, name = 'cover.part.yaml'): Plan {
  const { plan, diagnostics } = planPart({ part: { name, text }, rulebook, version: '9.9.9' });
  if (plan === undefined) throw new Error(`${name}: ${diagnostics[0]?.message}`);
  return plan;
}

function example(name: string): Plan {
  return plans.get(name) as Plan;
}

function pieces(line: Line): readonly Piece[] {
  return [...line.pieces, ...(line.within ?? [])];
}

function tables(text: string): string[][][] {
  const tree = fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
  return tree.children
    .filter((node): node is Table => node.type === 'table')
    .map((node) => node.children.map((row) => row.children.map((cell) => textOf(cell))));
}

describe('the lists of the sheets', () => {
  test.each(SHEETS)('%s: every id is a word of the vocabulary, with items where the line has them', (sheet) => {
    for (const line of LINES[sheet]) {
      for (const { id, to, item, unless = [] } of pieces(line)) {
        for (const one of [id, ...(to === undefined ? [] : [to]), ...unless]) expect(wordOf(one), one).toBeDefined();
        if (item !== undefined) expect(VOCABULARY[id], id).toHaveProperty('each', true);
      }
      if (line.each === undefined) continue;
      expect(VOCABULARY[line.each.id], line.each.id).toHaveProperty('each', true);
      for (const { id } of line.pieces) expect(VOCABULARY[id], id).toHaveProperty('each', true);
    }
  });

  test.each(SHEETS)('%s: no title stands for two things, and a range has one unit', (sheet) => {
    const titles = LINES[sheet].map(({ title }) => title);
    expect(new Set(titles.slice(0, sheet === 'trial' ? TRIAL_STEPS.length : undefined)).size).toBe(sheet === 'trial' ? TRIAL_STEPS.length : titles.length);
    for (const { id, to } of LINES[sheet].flatMap(pieces)) {
      if (to !== undefined) expect((VOCABULARY[to] as { unit: string }).unit, to).toBe((VOCABULARY[id] as { unit?: string }).unit);
    }
  });

  test('every line says something in some example, so that none is dead', () => {
    // The built-in plant melts its returns again.
    const unseen = new Set<string>();
    for (const sheet of SHEETS)
      for (const line of LINES[sheet]) if (![...plans.values()].some((plan) => rowsOf(plan, [line]).length > 0)) unseen.add(`${sheet}: ${line.title}`);
    expect([...unseen]).toEqual(['quote: Returns that are sold']);
  });

  test('the hold points are those of the sentence', () => {
    const words = ['clamp', 'interlocks', 'leak test', 'dryness'];
    expect(TRIAL_STEPS.map(({ title }) => title).filter((title) => title.startsWith('Hold: '))).toEqual(words.map((word) => `Hold: ${word}`));
    for (const word of words) expect(STANDING.hold).toContain(word);
  });
});

describe('cautions', () => {
  test('each is on one sheet at least, and the table names no other', () => {
    expect(Object.keys(READERS).sort()).toEqual(Object.keys(rulebook.cautions).sort());
    for (const [id, readers] of Object.entries(READERS)) expect(Object.keys(readers).length, id).toBeGreaterThan(0);
  });

  test('one that the table does not know is on every sheet, by its title', () => {
    for (const sheet of SHEETS) expect(sheetText(sheet, handMade())).toContain('**To be read in the plan**: Burns.');
  });

  test('every caution of every example is on a sheet of it', () => {
    for (const plan of plans.values()) {
      const all = SHEETS.map((sheet) => sheetText(sheet, plan)).join('\n');
      for (const { title } of plan.cautions) expect(all).toContain(title);
    }
  });

  test('what opens or throws metal is before the eyes of those who stand at the machine', () => {
    for (const plan of plans.values()) {
      expect(sheetText('shot', plan)).toMatch(/\*\*Metal spit at the parting line\*\*: Run only with interlocked guards/);
      expect(sheetText('trial', plan)).toContain('**First shots**: Start slowly and at low pressure');
    }
  });
});

describe.each(SHEETS)('the %s sheet of the examples', (sheet) => {
  test.each(EXAMPLES)('%s: has content, holds no hollow word, and prints on one page', (name) => {
    const plan = example(name);
    const text = sheetText(sheet, plan);
    expect(text).not.toMatch(/\bNaN\b|undefined|Infinity|\[object|&#x20;|null/);
    expect(text).not.toMatch(/, ,|: ,|; ;|\| ,|, \|/);
    const rows = rowsOf(plan, LINES[sheet]);
    expect(rows.length).toBeGreaterThanOrEqual(19);
    expect(printedLines(sheetTree(sheet, plan))).toBeLessThanOrEqual(LETTER);
    expect(text.split('\n').length).toBeLessThanOrEqual(75);
  });

  test.each(EXAMPLES)('%s: every number of its rows is printed so in the plan', async (name) => {
    const plan = example(name);
    const whole = await renderPlans('markdown', [plan], false, { workings: true });
    let checked = 0;
    for (const line of LINES[sheet]) {
      const [row] = rowsOf(plan, [line]);
      if (row === undefined) continue;
      const said = [...row.planned, ...row.within].filter((piece) => typeof piece === 'string').join(' ');
      for (const { id, item } of pieces(line)) {
        const keys =
          item !== undefined ? [`${id}[${item}]`] : line.each === undefined ? [id] : [...plan.values.keys()].filter((key) => key.startsWith(`${id}[`));
        for (const key of keys) {
          const value = plan.values.get(key);
          if (value === undefined || !said.includes(printTraced(value))) continue;
          expect(whole, key).toContain(`| ${printTraced(value)} |`);
          checked += 1;
        }
      }
      // Nothing else than values of the plan, texts of the plan and words of the lists: take them away, and no digit is left.
      const known = [...plan.values.values()].map((value) => printTraced(value));
      const texts = [...plan.texts.values(), ...plan.decisions.values()].map((one) => (typeof one === 'string' ? one : one.value));
      const items = [...plan.values.keys(), ...plan.texts.keys()].filter((key) => key.endsWith(']')).map((key) => key.slice(key.indexOf('[') + 1, -1));
      const names = [...new Set([...known, ...texts, ...items])].filter((one) => /\d/.test(one)).sort((a, b) => b.length - a.length);
      expect(
        names.reduce((rest, one) => rest.replaceAll(one, ''), said),
        `${line.title}: ${said}`,
      ).not.toMatch(/\d/);
    }
    expect(checked).toBeGreaterThan(20);
  });

  test.each(EXAMPLES)('%s: says what it is, how it stands and where it comes from, and leaves room to sign', (name) => {
    const plan = example(name);
    const lines = sheetText(sheet, plan).split('\n');
    const { part } = plan;
    expect(lines[0]).toMatch(
      new RegExp(`^# ${sheet === 'die' ? 'Die' : sheet[0]?.toUpperCase() + sheet.slice(1)} sheet: ${part.name}, ${part.number}, revision ${part.revision}$`),
    );
    expect(lines[2]).toBe(`> **${plan.standing.status}**`);
    expect(lines[4]).toContain(`\`${name}.part.yaml\`, worked out by diewright 9.9.9`);
    expect(lines.slice(-4)[0]).toBe('| Approval by a qualified engineer | Name | Date | Signature |');
    expect(lines.slice(-4)[2]).toMatch(/^\| The [a-z ]+ \| \| \| \|$/);
  });

  test('errors of the plan are said at the top', () => {
    const stands = /\*\*Errors stand: nothing is built, set or quoted by this sheet before they are cleared\.\*\*/;
    for (const plan of plans.values()) {
      const wrong = plan.findings.some(({ severity }) => severity === 'error');
      expect(stands.test(sheetText(sheet, plan).split('\n')[4] ?? '')).toBe(wrong);
    }
  });

  test('names with signs of Markdown, HTML or a terminal are escaped, and tables stay whole', () => {
    const text = sheetText(sheet, handMade({ part: { name: NASTY, number: 'A|1', file: 'a|b.part.yaml' } }));
    expect(text).not.toMatch(/<b>bold<\/b>(?<!\\<b>bold<\/b>)|\u001b|\u202e/);
    expect(text.split('\n')[0]).toContain('\\*x\\* \\_y\\_ \\<b>bold');
    for (const table of tables(text)) for (const row of table) expect(row).toHaveLength(table[0]?.length ?? 0);
  });

  test('a plan that holds next to nothing still gives a sheet', () => {
    const text = sheetText(sheet, handMade({ values: new Map(), texts: new Map(), decisions: new Map(), sections: [], cautions: [], findings: [] }));
    expect(text).toContain('First-pass estimate');
    expect(text).toContain('Signature');
    expect(text).not.toMatch(/undefined|NaN/);
  });

  test('the same plan gives the same bytes; several plans follow each other', async () => {
    const [one, other] = [example('hose-fitting'), example('seat-frame')];
    expect(sheetText(sheet, one)).toBe(sheetText(sheet, one));
    expect(await renderSheets(sheet, [one, other])).toBe(`${sheetText(sheet, one)}\n${sheetText(sheet, other)}`);
  });
});

describe('other plans', () => {
  const pinned = (pin: string): string => STARTER_PART.replace(/# pinned: .*/, `pinned: { ${pin} }`);

  test.each([
    ['the starter', STARTER_PART],
    ['a vertical shot', pinned('machine.kind: cold-chamber-vertical-shot')],
    ['a hot chamber pinned for aluminium', pinned('machine.kind: hot-chamber')],
    ['a tin alloy', STARTER_PART.replace('A380', 'CY44A')],
    ['a lead alloy', STARTER_PART.replace('A380', 'Pb-5Sb')],
    ['many holes, slides and dimensions', manyOf(STARTER_PART)],
  ])('%s: no hollow word, one page, tables whole', (_, text) => {
    const plan = planned(text);
    for (const sheet of SHEETS) {
      const printed = sheetText(sheet, plan);
      expect(printed).not.toMatch(/undefined|NaN/);
      for (const table of tables(printed)) for (const row of table) expect(row).toHaveLength(table[0]?.length ?? 0);
      expect(printedLines(sheetTree(sheet, plan)), sheet).toBeLessThanOrEqual(A4);
    }
  });

  test('what a page does not hold is counted, and pointed to', () => {
    const plan = planned(manyOf(STARTER_PART));
    expect(sheetText('die', plan)).toContain('<br>and 21 more, in the plan');
    expect(sheetText('quote', plan)).toMatch(/and \d+ more, in the plan/);
    expect(sheetText('trial', plan)).toMatch(/And \d+ more, in the inspection list of the plan\./);
  });
});

/** The starter with more holes, slides and dimensions than a page holds. */
function manyOf(text: string): string {
  const count = [...Array(25).keys()];
  const holes = count.map(
    (i) => `  - { id: hole ${i}, diameter: ${6 + i / 10} mm, depth: 12 mm, kind: blind, direction: ${i < 8 ? ['x', '-x', 'y', '-y'][i % 4] : 'z'} }`,
  );
  const dimensions = count.map((i) => `  - { id: size ${i}, nominal: ${40 + i} mm, tolerance: 0.1 mm }`);
  return text.replace(/^ {2}- \{ id: screws.*$/m, holes.join('\n')).replace(/^ {2}- \{ id: length.*$/m, dimensions.join('\n'));
}

describe('rows', () => {
  const value = (id: string, number: number, status: 'source' | 'memory' | 'practice' = 'source') =>
    Traced.table(id, number, 'mm', { table: 'test/table', source: [], status }) as Traced;
  const plan = (values: readonly Traced[], texts: readonly (readonly [string, string])[] = []) =>
    handMade({ values: new Map(values.map((one) => [one.id, one])), texts: new Map(texts), decisions: new Map() });
  const planText = (one: Plan, line: Line) =>
    rowsOf(one, [line]).map((row) => row.planned.map((piece) => (typeof piece === 'string' ? piece : '\n')).join(''))[0];

  test('what the plan does not hold is left out, with its words; a row of nothing is no row', () => {
    const line: Line = {
      title: 'Gate',
      pieces: [
        { id: 'gate.count', label: 'number' },
        { id: 'gate.thickness', label: 'thickness', after: 'deep' },
      ],
    };
    expect(planText(plan([value('gate.thickness', 1.6)]), line)).toBe('thickness 1.6 mm deep');
    expect(rowsOf(plan([]), [line])).toEqual([]);
    expect(rowsOf(plan([]), [{ ...line, note: 'by eye' }])).toMatchObject([{ planned: ['by eye'], mark: '' }]);
  });

  test('a range prints both ends; one that has lost its upper end prints the lower', () => {
    const line: Line = { title: 'Land', pieces: [{ id: 'gate.land-least', to: 'gate.land-greatest' }] };
    expect(planText(plan([value('gate.land-least', 1.5), value('gate.land-greatest', 3)]), line)).toBe('1.5 mm to 3 mm');
    expect(planText(plan([value('gate.land-least', 1.5)]), line)).toBe('1.5 mm');
    expect(rowsOf(plan([value('gate.land-greatest', 3)]), [line])).toEqual([]);
  });

  test('the mark is the weakest of all that the row rests on; what the user gave is given', () => {
    const line: Line = { title: 'Gate', pieces: [{ id: 'gate.thickness' }, { id: 'gate.width' }] };
    const mark = (...values: Traced[]) => rowsOf(plan(values), [line])[0]?.mark;
    expect(mark(value('gate.thickness', 1), value('gate.width', 2, 'memory'))).toBe('memory');
    expect(mark(value('gate.thickness', 1, 'practice'), value('gate.width', 2))).toBe('practice');
    expect(mark(value('gate.thickness', 1))).toBe('source');
    const given = Traced.input('gate.thickness', 1, 'mm', { source: 'PART', written: '1 mm' }) as Traced;
    expect(mark(given)).toBe('given');
    expect(mark(given, value('gate.width', 2))).toBe('source');
  });

  test('unless: a value that means nothing beside another is left out', () => {
    const line: Line = { title: 'Vents', pieces: [{ id: 'vent.depth', unless: ['vent.chill-gap'] }, { id: 'vent.chill-gap' }] };
    expect(planText(plan([value('vent.depth', 0.1), value('vent.chill-gap', 0.6)]), line)).toBe('0.6 mm');
    expect(planText(plan([value('vent.depth', 0.1)]), line)).toBe('0.1 mm');
  });

  test('items: each on its line or one after the other, some left out, the rest counted', () => {
    const each = { id: 'slide.stroke', most: 2 } as const;
    const line: Line = { title: 'Core pulls', each, pieces: [{ id: 'slide.stroke', label: 'stroke' }] };
    const three = plan([value('slide.stroke[S1]', 10), value('slide.stroke[S2]', 20), value('slide.stroke[a] b]', 30)]);
    expect(planText(three, line)).toBe('S1: stroke 10 mm\nS2: stroke 20 mm\nand 1 more, in the plan');
    expect(planText(three, { ...line, each: { ...each, most: 3, inline: true } })).toBe('S1: stroke 10 mm; S2: stroke 20 mm; a] b: stroke 30 mm');
    const verdicts: Line = { title: 'V', each: { id: 'tolerance.verdict', except: ['holds'], most: 9 }, pieces: [{ id: 'tolerance.verdict' }] };
    const texts = [
      ['tolerance.verdict[a]', 'holds'],
      ['tolerance.verdict[b]', 'ream'],
    ] as const;
    expect(planText(plan([], texts), verdicts)).toBe('b: ream');
  });

  test('the table has a column for what is filled in by hand', () => {
    const rows = rowsOf(plan([value('fill.time', 40)]), [{ title: 'Fill', pieces: [{ id: 'fill.time' }] }]);
    const table = rowsTable(rows, { title: 'What', planned: 'Planned', within: 'Bound', empty: ['Measured'] });
    expect(table.children.map((row) => row.children.map((cell) => textOf(cell)))).toEqual([
      ['What', 'Planned', 'Bound', 'Status', 'Measured'],
      ['Fill', '40 mm', '–', 'source', ''],
    ]);
  });
});

describe('the trial', () => {
  test.each(EXAMPLES)('%s: fifteen to twenty-five values to record, each with room for what is measured', (name) => {
    const table = tables(sheetText('trial', example(name))).find((one) => one[0]?.[0] === 'To be recorded') ?? [];
    expect(table[0]?.at(-1)).toBe('Measured');
    expect(table.length - 1).toBeGreaterThanOrEqual(15);
    expect(table.length - 1).toBeLessThanOrEqual(25);
    for (const row of table.slice(1)) expect(row.at(-1)).toBe('');
  });

  test.each(EXAMPLES)('%s: the first castings are checked by the inspection list of the plan', (name) => {
    const plan = example(name);
    const list = planRows(plan, INSPECTION);
    const table = tables(sheetText('trial', plan)).find((one) => one[0]?.[0] === 'On the first castings') ?? [];
    expect(table.length).toBeGreaterThanOrEqual(4);
    for (const row of table.slice(1)) expect(list.map((one) => one.slice(0, -1))).toContainEqual(row.slice(0, -1));
  });

  test('errors come before warnings, with what to do; no code is lost; notes stay in the plan', () => {
    for (const plan of plans.values()) {
      const text = sheetText('trial', plan);
      const open = plan.findings.filter(({ severity }) => severity !== 'note');
      for (const { code } of open) expect(text).toContain(`\`${code}\``);
      for (const { code } of plan.findings.filter(({ severity }) => severity === 'note'))
        if (!open.some((one) => one.code === code)) expect(text).not.toContain(`\`${code}\``);
      expect(text.indexOf('**warning**')).toBeGreaterThanOrEqual(text.includes('**warning**') ? text.lastIndexOf('**error**') : -1);
    }
    const calm = sheetText('trial', handMade({ findings: [] }));
    expect(calm).toContain('No error and no warning of the plan is open.');
  });
});

describe('the quote', () => {
  test('money of an invented plant is never to be quoted', () => {
    const plan = example('gearbox-housing');
    const warning = 'Plant and prices are invented: no figure of money on this sheet can be quoted.';
    expect(sheetText('quote', plan)).toContain(warning);
    expect(sheetText('quote', { ...plan, plant: { ...plan.plant, invented: false } })).not.toContain(warning);
  });

  test('what the cost leaves out is what the plan says, and a plan without prices says so', () => {
    const plan = example('suspension-node');
    const left = planRows(plan, LEFT_OUT).map(([what]) => what);
    expect(left.length).toBeGreaterThan(5);
    for (const what of left) expect(sheetText('quote', plan)).toContain(what);
    expect(sheetText('quote', handMade())).toContain('No cost is worked out: the plan has no prices for it.');
  });

  test('only tolerances that the usual die does not hold are named', () => {
    const text = sheetText('quote', example('gearbox-housing'));
    expect(text).toContain('bore height: 58 mm, asked plus-minus 0.3 mm');
    expect(text).not.toContain('flange length');
  });
});

describe('the die', () => {
  test('the drawing of the face is linked where it lies, whatever its name', () => {
    const figures = new Map([['die-layout', '../a b/x#1(y)-die-layout.svg']]);
    const text = sheetText('die', example('gearbox-housing'), { figures });
    expect(text).toMatch(/\]\(\.\.\/a%20b\/x%231\(y\)-die-layout\.svg\)|\]\(<?\.\.\/a%20b\/x%231\\\(y\\\)-die-layout\.svg>?\)/);
    expect(sheetText('die', example('gearbox-housing'))).toContain('is drawn with `--format markdown=FILE`');
    expect(sheetText('die', handMade())).not.toContain('--format');
  });
});

describe('nothing is worked out in a sheet', () => {
  const folder = join(ROOT, 'src/report/sheet');
  const files = readdirSync(folder).map((name) => ts.createSourceFile(name, readFileSync(join(folder, name), 'utf8'), ts.ScriptTarget.Latest, true));

  function walk(node: ts.Node, see: (node: ts.Node) => void): void {
    see(node);
    node.forEachChild((child) => walk(child, see));
  }

  test.each(files.map((file) => [file.fileName, file] as const))('%s holds no arithmetic', (_, file) => {
    const arithmetic = new Set([
      ts.SyntaxKind.PlusToken,
      ts.SyntaxKind.MinusToken,
      ts.SyntaxKind.AsteriskToken,
      ts.SyntaxKind.AsteriskAsteriskToken,
      ts.SyntaxKind.SlashToken,
      ts.SyntaxKind.PercentToken,
      ts.SyntaxKind.PlusEqualsToken,
      ts.SyntaxKind.MinusEqualsToken,
      ts.SyntaxKind.AsteriskEqualsToken,
      ts.SyntaxKind.SlashEqualsToken,
    ]);
    const found: string[] = [];
    walk(file, (node) => {
      if (ts.isBinaryExpression(node) && arithmetic.has(node.operatorToken.kind)) found.push(node.getText());
      if (ts.isPostfixUnaryExpression(node)) found.push(node.getText());
      if (ts.isPrefixUnaryExpression(node) && node.operator !== ts.SyntaxKind.ExclamationToken && node.getText() !== '-1') found.push(node.getText());
      if (
        ts.isIdentifier(node) &&
        ['Math', 'Number', 'parseFloat', 'parseInt', 'toFixed', 'toPrecision', 'reduce', 'convert', 'formatNumber', 'formatQuantity', 'sort'].includes(
          node.text,
        )
      )
        found.push(node.getText());
      if (ts.isPropertyAccessExpression(node) && node.name.text === 'value' && /^(value|end|one|traced)$/.test(node.expression.getText()))
        found.push(node.getText());
    });
    expect(found).toEqual([]);
  });

  test.each(files.map((file) => [file.fileName, file] as const))('%s types no number into a sentence', (_, file) => {
    const found: string[] = [];
    walk(file, (node) => {
      const words = ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
      const text = words ? (node as ts.LiteralLikeNode).text : '';
      if (/\d/.test(text) && !Object.hasOwn(VOCABULARY, text) && !Object.hasOwn(READERS, text)) found.push(node.getText());
    });
    expect(found).toEqual([]);
  });

  test('a value changed in the plan is changed on the sheet, and nothing else is', () => {
    const plan = example('gearbox-housing');
    fc.assert(
      fc.property(
        fc.constantFrom('fill.time', 'gate.velocity', 'die.height', 'shot.mass', 'cycle.time'),
        fc.double({ min: 1, max: 900, noNaN: true }),
        (id, number) => {
          const old = plan.values.get(id) as Traced;
          const changed = Traced.table(id, number, old.unit, { table: 'test/table', source: [], status: old.status }) as Traced;
          const values = new Map([...plan.values, [id, changed]]);
          for (const sheet of SHEETS) {
            const mine = LINES[sheet].flatMap((line) => rowsOf({ ...plan, values }, [line]).map((row) => [line, row] as const));
            for (const [line, row] of mine) {
              const touched = pieces(line).some((piece) => piece.id === id || piece.to === id);
              if (touched) expect([...row.planned, ...row.within].join(' ')).toContain(printTraced(changed));
              else expect(row).toEqual(rowsOf(plan, [line])[0]);
            }
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});
