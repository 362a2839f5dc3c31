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
    const ids = new Set<string>();
    reached.set(value, ids);
    for (const parent of value.parents) for (const id of reach(parent)) ids.add(id);
    if (entersHere(value)) {
      ids.add(value.id);
      if (!entries.has(value.id)) entries.set(value.id, value);
    }
    return ids;
  };

  const counts = new Map<string, number>();
  for (const value of values.values()) {
    for (const id of reach(value)) if (id !== value.id) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  const list = [...entries.values()].map((figure) => ({ figure, count: counts.get(figure.id) ?? 0 }));
  return list.sort((a, b) => Number(b.figure.status === 'memory') - Number(a.figure.status === 'memory') || b.count - a.count);
}

function entersHere(value: Traced): boolean {
  if (value.status === 'memory') return value.parents.every((parent) => parent.status !== 'memory');
  return value.status === 'practice' && value.parents.every((parent) => parent.status !== 'practice');
}
