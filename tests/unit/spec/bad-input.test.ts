import { describe, expect, it } from 'vitest';
import { CODES, readDie, readPart, readPlant } from '../../../src/spec/index.ts';
import { BASE_CELL, BASE_DIE, BASE_PART, BASE_PLANT } from '../../cli/bad-input/base.ts';
import { BAD_INPUT } from '../../cli/bad-input/cases.ts';

const read = (kind: 'part' | 'die' | 'plant', text: string) => {
  const source = { name: 'bad.yaml', text };
  const { diagnostics, ...rest } = { part: readPart, die: readDie, plant: readPlant }[kind](source);
  return { diagnostics, given: Object.keys(rest).length > 0 };
};
const decoded = (bytes: Uint8Array): string => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
/** Anything that a terminal could act on, in whatever is printed. */
const ACTIVE = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

describe('bad input', () => {
  it.each([['part', BASE_PART] as const, ['die', BASE_DIE] as const, ['plant', BASE_PLANT] as const, ['plant', BASE_CELL] as const])(
    'the %s file that the cases are made of has no fault',
    (kind, text) => {
      expect(read(kind, text)).toEqual({ diagnostics: [], given: true });
    },
  );

  it.each(BAD_INPUT.map((bad) => [bad.name, bad] as const))('%s', (_, bad) => {
    const { diagnostics, given } = read(bad.kind, decoded(bad.bytes()));
    const found = diagnostics.map((finding) => finding.code);
    const first = diagnostics[0];
    const place = first?.at?.position();
    expect({ codes: found, severity: first?.severity, line: place?.line, column: place?.column }).toEqual({
      codes: [bad.code, ...bad.others],
      severity: bad.severity,
      line: bad.line,
      column: bad.column,
    });
    expect(given).toBe(bad.severity !== 'error');
    for (const finding of diagnostics) {
      const texts = [finding.message, finding.fix ?? '', finding.at?.path ?? '', finding.item ?? '', ...(finding.notes ?? [])];
      for (const text of texts) {
        expect(text).not.toMatch(ACTIVE);
        expect(text.length).toBeLessThan(400);
        expect(text).not.toMatch(/expected|received|invalid input|\bzod\b|flow map|scalar|sequence|implicit/i);
      }
      expect(finding.fix, `${finding.code} says what to write`).toBeTruthy();
      expect(finding.message).toMatch(/^\S.*[^.\s]$/s);
    }
  });

  it('has unique names, and a case for every code that is explained', () => {
    expect(new Set(BAD_INPUT.map((bad) => bad.name)).size).toBe(BAD_INPUT.length);
    const met = new Set(BAD_INPUT.flatMap((bad) => [bad.code, ...bad.others]).map((code) => code.slice('spec/'.length)));
    // Having more findings than are shown has a test of its own below.
    expect([...Object.keys(CODES)].filter((code) => !met.has(code))).toEqual(['too-many-findings']);
    expect([...met].filter((code) => !Object.hasOwn(CODES, code))).toEqual([]);
  });

  it('shows a hundred findings and counts the rest', () => {
    const keys = Array.from({ length: 250 }, (_, i) => `odd${i}: 1\n`).join('');
    const { diagnostics } = read('part', BASE_PART + keys);
    expect(diagnostics).toHaveLength(101);
    expect(diagnostics.find((finding) => finding.code === 'spec/too-many-findings')?.message).toBe('150 further findings in this file are not shown');
    const aliases = read('part', `${BASE_PART}odd: [${'*a, '.repeat(150)}]\n`).diagnostics;
    expect(aliases.filter((finding) => finding.code === 'spec/anchor-or-alias')).toHaveLength(100);
    expect(aliases.find((finding) => finding.code === 'spec/too-many-findings')?.message).toBe('50 further findings in this file are not shown');
  });
});
