import { jsonText } from '../json-text.ts';
import type { Replanning } from './head.ts';

export type { Head } from './head.ts';

export const REPLAN_FORMAT = 'replan/1';

/**
 * A replanning as one JSON document: the whole set first, then each part; numbers as they were worked out, with their units beside
 * them. Given in pieces, for the text of a large set, made in one go, takes several times its room.
 */
export function* replanJson({ head, set, parts, failures }: Replanning): Iterable<string> {
  const frame = jsonText({ format: REPLAN_FORMAT, ...head, set, parts: [], failures });
  const place = frame.indexOf(EMPTY) + EMPTY.length - 1;
  yield frame.slice(0, place);
  for (const [i, part] of parts.entries()) {
    yield `${i === 0 ? '' : ','}\n    ${jsonText(part).trimEnd().replaceAll('\n', '\n    ')}`;
  }
  yield `${parts.length === 0 ? '' : '\n  '}${frame.slice(place)}`;
}

/** How the frame writes its list of parts; texts in it cannot look so, for their quotes are escaped. */
const EMPTY = '\n  "parts": []';
