import * as z from 'zod';
import { scalar, text } from './leaves.ts';
import { MOST_ENTRIES } from './schema-parts.ts';

/** Name of a plan value, as in `machine.cavities` or `hole.draft[H1]`. */
const VALUE_ID = /^[a-z][a-z0-9-]*\.[a-z][a-z0-9-]*(\[[^[\]]+\])?$/;

/** The list `pinned:` of a part or die. */
export const pinned = () =>
  z
    .record(z.string().regex(VALUE_ID), scalar('The value that is fixed', '42 m/s'))
    .meta({ description: 'Decisions already taken, by the name of the plan value', examples: [{ 'machine.cavities': 1 }] })
    .optional();

/** The list `accepted:` of a part or die. */
export const accepted = () =>
  z
    .array(
      z.strictObject({
        code: text('Code of the finding', 'wall/usual-greatest'),
        item: text('The item that it is about, such as the id of a hole; all of them when absent', 'H1').optional(),
        reason: text('Why it is accepted, and by what authority', 'agreed with the tool shop, inserts are spares'),
      }),
    )
    .max(MOST_ENTRIES)
    .meta({
      description: 'Findings of the plan that are accepted, each with its reason; they are still printed, and do not fail a run',
      examples: [[{ code: 'wall/usual-greatest', reason: 'boss for the bearing' }]],
    })
    .optional();
