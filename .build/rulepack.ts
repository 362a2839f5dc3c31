import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { VOCABULARY, wordOf } from '../src/engine/vocabulary/index.ts';
import type { Diagnostic } from '../src/kernel/diagnostic.ts';
import type { SourceText } from '../src/kernel/place.ts';
import { type Compiled, compileRulebook } from '../src/rulebook/compile.ts';
import { packRulebook } from '../src/rulebook/pack.ts';
import { compilePlant } from '../src/spec/index.ts';

/** Every YAML file below a folder, named relative to it with forward slashes, in stable order. */
export function readRules(folder: string): SourceText[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.yaml'))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => ({ name: relative(folder, path).replaceAll('\\', '/'), text: readFileSync(path, 'utf8') }));
}

export function compileFolder(folder: string): Compiled {
  return compileRulebook(readRules(folder), wordOf, compilePlant, Object.keys(VOCABULARY));
}

export function describe(diagnostic: Diagnostic): string {
  const position = diagnostic.at?.position();
  const place = position === undefined ? '' : `rules/${diagnostic.at?.source.name}:${position.line}:${position.column} `;
  return `${place}${diagnostic.code}: ${diagnostic.message}${diagnostic.fix === undefined ? '' : ` (${diagnostic.fix})`}`;
}

/** The rulebook as text, for `unpackRulebook`. @throws Error that lists every fault of the rule data. */
export function rulepack(folder: string): string {
  const { rulebook, diagnostics } = compileFolder(folder);
  if (diagnostics.length > 0) throw new Error(`${diagnostics.length} faults in the rule data:\n${diagnostics.map(describe).join('\n')}`);
  return packRulebook(rulebook);
}
