import * as z from 'zod';
import { STATUSES } from '../kernel/status.ts';
import { isUnit } from '../kernel/units.ts';
import { ITEM_KINDS, SEARCH_STAGES } from './types.ts';

/**
 * Shapes of the files below `rules/` and of house rules, as people write them; `build.ts` turns them into the types of
 * `types.ts`. What a description says stands in the JSON Schemas, and in the message about a key that is missing.
 */
const said = (about: string) => z.string().min(1).describe(about);
const unit = z.string().refine(isUnit, { error: 'is not a unit that is known' }).describe('unit, such as mm or kN; 1 for a bare number');
const status = z.enum(STATUSES).describe('how far it can be trusted');
const source = z.array(z.string().min(1)).describe('keys of sources.yaml, each with the place in the work, such as KEY table 3');
const origin = { status: status.optional(), source: source.optional() };
const given = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()])).describe('a value for each bound name');
const uses = z
  .record(z.string().regex(/^[a-z][a-z0-9_]*$/i), z.string())
  .describe('names for plan values, each with its unit, such as f: clamp.locking-force in kN; a text has no unit');
const when = z.union([z.string(), z.boolean()]).describe("where it applies, in CEL; 'true' for always");
/** House rules give it for what takes the place of something built in. */
const reason = said('house rules only: why this takes the place of what is built in').optional();

const cell = z
  .union([z.number(), z.null(), z.strictObject({ value: z.number(), note: z.string().optional(), ...origin })])
  .describe('a number, or { value: ..., status: ..., source: [...] }');

export const tableFile = z.strictObject({
  title: said('what the table gives, in a few words'),
  reason,
  about: said('what it is and how it is used, in one or two sentences'),
  axes: z
    .record(
      z.string(),
      z
        .union([
          z.strictObject({ values: z.array(z.union([z.string(), z.number()])).min(1) }),
          z.strictObject({ unit, steps: z.literal('up-to'), outside: z.enum(['refuse', 'clamp']).optional() }),
          z.strictObject({ unit, between: z.literal('linear'), outside: z.enum(['refuse', 'clamp', 'extrapolate']) }),
        ])
        .describe('{ values: [words] }, { unit: mm, steps: up-to } or { unit: mm, between: linear, outside: clamp }'),
    )
    .describe('what the figures hang on'),
  gives: z.record(z.string(), z.strictObject({ unit, meaning: said('what the figure is') })).describe('the columns, each with unit and meaning'),
  ...origin,
  notes: z.array(z.string()).optional(),
  rows: z
    .array(z.record(z.string(), z.union([cell, z.string(), z.array(z.union([z.string(), z.number()]))])))
    .min(1)
    .describe('the figures'),
});

export const choiceFile = z.strictObject({
  decisions: z
    .record(
      z.string(),
      z.strictObject({
        title: said('what is decided, in a few words'),
        reason,
        verdict: z.literal(true).describe('it says how figures lie; there is nothing to decide, so it cannot be pinned').optional(),
        uses,
        rows: z
          .array(z.strictObject({ when, choose: said('the word that is chosen'), because: said('why, in a sentence'), ...origin }))
          .min(1)
          .describe('the first row whose condition holds is chosen'),
        examples: z
          .array(z.strictObject({ given, chooses: said('the word that must come out') }))
          .min(1)
          .describe('cases with the word that must come out'),
      }),
    )
    .describe('decisions by name'),
});

export const limitFile = z.strictObject({
  title: said('what must hold, in a few words'),
  reason,
  each: z.enum(ITEM_KINDS).describe('judged for each of these').optional(),
  uses,
  when,
  require: said('what must hold, in CEL; numbers are doubles: 2.0 * x'),
  severity: z.enum(['error', 'warning', 'note']).describe('how grave it is when it does not hold'),
  search: z
    .strictObject({
      after: z.enum(SEARCH_STAGES).describe('the stage of a trial after which all that the limit uses is known'),
      order: z.number().describe('place among the limits of its stage'),
      eases: z.enum(['machine', 'plunger']).describe('what comes nearer to it when it is larger').optional(),
      waived: z.boolean().describe('broken it does not stop a candidate, but weighs against it').optional(),
      only: z.boolean().describe('for the search alone: a plan is not judged by it').optional(),
    })
    .describe('how the machine search uses the limit; absent: not at all, or as the limit whose place it takes')
    .optional(),
  message: said('what a broken limit says; {name} prints value and unit, {expression:digits} a number'),
  why: said('what goes wrong beyond the bound'),
  fix: said('what to do, with the number to change to'),
  at: said('id of the value whose place in the part file a finding points at').optional(),
  ...origin,
  examples: z
    .array(z.strictObject({ given, holds: z.boolean().describe('true or false') }))
    .min(1)
    .describe('at least one case that holds and one that does not'),
});

export const cautionFile = z.strictObject({
  cautions: z
    .record(
      z.string(),
      z.strictObject({
        title: said('the hazard, in a few words'),
        uses,
        when,
        text: said('what to do'),
        defer: said('the document, code or licensed practice to defer to'),
        ...origin,
        examples: z
          .array(z.strictObject({ given, applies: z.boolean().describe('true or false') }))
          .min(1)
          .describe('at least one case in which it applies'),
      }),
    )
    .describe('cautions by name'),
});

const other = z.strictObject({
  value: z.number().optional(),
  least: z.number().optional(),
  greatest: z.number().optional(),
  source: source.optional(),
  status: status.optional(),
  note: z.string().optional(),
});
const property = z.strictObject({
  value: z.number().optional(),
  least: z.number().optional(),
  greatest: z.number().optional(),
  unit,
  note: z.string().optional(),
  others: z.array(other).optional(),
  ...origin,
});

const familyName = said('alloy family, such as aluminium; the name of the file');
const alloyRecord = z.strictObject({
  name: said('what the alloy is called'),
  reason,
  designations: z
    .array(
      z.strictObject({ system: z.string(), code: z.coerce.string(), near: z.boolean().optional(), status: status.optional(), note: z.string().optional() }),
    )
    .describe('names under which a part description may ask for it'),
  chamber: z
    .strictObject({ allows: z.array(z.enum(['hot', 'cold'])).min(1), note: z.string().optional(), ...origin })
    .describe('chambers that it is cast in, preferred first'),
  composition: z
    .strictObject({
      unit: z.literal('wt %'),
      balance: z.string(),
      limits: z.record(z.string(), z.tuple([z.number().nullable(), z.number().nullable()])),
      note: z.string().optional(),
      ...origin,
    })
    .describe('least and greatest share of each element'),
  properties: z.record(z.string(), property).describe('figures, each with unit, status and source'),
  ratings: z.record(z.string(), z.unknown()).optional(),
  notes: z.array(z.string()).optional(),
});

export const alloyFile = z.strictObject({ family: familyName, alloys: z.record(z.string(), alloyRecord) });

/** In house rules a record of an alloy that is built in holds what differs, and why. */
export const houseAlloyFile = z.strictObject({ family: familyName, alloys: z.record(z.string(), alloyRecord.partial()) });
/** What the record of an alloy that is not built in must hold. */
export const WHOLE_ALLOY = alloyRecord;

export const sourcesFile = z.record(
  z.string(),
  z.strictObject({
    title: said('title of the work'),
    author: z.string().optional(),
    publisher: z.string().optional(),
    edition: z.coerce.string().optional(),
    year: z.coerce.string().optional(),
    read: said('what of the work was read'),
    vendor: z.boolean().optional(),
    errata: z.array(z.string()).optional(),
  }),
);
