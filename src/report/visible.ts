import { printable } from '../kernel/printable.ts';

/**
 * Text of the user's that may go to a terminal or a page: line breaks stay, tabs become spaces, and every character that
 * a terminal could act on is named instead (`<U+001B>`).
 */
export function visible(text: string): string {
  return text
    .split('\n')
    .map((line) => visibleLine(line))
    .join('\n');
}

/** As `visible`, for text that must stay on one line: line breaks become spaces. */
export function visibleLine(text: string): string {
  return printable(text.replace(/\s+/g, ' '), Number.POSITIVE_INFINITY);
}
