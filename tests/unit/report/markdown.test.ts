import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Root, RootContent, Table } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/engine/plan.ts';
import { loadRulebook, planPart } from '../../../src/index.ts';
import { Traced } from '../../../src/kernel/traced.ts';
import { markdownText, markdownTree } from '../../../src/report/markdown/index.ts';
import { BREAK, code, item, list, paragraph, strong, table } from '../../../src/report/markdown/nodes.ts';
import { printMarkdown } from '../../../src/report/markdown/print.ts';
import { force, handMade, NASTY } from './hand-made.ts';
import { GAS_TIME } from './hand-made-figures.ts';

/** Cells of a table row as GitHub splits them: at each pipe without a backslash before it. */
function cells(row: string): string[] {
  return row.slice(2, -2).split(/(?<!\\) \| /);
}

function section(text: string, title: string): string {
  const from = text.indexOf(`\n## ${title}\n`);
  expect(from, `section ${title}`).toBeGreaterThan(0);
  const end = text.indexOf('\n## ', from + 4);
  return text.slice(from, end < 0 ? undefined : end);
}

describe('escaping', () => {
  test('no sign of a name means anything to Markdown, HTML, GitHub or a terminal', () => {
    const first = markdownText(handMade({ part: { name: NASTY, file: 'a.part.yaml' } })).split('\n')[0];
    expect(first).toBe('# Casting plan: A|B \\*x\\* \\_y\\_ \\<b>bold\\</b> \\&amp; \\[l]\\(u) \\~s\\~ \\$m\\$ \\`c\\` \\<U+001B>\\[31mred\\<U+202E>');
  });

  test('a pipe in a cell is escaped, in words and in code, and a line break becomes <br>', () => {
    const tree: Root = { type: 'root', children: [table(['H|1', 'H2'], [[['a|b\nnext'], [{ type: 'inlineCode', value: 'x|y_z' }]]])] };
    expect(printMarkdown(tree)).toBe('| H\\|1 | H2 |\n| - | - |\n| a\\|b<br>next | `x\\|y_z` |\n');
  });

  test('every row of every table has as many cells as its head, whatever the titles hold', () => {
    const plan = handMade();
    const titles = new Map([...plan.titles].map(([id, title]) => [id, `${title} ${NASTY}`]));
    let width = 0;
    let rows = 0;
    for (const line of markdownText(handMade({ titles })).split('\n')) {
      if (!line.startsWith('| ')) width = 0;
      else {
        if (width === 0) width = cells(line).length;
        expect(cells(line)).toHaveLength(width);
        rows += 1;
      }
    }
    expect(rows).toBeGreaterThan(20);
  });

  test('the quick road for plain text gives what the library gives', () => {
    const character = fc.constantFrom(...'aZ9 .,;:()%/-+=\'"!#$&*<>[]_`{|}~@^\\é日–'.split(''));
    const text = fc.string({ unit: character, minLength: 1, maxLength: 12 });
    const plain = fc.string({ unit: fc.constantFrom(...'abc 012.:;()-+,='.split('')), minLength: 1, maxLength: 8 });
    const piece = fc.oneof(text, plain, plain);
    let quick = 0;
    fc.assert(
      fc.property(piece, piece, piece, (one, two, three) => {
        const bold = strong(one);
        const tree: Root = {
          type: 'root',
          children: [
            paragraph(one),
            paragraph(one, two, three),
            paragraph(bold, two),
            paragraph(bold, two, code(three), one),
            paragraph(code(one), code(two)),
            paragraph(two, bold, three),
            paragraph(bold),
            paragraph(one, BREAK, two),
            { type: 'heading', depth: 2, children: [{ type: 'text', value: one }] },
            table([one, two], [[[one], [two, { type: 'inlineCode', value: 'x' }]]]),
            list([item([one]), item([bold, two])]),
            list([item([two])]),
            paragraph(one),
            list([item([bold, ' ', code(three), ' at ', code('x'), two], list([item([one]), item([three], list([item([two])]))])), item([two])]),
            { type: 'blockquote', children: [paragraph(strong(two)), list([item([three]), item([''])])] },
            list([item([one, code(two), three], paragraph(two))]),
          ],
        };
        if (/^[a-z][a-z ]*[a-z.)]$/.test(one)) quick += 1;
        expect(printMarkdown(tree, 'quick')).toBe(printMarkdown(tree, 'library'));
      }),
      { numRuns: 3000 },
    );
    expect(quick).toBeGreaterThan(0);
  });
});

/** A table as the GFM grammar reads it: the text of each cell, with code in angle quotes. */
function textOf(node: RootContent | Table['children'][number]['children'][number]): string {
  if (node.type === 'inlineCode') return `\u2039${node.value}\u203a`;
  if ('children' in node) return node.children.map(textOf).join('');
  return 'value' in node ? node.value : '';
}

