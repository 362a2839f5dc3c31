import * as z from 'zod';
import type { YamlPath } from '../kernel/located-yaml.ts';
import { dataAt } from './findings.ts';

/** Data of which any piece may be missing, because it could not be read. */
export type Partly<T> = T extends string | number | boolean | undefined | { readonly written: string } | { readonly vector: unknown }
  ? T
  : T extends readonly (infer E)[]
    ? readonly (Partly<E> | undefined)[]
    : T extends object
      ? { readonly [K in keyof T]?: Partly<T[K]> | undefined }
      : T;

/** What can be read of data that breaks its schema: each field, and each entry of a list, on its own. */
export function salvage(schema: z.core.$ZodType, data: unknown): unknown {
  if (data === undefined || data === null) return undefined;
  const inner = unwrapped(schema);
  const parsed = z.safeParse(inner, data);
  if (parsed.success) return parsed.data;
  if (inner instanceof z.ZodObject && typeof data === 'object' && !Array.isArray(data)) {
    return Object.fromEntries(Object.entries(inner.shape).map(([key, field]) => [key, salvage(field, dataAt(data, [key]))]));
  }
  if (inner instanceof z.ZodArray && Array.isArray(data)) return data.map((item) => salvage(inner.element, item));
  if (inner instanceof z.ZodTuple && Array.isArray(data) && data.length === inner.def.items.length) {
    return data.map((item, i) => salvage(inner.def.items[i] as z.core.$ZodType, item));
  }
  return undefined;
}

/** The schema of what a path leads to. */
export function schemaAt(root: z.core.$ZodType, path: YamlPath): z.ZodType | undefined {
  let at: z.core.$ZodType | undefined = root;
  for (const segment of path) {
    if (at === undefined) return undefined;
    const inner = unwrapped(at);
    if (inner instanceof z.ZodObject) at = Object.hasOwn(inner.shape, segment) ? inner.shape[segment as string] : undefined;
    else if (inner instanceof z.ZodArray) at = inner.element;
    else if (inner instanceof z.ZodTuple) at = inner.def.items[segment as number];
    else if (inner instanceof z.ZodRecord) at = inner.valueType;
    else at = undefined;
  }
  return at === undefined ? undefined : unwrapped(at);
}

export function unwrapped(schema: z.core.$ZodType): z.ZodType {
  return (schema instanceof z.ZodOptional ? unwrapped(schema.unwrap()) : schema) as z.ZodType;
}
