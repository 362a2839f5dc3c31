import type * as z from 'zod';
import type { LocatedYaml } from '../kernel/located-yaml.ts';
import { didYouMean, orList } from '../kernel/spelling.ts';
import type { Faults } from './faults.ts';
import { type alloyFile, type houseAlloyFile, WHOLE_ALLOY } from './schema.ts';
import { shaped } from './shape.ts';
import type { Alloy } from './types.ts';

type Whole = z.infer<typeof alloyFile>;
type Partial = z.infer<typeof houseAlloyFile>;

/**
 * The records of a house's alloy file made whole: one of an alloy that is built in keeps what it does not speak of; one
 * of a new alloy must hold all that a record needs.
 */
export function completeAlloys(file: Partial, builtIn: Readonly<Record<string, Alloy>>, document: LocatedYaml, faults: Faults): Whole {
  const families = [...new Set(Object.values(builtIn).map((alloy) => alloy.family))];
  if (!families.includes(file.family)) {
    const message = `no alloy family is called "${file.family}"${didYouMean(file.family, families)}`;
    faults.add('unknown-word', document.place(['family']), message, `write ${orList(families)}; the tables have no figures for another family`);
  }
  const alloys: Whole['alloys'] = {};
  for (const [id, record] of Object.entries(file.alloys)) {
    const base = Object.hasOwn(builtIn, id) ? builtIn[id] : undefined;
    const whole = base === undefined ? wholeRecord(id, record, document, faults) : overBuiltIn(record, base);
    if (whole !== undefined) alloys[id] = whole;
    if (base !== undefined && base.family !== file.family)
      faults.add(
        'wrong-shape',
        document.place(['alloys', id], 'key'),
        `${id} is a built-in ${base.family} alloy, not one of ${file.family}`,
        `put it into alloys/${base.family}.yaml`,
      );
  }
  return { family: file.family, alloys };
}

function wholeRecord(id: string, record: Partial['alloys'][string], document: LocatedYaml, faults: Faults): Whole['alloys'][string] | undefined {
  // The record is held against the shape of a whole one, at its place in the file.
  const own: LocatedYaml = { ...document, data: record, place: (path, part) => document.place(['alloys', id, ...path], part) };
  return shaped(WHOLE_ALLOY, own, faults);
}

/** Figures and statements of the record over those built in; what it does not speak of keeps value, source and status. */
function overBuiltIn(record: Partial['alloys'][string], base: Alloy): Whole['alloys'][string] {
  const { id: _id, family: _family, house: _house, ...kept } = base;
  return { ...kept, ...record, properties: { ...kept.properties, ...record.properties } } as Whole['alloys'][string];
}
