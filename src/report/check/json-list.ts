import { jsonText } from '../json-text.ts';

/**
 * A JSON document in pieces: `document` holds one empty list under `key`, which is filled with the items one by one, so that
 * a long list is never one text. The same bytes as if it were written at once.
 */
export function* jsonWithList(document: object, key: string, items: Iterable<object>): Iterable<string> {
  const text = jsonText(document);
  const empty = `"${key}": []`;
  // Quotes inside a text of the document are escaped, so that this stands nowhere else.
  const at = text.lastIndexOf(empty);
  if (at < 0) throw new TypeError(`the document has no empty list "${key}"`);
  const indent = ' '.repeat(at - text.lastIndexOf('\n', at) - 1);
  yield text.slice(0, at + empty.length - 1);
  let first = true;
  for (const item of items) {
    yield `${first ? '' : ','}\n${indent}  ${jsonText(item).trimEnd().replaceAll('\n', `\n${indent}  `)}`;
    first = false;
  }
  yield `${first ? '' : `\n${indent}`}${text.slice(at + empty.length - 1)}`;
}
