import * as z from 'zod';
import type { YamlPath } from '../kernel/located-yaml.ts';
import { printable } from '../kernel/printable.ts';
import { didYouMean, orList } from '../kernel/spelling.ts';
import type { CodeName } from './codes.ts';
import { dataAt, type Findings, flow, isWithin } from './findings.ts';
import { type LeafFault, QUANTITY_PATTERN } from './leaves.ts';
import { type Partly, salvage, schemaAt, unwrapped } from './salvage.ts';
import { UnknownKeys } from './unknown-keys.ts';

/**
 * Holds the data of a file against its schema. Every finding is in words of the file, none in words of the schema
 * library. `draft` holds what could be read, so that contradictions are found beside other faults. `schemaFor` gives a
 * smaller schema that takes a file only if the whole one does, with the same data.
 */
export function readShape<S extends z.ZodObject>(
  wholeSchema: () => S,
  findings: Findings,
  schemaFor?: (data: object) => S,
): { readonly data?: z.output<S>; readonly draft: Partly<z.output<S>> } {
  const { data } = findings.yaml;
  // Code made for each mapping of the schema costs more at the first file than it saves at the thousandth (measured).
  const read = (schema: S) => schema.safeParse(data, { jitless: true });
  const first = schemaFor === undefined ? undefined : read(schemaFor(data as object));
  if (first?.success) return { data: first.data, draft: first.data as Partly<z.output<S>> };
  const schema = wholeSchema();
  const parsed = read(schema);
  if (parsed.success) return { data: parsed.data, draft: parsed.data as Partly<z.output<S>> };
  const { issues } = parsed.error;
  const unknown = new UnknownKeys(schema, findings);
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys') unknown.report(issue.path as YamlPath, issue.keys);
  }
  // A list of the wrong length is mostly a comma in a number; its entries are then no longer what they were meant to be.
  const split = new Set(issues.filter(({ code }) => code === 'too_big' || code === 'too_small').map(({ path }) => JSON.stringify(path)));
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys' || isWithin(issue.path.slice(0, -1) as YamlPath, split)) continue;
    reportIssue(schema, issue, findings);
  }
  return { draft: salvage(schema, data) as Partly<z.output<S>> };
}

function reportIssue(schema: z.ZodObject, issue: z.core.$ZodIssue, findings: Findings): void {
  const path = issue.path as YamlPath;
  const given = dataAt(findings.yaml.data, path);
  if (issue.code === 'custom' && issue.params?.['anyOf'] !== undefined) {
    const { anyOf, fix } = issue.params as { anyOf: readonly string[]; fix: string };
    if (anyOf.some((key) => findings.isSettled([...path, key]))) return;
    findings.add('missing-field', path, `${orList(anyOf)} is missing`, { fix, part: 'key' });
    return;
  }
  if (given === undefined) {
    reportMissing(schema, path, findings);
    return;
  }
  if (issue.code === 'custom') {
    const { code, fix } = issue.params as unknown as LeafFault;
    findings.add(code as CodeName, path, issue.message, { fix: fix ?? exampleOf(schema, path) });
    return;
  }
  if (given === null) {
    findings.add('missing-field', path, 'has no value', { fix: exampleOf(schema, path) });
    return;
  }
  if (issue.code === 'invalid_key' && path[0] === 'limits') {
    findings.add('limit-form', path, 'is not the name of a value', { fix: 'write a name such as "clamp.use" or "wall.draft", without an item', part: 'key' });
    return;
  }
  if (issue.code === 'invalid_key') {
    findings.add('pin-form', path, 'is not the name of a plan value', { fix: 'write a name such as "machine.cavities" or "hole.draft[H1]"', part: 'key' });
    return;
  }
  if (issue.code === 'invalid_value' && typeof given === 'string') {
    const words = issue.values.map(String);
    const near = given.length > 40 ? '' : didYouMean(given, words);
    findings.add('unknown-word', path, `"${printable(given)}" is not one of the words known here${near}`, {
      fix: `${wayToWrite(schema, path, given)}${orList(words)}`,
    });
    return;
  }
  if ((issue.code === 'too_big' || issue.code === 'too_small') && Array.isArray(given)) {
    const wanted = issue.code === 'too_big' ? issue.maximum : issue.minimum;
    const exact = schemaAt(schema, path) instanceof z.ZodTuple;
    const bound = exact ? '' : issue.code === 'too_big' ? 'at most ' : 'at least ';
    // A list that a decimal comma or a grouped number has split has too many entries.
    const fix =
      exact && issue.code === 'too_big'
        ? `${exampleOf(schema, path)}; a comma separates entries, so write 1200 or 8.5, not 1,200 or 8,5`
        : exampleOf(schema, path);
    findings.add(
      'wrong-type',
      path,
      `${bound}${wanted} ${wanted === 1 ? 'entry is' : 'entries are'} wanted, but ${given.length} ${given.length === 1 ? 'stands' : 'stand'} here`,
      { fix },
    );
    return;
  }
  const wanted = wantedAt(schema, path);
  const quoted = typeof given === 'boolean' && wanted === 'a text';
  const fix = quoted ? `write "${given}" in quotes` : wanted === 'true or false' ? 'write true or false, without quotes' : exampleOf(schema, path);
  findings.add('wrong-type', path, `${wanted} is wanted, but ${kindOf(given)} stands here`, { fix });
}

