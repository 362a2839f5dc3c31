import { expect, test } from 'vitest';
import { isAcceptable } from '../../../src/engine/acceptance.ts';
import { planPart } from '../../../src/index.ts';
import { STARTER_PART } from '../../../src/spec/starters.ts';
import { rulebook } from './parts.ts';

test('every limit can be accepted, also those on the set of castings of a die', () => {
  expect(Object.keys(rulebook().limits).filter((id) => !isAcceptable(id))).toEqual([]);
});

test.each(['set/form', 'set/value', 'set/unknown-field', 'set/unknown-item', 'spec/unknown-key', 'check/stale-plan'])('%s is mended, not accepted', (code) => {
  expect(isAcceptable(code)).toBe(false);
});

/** A rib and a wall that each have findings of their own. */
const PART = `${STARTER_PART.replace('height: 36 mm, draft: 2 deg', 'height: 36 mm, draft: 0.1 deg')}ribs:
  - { id: web, root_width: 2 mm, height: 30 mm }
`;
const unused = (accepted: string) =>
  planPart({
    part: { name: 'a.part.yaml', text: `${PART}accepted: [{ ${accepted}, reason: agreed }]\n` },
    rulebook: rulebook(),
    version: '0',
  }).diagnostics.find(({ code }) => code === 'check/unused-acceptance');

test('an acceptance of another item names the items that have such a finding, and no others', () => {
  expect(unused('code: rib/height, item: other')?.fix).toBe('remove the entry, or write the item that is meant: "web"');
  expect(unused('code: rib/height, item: web')).toBeUndefined();
  expect(unused('code: rib/height')).toBeUndefined();
});

test.each(['wall/least', 'range/gate.area', 'house/cycle.time'])('%s is a finding that a plan may have', (code) => {
  expect(unused(`code: ${code}`)?.fix).toBe('remove the entry');
});
