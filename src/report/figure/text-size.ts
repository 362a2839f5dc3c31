import { columnsOf } from '../columns.ts';
import { visibleLine } from '../visible.ts';

/**
 * Width of a text in pixels, estimated on the wide side: the reader's system font is not known here. The shares of the
 * font size are those of a broad sans serif, so that a narrower font leaves more air and no font runs over. Characters
 * that act are counted as they are printed, by their names.
 */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const character of visibleLine(text)) width += shareOf(character);
  return width * size;
}

function shareOf(character: string): number {
  if (/[ijlI.,:;']/.test(character)) return 0.34;
  if (/[ ftr()[\]!/\\-]/.test(character)) return 0.42;
  if (/[mwMW%@\u2026]/.test(character)) return 1;
  if (/[A-Z&]/.test(character)) return 0.8;
  if (/[#+<=>^~]/.test(character)) return 0.84;
  if (/[\x20-\x7e]/.test(character)) return 0.64;
  return columnsOf(character) === 2 ? 1.05 : 0.8;
}

/** The text, or its beginning with an ellipsis where it is wider than `width` pixels. */
export function shorten(text: string, width: number, size: number): string {
  if (textWidth(text, size) <= width) return text;
  const characters = [...visibleLine(text)];
  while (characters.length > 1 && textWidth(`${characters.join('')}…`, size) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

/** The text broken at spaces into lines of at most `width` pixels; a word that is wider by itself is shortened. */
export function wrapText(text: string, width: number, size: number): string[] {
  return wrapPieces(visibleLine(text).split(' '), width, size);
}

/** Pieces with spaces between them, in lines of at most `width` pixels; no line breaks within a piece. */
export function wrapPieces(pieces: readonly string[], width: number, size: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of pieces) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line].map((each) => shorten(each, width, size));
}

/** As `wrapText`, in `most` lines at most; the rest of the text goes into the last one, which is cut. */
export function wrapAtMost(text: string, most: number, width: number, size: number): string[] {
  const lines = wrapText(text, width, size);
  if (lines.length <= most) return lines;
  const kept = lines.slice(0, most - 1);
  const last = wordsAfter(text, lines, most - 1);
  return [...kept, shorten(last, width, size)];
}

/** The text without the words of its first lines. A line that was cut holds one word. */
function wordsAfter(text: string, lines: readonly string[], count: number): string {
  const used = lines.slice(0, count).reduce((sum, line) => sum + line.split(' ').length, 0);
  return visibleLine(text).split(' ').slice(used).join(' ');
}
