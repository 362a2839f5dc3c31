import * as z from 'zod';
import { baselineSchema } from './baseline.ts';
import { dieSchema } from './die-schema.ts';
import { partSchema } from './part-schema.ts';
import { plantSchema } from './plant-schema.ts';
import { projectSchema } from './project-schema.ts';
import { type FileKind, VERSIONS } from './schema-parts.ts';

const SCHEMAS = { part: partSchema, die: dieSchema, plant: plantSchema, baseline: baselineSchema, project: projectSchema } as const satisfies Record<
  FileKind,
  unknown
>;

/** The JSON Schema (2020-12) of a kind of file for editors, generated from the schema that the reader uses. */
export function jsonSchema(kind: FileKind): object {
  const schema = SCHEMAS[kind]();
  const { $schema, ...rest } = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    // Quantities and texts are read from YAML text, so an editor meets numbers and booleans where the reader sees text.
    override: ({ zodSchema, jsonSchema: generated }) => {
      const type = z.globalRegistry.get(zodSchema)?.['type'];
      if (Array.isArray(type)) generated.type = type as never;
    },
  });
  return { $schema, $id: `urn:diewright:${kind}/${VERSIONS[kind]}`, ...rest };
}
