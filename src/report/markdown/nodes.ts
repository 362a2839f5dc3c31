import type { Heading, List, ListItem, Paragraph, PhrasingContent, RootContent, Table, TableCell, TableRow } from 'mdast';
import { visible, visibleLine } from '../visible.ts';

/** A piece of running text: words are escaped where they are printed, nodes are taken as they are. */
export type Inline = string | PhrasingContent;

/** Words and nodes as phrasing content. A line break in a word becomes `<br>`, which GitHub allows in a cell too. */
export function phrase(...pieces: readonly Inline[]): PhrasingContent[] {
  return phraseOf(pieces);
}

/** The same, of a list: a plan has some thousand cells, so each is made with no more than it is made of. */
function phraseOf(pieces: readonly Inline[]): PhrasingContent[] {
  const content: PhrasingContent[] = [];
  for (let i = 0; i < pieces.length; i += 1) {
    const piece = pieces[i] as Inline;
    if (typeof piece !== 'string') content.push(piece);
    else if (piece !== '') addWords(content, visible(piece));
  }
  return content;
}

function addWords(content: PhrasingContent[], text: string): void {
  if (!text.includes('\n')) content.push({ type: 'text', value: text });
  else
    for (const [i, line] of text.split('\n').entries()) {
      if (i > 0) content.push(BREAK);
      if (line !== '') content.push({ type: 'text', value: line });
    }
}

export const BREAK: PhrasingContent = { type: 'html', value: '<br>' };

/** Ids, equations, places: set in a fixed-width font, and safe from every other reading. */
export function code(text: string): PhrasingContent {
  return { type: 'inlineCode', value: visibleLine(text) };
}

export function strong(text: string): PhrasingContent {
  return { type: 'strong', children: phrase(text) };
}

/** The pieces with a line break between each two. */
export function onLines(pieces: readonly Inline[]): Inline[] {
  return pieces.flatMap((piece, i) => (i === 0 ? [piece] : [BREAK, piece]));
}

export function paragraph(...pieces: readonly Inline[]): Paragraph {
  return { type: 'paragraph', children: phrase(...pieces) };
}

export function heading(depth: Heading['depth'], ...pieces: readonly Inline[]): Heading {
  return { type: 'heading', depth, children: phrase(...pieces) };
}

export function item(pieces: readonly Inline[], ...below: readonly ListItem['children'][number][]): ListItem {
  return { type: 'listItem', spread: false, children: [paragraph(...pieces), ...below] };
}

export function list(items: readonly ListItem[]): List {
  return { type: 'list', ordered: false, spread: false, children: [...items] };
}

export function table(columns: readonly string[], rows: readonly (readonly (readonly Inline[])[])[]): Table {
  const cell = (pieces: readonly Inline[]): TableCell => ({ type: 'tableCell', children: phraseOf(pieces) });
  const row = (cells: readonly (readonly Inline[])[]): TableRow => ({ type: 'tableRow', children: cells.map(cell) });
  return { type: 'table', children: [row(columns.map((column) => [column])), ...rows.map(row)] };
}

/** A headed part of the plan, or nothing when it has no content. */
export function part(title: string, content: readonly RootContent[]): RootContent[] {
  return content.length === 0 ? [] : [heading(2, title), ...content];
}
