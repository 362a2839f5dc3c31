import { describe, expect, it } from 'vitest';
import { readLocatedYaml } from '../../../src/kernel/located-yaml.ts';

/** Text, code, place as line:column-line:column, what is said, what to write. */
type Case = readonly [text: string, code: string, place: string, message: string, fix: string];
const CLOSE = (mark: string) => `add the "${mark}", and indent its lines further than the line that it opens on`;
const TOP = (what: string) => `the file is ${what} at the top, but keys with values are wanted`;
const CASES: readonly Case[] = [
  ['a: \u0007x\n', 'control-character', '1:4-1:5', 'the file holds the control character U+0007', 'remove it'],
  ['a: \ufffdx\n', 'not-utf8', '1:4-1:5', 'the file is not UTF-8 text: a character could not be read', 'save the file in the encoding UTF-8'],
  ['%YAML 1.1\n---\na: 1\n', 'directive', '1:1-1:2', 'a directive (a line that begins with %) is not read', 'remove the line'],
  ['# c\n\n  # d\n%TAG ! x\n---\na: 1\n', 'directive', '4:1-4:2', 'a directive (a line that begins with %) is not read', 'remove the line'],
  ['a:\n\tb: 1\n', 'tab-indentation', '2:1-2:2', 'the line is indented with a tab', 'indent with spaces'],
  ['a:\n  b: 1\n \tc: 2\n', 'tab-indentation', '3:2-3:3', 'the line is indented with a tab', 'indent with spaces'],
  ['a: 1\n---\nb: 2\n', 'several-documents', '2:1-2:4', 'a second document begins here', 'keep one document in a file, and remove the line "---"'],
  ['a: &x &y 1\n', 'anchor-or-alias', '1:7-1:9', 'anchors and aliases are not read', 'write the value out in full here'],
  ['a: @x\n', 'yaml-syntax', '1:4-1:5', 'a text cannot begin with "@" outside quotes', 'put the text in quotes'],
  ['a: "x\nb: 1\n', 'yaml-syntax', '1:4-1:5', 'the quote that opens here is not closed', 'add the closing quote'],
  ["a: 'x\n", 'yaml-syntax', '1:4-1:5', 'the quote that opens here is not closed', 'add the closing quote'],
  ['a: [1, 2\nb: 3\n', 'yaml-syntax', '1:4-1:5', 'the "[" that opens here is not closed', CLOSE(']')],
  ['a: { b: 1\nc: 2\n', 'yaml-syntax', '1:4-1:5', 'the "{" that opens here is not closed', CLOSE('}')],
  ['a: [{b: 1}\n', 'yaml-syntax', '1:4-1:5', 'the "[" that opens here is not closed', CLOSE(']')],
  ['a: {b: [1, 2}\n', 'yaml-syntax', '1:8-1:9', 'the "[" that opens here is not closed', CLOSE(']')],
  [
    'a: b: c\n',
    'yaml-syntax',
    '1:4-1:5',
    'a second colon with a space after it stands in this line',
    'put the text in quotes, or begin the inner keys on a new line, indented further',
  ],
  ['a: - b\n', 'yaml-syntax', '1:4-1:5', 'a list entry cannot begin on the line of its key', 'begin it on a new line, indented, or write the list in [ ]'],
  ...['a: [ - 1 ]\n', 'a: 1\n- b\n'].map(
    (text): Case => [
      text,
      'yaml-syntax',
      text.startsWith('a: [') ? '1:6-1:7' : '2:1-2:2',
      'a list entry with a dash stands where none belongs',
      'begin the list on a new line under its key, indented; inside [ ] write entries without dashes',
    ],
  ),
  ['a: 1\n-b\n', 'yaml-syntax', '2:1-2:3', 'the dash of a list entry needs a space after it', 'write "- " before the entry'],
  [
    'a: { b: 1 c: 2 }\n',
    'yaml-syntax',
    '1:9-1:16',
    'a comma or a closing bracket is missing',
    'put a comma between the entries inside { } or [ ]; a text that holds ": " stands in quotes',
  ],
  ['a\nb: 1\n', 'yaml-syntax', '1:1-2:2', 'the line has no colon between a key and a value', 'write "key: value"'],
  [
    'a:\n    b: 1\n  c: 2\n',
    'yaml-syntax',
    '3:1-3:2',
    'the line is indented differently from the lines that it belongs with',
    'indent it like the line above or like the key that it belongs to',
  ],
  ['a: }\n', 'yaml-syntax', '1:4-1:5', 'a closing "}" stands here without an opening one', 'remove it, or add the opening one'],
  ['a: [1,, 2]\n', 'yaml-syntax', '1:7-1:8', 'a comma stands here with no entry before it', 'remove the comma, or write the entry'],
  ['a: { , b: 1 }\n', 'yaml-syntax', '1:6-1:7', 'a comma stands here with no entry before it', 'remove the comma, or write the entry'],
  ['a: b\n  c: d\n', 'yaml-syntax', '2:3-2:4', 'the line is indented further than the one above, which has a value already', 'indent it like the line above'],
  ['a: "x" y\n', 'yaml-syntax', '1:8-1:9', 'text follows here after the end of the value', 'put the whole value in one pair of quotes, or remove the rest'],
  ['a: "x"#y\n', 'yaml-syntax', '1:7-1:9', 'the # of a comment needs a space before it', 'put a space before the #, or put the text in quotes'],
  [`${'k'.repeat(1100)}: 1\n`, 'yaml-syntax', '1:1-1:1101', 'the key is longer than 1024 characters', 'shorten it'],
  ['a: !!int x\n', 'tag', '1:4-1:9', 'the tag "!!int" is not read', 'write the plain value without a tag'],
  ['  \n', 'empty-file', '1:1-1:1', 'the file is empty', 'write keys and values, such as "key: value"'],
  ['# only\n', 'empty-file', '1:1-1:1', 'the file holds no keys', 'write keys and values, such as "key: value"'],
  ['text\n', 'not-a-mapping', '1:1-1:2', TOP('one text'), 'write one key on each line at the top: "key: value"'],
  ['a:1 b:2\n', 'not-a-mapping', '1:1-1:2', TOP('one text'), 'put a space after each colon: "key: value"'],
  ['- 1\n', 'not-a-mapping', '1:1-1:2', TOP('a list'), 'write one key on each line at the top: "key: value"'],
  ['[1]\n', 'not-a-mapping', '1:1-1:2', TOP('a list'), 'write one key on each line at the top: "key: value"'],
  ['a: 1\na: 2\n', 'duplicate-key', '2:1-2:2', '"a" is written twice in one mapping', 'keep one of the two'],
  ['1: x\n? [a]\n: y\n', 'complex-key', '2:3-2:6', 'a list or mapping stands where a key should be', 'write the key as one plain word'],
  ['a: &used 1\nb: *used\n', 'anchor-or-alias', '2:4-2:9', 'the alias "*used" is not read', 'write the value out in full here'],
  ['a: &idle 1\n', 'anchor-or-alias', '1:4-1:9', 'the anchor "&idle" is not read', 'remove it'],
  ['<<: { a: 1 }\n', 'anchor-or-alias', '1:1-1:3', 'the merge key "<<" is not read', 'write the keys out in full here'],
  ['a: !x\n', 'tag', '1:4-1:6', 'the tag "!x" is not read', 'write the plain value without a tag'],
  ['a: !<tag:x> y\n', 'tag', '1:4-1:12', 'the tag "!<tag:x>" is not read', 'write the plain value without a tag'],
  ['b: [!x 1]\n', 'tag', '1:5-1:7', 'the tag "!x" is not read', 'write the plain value without a tag'],
];

