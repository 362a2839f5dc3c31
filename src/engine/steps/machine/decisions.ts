import { formatNumber } from '../../../kernel/format.ts';
import { Traced } from '../../../kernel/traced.ts';
import type { Ledger } from '../../ledger.ts';
import type { Decision } from '../../plan.ts';
import type { Tried } from './evaluate.ts';
import { rankedOf } from './rank.ts';
import { nearest, rejectedMachines } from './rejected.ts';
import type { Search } from './search.ts';

/** Records machine, cavities and plunger with what else was looked at, and what stopped the next smaller machine. */
export function recordDecisions(ledger: Ledger, found: Search): void {
  const { machine } = found.chosen.candidate;
  const pinned = ledger.part.pinned.get('machine.model');
  const common = { status: 'derived', source: ['PLANT'], parents: [], alternatives: [] } as const;
  const model: Decision = {
    ...common,
    id: 'machine.model',
    title: 'Machine',
    kind: pinned === undefined ? 'search' : 'pinned',
    value: machine.id,
    because: pinned === undefined ? machineBecause(found) : pinnedBecause(found),
    alternatives: rejectedMachines(ledger, found),
    ...(pinned === undefined ? {} : { at: pinned.at }),
  };
  ledger.record(model);
  const count = ledger.value('machine.cavities');
  const plunger = ledger.value('machine.plunger');
  ledger.record({
    ...common,
    id: 'machine.cavities',
    title: 'Cavities',
    kind: count.kind === 'pinned' ? 'pinned' : 'search',
    value: String(count.value),
    because: count.note ?? '',
    parents: count.parents.map((p) => p.id),
  });
  ledger.record({
    ...common,
    id: 'machine.plunger',
    title: 'Plunger',
    kind: plunger.kind === 'pinned' ? 'pinned' : 'search',
    value: `${plunger.value} mm`,
    because: plunger.kind === 'pinned' ? (plunger.note ?? '') : plungerBecause(found),
  });
  fileStops(ledger, found);
  fileCounts(ledger, found);
}

function pinnedBecause({ fits, chosen }: Search): string {
  if (!fits) return 'pinned by the engineer; it does not pass every limit';
  return chosen.waived.length === 0
    ? 'pinned by the engineer; it passes the limits looked at'
    : `pinned by the engineer; it does not keep: ${missedOf(chosen)}`;
}

function machineBecause(found: Search): string {
  const { fits, chosen, cheapest, byCost } = found;
  if (!fits) return 'nearest miss: no machine of the plant passes every limit';
  const what = byCost ? 'cheapest good part' : 'smallest machine of the plant with a plunger';
  const safer = chosen !== cheapest && byCost ? '; of those that cost the same, the one with the most in reserve' : '';
  if (chosen.waived.length === 0) return `${what} of all that pass every limit looked at${safer}`;
  return `${what} of all that break no error, with a weight for every warning broken${safer}. It does not keep: ${missedOf(chosen)}; ${whyNotClean(found)}`;
}

/** Why one that breaks warnings is taken. Those left early for their cost are not known to break anything. */
function whyNotClean({ byCost, tried }: Search): string {
  const clean = byCost ? tried.filter(({ waived, stop }) => stop === undefined && waived.length === 0) : [];
  if (clean.length === 0) return 'no candidate keeps every limit';
  const some = clean.some(({ reached }) => reached === 'done') ? 'one that keeps every limit' : 'one that keeps every limit, if there is any,';
  return `${some} would cost more than these warnings weigh`;
}

const missedOf = ({ waived }: Tried): string => waived.map(({ title }) => `"${lowerFirst(title)}"`).join(', ');

/** Why this count, in words, for the value and the decision. */
export function countBecause(ledger: Ledger, { fits, byCost, chosen }: Search): string {
  if (ledger.given.set !== undefined) return 'one set of castings; the die file says how many of each part it has';
  const demand = ledger.maybe('cavities.demand');
  if (demand === undefined) return 'no yearly volume is given, so one cavity';
  if (!fits) return 'the fewest, because nothing fits and every limit eases with fewer cavities';
  if (byCost) return `of the candidate with the cheapest good part${chosen.waived.length === 0 ? '' : ', with a weight for every warning broken'}`;
  return chosen.candidate.cavities >= demand.value
    ? 'least count of a balanced layout that makes the yearly volume on one machine'
    : 'as many as a balanced layout and the machines of the plant allow; the yearly volume asks for more';
}

function plungerBecause({ fits, byCost, chosen, tried }: Search): string {
  if (!fits) return 'the plunger that comes nearest to what stopped it';
  const weaker = chosen.drivesGates === true && tried.some((one) => isSafer(one, chosen) && one.drivesGates === false);
  const those = `${byCost ? 'of the plungers that cost the same' : 'of the plungers that pass'}${weaker ? ' and drive the gates as planned' : ''}`;
  const most = `${those}, the one with the most in reserve`;
  if (chosen.waived.length === 0) return most;
  const fewer = tried.some((one) => isOnSame(one, chosen) && one.waived.length < chosen.waived.length);
  return `${most}; ${fewer ? 'one that breaks fewer warnings would cost more than they weigh' : 'none that was worked out on this machine breaks fewer warnings'}`;
}

