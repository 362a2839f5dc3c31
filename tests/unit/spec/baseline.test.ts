import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { baselineText } from '../../../src/report/check/baseline-text.ts';
import { type BaselineEntry, jsonSchema, readBaseline, readCommittedPlans } from '../../../src/spec/index.ts';

const entry = (changes: Partial<BaselineEntry> = {}): BaselineEntry => ({
  code: 'wall/least',
  file: 'p/a.part.yaml',
  message: 'thin',
  fingerprint: '0123456789abcdef',
  reason: 'agreed',
  ...changes,
});

describe('a baseline', () => {
  test('is read as it was written, whatever stands in its texts, and fits its JSON Schema', () => {
    const validate = new Ajv2020({ strict: true, strictTypes: false }).compile(jsonSchema('baseline'));
    const text = fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme-ascii' }).filter((words) => words.trim() === words);
    fc.assert(
      fc.property(fc.array(fc.record({ code: text, file: text, item: text, message: text, reason: text }), { maxLength: 5 }), (records) => {
        const entries = records.map((record, i) => entry({ ...record, fingerprint: `${i}e5`.padStart(16, '1') }));
        const written = baselineText(entries);
        const { entries: read, diagnostics } = readBaseline({ name: 'known.yaml', text: written });
        expect([diagnostics, read?.map(({ at, ...rest }) => rest)]).toEqual([[], entries]);
        expect([validate(parse(written)), validate.errors]).toEqual([true, null]);
      }),
      { numRuns: 200 },
    );
  });

  test('each entry knows its line', () => {
    const { entries } = readBaseline({ name: 'known.yaml', text: baselineText([entry(), entry({ item: 'H1' })]) });
    expect(entries?.map(({ at }) => at?.position().line)).toEqual([5, 10]);
  });

  test('never throws, and gives entries only without a fault', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { entries, diagnostics } = readBaseline({ name: 'x', text });
        expect(entries === undefined).toBe(diagnostics.some(({ severity }) => severity === 'error'));
      }),
    );
  });
});

describe('a committed plan', () => {
  test('never throws: any text gives plans or one finding with a place', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const { plans, diagnostics } = readCommittedPlans({ name: 'plan.json', text });
        expect([plans.length, diagnostics.length]).toEqual([0, 1]);
        expect(diagnostics[0]?.at?.position().line).toBeGreaterThan(0);
      }),
    );
  });
});
