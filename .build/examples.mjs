// Writes plan.md with its figures and plan.json beside every example part: npm run examples (after npm run build).
import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import cli from '../dist/cli.cjs';

const examples = join(import.meta.dirname, '..', 'examples');
for (const entry of readdirSync(examples, { withFileTypes: true })) {
  if (!entry.isDirectory()) continue;
  process.chdir(join(examples, entry.name));
  // The program leaves the figures of an earlier plan where they are; an example has those of its plan alone.
  for (const name of readdirSync('.')) if (/^plan-.*\.svg$/.test(name)) rmSync(name);
  // Where there is a die, its parts are planned in it.
  const dies = readdirSync('.').filter((name) => name.endsWith('.die.yaml'));
  for (const file of dies.length > 0 ? dies : readdirSync('.').filter((name) => name.endsWith('.part.yaml'))) {
    const status = await cli.main(['plan', file, '--format', 'markdown=plan.md', '--format', 'json=plan.json', '--fail-on', 'never', '--quiet']);
    console.log(`${entry.name}: ${status === 0 ? 'written' : `exit ${status}`}`);
    if (status !== 0) process.exitCode = 1;
  }
}
