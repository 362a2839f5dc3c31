import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { VERSION } from '../../src/cli/version.ts';
import { runHere } from '../cli/run-here.ts';
import { version } from './examples.ts';

const folder = join(import.meta.dirname, 'commands');
const commands = JSON.parse(readFileSync(join(folder, 'list.json'), 'utf8')) as Record<string, string[]>;

// Named as from the top of the repository, where the tests run.
describe('what other commands than plan write of the examples, each as committed', () => {
  test.each(Object.entries(commands))('%s', async (name, args) => {
    const { out } = await runHere(args);
    expect(out.replaceAll(VERSION, version), `run npm run build && npm run examples, and look at the difference of ${name}`).toBe(
      readFileSync(join(folder, name), 'utf8'),
    );
  });
});
