import { Traced } from '../../../kernel/traced.ts';
import { bestCavities, castings, forceRate, rateBase, rateSlope, rateSlopeUsual, withCavities } from '../../../physics/cost-cavities.ts';
import { costRest } from '../../../physics/cost-total.ts';
import type { MachineSpec } from '../../../spec/index.ts';
import { BALANCED_COUNTS } from '../../counts.ts';
import type { Ledger } from '../../ledger.ts';

/**
 * The cheapest count of cavities by the closed form of a textbook, with the rates, times and dies of this plan. It is a
 * check beside the machine search, which knows what fits into which machine and the closed form does not.
 */
export function workCavities(ledger: Ledger): void {
  ledger.apply(castings, { good: ledger.value('cost.die-parts'), reject_share: ledger.value('cavities.reject-share') });
  const cavities = ledger.value('machine.cavities');
  const force = ledger.value('machine.locking-force');
  const slope = workSlope(ledger);
  ledger.apply(rateBase, { rate: ledger.value('machine.hourly-rate'), force, slope });
  ledger.apply(forceRate, { force, slope, cavities });
  const best = ledger.apply(bestCavities, shared(ledger));
  const modelled = ledger.apply(withCavities, { ...sum(ledger), cavities }, { id: 'cost.modelled' });
  const rest = ledger.apply(costRest, { total: ledger.value('cost.per-part'), modelled });
  for (const count of countsToShow(cavities.value, best.value)) {
    const n = ledger.put(Traced.choice(`cost.count[${count}]`, count, '1', { note: 'a count that can be laid out', status: 'derived' }));
    ledger.apply(withCavities, { ...sum(ledger), cavities: n, rest }, { item: String(count) });
  }
  ledger.apply(withCavities, { ...sum(ledger), cavities: best, rest }, { id: 'cost.at-best', aside: true });
}

/** Up to twice the larger of the planned and the cheapest count, with the planned one among them. */
function countsToShow(planned: number, best: number): number[] {
  const end = Math.max(4, 2 * planned, 2 * best);
  return [...new Set([...BALANCED_COUNTS.filter((count) => count <= end), planned])].sort((a, b) => a - b);
}

/** How the rate grows with size: between the smallest and the largest machine of the kind, else as remembered. */
function workSlope(ledger: Ledger): Traced<'1'> {
  const rated = machinesOfKind(ledger);
  const [small, large] = [rated[0], rated[rated.length - 1]];
  const rate = ledger.value('machine.hourly-rate');
  const force = ledger.value('machine.locking-force');
  if (small !== undefined && large !== undefined && large.force.value > small.force.value) {
    const slope = (large.rate.value - small.rate.value) / (large.force.value - small.force.value);
    if (slope >= 0 && slope * force.value < rate.value) {
      const args = { small_rate: small.rate, small_force: small.force, large_rate: large.rate, large_force: large.force };
      return ledger.apply(rateSlope, args, { note: 'between the smallest and the largest machine of the kind in the plant' });
    }
  }
  const axes = { chamber: ledger.text('machine.chamber') };
  const base = ledger.look('cost/rate-line', 'base', axes, 'cost.line-base');
  const line = ledger.look('cost/rate-line', 'slope', axes, 'cost.line-slope');
  const note = 'the rates of the plant do not show it; in the proportion of a remembered line';
  return ledger.apply(rateSlopeUsual, { rate, force, base, slope: line }, { id: 'cost.rate-slope', note });
}

function machinesOfKind(ledger: Ledger): { readonly force: Traced<'kN'>; readonly rate: Traced<'1'> }[] {
  const own = ledger.plant.machines.find(({ id }) => id === ledger.text('machine.model'));
  const like = (machine: MachineSpec): boolean => machine.chamber === own?.chamber && machine.shot === own.shot;
  return ledger.plant.machines
    .filter(like)
    .flatMap(({ lockingForce, hourlyRate }) => (hourlyRate === undefined ? [] : [{ force: lockingForce, rate: hourlyRate }]))
    .sort((a, b) => a.force.value - b.force.value);
}

const shared = (ledger: Ledger) => {
  const zero = <const U extends 's' | '1'>(id: string, unit: U) => Traced.choice(id, 0, unit, { note: 'none in the cost', status: 'derived' });
  return {
    parts: ledger.value('cost.castings'),
    machine_rate: ledger.value('cost.rate-base'),
    cycle: ledger.value('cost.machine-time'),
    trim_time: ledger.maybe('cost.trim-cycle') ?? zero('cost.trim-cycle', 's'),
    trim_rate: ledger.maybe('cost.trim-rate') ?? zero('cost.trim-rate', '1'),
    die_cost: ledger.value('cost.die-one'),
    trim_die_cost: ledger.maybe('cost.trim-die-one') ?? zero('cost.trim-die-one', '1'),
    exponent: ledger.value('cost.exponent'),
  };
};

const sum = (ledger: Ledger) => ({ ...shared(ledger), good: ledger.value('cost.die-parts'), force_rate: ledger.value('cost.force-rate') });
