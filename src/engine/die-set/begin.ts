import { Traced } from '../../kernel/traced.ts';
import type { Unit } from '../../kernel/units.ts';
import { setsNeeded } from '../../physics/casting-set.ts';
import type { PricesSpec } from '../../spec/index.ts';
import { type Counted, greatestOf, leastOf, meanOf, spreadOf, totalOf } from '../combine.ts';
import { Ledger } from '../ledger.ts';
import type { UnitOf, ValueId } from '../vocabulary/index.ts';
import type { Alone } from './members.ts';
import { LEAK_TESTED } from './sealing.ts';
import type { SetLayout } from './set.ts';
import type { Together } from './virtual.ts';

/** What the parts come to together, what of it is settled for the plan of the die, and what is filed of each part. */
export interface Begun {
  readonly together: Together;
  readonly settled: ReadonlyMap<string, Traced>;
  readonly filed: readonly Traced[];
}

/** A value of the plan of a part, under a name of the plan of the die; how it came about stands there. */
export function fromPlanOf<U extends Unit>(part: string, id: string, value: Traced<U>): Traced<U> {
  const note = `${value.id} in the plan of ${part}`;
  return Traced.choice(`${id}[${part}]`, value.value, value.unit, { note, status: value.status, source: value.source });
}

/** Collects values of the parts for the plan of the die. */
class Collection {
  readonly filed: Traced[] = [];

  constructor(private readonly parts: readonly Alone[]) {
    for (const { entry } of parts) this.filed.push(entry.count);
  }

  /** One value of each part that has it, with the count of its castings. */
  of<K extends ValueId>(id: K, from: (ledger: Ledger) => Traced<UnitOf<K>> | undefined): Counted<UnitOf<K>>[] {
    return this.parts.flatMap(({ entry, ledger }) => {
      const value = from(ledger);
      return value === undefined ? [] : [{ value: this.put(fromPlanOf(entry.id, id, value as Traced)) as unknown as Traced<UnitOf<K>>, count: entry.count }];
    });
  }

  put<U extends Unit>(value: Traced<U>): Traced<U> {
    this.filed.push(value as unknown as Traced);
    return value;
  }
}

const values = <U extends Unit>(list: readonly Counted<U>[]): Traced<U>[] => list.map(({ value }) => value);
const derived = { status: 'derived' } as const;

/** Puts together what the castings of a shot are, and files what of each part the plan of the die rests on. */
export function begin(parts: readonly Alone[], layout: SetLayout, prices: PricesSpec | undefined): Begun {
  const all = new Collection(parts);
  const volume = all.of('set.volume', (part) => part.maybe('part.volume'));
  all.of('set.mass', (part) => part.maybe('part.mass'));
  const area = all.of('set.area', (part) => part.maybe('part.projected-area'));
  const surface = all.of('set.surface', (part) => part.maybe('part.surface-area') ?? part.maybe('heat.face-by-wall'));
  const line = all.of('set.parting-line', (part) => part.maybe('overflow.parting-line'));
  const depth = all.of('set.depth', (part) => part.maybe('part.depth'));
  const nominal = all.of('set.wall', (part) => part.maybe('part.wall-nominal'));
  const least = all.of('set.wall-least', (part) => part.maybe('fill.wall'));
  const greatest = all.of('set.wall-greatest', (part) => part.maybe('part.wall-greatest'));
  all.of('set.pressure', (part) => part.maybe('clamp.pressure'));
  const count = Traced.choice('set.castings', layout.castings.length, '1', {
    ...derived,
    note: 'castings of all parts together',
    parents: parts.map(({ entry }) => entry.count as unknown as Traced),
  });
  all.put(count);
  all.put(Traced.choice('set.parts', parts.length, '1', { ...derived, note: 'entries of the die file' }));
  if (parts.length > 1) all.put(spreadOf('set.wall-ratio', 'Thickest over thinnest nominal wall', values(nominal)));
  const settled = new Map<string, Traced>();
  const settle = (...list: readonly (Traced<Unit> | undefined)[]): void => {
    for (const value of list) if (value !== undefined) settled.set(value.id, value);
  };
  settle(...fillTimes(all, parts), ...overflows(all));
  const steel = all.of('set.steel', (part) => part.maybe('die.steel-around'));
  if (steel.length > 0) settle(greatestOf('die.steel-around', 'Steel around the castings', values(steel), 'that of the largest casting') as unknown as Traced);
  places(all, parts, layout, area);
  settle(...perCasting(all, parts, prices, count));
  return {
    together: {
      volume: totalOf('part.volume', 'Volume of all castings', volume),
      area: totalOf('part.projected-area-z', 'Projected area of all castings', area),
      surface: totalOf('part.surface-area', 'Surface of all castings', surface),
      partingLine: totalOf('part.parting-line', 'Parting lines of all castings', line),
      ...field(all, layout),
      depth: greatestOf('part.depth', 'Deepest draw', values(depth)),
      wall: {
        least: leastOf('part.wall-least', 'Least wall', values(least), 'of all castings'),
        nominal: greatestOf('part.wall-nominal', 'Thickest nominal wall', values(nominal), 'of all castings: the thickest leaves the die last'),
        ...(greatest.length === 0 ? {} : { greatest: greatestOf('part.wall-greatest', 'Greatest wall', values([...greatest, ...nominal]), 'of all castings') }),
      },
      ...production(all, parts),
    },
    settled,
    filed: all.filed,
  };
}

