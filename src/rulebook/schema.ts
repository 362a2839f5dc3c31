import * as z from 'zod';
import { STATUSES } from '../kernel/status.ts';
import { isUnit } from '../kernel/units.ts';
import { ITEM_KINDS, SEARCH_STAGES } from './types.ts';

/** Shapes of the files below `rules/`, as people write them; `compile.ts` turns them into the types of `types.ts`. */
const unit = z.string().refine(isUnit, { error: 'is not a unit of the unit table' });
const status = z.enum(STATUSES);
const source = z.array(z.string().min(1));
const origin = { status: status.optional(), source: source.optional() };
const given = z.record(z.string(), z.union([z.number(), z.string(), z.boolean()]));
const uses = z.record(z.string().regex(/^[a-z][a-z0-9_]*$/i), z.string());

const cell = z.union([z.number(), z.null(), z.strictObject({ value: z.number(), note: z.string().optional(), ...origin })]);

export const tableFile = z.strictObject({
  title: z.string(),
  about: z.string(),
  axes: z.record(
    z.string(),
    z.union([
      z.strictObject({ values: z.array(z.union([z.string(), z.number()])).min(1) }),
      z.strictObject({ unit, steps: z.literal('up-to'), outside: z.enum(['refuse', 'clamp']).optional() }),
      z.strictObject({ unit, between: z.literal('linear'), outside: z.enum(['refuse', 'clamp', 'extrapolate']) }),
    ]),
  ),
  gives: z.record(z.string(), z.strictObject({ unit, meaning: z.string() })),
  ...origin,
  notes: z.array(z.string()).optional(),
  rows: z.array(z.record(z.string(), z.union([cell, z.string(), z.array(z.union([z.string(), z.number()]))]))).min(1),
});

export const choiceFile = z.strictObject({
  decisions: z.record(
    z.string(),
    z.strictObject({
      title: z.string(),
      uses,
      rows: z.array(z.strictObject({ when: z.union([z.string(), z.boolean()]), choose: z.string(), because: z.string(), ...origin })).min(1),
      examples: z.array(z.strictObject({ given, chooses: z.string() })).min(1),
    }),
  ),
});

export const limitFile = z.strictObject({
  title: z.string(),
  each: z.enum(ITEM_KINDS).optional(),
  uses,
  when: z.union([z.string(), z.boolean()]),
  require: z.string(),
  severity: z.enum(['error', 'warning', 'note']),
  search: z
    .strictObject({
      after: z.enum(SEARCH_STAGES),
      order: z.number(),
      eases: z.enum(['machine', 'plunger']).optional(),
      waived: z.boolean().optional(),
      only: z.boolean().optional(),
    })
    .optional(),
  message: z.string(),
  why: z.string(),
  fix: z.string(),
  at: z.string().optional(),
  ...origin,
  examples: z.array(z.strictObject({ given, holds: z.boolean() })).min(2),
});

export const cautionFile = z.strictObject({
  cautions: z.record(
    z.string(),
    z.strictObject({
      title: z.string(),
      uses,
      when: z.union([z.string(), z.boolean()]),
      text: z.string(),
      defer: z.string(),
      ...origin,
      examples: z.array(z.strictObject({ given, applies: z.boolean() })).min(2),
    }),
  ),
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

export const alloyFile = z.strictObject({
  family: z.string(),
  alloys: z.record(
    z.string(),
    z.strictObject({
      name: z.string(),
      designations: z.array(
        z.strictObject({ system: z.string(), code: z.coerce.string(), near: z.boolean().optional(), status: status.optional(), note: z.string().optional() }),
      ),
      chamber: z.strictObject({ allows: z.array(z.enum(['hot', 'cold'])).min(1), note: z.string().optional(), ...origin }),
      composition: z.strictObject({
        unit: z.literal('wt %'),
        balance: z.string(),
        limits: z.record(z.string(), z.tuple([z.number().nullable(), z.number().nullable()])),
        note: z.string().optional(),
        ...origin,
      }),
      properties: z.record(z.string(), property),
      ratings: z.record(z.string(), z.unknown()).optional(),
      notes: z.array(z.string()).optional(),
    }),
  ),
});

export const sourcesFile = z.record(
  z.string(),
  z.strictObject({
    title: z.string(),
    author: z.string().optional(),
    publisher: z.string().optional(),
    edition: z.coerce.string().optional(),
    year: z.coerce.string().optional(),
    read: z.string(),
    vendor: z.boolean().optional(),
    errata: z.array(z.string()).optional(),
  }),
);
