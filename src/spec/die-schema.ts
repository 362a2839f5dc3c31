import * as z from 'zod';
import { accepted, pinned } from './decision-schema.ts';
import { id, prose, quantity, text } from './leaves.ts';
import type { Partly } from './salvage.ts';
import { formatLine, once } from './schema-parts.ts';

/** Most castings of a shot, of all parts together. */
export const MOST_CASTINGS = 64;
/** Most parts of one die. */
const MOST_PARTS = 12;

const entry = () =>
  z.strictObject({
    id: id('left lever').optional(),
    file: text('Part file, seen from the die file', 'left-lever/left-lever.part.yaml'),
    count: quantity('castings', 'Castings of this part in a shot; 1 when absent', '2', { bare: true, whole: true }).optional(),
  });

/** The schema of die files, built when the first one is read. The JSON Schema is generated from it too. */
export const dieSchema = once(() =>
  z
    .strictObject({
      diewright: formatLine('die'),
      die: z
        .strictObject({
          name: text('Name of the die', 'Lever pair'),
          number: text('Number of the die', 'D-117').optional(),
          revision: text('Revision of the die', 'A').optional(),
          note: prose('Anything else worth knowing', 'Replaces D-094').optional(),
        })
        .meta({ description: 'What the die is called', examples: [{ name: 'Lever pair' }] }),
      parts: z
        .array(entry())
        .min(1)
        .max(MOST_PARTS)
        .meta({
          description: 'The parts that are cast in one shot, and how many castings of each; all in one alloy',
          examples: [[{ file: 'left-lever/left-lever.part.yaml', count: 2 }]],
        }),
      pinned: pinned(),
      accepted: accepted(),
    })
    .meta({ title: 'Die description', description: 'A die with several castings, of one part or of several, as diewright reads it' }),
);
export type DieData = z.output<ReturnType<typeof dieSchema>>;
export type DieDraft = Partly<DieData>;
