import { Traced } from '../../kernel/traced.ts';
import { type DieSpec, type Direction, FINISHES, type HoleSpec, type PartSpec, type Quality, type UndercutSpec } from '../../spec/index.ts';
import { faceAxes } from '../steps/die/slides.ts';
import { dot, type Vector } from '../steps/parting/directions.ts';
import { openingVector } from '../steps/parting/openings.ts';
import type { Alone } from './members.ts';
import type { Casting } from './set.ts';
import { turnedWay } from './turn.ts';

/** What the castings come to together, as sums and extremes that are worked out elsewhere. */
export interface Together {
  readonly volume: Traced<'cm3'>;
  readonly area: Traced<'cm2'>;
  readonly surface: Traced<'cm2'>;
  readonly partingLine: Traced<'mm'>;
  readonly width: Traced<'mm'>;
  readonly height: Traced<'mm'>;
  readonly depth: Traced<'mm'>;
  readonly wall: { readonly least: Traced<'mm'>; readonly nominal: Traced<'mm'>; readonly greatest?: Traced<'mm'> };
  readonly perYear?: Traced<'1'>;
  readonly life?: Traced<'1'>;
  readonly hoursPerYear?: Traced<'h'>;
}

/**
 * The castings of a shot as one part: it opens along z, its x lies across the die and its y upright. Lists hold those of every
 * casting, named after it and turned as it stands.
 */
export function asOnePart(die: DieSpec, parts: readonly Alone[], castings: readonly Casting[], together: Together): PartSpec {
  const [first] = parts as readonly [Alone, ...Alone[]];
  const { volume, area, surface, partingLine, width, height, depth, wall, perYear, life, hoursPerYear } = together;
  const each = castings.map((casting) => new Standing(parts.find(({ entry }) => entry.id === casting.member) as Alone, casting));
  return {
    source: die.source,
    at: die.at,
    name: die.name,
    ...(die.number === undefined ? {} : { number: die.number }),
    ...(die.revision === undefined ? {} : { revision: die.revision }),
    ...(die.note === undefined ? {} : { note: die.note }),
    alloy: first.given.part.alloy,
    geometry: {
      volume,
      envelope: { x: width.as('part.envelope-x'), y: height.as('part.envelope-y'), z: depth.as('part.envelope-z') },
      projectedArea: { z: area },
      surfaceArea: surface,
      wall,
      dieOpening: { text: 'z', vector: [0, 0, 1], at: die.at },
      partingLine,
    },
    walls: each.flatMap((one) => one.list('walls')),
    holes: each.flatMap((one) => one.holes()),
    undercuts: each.flatMap((one) => one.undercuts()),
    inserts: each.flatMap((one) => one.list('inserts')),
    ribs: [],
    fillets: [],
    dimensions: each.flatMap((one) => one.list('dimensions')).map(({ slide: _slide, ...rest }) => rest),
    quality: qualityOf(die, parts),
    certificate: first.given.part.certificate,
    machining: each.flatMap((one) => one.list('machining')),
    production: {
      at: die.at,
      ...(perYear === undefined ? {} : { perYear }),
      ...(life === undefined ? {} : { life }),
      ...(hoursPerYear === undefined ? {} : { hoursPerYear }),
    },
    pinned: die.pinned,
    accepted: die.accepted,
  };
}

/** A casting as it stands in the die: its lists under its own name, its directions turned with it. */
class Standing {
  readonly #part: PartSpec;
  readonly #axes: readonly [Vector, Vector, Vector];

  constructor(
    alone: Alone,
    private readonly casting: Casting,
  ) {
    this.#part = alone.given.part;
    const [a, b] = faceAxes(alone.ledger);
    this.#axes = [a, b, openingVector(alone.ledger)];
  }

  /** Entries of a list under the name of the casting, with their values filed under it. */
  list<K extends 'walls' | 'inserts' | 'dimensions' | 'machining'>(name: K): PartSpec[K][number][] {
    return (this.#part[name] as readonly { readonly id: string }[]).map((entry) => this.#named(entry)) as PartSpec[K][number][];
  }

  holes(): HoleSpec[] {
    return this.#part.holes.map((hole) => ({ ...this.#named(hole), direction: this.#turn(hole.direction), casting: this.casting.id }));
  }

  undercuts(): UndercutSpec[] {
    return this.#part.undercuts.map((one) => ({ ...this.#named(one), direction: this.#turn(one.direction), casting: this.casting.id }));
  }

  #named<T extends { readonly id: string }>(entry: T): T {
    const id = `${this.casting.id} ${entry.id}`;
    const fields = Object.entries(entry).map(([key, value]) => {
      const held: unknown = value;
      // `hole.depth[H1]` becomes `hole.depth[left lever H1]`.
      return [key, held instanceof Traced ? held.as(`${held.id.slice(0, held.id.indexOf('['))}[${id}]`) : held];
    });
    return { ...Object.fromEntries(fields), id } as T;
  }

  #turn(direction: Direction): Direction {
    const [a, b, opening] = this.#axes.map((axis) => dot(direction.vector, axis)) as [number, number, number];
    const [x, y] = turnedWay([a, b], this.casting.turns);
    const vector = [x, y, opening].map((one) => (Math.abs(one) < 1e-9 ? 0 : one)) as [number, number, number];
    return { ...direction, vector, text: textOf(vector) };
  }
}

function textOf(vector: Vector): string {
  for (const [i, axis] of ['x', 'y', 'z'].entries())
    if (Math.abs(Math.abs(vector[i] as number) - 1) < 1e-9) return `${(vector[i] as number) > 0 ? '+' : '-'}${axis}`;
  return `[${vector.map((one) => Number(one.toFixed(2))).join(', ')}]`;
}

/** The most that any part asks for, since all are cast and treated the same way. */
function qualityOf(die: DieSpec, parts: readonly Alone[]): Quality {
  const all = parts.map(({ given }) => given.part.quality);
  const most = <T extends string>(order: readonly T[], of: (quality: Quality) => T): T =>
    all.map(of).reduce((a, b) => (order.indexOf(b) > order.indexOf(a) ? b : a));
  const [leak] = all.flatMap(({ leakRate }) => leakRate ?? []);
  return {
    use: parts.reduce((a, b) => (pressureOf(b) > pressureOf(a) ? b : a)).given.part.quality.use,
    finish: most(FINISHES, ({ finish }) => finish),
    heatTreatment: all.find(({ heatTreatment }) => heatTreatment !== 'none')?.heatTreatment ?? 'none',
    welded: all.some(({ welded }) => welded),
    coldShut: all.every(({ coldShut }) => coldShut === 'some') ? 'some' : 'none',
    ...(leak === undefined ? {} : { leakRate: leak }),
    markets: [...new Set(all.flatMap(({ markets }) => markets))],
    given: new Set(all.flatMap(({ given }) => [...given])),
    at: die.at,
  };
}

/** Metal pressure in MPa of the class of a part; 0 where none is known. */
const pressureOf = ({ ledger }: Alone): number => ledger.maybe('clamp.pressure')?.value ?? 0;
