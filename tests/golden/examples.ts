import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const examples = join(import.meta.dirname, '..', '..', 'examples');
export const { version } = JSON.parse(readFileSync(join(examples, '..', 'package.json'), 'utf8')) as { version: string };

/** Every example part, planned as `npm run examples` does it: from inside its own folder. */
export const EXAMPLES = readdirSync(examples, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap((entry) =>
    readdirSync(join(examples, entry.name))
      .filter((name) => name.endsWith('.part.yaml'))
      .map((file) => ({ name: entry.name, file, folder: join(examples, entry.name) })),
  );
