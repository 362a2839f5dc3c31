// Writes the generated parts of README.md and DEVELOPERS.md, and tests/reference/COVERAGE.md: npm run docs (after npm run build).
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import cli from '../dist/cli.cjs';

const root = join(import.meta.dirname, '..');

async function run(args) {
  let out = '';
  const write = (text) => {
    out += text;
  };
  await cli.main(args, {
    env: {},
    out: { isTTY: false, write },
    err: { isTTY: false, write: () => {} },
    stdin: (async function* () {})(),
    settled: async () => true,
  });
  return out;
}

const fenced = (text) => `\`\`\`text\n${text.trim()}\n\`\`\``;

async function index() {
  const lines = [];
  for (const [title, name] of [
    ['Formulas', 'formulas'],
    ['Tables', 'tables'],
    ['Decision tables', 'choices'],
    ['Limits and cautions', 'rules'],
  ]) {
    const ids = JSON.parse(await run(['list', name, '--json'])).map((entry) => entry.id);
    const byTopic = new Map();
    for (const id of ids) {
      const [topic, rest] = [id.slice(0, id.search(/[./]/)), id.slice(id.search(/[./]/) + 1)];
      byTopic.set(topic, [...(byTopic.get(topic) ?? []), rest]);
    }
    lines.push(`**${title}** (${ids.length})`, '', ...[...byTopic].sort().map(([topic, names]) => `- \`${topic}\`: ${names.sort().join(', ')}`), '');
  }
  return lines.join('\n').trim();
}

/** The key figures and a few rows of a committed plan, as they stand in it. */
function sample() {
  const plan = readFileSync(join(root, 'examples', 'brake-valve-body', 'plan.md'), 'utf8').split('\n');
  const table = (head, names) => {
    const from = plan.findIndex(
      (line, i) => line.startsWith(head) && names.every((name) => plan.slice(i, i + 40).some((row) => row.startsWith(`| ${name} |`))),
    );
    const rows = names.map((name) => plan.slice(from).find((row) => row.startsWith(`| ${name} |`)));
    if (from < 0 || rows.includes(undefined)) throw new Error(`the plan of the sample has no ${names.join(', ')}`);
    return [plan[from], plan[from + 1], ...rows].join('\n');
  };
  return [
    table('| Key figure', ['Locking force needed', 'Fill time', 'Gate velocity', 'Sleeve fill']),
    'and from its section on the locking force:',
    table('| Quantity', ['Die opening force', 'Locking force needed']),
  ].join('\n\n');
}

/** Every generated block by file and name. */
export async function blocks() {
  return {
    'README.md': {
      sample: sample(),
      help: `${fenced(await run(['--help']))}\n\n${fenced(await run(['plan', '--help']))}\n\n${fenced(await run(['check', '--help']))}`,
    },
    'DEVELOPERS.md': { index: await index() },
  };
}

/** The file's text with its generated blocks replaced. */
export function fill(text, byName) {
  return Object.entries(byName).reduce((filled, [name, content]) => {
    const pattern = new RegExp(`(<!-- generated: ${name} -->\\n)[\\s\\S]*?(<!-- end -->)`);
    if (!pattern.test(filled)) throw new Error(`no block "${name}"`);
    return filled.replace(pattern, (_, start, end) => `${start}\n${content}\n\n${end}`);
  }, text);
}

/** The table of reference coverage. It is made by TypeScript beside the cases, so that its test makes the same text. */
async function coverage() {
  const { build } = await import('esbuild');
  const reference = join(root, 'tests', 'reference');
  const cases = readdirSync(join(reference, 'cases'))
    .filter((name) => name.endsWith('.ts'))
    .sort();
  const contents = [
    ...cases.map((name, i) => `import { cases as c${i} } from './cases/${name}';`),
    "export { coverageText } from './coverage.ts';",
    `export const all = [${cases.map((_, i) => `...c${i}`).join(', ')}];`,
  ].join('\n');
  const folder = mkdtempSync(join(tmpdir(), 'coverage-'));
  try {
    const outfile = join(folder, 'coverage.mjs');
    // Places of files are seen from where the sources are, not from where they are bundled to.
    const define = { 'import.meta.url': JSON.stringify(pathToFileURL(join(reference, 'coverage.ts')).href) };
    const banner = { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" };
    await build({
      stdin: { contents, resolveDir: reference, loader: 'ts' },
      bundle: true,
      format: 'esm',
      platform: 'node',
      logLevel: 'error',
      outfile,
      define,
      banner,
    });
    const { all, coverageText } = await import(pathToFileURL(outfile).href);
    return coverageText(all);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [file, byName] of Object.entries(await blocks())) {
    const path = join(root, file);
    writeFileSync(path, fill(readFileSync(path, 'utf8'), byName));
    console.log(`wrote ${file}`);
  }
  writeFileSync(join(root, 'tests', 'reference', 'COVERAGE.md'), await coverage());
  console.log('wrote tests/reference/COVERAGE.md');
}
