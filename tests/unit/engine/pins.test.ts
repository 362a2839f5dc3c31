import { beforeAll, expect, test } from 'vitest';
import { loadRulebook, planPart, type Rulebook } from '../../../src/index.ts';
import { STARTER_PART } from '../../../src/spec/starters.ts';

let rulebook: Rulebook;
beforeAll(async () => {
  rulebook = await loadRulebook();
});
const planned = (pins: string) => planPart({ part: { name: 'a.part.yaml', text: `${STARTER_PART}pinned: { ${pins} }\n` }, rulebook, version: '0' });
const said = (pins: string) => planned(pins).diagnostics.filter(({ code }) => /pin|unknown-word/.test(code));

test.each([
  [
    'a verdict on figures',
    'solidification.governs: wall',
    'pin/verdict',
    'error',
    'pinned solidification.governs is a verdict on figures, "What sets the time in the die", and cannot be set',
    'remove the pin, or pin a figure that it hangs on; see "diewright explain solidification.governs"',
  ],
  [
    'what this plan does not work out',
    'gooseneck.nozzle-least: 400 degC',
    'pin/not-used',
    'warning',
    'pinned gooseneck.nozzle-least was not used: this plan does not work it out',
    'remove the pin, or check why that section is absent',
  ],
  [
    'a slip',
    'gate.velocty: 40 m/s',
    'spec/unknown-pin',
    'error',
    'no plan value or decision is called "gate.velocty"; did you mean "gate.velocity"?',
    'see "diewright list values" and "diewright list choices"',
  ],
  [
    'a word of no choice',
    'finish.trimming: trim pres',
    'spec/unknown-word',
    'error',
    '"trim pres" is not a choice for finish.trimming; did you mean "trim press"?',
    'write cut off by hand, sawn, then trimmed, broken off and tumbled, trim press or broken off and dressed by hand',
  ],
])('%s', (_, pin, code, severity, message, fix) => {
  const [found, ...others] = said(pin);
  expect(others).toEqual([]);
  expect(found).toMatchObject({ code, severity, message, fix });
  expect(found?.at?.position().line).toBe(STARTER_PART.split('\n').length);
});

test('a pinned verdict changes no figure and no word of the plan', () => {
  const [plain, pinned] = [planned(''), planned('solidification.governs: wall, pq2.place: inside, cycle.governs: machine')];
  const words = ({ plan }: typeof plain) => [...(plan?.decisions ?? [])].map(([id, { value }]) => [id, value]);
  expect(words(pinned)).toEqual(words(plain));
  expect([...(pinned.plan?.values ?? [])].map(([id, { value }]) => [id, value])).toEqual([...(plain.plan?.values ?? [])].map(([id, { value }]) => [id, value]));
});

test('a pinned decision stands with what the table says, or says that the table agrees', () => {
  const decision = (pin: string) => planned(pin).plan?.decisions.get('finish.trimming');
  expect(decision('finish.trimming: broken off and tumbled')).toMatchObject({
    kind: 'pinned',
    value: 'broken off and tumbled',
    because: expect.stringMatching(/^pinned by the engineer; the table says trim press: /),
    alternatives: [{ value: 'trim press' }],
  });
  expect(decision('finish.trimming: trim press')?.because).toMatch(/^pinned by the engineer; the table agrees: /);
});
