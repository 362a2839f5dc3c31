import { jsonText } from '../json-text.ts';
import type { Replanning } from './head.ts';

export type { Head } from './head.ts';

export const REPLAN_FORMAT = 'replan/1';

/** A replanning as one JSON document: the whole set first, then each part; numbers as they were worked out, with their units beside them. */
export function replanJson({ head, set, parts, failures }: Replanning): string {
  return jsonText({ format: REPLAN_FORMAT, ...head, set, parts, failures });
}
