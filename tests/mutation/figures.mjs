// Changes one figure of the tables and alloys after the other by 5 % and says what the change meets. Not part of CI.
//   node tests/mutation/figures.mjs [--list] [--plans] [topic, table or alloy ...]
// The first net needs neither build nor plan: a published figure is caught by its second copy, or missed (then the exit code is
// 1); one that no work read prints is unverifiable. --list names the unverifiable ones. --plans, after npm run build, draws a
// second net over the figures of the tables that are not typed twice: the numbers of the plans of the examples. That takes some
// seconds a figure, and says that a change shows, not which figure is right. A figure that no example uses falls through it.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';

const root = join(import.meta.dirname, '..', '..');
const { values: flags, positionals: wanted } = parseArgs({
  options: { list: { type: 'boolean', default: false }, plans: { type: 'boolean', default: false } },
  allowPositionals: true,
});
const isWanted = (group) => wanted.length === 0 || wanted.some((one) => group === one || group.startsWith(`${one}/`));

/** What the tests hold, from the TypeScript beside them. */
async function secondCopies() {
  const contents = "export { changedFigures } from './meets.ts'; export { TYPED_CELLS } from '../rules/cells/index.ts';";
  const folder = mkdtempSync(join(tmpdir(), 'figures-'));
  try {
    const outfile = join(folder, 'copies.mjs');
    // Files are found from where the sources are, not from where they are bundled to.
    const define = { 'import.meta.url': JSON.stringify(pathToFileURL(join(import.meta.dirname, 'meets.ts')).href) };
    const banner = { js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);" };
    const stdin = { contents, resolveDir: import.meta.dirname, loader: 'ts' };
    await build({ stdin, bundle: true, format: 'esm', platform: 'node', logLevel: 'error', outfile, define, banner });
    return await import(pathToFileURL(outfile).href);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The first net: what each figure meets, by mark. */
function firstNet(figures) {
  for (const { name, status, meets } of figures) {
    if (meets === 'missed') console.log(`missed: ${name} (${status})`);
    if (meets === 'unverifiable' && flags.list) console.log(`unverifiable: ${name} (${status})`);
  }
  for (const of of ['tables', 'alloys']) {
    const some = figures.filter((one) => one.of === of);
    const number = (meets) => some.filter((one) => one.meets === meets).length;
    const slips = some.filter((one) => one.meets === 'unverifiable' && one.typedTwice).length;
    console.log(
      `${of}: ${some.length} figures, ${number('caught')} caught, ${number('unverifiable')} unverifiable (${slips} of them typed twice), ${number('missed')} missed`,
    );
  }
  if (figures.some(({ meets }) => meets === 'missed')) process.exitCode = 1;
}

const examples = readdirSync(join(root, 'examples'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.part.yaml'))
  .sort()
  .map((name) => ({ name, text: readFileSync(join(root, 'examples', name), 'utf8') }));

/** The numbers, words and findings of a plan, as one text: what the committed plans hold. */
function shown({ planPart }, part, rulebook) {
  const { plan, diagnostics } = planPart({ part, rulebook, version: '0' });
  if (plan === undefined) return { text: diagnostics.map(({ code }) => code).join(), tables: new Set() };
  const values = [...plan.values].map(([id, { value }]) => `${id} ${value}`);
  const text = [...values, ...[...plan.texts].map(([id, word]) => `${id} ${word}`), ...plan.findings.map(({ code, item }) => `${code} ${item}`)].join('\n');
  return { text, tables: new Set([...plan.values.values()].map(({ table }) => table)) };
}

/** The rulebook with one figure of one table changed. */
function changed(rulebook, table, row, column) {
  const cell = row.cells[column];
  const rows = table.rows.map((one) => (one === row ? { ...one, cells: { ...one.cells, [column]: { ...cell, value: cell.value * 1.05 } } } : one));
  return { ...rulebook, tables: { ...rulebook.tables, [table.id]: { ...table, rows } } };
}

/** The second net: the figures of the tables that are typed once, by the plans of the examples. */
async function secondNet(typed) {
  const library = await import('../../dist/index.js');
  const rulebook = await library.loadRulebook();
  const isTyped = (table, row, column) =>
    typed.some(({ table: id, at, column: name }) => id === table.id && name === column && Object.entries(at).every(([axis, value]) => row.at[axis] === value));
  const before = new Map(examples.map((part) => [part, shown(library, part, rulebook)]));
  const noticed = (parts, other) => parts.some((part) => shown(library, part, other).text !== before.get(part).text);
  let [all, seen] = [0, 0];
  for (const table of Object.values(rulebook.tables).filter(({ id }) => isWanted(id))) {
    // Parts whose plans read the table come first: they are the likeliest to notice.
    const reads = (part) => before.get(part).tables.has(table.id);
    const readers = [...examples.filter(reads), ...examples.filter((part) => !reads(part)).slice(0, 2)];
    for (const row of table.rows) {
      for (const [column, cell] of Object.entries(row.cells)) {
        if (typeof cell?.value !== 'number' || cell.value === 0 || isTyped(table, row, column)) continue;
        all += 1;
        if (noticed(readers, changed(rulebook, table, row, column))) seen += 1;
        else console.log(`shows in no plan: ${table.id} ${JSON.stringify(row.at)} ${column} = ${cell.value} (${cell.status})`);
      }
    }
  }
  console.log(`plans: ${all} figures of tables typed once, ${seen} show in the plans of the examples, ${all - seen} do not`);
}

const { changedFigures, TYPED_CELLS } = await secondCopies();
firstNet(changedFigures().filter(({ group }) => isWanted(group)));
if (flags.plans) await secondNet(TYPED_CELLS);
