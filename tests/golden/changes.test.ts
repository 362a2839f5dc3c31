import { writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadRulebook } from '../../src/index.ts';
import { BASES, Changes, casesOf, committedOf, fileOf } from './changes.ts';

let changes: Changes;
beforeAll(async () => {
  changes = new Changes(await loadRulebook());
});

if (process.env['DIEWRIGHT_WRITE_CHANGES'] === '1')
  // Called by `npm run examples`.
  test.each(BASES)('what changes of %s do is written', { timeout: 600_000 }, async (base) => {
    const sections: string[] = [];
    for (const one of casesOf(base)) sections.push(`## ${one.title}\n${await changes.toldOf(one)}\n`);
    writeFileSync(fileOf(base), sections.join('\n'));
  });
// What each word of a part, a die and a plant does to a plan, as committed: a rule that touches more than it is meant to is seen here.
else
  describe.each(BASES)('changes of %s', (base) => {
    const committed = committedOf(base);
    test('are those of the list', () => expect([...committed.keys()]).toEqual(casesOf(base).map(({ title }) => title)));
    test.each(casesOf(base).map((one) => [one.title, one] as const))('%s', async (title, one) => {
      expect(await changes.toldOf(one), 'run npm run build && npm run examples, and look at the difference').toBe(committed.get(title));
    });
  });
