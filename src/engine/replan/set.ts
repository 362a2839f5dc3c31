import type { PartChange, PartFailure, Side } from './change.ts';

/** How many parts, and how many castings a year those of them make that say so. A die with several parts counts once, with all its castings. */
export interface Counted {
  readonly parts: number;
  readonly castings: number;
  /** Parts whose description gives no yearly volume. */
  readonly withoutVolume: number;
}

export interface Count extends Counted {
  readonly id: string;
  readonly title: string;
}

/** The sum of a figure over the parts that are castable in both plans and have it in both. */
export interface Total {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly before: number;
  readonly after: number;
  /** Change in per cent of what was before; absent where that was nothing. */
  readonly percent?: number;
  readonly parts: number;
  /** Parts of the set that are not in the sum. */
  readonly leftOut: number;
}

export interface MachineLoad {
  readonly machine: string;
  readonly before: LoadSide;
  readonly after: LoadSide;
}

export interface LoadSide {
  readonly parts: number;
  /** Machine hours a year. */
  readonly hours: number;
  /** Hours over the hours a year that each part is planned for: how many machines that is. */
  readonly machines: number;
}

/** What the whole set comes to. */
export interface SetChange {
  readonly compared: Counted;
  readonly failed: number;
  /** Of those compared, dies with several parts. */
  readonly sharedDies: number;
  readonly alloys: readonly { readonly before: string; readonly after: string; readonly parts: number }[];
  readonly plants: readonly { readonly before: string; readonly after: string; readonly parts: number }[];
  readonly standings: readonly Count[];
  readonly moves: readonly Count[];
  readonly dies: readonly Count[];
  readonly totals: readonly Total[];
  readonly machines: readonly MachineLoad[];
  /** What the new dies and inserts cost together by the plans after; parts without that figure, or in another currency, are left out. */
  readonly investment: readonly { readonly id: string; readonly title: string; readonly amount: number; readonly parts: number; readonly leftOut: number }[];
  readonly currency?: string;
  /** Rules that stop parts that could be cast before. */
  readonly stoppers: readonly { readonly code: string; readonly title: string; readonly parts: number }[];
}

const STANDINGS = ['no longer castable', 'not castable before or after', 'becomes castable', 'stays castable'] as const;
const DIE_VERDICTS = ['new die', 'new inserts', 'recut', 'as it is', 'not judged'] as const;
const DIE_TITLES: Readonly<Record<string, string>> = {
  'new die': 'New die',
  'new inserts': 'New cavity inserts in the existing die',
  recut: 'Existing die recut',
  'as it is': 'Existing die as it is',
  'not judged': 'Existing die not judged',
};

/** Adds up a set of parts. The result does not depend on their order: they are taken in the order of their files. */
export function summarise(list: readonly PartChange[], failures: readonly PartFailure[]): SetChange {
  const parts = inOrder(list);
  // A plan that breaks rules shows the nearest miss: its machine, hours and cost are no basis for a sum.
  const both = parts.filter(({ before, after }) => before.castable && after.castable);
  const currency = parts.map(({ after }) => after.currency).find((word) => word !== undefined);
  const priced = both.filter(({ before, after }) => before.currency === currency && after.currency === currency);
  return {
    compared: counted(parts),
    failed: failures.length,
    sharedDies: parts.filter((one) => one.parts !== undefined).length,
    alloys: pairs(parts, 'alloy'),
    plants: pairs(parts, 'plant'),
    standings: STANDINGS.map((standing) => ({
      id: standing.replaceAll(' ', '-'),
      title: upper(standing),
      ...counted(parts.filter((one) => one.standing === standing)),
    })),
    moves: [
      { id: 'kind', title: 'Another kind of machine', ...counted(both.filter((one) => one.before.kind !== one.after.kind)) },
      {
        id: 'machine',
        title: 'Another machine of the same kind',
        ...counted(both.filter((one) => one.before.kind === one.after.kind && one.before.machine !== one.after.machine)),
      },
      {
        id: 'cavities',
        title: 'Another count of cavities',
        ...counted(both.filter((one) => one.before.figures['machine.cavities'] !== one.after.figures['machine.cavities'])),
      },
      { id: 'steel', title: 'Another cavity steel', ...counted(both.filter((one) => one.before.steel !== one.after.steel)) },
      { id: 'nothing', title: 'Nothing that is listed changes', ...counted(parts.filter(isUnchanged)) },
    ],
    dies: DIE_VERDICTS.map((verdict) => ({
      id: verdict.replaceAll(' ', '-'),
      title: DIE_TITLES[verdict] ?? verdict,
      ...counted(parts.filter(({ die }) => die?.verdict === verdict)),
    })),
    totals: [
      total('cycle.hours', 'Machine hours a year', 'h', both, parts, (side) => side.figures['cycle.hours']),
      total('machines', 'Machines at full use of their hours', '1', both, parts, machinesOf),
      total('metal.new-per-part', 'New metal a year', 't', both, parts, (side, one) => metalOf(side, one)),
      total('cost.per-year', 'Cost of the castings a year', '1', priced, parts, (side) => side.figures['cost.per-year']),
    ],
    machines: loads(both),
    investment: [
      investment('cost.die', 'New dies', 'new die', both, currency),
      investment('cost.set', 'New cavity inserts, one set each', 'new inserts', both, currency),
    ],
    ...(currency === undefined ? {} : { currency }),
    stoppers: stoppersOf(parts),
  };
}

