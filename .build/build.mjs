// Builds dist/: the compiled rulebook, the library, and the command line.
//
// Start-up counts: the command line loads one script with the bytecode that V8 made of it here (program.cjs.cache), so
// nothing is parsed or compiled again. Another version of Node refuses that cache and compiles as usual.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const dist = join(root, 'dist');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
const common = { absWorkingDir: root, bundle: true, platform: 'node', target: 'node20', logLevel: 'warning' };
const bundled = { ...common, minifySyntax: true, minifyWhitespace: true, define: { DIEWRIGHT_VERSION: JSON.stringify(version) } };

// commander can start a program for a subcommand; ours are all built in, and loading Node's module takes 3 ms. Our own
// code asks for it where it starts git, and gets it.
const NO_CHILDREN = "export const spawn = () => { throw new Error('no command of this program starts another program'); };";

/** Scripts of their own, loaded when they are needed: drawing figures and JUnit bring a library for XML, patterns one for globs. */
const SCRIPTS = [
  { source: 'src/report/figure/index.ts', name: 'figure' },
  { source: 'src/report/check/junit.ts', name: 'junit' },
  { source: 'src/cli/find/glob.ts', name: 'glob' },
  { source: 'src/rulebook/expression.ts', name: 'expression' },
];

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });
writeFileSync(join(dist, 'package.json'), '{ "type": "module" }\n');
await compileRules();
await buildLibrary();
await buildCommandLine();
makeCodeCache();

/** rules/ -> dist/rulebook.txt, with every fault of the rule data reported. */
async function compileRules() {
  const compiler = join(dist, 'rulepack.mjs');
  await build({ ...common, format: 'esm', entryPoints: ['.build/rulepack.ts'], outfile: compiler, packages: 'external' });
  const { rulepack } = await import(pathToFileURL(compiler).href);
  try {
    writeFileSync(join(dist, 'rulebook.txt'), rulepack(join(root, 'rules')));
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
  rmSync(compiler);
}

/** src/index.ts -> dist/index.js, in chunks. */
async function buildLibrary() {
  await build({
    ...bundled,
    format: 'esm',
    entryPoints: { index: 'src/index.ts' },
    outdir: 'dist',
    splitting: true,
    chunkNames: 'chunks/[name]-[hash]',
    plugins: [
      module('virtual:rulebook', "import { readFileSync } from 'node:fs';\nexport default readFileSync(new URL(RULEBOOK, import.meta.url), 'latin1');"),
    ],
    banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
  });
  // A chunk lies one folder deeper than the entry.
  rewrite(/RULEBOOK/g, (path) => (path.includes('chunks') ? '"../rulebook.txt"' : '"./rulebook.txt"'));
}

function rewrite(pattern, by) {
  for (const folder of [dist, join(dist, 'chunks')]) {
    for (const name of readdirSync(folder)) {
      if (!name.endsWith('.js')) continue;
      const path = join(folder, name);
      const text = readFileSync(path, 'utf8');
      if (pattern.test(text)) writeFileSync(path, text.replace(pattern, by(path)));
      pattern.lastIndex = 0;
    }
  }
}

/**
 * src/cli/main.ts -> dist/cli.cjs, small; src/cli/program.ts -> dist/program.cjs, everything else as one script, but for
 * what brings a large library and is seldom wanted (`SCRIPTS`).
 */
async function buildCommandLine() {
  const provided = module(
    'virtual:rulebook',
    "import { readFileSync } from 'node:fs';\nimport { join } from 'node:path';\nexport default readFileSync(join(__dirname, 'rulebook.txt'), 'latin1');",
  );
  await build({
    ...bundled,
    format: 'cjs',
    entryPoints: ['src/cli/program.ts'],
    outfile: 'dist/program.cjs',
    supported: { 'dynamic-import': false },
    plugins: [
      provided,
      module('node:child_process', NO_CHILDREN, /[\\/]commander[\\/]/),
      ...SCRIPTS.map(({ source, name }) => elsewhere(source, `./${name}.cjs`)),
    ],
  });
  for (const { source, name } of SCRIPTS) {
    // A package may ask where it lies, which a script of this form answers otherwise than a module.
    const banner = { js: "const __moduleUrl = require('node:url').pathToFileURL(__filename).href;" };
    const define = { ...bundled.define, 'import.meta.url': '__moduleUrl' };
    await build({ ...bundled, format: 'cjs', entryPoints: [source], outfile: `dist/${name}.cjs`, banner, define });
  }
  writeFileSync(join(dist, 'program.cjs'), asFunction(ascii(readFileSync(join(dist, 'program.cjs'), 'utf8'))));
  await build({ ...bundled, format: 'cjs', entryPoints: ['.build/worker.cjs'], outfile: 'dist/worker.cjs' });
  const loader = readFileSync(join(root, '.build', 'load-program.cjs'), 'utf8');
  await build({ ...bundled, format: 'cjs', entryPoints: ['src/cli/main.ts'], outfile: 'dist/cli.cjs', plugins: [module(/\/program\.ts$/, loader)] });
}

/**
 * A script with what is not ASCII as \u escapes, so that it may be read as latin1. esbuild has done so in strings and
 * leaves regular expressions alone; in both the escape means the same.
 */
function ascii(text) {
  return text.replace(/[^\x00-\x7f]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

/** A script of the form that load-program.cjs compiles. It is made here, for at the start it would cost a copy of the whole text. */
function asFunction(text) {
  return `(function (exports, require, module, __filename, __dirname) {${text}\n})`;
}

/** A module that is built as a script of its own, beside the one that asks for it. */
function elsewhere(source, path) {
  return {
    name: `elsewhere ${path}`,
    setup(bundle) {
      bundle.onResolve({ filter: /\.ts$/ }, (args) =>
        args.kind !== 'entry-point' && join(args.resolveDir, args.path) === join(root, source) ? { path, external: true } : undefined,
      );
    },
  };
}

/** A module that the build provides in the place of an import; with `importers`, for those modules only. */
function module(name, contents, importers = /^/) {
  const filter = typeof name === 'string' ? new RegExp(`^${name}$`) : name;
  // A namespace of its own: the first plugin that loads from a namespace provides for all of it.
  const namespace = `provided ${name}`;
  return {
    name: namespace,
    setup(bundle) {
      bundle.onResolve({ filter }, (args) => (args.kind === 'entry-point' || !importers.test(args.importer) ? undefined : { path: args.path, namespace }));
      bundle.onLoad({ filter: /.*/, namespace }, () => ({ contents, loader: 'js', resolveDir: root }));
    },
  };
}

/** Runs the program once over two examples and keeps the bytecode of what was used. */
function makeCodeCache() {
  const { status, stderr } = spawnSync(process.execPath, [join(root, '.build', 'make-code-cache.mjs')], { encoding: 'utf8' });
  if (status !== 0) console.error(`no code cache, so starting takes longer: ${stderr}`);
}
