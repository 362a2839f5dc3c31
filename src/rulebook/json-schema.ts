import * as z from 'zod';
import { cautionFile, choiceFile, houseAlloyFile, limitFile, sourcesFile, tableFile } from './schema.ts';

/** The kinds of rule file, each with the schema that the rule reader uses, and where it lies in a rules folder. */
const FILES = {
  rule: { schema: limitFile, title: 'Limit', file: 'limits/<topic>/<rule>.yaml: what must hold, and what to do when it does not' },
  limit: { schema: limitFile, title: 'Limit', file: 'limits/<topic>/<rule>.yaml: what must hold, and what to do when it does not' },
  choice: { schema: choiceFile, title: 'Decisions', file: 'choices/<topic>.yaml: decisions between words, each with the rows that are tried in turn' },
  table: { schema: tableFile, title: 'Table', file: 'tables/<topic>/<name>.yaml: figures with unit, status and source' },
  alloy: { schema: houseAlloyFile, title: 'Alloys', file: 'alloys/<family>.yaml: alloys of a house, or figures in the place of built-in ones' },
  caution: { schema: cautionFile, title: 'Cautions', file: 'cautions/<topic>.yaml: hazards, what triggers them, what to do' },
  sources: { schema: sourcesFile, title: 'Bibliography', file: 'sources.yaml: the works that figures and rules rest on' },
} as const;
export type RuleFileKind = keyof typeof FILES;

/** The JSON Schema (2020-12) of a kind of rule file. */
export function ruleJsonSchema(kind: RuleFileKind): object {
  const { schema, title, file } = FILES[kind];
  const { $schema, ...rest } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
  return { $schema, $id: `urn:diewright:${kind}/1`, title, description: file, ...rest };
}