/** Another plunger on the same machine for the same count that was worked out to the end. */
function isOnSame({ candidate, reached }: Tried, chosen: Tried): boolean {
  return reached === 'done' && candidate.cavities === chosen.candidate.cavities && candidate.machine === chosen.candidate.machine;
}

/** Another plunger of the same machine that passes too and has more in reserve. */
function isSafer(one: Tried, chosen: Tried): boolean {
  return isOnSame(one, chosen) && one.waived.length <= chosen.waived.length && (one.margin ?? 0) > (chosen.margin ?? 0) + 1e-9;
}

/** For the findings: what the machine shown fails, how many smaller ones the plant has, and what stopped the next of them. */
function fileStops(ledger: Ledger, { chosen, tried, misses, fits }: Search): void {
  const { machine, cavities } = chosen.candidate;
  const [nearest] = misses;
  ledger.setText('machine.stopped', fits ? 'nothing' : (nearest?.broken.map(({ message }) => message).join('; ') ?? 'nothing'));
  ledger.setText('machine.needed', fits ? 'nothing' : (nearest?.broken.map(({ fix }) => fix).join(' ') ?? 'nothing'));
  const smaller = tried.filter(({ candidate, reached }) => candidate.machine.lockingForce.value < machine.lockingForce.value && reached !== 'begin');
  const here = smaller.filter(({ candidate }) => candidate.cavities === cavities);
  const size = Math.max(...here.map(({ candidate }) => candidate.machine.lockingForce.value));
  const next = here.filter(({ candidate }) => candidate.machine.lockingForce.value === size);
  ledger.setText('machine.smaller-stopped', whyNot(ledger, next));
}

/** What keeps a machine out: the limit that its nearest plunger breaks, for the others of it may break other ones; or that it only loses. */
function whyNot({ rulebook }: Ledger, plungers: readonly Tried[]): string {
  if (plungers.length === 0) return 'nothing; it was not tried, because the machine is pinned or no smaller one is to be had';
  const passing = plungers.filter(({ stop }) => stop === undefined);
  if (passing.length > 0) return passing[0]?.waived[0]?.message ?? 'a good part costs more or it has less in reserve';
  const { stop, candidate } = nearest(rulebook, plungers);
  const plunger = stop?.eases === 'plunger' ? ` (with its plunger of ${formatNumber(candidate.plunger.value)} mm, which comes nearest)` : '';
  return `${stop?.message}${plunger}`;
}

/** The best of each count of cavities that was looked at: machine, plunger, what a good part costs, or why there is none. */
function fileCounts(ledger: Ledger, found: Search): void {
  const { tried, chosen, ranking } = found;
  if (!ranking.byCost) return;
  for (const cavities of [...new Set(tried.map(({ candidate }) => candidate.cavities))].sort((a, b) => a - b)) {
    const item = String(cavities);
    const here = tried.filter(({ candidate }) => candidate.cavities === cavities);
    const done = here.filter(({ reached, cost }) => reached === 'done' && cost !== undefined);
    const rank = (one: Tried): number => ranking.of(rankedOf(one));
    const [best] = [...done].sort((a, b) => rank(a) - rank(b));
    const shown = chosen.candidate.cavities === cavities && done.includes(chosen) ? chosen : best;
    ledger.setText('machine.count-outcome', outcomeOf(here, shown, found), { item });
    if (shown?.cost === undefined) continue;
    const { machine, plunger } = shown.candidate;
    ledger.setText('machine.count-model', machine.id, { item });
    ledger.put(plunger.as(`machine.count-plunger[${item}]`));
    ledger.put(
      Traced.choice(`machine.count-cost[${item}]`, shown.cost, '1', {
        note: `worked out as this plan is, with ${countOf(cavities)} on ${machine.id} and the plunger of ${formatNumber(plunger.value)} mm; pin these to see that plan`,
        status: 'memory',
      }),
    );
  }
}

function outcomeOf(here: readonly Tried[], shown: Tried | undefined, found: Search): string {
  if (shown === found.chosen) return 'planned';
  if (shown !== undefined) return whyNotTaken(shown, found);
  const floors = here.filter(({ floor }) => floor !== undefined);
  if (floors.length > 0) return 'left before it was worked out to the end: dearer, or what it breaks weighs more';
  const last = here[here.length - 1];
  return last?.stop === undefined ? 'not looked at' : `on the largest machine: ${last.stop.message}`;
}

/** A cheaper one can lose by the weight of its warnings, however few they are; one that ranks the same, by its reserve. */
function whyNotTaken(shown: Tried, { chosen, cheapest, ranking }: Search): string {
  const broken = shown.waived.map(({ message }) => message).join('; ');
  const same = ranking.of(rankedOf(shown)) <= ranking.of(rankedOf(cheapest)) * ranking.alike && shown.waived.length <= cheapest.waived.length;
  if (same) return broken === '' ? 'costs the same and has less in reserve' : `ranks the same, with what it breaks, and has less in reserve: ${broken}`;
  if ((shown.cost ?? 0) < (chosen.cost ?? 0)) return `cheaper, but what it breaks weighs more: ${broken}`;
  return shown.waived.length > chosen.waived.length ? broken : 'dearer';
}

const countOf = (cavities: number): string => (cavities === 1 ? '1 cavity' : `${cavities} cavities`);
const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
