import type { Diagnostic } from '../kernel/diagnostic.ts';
import { Place, type SourceText } from '../kernel/place.ts';
import { nearestWord } from '../kernel/spelling.ts';

/** A step of a path: a key, or an entry of a list by its position or its `id`. */
export type SetStep = { readonly key: string } | { readonly entry: string };

/** The part of a generated JSON Schema that a path is held against. */
export interface FieldSchema {
  readonly properties?: Readonly<Record<string, FieldSchema>>;
  readonly additionalProperties?: FieldSchema | boolean;
  readonly items?: FieldSchema | boolean;
  readonly prefixItems?: readonly FieldSchema[];
}

/**
 * Reads `geometry.wall.nominal`, `holes[H1].depth` or `pinned.gate.velocity` against the schema of the file: below a
 * mapping with free keys, such as `pinned`, all that is left is one key, with its dots. A key that the schema does not
 * know is a finding in the argument itself.
 */
export function readSetPath(argument: SourceText, path: string, schema: FieldSchema): { readonly steps: readonly SetStep[] } | { readonly fault: Diagnostic } {
  const steps: SetStep[] = [];
  let at = 0;
  let node: FieldSchema = schema;
  const fault = (length: number, message: string, fix: string) => ({
    fault: { code: 'set/unknown-field', severity: 'error', message, fix, at: new Place(argument, path, () => [at, at + Math.max(1, length)]) } as const,
  });
  while (at < path.length) {
    const inList = node.items !== undefined || node.prefixItems !== undefined;
    if (inList) {
      const entry = /^\[([^[\]]+)\]/.exec(path.slice(at));
      if (entry === null)
        return fault(
          path.length - at,
          `"${path.slice(0, at)}" is a list: name the entry`,
          'write its position or its id in brackets, such as holes[0].depth or holes[H1].depth',
        );
      steps.push({ entry: entry[1] as string });
      node = node.prefixItems?.[Number(entry[1])] ?? (typeof node.items === 'object' ? node.items : {});
      at += entry[0].length;
    } else if (node.properties === undefined && typeof node.additionalProperties === 'object') {
      if (path[at] === '.') at += 1;
      steps.push({ key: path.slice(at) });
      return path.length > at ? { steps } : fault(1, `"${path}" names no key`, 'write the id after the stroke, such as pinned.gate.velocity');
    } else {
      if (path[at] === '.' && at > 0) at += 1;
      const word = /^[^.[\]]*/.exec(path.slice(at))?.[0] ?? '';
      const known = Object.keys(node.properties ?? {});
      if (!known.includes(word)) {
        const near = nearestWord(word, known);
        const where = steps.length === 0 ? 'a part description' : `"${path.slice(0, at).replace(/\.$/, '')}"`;
        return fault(
          word.length,
          `${where} has no field "${word}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
          known.length === 0 ? 'it takes a value as it is' : `its fields are ${known.join(', ')}`,
        );
      }
      steps.push({ key: word });
      node = (node.properties as Readonly<Record<string, FieldSchema>>)[word] as FieldSchema;
      at += word.length;
    }
  }
  return { steps };
}
