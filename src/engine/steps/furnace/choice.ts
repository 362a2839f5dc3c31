import { didYouMean, orList } from '../../../kernel/spelling.ts';
import { printTraced } from '../../../kernel/traced.ts';
import { findAlloy } from '../../../rulebook/alloys.ts';
import type { FurnaceSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';

type Why = (one: FurnaceSpec) => string | undefined;
const HOLDS: ReadonlySet<string> = new Set(['holding', 'dosing', 'melting and holding']);
const MELTS: ReadonlySet<string> = new Set(['melting', 'melting and holding']);

/** A furnace is used for the families and alloys that its entry names. */
export function takes(ledger: Ledger, { families, alloys }: Pick<FurnaceSpec, 'families' | 'alloys'>): boolean {
  if (families.includes(ledger.alloy.family)) return true;
  return alloys.some(({ id }) => {
    const search = findAlloy(ledger.rulebook, id);
    return 'found' in search && search.found.id === ledger.alloy.id;
  });
}

/** An alloy that no table has is a slip, and must not pass in silence. */
export function reportUnknown(ledger: Ledger, furnaces: readonly FurnaceSpec[]): void {
  for (const furnace of furnaces) {
    for (const { id, at } of furnace.alloys) {
      const search = findAlloy(ledger.rulebook, id);
      if ('found' in search) continue;
      const code = 'unknown' in search ? 'spec/unknown-alloy' : 'spec/ambiguous-alloy';
      const message = `furnace ${furnace.id}: ${'unknown' in search ? `no alloy is called "${id}"` : `"${id}" does not name a single alloy`}; it is passed over`;
      ledger.findings.push({ code, severity: 'warning', message, fix: 'see "diewright list alloys"', ...(at === undefined ? {} : { at }) });
    }
  }
}

/** The smallest furnace that holds the metal at its temperature for long enough; else the one that comes nearest. */
export function chooseHolding(ledger: Ledger, enough: (capacity: number) => boolean): FurnaceSpec | undefined {
  const temperature = ledger.value('fill.holding-temperature');
  const window: Why = ({ coldest, hottest }) =>
    temperature.value >= coldest.value && temperature.value <= hottest.value
      ? undefined
      : `holds ${printTraced(coldest)} to ${printTraced(hottest)}, and the metal is held at ${printTraced(temperature)}`;
  const room: Why = ({ capacity }) => (enough(capacity.value) ? undefined : `holds ${printTraced(capacity)}, poured out too soon`);
  const parents = ['fill.holding-temperature', 'furnace.poured'];
  return choose(
    ledger,
    { id: 'furnace.holding', title: 'Holding furnace', kinds: HOLDS, what: 'holds the metal long enough', checks: [window, room], parents },
    [({ capacity }) => capacity.value],
  );
}

/** The holding furnace itself where it melts enough, else the smallest that does; else the one that melts most. */
export function chooseMelting(ledger: Ledger, melted: number): FurnaceSpec | undefined {
  const rate: Why = ({ meltRate }) =>
    meltRate !== undefined && meltRate.value >= melted ? undefined : `melts ${meltRate === undefined ? 'nothing' : printTraced(meltRate)}`;
  const holding = ledger.texts.get('furnace.holding');
  const parents = ['furnace.melted'];
  return choose(ledger, { id: 'furnace.melting', title: 'Melting furnace', kinds: MELTS, what: 'melts enough for this part', checks: [rate], parents }, [
    ({ id }) => (id === holding ? 0 : 1),
    ({ meltRate }) => meltRate?.value ?? 0,
  ]);
}

interface Wanted {
  readonly id: 'furnace.holding' | 'furnace.melting';
  readonly title: string;
  readonly kinds: ReadonlySet<string>;
  readonly what: string;
  /** Why a furnace does not do, the most serious reason first. */
  readonly checks: readonly Why[];
  readonly parents: readonly string[];
}

function choose(ledger: Ledger, wanted: Wanted, order: readonly ((one: FurnaceSpec) => number)[]): FurnaceSpec | undefined {
  const furnaces = (ledger.plant.furnaces ?? []).filter(({ kind }) => wanted.kinds.has(kind));
  const sorted = furnaces.filter((one) => takes(ledger, one)).sort((a, b) => order.reduce((sum, by) => sum || by(a) - by(b), 0));
  const stopped = (one: FurnaceSpec): number => {
    const place = wanted.checks.findIndex((check) => check(one) !== undefined);
    return place < 0 ? wanted.checks.length : place;
  };
  const fitting = sorted.find((one) => stopped(one) === wanted.checks.length);
  // Of those that do not do, the largest of those that come furthest through the checks.
  const nearest = sorted.reduce<FurnaceSpec | undefined>((best, one) => (best === undefined || stopped(one) >= stopped(best) ? one : best), undefined);
  const named = pinned(ledger, wanted, furnaces);
  const chosen = named ?? fitting ?? nearest;
  if (chosen !== undefined) record(ledger, wanted, chosen, { fitting, isPinned: named !== undefined, others: sorted.filter((one) => one !== chosen) });
  return chosen;
}

function pinned(ledger: Ledger, { id }: Wanted, furnaces: readonly FurnaceSpec[]): FurnaceSpec | undefined {
  const pin = ledger.pinnedWord(id);
  if (pin === undefined) return undefined;
  const found = furnaces.find((one) => one.id === pin.text);
  if (found === undefined) {
    const ids = furnaces.map((one) => one.id);
    const message = `the plant has no such furnace "${pin.text}"${didYouMean(pin.text, ids)}`;
    const fix = ids.length === 0 ? 'add it to the plant file' : `write ${orList(ids.slice(0, 12))}`;
    ledger.findings.push({ code: 'spec/unknown-word', severity: 'error', message, at: pin.at, fix });
  }
  return found;
}

function record(
  ledger: Ledger,
  { id, title, what, checks, parents }: Wanted,
  chosen: FurnaceSpec,
  { fitting, isPinned, others }: { fitting: FurnaceSpec | undefined; isPinned: boolean; others: readonly FurnaceSpec[] },
): void {
  const stops = (one: FurnaceSpec): string | undefined => checks.map((check) => check(one)).find((why) => why !== undefined);
  const best = fitting === undefined ? `no furnace of the plant for ${ledger.alloy.family} ${what}` : `the smallest of the plant that ${what} is ${fitting.id}`;
  const because = isPinned
    ? `pinned by the engineer; ${best}`
    : fitting === undefined
      ? `${best}; this one comes nearest`
      : `${chosen.id === ledger.texts.get('furnace.holding') && id === 'furnace.melting' ? 'the holding furnace' : 'the smallest furnace of the plant that'} ${what}`;
  ledger.record({
    id,
    title,
    value: chosen.id,
    because,
    kind: isPinned ? 'pinned' : 'search',
    status: 'derived',
    source: ['PLANT'],
    parents,
    alternatives: ledger.explains ? others.map((one) => ({ value: one.id, because: stops(one) ?? 'larger' })) : [],
  });
}
