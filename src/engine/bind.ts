import type { Place } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';
import { convert } from '../kernel/units.ts';
import type { Bound } from '../rulebook/condition.ts';
import type { Binding } from '../rulebook/types.ts';
import type { Ledger } from './ledger.ts';
import { placeOf } from './place-of.ts';

/** The names of a rule bound to this plan's values. Most rules hold, so what only a message needs is looked up when it is asked for. */
export class Bindings {
  constructor(
    private readonly ledger: Ledger,
    private readonly uses: readonly Binding[],
    private readonly item: string | undefined,
    /** What the rule's expressions see. */
    readonly values: Bound,
    /** Ids that have no value; the rule sees nothing of them. */
    readonly missing: readonly string[],
  ) {}

  /** The numbers bound, in the order of the names. */
  get numbers(): Traced[] {
    return this.uses.flatMap((use) => this.number(use.name) ?? []);
  }

  number(name: string): Traced | undefined {
    const use = this.#use(name);
    return use?.unit === undefined ? undefined : numberOf(this.ledger, use, this.item);
  }

  text(name: string): string | undefined {
    const use = this.#use(name);
    return use === undefined || use.unit !== undefined ? undefined : this.ledger.texts.get(textIdOf(this.ledger, use, this.item));
  }

  /** Where in the user's files the value of a name was written, or the nearest value that it rests on. */
  place(name: string): Place | undefined {
    const use = this.#use(name);
    if (use === undefined) return undefined;
    if (use.unit === undefined) return this.ledger.textPlaces.get(textIdOf(this.ledger, use, this.item));
    const value = numberOf(this.ledger, use, this.item);
    return value === undefined ? undefined : placeOf(value);
  }

  #use(name: string): Binding | undefined {
    return this.uses.find((use) => use.name === name);
  }
}

/** Binds the names, preferring the item's own value. */
export function bind(ledger: Ledger, uses: readonly Binding[], item?: string): Bindings {
  const values: Record<string, number | string> = {};
  const missing: string[] = [];
  for (const use of uses) {
    if (use.unit === undefined) {
      const text = ledger.texts.get(textIdOf(ledger, use, item));
      if (text === undefined) missing.push(use.id);
      else values[use.name] = text;
    } else {
      const value = numberOf(ledger, use, item);
      if (value === undefined) missing.push(use.id);
      else values[use.name] = convert(value.value, value.unit, use.unit);
    }
  }
  return new Bindings(ledger, uses, item, values, missing);
}

function numberOf(ledger: Ledger, { id }: Binding, item: string | undefined): Traced | undefined {
  return (item === undefined ? undefined : ledger.values.get(`${id}[${item}]`)) ?? ledger.values.get(id);
}

function textIdOf(ledger: Ledger, { id }: Binding, item: string | undefined): string {
  const own = `${id}[${item}]`;
  return item !== undefined && ledger.texts.has(own) ? own : id;
}
