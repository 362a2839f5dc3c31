import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { Surroundings } from '../../src/cli/settings.ts';
import { renderFigures, renderPlans } from '../../src/index.ts';
import { noIo } from '../cli/run-here.ts';
import { DIES, EXAMPLES, planExample } from './examples.ts';

const AGAIN = 'run npm run build && npm run examples';

describe('the committed plans of the examples', () => {
  test('there are enough of them, of every kind', () => {
    expect(EXAMPLES.length).toBeGreaterThanOrEqual(9);
    expect(DIES.length).toBeGreaterThanOrEqual(3);
  });

  test.each([...EXAMPLES, ...DIES])('$name is fresh', async ({ file, folder }) => {
    // One example has house rules; the others have the built-in ones.
    const { rulebook } = await new Surroundings({}, noIo()).ground(join(folder, file));
    const { plan } = planExample({ file, folder }, rulebook);
    if (plan === undefined) throw new Error(`${file} cannot be planned`);
    const drawn = new Map((await renderFigures(plan)).map(({ id, svg }) => [`plan-${id}.svg`, svg]));
    const links = new Map([...drawn.keys()].map((name) => [name.slice('plan-'.length, -'.svg'.length), name]));
    const fresh = new Map([
      ['plan.md', await renderPlans('markdown', [plan], false, { figures: [links] })],
      ['plan.json', await renderPlans('json', [plan])],
      ...drawn,
    ]);
    const committed = readdirSync(folder).filter((name) => /^plan-.*\.svg$/.test(name));
    expect(committed.sort(), `figures of ${file}: ${AGAIN}`).toEqual([...drawn.keys()].sort());
    for (const [name, text] of fresh) {
      const path = join(folder, name);
      expect(existsSync(path), `${name}: ${AGAIN}`).toBe(true);
      expect(text, `${name} is stale: ${AGAIN}, and look at the difference`).toBe(readFileSync(path, 'utf8'));
    }
  });
});
