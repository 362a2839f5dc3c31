let graphemes: Intl.Segmenter | undefined;

/** Columns that a text takes on a terminal with a fixed-width font; the text holds no control characters. */
export function columnsOf(text: string): number {
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  graphemes ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  let columns = 0;
  for (const { segment } of graphemes.segment(text)) columns += widthOf(segment);
  return columns;
}

/** Two columns for East Asian scripts, full-width forms and pictures. The patterns stand here because to read them takes time, and few texts need them. */
function widthOf(grapheme: string): number {
  if (/^(?:\p{Mark}|\u200d|[\ufe00-\ufe0f])/u.test(grapheme)) return 0;
  const wide =
    /(?![\uff61-\uffdc])[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\u3000-\u303f\uff01-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;
  return wide.test(grapheme) ? 2 : 1;
}

/** The text with spaces up to `columns`. */
export function padTo(text: string, columns: number): string {
  return text + ' '.repeat(Math.max(0, columns - columnsOf(text)));
}

/** Rows of cells as aligned columns, two spaces apart, without trailing space. */
export function alignRows(rows: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, columnsOf(cell));
    });
  return rows.map((row) =>
    row
      .map((cell, i) => padTo(cell, widths[i] as number))
      .join('  ')
      .trimEnd(),
  );
}

/** A sentence broken at spaces into lines of at most `width` columns; words are never cut. */
export function wrap(text: string, width: number, indent = ''): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && columnsOf(indent) + columnsOf(line) + 1 + columnsOf(word) > width) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(indent + line);
  return lines;
}
