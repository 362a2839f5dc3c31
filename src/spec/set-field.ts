import { type Document, isCollection, isMap, isScalar, isSeq, type Node, type Pair, parseDocument, visit, type YAMLMap } from 'yaml';
import type { Diagnostic } from '../kernel/diagnostic.ts';
import { Place, type SourceText } from '../kernel/place.ts';
import { nearestWord } from '../kernel/spelling.ts';
import { keyText } from '../kernel/yaml-path.ts';
import { jsonSchema } from './json-schema.ts';
import { type FieldSchema, readSetPath, type SetStep } from './set-path.ts';

const YAML = { version: '1.2', schema: 'core', uniqueKeys: false, prettyErrors: false } as const;

/**
 * The text of a part description with fields set by `path=value` arguments. Only the value's own characters change, and
 * a field that was absent gets a line of its own or a place in its flow mapping, so that findings still point at the
 * right words. A text that is not YAML comes back as it was: the reader says what is wrong with it.
 */
export function setFields(source: SourceText, settings: readonly string[]): { readonly source: SourceText; readonly diagnostics: readonly Diagnostic[] } {
  let { text } = source;
  const diagnostics: Diagnostic[] = [];
  for (const setting of settings) {
    const done = setField(text, { name: '--set', text: setting });
    if ('fault' in done) diagnostics.push(done.fault);
    else text = done.text;
  }
  return { source: { name: source.name, text }, diagnostics };
}

type Done = { readonly text: string } | { readonly fault: Diagnostic };

function setField(text: string, argument: SourceText): Done {
  const equals = argument.text.indexOf('=');
  const fault = (code: string, from: number, message: string, fix: string): Done => ({
    fault: { code: `set/${code}`, severity: 'error', message, fix, at: new Place(argument, 'set', () => [from, argument.text.length]) },
  });
  if (equals < 1) return fault('form', 0, 'a setting needs a path and a value', 'write path=value, such as geometry.wall.nominal="3 mm"');
  const path = readSetPath(argument, argument.text.slice(0, equals).trim(), jsonSchema('part') as FieldSchema);
  if ('fault' in path) return path;
  const value = flowText(argument.text.slice(equals + 1));
  if (value === undefined) return fault('value', equals + 1, 'the value is not one YAML value', 'write one word, number, quantity, list or mapping');
  const document = parseDocument(text, YAML);
  if (document.errors.length > 0) return { text };
  const edited = edit(text, document.contents, path.steps, value);
  if (typeof edited === 'string') return { text: edited };
  return fault('unknown-item', 0, edited.message, edited.fix);
}

/** A value as it can stand in a block or in a flow mapping: numbers and words like `true` as typed, texts in quotes. */
function flowText(typed: string): string | undefined {
  const document = parseDocument(typed, YAML);
  const node = document.contents as Node | null;
  if (document.errors.length > 0 || node === null || isOdd(document)) return undefined;
  if (!isScalar(node)) return isCollection(node) ? JSON.stringify(node.toJS(document)) : undefined;
  if (typeof node.value === 'string') return JSON.stringify(node.value);
  return node.source === undefined || node.source === '' ? undefined : node.source;
}

/** Aliases, anchors, tags and keys that are no word, which no file of ours has either. */
function isOdd(document: Document): boolean {
  let odd = false;
  visit(document, {
    Alias: () => {
      odd = true;
    },
    Value: (_, { anchor, tag }) => {
      odd ||= anchor !== undefined || tag !== undefined;
    },
    Pair: (_, { key }) => {
      odd ||= !isScalar(key);
    },
  });
  return odd;
}

function edit(text: string, root: Node | null, steps: readonly SetStep[], value: string): string | { readonly message: string; readonly fix: string } {
  let node: Node | null = root;
  for (const [i, step] of steps.entries()) {
    if ('key' in step) {
      if (!isMap(node)) return text;
      const pair: Pair | undefined = node.items.find((item) => keyText(item.key as Node | null, text) === step.key);
      const rest = steps.slice(i + 1);
      if (pair === undefined) return absentEntry(rest) ?? insert(text, node, step.key, wrapped(rest, value));
      const next = pair.value as Node | null;
      if (rest.length > 0 && (next === null || (isScalar(next) && next.value === null))) return absentEntry(rest) ?? replace(text, pair, wrapped(rest, value));
      if (rest.length === 0) return replace(text, pair, value);
      node = next;
    } else {
      if (!isSeq(node)) return text;
      const ids = node.items.map((item, position) => (isMap(item) ? String(item.get('id') ?? position) : String(position)));
      const index = ids.includes(step.entry) ? ids.indexOf(step.entry) : /^\d+$/.test(step.entry) ? Number(step.entry) : -1;
      const found = node.items[index] as Node | undefined;
      if (found === undefined) {
        const near = nearestWord(step.entry, ids);
        return {
          message: `the list has no entry "${step.entry}"${near === undefined ? '' : `; did you mean "${near}"?`}`,
          fix: ids.length === 0 ? 'the list is empty' : `its entries are ${ids.join(', ')}`,
        };
      }
      if (i === steps.length - 1) return splice(text, found, value);
      node = found;
    }
  }
  return text;
}

