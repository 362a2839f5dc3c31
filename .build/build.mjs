// Builds the command line and the library into dist/: first the rule compiler, then everything else with the compiled
// rulebook inside, so that start-up parses no YAML but the user's.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const dist = join(root, 'dist');
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });
const compiler = join(dist, 'rulepack.mjs');
const common = { absWorkingDir: root, bundle: true, platform: 'node', format: 'esm', target: 'node20', logLevel: 'warning' };

await build({ ...common, entryPoints: ['.build/rulepack.ts'], outfile: compiler, packages: 'external' });
const { rulepack } = await import(pathToFileURL(compiler).href);
let pack;
try {
  pack = rulepack(join(root, 'rules'));
} catch (error) {
  console.error(error.message);
  process.exit(1);
}
rmSync(compiler);

const virtualRulebook = {
  name: 'virtual-rulebook',
  setup(bundle) {
    bundle.onResolve({ filter: /^virtual:rulebook$/ }, (args) => ({ path: args.path, namespace: 'rulebook' }));
    bundle.onLoad({ filter: /.*/, namespace: 'rulebook' }, () => ({ contents: pack, loader: 'text' }));
  },
};

await build({
  ...common,
  entryPoints: { cli: 'src/cli/main.ts', index: 'src/index.ts' },
  outdir: 'dist',
  splitting: true,
  minifySyntax: true,
  minifyWhitespace: true,
  chunkNames: 'chunks/[name]-[hash]',
  define: { DIEWRIGHT_VERSION: JSON.stringify(version) },
  plugins: [virtualRulebook],
  banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
});
writeFileSync(join(dist, 'package.json'), '{ "type": "module" }\n');
