import * as z from 'zod';
import { prose, text, word } from './leaves.ts';
import { formatLine, MOST_ENTRIES, once } from './schema-parts.ts';

export const FAIL_ON = ['error', 'warning', 'never'] as const;
export type FailOn = (typeof FAIL_ON)[number];

const adjustment = () =>
  z.strictObject({
    rule: text('Id of a built-in limit', 'clamp/oversized'),
    severity: word(['note', 'warning', 'error', 'off'], 'How grave it is here when the limit does not hold; off: not judged'),
    reason: prose('Why, printed in every plan', 'The cells are bought as they are').pipe(
      z
        .string()
        .refine((value) => value.trim() !== '', { params: { code: 'missing-field', fix: 'say why: every plan prints it' }, error: 'the reason is empty' }),
    ),
  });

/** The schema of project files, built when the first one is read. The JSON Schema is generated from it too. */
export const projectSchema = once(() =>
  z
    .strictObject({
      diewright: formatLine('project'),
      plant: text('File of the plant to plan for, seen from this file', 'plant.yaml').optional(),
      rules: z
        .array(text('A folder of house rules, seen from this file', 'house-rules'))
        .max(MOST_ENTRIES)
        .meta({ description: 'Folders of house rules, laid over the built-in ones in this order', examples: [['house-rules']] })
        .optional(),
      fail_on: word(FAIL_ON, 'Findings of this severity or worse end a run with 1').optional(),
      adjusted: z
        .array(adjustment())
        .max(MOST_ENTRIES)
        .meta({
          description: 'Built-in limits that are graded otherwise here, or switched off',
          examples: [[{ rule: 'clamp/oversized', severity: 'off', reason: 'why' }]],
        })
        .optional(),
    })
    .meta({ title: 'Project file', description: 'diewright.yaml: the settings of a folder of parts and of all folders below it' }),
);
export type ProjectData = z.output<ReturnType<typeof projectSchema>>;