/** One time for all: the shortest that any part is planned with alone, so that none is filled more slowly than it should be. */
function fillTimes(all: Collection, parts: readonly Alone[]): (Traced<Unit> | undefined)[] {
  all.of('set.longest-time', (part) => part.maybe('fill.longest-time'));
  all.of('set.recommended-time', (part) => part.maybe('fill.recommended-time'));
  const own = values(all.of('set.own-time', (part) => part.maybe('fill.time')));
  if (own.length === 0) return [];
  if (parts.length > 1) {
    all.put(spreadOf('set.fill-ratio', 'Longest over shortest fill time', own));
    all.put(leastOf('set.least-time', 'Shortest fill time of a part alone', own));
    all.put(greatestOf('set.greatest-time', 'Longest fill time of a part alone', own));
  }
  return [leastOf('fill.time', 'Fill time of the shot', own, 'the shortest that any part is planned with alone') as unknown as Traced];
}

function overflows(all: Collection): (Traced<Unit> | undefined)[] {
  const volume = all.of('set.overflow', (part) => part.maybe('overflow.volume'));
  const number = all.of('set.overflows', (part) => part.maybe('overflow.number'));
  const area = all.of('set.overflow-area', (part) => part.maybe('overflow.area'));
  const face = all.of('set.overflow-face', (part) => part.maybe('overflow.face'));
  const wall = all.of('set.overflow-wall', (part) => part.maybe('overflow.wall'));
  return [
    area.length === 0 ? undefined : (totalOf('overflow.area', 'Overflows of all castings, projected area', area) as unknown as Traced),
    face.length === 0 ? undefined : (totalOf('overflow.face', 'Overflows of all castings, face on the die', face) as unknown as Traced),
    wall.length === 0 ? undefined : (greatestOf('overflow.wall', 'Thickest overflow', values(wall), 'of all castings') as unknown as Traced),
    volume.length === 0 ? undefined : (totalOf('overflow.volume', 'Overflows of all castings', volume) as unknown as Traced),
    number.length === 0 ? undefined : (totalOf('overflow.number', 'Overflows of all castings', number) as unknown as Traced),
  ];
}

function field(all: Collection, { width, height }: SetLayout): Pick<Together, 'width' | 'height'> {
  const note = 'by the layout of the castings, with steel and slides between them';
  return {
    width: all.put(Traced.choice('set.field-width', width, 'mm', { status: 'practice', note })),
    height: all.put(Traced.choice('set.field-height', height, 'mm', { status: 'practice', note })),
  };
}

