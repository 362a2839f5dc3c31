// What tests import in place of vitest, for code.mjs: they are gathered as functions, to be run again and again in one process.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
import * as chai from 'chai';

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);
chai.expect.extend(expect, customMatchers);

/**
 * What stands outside all suites of its file, each a test or a suite: gives its tests, each with the suites around it and their hooks.
 * A suite is gone through anew whenever it is asked, for what its tests share is often worked out there.
 */
export const blocks = [];
const suiteOf = (name) => ({ name, before: [], each: [], after: [] });
let suites = [];
let gathered;

/** Called at the top of each file: what stands outside all its suites is its own and no other file's. */
export function file(path) {
  suites = [suiteOf(path)];
}

const nameOf = (name) => [...suites.map((suite) => suite.name), String(name)].join(' > ');
const functionOf = (...rest) => rest.find((one) => typeof one === 'function');

function add(name, ...rest) {
  const test = { name: nameOf(name), run: functionOf(...rest), suites: [...suites] };
  if (suites.length > 1) gathered.push(test);
  else blocks.push({ collect: () => [test] });
}

function suite(name, ...rest) {
  const outer = [...suites];
  const gather = () => {
    suites = [...outer, suiteOf(String(name))];
    try {
      functionOf(...rest)();
    } finally {
      suites = outer;
    }
  };
  if (outer.length > 1) return gather();
  const collect = () => {
    gathered = [];
    gather();
    return gathered;
  };
  blocks.push({ collect });
}

/** Rows become tests or suites of their own, numbered in place of the printed values. */
const eachOf = (define) => (rows) => (name, run) => {
  for (const [i, row] of [...rows].entries()) define(`${name} #${i}`, () => run(...(Array.isArray(row) ? row : [row])));
};
const leftOut = Object.assign(() => {}, { each: () => () => {} });

export const test = Object.assign(add, { each: eachOf(add), skip: leftOut, skipIf: (no) => (no ? leftOut : test), runIf: (yes) => (yes ? test : leftOut) });
export const it = test;
export const describe = Object.assign(suite, { each: eachOf(suite), skip: leftOut, skipIf: (no) => (no ? leftOut : describe) });
const hook = (kind) => (run) => suites.at(-1)[kind].push(run);
export const beforeAll = hook('before');
export const beforeEach = hook('each');
export const afterAll = hook('after');
export const afterEach = () => {};
