import type { Nodes, Root, RootContent, Table } from 'mdast';

/** Characters of a line on a page of A4 or letter paper, in the small type of a table. */
const MEASURE = 128;

/** About how many lines a tree takes when it is printed: words wrap, and a table gives its widest column what is left. */
export function printedLines(tree: Root): number {
  return tree.children.map(blockLines).reduce((sum, lines) => sum + lines, 0);
}

function blockLines(node: RootContent): number {
  if (node.type === 'table') return tableLines(node);
  if (node.type === 'list') return node.children.map((item) => wrapped(textOf(item), MEASURE)).reduce((sum, lines) => sum + lines, 0);
  if (node.type === 'heading') return 2;
  return wrapped(textOf(node), node.type === 'blockquote' ? MEASURE - 16 : MEASURE);
}

function tableLines(table: Table): number {
  const rows = table.children.map((row) => row.children.map((cell) => textOf(cell).split('\n')));
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.flatMap((row) => (row[column] ?? ['']).map((line) => line.length))) + 2);
  const widest = widths.indexOf(Math.max(...widths));
  const others = widths.filter((_, column) => column !== widest).reduce((sum, width) => sum + width, 0);
  widths[widest] = Math.max(20, Math.min(widths[widest] ?? 0, MEASURE - others));
  return rows
    .map((row) => Math.max(...row.map((lines, column) => lines.map((line) => wrapped(line, (widths[column] ?? MEASURE) - 2)).reduce((sum, n) => sum + n, 0))))
    .reduce((sum, lines) => sum + lines, 0);
}

function wrapped(text: string, width: number): number {
  return Math.max(1, Math.ceil(text.length / width));
}

/** The words of a node; a `<br>` is a line break. */
export function textOf(node: Nodes): string {
  if (node.type === 'html') return node.value === '<br>' ? '\n' : node.value;
  if ('children' in node) return node.children.map((child) => textOf(child as Nodes)).join('');
  return 'value' in node ? node.value : '';
}
