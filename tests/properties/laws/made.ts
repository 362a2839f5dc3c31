import fc from 'fast-check';
import type { Plan } from '../../../src/index.ts';
import { decimal, INCHES, MILLIMETRES, named, partOf, type Sizes, type System, sizes } from '../parts.ts';

/** One alloy at least of every family, hot and cold chamber. */
export const EVERY_FAMILY = ['A380', '413', 'EN AC-43500', 'Zamak 3', 'Zamak 5', 'ZA-8', 'ZA-27', 'AZ91D', 'AM60B', 'C85800', 'C87800', 'Y10A', 'CY44A'];

/** A made-up part with everything that a part file can hold, in ten-thousandths of an inch and hundredths of a degree. */
export interface Made {
  readonly sizes: Sizes;
  /** Whole surface over twice the projected area, where the file gives it. */
  readonly surface: number | undefined;
  readonly drafts: readonly number[];
  /** `face` is the share in per cent of the side of the envelope that it looks out of. */
  readonly undercuts: readonly { readonly direction: string; readonly depth: number; readonly face: number }[];
  readonly ribs: readonly { readonly root: number; readonly slender: number; readonly draft: number }[];
  readonly fillets: readonly number[];
  readonly inserts: readonly { readonly diameter: number; readonly length: number; readonly cover: number }[];
  readonly stock: number | undefined;
}

/** Sizes and angles as one system of units writes them. */
export interface Units extends System {
  /** From hundredths of a degree. */
  readonly angle: (n: number) => string;
  /** From ten-thousandths of a pound. */
  readonly mass: (n: number) => string;
  /** From hours. */
  readonly time: (n: number) => string;
}
export const METRIC: Units = {
  ...MILLIMETRES,
  angle: (n) => `${decimal(BigInt(n), 2)} deg`,
  // 1 lb = 453.59237 g exactly.
  mass: (n) => `${decimal(BigInt(n) * 45359237n, 9)} g`,
  time: (n) => `${n} h`,
};
export const IMPERIAL: Units = {
  ...INCHES,
  angle: (n) => `${(n * Math.PI) / 18000} rad`,
  mass: (n) => `${decimal(BigInt(n) * 16n, 4)} oz`,
  time: (n) => `${n * 60} min`,
};

/** Drafts off the round hundredths that rules have as bounds, for radians round in the last digit. */
const draft = fc.integer({ min: 5, max: 40 }).map((n) => 10 * n + 3);
const grid = (least: number, greatest: number, step: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(least / step), max: Math.floor(greatest / step) }).map((n) => n * step);

export const made: fc.Arbitrary<Made> = fc
  .record({
    sizes,
    alloy: fc.constantFrom(...EVERY_FAMILY),
    surface: fc.option(fc.double({ min: 1.2, max: 3, noNaN: true }), { nil: undefined }),
    drafts: fc.array(draft, { minLength: 6, maxLength: 6 }),
    undercuts: fc.array(fc.record({ direction: fc.constantFrom('x', '-x', 'y', '-y'), depth: grid(1250, 4000, 250), face: fc.integer({ min: 5, max: 40 }) }), {
      maxLength: 1,
    }),
    ribs: fc.array(fc.record({ root: grid(400, 1000, 50), slender: fc.integer({ min: 2, max: 5 }), draft }), { maxLength: 1 }),
    fillets: fc.array(grid(200, 1000, 50), { maxLength: 1 }),
    inserts: fc.array(fc.record({ diameter: grid(2500, 6000, 625), length: grid(4000, 9000, 500), cover: grid(600, 1500, 50) }), { maxLength: 1 }),
    stock: fc.option(grid(100, 300, 10), { nil: undefined }),
  })
  .map(({ alloy, ...rest }) => ({ ...rest, sizes: { ...rest.sizes, alloy } }));

type Lists = Record<string, object[]>;

/** The part file as an object, written in these units. */
export function fileOf(part: Made, units: Units): Record<string, unknown> {
  const base = partOf(part.sizes, units) as Record<string, unknown> & { geometry: object; production: object } & Lists;
  const { length, area, angle } = units;
  const [x, y, z] = part.sizes.envelope;
  const faceOf = ({ direction, face }: Made['undercuts'][number]): number => Math.round(((direction.endsWith('x') ? y : x) * z * face) / 1e6);
  const seen = Math.round(((x * y) / 1e8) * part.sizes.areaShare * 100) * 100;
  const production = base.production as { per_year: number; life: number };
  return {
    ...base,
    geometry: { ...base.geometry, ...(part.surface === undefined ? {} : { surface_area: area(Math.round((2 * seen * part.surface) / 100) * 100) }) },
    walls: (base['walls'] as object[]).map((wall, i) => ({ ...wall, draft: angle(part.drafts[i] as number) })),
    undercuts: named('U', part.undercuts).map(({ id, ...undercut }) => ({
      id,
      direction: undercut.direction,
      depth: length(undercut.depth),
      face_area: area(faceOf(undercut)),
    })),
    ribs: named('R', part.ribs).map((rib) => ({
      id: rib.id,
      root_width: length(rib.root),
      height: length(rib.root * rib.slender),
      draft: angle(rib.draft),
    })),
    fillets: part.fillets.map((radius, i) => ({
      id: `F${i + 1}`,
      radius: length(radius),
      walls: [length(part.sizes.wall.nominal), length(part.sizes.wall.least)],
    })),
    inserts: named('I', part.inserts).map((insert) => ({
      id: insert.id,
      material: 'steel',
      diameter: length(insert.diameter),
      length: length(insert.length),
      cover: length(insert.cover),
    })),
    machining: part.stock === undefined ? [] : [{ id: 'face', stock: length(part.stock) }],
    production: { ...production, hours_per_year: units.time(4000) },
  };
}

/** What a plan has decided, as pins, so that no decision of the search moves with the input. */
export function pinsOf(plan: Plan): string[] {
  return ['machine.kind', 'machine.model', 'machine.cavities', 'machine.plunger', 'vent.kind', 'parting.ejector-side'].flatMap((id) => {
    const value = plan.decisions.get(id)?.value;
    return value === undefined ? [] : [`pinned.${id}=${value}`];
  });
}
