import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import { shortfall } from '../../shortfall.ts';
import { Trial } from '../../trial.ts';
import type { Candidate } from './candidate.ts';
import { type Begun, evaluate, layOut, onMachine, type Probed, probe, type Tried } from './evaluate.ts';
import { Floors, type Least } from './floor.ts';
import { type Miss, nearestMisses } from './misses.ts';
import { better, type Ranking, rankByCost, rankBySize, rankedOf, safest } from './rank.ts';
import { isStoppedToo, largestTooSmall, smallestOf, type TooSmall } from './smaller.ts';
import { type Stop, stoppingLimits } from './stops.ts';

export interface Search {
  readonly chosen: Tried;
  /** The best by its rank; another than the chosen one where that ranks the same and has more in reserve. */
  readonly cheapest: Tried;
  readonly fits: boolean;
  /** Whether cost has ranked; else the size of the machine has. */
  readonly byCost: boolean;
  readonly ranking: Ranking;
  /** In the order tried. A machine that is ruled out with every plunger at once is there with its smallest one only. */
  readonly tried: readonly Tried[];
  /** Where nothing fits: what stands in the way of each, the nearest first. */
  readonly misses: readonly Miss[];
}

/**
 * Tries counts of cavities on machines with their plungers. Every candidate is worked out as the plan would be and held against
 * the plan's own limits. Of those that pass, the one with the cheapest good part is taken, where every warning that it breaks
 * adds its weight to the cost; of those that cost the same, the one with the most in reserve. Candidates that must be dearer than one already found are left early,
 * unless `all` asks for every one. Without prices the first count in the order given that fits is taken, on the smallest machine.
 */
export function search(ledger: Ledger, machines: readonly MachineSpec[], counts: readonly number[], all = false): Search | undefined {
  return new Hunt(ledger, machines, counts, all).run();
}

interface OnMachine {
  readonly begun: Begun;
  readonly probed: Probed;
}

class Hunt {
  readonly #tried: Tried[] = [];
  readonly #floors = new Floors();
  readonly #machines: readonly MachineSpec[];
  readonly #ranking: Ranking;
  /** What all trials begin from. */
  readonly #root: Trial;
  readonly #laidOut = new Map<number, Begun>();
  readonly #onMachine = new Map<string, OnMachine>();
  /** For each count of cavities the largest machine that is too small for it, if one is known. */
  readonly #tooSmall = new Map<number, TooSmall | undefined>();
  /** Pressure in MPa that the class of the part asks for; not known before the first trial. */
  #wanted = Number.POSITIVE_INFINITY;
  #best: Tried | undefined;
  readonly #missOfHours: (hours: number) => number;

  constructor(
    ledger: Ledger,
    machines: readonly MachineSpec[],
    private readonly counts: readonly number[],
    private readonly all: boolean,
  ) {
    this.#root = new Trial(ledger);
    this.#missOfHours = missOfHours(ledger);
    this.#machines = [...machines].sort((a, b) => a.lockingForce.value - b.lockingForce.value || (a.id < b.id ? -1 : 1));
    const byCost = ledger.plant.prices !== undefined && machines.some(({ hourlyRate }) => hourlyRate !== undefined);
    this.#ranking = byCost ? rankByCost(ledger) : rankBySize(counts, this.#machines);
  }