/** The middle of the castings of each part, and the pressure centre of all, from the middle of the field. */
function places(all: Collection, parts: readonly Alone[], layout: SetLayout, area: readonly Counted<'cm2'>[]): void {
  const mean = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0) / list.length;
  for (const axis of ['x', 'y'] as const) {
    const terms = parts.map(({ entry }, i) => {
      const at = mean(layout.castings.filter(({ member }) => member === entry.id).map((one) => one[axis]));
      const value = all.put(Traced.choice(`set.place-${axis}[${entry.id}]`, at, 'mm', { ...derived, note: 'by the layout of the castings' }));
      return { value, count: entry.count, weight: (area[i] as Counted<'cm2'>).value };
    });
    all.put(meanOf(`set.centre-${axis}`, 'Pressure centre of the castings', terms, 'weighed by projected area'));
  }
  all.put(Traced.choice('set.slides-between', layout.inner.length, '1', { ...derived, note: 'castings turned so that they are as few as can be' }));
}

/** Shots with good castings that are needed: the part that needs the most of them decides, and the others come along. */
function production(all: Collection, parts: readonly Alone[]): Pick<Together, 'perYear' | 'life' | 'hoursPerYear'> {
  const ledger = new Ledger((parts[0] as Alone).given);
  const sets = (needed: 'set.needed' | 'set.life', of: 'set.sets-needed' | 'set.sets-life', from: 'production.per-year' | 'production.life') =>
    all
      .of(needed, (part) => part.maybe(from))
      .map(({ value, count }) => {
        const item = value.id.slice(value.id.indexOf('[') + 1, -1);
        return all.put(ledger.apply(setsNeeded, { castings: value, count }, { id: of, item }));
      });
  const year = sets('set.needed', 'set.sets-needed', 'production.per-year');
  const life = sets('set.life', 'set.sets-life', 'production.life');
  const hours = parts.flatMap(({ given }) => given.part.production.hoursPerYear ?? []);
  const note = 'of the part that needs the most shots; the others come along';
  return {
    ...(year.length === 0 ? {} : { perYear: greatestOf('production.per-year', 'Sets a year', year, note) }),
    ...(life.length === 0 ? {} : { life: greatestOf('production.life', 'Sets over the life', life, note) }),
    ...(hours.length === 0 ? {} : { hoursPerYear: hours.reduce((a, b) => (b.value > a.value ? b : a)) }),
  };
}

/** What a plant charges for each casting, for the castings of a set. */
function perCasting(all: Collection, parts: readonly Alone[], prices: PricesSpec | undefined, castings: Traced<'1'>): (Traced<Unit> | undefined)[] {
  const features = all.of('set.machine-features', (part) => part.maybe('cost.machining-features'));
  const cut = features.filter(({ value }) => value.value > 0);
  const machined = all.put(
    Traced.choice(
      'set.machined',
      cut.reduce((sum, { count }) => sum + count.value, 0),
      '1',
      {
        ...derived,
        note: 'castings with features to be machined',
        parents: parts.map(({ entry }) => entry.count as unknown as Traced),
      },
    ),
  );
  const sealed = parts.filter(({ given }) => given.part.quality.use === LEAK_TESTED);
  const tested = all.put(
    Traced.choice(
      'set.leak-tested',
      sealed.reduce((sum, { entry }) => sum + entry.count.value, 0),
      '1',
      { ...derived, note: 'castings of parts that hold pressure', parents: sealed.map(({ entry }) => entry.count as unknown as Traced) },
    ),
  );
  const times = (value: Traced<Unit> | undefined, id: string, title: string, count: Traced<'1'>): Traced<Unit> | undefined =>
    value === undefined ? undefined : (totalOf(id, title, [{ value, count }]) as Traced<Unit>);
  return [
    times(prices?.trimming?.each as Traced<Unit> | undefined, 'cost.trim-each', 'Trimming time for the castings of a set', castings),
    times(
      prices?.machining?.handling as Traced<Unit> | undefined,
      'cost.machining-handling',
      'Handling time for the castings of a set that are machined',
      machined,
    ),
    times(prices?.impregnation as Traced<Unit> | undefined, 'cost.impregnation-price', 'Impregnation of the castings of a set that are leak-tested', tested),
  ];
}
