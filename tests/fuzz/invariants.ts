import { XMLValidator } from 'fast-xml-parser';
import type { Nodes } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import { CHECK_FORMATS, type CheckedFinding, type CheckFormat, type CheckReport, type Diagnostic, renderCheck } from '../../src/index.ts';
import { cpuTime } from '../cpu-time.ts';

/** An invariant that does not hold; the message says which, and where. */
export class Broken extends Error {}

export function must(holds: boolean, what: () => string): asserts holds {
  if (!holds) throw new Broken(what());
}

/** Characters that a terminal, an editor or a page acts on instead of showing. */
const ACTIVE = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]|\p{Surrogate}/u;
const CODE = /^[a-z][a-z0-9-]*(\/[a-z0-9][a-z0-9.-]*)+$/;

/** A text that goes to a terminal or a file: no character in it acts. */
export function soundText(text: string, what: string): void {
  const found = ACTIVE.exec(text);
  must(
    found === null,
    () => `${what} holds ${JSON.stringify(found?.[0])} after ${JSON.stringify(text.slice(Math.max(0, (found?.index ?? 0) - 60), found?.index))}`,
  );
}

const oneLine = (text: string, what: string): void => {
  must(!/[\n\r\t]/.test(text), () => `${what} is no single line: ${JSON.stringify(text)}`);
  soundText(text, what);
};

/** Code, place and message of each finding; the place lies in the text that it names. */
export function soundFindings(findings: readonly Diagnostic[]): void {
  for (const { code, message, item, fix, notes = [], at } of findings) {
    must(CODE.test(code), () => `the code ${JSON.stringify(code)}`);
    must(message.trim() !== '', () => `${code} says nothing`);
    // A fault of a file quotes what stands there, which may be these words; a finding names what the user named.
    const own = item === undefined ? message : message.replaceAll(item, '');
    must(
      /^(spec|rules|set|calc|check)\//.test(code) || !/\b(undefined|NaN|Infinity|null)\b|\[object/.test(own),
      () => `${code} says ${JSON.stringify(message)}`,
    );
    for (const [i, text] of [message, fix ?? '', ...notes].entries()) oneLine(text, `${code}, text ${i}`);
    // A finding of a plan that hangs on no field stands at the whole file, which a check then says.
    must(at !== undefined || /^(?!spec|rules|set)/.test(code), () => `${code} has no place: ${message}`);
    if (at === undefined) continue;
    const { line, column, endLine, endColumn } = at.position();
    const lines = at.source.text.split('\n');
    must(line >= 1 && line <= lines.length, () => `${code} stands on line ${line} of ${lines.length}`);
    must(column >= 1 && column <= (lines[line - 1] as string).length + 1, () => `${code} stands in column ${column} of line ${line}`);
    must(endLine > line || (endLine === line && endColumn >= column), () => `${code} ends before it begins`);
  }
}

/** Every tag and address that Markdown has after it was read; what the user wrote must not add to them. */
function walk(node: Nodes, visit: (node: Nodes) => void): void {
  visit(node);
  if ('children' in node) for (const child of node.children) walk(child as Nodes, visit);
}

/** Time spent on reading back, which is none of the program's. */
export const reading = { ms: 0 };

function readBack<T>(read: () => T): T {
  const start = cpuTime();
  try {
    return read();
  } finally {
    reading.ms += cpuTime() - start;
  }
}

export function soundMarkdown(text: string, what: string): void {
  soundText(text, what);
  readBack(() => soundTree(text, what));
}

function soundTree(text: string, what: string): void {
  const tree = fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] });
  walk(tree, (node) => {
    if (node.type === 'html') must(/^<br>$/.test(node.value), () => `${what} holds the tag ${JSON.stringify(node.value)}`);
    if (node.type === 'link' || node.type === 'image') must(/^[^:/\\][^:\\]*$/.test(node.url), () => `${what} leads to ${JSON.stringify(node.url)}`);
    must(!['definition', 'linkReference', 'imageReference'].includes(node.type), () => `${what} holds a ${node.type}`);
    if (node.type === 'table')
      for (const row of node.children) must(row.children.length === node.children[0]?.children.length, () => `${what} has a row of another width`);
  });
}

export function soundXml(text: string, what: string): void {
  soundText(text, what);
  const valid = readBack(() => XMLValidator.validate(text));
  must(valid === true, () => `${what} is no XML: ${JSON.stringify(valid)}`);
}

/** The drawn figures hold no script, no foreign content and no address but the name of the language. */
export function soundSvg(text: string, what: string): void {
  soundXml(text, what);
  const tags = new Set([...text.matchAll(/<([a-zA-Z][\w:-]*)/g)].map(([, tag]) => tag as string));
  for (const tag of ['script', 'foreignObject', 'image', 'a', 'use', 'iframe']) must(!tags.has(tag), () => `${what} holds <${tag}>`);
  must(!/<[^>]*\son[a-z]+\s*=/i.test(text), () => `${what} holds a handler`);
}

/** Rows of RFC 4180; in none of the cells does a spreadsheet find something to work out, whichever sign it splits at. */
export function soundCsv(text: string, what: string): void {
  soundText(text.replaceAll('\r\n', '\n'), what);
  for (const line of text.split(/\r\n/)) {
    for (const cell of line.split(/[,;\t]/)) {
      const bare = cell.replace(/^[\s"]+/, '');
      must(
        !/^[=+\-@\uff1d\uff0b\uff0d\uff20]/.test(bare) || /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?"?$/.test(bare),
        () => `${what} has the cell ${JSON.stringify(cell)}`,
      );
    }
  }
}

const GITHUB = /^::(error|warning|notice) ([a-zA-Z]+=[^:,\r\n]*)(,[a-zA-Z]+=[^:,\r\n]*)*::[^\r\n]*$/;

/** The findings in every format, each read back. */
export async function soundReport(findings: readonly CheckedFinding[], report: Omit<CheckReport, 'findings'>): Promise<void> {
  for (const format of CHECK_FORMATS) soundCheckText(format, [...(await renderCheck(format, { ...report, findings }))].join(''), findings.length);
}

export function soundCheckText(format: CheckFormat, text: string, count: number): void {
  if (format === 'text') soundText(text, 'the text');
  else if (format === 'markdown') soundMarkdown(text, 'the summary');
  else if (format === 'junit') soundXml(text, 'the JUnit report');
  else if (format === 'github') soundAnnotations(text, count);
  else soundJson(text, format);
}

function soundAnnotations(text: string, count: number): void {
  soundText(text, 'the annotations');
  const lines = text.split('\n').slice(0, -1);
  must(lines.length === count + 1, () => `${count} findings give ${lines.length} lines of annotations`);
  for (const line of lines.slice(0, -1)) must(GITHUB.test(line), () => `the annotation ${JSON.stringify(line)}`);
  must(/^\d+ files? checked: /.test(lines.at(-1) as string), () => `the last line is ${JSON.stringify(lines.at(-1))}`);
}

/** JSON in which nothing acts, neither written out nor, in the texts of ours, escaped. */
export function soundJson(text: string, what: string): unknown {
  soundText(text, what);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Broken(`${what} is no JSON: ${(error as Error).message}`);
  }
}
