import { type Document, isMap, isScalar, isSeq, type Node, type ParsedNode, parseDocument } from 'yaml';
import type { Diagnostic } from './diagnostic.ts';
import { Place, type SourceText } from './place.ts';
import { documentFaults, textFaults, type YamlFault } from './yaml-faults.ts';
import { keyText, pathText, type YamlPath } from './yaml-path.ts';
import { walkYaml } from './yaml-walk.ts';

export { pathText, type YamlPath } from './yaml-path.ts';

export interface LocatedYamlOptions {
  /** First part of every code: `spec/duplicate-key` or `rules/duplicate-key`. Default `spec`. */
  readonly prefix?: 'spec' | 'rules';
  /** Numbers are given as the text that was written (`1.0`, `007`), not as numbers. Default false. */
  readonly numbersAsText?: boolean;
  readonly limits?: {
    /** Longest text that is read, in UTF-16 code units. Default 1,000,000. */
    readonly characters?: number;
    /** Deepest nesting of lists and mappings. Default 40. */
    readonly depth?: number;
    /** Most findings that are reported of one file. Default 100. */
    readonly findings?: number;
  };
}

/** Plain data of a YAML text, and the place of each piece of it. */
export interface LocatedYaml {
  /** The text that the places count in: as given, without a byte order mark. */
  readonly source: SourceText;
  /** Mapping at the top, or undefined when the text could not be read as one. */
  readonly data: unknown;
  readonly diagnostics: readonly Diagnostic[];
  /** Paths whose data is missing or cut because of a fault that is already reported: say nothing more about them. */
  readonly faulty: readonly YamlPath[];
  /**
   * Place of the value at a path, or of its key. Where nothing stands, the nearest enclosing key or list entry.
   * Offsets are looked up when the place is asked for its position, not here.
   */
  place(path: YamlPath, part?: 'value' | 'key'): Place;
  /** The whole text. */
  readonly whole: Place;
}

/**
 * Reads a YAML 1.2 text (core schema) as plain data. Never throws; every fault of the text becomes a finding with the
 * place where it stands. After a fault of syntax the data is not trusted and not given.
 */
export function readLocatedYaml(given: SourceText, options: LocatedYamlOptions = {}): LocatedYaml {
  const { prefix = 'spec', numbersAsText = false, limits = {} } = options;
  const source: SourceText = { name: given.name, text: normalised(given.text) };
  const whole = new Place(source, '', () => [0, source.text.length]);
  let contents: ParsedNode | null = null;
  const place = (path: YamlPath, part: 'value' | 'key' = 'value'): Place =>
    new Place(source, pathText(path), () => offsetsOf(source.text, contents, path, part));
  const result = (data: unknown, faults: readonly YamlFault[], faulty: readonly YamlPath[] = []): LocatedYaml => ({
    source,
    data,
    faulty,
    place,
    whole,
    diagnostics: toDiagnostics(source, prefix, faults, limits.findings ?? 100),
  });

  const inText = textFaults(source.text, limits.characters ?? 1_000_000);
  if (inText.length > 0) return result(undefined, inText);
  let document: Document.Parsed;
  try {
    // Duplicate keys are found by our own walk: the library compares every key with every other one.
    document = parseDocument(source.text, { version: '1.2', schema: 'core', merge: false, uniqueKeys: false, resolveKnownTags: false, prettyErrors: false });
  } catch {
    const message = 'the file cannot be read as YAML';
    return result(undefined, [{ code: 'yaml-syntax', message, fix: 'check quotes, brackets and indentation', start: 0, end: 0 }]);
  }
  contents = document.contents;
  const depth = limits.depth ?? 40;
  const inDocument = documentFaults(document, source.text);
  if (inDocument.some((fault) => fault.code !== 'too-deep')) return result(undefined, inDocument);
  const walked = walkYaml(contents, source.text, { numbersAsText, depth });
  if (walked.tooDeep !== undefined) return result(undefined, [walked.tooDeep]);
  if (inDocument.length > 0) return result(undefined, inDocument);
  const atTop = topFault(contents, source.text);
  if (atTop !== undefined) return result(undefined, [atTop]);
  return result(walked.data, walked.faults, walked.faulty);
}

