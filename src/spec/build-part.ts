import type { LocatedYaml, YamlPath } from '../kernel/located-yaml.ts';
import { Traced } from '../kernel/traced.ts';
import type { Unit } from '../kernel/units.ts';
import type { DirectionReading } from './direction.ts';
import type { Reading } from './leaves.ts';
import type { Direction, Geometry, PartSpec, Production, Quality } from './part.ts';
import type { PartData } from './part-schema.ts';
import { present } from './present.ts';

/** Reference that inputs of a part file carry as their source. */
export const PART_SOURCE = 'PART';

/** The part of a file without faults: every quantity becomes a traced input with its place. */
export function buildPart(data: PartData, yaml: LocatedYaml): PartSpec {
  const build = new PartBuilder(data, yaml);
  const { name, number, revision, note } = data.part;
  return {
    source: yaml.source,
    at: yaml.whole,
    name,
    ...present({ number, revision, note }),
    alloy: { value: data.alloy, at: yaml.place(['alloy']) },
    geometry: build.geometry(),
    ...build.lists(),
    quality: build.quality(),
    certificate: Object.entries(data.certificate ?? {}).flatMap(([element, share]) => {
      if (share === undefined) return [];
      const path = ['certificate', element];
      return [{ element, share: build.traced(`certificate.${element.toLowerCase()}`, share, path), at: yaml.place(path) }];
    }),
    production: build.production(),
    ...buildDecisions(data, yaml),
  };
}

/** What the engineer has decided: pinned values and accepted findings, each with its place. */
export function buildDecisions(
  { pinned = {}, accepted = [] }: Pick<PartData, 'pinned' | 'accepted'>,
  yaml: LocatedYaml,
): Pick<PartSpec, 'pinned' | 'accepted'> {
  return {
    pinned: new Map(Object.entries(pinned).map(([id, text]) => [id, { id, text, at: yaml.place(['pinned', id]) }])),
    accepted: accepted.map(({ code, item, reason }, i) => ({
      code,
      ...present({ item }),
      reason,
      at: yaml.place(['accepted', i]),
      codeAt: yaml.place(['accepted', i, 'code']),
    })),
  };
}

class PartBuilder {
  constructor(
    private readonly data: PartData,
    private readonly yaml: LocatedYaml,
  ) {}

  traced<U extends Unit>(id: string, reading: Reading<U>, path: YamlPath): Traced<U> {
    return Traced.input(id, reading.value, reading.unit, { at: this.yaml.place(path), written: reading.written, source: PART_SOURCE });
  }

