import { type Limit, type Rulebook, SEARCH_STAGES, type SearchStop } from '../../../rulebook/types.ts';
import type { Bindings } from '../../bind.ts';
import { brokenBy, fill } from '../../judge.ts';
import type { Ledger } from '../../ledger.ts';
import { shortfall } from '../../shortfall.ts';

export type Stage = SearchStop['after'];
export type StoppingLimit = Limit & { readonly search: SearchStop };

const sorted = new WeakMap<Rulebook['limits'], readonly StoppingLimit[]>();

/** The limits that stop candidates, in the order in which they are looked at: by stage, then as their files say. */
export function stoppingLimits({ limits }: Rulebook): readonly StoppingLimit[] {
  let list = sorted.get(limits);
  if (list === undefined) {
    const place = ({ search }: StoppingLimit): number => SEARCH_STAGES.indexOf(search.after);
    list = Object.values(limits)
      .filter((limit): limit is StoppingLimit => limit.search !== undefined)
      .sort((a, b) => place(a) - place(b) || a.search.order - b.search.order || (a.id < b.id ? -1 : 1));
    sorted.set(limits, list);
  }
  return list;
}

/** How far through the limits a candidate came before one stopped it. */
export function stoppingPlace(rulebook: Rulebook, stop: Stop | undefined): number {
  return stop === undefined ? Number.POSITIVE_INFINITY : stoppingLimits(rulebook).findIndex(({ id }) => id === stop.id);
}

/** A limit that a candidate breaks, or why it cannot be worked out. The words are put together when they are asked for. */
export class Stop {
  readonly id: string;
  readonly title: string;
  readonly waived: boolean;
  readonly eases: SearchStop['eases'] | undefined;
  readonly #words: () => { readonly message: string; readonly fix: string };
  readonly #rulebook: Rulebook | undefined;
  /** The values that it was judged on; none where it could not be. */
  readonly bound: Bindings | undefined;
  readonly limit: Limit | undefined;

  private constructor(from: Pick<Stop, 'id' | 'title' | 'waived' | 'eases' | 'bound' | 'limit'>, words: Stop['words'], rulebook?: Rulebook) {
    this.#rulebook = rulebook;
    ({ id: this.id, title: this.title, waived: this.waived, eases: this.eases, bound: this.bound, limit: this.limit } = from);
    this.#words = words;
  }

  static ofLimit(rulebook: Rulebook, limit: StoppingLimit, bound: Bindings): Stop {
    const { id, title, search } = limit;
    const words = () => ({ message: fill(rulebook, limit.message, bound), fix: fill(rulebook, limit.fix, bound) });
    return new Stop({ id, title, waived: search.waived === true, eases: search.eases, bound, limit }, words, rulebook);
  }

  static failure(error: Error): Stop {
    const from = { id: 'machine/not-worked-out', title: 'Could not be worked out', waived: false, eases: undefined, bound: undefined, limit: undefined };
    return new Stop(from, () => ({ message: error.message, fix: 'See what the plan says of it.' }));
  }

  /** By how much the limit is missed, as a share; undefined where that cannot be measured. */
  get miss(): number | undefined {
    const tree = this.limit === undefined ? undefined : this.#rulebook?.conditions[this.limit.require];
    // An expression that only the library for CEL can evaluate has no sides to compare.
    return tree === undefined || typeof tree === 'function' || this.bound === undefined ? undefined : shortfall(tree, this.bound.values);
  }

  get words(): () => { readonly message: string; readonly fix: string } {
    return this.#words;
  }
  get message(): string {
    return this.#words().message;
  }
  get fix(): string {
    return this.#words().fix;
  }
}

/** Every limit that a trial breaks and that is not waived, as far as it was worked out. */
export function brokenAll(trial: Ledger): Stop[] {
  return stoppingLimits(trial.rulebook).flatMap((limit) => {
    const bound = limit.search.waived === true ? undefined : brokenBy(trial, limit);
    return bound === undefined ? [] : [Stop.ofLimit(trial.rulebook, limit, bound)];
  });
}

/** The limits of a stage that a trial breaks: those that are waived, and the first of the others, behind which no more is looked at. */
export function brokenAt(trial: Ledger, stage: Stage): { readonly stop?: Stop; readonly waived: readonly Stop[] } {
  const waived: Stop[] = [];
  for (const limit of stoppingLimits(trial.rulebook)) {
    if (limit.search.after !== stage) continue;
    const bound = brokenBy(trial, limit);
    if (bound === undefined) continue;
    const stop = Stop.ofLimit(trial.rulebook, limit, bound);
    if (!stop.waived) return { stop, waived };
    waived.push(stop);
  }
  return { waived };
}
