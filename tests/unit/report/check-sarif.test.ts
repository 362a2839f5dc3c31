import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import Ajv04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import type { Log, Run } from 'sarif';
import { describe, expect, test } from 'vitest';
import { cleanCheck, FINDINGS, handMadeCheck, NASTY_FILE, NASTY_TEXT, textOfCheck } from './hand-made-check.ts';

const schema = JSON.parse(readFileSync(createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'), 'utf8'));
const ajv = new Ajv04({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats(ajv as never);
const validate = ajv.compile(schema);
const logOf = async (report = handMadeCheck()): Promise<Log> => JSON.parse(await textOfCheck('sarif', report));
const runOf = async (report = handMadeCheck()): Promise<Run> => (await logOf(report)).runs[0] as Run;

describe('SARIF', () => {
  test('fits the official schema, with findings and without', async () => {
    for (const report of [handMadeCheck(), cleanCheck()]) expect([validate(await logOf(report)), validate.errors]).toEqual([true, null]);
    // The schema does refuse: these are the faults that it is known to catch.
    const log = await logOf();
    expect(validate({ ...log, runs: [{ ...log.runs[0], results: [{ message: {} }] }] })).toBe(false);
    expect(validate({ ...log, runs: [{ ...log.runs[0], results: [{ message: { text: 'x' }, level: 'info' }] }] })).toBe(false);
  });

  test('version and schema come first, and the columns are named', async () => {
    const text = await textOfCheck('sarif');
    expect(text.startsWith('{\n  "version": "2.1.0",\n  "$schema": "https://')).toBe(true);
    expect((await runOf()).columnKind).toBe('utf16CodeUnits');
    expect((await runOf(cleanCheck())).results).toEqual([]);
  });

  test('every result names a rule of the list, and each rule explains itself', async () => {
    const { results = [], tool } = await runOf();
    const rules = tool.driver.rules ?? [];
    expect(rules.map(({ id }) => id)).toEqual([...new Set(results.map(({ ruleId }) => ruleId))].sort());
    for (const { ruleId, ruleIndex } of results) expect(rules[ruleIndex as number]?.id).toBe(ruleId);
    for (const rule of rules) {
      expect(rule.shortDescription?.text).toBe(`Title of ${rule.id}`);
      expect(rule.fullDescription?.text.length).toBeLessThanOrEqual(1024);
      expect(rule.help?.text).toContain(rule.id);
      expect(rule.properties).not.toHaveProperty('security-severity');
    }
  });

  test('places are relative URIs with a base, from which the name of the file comes back', async () => {
    const { results = [], originalUriBaseIds } = await runOf();
    expect(Object.keys(originalUriBaseIds ?? {})).toEqual(['%SRCROOT%']);
    const placed = FINDINGS.filter(({ file }) => file !== '');
    for (const [i, result] of results.entries()) {
      const { artifactLocation, region } = result.locations?.[0]?.physicalLocation ?? {};
      expect(artifactLocation?.uri).toMatch(/^([\w.!~*'()-]|%[\dA-F]{2}|\/)+$/);
      expect(artifactLocation?.uriBaseId).toBe('%SRCROOT%');
      expect(decodeURIComponent(artifactLocation?.uri ?? '')).toBe(placed[i]?.file);
      expect(region).toEqual({ startLine: placed[i]?.line, startColumn: placed[i]?.column, endLine: placed[i]?.endLine, endColumn: placed[i]?.endColumn });
    }
    expect(results.some(({ locations }) => decodeURIComponent(locations?.[0]?.physicalLocation?.artifactLocation?.uri ?? '') === NASTY_FILE)).toBe(true);
  });

  test('fingerprints differ for every result, equal ones too, and hold when lines and figures change', async () => {
    const prints = async (report = handMadeCheck()): Promise<unknown[]> =>
      ((await runOf(report)).results ?? []).map(({ partialFingerprints }) => partialFingerprints?.['diewright/v1']);
    const before = await prints();
    expect(new Set(before).size).toBe(before.length);
    const moved = FINDINGS.map((finding) => ({
      ...finding,
      line: finding.line + 10,
      endLine: finding.endLine + 10,
      message: `${finding.message} 12.5`,
      path: finding.item === undefined ? finding.path : finding.path.replace('[0]', '[4]'),
    }));
    expect(await prints(handMadeCheck({ findings: moved }))).toEqual(before);
  });

  test('what is accepted is suppressed with its reason; faults without a file are notifications of the run', async () => {
    const { results = [], invocations } = await runOf();
    const suppressed = results.flatMap(({ suppressions }) => suppressions ?? []);
    expect(suppressed).toEqual([
      { kind: 'inSource', status: 'accepted', justification: 'a second machine comes' },
      { kind: 'external', status: 'accepted', justification: 'known' },
    ]);
    expect(invocations).toMatchObject([
      { executionSuccessful: false, exitCode: 2, toolExecutionNotifications: [{ level: 'error', descriptor: { id: 'check/nothing-matched' } }] },
    ]);
    expect((await runOf(cleanCheck())).invocations).toEqual([{ executionSuccessful: true, exitCode: 0 }]);
  });

  test('no message holds a placeholder, a link or a character that acts', async () => {
    const { results = [] } = await runOf();
    for (const { message } of results) {
      expect(message.text).not.toMatch(/(?<!\{)\{\d+\}/);
      expect(message.text).not.toMatch(/(?<!\\)\[[^[\]]*\]\(/);
      expect(message.text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
    }
    expect(NASTY_TEXT).toMatch(/\{0\}.*\[a\]\(b\)/);
  });
});