  run(): Search | undefined {
    this.#tryAll();
    const common = { byCost: this.#ranking.byCost, ranking: this.#ranking, tried: this.#tried };
    const best = this.#best;
    if (best !== undefined) {
      const done = this.#tried.filter(({ reached }) => reached === 'done');
      return { ...common, chosen: safest(this.#ranking, done, best), cheapest: best, fits: true, misses: [] };
    }
    const misses = nearestMisses(this.#tried);
    const chosen = misses[0]?.tried;
    return chosen === undefined ? undefined : { ...common, chosen, cheapest: chosen, fits: false, misses };
  }

  /** Until one is worked out nothing is known of the cost; from then on what may be cheapest comes first. */
  #tryAll(): void {
    const left: Pick<Candidate, 'cavities' | 'machine'>[] = [];
    for (const cavities of this.counts) {
      for (const machine of this.#machines) {
        if (this.#best === undefined || !this.#ranking.byCost) this.#tryMachine(cavities, machine);
        else left.push({ cavities, machine });
      }
    }
    let [floors, learnt, wanted]: [{ floor: Least; rank: number }[], number, number] = [[], -1, Number.NaN];
    while (left.length > 0) {
      // The floors move only when something has been learnt.
      if (learnt !== this.#floors.learnt || wanted !== this.#wanted) {
        floors = left.map((pair) => {
          const floor = this.#floors.ofMachine(pair, this.#wanted);
          return { floor, rank: this.#rankOf(pair, floor, []) };
        });
        [learnt, wanted] = [this.#floors.learnt, this.#wanted];
      }
      const next = floors.reduce((least, { rank }, i) => (rank < (floors[least] as (typeof floors)[number]).rank ? i : least), 0);
      const [{ cavities, machine }] = left.splice(next, 1) as [(typeof left)[number]];
      const [{ floor }] = floors.splice(next, 1) as [(typeof floors)[number]];
      this.#tryMachine(cavities, machine, floor);
    }
  }

  #begin(cavities: number): Begun {
    const known = this.#laidOut.get(cavities);
    if (known !== undefined) return known;
    const begun = layOut(this.#root, cavities);
    this.#laidOut.set(cavities, begun);
    return begun;
  }

  /** A count of cavities on a machine with its smallest plunger, which is both looked at to find what is too small and tried. */
  #smallestOn(cavities: number, machine: MachineSpec): OnMachine {
    const key = `${cavities} ${machine.id}`;
    let known = this.#onMachine.get(key);
    if (known === undefined) {
      const begun = onMachine(this.#begin(cavities), machine);
      known = { begun, probed: probe(begun, { cavities, machine, plunger: smallestOf(machine) }) };
      this.#onMachine.set(key, known);
    }
    return known;
  }

  /** The plungers of a machine from the smallest up, until a limit stops them that only a larger machine eases. */
  #tryMachine(cavities: number, machine: MachineSpec, floor = this.#floors.ofMachine({ cavities, machine }, this.#wanted)): void {
    const plungers = [...machine.plungers].sort((a, b) => a.value - b.value);
    const pair = { cavities, machine };
    const [smallest] = plungers;
    if (smallest === undefined) return;
    if (this.#isTooDear(pair, floor, [])) {
      this.#tried.push({ candidate: { ...pair, plunger: smallest }, reached: 'begin', waived: [], floor });
      return;
    }
    const larger = this.#largerThatFails(cavities, machine);
    if (larger !== undefined) {
      this.#tried.push({ ...larger, candidate: { ...pair, plunger: smallest }, inferred: true });
      return;
    }
    const { begun, probed } = this.#smallestOn(cavities, machine);
    for (const plunger of plungers) {
      const entry = evaluate(plunger === smallest ? probed : probe(begun, { ...pair, plunger }), (trial, waived) => {
        const least = this.#floors.ofTrial(pair, trial);
        return this.#isTooDear(pair, least, waived) ? least : undefined;
      });
      this.#learn(entry);
      this.#take(this.#letGo(entry));
      if (entry.stop?.eases === 'machine') break;
      // A larger plunger has a larger biscuit and presses less, and eases no warning but those that say so.
      const remaining = entry.waived.filter(({ eases }) => eases !== 'plunger');
      if (entry.floor !== undefined && this.#isTooDear(pair, entry.floor, remaining)) break;
    }
    this.#onMachine.delete(`${cavities} ${machine.id}`);
  }

  /** What stopped a larger machine and so stops this one too. */
  #largerThatFails(cavities: number, machine: MachineSpec): Tried | undefined {
    if (this.all) return undefined;
    if (!this.#tooSmall.has(cavities))
      this.#tooSmall.set(
        cavities,
        largestTooSmall(this.#machines, (one) => this.#smallestOn(cavities, one).probed),
      );
    const known = this.#tooSmall.get(cavities);
    return known !== undefined && isStoppedToo(machine, known) ? known.entry : undefined;
  }

  #learn({ trial, reached }: Tried): void {
    if (trial === undefined) return;
    this.#wanted = trial.maybe('clamp.pressure')?.value ?? this.#wanted;
    if (reached === 'done' && this.#ranking.byCost) this.#floors.learn(trial);
  }

  /** More is asked only of what a limit stopped, and only where nothing fits; the hundreds of values of all others may go. */
  #letGo(entry: Tried): Tried {
    if (this.all || (entry.stop !== undefined && this.#best === undefined)) return entry;
    const { trial, ...rest } = entry;
    return rest;
  }

  #take(entry: Tried): void {
    this.#tried.push(entry);
    if (entry.reached === 'done' && (this.#best === undefined || better(this.#ranking, entry, this.#best) < 0)) this.#best = entry;
  }

  /** The rank of what comes to so much at least, with the warning of machine hours where it must break that. */
  #rankOf(candidate: Pick<Candidate, 'cavities' | 'machine'>, { cost, hours }: Least, waived: readonly Stop[]): number {
    const miss = this.#missOfHours(hours);
    return this.#ranking.of({ candidate, waived: miss > 0 ? [...waived, { miss }] : waived, cost });
  }

  /** Whether what costs so much at least and breaks so many warnings can be neither the best nor as good. */
  #isTooDear(candidate: Pick<Candidate, 'cavities' | 'machine'>, floor: Least, waived: readonly Stop[]): boolean {
    if (this.all || this.#best === undefined) return false;
    return this.#rankOf(candidate, floor, waived) > this.#ranking.of(rankedOf(this.#best)) * this.#ranking.alike;
  }
}

/** By how much the limit of machine hours is missed with so many; 0 where it is not known, as with a house rule in its place, which may ask for other values. */
function missOfHours({ rulebook, values }: Ledger): (needed: number) => number {
  const limit = stoppingLimits(rulebook).find(({ id }) => id === 'cycle/hours');
  const tree = limit === undefined ? undefined : rulebook.conditions[limit.require];
  const available = values.get('production.hours-per-year')?.value;
  if (limit?.search.waived !== true || limit.house !== undefined || tree === undefined || typeof tree === 'function' || available === undefined) return () => 0;
  return (needed) => shortfall(tree, { needed, available }) ?? 0;
}
