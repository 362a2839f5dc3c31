import { BASE_CELL, BASE_DIE, BASE_PART, BASE_PLANT } from './base.ts';

/**
 * One bad file. The first finding of the file has `code` and stands at `line` and `column`; `others` are the codes of
 * the further findings, in order. Without `others` the cause gives that one finding and no more.
 */
export interface BadInput {
  readonly name: string;
  readonly kind: 'part' | 'die' | 'plant';
  readonly bytes: () => Uint8Array;
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly line: number;
  readonly column: number;
  readonly others: readonly string[];
}

type More = { readonly others?: readonly string[]; readonly severity?: BadInput['severity']; readonly kind?: BadInput['kind'] };
type Edit = readonly [from: string, to: string];

/** The mark that stands where the finding is expected; it is taken out of the text. */
const MARK = '«';

/** A whole text, with the mark in it. */
export function text(name: string, code: string, marked: string, more: More = {}): BadInput {
  const { line, column, plain } = unmarked(marked, name);
  return { name, kind: 'part', bytes: () => new TextEncoder().encode(plain), code: `spec/${code}`, severity: 'error', line, column, others: [], ...more };
}

/** The good part file with edits, one of which puts the mark in. */
export function part(name: string, code: string, ...rest: readonly (Edit | More)[]): BadInput {
  const edits = rest.filter((item): item is Edit => Array.isArray(item));
  const more = rest.find((item): item is More => !Array.isArray(item));
  return text(name, code, edited(BASE_PART, edits, name), more);
}

/** The good plant file with edits, one of which puts the mark in. */
export function plant(name: string, code: string, ...rest: readonly (Edit | More)[]): BadInput {
  const edits = rest.filter((item): item is Edit => Array.isArray(item));
  const more = rest.find((item): item is More => !Array.isArray(item));
  return text(name, code, edited(BASE_PLANT, edits, name), { kind: 'plant', ...more });
}

/** The good die file with edits, one of which puts the mark in. */
export function die(name: string, code: string, ...rest: readonly (Edit | More)[]): BadInput {
  const edits = rest.filter((item): item is Edit => Array.isArray(item));
  const more = rest.find((item): item is More => !Array.isArray(item));
  return text(name, code, edited(BASE_DIE, edits, name), { kind: 'die', ...more });
}

/** The good plant file with all its lists, with edits, one of which puts the mark in. */
export function cell(name: string, code: string, ...rest: readonly (Edit | More)[]): BadInput {
  const edits = rest.filter((item): item is Edit => Array.isArray(item));
  const more = rest.find((item): item is More => !Array.isArray(item));
  return text(name, code, edited(BASE_CELL, edits, name), { kind: 'plant', ...more });
}

/** Bytes that are no marked text; line and column are counted by hand. */
export function bytes(name: string, code: string, line: number, column: number, make: () => Uint8Array, more: More = {}): BadInput {
  return { name, kind: 'part', bytes: make, code: `spec/${code}`, severity: 'error', line, column, others: [], ...more };
}

/** The good part file as it is after edits, for cases that change its bytes. */
export function edited(base: string, edits: readonly Edit[], name: string): string {
  let result = base;
  for (const [from, to] of edits) {
    if (result.split(from).length !== 2) throw new Error(`${name}: "${from}" does not stand exactly once in the text`);
    result = result.replace(from, () => to);
  }
  return result;
}

function unmarked(marked: string, name: string): { readonly line: number; readonly column: number; readonly plain: string } {
  const [before, after, ...rest] = marked.split(MARK);
  if (before === undefined || after === undefined || rest.length > 0) throw new Error(`${name}: the text needs exactly one mark`);
  const lines = before.split('\n');
  return { line: lines.length, column: (lines[lines.length - 1] as string).length + 1, plain: before + after };
}
