// Puts faults into the source one at a time and says whether the committed plans of the examples would change. Not part of CI.
//   node tests/mutation/code.mjs [--tests FILE_OR_FOLDER,...] [--every N] [--first K] [--most N] [--only FILE] [--survivors FILE] [src/engine/die ...]
// (after npm run build). The faults are those of the mutation tester (`npm run mutation`), but all are put in at once behind
// switches and judged in running processes: some tenths of a second each, where a run of the tests takes seconds. The judges are
// what tests/golden/examples.test.ts compares, or with --tests these tests. --every N takes one fault in N, from the K-th on;
// --most N judges each by the N quickest cases that reach it; --survivors writes what nothing showed, and --only takes the
// faults of such a list: first by plans, then what they left by tests. A run that is interrupted tells what it has seen until then.
import { fork, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { Instrumenter } from '@stryker-mutator/instrumenter';
import { build } from 'esbuild';
import settings from '../../.build/stryker.config.mjs';

const root = join(import.meta.dirname, '..', '..');
const { values: flags, positionals: wanted } = parseArgs({
  options: {
    every: { type: 'string', default: '1' },
    first: { type: 'string', default: '1' },
    most: { type: 'string', default: '100' },
    tests: { type: 'string' },
    only: { type: 'string' },
    survivors: { type: 'string' },
    jobs: { type: 'string' },
  },
  allowPositionals: true,
});
const jobs = Number(flags.jobs ?? availableParallelism());
/** A mutant that answers no sooner is caught: it runs for ever. */
const MOST_SILENT_MS = 120_000;
/** A judge that needs more has a fault that gathers without end; with the usual heap it would only find out after minutes. */
const MOST_HEAP_MB = 1500;

const files = ['kernel', 'physics', 'engine']
  .flatMap((name) => readdirSync(join(root, 'src', name), { recursive: true, encoding: 'utf8' }).map((file) => `src/${name}/${file.replaceAll('\\', '/')}`))
  .filter((path) => path.endsWith('.ts') && !path.startsWith('src/engine/vocabulary/'))
  .filter((path) => wanted.length === 0 || wanted.some((one) => path === one || path.startsWith(`${one.replace(/\/$/, '')}/`)))
  .sort();

/** The source with every fault behind a switch, and the faults. */
async function instrumented() {
  const silent = () => {};
  const logger = { isDebugEnabled: () => false, debug: silent, info: silent, warn: silent, error: silent };
  const sources = files.map((name) => ({ name, mutate: true, content: readFileSync(join(root, name), 'utf8') }));
  return new Instrumenter(logger).instrument(sources, { plugins: null, ignorers: [], excludedMutations: settings.mutator.excludedMutations });
}

/**
 * One script of the whole program with the switches of the chosen faults in it. The tester's own switches ask for a fault by its name and
 * count every pass, which makes a plan take ten times as long; here one number is compared, and passes are counted beforehand, by a script
 * of their own.
 */
async function bundle(sources, chosenIds, outfile, counting) {
  const only = (ids) => ids.match(/\d+/g)?.filter((id) => chosenIds.has(id)) ?? [];
  const ask = counting
    ? [
        [/stryMutAct_9fa48\("\d+"\)/g, 'false'],
        [/stryCov_9fa48\(("[\d", \n]+)\)/g, (_, ids) => (only(ids).length > 0 ? `$count(${only(ids)})` : '0')],
      ]
    : [
        [/stryMutAct_9fa48\("(\d+)"\)/g, (_, id) => (chosenIds.has(id) ? `($active === ${id} && $pass())` : 'false')],
        [/stryCov_9fa48\("[\d", \n]+\)/g, '0'],
      ];
  const texts = new Map(
    sources.map(({ name, content }) => [
      join(root, name),
      ask.reduce(
        (text, [from, to]) => text.replace(from, to),
        `import { active as $active, count as $count, forgets as $forgets, pass as $pass } from 'virtual:switch';\n${forgetful(content)}`,
      ),
    ]),
  );
  const virtual = {
    rulebook: `export default ${JSON.stringify(readFileSync(join(root, 'dist', 'rulebook.txt'), 'latin1'))}`,
    switch: readFileSync(join(import.meta.dirname, 'code-switch.mjs'), 'utf8'),
    vitest: readFileSync(join(import.meta.dirname, 'code-vitest.mjs'), 'utf8'),
  };
  const textOf = (path) => {
    if (path.endsWith('.test.ts'))
      return `import { file as $file } from 'vitest';\n$file(${JSON.stringify(relative(root, path))});\n${readFileSync(path, 'utf8')}`;
    return texts.get(path) ?? readFileSync(path, 'utf8');
  };
  const switches = {
    name: 'switches',
    setup(builder) {
      builder.onLoad({ filter: /\.ts$/ }, ({ path }) => ({ contents: placed(textOf(path), path), loader: 'ts' }));
      builder.onResolve({ filter: /^virtual:|^vitest$/ }, ({ path }) => ({ path: path.replace('virtual:', ''), namespace: 'virtual' }));
      builder.onLoad({ filter: /.*/, namespace: 'virtual' }, ({ path }) => ({ contents: virtual[path], resolveDir: root }));
    },
  };
  const program =
    flags.tests === undefined
      ? ["export { planDie } from './src/die.ts';", "export { loadRulebook, planPart, renderFigures, renderPlans } from './src/index.ts';"]
      : ["export { blocks } from 'vitest';", ...testFiles().map((path) => `import ${JSON.stringify(`./${path}`)};`)];
  const contents = [...program, "export { active, counts, set } from 'virtual:switch';"].join('\n');
  const banner = { js: "import { createRequire as $createRequire } from 'node:module'; const require = $createRequire(import.meta.url);" };
  const define = { DIEWRIGHT_VERSION: '"0.0.0-test"' };
  const stdin = { contents, resolveDir: root, loader: 'ts' };
  const options = { bundle: true, format: 'esm', platform: 'node', target: 'node20', packages: 'external', logLevel: 'error', outfile, banner, define };
  await build({ ...options, stdin, plugins: [switches] });
}

