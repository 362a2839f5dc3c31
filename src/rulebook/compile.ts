import type * as z from 'zod';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { type LocatedYaml, readLocatedYaml } from '../kernel/located-yaml.ts';
import type { SourceText } from '../kernel/place.ts';
import { buildAlloys, buildCautions, buildChoices, buildLimit, buildSources, buildTable } from './build.ts';
import { checkRulebook } from './check.ts';
import { treeOf } from './expression.ts';
import { alloyFile, cautionFile, choiceFile, limitFile, sourcesFile, tableFile } from './schema.ts';
import { parseTemplate } from './template.ts';
import type { Alloy, Caution, Choice, Limit, Rulebook, Source, Table, Vocabulary } from './types.ts';

export interface Compiled {
  readonly rulebook: Rulebook;
  readonly diagnostics: readonly Diagnostic[];
}

/** The reader of plant files; it belongs to another folder, so whoever compiles hands it in. */
export type PlantReader = (file: SourceText) => { readonly data?: unknown; readonly diagnostics: readonly Diagnostic[] };

/**
 * Reads the files of a rules folder (names relative to it, such as `tables/draft/constant.yaml`) into one rulebook.
 * All faults are collected: YAML, shape, unknown value ids, wrong units, expressions that do not type-check, examples
 * that do not behave, unknown source keys.
 */
export function compileRulebook(files: readonly SourceText[], vocabulary: Vocabulary, readPlant?: PlantReader): Compiled {
  const diagnostics: Diagnostic[] = [];
  const tables: Record<string, Table> = {};
  const choices: Record<string, Choice> = {};
  const limits: Record<string, Limit> = {};
  const cautions: Record<string, Caution> = {};
  const alloys: Record<string, Alloy> = {};
  const sources: Record<string, Source> = {};
  const plants: Record<string, unknown> = {};
  const documents = new Map<string, LocatedYaml>();

  for (const file of [...files].sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const id = file.name.replace(/\.yaml$/, '');
    const [folder] = file.name.split('/') as [string];
    if (folder === 'plants') {
      const read = readPlant?.(file);
      diagnostics.push(...(read?.diagnostics ?? []));
      if (read?.data !== undefined) plants[id.slice('plants/'.length)] = read.data;
      continue;
    }
    const document = readLocatedYaml(file, { prefix: 'rules' });
    documents.set(file.name, document);
    if (document.diagnostics.length > 0) {
      diagnostics.push(...document.diagnostics);
      continue;
    }
    const shaped = <T>(schema: z.ZodType<T>): T | undefined => checkShape(schema, document, diagnostics);
    if (file.name === 'sources.yaml') Object.assign(sources, buildSources(shaped(sourcesFile)));
    else if (folder === 'tables') add(tables, buildTable(id.slice('tables/'.length), shaped(tableFile), document, diagnostics));
    else if (folder === 'choices') Object.assign(choices, buildChoices(id.slice('choices/'.length), shaped(choiceFile)));
    else if (folder === 'limits') add(limits, buildLimit(id.slice('limits/'.length), shaped(limitFile)));
    else if (folder === 'cautions') Object.assign(cautions, buildCautions(id.slice('cautions/'.length), shaped(cautionFile)));
    else if (folder === 'alloys') Object.assign(alloys, buildAlloys(shaped(alloyFile)));
    else
      diagnostics.push({
        code: 'rules/unknown-folder',
        severity: 'error',
        message: `no rule data is read from "${folder}/"`,
        at: document.place([]),
        fix: 'put it in tables/, choices/, limits/, cautions/, alloys/ or plants/',
      });
  }
  const read = { tables, choices, limits, cautions, alloys, sources, plants };
  diagnostics.push(...checkRulebook(read, documents, vocabulary));
  // The trees of a rulebook with a fault are of no use, and where the fault is in an expression there are none.
  return { rulebook: { ...read, conditions: diagnostics.length > 0 ? {} : conditionsOf(read) }, diagnostics };
}

/** Every expression of the rules by its text: conditions, and the numbers that messages compute. */
function conditionsOf({ choices, limits, cautions }: Pick<Rulebook, 'choices' | 'limits' | 'cautions'>): Rulebook['conditions'] {
  const ofLimits = Object.values(limits).flatMap(({ when, require, message, fix }) => [
    when,
    require,
    ...[...parseTemplate(message), ...parseTemplate(fix)].flatMap((part) => (part.kind === 'number' ? [part.expression] : [])),
  ]);
  const ofChoices = Object.values(choices).flatMap(({ rows }) => rows.map((row) => row.when));
  const texts = [...ofLimits, ...ofChoices, ...Object.values(cautions).map((caution) => caution.when)];
  return Object.fromEntries(texts.map((text) => [text, treeOf(text)]));
}

function add<T extends { readonly id: string }>(into: Record<string, T>, item: T | undefined): void {
  if (item !== undefined) into[item.id] = item;
}

function checkShape<T>(schema: z.ZodType<T>, document: LocatedYaml, diagnostics: Diagnostic[]): T | undefined {
  const result = schema.safeParse(document.data);
  if (result.success) return result.data;
  for (const issue of result.error.issues) {
    const keys = issue.code === 'unrecognized_keys' ? issue.keys : [undefined];
    for (const key of keys) {
      const path = [...issue.path, ...(key === undefined ? [] : [key])] as (string | number)[];
      const message = key === undefined ? `${path.join('.')}: ${issue.message}` : `unknown key "${key}"`;
      diagnostics.push({
        code: key === undefined ? 'rules/wrong-shape' : 'rules/unknown-key',
        severity: 'error',
        message,
        at: document.place(path, key === undefined ? 'value' : 'key'),
        fix: 'see DEVELOPERS.md for the form of this file',
      });
    }
  }
  return undefined;
}
