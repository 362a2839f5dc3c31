import type { Rulebook } from '../../../rulebook/types.ts';
import type { Ledger } from '../../ledger.ts';
import type { Decision } from '../../plan.ts';
import type { Tried } from './evaluate.ts';
import type { Search } from './search.ts';
import { stoppingPlace } from './stops.ts';

/**
 * What stopped each machine that was tried with the count of cavities of the plan, with its plunger that came nearest.
 * Neighbours in size that the same limit stopped share a line, which shows the figures of the one that came nearest. Of a search that
 * found nothing the nearest misses stand first.
 */
export function rejectedMachines(ledger: Ledger, { tried, chosen, misses, fits }: Search): Decision['alternatives'] {
  if (!fits)
    return ofMachines(misses)
      .slice(0, MOST)
      .map(({ tried: one, broken }) => ({ value: nameOf(ledger, one), because: broken.map(({ message }) => message).join('; ') }));
  const { machine, cavities } = chosen.candidate;
  const groups: Tried[][] = [];
  const here = tried.filter(({ candidate, stop }) => candidate.cavities === cavities && candidate.machine !== machine && stop !== undefined);
  for (const entry of ofEachMachine(ledger, here)) {
    // What stops a larger machine is of no use to anybody, but for the next one.
    const larger = (one: Tried): boolean => one.candidate.machine.lockingForce.value > machine.lockingForce.value;
    if (larger(entry) && groups.some(([first]) => first !== undefined && larger(first))) continue;
    const last = groups[groups.length - 1];
    const same = !larger(entry) && last?.[0]?.stop?.id === entry.stop?.id;
    if (same) last?.push(entry);
    else groups.push([entry]);
  }
  return groups.map((list) => {
    // Limits that ease with the size of machine or plunger are met best by the last, the others by the first.
    const shown = (list[0]?.stop?.eases === undefined ? list[0] : list[list.length - 1]) as Tried;
    const others = list.length - 1;
    const which = shown === list[0] ? 'larger' : 'smaller';
    const more = others === 0 ? '' : `, and the ${others === 1 ? `next ${which} one` : `${others} ${which} ones`}`;
    return { value: `${nameOf(ledger, shown)}${more}`, because: shown.stop?.message ?? '' };
  });
}

/** The nearest miss of each machine. */
function ofMachines(misses: Search['misses']): Search['misses'] {
  const seen = new Set<string>();
  return misses.filter(({ tried: { candidate } }) => !seen.has(candidate.machine.id) && seen.add(candidate.machine.id));
}

/** Misses shown of a search that found nothing. */
const MOST = 5;

function nameOf({ given }: Ledger, { candidate: { machine, plunger, cavities } }: Tried): string {
  if (given.set !== undefined) return `${machine.id} with plunger ${plunger.value} mm`;
  return `${machine.id} with plunger ${plunger.value} mm, ${cavities} ${cavities === 1 ? 'cavity' : 'cavities'}`;
}

/** For each machine, in the order tried, its plunger that came nearest. */
function ofEachMachine({ rulebook }: Ledger, tried: readonly Tried[]): Tried[] {
  const groups = new Map<string, Tried[]>();
  for (const entry of tried) groups.set(entry.candidate.machine.id, [...(groups.get(entry.candidate.machine.id) ?? []), entry]);
  return [...groups.values()].map((list) => nearest(rulebook, list));
}

/** The plunger that came furthest through the limits; of several stopped by the same one, the one that it asks less of. */
export function nearest(rulebook: Rulebook, list: readonly Tried[]): Tried {
  return list.reduce((near, entry) => {
    const [a, b] = [stoppingPlace(rulebook, near.stop), stoppingPlace(rulebook, entry.stop)];
    return b > a || (b === a && entry.stop?.eases === 'plunger') ? entry : near;
  });
}