/** How the advice begins: with the key beside this one that knows the word, for which it was probably meant. */
function wayToWrite(schema: z.ZodObject, path: YamlPath, word: string): string {
  const owner = schemaAt(schema, path.slice(0, -1));
  if (!(owner instanceof z.ZodObject)) return 'write ';
  const key = Object.keys(owner.shape).find((name) => {
    const field = unwrapped(owner.shape[name]);
    return field instanceof z.ZodEnum && field.options.includes(word);
  });
  return key === undefined ? 'write ' : `write "${key}: ${word}" for that, and here `;
}

function reportMissing(schema: z.ZodObject, path: YamlPath, findings: Findings): void {
  // The line that names the kind of file is checked before the schema.
  if (path[0] === 'diewright') return;
  const owner = path.slice(0, -1);
  const key = String(path[path.length - 1]);
  const example = exampleAt(schema, path);
  const fix = example === undefined ? `add "${key}"` : `add "${key}: ${example}"`;
  findings.add('missing-field', path, 'is missing', { fix, part: owner.length === 0 ? 'value' : 'key' });
}

/** `write it like "[238 mm, 142 mm, 46 mm]"`. */
function exampleOf(schema: z.ZodObject, path: YamlPath): string {
  const example = exampleAt(schema, path);
  return example === undefined ? 'write a value' : `write it like "${example}"`;
}

function exampleAt(schema: z.ZodObject, path: YamlPath): string | undefined {
  const example = exampleFor(schemaAt(schema, path));
  return example === undefined ? undefined : flow(example);
}

/** The example given with a schema; for a mapping without one, the examples of the keys that it needs. */
function exampleFor(schema: z.ZodType | undefined): unknown {
  const examples: unknown = schema?.meta()?.examples;
  if (Array.isArray(examples)) return examples[0];
  if (!(schema instanceof z.ZodObject)) return undefined;
  const needed = Object.entries(schema.shape).filter(([, field]) => !(field instanceof z.ZodOptional));
  return Object.fromEntries(needed.map(([key, field]) => [key, exampleFor(field as z.ZodType)]));
}

function wantedAt(schema: z.ZodObject, path: YamlPath): string {
  const wanted = schemaAt(schema, path);
  if (wanted instanceof z.ZodArray || wanted instanceof z.ZodTuple) return 'a list';
  if (wanted instanceof z.ZodObject || wanted instanceof z.ZodRecord) return 'a mapping of keys and values';
  if (wanted instanceof z.ZodBoolean) return 'true or false';
  if (wanted instanceof z.ZodEnum) return 'a word';
  const meta = wanted?.meta();
  if (meta?.['anyOf'] !== undefined) return 'a direction';
  if (Array.isArray(meta?.['type']) && meta['type'][0] === 'number') return 'a number';
  return meta?.['pattern'] === QUANTITY_PATTERN ? 'a number with a unit' : 'a text';
}

function kindOf(given: unknown): string {
  if (Array.isArray(given)) return 'a list';
  if (typeof given === 'object') return 'a mapping';
  if (typeof given === 'boolean') return String(given);
  return 'a text';
}