/**
 * What a module keeps from one call to the next, in a map or a variable of its own, is forgotten whenever a fault is switched on or
 * off: results from before would hide the fault.
 */
function forgetful(text) {
  return text
    .replace(/^(?:const|let) (\w+) = (new (?:Weak)?Map(?:<.*>)?\(\));$/gm, 'let $1 = $2; $$forgets.push(() => { $1 = $2; });')
    .replace(/^let (\w+): .* \| undefined;$/gm, '$&  $$forgets.push(() => { $1 = undefined; });');
}

/** Files are found from where the sources are, not from where they are bundled to. */
function placed(text, path) {
  const here = { dirname: dirname(path), filename: path, url: pathToFileURL(path).href };
  return text.replace(/import\.meta\.(dirname|filename|url)/g, (_, name) => JSON.stringify(here[name]));
}

/** The test files named, without those about time, which switches take. */
function testFiles() {
  const list = flags.tests
    .split(',')
    .flatMap((name) => (name.endsWith('.ts') ? [name] : readdirSync(join(root, name), { recursive: true, encoding: 'utf8' }).map((file) => `${name}/${file}`)));
  return list.filter((path) => path.endsWith('.test.ts') && !path.endsWith('-time.test.ts')).sort();
}

/** Which faults each case passes, told by as many processes as judge them later. */
async function countPasses(script, passes) {
  const shares = Array.from({ length: jobs }, (_, share) => ({ share, file: `${passes}.${share}` }));
  const told = shares.map(
    ({ share, file }) =>
      new Promise((done, fail) => {
        const child = spawn(process.execPath, [join(import.meta.dirname, 'code-passes.mjs'), script, file, share, jobs], { stdio: 'inherit' });
        child.on('exit', (status) =>
          status === 0 ? done(JSON.parse(readFileSync(file, 'utf8'))) : fail(new Error('the cases do not run even without a fault')),
        );
      }),
  );
  const all = await Promise.all(told);
  writeFileSync(passes, JSON.stringify({ atLoad: all[0].atLoad, reached: Object.assign({}, ...all.map(({ reached }) => reached)) }));
}

