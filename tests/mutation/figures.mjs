// Changes one figure of the tables after the other by 5 % and says which changes nobody notices. Not part of CI.
// node tests/mutation/figures.mjs [topic or table ...], after npm run build. Two nets: the cells that tests type a second
// time, and the numbers of the plans of the examples. A figure that no example uses falls through the second net.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { loadRulebook, planPart } from '../../dist/index.js';

const CHANGE = 1.05;
const root = join(import.meta.dirname, '..', '..');
const wanted = process.argv.slice(2);

/** Cells that tests hold: table, axis values, column. */
async function typedCells() {
  const cells = join(root, 'tests', 'rules', 'cells');
  const contents = [
    "export { PUBLISHED } from './published.ts';",
    "export { DIE_CELLS } from './die.ts';",
    "export { POROSITY_CELLS } from './porosity.ts';",
  ].join('\n');
  const folder = mkdtempSync(join(tmpdir(), 'figures-'));
  try {
    const outfile = join(folder, 'cells.mjs');
    await build({ stdin: { contents, resolveDir: cells, loader: 'ts' }, bundle: true, format: 'esm', platform: 'node', logLevel: 'error', outfile });
    const { PUBLISHED, DIE_CELLS, POROSITY_CELLS } = await import(pathToFileURL(outfile).href);
    return [...Object.values(PUBLISHED).flat(), ...Object.values(DIE_CELLS).flat(), ...POROSITY_CELLS];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const examples = readdirSync(join(root, 'examples'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.part.yaml'))
  .sort()
  .map((name) => ({ name, text: readFileSync(join(root, 'examples', name), 'utf8') }));

/** The numbers, words and findings of a plan, as one text: what the committed plans hold. */
function shown(part, rulebook) {
  const { plan, diagnostics } = planPart({ part, rulebook, version: '0' });
  if (plan === undefined) return { text: diagnostics.map(({ code }) => code).join(), tables: new Set() };
  const values = [...plan.values].map(([id, { value }]) => `${id} ${value}`);
  const text = [...values, ...[...plan.texts].map(([id, word]) => `${id} ${word}`), ...plan.findings.map(({ code, item }) => `${code} ${item}`)].join('\n');
  return { text, tables: new Set([...plan.values.values()].map(({ table }) => table)) };
}

/** The rulebook with one figure of one table changed. */
function changed(rulebook, table, row, column) {
  const cell = row.cells[column];
  const rows = table.rows.map((one) => (one === row ? { ...one, cells: { ...one.cells, [column]: { ...cell, value: cell.value * CHANGE } } } : one));
  return { ...rulebook, tables: { ...rulebook.tables, [table.id]: { ...table, rows } } };
}

const rulebook = await loadRulebook();
const typed = await typedCells();
const isTyped = (table, row, column) =>
  typed.some(([id, at, name]) => id === table.id && name === column && Object.entries(at).every(([axis, value]) => row.at[axis] === value));

/** The plans without a change. */
const before = new Map(examples.map((part) => [part, shown(part, rulebook)]));

const noticed = (parts, other) => parts.some((part) => shown(part, other).text !== before.get(part).text);

let [all, byCell, byPlan] = [0, 0, 0];
for (const table of Object.values(rulebook.tables)) {
  if (wanted.length > 0 && !wanted.some((one) => table.id === one || table.id.startsWith(`${one}/`))) continue;
  // Parts whose plans read the table come first: they are the likeliest to notice.
  const reads = (part) => before.get(part).tables.has(table.id);
  const readers = [...examples.filter(reads), ...examples.filter((part) => !reads(part)).slice(0, 2)];
  for (const row of table.rows) {
    for (const [column, cell] of Object.entries(row.cells)) {
      if (typeof cell?.value !== 'number' || cell.value === 0) continue;
      all += 1;
      if (isTyped(table, row, column)) byCell += 1;
      else if (noticed(readers, changed(rulebook, table, row, column))) byPlan += 1;
      else console.log(`not noticed: ${table.id} ${JSON.stringify(row.at)} ${column} = ${cell.value} (${cell.status})`);
    }
  }
}
console.log(`${all} figures: ${byCell} typed a second time, ${byPlan} seen in the plans of the examples, ${all - byCell - byPlan} noticed by neither`);
