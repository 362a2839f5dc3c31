import type { Traced } from '../kernel/traced.ts';

/** A figure through which memory or common practice enters the plan, and how many other values rest on it. */
export interface WeakFigure {
  readonly figure: Traced;
  readonly count: number;
}

/**
 * The unverified figures of a plan: values of status `memory` or `practice` that rest on nothing of that status or
 * worse, so that checking them would lift what rests on them. Memory first, then those that most values rest on.
 */
export function weakFigures(values: ReadonlyMap<string, Traced>): WeakFigure[] {
  const entries = new Map<string, Traced>();
  const reached = new Map<Traced, ReadonlySet<string>>();

  const reach = (value: Traced): ReadonlySet<string> => {
    const known = reached.get(value);
    if (known !== undefined) return known;
    const ids = union(value.parents.map(reach), entersHere(value) ? value.id : undefined);
    reached.set(value, ids);
    if (entersHere(value) && !entries.has(value.id)) entries.set(value.id, value);
    return ids;
  };

  const counts = new Map<string, number>();
  for (const value of values.values()) {
    for (const id of reach(value)) if (id !== value.id) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  const list = [...entries.values()].map((figure) => ({ figure, count: counts.get(figure.id) ?? 0 }));
  return list.sort((a, b) => Number(b.figure.status === 'memory') - Number(a.figure.status === 'memory') || b.count - a.count);
}

const NONE: ReadonlySet<string> = new Set();

/** All of these ids. Most values rest on what one of their parents rests on: then that parent's set serves for both. */
function union(sets: readonly ReadonlySet<string>[], own: string | undefined): ReadonlySet<string> {
  let all = NONE;
  for (const set of sets) if (set.size > all.size) all = set;
  const more = sets.flatMap((set) => (set === all ? [] : [...set].filter((id) => !all.has(id))));
  if (own !== undefined && !all.has(own)) more.push(own);
  return more.length === 0 ? all : new Set([...all, ...more]);
}

function entersHere(value: Traced): boolean {
  if (value.status === 'memory') return value.parents.every((parent) => parent.status !== 'memory');
  return value.status === 'practice' && value.parents.every((parent) => parent.status !== 'practice');
}
