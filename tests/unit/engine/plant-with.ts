import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const TYPICAL = readFileSync(join(import.meta.dirname, '..', '..', '..', 'rules', 'plants', 'typical.yaml'), 'utf8');

/** Lists of the plant beside its machines; they are no part of what a test gives its own of. */
const LISTS = ['trim_presses', 'furnaces', 'cooling', 'spray', 'limits'];

/** What a machine has beside it. */
const MACHINE_LINES = /^ {4}(core_circuits|vacuum|extraction):/;

/** The machines and prices of the built-in plant and nothing else, as a real plant. */
export const BARE_PLANT = without(TYPICAL, LISTS).replace('invented: true', 'invented: false');

/** The built-in machines and prices with these further lines of a plant file. */
export function plantWith(...lines: readonly string[]): string {
  return `${BARE_PLANT}${lines.join('\n')}\n`;
}

/** A plant file without some of its keys at the top. */
function without(text: string, keys: readonly string[]): string {
  const kept: string[] = [];
  let skipping = false;
  for (const line of text.split('\n')) {
    const key = /^([a-z_]+):/.exec(line)?.[1];
    if (key !== undefined) skipping = keys.includes(key);
    if (!skipping && !MACHINE_LINES.test(line)) kept.push(line);
  }
  return kept.join('\n');
}