/** Gives each fault to a process that is free; a process that dies or keeps silent has caught its fault, and another takes its place. */
function judge(script, passes, mutants, tell) {
  const queue = [...mutants];
  const again = new Set();
  const work = (done) => {
    const child = fork(join(import.meta.dirname, 'code-judge.mjs'), [script, passes, flags.most], {
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
      execArgv: [`--max-old-space-size=${MOST_HEAP_MB}`],
    });
    let said = '';
    child.stderr.on('data', (data) => (said = (said + data).slice(-2000)));
    let mutant;
    let timer;
    const next = () => {
      clearTimeout(timer);
      mutant = queue.shift();
      if (mutant === undefined) {
        child.removeAllListeners('exit');
        child.kill();
        done();
        return;
      }
      timer = setTimeout(() => child.kill('SIGKILL'), MOST_SILENT_MS);
      child.send({ id: mutant.id });
    };
    child.on('message', ({ result, fresh }) => {
      // Where a fault left something behind, this one or one before it, only a new process can tell.
      if (fresh === false && !again.has(mutant)) queue.unshift(mutant);
      else if (result !== undefined) tell(mutant, result);
      if (fresh !== false) return next();
      again.add(mutant);
      clearTimeout(timer);
      child.removeAllListeners('exit');
      child.kill();
      work(done);
    });
    child.on('exit', () => {
      clearTimeout(timer);
      if (mutant === undefined) throw new Error(`the cases do not run even without a fault\n${said}`);
      tell(mutant, 'caught');
      work(done);
    });
  };
  return Promise.all(Array.from({ length: jobs }, () => new Promise(work)));
}

const { files: sources, mutants } = await instrumented();
const [every, first] = [Number(flags.every), Number(flags.first)];
// Texts are left out by the settings, and come back marked so.
const faults = mutants.filter(({ status }) => status !== 'Ignored');
const wantedFaults =
  flags.only === undefined
    ? undefined
    : new Set(
        readFileSync(flags.only, 'utf8')
          .split('\n')
          .map((line) =>
            line
              .split('\t')
              .filter((_, i) => i !== 1)
              .join(' '),
          ),
      );
const chosen = faults.filter((fault, index) => (wantedFaults === undefined ? index % every === first - 1 : wantedFaults.has(lineOf(fault).join(' '))));
// Below the root, so that packages are found.
mkdirSync(join(root, '.stryker'), { recursive: true });
const folder = mkdtempSync(join(root, '.stryker', 'code-'));
const counts = new Map();
const survivors = [];
let told = 0;
process.stdout.write(`${files.length} files, ${faults.length} faults, of which ${chosen.length} are put in\n`);
try {
  const script = join(folder, 'program.mjs');
  const chosenIds = new Set(chosen.map(({ id }) => id));
  await bundle(sources, chosenIds, script, false);
  const counting = join(folder, 'counting.mjs');
  await bundle(sources, chosenIds, counting, true);
  const passes = join(folder, 'passes.json');
  await countPasses(counting, passes);
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => stop(folder));
  await judge(script, passes, chosen, (mutant, result) => {
    const file = mutant.fileName;
    const count = counts.get(file) ?? { caught: 0, survived: 0, unreached: 0, declared: 0 };
    count[result] += 1;
    counts.set(file, count);
    if (result === 'survived' || result === 'unreached') survivors.push({ ...mutant, result });
    told += 1;
    if (told % 200 === 0) process.stderr.write(`${told} of ${chosen.length}\n`);
  });
} finally {
  rmSync(folder, { recursive: true });
}
report();

/** Where a fault is and what it is, as lists of survivors name it. */
function lineOf({ fileName, location: { start, end }, mutatorName, replacement }) {
  return [`${fileName}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`, mutatorName, replacement.replace(/\s+/g, ' ').slice(0, 100)];
}

/** An interrupted run: what was seen so far; the judges end with it. */
function stop(folder) {
  console.log(`stopped after ${told} of ${chosen.length}`);
  report();
  rmSync(folder, { recursive: true });
  process.exit(130);
}

function report() {
  survivors.sort((a, b) => a.fileName.localeCompare(b.fileName) || a.location.start.line - b.location.start.line);
  if (flags.survivors !== undefined) {
    const lines = survivors.map((fault) => {
      const [where, ...what] = lineOf(fault);
      return [where, fault.result, ...what].join('\t');
    });
    writeFileSync(flags.survivors, `${lines.join('\n')}\n`);
  }
  const total = { caught: 0, survived: 0, unreached: 0, declared: 0 };
  const score = ({ caught, survived, unreached }) => `${((100 * caught) / Math.max(1, caught + survived + unreached)).toFixed(1)} %`;
  const row = (name, count) => console.log(`${name}\t${count.caught}\t${count.survived}\t${count.unreached}\t${count.declared}\t${score(count)}`);
  console.log('file\tcaught\tsurvived\tnot reached\tdeclarations left out\tscore');
  for (const [file, count] of [...counts].sort(([a], [b]) => a.localeCompare(b))) {
    row(file, count);
    for (const key of Object.keys(total)) total[key] += count[key];
  }
  row('all', total);
}
