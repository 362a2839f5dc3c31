import { expect, test } from 'vitest';
import { alloyHelp } from '../../../src/rulebook/alloys.ts';
import { rulebook } from '../engine/parts.ts';

test.each([
  ['Aluminum', 'name one alloy of the family; see "diewright list alloys aluminium"'],
  ['A380, Zamak 3', 'write one of them; to compare: diewright options FILE --alloys "A380,Zamak 3"'],
  ['A380, unobtainium', 'see "diewright list alloys"'],
  ['unobtainium', 'see "diewright list alloys"'],
])('%s', (text, help) => {
  expect(alloyHelp(rulebook(), text)).toBe(help);
});
