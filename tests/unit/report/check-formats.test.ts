import Ajv2020 from 'ajv/dist/2020.js';
import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import { describe, expect, test } from 'vitest';
import { jsonWithList } from '../../../src/report/check/json-list.ts';
import { findingsJsonSchema } from '../../../src/report/check/json-schema.ts';
import { jsonText } from '../../../src/report/json-text.ts';
import { visibleLine } from '../../../src/report/visible.ts';
import { cleanCheck, FINDINGS, handMadeCheck, NASTY_FILE, textOfCheck } from './hand-made-check.ts';
import { textOf } from './page.ts';

describe('JSON', () => {
  test('fits its schema, and holds every finding with a fingerprint of its own', async () => {
    const validate = new Ajv2020({ allErrors: true }).compile(findingsJsonSchema());
    for (const report of [handMadeCheck(), cleanCheck()]) {
      expect([validate(JSON.parse(await textOfCheck('json', report))), validate.errors]).toEqual([true, null]);
    }
    const data = JSON.parse(await textOfCheck('json'));
    expect(data.summary).toEqual({ files: 5, errors: 3, warnings: 2, notes: 1, accepted: 2 });
    expect(data.files.map(({ file }: { file: string }) => file)).toEqual(handMadeCheck().files.map(({ name }) => name));
    expect(data.findings.map(({ code }: { code: string }) => code)).toEqual(FINDINGS.map(({ code }) => code));
    expect(new Set(data.findings.map(({ fingerprint }: { fingerprint: string }) => fingerprint)).size).toBe(FINDINGS.length);
  });

  test('a list in pieces gives the bytes of the whole, even when a text looks like the empty list', () => {
    const items = [{ a: [1, { b: '"list": []' }] }, { c: 'x\ny' }, {}];
    const around = (list: readonly object[]): object => ({ head: '"list": []', in: [{ deep: { list, tail: 'z "list": []' } }] });
    expect([...jsonWithList(around([]), 'list', items)].join('')).toBe(jsonText(around(items)));
    expect([...jsonWithList(around([]), 'list', [])].join('')).toBe(jsonText(around([])));
  });
});

/** Reads workflow commands as a runner does. */
function commandsOf(text: string): { readonly command: string; readonly properties: Readonly<Record<string, string>>; readonly message: string }[] {
  const plain = (escaped: string): string => escaped.replaceAll('%0A', '\n').replaceAll('%0D', '\r').replaceAll('%25', '%');
  return text.split('\n').flatMap((line) => {
    const [, command, properties, message] = /^::(\w+) (.*?)::(.*)$/.exec(line) ?? [];
    if (command === undefined) return [];
    const read = (properties as string).split(',').map((pair) => {
      const [name = '', ...value] = pair.split('=');
      return [name, plain(value.join('=').replaceAll('%3A', ':').replaceAll('%2C', ','))];
    });
    return [{ command, properties: Object.fromEntries(read), message: plain(message as string) }];
  });
}

describe('workflow commands', () => {
  test('the gravest first, accepted ones last, and a count in the end', async () => {
    const text = await textOfCheck('github');
    const commands = commandsOf(text);
    expect(commands.map(({ command }) => command)).toEqual(['error', 'error', 'error', 'warning', 'warning', 'notice', 'notice', 'notice']);
    expect(commands.at(-1)?.properties['title']).toBe('clamp/machine-use (accepted)');
    expect(text.split('\n').at(-2)).toBe('5 files checked: 3 errors, 2 warnings, 1 note, 2 accepted');
  });

  test('nothing in a name or text ends a command or begins another', async () => {
    const text = await textOfCheck('github');
    expect(text.split('\n')).toHaveLength(FINDINGS.length + 2);
    const found = commandsOf(text).find(({ properties }) => properties['title'] === 'wall/least');
    expect(found?.properties['file']).toBe(NASTY_FILE);
    expect(found?.properties).toMatchObject({ line: '3', col: '5', endLine: '3', endColumn: '9' });
    expect(found?.message).toContain('100% {0} [a](b)\n::warning::x');
    // The case of the published escaping: percent first, then colon and comma in properties.
    const one = { of: 'x', path: '', line: 12, column: 5, endLine: 12, endColumn: 6, severity: 'warning' as const };
    const [line] = (
      await textOfCheck(
        'github',
        handMadeCheck({ findings: [{ ...one, file: 'parts/a,b:c.yaml', code: 'DC0101: draft', message: '5% low\nsee table, row 3' }] }),
      )
    ).split('\n');
    expect(line).toBe('::warning file=parts/a%2Cb%3Ac.yaml,line=12,endLine=12,col=5,endColumn=6,title=DC0101%3A draft::5%25 low%0Asee table, row 3');
  });

  test('a finding over several lines gives no column, one without a file no place', async () => {
    const commands = commandsOf(await textOfCheck('github'));
    expect(commands.find(({ properties }) => properties['title'] === 'wall/note')?.properties).toEqual({
      file: 'a.part.yaml',
      line: '7',
      endLine: '9',
      title: 'wall/note',
    });
    expect(commands[0]?.properties).toEqual({ title: 'check/nothing-matched' });
  });
});

describe('Markdown', () => {
  const tables = (text: string): string[][][] => {
    const tree = fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
    return tree.children.flatMap((node) => (node.type === 'table' ? [node.children.map((row) => row.children.map((cell) => textOf(cell as Nodes)))] : []));
  };

  test('a table of files and one of findings, in which every text comes back', async () => {
    const [files, findings] = tables(await textOfCheck('markdown'));
    expect(files?.map((row) => row.length)).toEqual([5, 5, 5, 5, 5, 5]);
    expect(files?.map(([name]) => name)).toEqual(['File', 'command line', 'a.part.yaml', 'b.part.yaml', 'c.part.yaml', visibleLine(NASTY_FILE)]);
    expect(findings).toHaveLength(FINDINGS.length + 1);
    expect(findings?.at(-1)?.[1]).toBe(`${visibleLine(NASTY_FILE)}:3:5`);
    expect(findings?.at(-1)?.[3]).toContain('A|B *x* _y_ <b>bold</b> &amp; [l](u) ~s~ $m$ `c` <U+001B>[31mred<U+202E>');
    expect(findings?.find(([severity]) => severity === 'error, accepted')?.[3]).toContain('accepted in the part file: a second machine comes');
  });

  test('says how many more there are than a page holds, and keeps the gravest', async () => {
    const note = FINDINGS[3] as (typeof FINDINGS)[number];
    const many = [...Array.from({ length: 1200 }, (_, i) => ({ ...note, line: i + 1, endLine: i + 1 })), FINDINGS[1] as typeof note];
    const text = await textOfCheck('markdown', handMadeCheck({ findings: many }));
    expect(text).toContain('201 further findings are not shown here');
    expect(text).toContain('**warning**');
  });

  test('a clean check has no table', async () => {
    expect(await textOfCheck('markdown', cleanCheck())).toBe('## Check of casting plans\n\n1 file checked: no findings.\n');
  });
});

describe('text', () => {
  test('names the checked file where a finding stands in another one, and is empty when there is nothing', async () => {
    const text = await textOfCheck('text');
    expect(text).toContain(
      'plant.yaml:3:5: error, accepted: too weak [clamp/machine-use]\n  accepted in the part file: a second machine comes\n  from: the check of a.part.yaml\n',
    );
    expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u202e]/);
    expect(await textOfCheck('text', cleanCheck())).toBe('');
  });
});