/** Without byte order mark, and with lone carriage returns as line breaks, one for one, so that offsets stay. */
function normalised(text: string): string {
  const body = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  return body.includes('\r') ? body.replace(/\r(?!\n)/g, '\n') : body;
}

function topFault(contents: ParsedNode | null, text: string): YamlFault | undefined {
  if (isMap(contents)) return undefined;
  const [start, end] = contents?.range ?? [0, 0];
  if (contents === null || (isScalar(contents) && contents.value === null && text.slice(start, end) === '')) {
    const message = text.trim() === '' ? 'the file is empty' : 'the file holds no keys';
    return { code: 'empty-file', message, fix: 'write keys and values, such as "key: value"', start: 0, end: 0 };
  }
  const colons = isScalar(contents) && /\w:\S/.test(text.slice(start, Math.min(end, start + 200)));
  return {
    code: 'not-a-mapping',
    message: `the file is ${isSeq(contents) ? 'a list' : 'one text'} at the top, but keys with values are wanted`,
    fix: colons ? 'put a space after each colon: "key: value"' : 'write one key on each line at the top: "key: value"',
    start,
    end: start + 1,
  };
}

function toDiagnostics(source: SourceText, prefix: string, faults: readonly YamlFault[], most: number): Diagnostic[] {
  const list = faults.slice(0, most).map(
    (fault): Diagnostic => ({
      code: `${prefix}/${fault.code}`,
      severity: 'error',
      message: fault.message,
      at: new Place(source, pathText(fault.path ?? []), () => [fault.start, fault.end]),
      ...(fault.notes === undefined ? {} : { notes: fault.notes }),
      ...(fault.fix === undefined ? {} : { fix: fault.fix }),
    }),
  );
  if (faults.length > most) {
    const message = `${faults.length - most} further findings in this file are not shown`;
    list.push({ code: `${prefix}/too-many-findings`, severity: 'note', message, at: new Place(source, '', () => [0, 0]) });
  }
  return list;
}

/** Start and end offset of what stands at a path; see `LocatedYaml.place`. */
function offsetsOf(text: string, contents: Node | null, path: YamlPath, part: 'value' | 'key'): readonly [number, number] {
  let node: Node | null = contents;
  let key: Node | null = null;
  let missing = false;
  for (const segment of path) {
    if (isMap(node)) {
      const pair = node.items.find((item) => keyText(item.key as Node | null, text) === segment);
      if (pair === undefined) missing = true;
      else {
        key = pair.key as Node | null;
        node = pair.value as Node | null;
      }
    } else if (isSeq(node) && typeof segment === 'number' && segment < node.items.length) {
      key = null;
      node = node.items[segment] as Node | null;
    } else missing = true;
    if (missing) break;
  }
  const value = span(text, node);
  const ofKey = span(text, key);
  if (ofKey !== undefined && (part === 'key' || missing || value === undefined || value[0] === value[1])) return ofKey;
  if (value === undefined) return [0, 0];
  if (!missing) return value;
  // Not the whole of it: the first key of a mapping with its value, and no more than a line.
  const first = isMap(node) && node.flow !== true ? span(text, node.items[0]?.value as Node | null) : undefined;
  const lineEnd = text.indexOf('\n', value[0]);
  return [value[0], Math.min(first?.[1] ?? value[1], lineEnd === -1 ? value[1] : lineEnd)];
}

/** A node's own text, without the blank space that block collections count in. */
function span(text: string, node: Node | null): readonly [number, number] | undefined {
  if (node?.range == null) return undefined;
  let [start, end] = node.range;
  while (end > start && /\s/.test(text[end - 1] as string)) end -= 1;
  if (start > text.length) start = end = text.length;
  return [start, end];
}
