import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { loadRulebook, planPart, renderPlans } from '../../src/index.ts';
import { EXAMPLES, version } from './examples.ts';

describe('the committed plans of the examples', () => {
  test('there are enough of them, of every kind', () => {
    expect(EXAMPLES.length).toBeGreaterThanOrEqual(9);
  });

  test.each(EXAMPLES)('$name is fresh', async ({ file, folder }) => {
    const { plan } = planPart({ part: { name: file, text: readFileSync(join(folder, file), 'utf8') }, rulebook: await loadRulebook(), version });
    if (plan === undefined) throw new Error(`${file} cannot be planned`);
    for (const [format, target] of [
      ['markdown', 'plan.md'],
      ['json', 'plan.json'],
    ] as const) {
      const path = join(folder, target);
      expect(existsSync(path), `${target}: run npm run build && npm run examples`).toBe(true);
      expect(await renderPlans(format, [plan]), `${target} is stale: run npm run build && npm run examples, and look at the difference`).toBe(
        readFileSync(path, 'utf8'),
      );
    }
  });
});
