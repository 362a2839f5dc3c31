import * as z from 'zod';
import type { LocatedYaml, YamlPath } from '../kernel/located-yaml.ts';
import { pathText } from '../kernel/located-yaml.ts';
import { printable } from '../kernel/printable.ts';
import { didYouMean, nearestWord, orList } from '../kernel/spelling.ts';
import type { Faults } from './faults.ts';

/** The data of a rule file in the shape of its schema; undefined, with every fault reported at its place, where it has another. */
export function shaped<T>(schema: z.ZodType<T>, document: LocatedYaml, faults: Faults): T | undefined {
  const result = schema.safeParse(document.data);
  if (result.success) return result.data;
  const issues = result.error.issues.flatMap(likeliest);
  // What an unknown key was probably meant to be is not missing: one cause, one finding.
  const meant = new Set<string>();
  for (const issue of issues) if (issue.code === 'unrecognized_keys') unknownKeys(schema, issue, document, faults, meant);
  for (const issue of issues) if (issue.code !== 'unrecognized_keys') report(schema, issue, document, faults, meant);
  return undefined;
}

/** Where one of several forms would do, what keeps the data from the form that it comes nearest to; the issue itself where it comes near to none. */
function likeliest(issue: z.core.$ZodIssue): z.core.$ZodIssue[] {
  if (issue.code !== 'invalid_union') return [issue];
  const forms = issue.errors.map((form) => form.flatMap(likeliest));
  const near = forms.filter((form) => !form.some(({ code, path }) => path.length === 0 && (code === 'invalid_type' || code === 'invalid_union')));
  const [best] = near.sort((a, b) => a.length - b.length);
  return best === undefined ? [issue] : best.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] }));
}

function unknownKeys(schema: z.ZodType, issue: z.core.$ZodIssueUnrecognizedKeys, document: LocatedYaml, faults: Faults, meant: Set<string>): void {
  const owner = issue.path as YamlPath;
  const mapping = schemaAt(schema, owner);
  const known = mapping instanceof z.ZodObject ? Object.keys(mapping.shape) : [];
  const there = dataAt(document.data, owner);
  const absent = known.filter((key) => typeof there === 'object' && there !== null && !Object.hasOwn(there, key));
  for (const key of issue.keys) {
    const near = key.length > 40 ? undefined : (nearestWord(key, absent) ?? nearestWord(key, known));
    if (near !== undefined) meant.add(pathText([...owner, near]));
    const fix = near === undefined ? `remove it${known.length === 0 ? '' : `, or write one of ${orList(known)}`}` : `write "${near}"`;
    faults.add(
      'unknown-key',
      document.place([...owner, key], 'key'),
      `the key "${printable(key)}" is unknown here${near === undefined ? '' : `; did you mean "${near}"?`}`,
      fix,
    );
  }
}

function report(schema: z.ZodType, issue: z.core.$ZodIssue, document: LocatedYaml, faults: Faults, meant: ReadonlySet<string>): void {
  const path = issue.path as YamlPath;
  const given = dataAt(document.data, path);
  const name = pathText(path);
  const wanted = schemaAt(schema, path);
  const about = wanted?.description;
  if (given === undefined || given === null || given === '') {
    if (meant.has(name)) return;
    const key = String(path[path.length - 1]);
    faults.add(
      'missing-field',
      document.place(path, 'key'),
      `${name} ${given === undefined ? 'is missing' : 'is empty'}`,
      `write "${key}: ..."${about === undefined ? '' : `: ${about}`}`,
    );
    return;
  }
  const add = (code: 'unknown-word' | 'unknown-unit' | 'wrong-shape' | 'example', message: string, fix: string): void =>
    faults.add(code, document.place(path), message, fix);
  if (issue.code === 'invalid_value' && typeof given === 'string') {
    const words = issue.values.map(String);
    add('unknown-word', `${name}: "${printable(given)}" is not one of the words known here${didYouMean(given, words)}`, `write ${orList(words)}`);
  } else if (issue.code === 'custom') {
    add('unknown-unit', `${name}: "${printable(String(given))}" ${issue.message}`, about ?? 'write a unit such as mm or kN');
  } else if (issue.code === 'invalid_key') {
    faults.add(
      'wrong-shape',
      document.place(path, 'key'),
      `"${String(path[path.length - 1])}" cannot be a name in an expression`,
      'use letters, digits and _, beginning with a letter',
    );
  } else if (issue.code === 'too_small' && Array.isArray(given)) {
    add(path[path.length - 1] === 'examples' ? 'example' : 'wrong-shape', `${name} holds nothing`, about ?? 'give at least one');
  } else {
    add(
      'wrong-shape',
      `${name}: ${wantedIn(wanted)} is wanted, but ${kindOf(given)} stands here`,
      about === undefined ? 'see "diewright schema" for the form of this file' : `write ${about}`,
    );
  }
}

/** The schema at a path, without what makes it optional; undefined where a path leads nowhere, or into one of several forms. */
function schemaAt(root: z.ZodType, path: YamlPath): z.ZodType | undefined {
  let at: unknown = root;
  for (const segment of path) {
    const inner = bare(at);
    if (inner instanceof z.ZodObject) at = Object.hasOwn(inner.shape, segment) ? inner.shape[segment as string] : undefined;
    else if (inner instanceof z.ZodArray) at = inner.element;
    else if (inner instanceof z.ZodRecord) at = inner.valueType;
    else if (inner instanceof z.ZodTuple) at = inner.def.items[segment as number];
    else return undefined;
  }
  return bare(at);
}

function bare(schema: unknown): z.ZodType | undefined {
  return schema instanceof z.ZodOptional || schema instanceof z.ZodNullable ? bare(schema.unwrap()) : (schema as z.ZodType | undefined);
}

function wantedIn(schema: z.ZodType | undefined): string {
  if (schema instanceof z.ZodArray || schema instanceof z.ZodTuple) return 'a list';
  if (schema instanceof z.ZodObject || schema instanceof z.ZodRecord) return 'a mapping of keys and values';
  if (schema instanceof z.ZodBoolean) return 'true or false';
  if (schema instanceof z.ZodNumber) return 'a number';
  if (schema instanceof z.ZodEnum) return 'a word';
  if (schema instanceof z.ZodUnion) return 'another form';
  return 'a text';
}

function kindOf(given: unknown): string {
  if (Array.isArray(given)) return 'a list';
  if (typeof given === 'object') return 'a mapping';
  if (typeof given === 'string') return 'a text';
  return String(given);
}

function dataAt(data: unknown, path: YamlPath): unknown {
  let at: unknown = data;
  for (const segment of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, segment)) return undefined;
    at = (at as Record<string | number, unknown>)[segment];
  }
  return at;
}
