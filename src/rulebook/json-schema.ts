import * as z from 'zod';
import { limitFile } from './schema.ts';

/** The JSON Schema (2020-12) of a limit's file, generated from the schema that the rule reader uses. */
export function ruleJsonSchema(): object {
  const { $schema, ...rest } = z.toJSONSchema(limitFile, { target: 'draft-2020-12', io: 'input' });
  return {
    $schema,
    $id: 'urn:diewright:rule/1',
    title: 'Limit',
    description: 'One file below rules/limits/: what must hold, and what to do when it does not',
    ...rest,
  };
}
