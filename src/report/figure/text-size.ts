import { columnsOf } from '../columns.ts';

/**
 * Width of a text in pixels, estimated on the wide side: the reader's system font is not known here. The shares of the
 * font size are those of a broad sans serif, so that a narrower font leaves more air and no font runs over.
 */
export function textWidth(text: string, size: number): number {
  let width = 0;
  for (const character of text) width += shareOf(character);
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
  const characters = [...text];
  while (characters.length > 1 && textWidth(`${characters.join('')}…`, size) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}

/** The text broken at spaces into lines of at most `width` pixels; a word that is wider by itself is shortened. */
export function wrapText(text: string, width: number, size: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line].map((each) => shorten(each, width, size));
}
