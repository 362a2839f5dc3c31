// Writes plan.md with its figures and plan.json beside every example part, and the plans of the example of a repository of parts:
// npm run examples (after npm run build).
import { existsSync, readdirSync, rmSync } from 'node:fs';
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
  for (const file of dies.length > 0 ? dies : readdirSync('.').filter((name) => name.endsWith('.part.yaml')))
    await plan(entry.name, file, ['--format', 'markdown=plan.md', '--format', 'json=plan.json']);
}

// There each part has a folder of its own and is planned from the top; a plan in JSON is renewed where there is one.
process.chdir(join(examples, 'part-repository'));
for (const name of readdirSync('parts')) {
  const folder = `parts/${name}`;
  const json = existsSync(`${folder}/plan.json`) ? ['--format', `json=${folder}/plan.json`] : [];
  await plan(folder, `${folder}/${name}.part.yaml`, ['--format', `markdown=${folder}/plan.md`, '--figures', 'none', ...json]);
}

async function plan(title, file, formats) {
  const status = await cli.main(['plan', file, ...formats, '--fail-on', 'never', '--quiet']);
  console.log(`${title}: ${status === 0 ? 'written' : `exit ${status}`}`);
  if (status !== 0) process.exitCode = 1;
}