/** Parts in the order of their files. */
export function inOrder<T extends { readonly file: string }>(list: readonly T[]): T[] {
  return [...list].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
}

/** Whether two plans say the same of everything that a reader is shown. */
export function isUnchanged({ groups, appeared, vanished, cautions, leftOut, parts = [] }: PartChange): boolean {
  const changes = groups.length + appeared.length + vanished.length + cautions.appeared.length + cautions.vanished.length + leftOut.small + leftOut.further;
  return changes === 0 && parts.every(isUnchanged);
}

function counted(parts: readonly PartChange[]): Counted {
  const volumes = parts.flatMap(({ perYear, castings = 1 }) => (perYear === undefined ? [] : perYear * castings));
  return { parts: parts.length, castings: sum(volumes), withoutVolume: parts.length - volumes.length };
}

function total(
  id: string,
  title: string,
  unit: string,
  over: readonly PartChange[],
  all: readonly PartChange[],
  figure: (side: Side, part: PartChange) => number | undefined,
): Total {
  const pairs = over.flatMap((part) => {
    const [before, after] = [figure(part.before, part), figure(part.after, part)];
    return before === undefined || after === undefined ? [] : [{ before, after }];
  });
  const before = sum(pairs.map((pair) => pair.before));
  const after = sum(pairs.map((pair) => pair.after));
  return {
    id,
    title,
    unit,
    before,
    after,
    ...(before === 0 ? {} : { percent: (100 * (after - before)) / before }),
    parts: pairs.length,
    leftOut: all.length - pairs.length,
  };
}

function machinesOf({ figures }: Side): number | undefined {
  const [needed, hours] = [figures['cycle.hours'], figures['production.hours-per-year']];
  return needed === undefined || hours === undefined || hours === 0 ? undefined : needed / hours;
}

/** Tonnes of new metal for the castings of a year. */
function metalOf({ figures }: Side, { perYear }: PartChange): number | undefined {
  const each = figures['metal.new-per-part'];
  return each === undefined || perYear === undefined ? undefined : (each * perYear) / 1000;
}

function loads(parts: readonly PartChange[]): MachineLoad[] {
  const names = [...new Set(parts.flatMap(({ before, after }) => [before, after]).flatMap(({ machine }) => machine ?? []))];
  const size = (name: string): number =>
    parts.flatMap(({ before, after }) => [before, after]).find(({ machine }) => machine === name)?.figures['machine.locking-force'] ?? 0;
  const kind = (name: string): string => parts.flatMap(({ before, after }) => [before, after]).find(({ machine }) => machine === name)?.kind ?? '';
  const side = (name: string, of: (part: PartChange) => Side): LoadSide => {
    const on = parts.filter((part) => of(part).machine === name).map(of);
    return {
      parts: on.length,
      hours: sum(on.map(({ figures }) => figures['cycle.hours'] ?? 0)),
      machines: sum(on.map((one) => machinesOf(one) ?? 0)),
    };
  };
  return names
    .sort((a, b) => compare(kind(a), kind(b)) || size(a) - size(b) || compare(a, b))
    .map((machine) => ({ machine, before: side(machine, ({ before }) => before), after: side(machine, ({ after }) => after) }));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function investment(id: string, title: string, verdict: string, parts: readonly PartChange[], currency: string | undefined) {
  const concerned = parts.filter(({ die }) => die?.verdict === verdict);
  const amounts = concerned.filter(({ after }) => after.currency === currency).flatMap(({ after }) => after.figures[id] ?? []);
  return { id, title, amount: sum(amounts), parts: amounts.length, leftOut: concerned.length - amounts.length };
}

function pairs(parts: readonly PartChange[], key: 'alloy' | 'plant'): { before: string; after: string; parts: number }[] {
  const found = new Map<string, { before: string; after: string; parts: number }>();
  for (const { before, after } of parts) {
    const name = JSON.stringify([before[key], after[key]]);
    const entry = found.get(name) ?? { before: before[key], after: after[key], parts: 0 };
    found.set(name, { ...entry, parts: entry.parts + 1 });
  }
  return [...found.values()].sort((a, b) => b.parts - a.parts || compare(a.before, b.before) || compare(a.after, b.after));
}

function stoppersOf(parts: readonly PartChange[]): { code: string; title: string; parts: number }[] {
  const found = new Map<string, { title: string; files: Set<string> }>();
  for (const part of parts.filter(({ standing }) => standing === 'no longer castable')) {
    for (const { code, title, severity } of [part, ...(part.parts ?? [])].flatMap(({ appeared }) => appeared)) {
      if (severity !== 'error') continue;
      const entry = found.get(code) ?? { title, files: new Set<string>() };
      entry.files.add(part.file);
      found.set(code, entry);
    }
  }
  return [...found].map(([code, { title, files }]) => ({ code, title, parts: files.size })).sort((a, b) => b.parts - a.parts || compare(a.code, b.code));
}

function sum(list: readonly number[]): number {
  return list.reduce((all, one) => all + one, 0);
}

function upper(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
