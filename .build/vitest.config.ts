import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';
import { rulepack } from './rulepack.ts';

const root = join(import.meta.dirname, '..');

export default defineConfig({
  root,
  define: { DIEWRIGHT_VERSION: JSON.stringify('0.0.0-test') },
  plugins: [
    {
      name: 'virtual-rulebook',
      resolveId: (id) => (id === 'virtual:rulebook' ? '\0virtual:rulebook' : undefined),
      load: (id) => (id === '\0virtual:rulebook' ? `export default ${JSON.stringify(rulepack(join(root, 'rules')))}` : undefined),
    },
  ],
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    // By itself it leaves a core idle; on the two of a small runner that is half of them.
    maxWorkers: availableParallelism(),
    reporters: process.env['CI'] ? ['default', 'json'] : ['default'],
    outputFile: { json: 'node_modules/.cache/test-results.json' },
  },
});