  #maybe<U extends Unit>(id: string, reading: Reading<U> | undefined, path: YamlPath): Traced<U> | undefined {
    return reading === undefined ? undefined : this.traced(id, reading, path);
  }

  #direction(reading: DirectionReading, path: YamlPath): Direction {
    return { ...reading, at: this.yaml.place(path) };
  }

  geometry(): Geometry {
    const { geometry } = this.data;
    const [x, y, z] = geometry.envelope;
    const { projected_area: area, wall, die_opening: opening } = geometry;
    const at = (...rest: YamlPath): YamlPath => ['geometry', ...rest];
    return {
      ...present({
        volume: this.#maybe('part.volume', geometry.volume, at('volume')),
        mass: this.#maybe('part.mass', geometry.mass, at('mass')),
        surfaceArea: this.#maybe('part.surface-area', geometry.surface_area, at('surface_area')),
        partingLine: this.#maybe('part.parting-line', geometry.parting_line, at('parting_line')),
        dieOpeningAt: opening === undefined ? undefined : this.yaml.place(at('die_opening')),
      }),
      envelope: {
        x: this.traced('part.envelope-x', x, at('envelope', 0)),
        y: this.traced('part.envelope-y', y, at('envelope', 1)),
        z: this.traced('part.envelope-z', z, at('envelope', 2)),
      },
      projectedArea: present({
        x: this.#maybe('part.projected-area-x', area.x, at('projected_area', 'x')),
        y: this.#maybe('part.projected-area-y', area.y, at('projected_area', 'y')),
        z: this.#maybe('part.projected-area-z', area.z, at('projected_area', 'z')),
      }),
      wall: {
        ...present({
          least: this.#maybe('part.wall-least', wall.least, at('wall', 'least')),
          greatest: this.#maybe('part.wall-greatest', wall.greatest, at('wall', 'greatest')),
        }),
        nominal: this.traced('part.wall-nominal', wall.nominal, at('wall', 'nominal')),
      },
      dieOpening: opening === undefined || opening === 'auto' ? 'auto' : this.#direction(opening, at('die_opening')),
    };
  }

  lists(): Pick<PartSpec, 'walls' | 'holes' | 'undercuts' | 'inserts' | 'ribs' | 'fillets' | 'dimensions' | 'machining'> {
    return {
      walls: this.#entries('walls', 'wall', (entry, as) => ({
        id: entry.id,
        side: entry.side,
        height: as('height', entry.height),
        ...present({ draft: as('draft', entry.draft) }),
      })),
      holes: this.#entries('holes', 'hole', (entry, as, path) => ({
        id: entry.id,
        diameter: as('diameter', entry.diameter),
        depth: as('depth', entry.depth),
        kind: entry.kind,
        direction: this.#direction(entry.direction, [...path, 'direction']),
        count:
          as('count', entry.count) ??
          Traced.default(`hole.count[${entry.id}]`, 1, '1', { note: 'one hole, because no count is given', source: PART_SOURCE, at: this.yaml.place(path) }),
        ...present({ tolerance: as('tolerance', entry.tolerance), thread: entry.thread, edgeDistance: as('edge_distance', entry.edge_distance) }),
      })),
      undercuts: this.#entries('undercuts', 'undercut', (entry, as, path) => ({
        id: entry.id,
        direction: this.#direction(entry.direction, [...path, 'direction']),
        depth: as('depth', entry.depth),
        faceArea: as('face_area', entry.face_area),
        ...present({ boss: as('boss', entry.boss) }),
      })),
      inserts: this.#entries('inserts', 'insert', (entry, as) => ({
        id: entry.id,
        material: entry.material,
        diameter: as('diameter', entry.diameter),
        length: as('length', entry.length),
        ...present({ cover: as('cover', entry.cover) }),
      })),
      ribs: this.#entries('ribs', 'rib', (entry, as) => ({
        id: entry.id,
        rootWidth: as('root_width', entry.root_width),
        height: as('height', entry.height),
        ...present({ draft: as('draft', entry.draft), tipRadius: as('tip_radius', entry.tip_radius), rootFillet: as('root_fillet', entry.root_fillet) }),
      })),
      fillets: this.#entries('fillets', 'fillet', (entry, as, path) => ({
        id: entry.id,
        radius: as('radius', entry.radius),
        walls: [
          this.traced(`fillet.wall-a[${entry.id}]`, entry.walls[0], [...path, 'walls', 0]),
          this.traced(`fillet.wall-b[${entry.id}]`, entry.walls[1], [...path, 'walls', 1]),
        ] as const,
      })),
      dimensions: this.#entries('dimensions', 'dimension', (entry, as) => ({
        id: entry.id,
        nominal: as('nominal', entry.nominal),
        tolerance: as('tolerance', entry.tolerance),
        across: entry.across ?? 'none',
        ...present({ slide: entry.slide }),
      })),
      machining: this.#entries('machining', 'machining', (entry, as) => ({ id: entry.id, stock: as('stock', entry.stock) })),
    };
  }

  /** Each entry of a list, with its place; `as` files a reading of it as `topic.key-name[id]`. */
  #entries<L extends ListName, R extends object>(
    list: L,
    topic: string,
    build: (entry: Entry<L>, as: As, path: YamlPath) => R,
  ): (R & { readonly at: PartSpec['at'] })[] {
    const entries = (this.data[list] ?? []) as readonly Entry<L>[];
    return entries.map((entry, i) => {
      const path: YamlPath = [list, i];
      const as = ((key: string, reading: Reading | undefined) => this.#maybe(`${topic}.${key.replace(/_/g, '-')}[${entry.id}]`, reading, [...path, key])) as As;
      return { ...build(entry, as, path), at: this.yaml.place(path) };
    });
  }

  quality(): Quality {
    const given = this.data.quality ?? {};
    return {
      use: given.use ?? 'general',
      finish: given.finish ?? 'commercial',
      heatTreatment: given.heat_treatment ?? 'none',
      welded: given.welded ?? false,
      coldShut: given.cold_shut ?? 'none',
      ...present({ leakRate: given.leak_rate }),
      markets: [...new Set(given.markets ?? [])],
      given: new Set(Object.keys(given)),
      at: this.yaml.place(['quality']),
    };
  }

  production(): Production {
    const { per_year: perYear, life, hours_per_year: hours } = this.data.production ?? {};
    return {
      ...present({
        perYear: this.#maybe('production.per-year', perYear, ['production', 'per_year']),
        life: this.#maybe('production.life', life, ['production', 'life']),
        hoursPerYear: this.#maybe('production.hours-per-year', hours, ['production', 'hours_per_year']),
      }),
      at: this.yaml.place(['production']),
    };
  }
}

type ListName = 'walls' | 'holes' | 'undercuts' | 'inserts' | 'ribs' | 'fillets' | 'dimensions' | 'machining';
type Entry<L extends ListName> = NonNullable<PartData[L]>[number];
interface As {
  <U extends Unit>(key: string, reading: Reading<U>): Traced<U>;
  <U extends Unit>(key: string, reading: Reading<U> | undefined): Traced<U> | undefined;
}
