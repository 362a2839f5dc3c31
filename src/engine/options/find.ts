import type { Rulebook } from '../../rulebook/types.ts';
import type { Case } from '../case.ts';
import { Ledger } from '../ledger.ts';
import { fileGiven } from '../steps/given.ts';
import { WORK_ORDER } from '../steps/index.ts';
import type { Tried } from '../steps/machine/evaluate.ts';
import { machineStep, searchMachines } from '../steps/machine/index.ts';
import { better, rankedOf } from '../steps/machine/rank.ts';
import type { Search } from '../steps/machine/search.ts';
import { stoppingPlace } from '../steps/machine/stops.ts';
import type { ValueId } from '../vocabulary/index.ts';
import { workThrough } from '../work-through.ts';
import { type Best, type Candidate, type NearMiss, type Options, reasonOf, type Stopped } from './options.ts';

/** Misses and reasons shown. */
const MOST_MISSES = 8;

/**
 * Works every candidate of the machine search out to the end, where a plan leaves those that must be dearer. Undefined when the plant has no
 * machine of the kind at all.
 */
export function findOptions(given: Case): Options | undefined {
  const planned = workThrough(given);
  const ledger = new Ledger(planned.given);
  ledger.attempt('part', 'Part data', () => fileGiven(ledger));
  for (const step of WORK_ORDER.slice(0, WORK_ORDER.indexOf(machineStep))) ledger.attempt(step.id, step.title, () => step.work(ledger));
  const found = ledger.attempt('machine.model', 'Machines', () => searchMachines(ledger, true));
  return found === undefined ? undefined : optionsOf(found, planned);
}

function optionsOf(found: Search, planned: Ledger): Options {
  const { tried, ranking, fits, byCost, chosen } = found;
  const done = tried.filter(({ reached }) => reached === 'done').sort((a, b) => better(ranking, a, b));
  const candidateOf = (one: Tried): Candidate => candidate(one, chosen);
  const { prices } = planned.plant;
  const weight = (id: 'machine.alike' | 'machine.warning-weight' | 'machine.miss-weight'): number => planned.maybe(id)?.value ?? 0;
  const velocity = planned.given.first?.velocity === undefined ? undefined : planned.maybe('gate.velocity')?.value;
  return {
    fits,
    byCost,
    ...(velocity === undefined ? {} : { loweredVelocity: velocity }),
    ...(prices === undefined ? {} : { currency: prices.currency, pricesOf: prices.date }),
    tried: tried.length,
    passing: done.length,
    weights: { alike: weight('machine.alike'), warning: weight('machine.warning-weight'), miss: weight('machine.miss-weight') },
    candidates: done.map(candidateOf),
    counts: bests(planned.rulebook, found, ({ candidate: { cavities } }) => String(cavities), tried, done),
    machines: bests(
      planned.rulebook,
      found,
      ({ candidate: { machine } }) => machine.id,
      tried.filter(({ candidate: { cavities } }) => cavities === chosen.candidate.cavities),
      done,
    ),
    stopped: stoppedBy(tried),
    misses: missesOf(found),
  };
}

function candidate(one: Tried, chosen: Tried): Candidate {
  const { cavities, machine, plunger } = one.candidate;
  const { cost, margin, trial } = one;
  const number = (id: ValueId): number | undefined => trial?.maybe(id)?.value;
  const given = {
    cost,
    dearer: cost === undefined || chosen.cost === undefined ? undefined : cost / chosen.cost - 1,
    cycle: number('cycle.time'),
    goodParts: number('cycle.good-parts'),
    clampUse: number('clamp.use'),
    sleeveFill: number('sleeve.fill'),
    margin,
  };
  const known = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Partial<Candidate>;
  return { cavities, machine: machine.id, plunger: plunger.value, ...known, planned: one === chosen, warnings: one.waived.map(reasonOf) };
}

/** The best of each group, in the order of the candidates tried, and why it was not taken. */
function bests(rulebook: Rulebook, found: Search, nameOf: (one: Tried) => string, tried: readonly Tried[], done: readonly Tried[]): Best[] {
  const groups = new Map<string, Tried[]>();
  for (const one of tried) groups.set(nameOf(one), [...(groups.get(nameOf(one)) ?? []), one]);
  const size = (list: readonly Tried[]): number => list[0]?.candidate.cavities ?? 0;
  const force = (list: readonly Tried[]): number => list[0]?.candidate.machine.lockingForce.value ?? 0;
  return [...groups]
    .sort(([, a], [, b]) => size(a) - size(b) || force(a) - force(b))
    .map(([name, list]): Best => {
      const best = list.includes(found.chosen) && found.fits ? found.chosen : done.find((one) => list.includes(one));
      if (best !== undefined) return { name, best: candidate(best, found.chosen), lost: best === found.chosen ? '' : lostBy(found, best) };
      const place = ({ stop }: Tried): number => stoppingPlace(rulebook, stop);
      const last = list.reduce((far, one) => (place(one) > place(far) ? one : far));
      return { name, lost: last.stop?.message ?? '' };
    });
}

function lostBy({ ranking, chosen, byCost }: Search, best: Tried): string {
  const warnings = best.waived.map(({ message }) => message).join('; ');
  if (!byCost) return warnings === '' ? 'a larger machine, or fewer parts an hour' : warnings;
  const [cost, mine] = [best.cost ?? Number.POSITIVE_INFINITY, chosen.cost ?? Number.POSITIVE_INFINITY];
  if (cost > mine * ranking.alike) return warnings === '' ? 'a good part costs more' : `a good part costs more, and: ${warnings}`;
  if (best.waived.length > 0 && ranking.of(rankedOf(best)) > ranking.of(rankedOf(chosen)) * ranking.alike) return `warnings outweigh its cost: ${warnings}`;
  return 'costs the same and has less in reserve';
}

/** The limits that stopped candidates, the one that stopped most first. */
function stoppedBy(tried: readonly Tried[]): Stopped[] {
  const groups = new Map<string, Tried[]>();
  for (const one of tried) if (one.stop !== undefined) groups.set(one.stop.id, [...(groups.get(one.stop.id) ?? []), one]);
  return [...groups.values()]
    .map((list): Stopped => {
      const miss = (one: Tried): number => one.stop?.miss ?? Number.POSITIVE_INFINITY;
      const near = list.reduce((a, b) => (miss(b) < miss(a) ? b : a));
      const { cavities, machine, plunger } = near.candidate;
      return {
        reason: reasonOf(near.stop as NonNullable<Tried['stop']>),
        count: list.length,
        example: { cavities, machine: machine.id, plunger: plunger.value },
      };
    })
    .sort((a, b) => b.count - a.count || (a.reason.id < b.reason.id ? -1 : 1));
}

function missesOf({ misses }: Search): NearMiss[] {
  return misses.slice(0, MOST_MISSES).map(({ tried, broken, distance }): NearMiss => {
    const { cavities, machine, plunger } = tried.candidate;
    return {
      candidate: { cavities, machine: machine.id, plunger: plunger.value },
      ...(Number.isFinite(distance) ? { distance } : {}),
      broken: broken.map(reasonOf),
    };
  });
}