function cellTexts(table: Table): string[][] {
  return table.children.map((row) => row.children.map(textOf));
}

/** The tables of a text, read by the parser that goes with the writer. */
function readTables(text: string): Table[] {
  const tree = fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
  return tree.children.filter((node) => node.type === 'table');
}

describe('tables read back', () => {
  const character = fc.constantFrom(...'aZ9 .,;:()%/-+=\'"!#$&*<>[]_`{|}~@^\\é日'.split(''));
  const piece = fc.oneof(
    fc.string({ unit: character, minLength: 1, maxLength: 12 }),
    fc.constantFrom(NASTY, '|', '\\|', '||', '\\', '`|`', '- a', '1. b', '&nbsp;', '<br>', 'a | b', ':-:', 'https://example.org/a_b', '~~x~~', '#', '> q'),
  );
  // The grammar trims a cell, and has no way to write a backslash before a pipe in code.
  const cell = piece.map((text) => text.trim());
  const codeCell = cell.map((text) => text.replaceAll('\\|', '|')).filter((text) => text !== '' && !text.includes('\\|'));

  test.each(['quick', 'library'] as const)('the same cells, whatever they hold, by the %s road', (road) => {
    let cellsRead = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, codeCell), { minLength: 1, maxLength: 4 }), (rows) => {
        const written = table(
          ['One', 'Both', 'Code'],
          rows.map(([one, other, id]) => [[one], [one, code(id), other], [code(id)]]),
        );
        const [read, ...more] = readTables(printMarkdown({ type: 'root', children: [written] }, road));
        expect(more).toEqual([]);
        expect(read === undefined ? undefined : cellTexts(read)).toEqual(cellTexts(written));
        cellsRead += 3 * rows.length;
      }),
      { numRuns: 800, examples: [[[['<=@a>', 'a', 'a']]]] },
    );
    expect(cellsRead).toBeGreaterThan(2400);
  });

  test('a whole plan with nasty titles has the tables and rows that were meant, cell by cell', () => {
    const titles = new Map([...handMade().titles].map(([id, title]) => [id, `${title} ${NASTY}`]));
    compare(handMade({ titles }));
  });

  test.each(['gearbox-housing', 'door-latch-lever'])('the whole plan of %s too', async (name) => {
    const file = `${name}.part.yaml`;
    const text = readFileSync(join(import.meta.dirname, '../../../examples', name, file), 'utf8');
    const { plan } = planPart({ part: { name: file, text }, rulebook: await loadRulebook(), version: '9.9.9' });
    if (plan === undefined) throw new Error(`${file} cannot be planned`);
    compare(plan);
  });

  function compare(plan: Plan): void {
    const tree = markdownTree(plan, { workings: true });
    expect(printMarkdown(tree, 'quick')).toBe(printMarkdown(tree, 'library'));
    const written = tree.children.filter((node) => node.type === 'table');
    const read = readTables(printMarkdown(tree));
    expect(written.length).toBeGreaterThan(5);
    expect(read).toHaveLength(written.length);
    expect(read.map((one) => one.children.length)).toEqual(written.map((one) => one.children.length));
    expect(read.map(cellTexts)).toEqual(written.map(cellTexts));
  }
});

describe('figures', () => {
  const plan = handMade({ sections: [{ id: 'shot', title: 'Shot', blocks: [GAS_TIME] }] });

  test('a figure that has a file is an image with its text, and the file is linked whatever its name holds', () => {
    const text = markdownText(plan, { figures: new Map([['gas-time', '../my figures/a#1%?(b)-gas-time.svg']]) });
    const tree = fromMarkdown(section(text, 'Shot'));
    const images = tree.children.flatMap((node) => (node.type === 'paragraph' ? node.children : [])).filter((node) => node.type === 'image');
    expect(images).toMatchObject([
      { url: '../my%20figures/a%231%25%3F(b)-gas-time.svg', alt: GAS_TIME.text.replace('\u001b', '<U+001B>').replace('\u202e', '<U+202E>') },
    ]);
    expect(decodeURIComponent(images[0]?.url ?? '')).toBe('../my figures/a#1%?(b)-gas-time.svg');
  });

  test('a figure without a file is one line that says what it shows and how to get it', () => {
    const lines = section(markdownText(plan), 'Shot').trim().split('\n');
    expect(lines).toHaveLength(3);
    expect(lines[2]).toMatch(/^Figure "Gas pressure in the cavity over the fill", drawn with `--format markdown=FILE`: Gas pressure rises/);
    expect(lines[2]).not.toContain('![');
  });
});

