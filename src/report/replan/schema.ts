import { list, object, ref, type Schema, text } from '../json-schema-parts.ts';
import { REPLAN_FORMAT } from './json.ts';

const count: Schema = { type: 'integer', minimum: 0 };
const number = (description?: string): Schema => (description === undefined ? { type: 'number' } : { type: 'number', description });

/** The JSON Schema (2020-12) of what `replan --format json` writes. */
export function replanJsonSchema(): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: `urn:diewright:${REPLAN_FORMAT}`,
    title: 'Replanning',
    description: 'What another alloy, plant or field changes: for a set of parts and dies with several parts, and one by one in the order of their files.',
    ...object({
      format: { const: REPLAN_FORMAT },
      tool: object({ name: text('Name of the program'), version: text('Its version') }),
      standing: text('What kind of document this is'),
      settings: list(text('Field and value of the plans after, as given')),
      before: { enum: ['made', 'committed'], description: 'Where the plans before come from' },
      sameCavities: { type: 'boolean', description: 'The count of cavities of the plan before was pinned' },
      leastChange: number('Numbers that change by less, in per cent, are counted and not listed'),
      set: ref('set'),
      parts: list(ref('part')),
      failures: list(object({ file: text(), message: text('The first fault'), code: text() })),
    }),
    $defs: { ...setDefinitions(), ...partDefinitions() },
  };
}

function setDefinitions(): Readonly<Record<string, Schema>> {
  const counted = { parts: count, castings: number('Castings a year'), withoutVolume: { ...count, description: 'Parts that give no yearly volume' } };
  const pair = object({ before: text(), after: text(), parts: count });
  const load = object({ parts: count, hours: number('Machine hours a year'), machines: number('Machines at full use of their hours') });
  const leftOut = { ...count, description: 'Parts of the set, or of those concerned, that are not in the sum' };
  return {
    set: object(
      {
        compared: object(counted),
        failed: count,
        sharedDies: { ...count, description: 'Of those compared, dies with several parts; each counts as one part, with all its castings' },
        alloys: list(pair),
        plants: list(pair),
        standings: list(ref('count')),
        moves: list(ref('count')),
        dies: list(ref('count')),
        totals: list(
          object(
            { id: text(), title: text(), unit: text(), before: number(), after: number(), parts: count, leftOut },
            { percent: number('Change in per cent of what was before') },
          ),
        ),
        machines: list(object({ machine: text(), before: load, after: load })),
        investment: list(object({ id: text('Value of the plans after that is added up'), title: text(), amount: number(), parts: count, leftOut })),
        stoppers: list(object({ code: text('Id of a limit'), title: text(), parts: count })),
      },
      { currency: text('Of all sums of money') },
    ),
    count: object({ id: text(), title: text(), ...counted }),
  };
}

function partDefinitions(): Readonly<Record<string, Schema>> {
  const findings = list(ref('finding'));
  const titles = list(text());
  return {
    part: object(
      {
        file: text(),
        part: object({ name: text() }, { number: text(), revision: text() }),
        before: ref('side'),
        after: ref('side'),
        standing: { enum: ['stays castable', 'no longer castable', 'becomes castable', 'not castable before or after'] },
        remarks: list(text()),
        appeared: findings,
        vanished: findings,
        groups: list(object({ id: text(), title: text(), changes: list(ref('change')) })),
        leftOut: object({ small: count, further: count }),
        cautions: object({ appeared: titles, vanished: titles }),
      },
      {
        perYear: number('Castings a year; of a die with several parts the sets of castings'),
        castings: { ...count, description: 'Castings of a set; of a die with several parts only' },
        parts: { ...list(ref('part')), description: 'Of a die with several parts, what changes in each besides what changes for the whole die' },
        die: ref('die'),
        dieMissing: text('Why the existing die is not judged'),
      },
    ),
    side: object(
      {
        alloy: text(),
        family: text(),
        plant: text(),
        castable: { type: 'boolean', description: 'The plan breaks no rule whose breach is an error; if it does, its figures are those of the nearest miss' },
        errors: count,
        figures: { type: 'object', additionalProperties: number(), description: 'By id of the value, in its unit' },
      },
      { kind: text(), machine: text(), steel: text(), currency: text() },
    ),
    finding: object({ code: text(), title: text(), severity: { enum: ['error', 'warning', 'note'] }, message: text() }, { item: text() }),
    change: object({ id: text('Id of a value or a decision'), title: text() }, { before: ref('shown'), after: ref('shown'), because: text('Of a decision') }),
    shown: { oneOf: [object({ word: text() }), object({ value: number(), unit: text() }, { decimals: count })] },
    die: object({
      verdict: { enum: ['as it is', 'recut', 'new inserts', 'new die', 'not judged'] },
      because: text(),
      elements: list(
        object({
          id: text('Id of a decision table'),
          title: text(),
          verdict: text(),
          stays: { type: 'boolean', description: 'Nothing is to be done to it' },
          because: text(),
          values: list(object({ id: text(), title: text(), shown: ref('shown') })),
        }),
      ),
      unchecked: list(object({ title: text(), missing: text() })),
    }),
  };
}
