import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, test } from 'vitest';
import { cleanCheck, FINDINGS, handMadeCheck, NASTY_FILE, textOfCheck } from './hand-made-check.ts';

interface Case {
  readonly name: string;
  readonly classname: string;
  readonly file?: string;
  readonly line?: string;
  readonly failure?: { readonly message: string; readonly type: string; readonly '#text': string };
  readonly error?: { readonly message: string };
  readonly skipped?: { readonly message: string };
  readonly 'system-out'?: string;
}
interface Suite {
  readonly name: string;
  readonly file: string;
  readonly tests: string;
  readonly failures: string;
  readonly errors: string;
  readonly skipped: string;
  readonly testcase: readonly Case[];
}

async function read(report = handMadeCheck()): Promise<Suite & { readonly testsuite: readonly Suite[] }> {
  const text = await textOfCheck('junit', report);
  expect(XMLValidator.validate(text)).toBe(true);
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: '',
    parseAttributeValue: false,
    parseTagValue: false,
    trimValues: false,
    htmlEntities: true,
    isArray: (name) => name === 'testsuite' || name === 'testcase',
  });
  return parser.parse(text).testsuites;
}

const sum = (suites: readonly Suite[], key: 'tests' | 'failures' | 'errors' | 'skipped'): number =>
  suites.reduce((total, suite) => total + Number(suite[key]), 0);

describe('JUnit', () => {
  test('a suite for each file, the clean one with one case that passes; counts agree with what is in it', async () => {
    const { testsuite, ...whole } = await read();
    expect(testsuite.map(({ name }) => name)).toEqual(['command line', 'a.part.yaml', 'b.part.yaml', 'c.part.yaml', 'clean.part.yaml', NASTY_FILE]);
    for (const suite of testsuite) {
      const { testcase } = suite;
      const count = (of: 'failure' | 'error' | 'skipped'): number => testcase.filter((one) => one[of] !== undefined).length;
      expect([Number(suite.tests), Number(suite.failures), Number(suite.errors), Number(suite.skipped)]).toEqual([
        testcase.length,
        count('failure'),
        count('error'),
        count('skipped'),
      ]);
      expect(new Set(testcase.map(({ name }) => name)).size).toBe(testcase.length);
      for (const one of testcase) expect(one.classname).toBe(suite.name);
    }
    for (const key of ['tests', 'failures', 'errors', 'skipped'] as const) expect(Number(whole[key]), key).toBe(sum(testsuite, key));
    expect(testsuite.find(({ name }) => name === 'clean.part.yaml')?.testcase).toEqual([{ name: 'no findings', classname: 'clean.part.yaml' }]);
  });

  test('failures are what fails the run by its threshold, errors the faults, skipped what is accepted', async () => {
    const counts = async (threshold: 'error' | 'warning' | 'never'): Promise<number[]> => {
      const { testsuite } = await read(handMadeCheck({ threshold }));
      return (['failures', 'errors', 'skipped'] as const).map((key) => sum(testsuite, key));
    };
    expect(await counts('error')).toEqual([1, 2, 2]);
    expect(await counts('warning')).toEqual([3, 2, 2]);
    expect(await counts('never')).toEqual([0, 2, 2]);
    const { testsuite } = await read();
    const a = testsuite.find(({ name }) => name === 'a.part.yaml')?.testcase ?? [];
    expect(a.map(({ name }) => name)).toEqual(['wall/ratio H1', 'wall/ratio H1 (2)', 'wall/note', 'clamp/machine-use']);
    expect(a[0]?.['system-out']).toBe('a.part.yaml:3:5: warning: uneven\nIt tears.\nWhat to do: even it');
    expect(a[3]).toMatchObject({ file: 'plant.yaml', line: '3', skipped: { message: 'accepted in the part file: a second machine comes' } });
  });

  test('texts come back as they were, without the characters that XML cannot hold', async () => {
    const { testsuite } = await read();
    const [found] = testsuite.find(({ name }) => name === NASTY_FILE)?.testcase ?? [];
    const message = (FINDINGS.at(-1)?.message ?? '').replace(/[\u0000\u001b\ud800\uffff]/g, '');
    expect(found?.file).toBe(NASTY_FILE);
    expect(found?.failure?.message).toBe(message);
    expect(found?.failure?.['#text']).toContain(message);
    expect(await textOfCheck('junit')).not.toMatch(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/);
  });

  test('a clean check is all passed', async () => {
    expect(await read(cleanCheck())).toMatchObject({ tests: '1', failures: '0', errors: '0', skipped: '0', name: 'diewright' });
  });
});
