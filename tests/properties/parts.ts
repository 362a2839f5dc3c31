import fc from 'fast-check';
import { stringify } from 'yaml';

/** Sizes of a made-up part, in ten-thousandths of an inch, of a square inch and of a cubic inch: exact in both systems. */
export interface Sizes {
  readonly alloy: string;
  readonly use: string;
  readonly envelope: readonly [number, number, number];
  /** Projected area along z over the envelope seen along z. */
  readonly areaShare: number;
  readonly wall: { readonly least: number; readonly nominal: number; readonly greatest: number };
  /** Volume over area times nominal wall. */
  readonly bulk: number;
  readonly walls: readonly { readonly side: 'inside' | 'outside'; readonly height: number }[];
  readonly holes: readonly {
    readonly diameter: number;
    readonly depth: number;
    readonly kind: 'blind' | 'through';
    readonly direction: string;
    readonly count: number;
  }[];
  readonly dimensions: readonly { readonly nominal: number; readonly tolerance: number; readonly across: 'none' | 'parting' }[];
  readonly perYear: number;
}

/** How a number of ten-thousandths is written. */
export interface System {
  readonly length: (n: number) => string;
  readonly area: (n: number) => string;
  readonly volume: (n: number) => string;
}

/** n / 10^places as a decimal number without a rounding. */
export function decimal(n: bigint, places: number): string {
  const digits = n.toString().padStart(places + 1, '0');
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`.replace(/\.?0+$/, '');
}
export const INCHES: System = {
  length: (n) => `${decimal(BigInt(n), 4)} in`,
  area: (n) => `${decimal(BigInt(n), 4)} in2`,
  volume: (n) => `${decimal(BigInt(n), 4)} in3`,
};
/** 1 in = 25.4 mm exactly, so 1 in2 = 6.4516 cm2 and 1 in3 = 16.387064 cm3. */
export const MILLIMETRES: System = {
  length: (n) => `${decimal(BigInt(n) * 254n, 5)} mm`,
  area: (n) => `${decimal(BigInt(n) * 64516n, 8)} cm2`,
  volume: (n) => `${decimal(BigInt(n) * 16387064n, 10)} cm3`,
};

const AXIS: Readonly<Record<string, 0 | 1 | 2>> = { x: 0, y: 1, z: 2 };
export const ALLOYS = ['A380', 'Zamak 3', 'AZ91D', 'C85800', 'ZA-12'];

/** Multiples of `step`, which keeps to the sixteenths and hundredths that drawings and tables have. */
const grid = (least: number, greatest: number, step: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(least / step), max: Math.floor(greatest / step) }).map((n) => n * step);

export const sizes: fc.Arbitrary<Sizes> = fc
  .tuple(grid(20000, 100000, 1250), grid(15000, 60000, 1250), grid(5000, 30000, 1250), grid(400, 1500, 50), grid(0, 500, 50), grid(0, 1500, 125))
  .chain(([x, y, z, least, more, most]) =>
    fc.record({
      alloy: fc.constantFrom(...ALLOYS),
      use: fc.constantFrom('general', 'loaded', 'pressure-tight', 'plated', 'structural'),
      envelope: fc.constant([x, y, z] as const),
      areaShare: fc.double({ min: 0.4, max: 0.9, noNaN: true }),
      wall: fc.constant({ least, nominal: least + more, greatest: least + more + most }),
      bulk: fc.double({ min: 1, max: 1.8, noNaN: true }),
      walls: fc.array(fc.record({ side: fc.constantFrom('inside' as const, 'outside' as const), height: grid(1250, z, 1250) }), { maxLength: 2 }),
      holes: fc.array(
        fc.constantFrom('x', '-x', 'y', '-y', 'z', '-z').chain((direction) =>
          fc.record({
            diameter: grid(1250, 6250, 625),
            depth: grid(1250, Math.min([x, y, z][AXIS[direction.replace('-', '')] ?? 2] as number, 12500), 625),
            kind: fc.constantFrom('blind' as const, 'through' as const),
            direction: fc.constant(direction),
            count: fc.integer({ min: 1, max: 3 }),
          }),
        ),
        { maxLength: 4 },
      ),
      dimensions: fc.array(
        fc.record({ nominal: grid(5000, x, 1250), tolerance: grid(40, 300, 10), across: fc.constantFrom('none' as const, 'parting' as const) }),
        { maxLength: 2 },
      ),
      perYear: fc.constantFrom(5000, 60_000, 400_000),
    }),
  );

export const named = <T>(prefix: string, list: readonly T[]): (T & { id: string })[] => list.map((entry, i) => ({ id: `${prefix}${i + 1}`, ...entry }));

/** The part file as an object, its sizes written in one system. */
export function partOf(part: Sizes, { length, area, volume }: System, change: { readonly area?: number } = {}): Record<string, unknown> {
  const [x, y] = part.envelope;
  const projected = Math.round(((x * y) / 1e8) * part.areaShare * 100) * 100 + (change.area ?? 0);
  const bulk = Math.round((projected / 1e4) * (part.wall.nominal / 1e4) * part.bulk * 1000) * 10;
  return {
    diewright: 'part/1',
    part: { name: 'Made-up part' },
    alloy: part.alloy,
    geometry: {
      volume: volume(bulk),
      envelope: part.envelope.map(length),
      projected_area: { z: area(projected) },
      wall: { least: length(part.wall.least), nominal: length(part.wall.nominal), greatest: length(part.wall.greatest) },
      die_opening: 'z',
    },
    walls: named('W', part.walls).map((wall) => ({ ...wall, height: length(wall.height) })),
    holes: named('H', part.holes).map((hole) => ({ ...hole, diameter: length(hole.diameter), depth: length(hole.depth) })),
    dimensions: named('D', part.dimensions).map((one) => ({ ...one, nominal: length(one.nominal), tolerance: length(one.tolerance) })),
    quality: { use: part.use, finish: 'functional' },
    production: { per_year: part.perYear, life: 10 * part.perYear, hours_per_year: '4000 h' },
  };
}

export const yamlOf = (part: unknown): string => stringify(part, { aliasDuplicateObjects: false });
