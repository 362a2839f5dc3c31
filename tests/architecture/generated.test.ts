import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');

// The build comes first in the test command, so dist/ is what the sources say.
test.each(['README.md', 'DEVELOPERS.md'])('the generated parts of %s are fresh', async (file) => {
  const docs = (await import('../../.build/docs.mjs' as string)) as {
    blocks(): Promise<Record<string, Record<string, string>>>;
    fill(text: string, byName: Record<string, string>): string;
  };
  const text = readFileSync(join(root, file), 'utf8');
  expect(docs.fill(text, (await docs.blocks())[file] ?? {}), 'run npm run build && npm run docs').toBe(text);
});
