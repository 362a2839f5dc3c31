import type { Ledger } from '../../ledger.ts';
import type { Decision } from '../../plan.ts';
import type { Search, Tried } from './search.ts';

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
    because: machineBecause(found, pinned !== undefined),
    alternatives: rejectedMachines(found),
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
    because: plunger.kind === 'pinned' ? (plunger.note ?? '') : plungerBecause(found, ledger.text('machine.chamber') === 'cold'),
  });
  fileStops(ledger, found);
}

function machineBecause(found: Search, pinned: boolean): string {
  const waived = found.fits ? found.chosen.stop?.title : undefined;
  if (pinned) return `pinned by the engineer; it ${found.fits && waived === undefined ? 'passes the limits looked at' : 'does not pass every limit'}`;
  if (!found.fits) return 'nearest miss: no machine of the plant passes every limit';
  if (waived === undefined) return 'smallest machine of the plant with a plunger that passes every limit looked at';
  return `smallest machine of the plant that passes every limit but one, which no machine passes: ${lowerFirst(waived)}`;
}

function plungerBecause(found: Search, cold: boolean): string {
  if (!found.fits) return 'the plunger that comes nearest to what stopped it';
  if (found.chosen.stop !== undefined) return 'the plunger that comes nearest to the limit that none passes';
  return cold
    ? 'of the plungers that pass, the one whose sleeve fill is nearest the middle of its window'
    : 'the largest plunger that passes, for the lower plunger speed';
}

/** For the findings: what the machine shown fails, how many smaller ones the plant has, and what stopped the next of them. */
function fileStops(ledger: Ledger, found: Search): void {
  const { machine, cavities } = found.chosen.candidate;
  ledger.setText('machine.stopped', found.chosen.stop?.message ?? 'nothing');
  const smaller = found.tried.filter(({ candidate }) => candidate.machine.lockingForce.value < machine.lockingForce.value);
  const here = smaller.filter(({ candidate }) => candidate.cavities === cavities);
  const next = nearest(here.filter(({ candidate }) => candidate.machine === here[here.length - 1]?.candidate.machine));
  ledger.setText('machine.smaller-stopped', next?.stop?.message ?? 'none was tried');
}

/**
 * What stopped each machine that was tried, with its plunger that came nearest. Neighbours in size that the same limit
 * stopped share a line, which shows the figures of the one that came nearest.
 */
function rejectedMachines(found: Search): Decision['alternatives'] {
  const chosen = found.chosen.candidate;
  const groups: { list: Tried[] }[] = [];
  for (const entry of ofEachMachine(found.tried)) {
    if (entry.stop === undefined || entry.candidate.machine === chosen.machine) continue;
    // Larger machines than the one taken were tried only to see whether they pass what it does not; the next one tells enough.
    const larger = entry.candidate.machine.lockingForce.value > chosen.machine.lockingForce.value;
    if (larger && groups.some(({ list }) => (list[0] as Tried).candidate.machine.lockingForce.value > chosen.machine.lockingForce.value)) continue;
    const last = groups[groups.length - 1];
    const neighbour = last?.list[0];
    const same = !larger && neighbour?.stop?.id === entry.stop.id && neighbour.candidate.cavities === entry.candidate.cavities;
    if (same) last?.list.push(entry);
    else groups.push({ list: [entry] });
  }
  return groups.map(({ list }) => {
    // Limits of the machine itself ease with its size, and so do those that a wider plunger meets better; the others are met best by the first.
    const eases = list[0]?.stop?.ofMachine === true || list[0]?.stop?.wider === true;
    const shown = (eases ? list[list.length - 1] : list[0]) as Tried;
    const others = list.length - 1;
    const which = shown === list[0] ? 'larger' : 'smaller';
    const { machine, plunger, cavities } = shown.candidate;
    const more = others === 0 ? '' : `, and the ${others === 1 ? `next ${which} one` : `${others} ${which} ones`}`;
    return {
      value: `${machine.id} with plunger ${plunger.value} mm, ${cavities} ${cavities === 1 ? 'cavity' : 'cavities'}${more}`,
      because: shown.stop?.message ?? '',
    };
  });
}

/** For each machine and count of cavities, in the order tried, its plunger that came nearest. */
function ofEachMachine(tried: readonly Tried[]): Tried[] {
  const groups = new Map<string, Tried[]>();
  for (const entry of tried) {
    const key = `${entry.candidate.machine.id}/${entry.candidate.cavities}`;
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()].map((list) => nearest(list) as Tried);
}

/** The plunger that came furthest through the limits; of several stopped by the same one, the one that it asks less of. */
function nearest(list: readonly Tried[]): Tried | undefined {
  return list.reduce<Tried | undefined>((near, entry) => {
    if (near === undefined || entry.reached > near.reached) return entry;
    return entry.reached === near.reached && entry.stop?.wider === true ? entry : near;
  }, undefined);
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
