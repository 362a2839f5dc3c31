import type { Heading, List, Paragraph, Parents, PhrasingContent, Root, Table, TableCell } from 'mdast';
import { gfmTableToMarkdown } from 'mdast-util-gfm-table';
import { defaultHandlers, type Handle, type Options, toMarkdown } from 'mdast-util-to-markdown';

/**
 * GitHub reads `~x~` as struck out and `$x$` as mathematics; neither is in the base grammar, so both are named here. So is the address
 * in angle brackets that does not begin with a letter, such as `<=@a>`, which the library passes over.
 */
const GITHUB_SIGNS: Options = {
  unsafe: [
    { character: '<', after: "[0-9.#$%&'*+=^_`{|}~-]", inConstruct: 'phrasing' },
    { character: '~', inConstruct: 'phrasing' },
    { character: '$', inConstruct: 'phrasing' },
  ],
};

const BULLET = '-';

/** Tables are not padded to equal widths, so that a changed cell changes one line. */
const TABLES = gfmTableToMarkdown({ tablePipeAlign: false });
const libraryCell = TABLES.handlers?.['tableCell'] as Handle;

/**
 * Text in which no character can mean anything to Markdown, wherever it stands: it begins and ends with a letter or digit
 * or the like, and holds no sign that could need an escape. Looking through all rules of escaping for each piece of text
 * takes most of the time of a plan. A test holds both roads to the same text.
 */
const HARMLESS = /^(?!\d+[.)])[^\s!-/:-@[-`{-~](?:[^\r\n\t!#$&*<>@[\\\]^_`{|}~]*[^\s!-/:-@[-`{-~])?$/u;

/** The same inside a table cell, which begins no line: what only matters there may stand at the edges too. */
const HARMLESS_IN_CELL = /^[^\s!#$&*<>@[\\\]^_`{|}~](?:[^\r\n\t!#$&*<>@[\\\]^_`{|}~]*[^\s!#$&*<>@[\\\]^_`{|}~])?$/u;

/** A code span that needs neither a longer fence nor an escaped pipe. */
const HARMLESS_CODE = /^[^\s`|](?:[^\r\n`|]*[^\s`|])?$/u;

/** Text without a sign that could need an escape inside a line; what only matters at its ends may stand there. */
const HARMLESS_INSIDE = /^[^\r\n\t!#$&*<>@[\\\]^_`{|}~]+$/;

/** A line that begins no list, heading, underline or table, and that neither begins nor ends with a space. */
const HARMLESS_LINE = /^(?!\d+[.)]|[\s+\-=:])(?:.*\S)$/u;

const quickText: Handle = (node, parent, state, info) =>
  HARMLESS.test((node as { value: string }).value) ? (node as { value: string }).value : defaultHandlers.text(node, parent, state, info);

const quickTable: Handle = (node, _parent, state, info) => {
  const exit = state.enter('table');
  const rows = (node as Table).children.map((row) => row.children.map((cell) => harmlessCell(cell) ?? libraryCell(cell, row as Parents, state, info)));
  exit();
  const line = (cells: readonly string[]): string => `|${cells.map((cell) => (cell === '' ? ' ' : ` ${cell} `)).join('|')}|`;
  const [head = [], ...body] = rows;
  return [line(head), line(head.map(() => '-')), ...body.map(line)].join('\n');
};

/** A cell of harmless pieces as text, or undefined when the library has to look at it. */
function harmlessCell(cell: TableCell): string | undefined {
  let text = '';
  for (const piece of cell.children) {
    if (piece.type === 'text' && HARMLESS_IN_CELL.test(piece.value)) text += piece.value;
    else if (piece.type === 'inlineCode' && HARMLESS_CODE.test(piece.value)) text += `\`${piece.value}\``;
    else if (piece.type === 'html' && piece.value === '<br>') text += piece.value;
    else return undefined;
  }
  return text;
}

/** A paragraph or heading of harmless pieces as text, or undefined when the library has to look at it. */
function harmlessLine({ children }: Paragraph | Heading): string | undefined {
  let text = '';
  for (const [i, piece] of children.entries()) {
    if (piece.type === 'text' && HARMLESS_INSIDE.test(piece.value)) text += piece.value;
    else if (piece.type === 'inlineCode' && HARMLESS_CODE.test(piece.value) && !text.endsWith('`')) text += `\`${piece.value}\``;
    else if (piece.type === 'strong' && i === 0 && standsApart(children[1])) {
      const words = piece.children.length === 1 ? piece.children[0] : undefined;
      if (words?.type !== 'text' || !HARMLESS.test(words.value)) return undefined;
      text += `**${words.value}**`;
    } else return undefined;
  }
  return HARMLESS_LINE.test(text) ? text : undefined;
}

/** Whether bold words before this need no help to end there: a space or a sign follows, or nothing. */
function standsApart(next: PhrasingContent | undefined): boolean {
  return next === undefined || (next.type === 'text' && /^[ ,.:;()]/.test(next.value));
}

const quickParagraph: Handle = (node, parent, state, info) => harmlessLine(node) ?? defaultHandlers.paragraph(node, parent, state, info);

const quickHeading: Handle = (node, parent, state, info) => {
  const text = harmlessLine(node);
  return text === undefined ? defaultHandlers.heading(node, parent, state, info) : `${'#'.repeat((node as Heading).depth)} ${text}`;
};

/** A list whose items are harmless paragraphs, each with lists of such below it or without, or undefined. */
function harmlessList(list: List): string | undefined {
  if (list.ordered === true || list.spread === true) return undefined;
  const lines: string[] = [];
  for (const { children, spread, checked } of list.children) {
    const [first, below, ...more] = children;
    const text = first?.type === 'paragraph' && spread !== true && checked == null ? harmlessLine(first) : undefined;
    const nested = below?.type === 'list' ? harmlessList(below) : undefined;
    if (text === undefined || more.length > 0 || (below !== undefined && nested === undefined)) return undefined;
    lines.push(`${BULLET} ${text}`);
    if (nested !== undefined) lines.push(...nested.split('\n').map((line) => `  ${line}`));
  }
  return lines.length === 0 ? undefined : lines.join('\n');
}

/** The library sees to lists inside lists, and to a list right after another one, which needs another bullet. */
const quickList: Handle = (node, parent, state, info) => {
  const alone = state.bulletCurrent === undefined && state.bulletLastUsed === undefined;
  const text = alone ? harmlessList(node) : undefined;
  if (text === undefined) return defaultHandlers.list(node, parent, state, info);
  state.bulletLastUsed = BULLET;
  return text;
};

/** The tree as text. */
export function printMarkdown(tree: Root, road: 'quick' | 'library' = 'quick'): string {
  return toMarkdown(tree, {
    bullet: BULLET,
    extensions: [TABLES, GITHUB_SIGNS],
    ...(road === 'quick' ? { handlers: { text: quickText, paragraph: quickParagraph, heading: quickHeading, list: quickList, table: quickTable } } : {}),
  });
}
