import type { RuleFileKind } from './rulebook/json-schema.ts';

const RULE_SCHEMAS = ['rule', 'limit', 'choice', 'table', 'caution', 'alloy', 'sources'] as const satisfies readonly RuleFileKind[];
export const SCHEMAS = ['part', 'die', 'plant', 'project', 'plan', 'die-plan', 'replan', 'options', 'findings', 'baseline', ...RULE_SCHEMAS] as const;
export type SchemaName = (typeof SCHEMAS)[number];

/** A JSON Schema (2020-12) as text. */
export async function schemaText(name: SchemaName): Promise<string> {
  const { jsonText } = await import('./report/json-text.ts');
  if (name === 'plan') return jsonText((await import('./report/plan-schema.ts')).planJsonSchema());
  if (name === 'die-plan') return jsonText((await import('./report/plan-schema.ts')).diePlanJsonSchema());
  if (name === 'replan') return jsonText((await import('./report/replan/schema.ts')).replanJsonSchema());
  if (name === 'options') return jsonText((await import('./report/options/json-schema.ts')).optionsJsonSchema());
  if (name === 'findings') return jsonText((await import('./report/check/json-schema.ts')).findingsJsonSchema());
  if (name === 'part' || name === 'die' || name === 'plant' || name === 'project' || name === 'baseline')
    return jsonText((await import('./spec/index.ts')).jsonSchema(name));
  return jsonText((await import('./rulebook/json-schema.ts')).ruleJsonSchema(name));
}

export const STARTERS = ['part', 'die', 'plant', 'project', 'rule'] as const;
export type StarterName = (typeof STARTERS)[number];

/** A commented file to begin from. */
export async function starterText(name: StarterName): Promise<string> {
  if (name === 'rule') return (await import('./rulebook/starter.ts')).STARTER_RULE;
  const { STARTER_DIE, STARTER_PART, STARTER_PLANT, STARTER_PROJECT } = await import('./spec/starters.ts');
  return { part: STARTER_PART, die: STARTER_DIE, plant: STARTER_PLANT, project: STARTER_PROJECT }[name];
}
