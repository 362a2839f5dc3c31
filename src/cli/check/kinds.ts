import { basename } from 'node:path';
import { BadInput } from '../fault.ts';
import { readFileText } from '../files.ts';

/** What a file that can be checked holds. */
export type FileKind = 'part' | 'die' | 'plant';

/** A file to check. */
export interface Found {
  /** Path from the working folder, with forward slashes. */
  readonly path: string;
  readonly kind: FileKind;
}

/** The kinds of file by their names: what a folder is searched for, and how a name tells its kind. */
const KINDS: readonly { readonly kind: FileKind; readonly pattern: string; readonly is: (name: string) => boolean }[] = [
  { kind: 'part', pattern: '*.part.yaml', is: (name) => name.endsWith('.part.yaml') },
  { kind: 'die', pattern: '*.die.yaml', is: (name) => name.endsWith('.die.yaml') },
  { kind: 'plant', pattern: 'plant.yaml', is: (name) => name === 'plant.yaml' },
];

/** What a folder is searched for, at any depth. */
export const SEARCHED: readonly string[] = KINDS.map(({ pattern }) => `**/${pattern}`);

/** The kind of a file by its name. A dot file is none. */
export function kindByName(path: string): FileKind | undefined {
  const name = basename(path);
  return name.startsWith('.') ? undefined : KINDS.find(({ is }) => is(name))?.kind;
}

/** The kind of a file by its first key, for a file that was named but whose name tells nothing. */
export function kindByText(text: string): FileKind | undefined {
  const word = /^["']?diewright["']?[ \t]*:[ \t]*["']?([a-z]+)\//m.exec(text)?.[1];
  return KINDS.find(({ kind }) => kind === word)?.kind;
}

/** The same of a file that lies there; undefined where it cannot be read, which is told by whoever reads it for its sake. */
export function kindByReading(path: string): FileKind | undefined {
  try {
    return kindByText(readFileText(path).text);
  } catch (error) {
    if (error instanceof BadInput) return undefined;
    throw error;
  }
}
