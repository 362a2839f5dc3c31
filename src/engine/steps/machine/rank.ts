import { Refusal } from '../../../kernel/apply.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';
import type { Candidate } from './candidate.ts';
import type { Tried } from './evaluate.ts';
import type { Stop } from './stops.ts';

/** What of a candidate its rank hangs on. */
export interface Ranked {
  readonly candidate: Pick<Candidate, 'cavities' | 'machine'>;
  readonly waived: readonly Pick<Stop, 'miss'>[];
  /** Cost of a good part; that of one which is not worked out to the end is what it comes to at least. */
  readonly cost: number | undefined;
}

/** How candidates that pass are compared: the lower the better. */
export interface Ranking {
  readonly byCost: boolean;
  readonly of: (ranked: Ranked) => number;
  /** Up to which factor two ranks are the same. */
  readonly alike: number;
}

/** By the cost of a good part, to which every warning that it breaks adds a weight, and more the further it is missed. */
export function rankByCost(ledger: Ledger): Ranking {
  const figure = (column: string): number => {
    const cell = ledger.rulebook.tables['machine/search']?.rows[0]?.cells[column];
    // House rules may have left it without one.
    if (cell == null)
      throw new Refusal('table/no-figure', `table machine/search has no ${column}`, 'give the house table that column, or leave the built-in one');
    return cell.value / 100;
  };
  const [weight, perMiss, alike] = [figure('warning_weight'), figure('miss_weight'), figure('alike')];
  const weightOf = ({ miss = 0 }: Pick<Stop, 'miss'>): number => Math.max(weight, perMiss * miss);
  const of = ({ waived, cost = Number.POSITIVE_INFINITY }: Ranked): number => waived.reduce((sum, stop) => sum + weightOf(stop), 1) * cost;
  return { byCost: true, alike: 1 + alike, of };
}

/** Without prices: by the warnings that it breaks, then by the place of the count in its list, then by the size of the machine. */
export function rankBySize(counts: readonly number[], bySize: readonly MachineSpec[]): Ranking {
  const places = counts.length * bySize.length;
  const place = ({ candidate }: Ranked): number => counts.indexOf(candidate.cavities) * bySize.length + bySize.indexOf(candidate.machine);
  return { byCost: false, alike: 1, of: (ranked) => ranked.waived.length * places + place(ranked) };
}

export const rankedOf = ({ candidate, waived, cost }: Tried): Ranked => ({ candidate, waived, cost });

/** Below 0 when `a` is the better: the lower rank, then the smaller machine, fewer cavities, the smaller plunger. */
export function better(ranking: Ranking, a: Tried, b: Tried): number {
  const [x, y] = [ranking.of(rankedOf(a)), ranking.of(rankedOf(b))];
  const by = (of: (candidate: Candidate) => number): number => of(a.candidate) - of(b.candidate);
  return (
    (x === y ? 0 : x - y) ||
    by(({ machine }) => machine.lockingForce.value) ||
    by(({ cavities }) => cavities) ||
    by(({ plunger }) => plunger.value) ||
    (a.candidate.machine.id < b.candidate.machine.id ? -1 : a.candidate.machine.id > b.candidate.machine.id ? 1 : 0)
  );
}

/**
 * Of those that rank the same as the best, the one with the most in reserve; of those with as much, the better. What breaks
 * more than the best is not among them. Where it would need larger gates, a plunger of the same machine that drives them as
 * planned goes before it.
 */
export function safest(ranking: Ranking, done: readonly Tried[], best: Tried): Tried {
  const bound = ranking.of(rankedOf(best)) * ranking.alike;
  const same = done.filter((one) => one.waived.length <= best.waived.length && ranking.of(rankedOf(one)) <= bound);
  const chosen = mostInReserve(ranking, same, best);
  if (chosen.drivesGates === true) return chosen;
  const { cavities, machine } = chosen.candidate;
  const driving = same.filter((one) => one.candidate.cavities === cavities && one.candidate.machine === machine && one.drivesGates === true);
  return driving[0] === undefined ? chosen : mostInReserve(ranking, driving, driving[0]);
}

function mostInReserve(ranking: Ranking, among: readonly Tried[], first: Tried): Tried {
  return among.reduce((a, b) => {
    const more = (b.margin ?? 0) - (a.margin ?? 0);
    return more > 1e-9 || (more > -1e-9 && better(ranking, b, a) < 0) ? b : a;
  }, first);
}
