import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Ajv2020 } from 'ajv/dist/2020.js';
import Ajv04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import type { Log } from 'sarif';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { STARTER_PLANT } from '../../src/spec/starters.ts';
import { BROKEN, type CheckJson, folderWith, GOOD, NASTY_NAMES, THIN } from './check-folder.ts';

/** One run over files of every kind of fate, written in every format. */
let folder: ReturnType<typeof folderWith>;
let code: number | null;
let json: CheckJson;
const FORMATS = ['text', 'json', 'sarif', 'junit', 'github', 'markdown'] as const;
const read = (format: (typeof FORMATS)[number]): string => folder.read(`out.${format}`);

beforeAll(() => {
  folder = folderWith({
    ...Object.fromEntries(NASTY_NAMES.map((name) => [`pa rts/${name}`, THIN])),
    'good/a.part.yaml': GOOD,
    'good/plan.json': '{}',
    'known/a.part.yaml': THIN,
    'broken/a.part.yaml': BROKEN,
    'accepted/a.part.yaml': `${THIN}accepted:\n  - { code: wall/least, reason: 'a, "b": c]]>' }\n  - { code: wall/ratio, reason: nothing }\n`,
    'works/plant.yaml': STARTER_PLANT,
  });
  folder.run(['check', 'known', '--write-baseline', 'known.yaml']);
  ({ code } = folder.run(['check', '.', 'no/such.part.yaml', '--baseline', 'known.yaml', ...FORMATS.flatMap((format) => ['-f', `${format}=out.${format}`])]));
  json = JSON.parse(read('json'));
});
afterAll(() => folder.remove());

describe('a run over everything', () => {
  test('has findings of every sort', () => {
    expect([code, json.exit]).toEqual([2, 2]);
    const codes = new Set(json.findings.map((finding) => finding.code));
    for (const one of ['check/nothing-matched', 'check/unreadable-plan', 'check/unused-acceptance', 'spec/unknown-key', 'wall/least'])
      expect(codes, one).toContain(one);
    expect(new Set(json.findings.map(({ accepted }) => accepted?.where))).toEqual(new Set([undefined, 'part', 'baseline']));
    expect(new Set(json.findings.map(({ fingerprint }) => fingerprint)).size).toBe(json.findings.length);
  });

  test('JSON fits the schema that the command prints', () => {
    const validate = new Ajv2020({ allErrors: true }).compile(JSON.parse(folder.run(['schema', 'findings']).out));
    expect([validate(json), validate.errors]).toEqual([true, null]);
  });

  test('SARIF fits the official schema, and has every finding that has a file', () => {
    const schema = JSON.parse(readFileSync(createRequire(import.meta.url).resolve('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'), 'utf8'));
    const ajv = new Ajv04({ strict: false, unicodeRegExp: false });
    addFormats(ajv as never);
    const validate = ajv.compile(schema);
    const log: Log = JSON.parse(read('sarif'));
    expect([validate(log), validate.errors]).toEqual([true, null]);
    const results = log.runs[0]?.results ?? [];
    const placed = json.findings.filter(({ at }) => at !== undefined);
    expect(results.map(({ ruleId, locations }) => [ruleId, decodeURIComponent(locations?.[0]?.physicalLocation?.artifactLocation?.uri ?? '')])).toEqual(
      placed.map((finding) => [finding.code, finding.at?.file]),
    );
    expect(results.filter(({ suppressions }) => suppressions !== undefined)).toHaveLength(placed.filter(({ accepted }) => accepted !== undefined).length);
  });

  test('JUnit is XML, with a suite for every checked file and a case for every finding', () => {
    expect(XMLValidator.validate(read('junit'))).toBe(true);
    const parser = new XMLParser({
      ignoreAttributes: false,
      attributeNamePrefix: '',
      htmlEntities: true,
      isArray: (name) => ['testsuite', 'testcase'].includes(name),
    });
    const { testsuites } = parser.parse(read('junit'));
    const suites: { name: string; testcase: object[] }[] = testsuites.testsuite;
    const named = [...json.files.map(({ file }) => file), 'command line', 'known.yaml'];
    expect(suites.filter(({ name }) => !named.includes(name))).toEqual([]);
    expect(suites.map(({ name }) => name)).toEqual(expect.arrayContaining(json.files.map(({ file }) => file)));
    const clean = suites.filter(({ name }) => !json.findings.some(({ checked = 'command line' }) => checked === name)).length;
    expect(suites.reduce((sum, { testcase }) => sum + testcase.length, 0)).toBe(json.findings.length + clean);
  });

  test('one workflow command, one row and one block of text for each finding', () => {
    expect(read('github').match(/^::(error|warning|notice) /gm)).toHaveLength(json.findings.length);
    expect(read('markdown').match(/^\| (\*\*(error|warning|note)\*\*|(error|warning|note), accepted) \|/gm)).toHaveLength(json.findings.length);
    expect(read('text').match(/^\S.* \[[a-z][a-z0-9-]*\/[a-z0-9.-]+\]$/gm)).toHaveLength(json.findings.length);
  });

  test('no output names a path of the machine, and every code is explained', () => {
    for (const format of FORMATS) expect(read(format), format).not.toContain(folder.path);
    for (const one of new Set(json.findings.map((finding) => finding.code))) expect(folder.run(['explain', one]).code, one).toBe(0);
  });
});