/** A setting fills gaps in mappings but makes no new list. */
function absentEntry(rest: readonly SetStep[]): { readonly message: string; readonly fix: string } | undefined {
  const entry = rest.find((step) => 'entry' in step);
  return entry === undefined
    ? undefined
    : { message: `the file has no such list, so no entry "${(entry as { entry: string }).entry}"`, fix: 'write the list into the file' };
}

/** The value below keys that are absent too: `{ nominal: "3 mm" }`. */
function wrapped(rest: readonly SetStep[], value: string): string {
  return rest.reduceRight((inner, step) => ('key' in step ? `{ ${keyWritten(step.key)}: ${inner} }` : inner), value);
}

function keyWritten(key: string): string {
  return /^[A-Za-z_][\w.-]*$/.test(key) ? key : JSON.stringify(key);
}

/** The value of a key that is there. */
function replace(text: string, pair: Pair, value: string): string {
  const node = pair.value as Node | null;
  if (node?.range != null && node.range[1] > node.range[0]) return splice(text, node, value);
  const colon = text.indexOf(':', (pair.key as Node).range?.[1] ?? 0);
  return `${text.slice(0, colon + 1)} ${value}${text.slice(colon + 1)}`;
}

function splice(text: string, node: Node, value: string): string {
  const [start, end] = span(text, node);
  return text.slice(0, start) + inStyleOf(node, value) + text.slice(end);
}

/** A text in the quotes that the old one had, or without, so that setting a field back gives the file back as it was. */
function inStyleOf(node: Node, value: string): string {
  if (!isScalar(node) || !value.startsWith('"')) return value;
  const word = JSON.parse(value) as string;
  if (node.type === 'PLAIN' && standsPlain(word)) return word;
  return node.type === 'QUOTE_SINGLE' && !/[\u0000-\u001f]/.test(word) ? `'${word.replaceAll("'", "''")}'` : value;
}

/** Whether a text means itself without quotes, in braces too. */
function standsPlain(word: string): boolean {
  const document = parseDocument(`{ a: ${word} }`, YAML);
  const map = document.contents;
  return document.errors.length === 0 && isMap(map) && map.items.length === 1 && map.comment == null && (map.get('a') as unknown) === word;
}

/** A new key at the end of a mapping: in its braces, or on a line of its own below its last line. */
function insert(text: string, map: YAMLMap, key: string, value: string): string {
  const entry = `${keyWritten(key)}: ${value}`;
  const last = map.items.at(-1);
  const end =
    last === undefined ? 0 : Math.max(...[last.key, last.value].map((node) => ((node as Node | null)?.range == null ? 0 : span(text, node as Node)[1])));
  if (map.flow === true) {
    const open = (map.range?.[0] ?? 0) + 1;
    return last === undefined ? `${text.slice(0, open)} ${entry} ${text.slice(open)}` : `${text.slice(0, end)}, ${entry}${text.slice(end)}`;
  }
  const first = (map.items[0]?.key as Node | undefined)?.range?.[0] ?? 0;
  const indent = first - (text.lastIndexOf('\n', first - 1) + 1);
  const newline = text.indexOf('\n', end);
  const at = newline < 0 ? text.length : newline - (text[newline - 1] === '\r' ? 1 : 0);
  return `${text.slice(0, at)}\n${' '.repeat(indent)}${entry}${text.slice(at)}`;
}

/** A node's own characters, without the blank space and comments that block collections end with. */
function span(text: string, node: Node): readonly [number, number] {
  let [start, end] = node.range as [number, number, number];
  if (isCollection(node) && node.flow !== true) {
    const lastNodes = node.items.flatMap((item) =>
      isScalar(item) || isCollection(item) ? [item as Node] : [(item as Pair).key as Node, (item as Pair).value as Node | null],
    );
    end = Math.max(start, ...lastNodes.flatMap((child) => (child?.range == null ? [] : [span(text, child)[1]])));
  }
  while (end > start && /\s/.test(text[end - 1] as string)) end -= 1;
  return [start, end];
}
