import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BIN } from '../cli/folder.ts';

const AGAIN = 'run npm run build && npm run examples, and look at the difference';
const REPOSITORY = join(import.meta.dirname, '../../examples/part-repository');
const PARTS = readdirSync(join(REPOSITORY, 'parts'));

/** A plan of a part of the repository, made from its top as `npm run examples` does it. */
const planned = (part: string, format: 'markdown' | 'json'): string =>
  spawnSync(process.execPath, [BIN, 'plan', `parts/${part}/${part}.part.yaml`, '--format', format, '--figures', 'none', '--fail-on', 'never', '-q'], {
    cwd: REPOSITORY,
    encoding: 'utf8',
    maxBuffer: 20_000_000,
  }).stdout;

describe('the committed plans of the repository of parts', () => {
  test('its parts are of several families, and some have their plan as JSON too', () => {
    const alloys = PARTS.map((part) => /^alloy: (.+)$/m.exec(readFileSync(join(REPOSITORY, 'parts', part, `${part}.part.yaml`), 'utf8'))?.[1]);
    expect(new Set(alloys).size).toBeGreaterThanOrEqual(5);
    expect(PARTS.some((part) => existsSync(join(REPOSITORY, 'parts', part, 'plan.json')))).toBe(true);
  });

  test.each(PARTS)('%s is fresh', (part) => {
    for (const [name, format] of [
      ['plan.md', 'markdown'],
      ['plan.json', 'json'],
    ] as const) {
      const path = join(REPOSITORY, 'parts', part, name);
      if (name === 'plan.json' && !existsSync(path)) continue;
      expect(planned(part, format), `${name} is stale: ${AGAIN}`).toBe(readFileSync(path, 'utf8'));
    }
  });
});
