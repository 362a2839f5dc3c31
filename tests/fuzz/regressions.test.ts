import { beforeAll, describe, expect, test } from 'vitest';
import { planDie } from '../../src/die.ts';
import { stalePlan } from '../../src/engine/check/stale.ts';
import { findingsText, houseRulebook, loadRulebook, planPart, type Rulebook } from '../../src/index.ts';
import { runHere } from '../cli/run-here.ts';
import { cpuTime } from '../cpu-time.ts';
import { BASES } from './bases.ts';
import { soundFindings, soundText } from './invariants.ts';
import { leastTime, SLOWEST, timeWith } from './slow.ts';

// What fuzzing has found, each case as it was shrunk.

const version = '0';
const PART = (BASES.part[0] as { text: string }).text;
let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});

describe('pinned counts', () => {
  // A fraction was laid out without an end, 1e308 and 3000 were faults of the program.
  test.each([
    ['machine.cavities', '2.5'],
    ['machine.cavities', '1e308'],
    ['machine.cavities', '3000'],
    ['machine.cavities', '0'],
    ['machine.cavities', 'nan'],
    ['die.columns', '1e300'],
    ['die.rows', '-3'],
  ])('%s at %s', (id, value) => {
    const { plan, diagnostics } = planPart({ part: { name: 'a.part.yaml', text: PART }, set: [`pinned.${id}=${value}`], rulebook, version });
    expect([plan, diagnostics.map(({ code }) => code)]).toEqual([undefined, ['spec/pin-count']]);
  });

  test('64 cavities are counted', () => {
    const { diagnostics } = planPart({ part: { name: 'a.part.yaml', text: PART }, set: ['pinned.machine.cavities=64'], rulebook, version });
    expect(diagnostics.map(({ code }) => code)).not.toContain('spec/pin-count');
  });
});

test.each(['[*a]', '[&a [1], *a]', '{{x}}', '{? [a]: 1}', '[!!binary x]', '*a', '!!js/function x'])('the setting alloy=%s is no value', (value) => {
  const { plan, diagnostics } = planPart({ part: { name: 'a.part.yaml', text: PART }, set: [`alloy=${value}`], rulebook, version });
  expect([plan, diagnostics.map(({ code }) => code)]).toEqual([undefined, ['set/value']]);
});

test('marks of direction are named, not printed', () => {
  const { diagnostics } = planPart({ part: { name: 'a.part.yaml', text: `\u202eright\u2066\u200f\u061c${PART}` }, rulebook, version });
  expect(diagnostics.length).toBeGreaterThan(0);
  soundFindings(diagnostics);
  expect(findingsText(diagnostics)).toContain('<U+200F><U+061C>');
});

test('half a surrogate on the command line is named', async () => {
  const { code, err } = await runHere(['new', '\ud800']);
  expect([code, err.includes('<U+D800>')]).toEqual([2, true]);
  soundText(err, 'standard error');
});

test('a fault of a rule that quotes two lines is one line', async () => {
  const text = (BASES.alloy[0] as { text: string }).text.replace(/^family: .*$/m, 'family: "a\\nb"');
  const { diagnostics } = await houseRulebook(rulebook, { folders: [{ name: 'house', files: [{ name: 'alloys/aluminium.yaml', text }] }] });
  expect(diagnostics.map(({ code }) => code)).toContain('rules/unknown-word');
  soundFindings(diagnostics);
});

test('a fault of a part that quotes two lines is one line', () => {
  const text = PART.replace(/mass: .*/, 'mass: "a\\r\\nb"');
  const { diagnostics } = planPart({ part: { name: 'a.part.yaml', text }, rulebook, version });
  expect(diagnostics.map(({ code }) => code)).toContain('spec/not-a-quantity');
  soundFindings(diagnostics);
});

test('a hundred findings on one line of half a million characters are shown at once', () => {
  const keys = Array.from({ length: 120 }, (_, i) => `unknown${i}: 1`);
  const text = `{ "diewright": "part/1", ${keys.join(', ')}, "note": "${'x'.repeat(500_000)}", after: 1 }`;
  const { diagnostics } = planPart({ part: { name: 'a.part.yaml', text }, rulebook, version });
  expect(diagnostics.length).toBeGreaterThan(90);
  const start = cpuTime();
  const printed = findingsText(diagnostics);
  expect(cpuTime() - start).toBeLessThan(1000);
  for (const line of printed.split('\n')) expect(line.length).toBeLessThan(300);
});

test.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])('"%s" is no code of a finding, though every object knows it', async (word) => {
  const { code, out, err } = await runHere(['explain', word]);
  expect([code, out, err.includes('cli/unknown-id')]).toEqual([2, '', true]);
});

test('a unit of a committed plan that a terminal would act on is named in what differs', async () => {
  const { plan } = planPart({ part: { name: 'a.part.yaml', text: PART }, rulebook, version });
  if (plan === undefined) throw new Error('no plan');
  const value = { value: 1, unit: '\u001b[31mred\u0007' };
  const finding = stalePlan({ name: 'plan.json', text: '{}' }, [{ kind: 'value', id: 'clamp.use', before: value, after: { value: 2, unit: '%' } }], 'plan');
  soundFindings(finding === undefined ? [] : [finding]);
  expect(finding?.message).toContain('<U+001B>[31mred<U+0007>');
});

test('an unknown alloy is told beside the other faults of its file', () => {
  const text = PART.replace(/^alloy: .*$/m, 'alloy: Unheard-of').replace('geometry:', 'geometri:');
  const { diagnostics } = planPart({ part: { name: 'a.part.yaml', text }, rulebook, version });
  expect(diagnostics.map(({ code }) => code)).toEqual(expect.arrayContaining(['spec/unknown-alloy', 'spec/unknown-key']));
});

test('a die of 44 castings is planned in less than a second', async () => {
  const parts = ['a', 'b'].map((name, i) => `  - { file: ${name}.part.yaml, count: ${i === 0 ? 40 : 4} }`).join('\n');
  const die = { name: 'd.die.yaml', text: `diewright: die/1\ndie: { name: D }\nparts:\n${parts}\n` };
  const text = PART.replace(/^alloy: .*$/m, 'alloy: Zamak 5');
  const time = async (): Promise<number> => {
    const start = cpuTime();
    const { plan } = planDie({ die, partText: ({ file }) => ({ name: file.value, text }), rulebook, version });
    expect(plan?.values.get('set.castings')?.value).toBe(44);
    return cpuTime() - start;
  };
  timeWith(rulebook);
  expect(await leastTime(await time(), time)).toBeLessThan(SLOWEST);
});
