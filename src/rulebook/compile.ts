import { type Diagnostic, sortDiagnostics } from '../kernel/diagnostic.ts';
import type { SourceText } from '../kernel/place.ts';
import { checkRules } from './check.ts';
import { treeOf } from './expression.ts';
import { type ReadRules, readRules } from './read.ts';
import type { CheckContext } from './spot.ts';
import { parseTemplate } from './template.ts';
import type { Binding, Condition, Rulebook, Vocabulary } from './types.ts';

export interface Compiled {
  readonly rulebook: Rulebook;
  readonly diagnostics: readonly Diagnostic[];
}

/** The reader of plant files; it belongs to another folder, so whoever compiles hands it in. */
export type PlantReader = (file: SourceText) => { readonly data?: unknown; readonly diagnostics: readonly Diagnostic[] };

/**
 * Reads the files of the built-in rules folder (names relative to it, such as `tables/draft/constant.yaml`) into one
 * rulebook. All faults are collected: YAML, shape, unknown value ids, wrong units, expressions that do not type-check or
 * that no tree can hold, examples that do not behave, unknown source keys.
 */
export function compileRulebook(files: readonly SourceText[], vocabulary: Vocabulary, readPlant?: PlantReader, ids: readonly string[] = []): Compiled {
  const plants: Record<string, unknown> = {};
  const ofPlants: Diagnostic[] = [];
  const isPlant = (file: SourceText): boolean => file.name.startsWith('plants/');
  for (const file of files.filter(isPlant)) {
    const plant = readPlant?.(file);
    ofPlants.push(...(plant?.diagnostics ?? []));
    if (plant?.data !== undefined) plants[file.name.replace(/^plants\/(.*)\.yaml$/, '$1')] = plant.data;
  }
  const read = readRules(files.filter((file) => !isPlant(file)).map((source) => ({ path: source.name, source })));
  const context: CheckContext = { vocabulary, ids, sources: read.sources, evaluation: treeOf };
  const diagnostics = sortDiagnostics([...ofPlants, ...checkRules(read, context)]);
  const { tables, choices, limits, cautions, alloys, sources } = read;
  // The trees of a rulebook with a fault are of no use, and where the fault is in an expression there are none.
  const conditions = diagnostics.length > 0 ? {} : conditionsOf(read, treeOf);
  return { rulebook: { tables, choices, limits, cautions, alloys, sources, plants, conditions }, diagnostics };
}

/** Every expression of the rules by its text - conditions, and the numbers that messages compute - ready to be evaluated. */
export function conditionsOf(
  { choices, limits, cautions }: Pick<ReadRules, 'choices' | 'limits' | 'cautions'>,
  evaluation: (text: string, uses: readonly Binding[]) => Condition,
): Rulebook['conditions'] {
  const conditions: Record<string, Condition> = {};
  const add = (uses: readonly Binding[], ...texts: readonly string[]): void => {
    for (const text of texts) conditions[text] = evaluation(text, uses);
  };
  for (const { uses, when, require, message, fix } of Object.values(limits)) {
    const computed = [...parseTemplate(message), ...parseTemplate(fix)].flatMap((part) => (part.kind === 'number' ? [part.expression] : []));
    add(uses, when, require, ...computed);
  }
  for (const { uses, rows } of Object.values(choices)) add(uses, ...rows.map((row) => row.when));
  for (const { uses, when } of Object.values(cautions)) add(uses, when);
  return conditions;
}
