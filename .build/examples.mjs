// Writes plan.md with its figures and plan.json beside every example part, the plans of the example of a repository of parts, what
// other commands say of examples (tests/golden/commands) and what changes of them do (tests/golden/changes): npm run examples (after
// npm run build).
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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

process.chdir(join(examples, '..'));
const written = 'tests/golden/commands';
for (const [name, args] of Object.entries(JSON.parse(readFileSync(`${written}/list.json`, 'utf8')))) {
  const out = [];
  const sink = { isTTY: false, write: (text) => out.push(text) };
  const code = await cli.main(args, {
    env: {},
    out: sink,
    err: { isTTY: false, write: () => undefined },
    stdin: (async function* () {})(),
    settled: async () => true,
  });
  writeFileSync(join(written, name), out.join(''));
  console.log(`${name}: written, exit ${code}`);
}

// What is written and what is held against it later come from the same lines of TypeScript, so the tests write it.
const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--config', '.build/vitest.config.ts', 'tests/golden/changes.test.ts'];
const { status } = spawnSync(process.execPath, vitest, { stdio: 'inherit', env: { ...process.env, DIEWRIGHT_WRITE_CHANGES: '1' } });
if (status !== 0) process.exitCode = 1;

async function plan(title, file, formats) {
  const status = await cli.main(['plan', file, ...formats, '--fail-on', 'never', '--quiet']);
  console.log(`${title}: ${status === 0 ? 'written' : `exit ${status}`}`);
  if (status !== 0) process.exitCode = 1;
}
