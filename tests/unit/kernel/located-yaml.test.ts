import { describe, expect, it } from 'vitest';
import { readLocatedYaml, type YamlPath } from '../../../src/kernel/located-yaml.ts';
import { activeCharacter, printable } from '../../../src/kernel/printable.ts';

const TEXT = `title: Least wall   # comment
axes:
  area: { unit: cm2, steps: up-to }
rows:
  - { area: 25, least: 0.50 }
  - area: .inf
    least: ~
    note: |
      two
      lines
empty:
`;
const yaml = readLocatedYaml({ name: 'walls.yaml', text: TEXT }, { prefix: 'rules' });
const at = (path: YamlPath, part?: 'value' | 'key'): string => {
  const { line, column, endLine, endColumn } = yaml.place(path, part).position();
  return `${line}:${column}-${endLine}:${endColumn}`;
};

describe('a YAML text', () => {
  it('is read as plain data of the core schema', () => {
    expect(yaml.diagnostics).toEqual([]);
    expect(yaml.data).toEqual({
      title: 'Least wall',
      axes: { area: { unit: 'cm2', steps: 'up-to' } },
      rows: [
        { area: 25, least: 0.5 },
        { area: Number.POSITIVE_INFINITY, least: null, note: 'two\nlines\n' },
      ],
      empty: null,
    });
  });

  it('knows the place of every value and key', () => {
    expect(at(['title'])).toBe('1:8-1:18');
    expect(at(['title'], 'key')).toBe('1:1-1:6');
    expect(at(['axes', 'area'])).toBe('3:9-3:36');
    expect(at(['rows', 0, 'least'])).toBe('5:24-5:28');
    expect(at(['rows', 1, 'least'])).toBe('7:12-7:13');
    expect(at(['rows', 1])).toBe('6:5-10:12');
    expect(at(['rows', 1], 'key')).toBe('6:5-10:12');
  });

  it('gives the nearest place for what is not there', () => {
    expect(at(['empty'])).toBe('11:1-11:6');
    expect(at(['axes', 'family', 'values'])).toBe('2:1-2:5');
    expect(at(['rows', 0, 'note'])).toBe('5:5-5:30');
    expect(at(['rows', 1, 'source'])).toBe('6:5-6:15');
    expect(at(['rows', 9])).toBe('4:1-4:5');
    expect(at(['nothing'])).toBe('1:1-1:18');
    expect(yaml.place(['rows', 0, 'area']).path).toBe('rows[0].area');
    expect(yaml.whole.position()).toEqual({ line: 1, column: 1, endLine: 12, endColumn: 1 });
  });

  it('keeps numbers as they were written when asked to', () => {
    const { data } = readLocatedYaml({ name: 'x', text: 'a: 1.0\nb: 007\nc: 0x1F\nd: .nan\ne: "2"\nf: true\n1.50: x\n' }, { numbersAsText: true });
    expect(data).toEqual({ a: '1.0', b: '007', c: '0x1F', d: '.nan', e: '2', f: true, '1.50': 'x' });
  });

  it('reads words of YAML 1.1 as text', () => {
    expect(readLocatedYaml({ name: 'x', text: 'a: yes\nb: off\nc: 1_000\nd: 12:30\ne: 2024-01-02\n' }).data).toEqual({
      a: 'yes',
      b: 'off',
      c: '1_000',
      d: '12:30',
      e: '2024-01-02',
    });
  });

  it('cannot change a prototype', () => {
    const { data, diagnostics } = readLocatedYaml({ name: 'x', text: '__proto__: { polluted: true }\nconstructor: { prototype: { polluted: true } }\n' });
    expect(diagnostics).toEqual([]);
    expect(Object.keys(data as object)).toEqual(['__proto__', 'constructor']);
    expect(Object.getPrototypeOf(data)).toBe(Object.prototype);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('uses the prefix and the limits that are given', () => {
    const read = (text: string, limits: object) => readLocatedYaml({ name: 'x', text }, { prefix: 'rules', limits }).diagnostics.map((finding) => finding.code);
    expect(read('a: [[[1]]]', { depth: 4 })).toEqual([]);
    expect(read('a: [[[1]]]', { depth: 3 })).toEqual(['rules/too-deep']);
    expect(read('a: b\n', { characters: 5 })).toEqual([]);
    expect(read('a: bc\n', { characters: 5 })).toEqual(['rules/too-large']);
    expect(read('a: 1\na: 2\na: 3\na: 4\n', { findings: 2 })).toEqual(['rules/duplicate-key', 'rules/duplicate-key', 'rules/too-many-findings']);
  });

  it('names the paths that a fault has spoilt, and keeps the rest', () => {
    const { data, faulty } = readLocatedYaml({ name: 'x', text: 'a: *gone\nb: !!str 1\nc: "\\e"\nd: { <<: *gone, e: 1 }\nf: 2\n' });
    expect(data).toEqual({ a: undefined, b: undefined, c: undefined, d: { e: 1 }, f: 2 });
    expect(faulty).toEqual([['a'], ['b'], ['c'], ['d']]);
  });
});

describe('text of the user in a message', () => {
  it('is on one line, short, and cannot act on a terminal', () => {
    expect(printable('Valve cover')).toBe('Valve cover');
    expect(printable('a\u001b[31m\nb\u202ec\ud800')).toBe('a<U+001B>[31m<U+000A>b<U+202E>c<U+D800>');
    expect([...printable('\u{1f527}'.repeat(100), 10)]).toHaveLength(10);
    expect(printable('abcdef', 4)).toBe('abc\u2026');
    expect(activeCharacter('plain \u00e9 \u{1f527}\n\t')).toBeUndefined();
    expect(activeCharacter('x\u009b')).toBe('U+009B');
  });
});
