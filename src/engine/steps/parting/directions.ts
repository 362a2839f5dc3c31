import type { HoleSpec, PartSpec } from '../../../spec/index.ts';

export type Vector = readonly [number, number, number];

/** What cores make: a hole or an undercut, and the way the core leaves it. */
export interface Feature {
  readonly kind: 'hole' | 'undercut';
  readonly id: string;
  readonly direction: Vector;
  /** The direction as the part file has it. */
  readonly text: string;
  /** A through hole can be met from either end. */
  readonly through: boolean;
  /** The casting that it belongs to, where several are planned together; no slide serves two. */
  readonly casting?: string;
}

/** Holes, then undercuts, in the order of the part file. */
export function featuresOf(part: PartSpec): Feature[] {
  return [
    ...part.holes.map((hole): Feature => ({ kind: 'hole', through: hole.kind === 'through', ...common(hole) })),
    ...part.undercuts.map((undercut): Feature => ({ kind: 'undercut', through: false, ...common(undercut) })),
  ];
}

function common({ id, direction, casting }: Pick<HoleSpec, 'id' | 'direction' | 'casting'>): Omit<Feature, 'kind' | 'through'> {
  return { id, direction: direction.vector, text: direction.text, ...(casting === undefined ? {} : { casting }) };
}

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Angle between two directions of length 1, in degrees: 0 the same way, 180 the opposite way. */
export function degreesBetween(a: Vector, b: Vector): number {
  return (Math.acos(Math.min(1, Math.max(-1, dot(a, b)))) * 180) / Math.PI;
}

/** Angle between a direction and an axis, whichever way the axis is taken: 0 to 90 degrees. */
export function degreesOff(direction: Vector, axis: Vector): number {
  const angle = degreesBetween(direction, axis);
  return Math.min(angle, 180 - angle);
}

/** `+x` for a direction along an axis of the envelope, else the direction as the part file has it. */
export function sideOf(feature: { readonly direction: Vector; readonly text: string }, along: number): string {
  for (const [index, axis] of (['x', 'y', 'z'] as const).entries()) {
    const vector: Vector = [index === 0 ? 1 : 0, index === 1 ? 1 : 0, index === 2 ? 1 : 0];
    if (degreesBetween(feature.direction, vector) <= along) return `+${axis}`;
    if (degreesBetween(feature.direction, vector) >= 180 - along) return `-${axis}`;
  }
  return feature.text;
}

/** Two directions at right angles to an axis and to each other, for an axis that is none of the envelope's. */
export function across(axis: Vector): readonly [Vector, Vector] {
  const sizes = axis.map(Math.abs);
  const least = sizes.indexOf(Math.min(...sizes));
  const start: Vector = [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0];
  const a = unit(cross(axis, start));
  return [a, cross(axis, a)];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(v: Vector): Vector {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}
