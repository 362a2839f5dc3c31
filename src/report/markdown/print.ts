import type { Parents, Root, Table, TableCell } from 'mdast';
import { gfmTableToMarkdown } from 'mdast-util-gfm-table';
import { defaultHandlers, type Handle, type Options, toMarkdown } from 'mdast-util-to-markdown';

/** GitHub reads `~x~` as struck out and `$x$` as mathematics; neither is in the base grammar, so both are named here. */
const GITHUB_SIGNS: Options = {
  unsafe: [
    { character: '~', inConstruct: 'phrasing' },
    { character: '$', inConstruct: 'phrasing' },
  ],
};

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

/** The tree as text. */
export function printMarkdown(tree: Root, road: 'quick' | 'library' = 'quick'): string {
  return toMarkdown(tree, {
    bullet: '-',
    extensions: [TABLES, GITHUB_SIGNS],
    ...(road === 'quick' ? { handlers: { text: quickText, table: quickTable } } : {}),
  });
}
