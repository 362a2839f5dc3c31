import { type Document, isMap, isScalar, isSeq, type Node, type YAMLError } from 'yaml';
import { codePoint } from './printable.ts';
import type { YamlPath } from './yaml-path.ts';

/** A fault of the text as YAML, with the offsets where it stands. */
export interface YamlFault {
  readonly code:
    | 'yaml-syntax'
    | 'duplicate-key'
    | 'tab-indentation'
    | 'anchor-or-alias'
    | 'several-documents'
    | 'empty-file'
    | 'too-large'
    | 'not-a-mapping'
    | 'tag'
    | 'control-character'
    | 'too-deep'
    | 'complex-key'
    | 'directive'
    | 'not-utf8';
  readonly message: string;
  readonly fix?: string;
  readonly notes?: readonly string[];
  readonly start: number;
  readonly end: number;
  readonly path?: YamlPath;
}

/** Everything outside what YAML 1.2 calls printable (chapter 5.1). */
const NOT_PRINTABLE = /[^\t\n\r\x20-\x7e\x85\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u;

/** Faults that can be seen before the text is read as YAML; any of them stops the reading. */
export function textFaults(text: string, most: number): YamlFault[] {
  if (text.length > most) {
    const message = `the file has ${text.length} characters, more than the ${most} that are read`;
    return [{ code: 'too-large', message, fix: 'check that it is the right file, or split it', start: 0, end: 0 }];
  }
  const control = NOT_PRINTABLE.exec(text);
  if (control !== null) {
    const nul = control[0] === '\u0000';
    const fix = nul ? 'save the file as UTF-8 text' : 'remove it';
    return [
      {
        code: 'control-character',
        message: `the file holds the control character ${codePoint(control[0])}`,
        fix,
        start: control.index,
        end: control.index + control[0].length,
      },
    ];
  }
  const replacement = text.indexOf('\ufffd');
  if (replacement !== -1) {
    return [
      {
        code: 'not-utf8',
        message: 'the file is not UTF-8 text: a character could not be read',
        fix: 'save the file in the encoding UTF-8',
        start: replacement,
        end: replacement + 1,
      },
    ];
  }
  const directive = directiveAt(text);
  if (directive !== undefined) {
    return [
      { code: 'directive', message: 'a directive (a line that begins with %) is not read', fix: 'remove the line', start: directive, end: directive + 1 },
    ];
  }
  return [];
}

/** Offset of a `%` that begins the first line which is neither blank nor a comment. */
function directiveAt(text: string): number | undefined {
  for (let start = 0; start < text.length; ) {
    if (text[start] === '%') return start;
    const newline = text.indexOf('\n', start);
    const end = newline === -1 ? text.length : newline;
    if (!/^\s*(#|$)/.test(text.slice(start, Math.min(end, start + 1000)))) return undefined;
    start = end + 1;
  }
  return undefined;
}

/**
 * The library's errors in plain words. One slip often upsets everything after it, so of the errors of structure only
 * the first is reported; faults that stay where they are (tabs, escapes, forbidden first characters) are all reported.
 */
export function documentFaults(document: Document.Parsed, text: string): YamlFault[] {
  const errors = [...document.errors].sort((a, b) => a.pos[0] - b.pos[0]);
  if (errors.length === 0) return [];
  if (errors.some((error) => error.code === 'RESOURCE_EXHAUSTION')) {
    // Where the library gives up depends on the memory at hand, so the place is the start of the file.
    return [{ code: 'too-deep', message: 'lists and mappings are nested too deep', fix: 'check brackets and indentation', start: 0, end: 0 }];
  }
  const tabs = errors.flatMap((error) => tabFault(error, text));
  if (tabs.length > 0) return once(tabs);
  const faults: YamlFault[] = [];
  let structure = false;
  for (const [i, error] of errors.entries()) {
    const local = localFault(error, text);
    if (local !== undefined) faults.push(local);
    else if (!structure) {
      structure = true;
      const others = errors.slice(i + 1).filter((other) => other.pos[0] === error.pos[0]);
      faults.push(structureFault(error, others, text, document.contents));
    }
  }
  return once(faults);
}

function once(faults: readonly YamlFault[]): YamlFault[] {
  const seen = new Set<string>();
  return faults.filter((fault) => {
    const key = `${fault.code} ${fault.start}`;
    return !seen.has(key) && seen.add(key);
  });
}

function tabFault(error: YAMLError, text: string): YamlFault[] {
  if (error.code !== 'TAB_AS_INDENT' && error.code !== 'BAD_INDENT') return [];
  const at = error.pos[0];
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  const indentation = /^[ \t]*/.exec(text.slice(lineStart, lineStart + 1000))?.[0] ?? '';
  const tab = indentation.indexOf('\t');
  if (tab === -1 && error.code === 'BAD_INDENT') return [];
  const start = tab === -1 ? at : lineStart + tab;
  return [{ code: 'tab-indentation', message: 'the line is indented with a tab', fix: 'indent with spaces', start, end: start + 1 }];
}

/** Faults that leave the rest of the text readable. */
function localFault(error: YAMLError, text: string): YamlFault | undefined {
  const [start, end] = error.pos;
  const fault = (code: YamlFault['code'], message: string, fix: string): YamlFault => ({ code, message, fix, start, end });
  switch (error.code) {
    case 'MULTIPLE_DOCS':
      return { ...fault('several-documents', 'a second document begins here', 'keep one document in a file, and remove the line "---"'), end: start + 3 };
    case 'TAG_RESOLVE_FAILED':
    case 'MULTIPLE_TAGS':
    case 'BAD_COLLECTION_TYPE':
      return fault('tag', 'tags are not read', 'write the plain value without a tag');
    case 'BAD_ALIAS':
    case 'ALIAS_PROPS':
    case 'MULTIPLE_ANCHORS':
      return fault('anchor-or-alias', 'anchors and aliases are not read', 'write the value out in full here');
    case 'BAD_DIRECTIVE':
      return fault('directive', 'a directive (a line that begins with %) is not read', 'remove the line');
    case 'BAD_SCALAR_START':
      return fault('yaml-syntax', `a text cannot begin with "${text[start] ?? ''}" outside quotes`, 'put the text in quotes');
    case 'BAD_DQ_ESCAPE':
      return fault(
        'yaml-syntax',
        'a backslash in double quotes is followed by a character that it has no meaning with',
        'use single quotes, or write the backslash twice',
      );
    default:
      return /^Comments must/.test(error.message)
        ? fault('yaml-syntax', 'the # of a comment needs a space before it', 'put a space before the #, or put the text in quotes')
        : undefined;
  }
}

function structureFault(error: YAMLError, others: readonly YAMLError[], text: string, contents: Node | null): YamlFault {
  const [start, end] = error.pos;
  const fault = (message: string, fix: string, at = start): YamlFault => ({
    code: 'yaml-syntax',
    message,
    fix,
    start: Math.min(at, text.length),
    end: Math.min(Math.max(at + 1, at === start ? end : 0), text.length),
  });
  const { code, message } = error;
  if (/closing .quote/.test(message)) {
    return fault(
      'the quote that opens here is not closed',
      'add the closing quote',
      unclosed(contents, text, (at) => text[at] === '"' || text[at] === "'") ?? start,
    );
  }
  if (/must be sufficiently indented|must end with a|^Expected flow/.test(message)) {
    const open = unclosed(contents, text, (at) => text[at] === '[' || text[at] === '{') ?? start;
    const mark = text[open] === '{' ? '}' : ']';
    return fault(
      `the "${text[open] ?? ''}" that opens here is not closed`,
      `add the "${mark}", and indent its lines further than the line that it opens on`,
      open,
    );
  }
  if (code === 'BLOCK_AS_IMPLICIT_KEY' && others.some((other) => other.code === 'MULTILINE_IMPLICIT_KEY')) {
    const next = /\n\s*/.exec(text.slice(start));
    return fault(
      'the line is indented further than the one above, which has a value already',
      'indent it like the line above',
      next === null ? start : start + next.index + next[0].length,
    );
  }
  if (code === 'BLOCK_AS_IMPLICIT_KEY')
    return fault('a second colon with a space after it stands in this line', 'put the text in quotes, or begin the inner keys on a new line, indented further');
  if (code === 'BLOCK_IN_FLOW' || /^Missing ,/.test(message))
    return fault('a comma or a closing bracket is missing', 'put a comma between the entries inside { } or [ ]; a text that holds ": " stands in quotes');
  if (code === 'MULTILINE_IMPLICIT_KEY' || /^Implicit map keys/.test(message)) {
    if (text[start] !== '-') return fault('the line has no colon between a key and a value', 'write "key: value"');
    return /\s/.test(text[start + 1] ?? '')
      ? fault(
          'a list entry with a dash stands where none belongs',
          'begin the list on a new line under its key, indented; inside [ ] write entries without dashes',
        )
      : fault('the dash of a list entry needs a space after it', 'write "- " before the entry');
  }
  if (/^Sequence item/.test(message))
    return fault('the line neither begins a list entry nor lines up with the entry above', 'begin it with "- ", or indent it like the keys above');
  if (code === 'BAD_INDENT')
    return fault('the line is indented differently from the lines that it belongs with', 'indent it like the line above or like the key that it belongs to');
  if (/Unexpected flow-(map|seq)-end/.test(message))
    return fault(`a closing "${text[start] ?? ''}" stands here without an opening one`, 'remove it, or add the opening one');
  if (/Unexpected (,|empty item)/.test(message)) return fault('a comma stands here with no entry before it', 'remove the comma, or write the entry');
  if (/same line with key/.test(message))
    return fault('a list entry cannot begin on the line of its key', 'begin it on a new line, indented, or write the list in [ ]');
  if (/at node end/.test(message))
    return fault('text follows here after the end of the value', 'put the whole value in one pair of quotes, or remove the rest');
  if (code === 'KEY_OVER_1024_CHARS') return fault('the key is longer than 1024 characters', 'shorten it');
  return fault('the text cannot be read as YAML from here on', 'check quotes, brackets and indentation here and on the line above');
}

/** Start of the last node that opens with such a character and does not end with its counterpart. */
function unclosed(root: Node | null, text: string, opens: (at: number) => boolean): number | undefined {
  let found: number | undefined;
  const pending: (Node | null)[] = [root];
  for (let node = pending.pop(); node !== undefined; node = pending.pop()) {
    if (node?.range == null) continue;
    const [start, end] = node.range;
    if (opens(start) && (found === undefined || start > found)) {
      const closing = { '[': ']', '{': '}' }[text[start] as string] ?? text[start];
      if (end - start < 2 || text[end - 1] !== closing) found = start;
    }
    if (isMap(node)) for (const pair of node.items) pending.push(pair.key as Node | null, pair.value as Node | null);
    else if (isSeq(node)) for (const item of node.items) pending.push(item as Node | null);
    else if (!isScalar(node)) continue;
  }
  return found;
}
