import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import { convert } from '../kernel/units.ts';
import type { Bound } from '../rulebook/expression.ts';
import type { Binding } from '../rulebook/types.ts';
import type { Ledger } from './ledger.ts';
import { placeOf } from './place-of.ts';

/** The names of a rule bound to this plan's values: what its expressions see, and what a message prints. */
export interface Bindings {
  readonly values: Bound;
  readonly traced: ReadonlyMap<string, Traced>;
  readonly texts: ReadonlyMap<string, string>;
  /** Where in the user's files the value of a name was written, or the nearest value that it rests on. */
  readonly place: (name: string) => Place | undefined;
}

/** What is bound when some of the names have no value. */
export interface Incomplete {
  readonly missing: readonly string[];
  readonly values: Bound;
}

/** Binds the names, preferring the item's own value; gives the ids that are missing when one is. */
export function bind(ledger: Ledger, uses: readonly Binding[], item?: string): Bindings | Incomplete {
  const values: Record<string, number | string> = {};
  const traced = new Map<string, Traced>();
  const texts = new Map<string, string>();
  const textPlaces = new Map<string, Place>();
  const missing: string[] = [];
  for (const use of uses) {
    const own = item === undefined ? use.id : `${use.id}[${item}]`;
    if (use.unit === undefined) {
      const id = ledger.texts.has(own) ? own : use.id;
      if (!ledger.texts.has(id)) missing.push(use.id);
      else {
        values[use.name] = ledger.texts.get(id) as string;
        texts.set(use.name, ledger.texts.get(id) as string);
        const place = ledger.textPlaces.get(id);
        if (place !== undefined) textPlaces.set(use.name, place);
      }
      continue;
    }
    const value = ledger.values.get(own) ?? ledger.values.get(use.id);
    if (value === undefined) missing.push(use.id);
    else {
      values[use.name] = convert(value.value, value.unit, use.unit);
      traced.set(use.name, value);
    }
  }
  if (missing.length > 0) return { missing, values };
  const place = (name: string): Place | undefined => {
    const value = traced.get(name);
    return value === undefined ? textPlaces.get(name) : placeOf(value);
  };
  return { values, traced, texts, place };
}
