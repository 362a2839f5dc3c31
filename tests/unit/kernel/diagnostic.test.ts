import { describe, expect, it } from 'vitest';
import { type Diagnostic, fingerprint, hashOf, sortDiagnostics } from '../../../src/kernel/diagnostic.ts';
import { Place } from '../../../src/kernel/place.ts';

const TEXT = 'name: x\nwall: 2\n';
const at = (offset: number, name = 'b.yaml', path = ''): Place => new Place({ name, text: TEXT }, path, () => [offset, offset + 1]);
const finding = (code: string, more: Partial<Diagnostic> = {}): Diagnostic => ({ code, severity: 'warning', message: 'm', ...more });

/** FNV-1a of 64 bits, test vectors of the authors' published list. */
describe('the hash', () => {
  it.each([
    ['', 'cbf29ce484222325'],
    ['a', 'af63dc4c8601ec8c'],
    ['b', 'af63df4c8601f1a5'],
    ['foobar', '85944171f73967e8'],
  ])('of "%s" is %s', (text, hash) => {
    expect(hashOf([text])).toBe(hash);
  });
  it('keeps words apart and is always sixteen digits', () => {
    expect(hashOf(['a', 'bc'])).not.toBe(hashOf(['ab', 'c']));
    expect(hashOf(['a', ''])).not.toBe(hashOf(['a']));
    for (let i = 0; i < 300; i += 1) expect(hashOf([String(i)])).toMatch(/^[0-9a-f]{16}$/);
  });
});

describe('a fingerprint', () => {
  const base = finding('wall/least', { at: at(0, 'b.yaml', 'wall') });
  it('does not move with lines, wording or severity', () => {
    expect(fingerprint({ ...base, at: at(9, 'b.yaml', 'wall'), message: 'other', severity: 'error' })).toBe(fingerprint(base));
  });
  it('differs by code, item and path', () => {
    const others = [
      base,
      finding('wall/other', { at: base.at as Place }),
      { ...base, item: 'H1' },
      { ...base, at: at(0, 'b.yaml', 'mass') },
      finding('wall/least'),
    ];
    expect(new Set(others.map(fingerprint)).size).toBe(others.length);
  });
});

describe('the order of findings', () => {
  it('is by file, line, column, severity, code and message; those without a place come first', () => {
    const sorted = [
      finding('a/a'),
      finding('z/z', { at: at(15, 'a.yaml') }),
      finding('z/z', { at: at(0) }),
      finding('y/y', { at: at(6) }),
      finding('z/z', { at: at(8), severity: 'error' }),
      finding('a/a', { at: at(8) }),
      finding('b/b', { at: at(8), message: 'k' }),
      finding('b/b', { at: at(8), message: 'l' }),
      finding('a/a', { at: at(8), severity: 'note' }),
    ];
    expect(sortDiagnostics([...sorted].reverse())).toEqual(sorted);
    expect(sortDiagnostics(sorted)).toEqual(sorted);
  });
  it('leaves the list it was given as it was', () => {
    const list = [finding('b/b'), finding('a/a')];
    sortDiagnostics(list);
    expect(list.map((one) => one.code)).toEqual(['b/b', 'a/a']);
  });
});
