import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import { convert } from '../kernel/units.ts';
import type { Bound } from '../rulebook/condition.ts';
import type { Binding } from '../rulebook/types.ts';
import type { Ledger } from './ledger.ts';
import { placeOf } from './place-of.ts';

/** The names of a rule bound to this plan's values. It keeps what it found and not the ledger, which may be that of one of many trials. */
export class Bindings {
  constructor(
    private readonly uses: readonly Binding[],
    /** For each name the number, or the id of the text, that it is bound to. */
    private readonly found: readonly (Traced | string | undefined)[],
    /** What the rule's expressions see. */
    readonly values: Bound,
    /** Ids that have no value; the rule sees nothing of them. */
    readonly missing: readonly string[],
    private readonly textPlaces: ReadonlyMap<string, Place>,
  ) {}

  /** The numbers bound, in the order of the names. */
  get numbers(): Traced[] {
    return this.found.filter((one) => typeof one === 'object');
  }

  number(name: string): Traced | undefined {
    const found = this.#found(name);
    return typeof found === 'object' ? found : undefined;
  }

  text(name: string): string | undefined {
    return typeof this.#found(name) === 'string' ? (this.values[name] as string | undefined) : undefined;
  }

  /** Where in the user's files the value of a name was written, or the nearest value that it rests on. */
  place(name: string): Place | undefined {
    const found = this.#found(name);
    if (found === undefined) return undefined;
    return typeof found === 'string' ? this.textPlaces.get(found) : placeOf(found);
  }

  #found(name: string): Traced | string | undefined {
    return this.found[this.uses.findIndex((use) => use.name === name)];
  }
}

/** Binds the names, preferring the item's own value. */
export function bind(ledger: Ledger, uses: readonly Binding[], item?: string): Bindings {
  const values: Record<string, number | string> = {};
  const missing: string[] = [];
  const found: (Traced | string | undefined)[] = [];
  for (const use of uses) {
    if (use.unit === undefined) {
      const id = textIdOf(ledger, use, item);
      const text = ledger.texts.get(id);
      if (text === undefined) missing.push(use.id);
      else values[use.name] = text;
      found.push(id);
    } else {
      const value = numberOf(ledger, use, item);
      if (value === undefined) missing.push(use.id);
      else values[use.name] = convert(value.value, value.unit, use.unit);
      found.push(value);
    }
  }
  return new Bindings(uses, found, values, missing, ledger.textPlaces);
}

function numberOf(ledger: Ledger, { id }: Binding, item: string | undefined): Traced | undefined {
  return (item === undefined ? undefined : ledger.values.get(`${id}[${item}]`)) ?? ledger.values.get(id);
}

function textIdOf(ledger: Ledger, { id }: Binding, item: string | undefined): string {
  if (item === undefined) return id;
  const own = `${id}[${item}]`;
  return ledger.texts.has(own) ? own : id;
}
