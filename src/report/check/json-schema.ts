import { SEVERITIES } from '../../kernel/diagnostic.ts';
import { list, object, ref, type Schema, text } from '../json-schema-parts.ts';
import { FINDINGS_FORMAT } from './json.ts';

/** The JSON Schema (2020-12) of what `check --format json` writes. */
export function findingsJsonSchema(): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:diewright:${FINDINGS_FORMAT}`,
    title: 'Findings of a check',
    description: 'What a check of part descriptions, plants and committed plans has found. Paths count from the folder in which it was run.',
    ...object({
      format: { const: FINDINGS_FORMAT },
      tool: object({ name: text('Name of the program'), version: text('Its version') }),
      threshold: { enum: ['error', 'warning', 'never'], description: 'The least severity that fails the run' },
      exit: { enum: [0, 1, 2, 3], description: 'The exit code of the run' },
      summary: object({ files: count('Files that were checked'), ...COUNTS }),
      files: list(object({ file: text('Its path'), judged: { type: 'boolean', description: 'Whether it could be read and judged to the end' }, ...COUNTS })),
      findings: list(ref('finding')),
    }),
    $defs: {
      finding: object(
        {
          code: text('Id of the limit, or another code that "explain" knows'),
          severity: { enum: [...SEVERITIES] },
          message: text(),
          fingerprint: text('The same for the same finding when lines have moved and figures have changed; another for every finding of a run'),
        },
        {
          item: text('The item that it is about, such as the id of a hole'),
          checked: text('The checked file that it came from; absent for a fault of the command line'),
          at: ref('place'),
          notes: list(text('Why')),
          fix: text('What to do'),
          accepted: object({ reason: text('Why the finding is accepted'), where: { enum: ['part', 'baseline'], description: 'Where that is written' } }),
          fault: { const: true, description: 'An input could not be used; such a finding cannot be accepted' },
        },
      ),
      place: object(
        { file: text('Where it stands'), line: position('line'), column: position('column'), endLine: position('line'), endColumn: position('column') },
        { path: text('The path in the file, such as holes[0].depth') },
      ),
    },
  };
}

function count(description: string): Schema {
  return { type: 'integer', minimum: 0, description };
}

function position(of: 'line' | 'column'): Schema {
  const description = of === 'line' ? 'Counted from 1' : 'Counted from 1 in UTF-16 code units; the end is one past the last';
  return { type: 'integer', minimum: 1, description };
}

const COUNTS = {
  errors: count('Errors that are not accepted'),
  warnings: count('Warnings that are not accepted'),
  notes: count('Notes that are not accepted'),
  accepted: count('Accepted findings of any severity'),
};