describe('the plan on paper', () => {
  const text = markdownText(handMade(), { workings: true });

  test('opens with the name, the standing, and a summary before anything else', () => {
    expect(text.split('\n')[0]).toBe('# Casting plan: Cover, C-1, revision B');
    expect(text.indexOf('First-pass estimate')).toBeLessThan(text.indexOf('## Summary'));
    expect(text.match(/^## .*$/gm)?.slice(0, 3)).toEqual(['## Summary', '## Findings', '## Clamp']);
    expect(text).toContain('Plant: Typical plant (invented)');
  });

  test('the summary counts findings and names the figure to check first', () => {
    const summary = section(text, 'Summary');
    expect(summary).toContain('**Findings**: 1 error, 1 warning.');
    expect(summary).toContain('3 of 8 values rest on a figure from memory');
    expect(summary).toContain('Check first: Title of test.pressure, 60 MPa (`test.pressure`), on which 2 other values rest.');
    expect(summary).toContain('| Cavities | 2 | two fit | common practice |');
    expect(summary).not.toContain('How a hole is made');
  });

  test('the force of the fill phase stands beside the locking force only where it is more', () => {
    const forceOf = (id: string, value: number): [string, Traced] => [id, Traced.choice(id, value, 'kN', { note: 'for the test', status: 'derived' })];
    const held = (static_: number): string => {
      const values = new Map([...handMade().values, forceOf('clamp.locking-force', 2945), forceOf('intensification.static-force', static_)]);
      return /^\| Locking force needed \|.*$/m.exec(markdownText(handMade({ values }), {}))?.[0] ?? '';
    };
    expect(held(2945)).toBe('| Locking force needed | 2945 kN | – |');
    expect(held(3120)).toBe('| Locking force needed | 2945 kN | the static pressure of the fill phase asks for 3120 kN |');
  });

  test('a plan without a figure from memory says so', () => {
    expect(markdownText(handMade({ values: new Map(), weak: [] }))).toContain('no value rests on a figure from memory');
  });

  test('a value shows its equation with numbers, its source, and the weaker status of what it rests on', () => {
    expect(section(text, 'Clamp')).toContain('| Title of test.force | 720 kN | `F = 60 * 120 / 10 = 720 kN` | KEY-A table 3; rests on a figure from memory |');
    expect(section(text, 'Clamp')).toContain('| Title of test.pressure | 60 MPa | `test/pressure`<br>middle of the class | from memory, unverified |');
  });

  test('cells and sentences take values and decisions by id, an input as it was written', () => {
    expect(section(text, 'Clamp')).toContain('| H1 | 8.5 mm | cold-chamber |');
    expect(section(text, 'Clamp')).toContain('The force is 720 kN on a cold-chamber machine.');
  });

  test('errors come before warnings and warnings before notes, each in the order of the plan', () => {
    const one = (code: string, severity: 'error' | 'warning' | 'note') => ({ code, severity, message: 'So it is' });
    const mixed = handMade({
      findings: [one('a/note', 'note'), one('b/warn', 'warning'), one('c/error', 'error'), one('d/warn', 'warning'), one('e/error', 'error')],
    });
    expect(section(markdownText(mixed), 'Findings').match(/[a-e]\/\w+/g)).toEqual(['c/error', 'e/error', 'b/warn', 'd/warn', 'a/note']);
  });
  test('findings give place, why and what to do', () => {
    expect(section(text, 'Findings')).toBe(
      '\n## Findings\n\n- **error** `test/force` at `cover.part.yaml:3:8`: Too much\n  - Why: It opens.\n  - What to do: Take less.\n- **warning** `test/hole` at `cover.part.yaml:5:25`: H1: narrow\n',
    );
  });

  test('nothing is dropped: each value, item decision, alternative, caution, open point and source is there', () => {
    for (const id of handMade().values.keys()) expect(text).toContain(`Title of ${id.replace('[', '\\[')}`);
    expect(section(text, 'Decisions and alternatives')).toContain('| How a hole is made, H1 | cored |');
    expect(section(text, 'Decisions and alternatives')).toContain('| Cavities | 2 | 1 | too slow |');
    expect(section(text, 'Assumptions')).toContain('| Title of test.factor | 1.1 | usual reserve | common practice |');
    expect(section(text, 'Unverified figures')).toContain('| Title of test.pressure | `test.pressure` | 60 MPa | from memory, unverified | 2 |');
    expect(section(text, 'Cautions')).toContain('**Burns**: Wear a shield.');
    expect(section(text, 'Cautions')).toContain('Defer to: ISO 11612');
    expect(section(text, 'Not checked')).toContain('An open point: needs test.x (`test/open`)');
    expect(section(text, 'Not checked')).toContain('strength of the part');
    expect(section(text, 'Sources')).toContain('`KEY-B` A page (vendor page). Read in part.');
  });

  test('the same plan gives the same bytes', () => {
    expect(markdownText(handMade(), { workings: true })).toBe(text);
    expect(force.value).toBe(720);
  });
});