describe('a fault of YAML', () => {
  it.each(CASES.map((one) => [one[0].slice(0, 40), one] as const))('%j is one finding, in words of the file', (_, [text, code, place, message, fix]) => {
    const found = readLocatedYaml({ name: 'x', text }).diagnostics.map((one) => {
      const at = one.at?.position();
      return [one.code, `${at?.line}:${at?.column}-${at?.endLine}:${at?.endColumn}`, one.message, one.fix];
    });
    expect(found).toEqual([[`spec/${code}`, place, message, fix]]);
  });

  it.each(['a: "x" # y\n', 'a: 1#x\n', '? a\n: b\n', '# only\n\n  # comments\na: 1\n', 'a: "- b"\n', `${'k'.repeat(1000)}: 1\n`])('%j has none', (text) => {
    expect(readLocatedYaml({ name: 'x', text }).diagnostics).toEqual([]);
  });

  it('says where the first of two stands, and what else has to go', () => {
    const notes = (text: string) => readLocatedYaml({ name: 'x', text }).diagnostics.map((one) => one.notes);
    expect(notes('a: 1\nb: 2\na: 3\n')).toEqual([['It stands on line 1 already.']]);
    expect(notes('a: &used 1\nb: *used\n')).toEqual([['The anchor "&used" on line 1 has to go too.']]);
    expect(notes('a: *gone\n')).toEqual([undefined]);
  });
});
