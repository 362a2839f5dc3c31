import * as z from 'zod';

/** Most entries of one list. */
export const MOST_ENTRIES = 1000;

/** Builds on the first call and keeps the result: a schema costs nothing until a file is read. */
export function once<T>(build: () => T): () => T {
  let built: { readonly value: T } | undefined;
  return () => {
    built ??= { value: build() };
    return built.value;
  };
}

/** The version of each kind of file that this program reads. */
export const VERSIONS = { part: 1, die: 1, plant: 1, baseline: 1, project: 1 } as const;
export type FileKind = keyof typeof VERSIONS;

/** The line `diewright: part/1`. */
export function formatLine(kind: FileKind) {
  const line = `${kind}/${VERSIONS[kind]}`;
  return z.literal(line).meta({ description: 'Kind of file and version of its form', examples: [line] });
}

/** A list of entries with an `id`, which may be left out. */
export function list<T extends z.ZodObject>(about: string, example: string, entry: T) {
  return z
    .array(entry)
    .max(MOST_ENTRIES)
    .meta({ description: about, examples: [[{ id: example }]] })
    .optional();
}

/** A mapping that needs one of these keys at least. Judged even where another key of it has a fault. */
export function atLeastOne<T extends z.ZodObject>(keys: readonly string[], example: string, mapping: T): T {
  return mapping
    .refine((value) => keys.some((key) => Object.hasOwn(value, key)), {
      when: ({ value }) => typeof value === 'object' && value !== null && !Array.isArray(value),
      params: { code: 'missing-field', anyOf: keys, fix: `add "${example}"` },
    })
    .meta({ anyOf: keys.map((key) => ({ required: [key] })) }) as T;
}
