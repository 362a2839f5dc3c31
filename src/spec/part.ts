import type { Place, SourceText } from '../kernel/place.ts';
import type { Traced } from '../kernel/traced.ts';

/** A word of the file and where it stands. */
export interface Located<T> {
  readonly value: T;
  readonly at: Place;
}

/** A direction in the axes of the envelope. */
export interface Direction {
  /** As written: `-x` or `[0, 1, 1]`. */
  readonly text: string;
  /** Of length 1. */
  readonly vector: readonly [number, number, number];
  readonly at: Place;
}

export const USES = ['general', 'loaded', 'pressure-tight', 'plated', 'structural'] as const;
export const FINISHES = ['utility', 'functional', 'commercial', 'consumer', 'superior'] as const;
export const HEAT_TREATMENTS = ['none', 'T5', 'T6', 'T7'] as const;
export const COLD_SHUTS = ['none', 'some'] as const;
export const MARKETS = ['eu-electrical', 'eu-vehicle', 'jewellery', 'food-contact', 'drinking-water'] as const;
export const WALL_SIDES = ['inside', 'outside'] as const;
export const HOLE_KINDS = ['blind', 'through'] as const;
export const ACROSS = ['none', 'parting', 'slide'] as const;

export interface Geometry {
  readonly volume?: Traced<'cm3'>;
  readonly mass?: Traced<'kg'>;
  readonly envelope: { readonly x: Traced<'mm'>; readonly y: Traced<'mm'>; readonly z: Traced<'mm'> };
  /** Seen along the axis named; at least one is given. */
  readonly projectedArea: { readonly x?: Traced<'cm2'>; readonly y?: Traced<'cm2'>; readonly z?: Traced<'cm2'> };
  readonly surfaceArea?: Traced<'cm2'>;
  readonly wall: { readonly least?: Traced<'mm'>; readonly nominal: Traced<'mm'>; readonly greatest?: Traced<'mm'> };
  readonly dieOpening: 'auto' | Direction;
  /** Absent when the file does not name a die opening. */
  readonly dieOpeningAt?: Place;
  readonly partingLine?: Traced<'mm'>;
}

export interface WallSpec {
  readonly id: string;
  readonly side: (typeof WALL_SIDES)[number];
  readonly height: Traced<'mm'>;
  /** What the drawing allows. */
  readonly draft?: Traced<'deg'>;
  readonly at: Place;
}

export interface HoleSpec {
  readonly id: string;
  readonly diameter: Traced<'mm'>;
  readonly depth: Traced<'mm'>;
  readonly kind: (typeof HOLE_KINDS)[number];
  /** The way the core leaves the hole. */
  readonly direction: Direction;
  readonly count: Traced<'1'>;
  readonly tolerance?: Traced<'mm'>;
  /** `M8` or `M8x1`. */
  readonly thread?: string;
  readonly edgeDistance?: Traced<'mm'>;
  /** The casting that it belongs to, where several are planned together. */
  readonly casting?: string;
  readonly at: Place;
}

export interface UndercutSpec {
  readonly id: string;
  readonly direction: Direction;
  readonly depth: Traced<'mm'>;
  readonly faceArea: Traced<'cm2'>;
  readonly boss?: Traced<'mm'>;
  /** The casting that it belongs to, where several are planned together. */
  readonly casting?: string;
  readonly at: Place;
}

export interface InsertSpec {
  readonly id: string;
  readonly material: string;
  readonly diameter: Traced<'mm'>;
  readonly length: Traced<'mm'>;
  /** Thickness of casting metal around it. */
  readonly cover?: Traced<'mm'>;
  readonly at: Place;
}

export interface RibSpec {
  readonly id: string;
  readonly rootWidth: Traced<'mm'>;
  readonly height: Traced<'mm'>;
  readonly draft?: Traced<'deg'>;
  readonly tipRadius?: Traced<'mm'>;
  readonly rootFillet?: Traced<'mm'>;
  readonly at: Place;
}

export interface FilletSpec {
  readonly id: string;
  readonly radius: Traced<'mm'>;
  /** The two walls that meet. */
  readonly walls: readonly [Traced<'mm'>, Traced<'mm'>];
  readonly at: Place;
}

export interface DimensionSpec {
  readonly id: string;
  readonly nominal: Traced<'mm'>;
  /** Plus and minus. */
  readonly tolerance: Traced<'mm'>;
  readonly across: (typeof ACROSS)[number];
  /** Id of the undercut or hole whose slide forms it. */
  readonly slide?: string;
  readonly at: Place;
}

export interface Quality {
  readonly use: (typeof USES)[number];
  readonly finish: (typeof FINISHES)[number];
  readonly heatTreatment: (typeof HEAT_TREATMENTS)[number];
  readonly welded: boolean;
  readonly coldShut: (typeof COLD_SHUTS)[number];
  readonly leakRate?: string;
  readonly markets: readonly (typeof MARKETS)[number][];
  /** Keys of `quality` that the user wrote, as in the file (`heat_treatment`); the others hold their default. */
  readonly given: ReadonlySet<string>;
  readonly at: Place;
}

export interface ElementShare {
  /** Chemical symbol. */
  readonly element: string;
  readonly share: Traced<'%'>;
  readonly at: Place;
}

export interface MachinedFace {
  readonly id: string;
  readonly stock: Traced<'mm'>;
  readonly at: Place;
}

export interface Production {
  readonly perYear?: Traced<'1'>;
  readonly life?: Traced<'1'>;
  readonly hoursPerYear?: Traced<'h'>;
  readonly at: Place;
}

/** A decision already taken; the value is read when the unit of the decision is known. */
export interface Pin {
  readonly id: string;
  readonly text: string;
  readonly at: Place;
}

/** A finding that the engineer lives with: its code, the item it is about if only one is meant, and why. */
export interface Acceptance {
  readonly code: string;
  readonly item?: string;
  readonly reason: string;
  readonly at: Place;
  readonly codeAt: Place;
}

/** A part description, read and checked. */
export interface PartSpec {
  readonly source: SourceText;
  /** The whole file. */
  readonly at: Place;
  readonly name: string;
  readonly number?: string;
  readonly revision?: string;
  readonly note?: string;
  /** As written; which alloy it means is looked up elsewhere. */
  readonly alloy: Located<string>;
  readonly geometry: Geometry;
  readonly walls: readonly WallSpec[];
  readonly holes: readonly HoleSpec[];
  readonly undercuts: readonly UndercutSpec[];
  readonly inserts: readonly InsertSpec[];
  readonly ribs: readonly RibSpec[];
  readonly fillets: readonly FilletSpec[];
  readonly dimensions: readonly DimensionSpec[];
  readonly quality: Quality;
  readonly certificate: readonly ElementShare[];
  readonly machining: readonly MachinedFace[];
  readonly production: Production;
  readonly pinned: ReadonlyMap<string, Pin>;
  readonly accepted: readonly Acceptance[];
}
