import { list, object, recordOf, ref, text } from './json-schema-parts.ts';

const DRAFT = 'https://json-schema.org/draft/2020-12/schema';
const HOW = 'Numbers stand in values (and in lines and columns) only; everything else refers to them by id.';

/** The JSON Schema (2020-12) of what `--format json` writes, for one plan of a part. */
export function planJsonSchema(): object {
  return {
    $schema: DRAFT,
    $id: 'urn:diewright:plan/1',
    title: 'Casting plan',
    description: `A casting plan. ${HOW}`,
    ...planObject(),
    $defs: DEFINITIONS,
  };
}

/** The same for the plan of a die, which holds the plans of its parts. */
export function diePlanJsonSchema(): object {
  const member = object({ id: text('As the die file calls the part; set.count[ID] is how many castings of it a shot has'), plan: ref('plan') });
  return {
    $schema: DRAFT,
    $id: 'urn:diewright:die-plan/1',
    title: 'Casting plan of a die',
    description: `The casting plan of a die with castings of several parts, and of each part in it. ${HOW}`,
    ...planObject({ format: { const: 'die-plan/1' }, die: HEAD, parts: list(member) }),
    $defs: { ...DEFINITIONS, plan: planObject() },
  };
}

const HEAD = object({ name: text(), file: text('As the file was named') }, { number: text(), revision: text(), note: text() });

/** The keys of a plan; of the plan of a die with keys of its own in place of `part`. */
function planObject(own: Record<string, object> = { format: { const: 'plan/1' }, part: HEAD }): object {
  return object(
    {
      ...own,
      tool: object({ name: text('Name of the program'), version: text('Its version') }),
      standing: object({
        status: text('What kind of document this is'),
        reviewers: list(text('Who must look at it, and at what')),
        hold: text('What must be checked before the first shot'),
        notChecked: list(text('What no plan of this program judges')),
      }),
      alloy: object({ id: text(), family: text(), asked: text('As written in the part description'), designations: list(text()) }),
      plant: object({ name: text(), invented: { type: 'boolean' } }, { note: text() }),
      decisions: recordOf('decision', 'By id'),
      texts: { type: 'object', additionalProperties: text(), description: 'Facts in words, by id' },
      values: recordOf('value', 'By id; every parent of a value is here too'),
      sections: recordOf('section', 'By topic, in the order of the plan'),
      findings: list(ref('finding')),
      cautions: list(
        object(
          {
            id: text(),
            title: text(),
            text: text('What to do'),
            defer: text('The document to defer to'),
            because: list(text('Id of a value or text')),
            status: ref('status'),
            source: ref('source'),
          },
          { house: text('File of the house rules that it comes from') },
        ),
      ),
      unchecked: list(object({ id: text(), title: text(), missing: text('What is missing for it') })),
      judged: list(object({ id: text('Id of a limit'), outcome: { enum: ['pass', 'fail', 'open', 'not-applicable'] } }, { item: text() })),
      unverified: list(text('Id of a value that rests on a figure from memory')),
      checkFirst: list(object({ id: text(), status: ref('status') })),
      sources: { type: 'object', additionalProperties: text(), description: 'Bibliography, by key' },
    },
    {
      houseRules: list(ref('change')),
      ...('part' in own ? { inDie: object({ name: text('Name of the die that the part is planned in'), file: text() }) } : {}),
    },
  );
}

const DEFINITIONS = {
  status: { enum: ['source', 'derived', 'practice', 'memory'], description: 'The weakest of all that the figure rests on' },
  source: list(text('Key of the bibliography, then the place in the work')),
  place: object({ file: text(), line: { type: 'integer', minimum: 1 }, column: { type: 'integer', minimum: 1 } }),
  value: object(
    {
      title: text(),
      value: { type: 'number' },
      unit: text('Unit as printed; 1 for a pure number'),
      kind: { enum: ['input', 'default', 'pinned', 'table', 'formula', 'choice', 'assumption'] },
      parents: list(text('Id of a value')),
      source: ref('source'),
      status: ref('status'),
      range: { enum: ['inside', 'clamped', 'extrapolated'] },
    },
    {
      formula: text('Id of the formula'),
      table: text('Id of the table'),
      note: text(),
      written: text('As the user wrote it'),
      item: text('Id of the item of a list'),
      at: ref('place'),
    },
  ),
  decision: object(
    {
      title: text(),
      value: { type: ['string', 'number'], description: 'A number where a value has the same id' },
      because: text(),
      kind: { enum: ['choice', 'pinned', 'search', 'input'] },
      source: ref('source'),
      status: ref('status'),
      parents: list(text('Id of a value')),
      alternatives: list(object({ value: text(), because: text() })),
    },
    { unit: text(), at: ref('place') },
  ),
  finding: object(
    {
      code: text('Id of the limit, or code of the reader'),
      severity: { enum: ['error', 'warning', 'note'] },
      message: text(),
      values: list(text('Id of a value')),
      fingerprint: text('The same for the same finding when lines have moved and figures have changed'),
    },
    {
      item: text(),
      at: ref('place'),
      notes: list(text('Why')),
      fix: text('What to do'),
      rule: text('Where a rule that is not as built in comes from'),
      accepted: object({ reason: text('Why the finding is accepted'), where: { enum: ['part', 'baseline'], description: 'Where that is written' } }),
    },
  ),
  change: object(
    {
      what: { enum: ['limit', 'choice', 'table', 'caution', 'alloy', 'source'] },
      id: text(),
      title: text(),
      change: { enum: ['added', 'replaced', 're-graded', 'switched off'] },
      at: object({ file: text('The file that makes the change, as the user names its folder'), line: { type: 'integer' } }),
    },
    { reason: text('Why'), severity: object({ from: ref('severity'), to: { enum: ['error', 'warning', 'note', 'off'] } }) },
  ),
  severity: { enum: ['error', 'warning', 'note'] },
  section: object({ title: text(), blocks: list({ oneOf: [ref('values'), ref('table'), ref('phrase'), ref('figure')] }) }),
  values: object({ kind: { const: 'values' }, ids: list(text('Id of a value')) }),
  table: object({ kind: { const: 'table' }, columns: list(text()), rows: list(list(ref('cell'))) }, { title: text() }),
  phrase: object({ kind: { const: 'text' }, phrase: list(ref('cell')) }),
  figure: object({ kind: { const: 'figure' }, id: text('Word in the name of its file'), title: text() }),
  cell: { oneOf: [text('As it is'), object({ value: text('Id of a value') }), object({ decision: text('Id of a decision') })] },
};
