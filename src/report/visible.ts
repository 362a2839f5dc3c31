import { printable } from '../kernel/printable.ts';

/** Nothing but printed ASCII: most texts, and nothing to look for in them. */
const PLAIN = /^[\x20-\x7e]*$/;

/**
 * Text of the user's that may go to a terminal or a page: line breaks stay, tabs become spaces, and every character that
 * a terminal could act on is named instead (`<U+001B>`).
 */
export function visible(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .split('\n')
    .map((line) => visibleLine(line))
    .join('\n');
}

/** As `visible`, for text that must stay on one line: line breaks become spaces too. */
export function visibleLine(text: string): string {
  if (PLAIN.test(text)) return text;
  return printable(text.replace(/\r?\n|[\t\r]/g, ' '), Number.POSITIVE_INFINITY);
}
