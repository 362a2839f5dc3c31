import { isScalar, type Node } from 'yaml';
import { printable } from './printable.ts';

/** Keys and list positions that lead from the top of a file to a value. */
export type YamlPath = readonly (string | number)[];

/** `holes[0].diameter`. */
export function pathText(path: YamlPath): string {
  let text = '';
  for (const segment of path) {
    if (typeof segment === 'number') text += `[${segment}]`;
    else text += text === '' ? printable(segment) : `.${printable(segment)}`;
  }
  return text;
}

/** A key as it was written (`1.0` stays `1.0`); undefined for a key that is a list, a mapping or an alias. */
export function keyText(key: Node | null, text: string): string | undefined {
  if (key === null) return '';
  if (!isScalar(key)) return undefined;
  if (typeof key.value === 'string') return key.value;
  return key.source ?? (key.range == null ? '' : text.slice(key.range[0], key.range[1]));
}
