/**
 * Characters that a terminal, an editor or a table could act on instead of showing: control characters (but not tab and
 * line break), line and paragraph separators, direction marks and overrides, lone surrogates.
 */
const ACTIVE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff\ud800-\udfff\ufffe\uffff]/u;
const NOT_SHOWN = new RegExp(`[\\t\\n\\r]|${ACTIVE.source}`, 'gu');

/** The first such character of a text, as `U+001B`, or undefined when there is none. */
export function activeCharacter(text: string): string | undefined {
  const found = ACTIVE.exec(text);
  return found === null ? undefined : codePoint(found[0]);
}

/** The user's text as a message can quote it: on one line, cut to `most` characters, with no character that acts. */
export function printable(text: string, most = 60): string {
  const characters = [...text.slice(0, 2 * most + 2)];
  const cut = characters.length > most ? `${characters.slice(0, most - 1).join('')}…` : characters.join('');
  return cut.replace(NOT_SHOWN, (c) => `<${codePoint(c)}>`);
}

/** A message that may quote anything, whole, on one line and with no character that acts. */
export function oneLine(text: string): string {
  return printable(text.replace(/\s*[\r\n]\s*/g, ' '), Number.POSITIVE_INFINITY);
}

/** `U+001B`. */
export function codePoint(character: string): string {
  return `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
