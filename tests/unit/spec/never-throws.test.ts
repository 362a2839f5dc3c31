import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPart, readPlant } from '../../../src/spec/index.ts';
import { BASE_PART, BASE_PLANT } from '../../cli/bad-input/base.ts';

/** A part or at least one error, never both; every place inside the text, findings in order of place. */
const holds = (text: string): void => {
  for (const read of [readPart, readPlant]) {
    const { diagnostics, ...given } = read({ name: 'random', text });
    const errors = diagnostics.filter((finding) => finding.severity === 'error');
    expect(Object.keys(given).length === 0).toBe(errors.length > 0);
    let before = 0;
    for (const finding of diagnostics) {
      const { line, column } = finding.at?.position() ?? { line: 0, column: 0 };
      expect(line).toBeGreaterThanOrEqual(1);
      expect(line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length);
      expect(column).toBeGreaterThanOrEqual(1);
      expect(line * 1e6 + column).toBeGreaterThanOrEqual(before);
      before = line * 1e6 + column;
    }
  }
};

const PIECES = [
  ': ',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  '&a ',
  '*a',
  '!!str ',
  '|',
  '>',
  '\n',
  '\n  ',
  '\t',
  ',',
  '%',
  '---\n',
  '...\n',
  '? ',
  '<<: ',
  '~',
  'null',
  'true',
  '-1',
  '0',
  '1e999',
  '.inf',
  '.nan',
  '5 mm',
  '2 in',
  '\u221225 mm',
  '__proto__',
  'constructor',
  'id',
  'depth',
  'x',
  '\u0000',
  '\ud800',
  '\u202e',
  '\ufeff',
  '\r',
  '\u2028',
];

/** Deletes, doubles, swaps and inserts at random places of a good file. */
const mutated = (base: string) =>
  fc
    .array(
      fc.record({
        at: fc.double({ min: 0, max: 1, noNaN: true }),
        length: fc.nat(30),
        insert: fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 6, unit: 'binary' }), fc.constant('')),
        again: fc.boolean(),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map((edits) =>
      edits.reduce((text, { at, length, insert, again }) => {
        const start = Math.floor(at * text.length);
        return text.slice(0, start) + insert + (again ? text.slice(start, start + length) : '') + text.slice(start + (again ? 0 : length));
      }, base),
    );

describe('reading never throws', () => {
  it('on random text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), holds), { numRuns: 400, seed: 1 });
  });

  it('on random pieces of YAML', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.constantFrom(...PIECES), fc.constantFrom(...BASE_PART.split(/(?<=[\s,])/))), { maxLength: 60 }), (pieces) =>
        holds(`diewright: part/1\n${pieces.join('')}`),
      ),
      { numRuns: 400, seed: 2 },
    );
  });

  it('on damaged part files', () => {
    fc.assert(fc.property(mutated(BASE_PART), holds), { numRuns: 400, seed: 3 });
  });

  it('on damaged plant files', () => {
    fc.assert(fc.property(mutated(BASE_PLANT), holds), { numRuns: 200, seed: 4 });
  });
});
