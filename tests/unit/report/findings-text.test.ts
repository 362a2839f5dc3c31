import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/kernel/diagnostic.ts';
import { Place } from '../../../src/kernel/place.ts';
import { findingsText } from '../../../src/report/findings-text.ts';

function at(text: string, from: number, to: number, path = 'x'): Place {
  const source = { name: 'a.part.yaml', text };
  return new Place(source, path, () => [from, to]);
}

function finding(place: Place | undefined, more: Partial<Diagnostic> = {}): Diagnostic {
  return { code: 'spec/test', severity: 'error', message: 'wrong', ...(place === undefined ? {} : { at: place }), ...more };
}

/** The lines of the frame: the line before, the line, the carets. */
function frame(place: Place): string[] {
  return findingsText([finding(place)])
    .split('\n')
    .slice(1, -3);
}

/** The characters of the shown line that the carets stand under, for text whose characters take one column each. */
function marked(lines: readonly string[]): string {
  const line = lines.at(-2) as string;
  const marks = lines.at(-1) as string;
  return [...line].filter((_, i) => marks[i] === '^').join('');
}

describe('findings for a terminal', () => {
  test('place, severity, message and code on one line; the line before, the line, carets; why; what to do; the count', () => {
    const text = findingsText([finding(at('a: 1\nb: 22\n', 8, 10), { notes: ['because'], fix: 'write 3' }), finding(undefined, { severity: 'warning' })]);
    expect(text).toBe(
      'a.part.yaml:2:4: error: wrong [spec/test]\n  1 | a: 1\n  2 | b: 22\n    |    ^^\n  why: because\n  do: write 3\n\nwarning: wrong [spec/test]\n\n1 error, 1 warning\n',
    );
  });

  test('the first line has no line before it, and an empty place still gets one caret', () => {
    expect(frame(at('b: 22', 5, 5))).toEqual(['  1 | b: 22', '    |      ^']);
  });

  test('a place over several lines is marked to the end of its first', () => {
    expect(marked(frame(at('a:\n  b: 1\n  c: 2\n', 5, 16)))).toBe('b: 1');
  });

  test('a finding about a whole file shows no line', () => {
    expect(findingsText([finding(at('a: 1\nb: 2\n', 0, 10, ''))])).toBe('a.part.yaml:1:1: error: wrong [spec/test]\n\n1 error\n');
  });

  test('tabs keep the carets in line', () => {
    const lines = frame(at('\ta:\tbad # x', 4, 7));
    expect(lines[0]).toBe('  1 |     a:  bad # x');
    expect(marked(lines)).toBe('bad');
  });

  test('wide characters take two carets', () => {
    const lines = frame(at('名前: x', 0, 2));
    expect(lines[1]).toBe('    | ^^^^');
  });

  test('a long line is cut to 80 columns around the place', () => {
    const text = `${'a'.repeat(200)}HERE${'b'.repeat(200)}`;
    const lines = frame(at(text, 200, 204));
    expect(marked(lines)).toBe('HERE');
    expect(lines[0]).toMatch(/^ {2}1 \| …a+HEREb+…$/);
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(82);
  });

  test('a long line whose place is at its start keeps its start', () => {
    expect(frame(at(`HERE${'b'.repeat(200)}`, 0, 4))[0]).toMatch(/^ {2}1 \| HEREb+…$/);
  });

  test('control characters and direction overrides are named, in the line and in the message', () => {
    const text = findingsText([finding(at('a: \u001b[31mx\u202e', 3, 9), { message: 'is \u001b[2J' })]);
    expect(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/.test(text)).toBe(false);
    expect(text).toContain('a: <U+001B>[31mx<U+202E>');
    expect(text).toContain('is <U+001B>[2J');
  });

  test('colour comes from the palette alone', () => {
    const paint = (name: string) => (text: string) => `<${name}>${text}</${name}>`;
    const palette = { severity: { error: paint('e'), warning: paint('w'), note: paint('n') }, strong: paint('s'), faint: paint('f') };
    const text = findingsText([finding(at('a: 1', 3, 4))], palette);
    expect(text).toContain('<e>error:</e> wrong <f>[spec/test]</f>');
    expect(text).toContain('<s>1 error</s>');
  });

  test('no findings are counted as none', () => {
    expect(findingsText([])).toBe('no findings\n');
  });
});
