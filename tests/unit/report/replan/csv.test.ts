import { describe, expect, test } from 'vitest';
import { summarise } from '../../../../src/engine/replan/set.ts';
import { partCsv } from '../../../../src/report/replan/csv.ts';

const HEAD = { tool: { name: 'diewright', version: 'test' }, standing: '', settings: [], before: 'made', sameCavities: false, leastChange: 2 } as const;

/** The last cell of the row of a part that could not be planned: its fault. */
function cell(message: string): string {
  const failures = [{ file: 'a.part.yaml', message, code: 'spec/yaml' }];
  const [, row = ''] = [...partCsv({ head: HEAD, set: summarise([], failures), parts: [], failures })];
  expect(row.endsWith('\r\n')).toBe(true);
  return row.slice(row.lastIndexOf(',,') + 2, -2);
}

describe('cells', () => {
  test.each([
    ['plain', 'plain'],
    ['two\nlines', '"two\nlines"'],
    ['a "word"', '"a ""word"""'],
    ['=SUM(A1)', "'=SUM(A1)"],
    ['@x', "'@x"],
    // A tab becomes a space, which nothing works out.
    ['\tx', ' x'],
    ['\t=x', " '=x"],
    ['\uff1d1+1', "'\uff1d1+1"],
    ['a; =1+1', `"a; '=1+1"`],
    ['a\n-x', `"a\n'-x"`],
    ['a-b; c', '"a-b; c"'],
    ['"=x"', `"""'=x"""`],
    ['+x', "'+x"],
    ['-x', "'-x"],
    ['-1.5e3', '-1.5e3'],
    ['+2', '+2'],
    ['-1-1', "'-1-1"],
    ['=1,2', `"'=1,2"`],
    ['\u001b[31mred', '<U+001B>[31mred'],
  ])('%j', (text, wanted) => {
    expect(cell(text)).toBe(wanted);
  });
});
